#include "core/review/airframe_review.h"

#include "core/airframe/name_in.h"
#include "core/review/comparisons.h"
#include "core/review/coupling_signs.h"
#include "core/review/judging.h"
#include "core/review/outside_stories.h"
#include "core/rigging/circuit_hand.h"

#include <algorithm>
#include <map>
#include <set>

namespace rig {

namespace {

bool isOpenAt(const QuestionStory& story, Day day)
{
    return story.question.day() <= day && story.isOpenAfter(day);
}

class ReviewMaker
{
public:
    ReviewMaker(const AirframeFacts& facts, const ReviewPeriod& period, const SeasonUntil& season)
        : m_facts{facts}, m_period{period}, m_numbers{season.numbers}, m_all{season.readings},
          m_season{season.season}, m_standings{facts, period.from, period.to}
    {
    }

    AirframeReview make()
    {
        m_review.airframe = m_facts.airframe;
        m_review.period = m_period;
        if (m_period.annual)
            m_review.riggingsToCome = riggingsToCome(m_numbers, m_period.to, *m_period.annual);
        for (const CouplingId closed : m_facts.closedToSecond)
            m_review.closedToSecond.push_back(nameIn(m_facts.couplings, closed));
        for (const DayShift& day : m_all.shifts)
            if (m_period.contains(day.when.localDay()))
                m_review.shifts.push_back(day);
        addQuestions();
        addCouplings();
        addCounts();
        for (const StoodBefore& one : stoodBefore(m_facts.riggingRecords, m_facts.closings))
            if (m_period.contains(one.day))
                m_review.stood.push_back(one);
        std::ranges::stable_sort(m_review.stood, std::ranges::greater{}, &StoodBefore::days);
        m_review.sharedShifts = sharedShiftStories(m_review.shifts, m_facts.gaugeChecks);
        m_review.measurers = measurerOffsetsOf(m_facts, m_all, m_season, m_period);
        addGauges();
        addFittings();
        for (const Event& event : m_facts.events)
            if (m_period.contains(event.day))
                m_review.events.push_back(event);
        std::ranges::stable_sort(m_review.events, {}, &Event::day);
        for (const JointPlay& play : m_facts.jointPlays) // by day
            if (m_period.contains(play.day))
                m_review.jointPlays.push_back(play);
        m_review.readings = m_all;
        return std::move(m_review);
    }

private:
    // Of both persons, superseded ones left out.
    std::vector<const LaterReading*> inPeriod(const CouplingReadings& coupling) const
    {
        std::vector<const LaterReading*> readings;
        for (const std::vector<LaterReading>* some : {&coupling.readings, &coupling.others})
            for (const LaterReading& one : *some)
                if (m_period.contains(one.reading.when.localDay()))
                    readings.push_back(&one);
        return readings;
    }

    void addQuestions()
    {
        for (const QuestionStory& story : m_facts.questions)
            if (m_period.contains(story.question.day()) || isOpenAt(story, m_period.to))
                m_review.questions.push_back(story);
    }

    void addCouplings()
    {
        std::map<CouplingId, std::vector<OutsideStory>> outside;
        for (OutsideStory& story : outsideStories(m_facts, m_all, m_numbers, m_period))
            outside[story.reading.coupling].push_back(std::move(story));
        std::map<CouplingId, std::vector<OutsideStory>> before;
        for (OutsideStory& story : unexplainedBefore(m_facts, m_all, m_numbers, m_period))
            before[story.reading.coupling].push_back(std::move(story));
        for (const CouplingReadings& one : m_all.couplings) {
            m_review.couplings.push_back(couplingReview(one));
            CouplingReview& review = m_review.couplings.back();
            review.outside = std::move(outside[one.coupling.id]);
            review.outsideBefore = std::move(before[one.coupling.id]);
            tellWhy(one, review);
            tellTogether(m_review.shifts, review.outside);
            review.runs = outsideRunsOf(review.outside, one);
        }
        for (CouplingReview& one : m_review.couplings)
            one.otherSideMovesToo = otherSideMoves(one);
        for (CouplingReview& one : m_review.couplings) {
            one.signs = signsOf(one);
            one.standing.standBeside(gravestTold(one));
            if (!one.outsideBefore.empty())
                one.standing.outsideBefore = one.outsideBefore.back().reading.when.localDay();
            if (togetherWith(one, m_review.shifts)) // told beside it, whatever its own path does
                one.standing.standBeside(Says::Moved);
        }
        std::ranges::stable_sort(m_review.couplings, standsOutMore);
    }

