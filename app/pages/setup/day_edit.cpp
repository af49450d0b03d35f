#include "app/pages/setup/day_edit.h"

#include "app/wording/setup_words.h"
#include "core/day_entry.h"

#include <QCalendarWidget>
#include <QDate>
#include <QFrame>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace rig {

DayEdit::DayEdit(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    m_line = new QLineEdit;
    m_button = new QPushButton{SetUpWords::calendar()};
    m_button->setAutoDefault(true);
    layout->addWidget(m_line, 1);
    layout->addWidget(m_button);
    setFocusProxy(m_line);
    connect(m_line, &QLineEdit::textEdited, this, &DayEdit::edited);
    connect(m_button, &QPushButton::clicked, this, &DayEdit::openCalendar);
}

QString DayEdit::text() const
{
    return m_line->text();
}

void DayEdit::setText(const QString& text)
{
    m_line->setText(text);
}

void DayEdit::setCalendarName(const QString& label)
{
    m_button->setAccessibleName(SetUpWords::calendarFor(label));
}

void DayEdit::openCalendar()
{
    auto* popup = new QFrame{this, Qt::Popup};
    popup->setAttribute(Qt::WA_DeleteOnClose);
    popup->setProperty("card", true);
    auto* layout = new QVBoxLayout{popup};
    auto* calendar = new QCalendarWidget;
    calendar->setFirstDayOfWeek(Qt::Monday);
    calendar->setVerticalHeaderFormat(QCalendarWidget::NoVerticalHeader);
    const QDate typed = QDate::fromString(text().trimmed(), Qt::ISODate);
    if (typed.isValid())
        calendar->setSelectedDate(typed);
    layout->addWidget(calendar);
    const auto take = [this, popup](const QDate& date) {
        m_line->setText(date.toString(Qt::ISODate));
        popup->close();
        m_line->setFocus();
        emit edited();
    };
    connect(calendar, &QCalendarWidget::activated, this, take);
    connect(calendar, &QCalendarWidget::clicked, this, take);
    popup->adjustSize();
    popup->move(m_line->mapToGlobal(QPoint{0, m_line->height() + 2}));
    popup->show();
    calendar->setFocus();
}

} // namespace rig
