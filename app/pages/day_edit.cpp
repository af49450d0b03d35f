#include "app/pages/day_edit.h"

#include "app/pages/day_read.h"
#include "app/wording/day_words.h"
#include "app/wording/setup_words.h"

#include <QCalendarWidget>
#include <QDate>
#include <QFrame>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QTextCharFormat>
#include <QToolButton>
#include <QVBoxLayout>

namespace rig {

namespace {

// Plain figures in the theme's colours: red would say outside here. The style's own arrows are coloured
// pictures.
void dress(QCalendarWidget* calendar)
{
    QTextCharFormat plain;
    plain.setForeground(calendar->palette().text());
    for (const Qt::DayOfWeek day : {Qt::Saturday, Qt::Sunday})
        calendar->setWeekdayTextFormat(day, plain);
    const auto arrow = [calendar](const char* name, QChar shape) {
        auto* button = calendar->findChild<QToolButton*>(QLatin1String(name));
        if (!button)
            return;
        button->setIcon({});
        button->setToolButtonStyle(Qt::ToolButtonTextOnly);
        button->setText(shape);
    };
    arrow("qt_calendar_prevmonth", QChar{0x2039});
    arrow("qt_calendar_nextmonth", QChar{0x203A});
    // Its own hint forgets the frame and leaves the last week half a line.
    constexpr int kLine = 24;
    calendar->setMinimumHeight(calendar->sizeHint().height() + kLine);
}

} // namespace

DayEdit::DayEdit(QWidget* parent) : QWidget{parent}
{
    auto* outer = new QVBoxLayout{this};
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(3);
    auto* layout = new QHBoxLayout;
    layout->setSpacing(6);
    m_line = new QLineEdit;
    m_button = new QPushButton{SetUpWords::calendar()};
    m_button->setAutoDefault(true);
    layout->addWidget(m_line, 1);
    layout->addWidget(m_button);
    outer->addLayout(layout);
    outer->addWidget(new DayRead{m_line});
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
    dress(calendar);
    if (const auto typed = readDay(text()))
        calendar->setSelectedDate(QDate{1970, 1, 1}.addDays(typed->time_since_epoch().count()));
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