    bool otherSideMoves(const CouplingReview& one) const
    {
        const auto other = otherSideOf(one.coupling, m_facts.couplings);
        const CouplingReview* review = other ? m_review.find(other->id) : nullptr;
        if (!review || !review->movement || !one.movement)
            return false;
        const PathChangeTold* here = one.movement->told();
        const PathChangeTold* there = review->movement->told();
        return here && there && here->kind == there->kind && here->isUp() == there->isUp() &&
               !here->endedAt && !there->endedAt;
    }

    CouplingReview couplingReview(const CouplingReadings& one)
    {
        CouplingReview review;
        review.coupling = one.coupling;
        review.partSeated = one.history.partSeated;
        review.standing = m_standings.standingOf(one.coupling, one.history);
        const bool isMeasured = hasGap(one.coupling);
        if (isMeasured)
            review.movement = movementOf(one, m_season, m_period, m_review.riggingsToCome);
        addBand(one.history, isMeasured, review);
        Judging judging{one.history};
        std::set<int> read;
        for (const LaterReading* later : inPeriod(one)) {
            review.counts.add(judging.of(later->reading).verdict);
            review.inDoubt += later->inDoubt ? 1 : 0;
            if (const auto number = m_numbers.of(later->reading))
                read.insert(*number);
        }
        if (isMeasured)
            review.riggingsMissed =
                m_numbers.within(m_period.from, m_period.to) - static_cast<int>(read.size());
        if (isMeasured && !one.readings.empty() &&
            m_period.contains(one.readings.back().reading.when.localDay())) {
            review.latest = one.readings.back();
            review.latestJudgement = judging.of(review.latest->reading);
            review.witness = review.latestJudgement->witness;
        }
        for (const QuestionStory& story : m_review.questions)
            if (isOf(story.question, one.coupling) && isOpenAt(story, m_period.to))
                review.openQuestions.push_back(story);
        if (!review.openQuestions.empty())
            review.askedSurface = doubtedBy(review.openQuestions.front().question, one.coupling);
        return review;
    }

    // About the joint, or about a surface that a joint of its circuit may have moved wrongly.
    bool isOf(const Question& question, const Coupling& coupling) const
    {
        return question.coupling == coupling.id || doubtedBy(question, coupling).has_value();
    }

    std::optional<DoubtedSurface> doubtedBy(const Question& question, const Coupling& coupling) const
    {
        const auto surface = std::ranges::find_if(
            m_facts.surfaces, [&question](const Surface& one) { return question.surface == one.id; });
        if (question.kind != QuestionKind::SurfaceDoubt || surface == m_facts.surfaces.end())
            return std::nullopt;
        return doubtedFor(coupling, *surface, question);
    }

    void addBand(const CouplingHistory& history, bool isMeasured, CouplingReview& review) const
    {
        const FittingHistory* fitting = history.on(m_period.to);
        if (fitting) {
            review.fitting = fitting->fitting;
            review.fittingNumber = static_cast<int>(fitting - history.fittings.data()) + 1;
        }
        if (!isMeasured)
            return;
        if (!fitting) {
            review.witness = findWitness(Baseline{}, history.shownPartSeated(), {});
            return;
        }
        review.band = fitting->baseline.band();
        if (fitting->withDoubted)
            review.bandWithDoubted = fitting->withDoubted->band();
        review.isFrozen = fitting->isFrozen;
        review.baselineReadings = fitting->baseline.readings();
        if (review.fittingNumber > 1)
            review.firstBand = history.fittings.front().baseline.band();
        review.witness = fitting->witness.empty()
                             ? findWitness(fitting->baseline, history.shownPartSeated(), {})
                             : fitting->witness.begin()->second;
    }

