#pragma once

#include "app/pictures/marks.h"
#include "app/theme/theme.h"

#include <QString>
#include <QWidget>

#include <vector>

class QVBoxLayout;

namespace rig {

class MarkRow;

struct RowText
{
    MarkShape shape = MarkShape::Waiting;
    Role role = Role::InkSoft;
    QString title;
    QString detail;

    bool operator==(const RowText&) const = default;
};

// Rows of which one is chosen. Up and Down choose another, Enter or a double click opens it; Tab passes the
// list as one stop.
class RowList : public QWidget
{
    Q_OBJECT

public:
    // The rows are named `name`0, `name`1, ...
    RowList(const char* name, const QString& accessibleName, QWidget* parent = nullptr);

    void setLook(const Look& look);
    void setWraps() { m_wraps = true; } // before the first row: nothing of them is cut
    // Keeps the chosen place where it can.
    void display(const std::vector<RowText>& rows);
    void choose(int index);
    int chosen() const { return m_chosen; } // -1 when there is no row
    void focusChosen();

signals:
    void rowChosen(int index); // by the user
    void rowOpened(int index);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    MarkRow* row(std::size_t index);
    void chooseByUser(int index);

    Look m_look;
    bool m_wraps = false;
    QString m_name;
    QVBoxLayout* m_layout = nullptr;
    std::vector<MarkRow*> m_rows;
    int m_count = 0;
    int m_chosen = -1;
};

} // namespace rig
