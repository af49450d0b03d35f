#include "app/wording/sign_off_words.h"

#include "app/wording/formats.h"
#include "app/wording/sentence_parts.h"

namespace rig {

QString SignOffWords::standing(const SignOffStanding& standing)
{
    const QString until = standing.expires ? Formats{}.day(*standing.expires) : QString{};
    switch (standing.state) {
    case SignOffState::Signed: {
        const QString lacked = standing.last ? notMet(*standing.last) : QString{};
        return lacked.isEmpty()
                   ? tr("signed off until %1").arg(until)
                   : tr("signed off until %1 (not met when it was signed: %2)").arg(until, lacked);
    }
    case SignOffState::Expired:
        if (standing.byLayoff && standing.last &&
            standing.last->monthsWithoutRigging == kMonthsWithoutRigging)
            return tr("sign-off expired on %1 (three months without rigging)").arg(until);
        return standing.byLayoff ? tr("sign-off expired on %1 (%n month(s) without rigging)", "",
                                      standing.last ? standing.last->monthsWithoutRigging : 0)
                                       .arg(until)
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

QString SignOffWords::notMet(const SignOff& signOff)
{
    return signOff.askedFor ? notMet(*signOff.askedFor) : QString{};
}

QString SignOffWords::notMet(const AskedFor& asked)
{
    QStringList lacks;
    if (asked.supervised < kSupervisedWanted)
        lacks << tr("%1 of %2 riggings under supervision").arg(asked.supervised).arg(kSupervisedWanted);
    if (asked.notPractised > 0)
        lacks << tr("%n coupling(s) not practised", "", asked.notPractised);
    if (asked.missed > 0)
        lacks << tr("%n coupling(s) called locked in practice and not locked", "", asked.missed);
    return SentenceParts::list(lacks);
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
