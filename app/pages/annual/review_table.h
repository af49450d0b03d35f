#pragma once

#include "app/pages/annual/annual_view.h"
#include "app/theme/theme.h"

#include <QTableView>

namespace rig {

class ReviewDelegate;
class ReviewModel;

// The ranked couplings, as high as their rows. Enter or a click opens a row; 1 to 8 sort by a column, 0 goes
// back to what stands out first. Letters and the page keys belong to the page.
class ReviewTable : public QTableView
{
    Q_OBJECT

public:
    explicit ReviewTable(QWidget* parent = nullptr);

    void display(const std::vector<AnnualRow>& rows);
    void chooseFirst();
    CouplingId chosen() const { return m_chosen; }
    void setLook(const Look& look);

signals:
    void couplingChosen(CouplingId coupling); // its row is the current one
    void couplingOpened(CouplingId coupling);

protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    void open(const QModelIndex& index);
    void sortBy(int column);
    void keepChosen(CouplingId coupling);
    void fit();

    ReviewModel* m_model;
    ReviewDelegate* m_delegate;
    Look m_look;
    CouplingId m_chosen;
};

} // namespace rig
