#pragma once

#include <QWidget>

class QLineEdit;
class QPushButton;

namespace rig {

// A day, typed or taken from a calendar, and below it in words what it was read as. Holds what was typed,
// readable or not.
class DayEdit : public QWidget
{
    Q_OBJECT

public:
    explicit DayEdit(QWidget* parent = nullptr);

    QString text() const;
    void setText(const QString& text);
    QLineEdit* line() const { return m_line; }
    // For the calendar's button: which day it is for.
    void setCalendarName(const QString& label);

signals:
    void edited();

private:
    void openCalendar();

    QLineEdit* m_line = nullptr;
    QPushButton* m_button = nullptr;
};

} // namespace rig
