#include "app/wording/verdict_words.h"

#include "app/wording/formats.h"
#include "app/wording/question_words.h"
#include "app/wording/witness_words.h"

namespace rig {

QString VerdictWords::word(Verdict verdict)
{
    switch (verdict) {
    case Verdict::NoBandYet:
        return tr("No band yet");
    case Verdict::Outside:
        return tr("Outside the band");
    case Verdict::CannotTell:
        return tr("Cannot tell");
    case Verdict::NearEdge:
        return tr("Near the edge of the band");
    case Verdict::Inside:
        break;
    }
    return tr("Inside the band");
}

QString VerdictWords::shortWord(Verdict verdict)
{
    switch (verdict) {
    case Verdict::NoBandYet:
        return tr("no band yet");
    case Verdict::Outside:
        return tr("outside");
    case Verdict::CannotTell:
        return tr("cannot tell");
    case Verdict::NearEdge:
        return tr("near edge");
    case Verdict::Inside:
        break;
    }
    return tr("inside");
}

QString VerdictWords::weakness(const Band& band)
{
    if (band.isThin() && band.scatterAtCap)
        return tr("This band is thin: it rests on few readings, which scatter too much, and can mislead "
                  "either way.");
    if (band.isThin())
        return tr("This band is thin: it rests on few readings and can mislead either way.");
    return band.scatterAtCap ? tr("The readings scatter more than a band can follow.") : QString{};
}

QString VerdictWords::rarity(const Judgement& judgement)
{
    switch (judgement.verdict) {
    case Verdict::Outside:
    case Verdict::NearEdge:
        return tr("Locked readings this far out: %1.").arg(Formats{}.oneIn(judgement.tail));
    case Verdict::Inside:
    case Verdict::NoBandYet:
    case Verdict::CannotTell:
        break;
    }
    return {};
}

namespace {

// Where a reading near an edge stands to the two edges on its side, as the strip shows it.
enum class AtEdge { NotKnown, TouchesInner, Between, BeyondOuter };

AtEdge placeAtEdge(const Judgement& judgement, const GapInterval& reading)
{
    constexpr double kSeenAsOne = 0.005; // mm; figures are told in hundredths
    if (!judgement.band)
        return AtEdge::NotKnown;
    const BandEdges& inner = judgement.band->inner;
    const BandEdges& outer = judgement.band->outer;
    const double enters = reading.enters.inMillimetres();
    if (judgement.direction == Direction::Below) {
        if (enters < outer.lower)
            return AtEdge::BeyondOuter;
        const bool touches = reading.refuses && reading.refuses->inMillimetres() > inner.lower - kSeenAsOne;
        return touches ? AtEdge::TouchesInner : AtEdge::Between;
    }
    if (!reading.refuses || reading.refuses->inMillimetres() > outer.upper)
        return AtEdge::BeyondOuter;
    return enters < inner.upper + kSeenAsOne ? AtEdge::TouchesInner : AtEdge::Between;
}

QString nearEdge(const Judgement& judgement, const GapInterval& reading)
{
    const QString interval = Formats{}.interval(reading);
    const bool below = judgement.direction == Direction::Below;
    switch (placeAtEdge(judgement, reading)) {
    case AtEdge::TouchesInner:
        return below ? VerdictWords::tr("%1 touches the lower inner edge of this coupling's band from below.")
                           .arg(interval)
                     : VerdictWords::tr("%1 touches the upper inner edge of this coupling's band from above.")
                           .arg(interval);
    case AtEdge::Between:
        return below ? VerdictWords::tr(
                           "%1 lies between the lower inner and outer edge of this coupling's band.")
                           .arg(interval)
                     : VerdictWords::tr(
                           "%1 lies between the upper inner and outer edge of this coupling's band.")
                           .arg(interval);
    case AtEdge::BeyondOuter:
        return below ? VerdictWords::tr("%1 reaches below the lower outer edge of this coupling's band.")
                           .arg(interval)
                     : VerdictWords::tr("%1 reaches above the upper outer edge of this coupling's band.")
                           .arg(interval);
    case AtEdge::NotKnown:
        break;
    }
    return below ? VerdictWords::tr("%1 lies at the lower edge of this coupling's band.").arg(interval)
                 : VerdictWords::tr("%1 lies at the upper edge of this coupling's band.").arg(interval);
}

} // namespace

// Outside speaks of the band only: a locked reading further out may well stand among the earlier ones.
QString VerdictWords::place(const Judgement& judgement, const QString& interval)
{
    const bool below = judgement.direction == Direction::Below;
    switch (judgement.verdict) {
    case Verdict::Outside:
        return below ? tr("%1 lies below this coupling's band.").arg(interval)
                     : tr("%1 lies above this coupling's band.").arg(interval);
    case Verdict::Inside:
        return tr("%1 lies where this coupling usually reads.").arg(interval);
    case Verdict::NearEdge:
    case Verdict::NoBandYet:
    case Verdict::CannotTell:
        break;
    }
    return interval;
}

QString VerdictWords::cannotTell(const Judgement& judgement, const QString& interval)
{
    switch (judgement.reason) {
    case Reason::GaugeQuarantined:
        return tr("%1 was read with a gauge in doubt. Read once with another gauge.").arg(interval);
    case Reason::GapIsNoWitness:
        return tr("%1 says nothing on this coupling: locked and part-seated were both seen at such gaps.")
            .arg(interval);
    case Reason::ReachesBeyondBand:
        return tr("%1 reaches beyond the band. Read once with a finer gauge. Repeats with this one tell no "
                  "more.")
            .arg(interval);
    case Reason::FactsInDoubt:
        return tr("%1 is not judged: another program changed facts that this coupling's band rests on, or "
                  "may have.")
            .arg(interval);
    case Reason::BallNotSeen:
        return tr("%1 is kept. The ball was not seen: look again with a mirror or a light, and answer again.")
            .arg(interval);
    case Reason::PlungerNotSeen:
        return tr("%1 is kept. The plunger was not seen: look again with a mirror or a light, and answer "
                  "again.")
            .arg(interval);
    case Reason::SleeveNotSeen:
        return tr("%1 is kept. The sleeve was not seen: look again with a mirror or a light, and answer "
                  "again.")
            .arg(interval);
    case Reason::PinNotSeen:
        return tr("%1 is kept. The safety pin was not seen: look again with a mirror or a light, and answer "
                  "again.")
            .arg(interval);
    case Reason::JointNotSeen:
        return tr("%1 is kept. The joint was not seen: look again with a mirror or a light, and answer "
                  "again.")
            .arg(interval);
    case Reason::None:
    case Reason::TooFewReadings:
    case Reason::ReadingsAllOpen:
        break;
    }
    return tr("%1 cannot be judged.").arg(interval);
}

QString VerdictWords::noBand(const Judgement& judgement, const QString& interval)
{
    if (judgement.reason == Reason::ReadingsAllOpen)
        return tr("%1 is kept. Every baseline reading was wider than the gauge could reach, so there is no "
                  "band: use a "
                  "gauge that reaches.")
            .arg(interval);
    return tr("%1 is kept. Not enough confirmed readings: this reading cannot be judged.").arg(interval);
}

QString VerdictWords::sentence(const Judgement& judgement, const GapInterval& reading)
{
    const QString interval = Formats{}.interval(reading);
    if (judgement.verdict == Verdict::NoBandYet)
        return noBand(judgement, interval);
    QStringList sentences;
    if (judgement.verdict == Verdict::CannotTell)
        sentences << cannotTell(judgement, interval);
    else if (judgement.verdict == Verdict::NearEdge)
        sentences << nearEdge(judgement, reading);
    else
        sentences << place(judgement, interval);
    if (judgement.band)
        sentences << weakness(*judgement.band);
    sentences.removeAll(QString{});
    return sentences.join(QLatin1Char(' '));
}

QString VerdictWords::more(const Judgement& judgement)
{
    if (judgement.verdict == Verdict::NoBandYet)
        return {};
    QStringList sentences;
    if (judgement.band)
        sentences << tr("The band is %1, drawn from %n confirmed readings.", nullptr,
                        judgement.band->readings)
                         .arg(Formats{}.band(judgement.band->inner));
    sentences << rarity(judgement) << WitnessWords::besideVerdict(judgement.witness);
    sentences.removeAll(QString{});
    return sentences.join(QLatin1Char(' '));
}

QString VerdictWords::explanation(const Judgement& judgement, const GapInterval& reading)
{
    const QString all = more(judgement);
    return all.isEmpty() ? sentence(judgement, reading)
                         : sentence(judgement, reading) + QLatin1Char(' ') + all;
}

QString VerdictWords::keyMore() { return tr("D", "key: more details"); }
QString VerdictWords::showMore() { return tr("More  (%1)").arg(keyMore()); }
QString VerdictWords::showLess() { return tr("Less  (%1)").arg(keyMore()); }

QString VerdictWords::stoppedCaution()
{
    return tr("The stop at this joint stands, whatever its gap says. Any gap is one sign only.");
}

QString VerdictWords::outsideThen(const QString& day)
{
    return tr("It was read on %1. Say in the questions (Ctrl+6) who resolved it, what was found and what was "
              "done.")
        .arg(day);
}

QString VerdictWords::caution(Verdict verdict, const QString& callName, const QString& callPhone)
{
    switch (verdict) {
    case Verdict::Outside: {
        QString whom = callName.isEmpty() ? tr("a person entitled to decide") : callName;
        if (!callPhone.isEmpty())
            whom = tr("%1 (%2)", "name (telephone)").arg(whom, callPhone);
        return QStringList{tr("Stop, leave it as it is, call %1.").arg(whom), QuestionWords::onlyWhenFound(),
                           tr("Connecting it again without finding out why is not a fix."),
                           tr("The gap is one sign only, and enough to stop.")}
            .join(QLatin1Char(' '));
    }
    case Verdict::NoBandYet:
    case Verdict::CannotTell:
        return tr(
            "The look, the pull and the second person have to carry it. This gap tells nothing, and any "
            "gap is one sign only.");
    case Verdict::NearEdge:
        return tr("Look and pull with care, and watch where the next readings go. A gap near the edge of the "
                  "band is one sign only.");
    case Verdict::Inside:
        break;
    }
    return tr("Finish the look, the pull and the second person. A gap inside the band is one sign only.");
}

QString VerdictWords::cautionOfSecond(Verdict verdict, const QString& callName, const QString& callPhone)
{
    switch (verdict) {
    case Verdict::NoBandYet:
    case Verdict::CannotTell:
        return tr("The look and the pull have to carry it. This gap tells nothing, and any gap is one sign "
                  "only.");
    case Verdict::Inside:
        return tr("Finish the look and the pull. A gap inside the band is one sign only.");
    case Verdict::NearEdge:
    case Verdict::Outside:
        break;
    }
    return caution(verdict, callName, callPhone);
}

} // namespace rig
