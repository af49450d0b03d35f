#include "app/wording/sign_off_words.h"

#include "app/wording/formats.h"

namespace rig {

QString SignOffWords::standing(const SignOffStanding& standing)
{
    const QString until = standing.expires ? Formats{}.day(*standing.expires) : QString{};
    switch (standing.state) {
    case SignOffState::Signed:
        return tr("signed off until %1").arg(until);
    case SignOffState::Expired:
        if (standing.byLayoff && standing.last &&
            standing.last->monthsWithoutRigging == kMonthsWithoutRigging)
            return tr("sign-off expired on %1 (three months without rigging)").arg(until);
        return standing.byLayoff ? tr("sign-off expired on %1 (too long without rigging)").arg(until)
                                 : tr("sign-off expired on %1").arg(until);
    case SignOffState::Withdrawn:
        return tr("sign-off withdrawn");
    case SignOffState::Never:
        break;
    }
    return tr("not signed off on this airframe");
}

QString SignOffWords::named(const QString& person, const SignOffStanding& standing)
{
    return tr("%1: %2", "person, how they stand").arg(person, SignOffWords::standing(standing));
}

QString SignOffWords::why()
{
    return tr(
        "What the person responsible for this airframe has stated on Know this airframe. It informs; it "
        "grants nothing and stops nothing.");
}

QString SignOffWords::onThatDay(const QStringList& persons)
{
    return tr("How they stood on this airframe on that day: %1.").arg(persons.join(QStringLiteral("; ")));
}

QString SignOffWords::today(const QStringList& persons)
{
    return tr("How they stand on this airframe: %1.").arg(persons.join(QStringLiteral("; ")));
}

} // namespace rig
