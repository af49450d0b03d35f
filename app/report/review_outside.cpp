#include "app/blocks/cells.h"
#include "app/pictures/marks.h"
#include "app/report/review_parts.h"
#include "app/wording/doubt_words.h"
#include "app/wording/record_words.h"
#include "app/wording/review_report_words.h"
#include "app/wording/verdict_words.h"

#include <algorithm>

namespace rig::engineer {

namespace {

// Readings of one coupling that are told in one line.
struct OutsideStories
{
    std::vector<const OutsideStory*> stories; // oldest first, never empty

    const OutsideStory& first() const { return *stories.front(); }
    const OutsideStory& last() const { return *stories.back(); }
    bool isOne() const { return stories.size() == 1; }
};

// What is so of every one of several readings stands above them, not in each row.
struct SaidOnce
{
    bool isEntered = false; // afterwards: nothing was shown at the time
    bool isNeverAsked = false;
};

SaidOnce saidOnceOf(const AirframeReview& review)
{
    constexpr int kSeveral = 3;
    int all = 0;
    int entered = 0;
    int notAsked = 0;
    for (const CouplingReview& coupling : review.couplings)
        for (const OutsideStory& story : coupling.outside) {
            ++all;
            entered += story.shown ? 0 : 1;
            notAsked += story.question || story.corrected || story.struck ? 0 : 1;
        }
    return {all >= kSeveral && entered == all, all >= kSeveral && notAsked == all};
}

OutsideStories storiesOf(const CouplingReview& coupling, const OutsideRun& run)
{
    OutsideStories stories;
    for (std::size_t i = run.first; i < run.first + run.count; ++i)
        stories.stories.push_back(&coupling.outside[i]);
    return stories;
}

// From the least to the most of them, and how they lie.
QString rangeOf(const Source& source, const OutsideStories& run)
{
    if (run.isOne())
        return source.formats.interval(run.first().reading.interval);
    const auto byGap = [](const OutsideStory* one, const OutsideStory* other) {
        return one->reading.interval.enters < other->reading.interval.enters;
    };
    const auto [least, most] = std::ranges::minmax_element(run.stories, byGap);
    return ReviewReportWords::readingsFromTo(static_cast<int>(run.stories.size()),
                                             source.formats.interval((*least)->reading.interval),
                                             source.formats.interval((*most)->reading.interval));
}

Cell readingCell(const Source& source, const OutsideStories& run)
{
    const OutsideStory& story = run.last();
    CellText interval = strongly(rangeOf(source, run));
    interval.struck = story.corrected || story.struck;
    Cell cell{interval};
    const bool isOutside = story.judgement.verdict == Verdict::Outside && story.judgement.band &&
                           story.reading.state == SeatState::Locked;
    if (!isOutside) {
        cell.push_back(strongly(RecordWords::found(story.foundAs().value_or(SeatState::PartSeated))));
        return cell;
    }
    const QString edges = source.formats.band(story.judgement.band->outer);
    CellText verdict = said(ReviewReportWords::outsideOf(edges, story.judgement.direction),
                            textRoleOf(story.judgement.verdict));
    verdict.mark = saysOf(story.judgement.verdict);
    cell.push_back(verdict);
    return cell;
}

Cell whenCell(const Source& source, const OutsideStories& run)
{
    const OutsideStory& first = run.first();
    const OutsideStory& last = run.last();
    const Day from = first.reading.when.localDay();
    const Day to = last.reading.when.localDay();
    Cell cell{said(from == to ? source.formats.day(from) : ReviewReportWords::fromTo(from, to))};
    cell.push_back(softly(ReviewReportWords::riggingNumbers(first.rigging, last.rigging)));
    return cell;
}

// Each one once.
template <typename Id, typename NameOf>
QString namesIn(const OutsideStories& run, Id Reading::*member, const NameOf& name)
{
    QStringList names;
    for (const OutsideStory* story : run.stories)
        if (const QString one = name(story->reading.*member); !one.isEmpty() && !names.contains(one))
            names << one;
    return ReviewReportWords::list(names);
}

// A name on its case is short, A or P: then its kind says what it is.
QString gaugeInSentence(const Gauge& gauge)
{
    constexpr std::size_t kShort = 3;
    return gauge.name.size() > kShort ? printedName(gauge.name)
                                      : DoubtWords::gauge(gauge.set.kind(), printedName(gauge.name));
}

QString readBy(const Source& source, const OutsideStories& run)
{
    const QString persons =
        namesIn(run, &Reading::person, [&](PersonId person) { return textOf(source.facts.nameOf(person)); });
    const QString gauges = namesIn(run, &Reading::gauge, [&](const std::optional<GaugeId>& id) {
        const Gauge* gauge = id ? source.facts.gauge(*id) : nullptr;
        return gauge ? gaugeInSentence(*gauge) : QString{};
    });
    return ReviewReportWords::readBy(persons, gauges);
}

QStringList readingsOf(const Source& source, const std::vector<Reading>& readings)
{
    QStringList each;
    for (const Reading& one : readings)
        each << ReviewReportWords::readingBy(source.formats.interval(one.interval),
                                             nameOf(source, one.person));
    return each;
}

// What came of one reading: what was shown of it, why it was taken back, what was found, and what was read
// then.
QStringList cameOf(const Source& source, const OutsideStory& story, const SaidOnce& once)
{
    QStringList came;
    if (!story.shown && !once.isEntered)
        came << ReviewReportWords::enteredAfterwards();
    else if (story.shown && story.shown->judgement.verdict != story.judgement.verdict)
        came << ReviewReportWords::shownThen(VerdictWords::word(story.shown->judgement.verdict));
    if (story.corrected)
        came << ReviewReportWords::correctedTo(story.corrected->state != SeatState::Locked
                                                   ? RecordWords::found(story.corrected->state)
                                                   : source.formats.interval(story.corrected->interval),
                                               textOf(story.corrected->note));
    if (story.struck)
        came << ReviewReportWords::sentence(ReviewReportWords::struck(textOf(story.struck->reason)));
    if (const QString together = ReviewWords::togetherThatDay(story); !together.isEmpty())
        came << together;
    if (story.question)
        came << (isOpenAtEnd(source, *story.question) ? ReviewReportWords::stillOpen()
                                                      : source.words.resolution(*story.question));
    else if (!story.corrected && !story.struck && !once.isNeverAsked)
        came << ReviewReportWords::neverAsked();
    came << notesOf(source, story.reading);
    if (!story.besides.empty())
        came << ReviewReportWords::readBesides(readingsOf(source, story.besides));
    if (!story.afterwards.empty())
        came << ReviewReportWords::readAfterwards(readingsOf(source, story.afterwards));
    return came;
}

// What came of the readings of a run, each thing once, with the days it is said of where there are several.
struct Outcome
{
    QString text;
    std::vector<Day> days;
};

std::vector<Outcome> outcomesOf(const Source& source, const OutsideStories& run, const SaidOnce& once)
{
    std::vector<Outcome> all;
    for (const OutsideStory* story : run.stories) {
        const QString text = cameOf(source, *story, once).join(QLatin1Char(' '));
        auto found = std::ranges::find(all, text, &Outcome::text);
        if (found == all.end())
            found = all.insert(all.end(), {text, {}});
        const Day day = story->reading.when.localDay();
        if (found->days.empty() || found->days.back() != day)
            found->days.push_back(day);
    }
    return all;
}

Cell outcomeCell(const Outcome& outcome, bool isOnly)
{
    if (isOnly || outcome.text.isEmpty())
        return {said(outcome.text)};
    return {said(ReviewReportWords::ofDays(outcome.days, outcome.text))};
}

// One row, and one more for each further thing that came of it: no story is parted by the end of a page.
void addRun(const Source& source, const CouplingReview& coupling, const OutsideRun& wanted,
            const SaidOnce& once, TableBlock& table)
{
    const OutsideStories run = storiesOf(coupling, wanted);
    const std::vector<Outcome> outcomes = outcomesOf(source, run, once);
    for (std::size_t i = 0; i < outcomes.size(); ++i) {
        Cell came = outcomeCell(outcomes[i], outcomes.size() == 1);
        if (i > 0) {
            table.rows.push_back({{}, {}, {}, std::move(came)});
            continue;
        }
        if (const QString why = ReviewWords::explained(coupling, run.first()); !why.isEmpty())
            came.insert(came.begin(), said(why));
        came.insert(came.begin(), softly(readBy(source, run)));
        table.rows.push_back({{toTick(said(printedName(coupling.coupling.name)))},
                              whenCell(source, run),
                              readingCell(source, run),
                              came});
    }
}

} // namespace

void addOutside(const Source& source, Writing& out)
{
    const SaidOnce once = saidOnceOf(source.review);
    QStringList intro{ReviewReportWords::outsideIntro()};
    if (once.isEntered)
        intro << ReviewReportWords::allEnteredAfterwards();
    if (once.isNeverAsked)
        intro << ReviewReportWords::noneAsked();
    TableBlock table;
    table.columns = {{ReviewReportWords::coupling(), 1.8},
                     {ReviewReportWords::when(), 1.5},
                     {ReviewReportWords::reading(), 2.1},
                     {ReviewReportWords::story(), 5.8}};
    for (const CouplingReview& coupling : source.review.couplings)
        for (const OutsideRun& run : coupling.runs)
            addRun(source, coupling, run, once, table);
    addPartOf(out, ReviewReportWords::outside(), Part::Outside, std::move(table),
              intro.join(QLatin1Char(' ')));
}

} // namespace rig::engineer
