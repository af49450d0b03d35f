#include "app/wording/standing_words.h"

#include "app/wording/formats.h"
#include "app/wording/verdict_words.h"

namespace rig {

namespace {

// Of what is a verdict; the other kinds have words of their own.
Verdict verdictOf(Says says)
{
    switch (says) {
    case Says::Outside:
        return Verdict::Outside;
    case Says::NoBandYet:
        return Verdict::NoBandYet;
    case Says::NearEdge:
        return Verdict::NearEdge;
    case Says::Moved:
    case Says::Scatters:
    case Says::WasOutside:
    case Says::OutsideBefore:
    case Says::Inside:
        return Verdict::Inside;
    case Says::Stopped:
    case Says::Asked:
    case Says::PartSeated:
    case Says::NotSecured:
    case Says::InDoubt:
    case Says::CannotTell:
    case Says::Hidden:
    case Says::NotRead:
    case Says::NoGap:
        break;
    }
    return Verdict::CannotTell;
}

bool isAsked(const CouplingStanding& standing)
{
    return standing.says == Says::Stopped || standing.says == Says::Asked;
}

} // namespace

QString StandingWords::word(const CouplingStanding& standing)
{
    switch (standing.says) {
    case Says::Stopped:
    case Says::Asked:
        return standing.asked ? asked(*standing.asked, standing.surface) : QString{};
    case Says::PartSeated:
        return tr("found part-seated");
    case Says::NotSecured:
        return tr("found not secured");
    case Says::InDoubt:
        return tr("facts in doubt", "that it rests on: another program changed them");
    case Says::Hidden:
        return tr("hidden", "what was found is kept back from the second person");
    case Says::NotRead:
        return tr("not read");
    case Says::NoGap:
        return tr("no gap to measure");
    case Says::Moved:
        return tr("moved");
    case Says::Scatters:
        return tr("scatter changed");
    case Says::WasOutside:
        return tr("was outside");
    case Says::OutsideBefore:
        return tr("outside before", "before the period, and nobody has said what it was");
    case Says::Outside:
    case Says::CannotTell:
    case Says::NoBandYet:
    case Says::NearEdge:
    case Says::Inside:
        break;
    }
    return VerdictWords::shortWord(verdictOf(standing.says));
}

QString StandingWords::inFull(const CouplingStanding& standing)
{
    if (standing.says == Says::InDoubt)
        return tr("Cannot tell: another program changed facts it rests on, or may have");
    return standing.factsInDoubt
               ? tr("%1; another program changed facts it rests on, or may have", "how it stands")
                     .arg(byItself(standing))
               : byItself(standing);
}

QString StandingWords::whereFacts() { return tr("Show these facts with Ctrl+7."); }

QString StandingWords::byItself(const CouplingStanding& standing)
{
    switch (standing.says) {
    case Says::Outside:
        if (standing.isUnresolved)
            return tr("Outside the band, and nobody has resolved it");
        break;
    case Says::Stopped:
    case Says::Asked:
        if (standing.asked == QuestionKind::CannotSee)
            return notSeen(standing.askedAbout.value_or(CheckKind::BallInSocket));
        return tr("Not found out yet: %1", "what is asked").arg(askedInFull(standing));
    case Says::PartSeated:
        return tr("Found part-seated");
    case Says::NotSecured:
        return tr("Found not secured");
    case Says::Hidden:
        return tr("Hidden until the second person is done here");
    case Says::NotRead:
        return tr("Not read in this period");
    case Says::NoGap:
        return tr("No gap to measure");
    case Says::Moved:
        return tr("Inside the band, and it moved");
    case Says::Scatters:
        return tr("Inside the band, and its scatter changed");
    case Says::WasOutside:
        return tr("Inside the band, and outside before in this period");
    case Says::OutsideBefore:
        return tr("Inside the band; outside before this period, on %1, and nobody has said what it was",
                  "day")
            .arg(standing.outsideBefore ? Formats{}.day(*standing.outsideBefore) : QString{});
    case Says::InDoubt:
    case Says::CannotTell:
    case Says::NoBandYet:
    case Says::NearEdge:
    case Says::Inside:
        break;
    }
    return VerdictWords::word(verdictOf(standing.says));
}

QString StandingWords::withReading(const CouplingStanding& standing)
{
    if (!standing.reading || standing.says == Says::NotRead || standing.says == Says::NoGap)
        return isAsked(standing) ? askedInFull(standing) : word(standing);
    if (standing.says == Says::OutsideBefore && standing.outsideBefore)
        return tr("outside before this period, on %1; last read: %2", "day, reading")
            .arg(Formats{}.day(*standing.outsideBefore), Formats{}.interval(standing.reading->interval));
    const bool isOfThePeriod =
        standing.says == Says::Moved || standing.says == Says::Scatters || standing.says == Says::WasOutside;
    const bool isApart = isOfThePeriod || standing.says == Says::InDoubt;
    // What is asked in words need not be about the latest reading.
    if (standing.asked == QuestionKind::SurfaceDoubt && isAsked(standing))
        return tr("%1; last read: %2", "what is asked of a surface, reading of the joint")
            .arg(askedInFull(standing), Formats{}.interval(standing.reading->interval));
    if (isApart || standing.asked == QuestionKind::Asked || (isAsked(standing) && standing.isReadElsewhere()))
        return tr("%1; last read: %2", "what befell it in the period, reading")
            .arg(word(standing), Formats{}.interval(standing.reading->interval));
    return tr("%1: %2", "how it stands, reading")
        .arg(word(standing), Formats{}.interval(standing.reading->interval));
}

QString StandingWords::thisReading(Verdict verdict, const QString& explanation)
{
    return tr("This reading by itself: %1. %2", "verdict, explanation")
        .arg(VerdictWords::shortWord(verdict), explanation);
}

QString StandingWords::notSeen(CheckKind kind)
{
    switch (kind) {
    case CheckKind::BallInSocket:
        return tr("Cannot tell: the ball was not seen");
    case CheckKind::PlungerHome:
        return tr("Cannot tell: the plunger was not seen");
    case CheckKind::SleeveAtStop:
        return tr("Cannot tell: the sleeve was not seen");
    case CheckKind::PinThrough:
        return tr("Cannot tell: the safety pin was not seen");
    case CheckKind::Engaged:
    case CheckKind::NoStep:
    case CheckKind::LineConnected:
    case CheckKind::Connected:
        return tr("Cannot tell: the joint was not seen");
    case CheckKind::Pull:
    case CheckKind::Secured:
        break;
    }
    return tr("Cannot tell: the lock was not seen");
}

QString StandingWords::asFound(const GapInterval& reading)
{
    return tr("%1, measured as found. It is kept apart and is no locked reading.")
        .arg(Formats{}.interval(reading));
}

QString StandingWords::askedInFull(const CouplingStanding& standing)
{
    const QString asked = word(standing);
    if (!standing.surface || standing.surface->tie == SurfaceTie::Own)
        return asked;
    return standing.surface->tie == SurfaceTie::Circuit
               ? tr("%1, in the same circuit", "a surface and what it was").arg(asked)
               : tr("%1, perhaps in the same circuit", "a surface and what it was").arg(asked);
}

QString StandingWords::surfaceAsked(const std::optional<DoubtedSurface>& surface)
{
    const bool isOwn = !surface || surface->tie == SurfaceTie::Own;
    const QString name = surface ? QString::fromStdString(surface->name) : QString{};
    if (surface && surface->movedWrong)
        return isOwn ? tr("its surface moved the wrong way") : tr("%1 moved the wrong way").arg(name);
    if (surface && surface->saidNo())
        return isOwn ? tr("“no” at its surface") : tr("“no” at %1", "a surface").arg(name);
    if (surface && surface->answer)
        return isOwn ? tr("its surface not seen") : tr("%1 not seen", "a surface").arg(name);
    return isOwn ? tr("its surface wrong or not seen")
                 : tr("%1 wrong or not seen", "a surface elsewhere in the circuit").arg(name);
}

QString StandingWords::asked(const std::string& surface, const Question& about)
{
    return surfaceAsked(
        DoubtedSurface{surface, SurfaceTie::Circuit, about.surfaceAnswer, about.isWrongMovement()});
}

QString StandingWords::asked(QuestionKind kind, const std::optional<DoubtedSurface>& surface)
{
    switch (kind) {
    case QuestionKind::OutsideReading:
        return tr("a reading outside");
    case QuestionKind::AnsweredNo:
        return tr("answered “no”");
    case QuestionKind::CannotSee:
        return tr("could not be seen");
    case QuestionKind::ReadingsDisagree:
        return tr("two readings disagree");
    case QuestionKind::SidesSwapped:
        return tr("left and right look swapped");
    case QuestionKind::SurfaceDoubt:
        return surfaceAsked(surface);
    case QuestionKind::BandInDoubt:
        return tr("its band is in doubt");
    case QuestionKind::ShownPartSeated:
        return tr("shown part-seated on purpose");
    case QuestionKind::Asked:
        return tr("a question in words");
    case QuestionKind::GaugeQuarantined:
        break;
    }
    return tr("readings in doubt");
}

} // namespace rig
