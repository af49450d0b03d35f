#include "app/wording/plan_field_words.h"

namespace rig {

QString PlanFieldWords::span() { return tr("&Span in metres"); }
QString PlanFieldWords::spanHint() { return tr("For the plan view, like 15 or 17.5. May stay empty."); }

QString PlanFieldWords::notASpan(const QString& typed)
{
    return tr("“%1” is no span that can be read for sure. Type metres from 1 to 60, like 15 or 17.5.")
        .arg(typed);
}

QString PlanFieldWords::tail() { return tr("Tai&l"); }

QString PlanFieldWords::tailName(TailForm tail)
{
    switch (tail) {
    case TailForm::Low:
        return tr("Low tailplane");
    case TailForm::T:
        return tr("T-tail");
    case TailForm::V:
        return tr("V-tail");
    case TailForm::Unknown:
        break;
    }
    return tr("Not said", "form of the tail");
}

QString PlanFieldWords::wingPanels() { return tr("Wing pan&els"); }
QString PlanFieldWords::wingPanelsHint()
{
    return tr("Pieces of wing that are rigged, 1 to 8. May stay empty.");
}
QString PlanFieldWords::notPanels() { return tr("Type a whole number from 1 to 8, or nothing."); }

QString PlanFieldWords::seenFrom() { return tr("Seen f&rom"); }
QString PlanFieldWords::mirrorFrom() { return tr("Mirror h&elps from"); }
QString PlanFieldWords::mirrorHint() { return tr("Where a mirror shows what the eye does not reach."); }

QString PlanFieldWords::sideName(AccessSide side)
{
    switch (side) {
    case AccessSide::Above:
        return tr("Above");
    case AccessSide::Below:
        return tr("Below");
    case AccessSide::Front:
        return tr("The front");
    case AccessSide::Rear:
        return tr("The rear");
    case AccessSide::Left:
        return tr("The left");
    case AccessSide::Right:
        return tr("The right");
    case AccessSide::Unknown:
        break;
    }
    return tr("Not said", "from where a coupling is seen");
}

QString PlanFieldWords::across() { return tr("On the plan, &across"); }
QString PlanFieldWords::acrossHint()
{
    return tr("−100 the left wing tip, 0 the middle, 100 the right. Up and Down move it.");
}
QString PlanFieldWords::along() { return tr("On &the plan, along"); }
QString PlanFieldWords::alongHint() { return tr("0 the nose, 100 the tail. Up and Down move it."); }
QString PlanFieldWords::notAcross() { return tr("Type a whole number from −100 to 100, or nothing."); }
QString PlanFieldWords::notAlong() { return tr("Type a whole number from 0 to 100, or nothing."); }
QString PlanFieldWords::bothOrNeither() { return tr("Type both numbers of the place, or neither."); }

} // namespace rig
