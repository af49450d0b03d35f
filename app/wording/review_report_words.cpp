#include "app/wording/review_report_words.h"

#include "app/wording/formats.h"
#include "app/wording/report_words.h"
#include "app/wording/sentence_parts.h"
#include "core/numbers/grading.h"

#include <QStringList>

#include <cmath>

namespace rig {

QString ReviewReportWords::title() { return tr("Engineer’s report on the control couplings"); }

QString ReviewReportWords::checked(const std::vector<Day>& days, const QString& how, const QString& found)
{
    QString ended = found.trimmed();
    if (!ended.endsWith(QLatin1Char('.')))
        ended += QLatin1Char('.');
    return tr("%1, %2: %3", "days, how, found").arg(SentenceParts::days(days), how, ended);
}

QString ReviewReportWords::fittings() { return tr("Fittings that began, and what changed"); }
QString ReviewReportWords::began() { return tr("Began"); }
QString ReviewReportWords::reason() { return tr("What was done"); }
QString ReviewReportWords::bandBefore() { return tr("Band before"); }
QString ReviewReportWords::bandAfter() { return tr("Band after"); }
QString ReviewReportWords::bandNotYet() { return tr("none yet"); }
QString ReviewReportWords::doubtedBands() { return tr("Bands that readings in doubt were part of"); }
QString ReviewReportWords::withoutDoubted() { return tr("Without them, as judged"); }
QString ReviewReportWords::withThem() { return tr("With them"); }
QString ReviewReportWords::events() { return tr("What was done to the airframe"); }
QString ReviewReportWords::eventHead() { return tr("Event"); }
QString ReviewReportWords::whole() { return tr("whole airframe"); }

QString ReviewReportWords::running(const ReviewPeriod& period)
{
    return tr("Engineer’s report, %1", "days").arg(fromTo(period.from, period.to));
}

QString ReviewReportWords::fileName(const QString& registration, const QString& lastDay)
{
    return tr("%1-%2-review.pdf", "registration, last day; a file's name")
        .arg(SentenceParts::inFileName(registration), lastDay);
}

QString ReviewReportWords::whatThisIs()
{
    return tr(
        "What the locked gap of each coupling read in this period, against that coupling’s own past. A "
        "band is that past, never a limit, and a gap is one sign only. Manuals, local rules and persons "
        "licensed to decide go before anything printed here.");
}

QString ReviewReportWords::notEntered(const QStringList& what)
{
    return tr("Not entered: %1.").arg(list(what));
}

QString ReviewReportWords::airframe() { return tr("Airframe"); }
QString ReviewReportWords::serial() { return tr("Serial number"); }
QString ReviewReportWords::jurisdiction() { return tr("Jurisdiction"); }
QString ReviewReportWords::manuals() { return tr("Manuals"); }
QString ReviewReportWords::period() { return tr("Period"); }
QString ReviewReportWords::annual() { return tr("Annual"); }
QString ReviewReportWords::riggings() { return tr("Riggings"); }
QString ReviewReportWords::readings() { return tr("Readings"); }
QString ReviewReportWords::measuredBy() { return tr("Measured by"); }
QString ReviewReportWords::measuredWith() { return tr("Measured with"); }
QString ReviewReportWords::nobody() { return tr("nobody"); }
QString ReviewReportWords::nothing() { return tr("nothing"); }

QString ReviewReportWords::fromTo(Day from, Day to)
{
    const Formats formats;
    return tr("%1 to %2", "days").arg(formats.day(from), formats.day(to));
}

QString ReviewReportWords::annualDue(Day day, std::optional<double> riggingsToCome)
{
    const QString due = Formats{}.day(day);
    if (!riggingsToCome)
        return tr("%1; the pace of riggings is not known yet", "day").arg(due);
    const int riggings = static_cast<int>(std::lround(*riggingsToCome));
    if (riggings <= 0)
        return due;
    return tr("%1; about %n more rigging(s) until then at the pace of the year before", "day, how many",
              riggings)
        .arg(due);
}

QString ReviewReportWords::riggingsCounted(const RiggingCounts& counts)
{
    return tr("%1 in the period; the last one has number %2")
        .arg(Formats{}.count(counts.riggings), Formats{}.count(counts.lastNumber));
}

QString ReviewReportWords::methodVersion(int version)
{
    return tr("Method version %1; every verdict here is worked out anew by it.")
        .arg(Formats{}.count(version));
}

QString ReviewReportWords::readingsOf(int readings, int inDoubt)
{
    if (inDoubt == 0)
        return tr("%1 at riggings, those that stand").arg(Formats{}.count(readings));
    return tr("%1 at riggings, those that stand; %2 of them with a gauge in doubt")
        .arg(Formats{}.count(readings), Formats{}.count(inDoubt));
}

QString ReviewReportWords::noReadings()
{
    return tr("No gap was read at a rigging in this period. Nothing can be said of any coupling by its gap.");
}

QString ReviewReportWords::list(const QStringList& names) { return names.join(tr(", ", "between names")); }

QString ReviewReportWords::withCount(const QString& name, int readings)
{
    return tr("%1 (%2)", "name, how many readings").arg(name, Formats{}.count(readings));
}

QString ReviewReportWords::standsOut() { return tr("What stands out first"); }

QString ReviewReportWords::firstIntro()
{
    return tr("In the order to look at, with the page where the details stand. Tick what was looked at.");
}

QString ReviewReportWords::coupling() { return tr("Coupling"); }
QString ReviewReportWords::couplingOrMatter() { return tr("Coupling or matter"); }
QString ReviewReportWords::standsNow() { return tr("Stands"); }
QString ReviewReportWords::what() { return tr("What stands out"); }
QString ReviewReportWords::page() { return tr("Page"); }
QString ReviewReportWords::betweenSigns() { return tr(" · ", "between signs"); }

QString ReviewReportWords::nothingStandsOut(int readings)
{
    return tr("nothing in %n reading(s); one sign only", nullptr, readings);
}

QString ReviewReportWords::noOpenQuestion() { return tr("no open question"); }

QString ReviewReportWords::reversed(int times, Day last, const QStringList& checks)
{
    return tr("moved otherwise than expected, or not at all: %n time(s), last on %1 (%2)", nullptr, times)
        .arg(Formats{}.day(last), list(checks));
}

QString ReviewReportWords::cannotSee(int times, Day last, const QStringList& checks)
{
    return tr("“cannot see” answered: %n time(s), last on %1 (%2)", nullptr, times)
        .arg(Formats{}.day(last), list(checks));
}

QString ReviewReportWords::openQuestion() { return tr("Open question"); }
QString ReviewReportWords::allCouplings() { return tr("All couplings"); }

QString ReviewReportWords::movedTogether(int days)
{
    return tr("read high, or low, together on %n day(s)", nullptr, days);
}

QString ReviewReportWords::movedTogetherWith(int days)
{
    return tr("on %n day(s) what was read by or with this one lay high, or low, on all couplings together",
              nullptr, days);
}

QString ReviewReportWords::contents() { return tr("Where it stands"); }

QString ReviewReportWords::nothingAbout(const QStringList& parts)
{
    return tr("These parts are left out because the period has nothing for them: %1. That says no more than "
              "that.")
        .arg(parts.join(tr("; ", "between parts of a report")));
}

QString ReviewReportWords::openQuestions() { return tr("Open questions"); }

QString ReviewReportWords::openAtTheEnd(Day day)
{
    return tr("Nobody has said yet, by %1, what was found here.").arg(Formats{}.day(day));
}

QString ReviewReportWords::closedQuestions() { return tr("Questions asked, and how they were closed"); }
QString ReviewReportWords::asked() { return tr("Asked"); }
QString ReviewReportWords::by() { return tr("By"); }
QString ReviewReportWords::question() { return tr("Question"); }
QString ReviewReportWords::foundAndDone() { return tr("Found and done"); }

QString ReviewReportWords::outside() { return tr("Every reading outside its band or found part-seated"); }

QString ReviewReportWords::outsideIntro()
{
    return tr(
        "Those that follow on one side share a row. What was corrected or struck has a line through it.");
}

QString ReviewReportWords::when() { return tr("When"); }
QString ReviewReportWords::reading() { return tr("Reading"); }
QString ReviewReportWords::story() { return tr("What was shown, and what came of it"); }

QString ReviewReportWords::eachCoupling() { return tr("Each coupling"); }

QString ReviewReportWords::eachIntro()
{
    return tr(
        "Coloured: the coupling’s own band; grey: outside this period. The chance at the annual holds only "
        "if the gap goes on as the readings say.");
}

QString ReviewReportWords::sharedIntro()
{
    return tr(
        "One bar for each rigging: the middle of all couplings’ readings, each against its own band, in "
        "that band’s scatters. When all move together on one day, check the leaf set, read again with "
        "another person, and look at each joint: stiff grease leaves plungers short.");
}

QString ReviewReportWords::measurers() { return tr("Who measures like whom"); }

QString ReviewReportWords::measurersIntro()
{
    return tr(
        "Each one’s readings against the mean of all, the couplings and the days allowed for; under ten "
        "readings nothing is said. The spread is that of one’s own readings about what the couplings do.");
}

QString ReviewReportWords::gauge() { return tr("Leaf set or gauge"); }
QString ReviewReportWords::looks() { return tr("Looks and pulls"); }

QString ReviewReportWords::looksIntro()
{
    return tr("What was stated at the riggings of the period. Each answer stands in looks.csv beside this "
              "report. A column or coupling of which nothing was stated is left out.");
}

QString ReviewReportWords::atRiggings() { return tr("Riggings"); }
QString ReviewReportWords::wholeFirst() { return tr("First person complete"); }
QString ReviewReportWords::wholeSecond() { return tr("Second person complete"); }
QString ReviewReportWords::answeredFelt() { return tr("Felt, not seen"); }
QString ReviewReportWords::answeredCannotSee() { return tr("“Cannot see”"); }
QString ReviewReportWords::answeredNo() { return tr("“No”"); }
QString ReviewReportWords::interrupted() { return tr("Interrupted"); }
QString ReviewReportWords::controlChecks() { return tr("Control checks and deflections"); }

QString ReviewReportWords::controlIntro()
{
    return tr("A part-seated joint can go unnoticed in a control check. Each answer stands in "
              "control_checks.csv, each figure in deflections.csv.");
}

QString ReviewReportWords::surface() { return tr("Surface"); }
QString ReviewReportWords::triedWhole() { return tr("Check complete"); }
QString ReviewReportWords::lastMeasured() { return tr("Last measured"); }

QString ReviewReportWords::measured(MeasureKind kind, const QString& figure)
{
    switch (kind) {
    case MeasureKind::Up:
        return tr("up %1").arg(figure);
    case MeasureKind::Down:
        return tr("down %1").arg(figure);
    case MeasureKind::FreePlay:
        break;
    }
    return tr("free play %1").arg(figure);
}

QString ReviewReportWords::onDay(const QStringList& measured, const QString& day)
{
    return tr("%1, %2", "figures, day").arg(measured.join(betweenSigns()), day);
}

QString ReviewReportWords::gaugeChecks() { return tr("Leaf sets and gauges, their checks and doubts"); }
QString ReviewReportWords::checks() { return tr("Checks and doubts"); }

QString ReviewReportWords::outOfUse(const QStringList& couplings)
{
    return tr("Out of use, and so without a section here; what was read on them stands in readings.csv: %1.")
        .arg(list(couplings));
}

QString ReviewReportWords::rest() { return tr("Riggings, and what is too little to say"); }
QString ReviewReportWords::howWorkedOut() { return tr("How the figures are worked out"); }

QString ReviewReportWords::methodLines()
{
    return tr(
        "Readings are intervals between the leaf that entered and the one that refused; every figure uses "
        "them as intervals. The band is predictive: where the next locked reading of this fitting falls, "
        "from confirmed baseline readings alone; where it is frozen, two persons have stated it.\n"
        "Of the following the first that holds is the verdict. No band yet: fewer than five confirmed "
        "readings. Outside: the whole reading lies beyond one edge of the outer band (99.73 %). Cannot tell: "
        "its gauge was in doubt, or the gap is no witness on this coupling. Near the edge: the whole reading "
        "lies beyond one edge of the inner band (95 %), also where it reaches over the outer edge. Cannot "
        "tell: it reaches beyond the outer band, unless it holds the middle of the band and is no wider than "
        "the median of the confirmed readings. Inside: every other reading, also one that reaches over an "
        "edge of the inner band. A coupling stands as “cannot tell”, too, while a part of its joint could "
        "not be seen, unless it is outside. Both contents hold on average over "
        "couplings; a band from few readings may hold noticeably more or less.\n"
        "Movement: one model of all readings of the airframe, in which each coupling stays, makes a step or "
        "drifts, and persons, gauges and days have offsets of their own; a movement is told when the chance "
        "that the coupling stayed is below 1 in 1000, or below 1 in 20 with an early sign (an EWMA of scores "
        "beyond its threshold). Scatter: the last ten readings about the path against all before them.");
}

// docs/method.md A: the contents of the two bands, and so what an unchanged airframe brings forth by itself.
QStringList ReviewReportWords::falseAlarms(const AirframeReview& review)
{
    int judged = 0;
    int couplings = 0;
    for (const CouplingReview& one : review.couplings) {
        judged += one.counts.all() - one.counts.noBand;
        couplings += one.band && one.latest ? 1 : 0;
    }
    if (judged == 0 || couplings == 0)
        return {};
    constexpr double kNear = 2 * (numbers::kInnerTail - numbers::kOuterTail);
    constexpr double kOutside = 2 * numbers::kOuterTail;
    const Formats formats;
    const auto counted = [&formats](double expected) {
        return expected < 0.05 ? tr("fewer than %1", "readings to be expected").arg(formats.number(0.1, 1))
                               : tr("about %1", "readings to be expected")
                                     .arg(formats.number(expected, expected < 10 ? 1 : 0));
    };
    const double riggings = 1 / (1 - std::pow(1 - kOutside, couplings));
    return {
        tr("Of %n reading(s) judged in this period, to be expected with nothing changed: near the edge %1, "
           "outside %2.",
           nullptr, judged)
            .arg(counted(judged * kNear), counted(judged * kOutside)),
        tr("With %n coupling(s) read at each rigging, that is an outside reading in about one rigging of "
           "%1.",
           nullptr, couplings)
            .arg(formats.number(riggings, 0))};
}

QString ReviewReportWords::tables()
{
    return tr("Every reading and every figure of this report stands in tables, in the folder that was saved "
              "beside it.");
}

QString ReviewReportWords::withoutAppendix()
{
    return tr(
        "Printed without its appendix: readings near the edge, corrected or struck stand in readings.csv, "
        "looks and pulls in looks.csv, control checks and deflections in control_checks.csv and "
        "deflections.csv, in the folder that was saved beside it.");
}

QString ReviewReportWords::cannotWrite(const QString& pdf, const QString& failed)
{
    if (failed == pdf)
        return ReportWords::cannotWrite(pdf);
    return tr("%1 was written, but not all of its tables: %2 cannot be written. Look whether the folder may "
              "be "
              "written to and the disk has room, then try again.")
        .arg(pdf, failed);
}

QString ReviewReportWords::byHand() { return tr("Findings"); }

QString ReviewReportWords::findings()
{
    return tr("Findings of the person entitled to decide. Left blank by the program.");
}

QString ReviewReportWords::signature() { return tr("Name, licence or authority, signature"); }
QString ReviewReportWords::placeAndDay() { return tr("Place and date"); }

} // namespace rig
