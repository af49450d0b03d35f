#include "app/widgets/announcer.h"

#include "app/widgets/heard.h"
#include "app/widgets/parts.h"

#include <QAccessible>

namespace rig {

namespace {

void tellOf(QWidget* told)
{
    QAccessibleEvent alert{told, QAccessible::Alert};
    QAccessible::updateAccessibility(&alert);
}

} // namespace

Announcer::Announcer(QWidget* parent) : QWidget{parent}
{
    hearWhatIsPainted();
    setObjectName("announcer");
    setFocusPolicy(Qt::NoFocus);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFixedSize(1, 1); // what has no size is not there to be heard
}

void Announcer::say(Announced about, const QString& sentence)
{
    if (!isVisible())
        return;
    const auto last = m_said.find(about);
    if (last == m_said.end() ? sentence.isEmpty() : last->second == sentence)
        return;
    m_said[about] = sentence;
    if (sentence.isEmpty())
        return;
    setAccessibleName(sentence); // tells that the name has changed
    tellOf(this);
}

void Announcer::sayAnew(Announced about, const QString& sentence)
{
    m_said.erase(about);
    say(about, sentence);
}

void Announcer::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    beginAnew();
}

void Announcer::beginAnew()
{
    m_said.clear();
}

void sayAloud(QLabel* label, const QString& sentence)
{
    sayIn(label, sentence);
    if (!sentence.isEmpty() && label->isVisible())
        tellOf(label);
}

} // namespace rig
