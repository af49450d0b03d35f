#include "app/widgets/announcer.h"

#include "app/widgets/parts.h"

#include <QAccessible>
#include <QTimer>

#include <algorithm>
#include <utility>

namespace rig {

namespace {

// Milliseconds: the verdict and that it is saved come of one press.
constexpr int kGathering = 120;

QString ended(const QString& sentence)
{
    const QChar last = sentence.back();
    const bool isEnded = last.isPunct() && last != QLatin1Char(')') && last != QChar{u'»'};
    return isEnded ? sentence : sentence + QLatin1Char('.');
}

} // namespace

Announcer::Announcer(QWidget* window) : QWidget{window}, m_gathering{new QTimer{this}}
{
    setObjectName("announcer");
    setFocusPolicy(Qt::NoFocus);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFixedSize(1, 1); // what has no size is not there to be heard
    lower();
    hide();
    m_gathering->setSingleShot(true);
    m_gathering->setInterval(kGathering);
    connect(m_gathering, &QTimer::timeout, this, &Announcer::tell);
}

Announcer::Told& Announcer::lastOf(QWidget& teller)
{
    std::erase_if(m_told, [](const Told& one) { return !one.teller; });
    const auto found = std::ranges::find(m_told, &teller, [](const Told& one) { return one.teller.data(); });
    return found == m_told.end() ? m_told.emplace_back(Told{&teller, {}, false}) : *found;
}

void Announcer::say(QWidget& teller, const QString& sentence)
{
    Told& last = lastOf(teller);
    if (last.sentence == sentence)
        return;
    last.sentence = sentence;
    last.isDue = !sentence.isEmpty();
    if (!last.isDue)
        return;
    const auto at = m_told.begin() + (&last - m_told.data());
    std::rotate(at, at + 1, m_told.end());
    if (!m_gathering->isActive())
        m_gathering->start();
}

void Announcer::tell()
{
    QStringList told;
    for (Told& one : m_told) {
        if (!std::exchange(one.isDue, false) || !one.teller)
            continue;
        if (one.teller->isVisible())
            told << ended(one.sentence);
        else
            one.sentence.clear(); // still to be told where it is said again
    }
    if (told.isEmpty())
        return;
    hide(); // a notification is read when it comes
    setAccessibleName(told.join(QLatin1Char(' ')));
    show();
    QAccessibleEvent alert{this, QAccessible::Alert};
    QAccessible::updateAccessibility(&alert);
}

void announce(QWidget& teller, const QString& sentence)
{
    if (auto* one = teller.window()->findChild<Announcer*>(QString{}, Qt::FindDirectChildrenOnly))
        one->say(teller, sentence);
}

void announceAnew(QWidget& teller, const QString& sentence)
{
    announce(teller, {});
    announce(teller, sentence);
}

void sayIn(QLabel* label, const QString& sentence)
{
    label->setText(sentence);
    label->setVisible(!sentence.isEmpty());
    const QString kind = label->property("kind").toString();
    if (kind == QLatin1String("problem") || kind == QLatin1String("caution"))
        announce(*label, sentence);
}

void sayAloud(QLabel* label, const QString& sentence)
{
    sayIn(label, sentence);
    announce(*label, sentence);
}

} // namespace rig
