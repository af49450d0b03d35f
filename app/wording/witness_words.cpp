#include "app/wording/witness_words.h"

#include "app/wording/formats.h"
#include "core/judgement/judge.h"
#include "core/numbers/distributions.h"

#include <cmath>

namespace rig {

QString WitnessWords::once(const WitnessFinding& finding)
{
    if (finding.above == 1)
        return tr("Part-seated was seen once here, above the band.");
    return finding.below == 1 ? tr("Part-seated was seen once here, below the band.")
                              : tr("Part-seated was seen once here, and it was not outside the band.");
}

QString WitnessWords::shown(const WitnessFinding& finding)
{
    if (finding.witness == Witness::NeverShown)
        return tr("No reading was noted as part-seated here.");
    if (finding.shown == 0)
        return {};
    const Formats formats;
    if (finding.witness == Witness::NotKnown && finding.outside() == 0)
        return tr("Part-seated was seen %n time(s) here, and there is no band to hold that against.", nullptr,
                  finding.shown);
    if (finding.shown == 1)
        return once(finding);
    if (finding.above == finding.shown)
        return tr("Part-seated was seen %n time(s) here, each time above the band.", nullptr, finding.shown);
    if (finding.below == finding.shown)
        return tr("Part-seated was seen %n time(s) here, each time below the band.", nullptr, finding.shown);
    if (finding.outside() == finding.shown)
        return tr("Part-seated was seen %n time(s) here: %1 above the band, %2 below it.", nullptr,
                  finding.shown)
            .arg(formats.count(finding.above), formats.count(finding.below));
    return tr("Part-seated was seen %n time(s) here: %1 above the band, %2 below it, %3 not outside it.",
              nullptr, finding.shown)
        .arg(formats.count(finding.above), formats.count(finding.below),
             formats.count(finding.shown - finding.outside()));
}

QStringList WitnessWords::besideVerdict(const WitnessFinding& finding)
{
    QStringList sentences{shown(finding)};
    switch (finding.witness) {
    case Witness::TooRare:
        sentences << tr("That is too rarely to say whether it always would lie there.");
        break;
    case Witness::Good:
    case Witness::Weak:
        sentences << tr("That does not say that it always would lie there.");
        break;
    case Witness::NeverShown:
    case Witness::NotKnown:
    case Witness::None:
        break;
    }
    sentences.removeAll(QString{});
    return sentences;
}

QString WitnessWords::level(const WitnessFinding& finding)
{
    switch (finding.witness) {
    case Witness::NeverShown:
        return {};
    case Witness::TooRare:
        return tr("That is too rarely to say how far the gap tells the two apart: it takes %1 at least.")
            .arg(Formats{}.count(kShownForWeakWitness));
    case Witness::NotKnown:
        return tr("How far the gap tells part-seated from locked here is not known yet: it takes a band and "
                  "part-seated readings with both ends.");
    case Witness::Good:
        return tr("The gap is a good witness here, and still one sign only: look and pull as ever.");
    case Witness::Weak:
        return tr("The gap is a weak witness here. It takes %1 readings on %2 days, all far outside, before "
                  "more can be said.")
            .arg(Formats{}.count(kShownForGoodWitness), Formats{}.count(kDaysForGoodWitness));
    case Witness::None:
        break;
    }
    return tr("The gap is no witness here: it cannot tell part-seated from locked.");
}

QString WitnessWords::bound(const WitnessFinding& finding)
{
    if (finding.shown == 0 || (finding.witness == Witness::NotKnown && finding.outside() == 0))
        return {};
    const double share = numbers::shareAtMost(finding.shown - finding.outside(), finding.shown, 0.95);
    return tr("So few can mislead: up to %1 in 100 part-seated joints might not lie outside (one-sided 95 % "
              "bound).")
        .arg(Formats{}.count(static_cast<int>(std::ceil(100 * share - 1e-9))));
}

} // namespace rig
