#include "app/pages/day_read.h"

#include "app/wording/day_words.h"
#include "app/wording/formats.h"

#include <QLineEdit>

namespace rig {

DayRead::DayRead(QLineEdit* line, QWidget* parent) : QLabel{parent}, m_line{line}
{
    setObjectName("dayRead");
    setProperty("kind", "soft");
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    hide();
    connect(line, &QLineEdit::textChanged, this, &DayRead::follow);
}

// Whoever does not see the words hears them as the description of the line, in place of its hint.
void DayRead::follow()
{
    const auto day = readDay(m_line->text());
    const QString read = day ? Formats{}.day(*day) : QString{};
    setText(read);
    setVisible(day.has_value());
    if (m_line->accessibleDescription() != m_read || m_read.isEmpty())
        m_description = m_line->accessibleDescription();
    m_line->setAccessibleDescription(read.isEmpty() ? m_description : read);
    m_read = read;
}

} // namespace rig