    void addCounts()
    {
        RiggingCounts& counts = m_review.counts;
        counts.riggings = m_numbers.within(m_period.from, m_period.to);
        counts.lastNumber = m_numbers.lastBy(m_period.to);
        std::map<RecordId, Closing> closed;
        for (const RecordClose& close : m_facts.closings)
            closed.emplace(close.record, close.closing);
        for (const RiggingRecord& record : m_facts.riggingRecords) {
            if (!m_period.contains(record.begins.localDay()) || record.origin == RecordOrigin::ImportedTable)
                continue;
            counts.rechecks += record.origin == RecordOrigin::Recheck ? 1 : 0;
            if (record.isFromPaper())
                counts.fromPaper.push_back(record.begins.localDay());
            const auto close = closed.find(record.id);
            counts.stillOpen += close == closed.end() ? 1 : 0;
            counts.abandoned += close != closed.end() && close->second == Closing::Abandoned ? 1 : 0;
            counts.leftOpen += close != closed.end() && close->second == Closing::LeftOpen ? 1 : 0;
        }
        std::set<PersonId> persons;
        std::set<CouplingId> couplings;
        std::set<GaugeId> gauges;
        for (const CouplingReadings& one : m_all.couplings)
            for (const LaterReading* later : inPeriod(one)) {
                ++counts.readings;
                const Day day = later->reading.when.localDay();
                counts.firstRead = std::min(counts.firstRead.value_or(day), day);
                counts.lastRead = std::max(counts.lastRead.value_or(day), day);
                couplings.insert(later->reading.coupling);
                persons.insert(later->reading.person);
                if (later->reading.gauge)
                    gauges.insert(*later->reading.gauge);
            }
        counts.couplings = static_cast<int>(couplings.size());
        counts.persons = static_cast<int>(persons.size());
        counts.gauges = static_cast<int>(gauges.size());
    }

    void addGauges()
    {
        for (const Gauge& gauge : m_facts.gauges) {
            GaugeReview review{gauge, 0,  0,
                               {},    {}, isQuarantined(gauge.id, m_period.to, m_facts.gaugeChecks)};
            for (const CouplingReadings& one : m_all.couplings)
                for (const LaterReading* later : inPeriod(one))
                    if (later->reading.gauge == gauge.id) {
                        ++review.readings;
                        review.inDoubt += later->inDoubt ? 1 : 0;
                    }
            for (const GaugeCheck& check : m_facts.gaugeChecks) {
                if (check.gauge != gauge.id || check.day > m_period.to)
                    continue;
                if (check.day >= m_period.from)
                    review.checks.push_back(check);
                if (!review.lastCheck || review.lastCheck->day <= check.day)
                    review.lastCheck = check;
            }
            std::ranges::stable_sort(review.checks, {}, &GaugeCheck::day);
            if (review.readings > 0 || gauge.inUse || review.isQuarantined)
                m_review.gauges.push_back(std::move(review));
        }
    }

    void addFittings()
    {
        for (const CouplingReadings& one : m_all.couplings)
            for (std::size_t i = 0; i < one.history.fittings.size(); ++i) {
                const FittingHistory& here = one.history.fittings[i];
                if (!m_period.contains(here.fitting.begins))
                    continue;
                FittingChange change{one.coupling.id, here.fitting, here.baseline.band(), {}, {}};
                if (i > 0) {
                    change.before = one.history.fittings[i - 1].fitting;
                    change.bandBefore = one.history.fittings[i - 1].baseline.band();
                }
                m_review.fittings.push_back(std::move(change));
            }
        std::ranges::stable_sort(m_review.fittings, {},
                                 [](const FittingChange& one) { return one.fitting.begins; });
    }

    const AirframeFacts& m_facts;
    const ReviewPeriod& m_period;
    const RiggingNumbers& m_numbers;
    const AirframeReadings& m_all;
    const SeasonReview& m_season;
    CouplingStandings m_standings;
    AirframeReview m_review;
};

} // namespace

void VerdictCounts::add(Verdict verdict)
{
    switch (verdict) {
    case Verdict::NoBandYet:
        ++noBand;
        break;
    case Verdict::Outside:
        ++outside;
        break;
    case Verdict::CannotTell:
        ++cannotTell;
        break;
    case Verdict::NearEdge:
        ++nearEdge;
        break;
    case Verdict::Inside:
        ++inside;
        break;
    }
}

bool CouplingReview::has(Sign sign) const
{
    return std::ranges::find(signs, sign) != signs.end();
}

const CouplingReview* AirframeReview::find(CouplingId coupling) const
{
    const auto found =
        std::ranges::find(couplings, coupling, [](const CouplingReview& one) { return one.coupling.id; });
    return found == couplings.end() ? nullptr : &*found;
}

AirframeReview airframeReviewOf(const AirframeFacts& facts, const ReviewPeriod& period)
{
    return airframeReviewOf(facts, period, seasonUntil(facts, period.to));
}

AirframeReview airframeReviewOf(const AirframeFacts& facts, const ReviewPeriod& period,
                                const SeasonUntil& season)
{
    return ReviewMaker{facts, period, season}.make();
}

} // namespace rig
