#include "app/wording/plan_words.h"

#include "app/wording/formats.h"

#include <QStringList>

namespace rig {

QString PlanWords::leftLetter() { return tr("L", "left wing, on the plan"); }
QString PlanWords::rightLetter() { return tr("R", "right wing, on the plan"); }
QString PlanWords::number(int order) { return Formats{}.count(order); }

QString PlanWords::coupling(const Told& told)
{
    QStringList parts;
    if (told.order > 0 && told.inUse)
        parts << tr("number %1").arg(number(told.order));
    if (told.bySelf)
        parts << tr("connects by itself");
    if (!told.inUse)
        parts << tr("not in use");
    else if (!told.word.isEmpty())
        parts << told.word;
    if (parts.isEmpty())
        return told.name;
    return tr("%1 (%2)", "coupling, what is said of it")
        .arg(told.name, parts.join(tr(", ", "between parts of a list")));
}

QString PlanWords::plan(const std::vector<Told>& all)
{
    QStringList sentences;
    sentences << tr("The airframe from above, nose up.");
    QStringList left;
    QStringList middle;
    QStringList right;
    for (const Told& one : all) {
        QStringList& side = one.side == Side::Left ? left : one.side == Side::Right ? right : middle;
        side << coupling(one);
        if (one.chosen)
            sentences.insert(0, tr("Chosen: %1.").arg(coupling(one)));
    }
    const QString comma = tr(", ", "between parts of a list");
    if (!left.isEmpty())
        sentences << tr("Left: %1.").arg(left.join(comma));
    if (!right.isEmpty())
        sentences << tr("Right: %1.").arg(right.join(comma));
    if (!middle.isEmpty())
        sentences << tr("In the middle: %1.").arg(middle.join(comma));
    if (all.empty())
        sentences << tr("It has no couplings yet.");
    return sentences.join(QLatin1Char(' '));
}

QString PlanWords::name() { return tr("Where the couplings are"); }
QString PlanWords::keysToChoose() { return tr("Arrow keys go to the next coupling in their direction."); }

QString PlanWords::keysToMove()
{
    return tr("Arrow keys move the chosen coupling, with Shift by larger steps.");
}

} // namespace rig
