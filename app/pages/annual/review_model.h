#pragma once

#include "app/pages/annual/annual_view.h"
#include "app/wording/annual_words.h"

#include <QAbstractTableModel>

#include <vector>

namespace rig {

// The ranked couplings, in the order that the review has them or sorted by a column. What cannot be known
// stays at the end either way.
class ReviewModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;

    void display(const std::vector<AnnualRow>& rows);
    const AnnualRow& rowAt(int row) const { return m_rows[m_order[static_cast<std::size_t>(row)]]; }
    int find(CouplingId coupling) const; // -1: none

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    void sort(int column, Qt::SortOrder order) override; // below 0: as the review has them

private:
    void arrange();

    std::vector<AnnualRow> m_rows;
    std::vector<std::size_t> m_order; // indexes into m_rows
    int m_column = -1;
    Qt::SortOrder m_direction = Qt::AscendingOrder;
};

} // namespace rig
