#pragma once

#include "app/pages/trends/trends_view.h"
#include "app/theme/theme.h"

#include <QAbstractTableModel>
#include <QIcon>
#include <QSortFilterProxyModel>

#include <array>
#include <vector>

namespace rig {

enum class ReadingColumn { When, Rigging, Enters, Refuses, Verdict, Kind, Person, Gauge, Note, Last_ };

inline constexpr int kReadingColumns = static_cast<int>(ReadingColumn::Last_);

// A coupling's readings as rows, oldest first.
class ReadingsModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;

    void display(const std::vector<TrendsReading>& readings);
    void setLook(const Look& look);
    // By what the reading says, not by how it is written.
    bool isLess(ReadingColumn column, int a, int b) const;
    // As shown, but with a day every program can read.
    QString copyText(ReadingColumn column, int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QString text(ReadingColumn column, const TrendsReading& one) const;
    QString toolTip(ReadingColumn column, const TrendsReading& one) const;

    std::vector<TrendsReading> m_readings;
    std::array<QIcon, 5> m_marks; // by Verdict
};

// Puts the rows into the order of a column.
class ReadingsOrder : public QSortFilterProxyModel
{
    Q_OBJECT

public:
    using QSortFilterProxyModel::QSortFilterProxyModel;

protected:
    bool lessThan(const QModelIndex& left, const QModelIndex& right) const override;
};

} // namespace rig
