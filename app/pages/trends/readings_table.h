#pragma once

#include "app/pages/trends/trends_view.h"
#include "app/theme/theme.h"

#include <QTableView>

namespace rig {

class ReadingsModel;
class ReadingsOrder;

// The readings of one coupling as a table, newest first until its header is pressed. The chosen rows can be
// copied.
class ReadingsTable : public QTableView
{
    Q_OBJECT

public:
    explicit ReadingsTable(QWidget* parent = nullptr);

    void display(const CouplingTrend& trend);
    void setLook(const Look& look);
    // Index into the coupling's readings; below 0 chooses none. Emits nothing.
    void chooseReading(int index);
    // Tab-separated, with a header, in the order shown.
    QString chosenAsText() const;

    QSize sizeHint() const override;

signals:
    void readingChosen(int index);

public slots:
    void copyChosen() const;

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

private:
    void fitColumns();

    Look m_look;
    ReadingsModel* m_model = nullptr;
    ReadingsOrder* m_order = nullptr;
    bool m_quiet = false; // the program, not the reader, moves the chosen row
};

} // namespace rig
