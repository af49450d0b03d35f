#include "core/airframe/saved_before.h"
#include "core/lesson/cutaway.h"
#include "core/review/airframe_review.h"
#include "core/review/coupling_history.h"
#include "core/review/layoffs.h"
#include "core/review/record_review.h"
#include "core/review/record_summary.h"
#include "tests/demo/demo_file.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <map>

using namespace rig;
using namespace rig::test;

namespace {

class Demo : public DemoFile
{
protected:
    static const Coupling& coupling(const std::string& registration, const std::string& name)
    {
        return *std::ranges::find(of(registration).couplings, name, &Coupling::name);
    }
    static CouplingHistory history(const std::string& registration, const std::string& name)
    {
        const AirframeFacts& all = of(registration);
        const CouplingId id = coupling(registration, name).id;
        return historyOf(id, all.fittings, all.readingsOf(id), all.exclusions, all.frozenBaselines,
                         all.gauges, all.gaugeChecks);
    }
    static int numberOf(const AirframeFacts& all, RecordId record)
    {
        const auto at = std::ranges::find(all.riggingRecords, record, &RiggingRecord::id);
        return all.airframe.riggingsBefore + static_cast<int>(at - all.riggingRecords.begin()) + 1;
    }
    // Rigging numbers at which this verdict was shown, in order.
    static std::vector<int> shownAt(const std::string& registration, const std::string& name, Verdict verdict)
    {
        const AirframeFacts& all = of(registration);
        std::vector<int> numbers;
        for (const KeptReading& kept : all.readings)
            if (kept.reading.coupling == coupling(registration, name).id && kept.shown &&
                kept.shown->judgement.verdict == verdict)
                numbers.push_back(numberOf(all, *kept.reading.record));
        return numbers;
    }
    static const RecordClose* closeOn(const std::string& registration, Day day)
    {
        const AirframeFacts& all = of(registration);
        for (const RiggingRecord& record : all.riggingRecords)
            if (record.begins.localDay() == day)
                for (const RecordClose& close : all.closings)
                    if (close.record == record.id)
                        return &close;
        return nullptr;
    }
};

} // namespace

TEST_F(Demo, HasThreeAirframesWithTheirPeopleAndGauges)
{
    EXPECT_EQ(of("QX-17").couplingsInUse().size(), 8U);
    EXPECT_EQ(of("QX-42").couplingsInUse().size(), 5U);
    EXPECT_EQ(of("QX-88").couplingsInUse().size(), 7U);
    EXPECT_EQ(of("QX-17").persons.size(), 6U);
    EXPECT_EQ(of("QX-17").gauges.size(), 5U);
}

TEST_F(Demo, BandsLieWhereTheSceneSaysTheyDo)
{
    struct Expected
    {
        const char* airframe;
        const char* coupling;
        double mean;
        double scatter;
    };
    // The scene's figures. Two people with their offsets and leaf steps of 0.02 or 0.05 mm leave 0.01 mm of
    // the middle and 0.006 mm of the scatter open.
    const Expected table[] = {
        {"QX-17", "Left aileron", 0.47, 0.016},    {"QX-17", "Right aileron", 0.63, 0.019},
        {"QX-17", "Left airbrake", 0.82, 0.022},   {"QX-17", "Right airbrake", 0.79, 0.020},
        {"QX-17", "Left flap", 1.16, 0.018},       {"QX-17", "Right flap", 0.98, 0.021},
        {"QX-17", "Elevator", 0.36, 0.020},        {"QX-42", "Left aileron", 0.55, 0.020},
        {"QX-42", "Right aileron", 0.58, 0.018},   {"QX-42", "Left airbrake", 0.70, 0.022},
        {"QX-42", "Right airbrake", 0.74, 0.024},  {"QX-88", "Left aileron", 0.88, 0.025},
        {"QX-88", "Right aileron", 0.92, 0.025},   {"QX-88", "Left airbrake", 0.66, 0.020},
        {"QX-88", "Right airbrake", 0.69, 0.020},  {"QX-88", "Elevator", 0.41, 0.018},
        {"QX-88", "Left water dump", 1.40, 0.040}, {"QX-88", "Right water dump", 1.38, 0.040},
    };
    for (const Expected& one : table) {
        const CouplingHistory known = history(one.airframe, one.coupling);
        const std::optional<Band>& band = known.fittings.front().baseline.band();
        ASSERT_TRUE(band) << one.airframe << ' ' << one.coupling;
        EXPECT_EQ(band->readings, 24) << one.airframe << ' ' << one.coupling;
        EXPECT_NEAR(band->median, one.mean, 0.010) << one.airframe << ' ' << one.coupling;
        EXPECT_NEAR(band->scatter, one.scatter, 0.006) << one.airframe << ' ' << one.coupling;
        EXPECT_TRUE(known.fittings.front().isFrozen) << one.airframe << ' ' << one.coupling;
    }
}

TEST_F(Demo, TrimHasFourReadingsAndNoBand)
{
    const CouplingHistory trim = history("QX-17", "Trim");
    EXPECT_EQ(trim.fittings.front().baseline.readings(), 4);
    EXPECT_FALSE(trim.fittings.front().baseline.band());
}

TEST_F(Demo, PartSeatedWasSeenWhereTheSceneSays)
{
    EXPECT_TRUE(history("QX-17", "Right airbrake").partSeated.empty());
    EXPECT_EQ(history("QX-17", "Right aileron").partSeated.size(), 4U);
    for (const GapInterval& seen : history("QX-42", "Left aileron").partSeated)
        EXPECT_LE(seen.refuses, Gap::micrometres(200)) << "layout A: part-seated is smaller";
    for (const GapInterval& seen : history("QX-17", "Left flap").partSeated)
        EXPECT_GE(seen.enters, Gap::micrometres(2200));
}

TEST_F(Demo, SeasonsEndAtTheRiggingsTheSceneCounts)
{
    const AirframeFacts& all = of("QX-17");
    const auto lastOf = [&all](int year) {
        int last = 0;
        for (const RiggingRecord& record : all.riggingRecords)
            if (std::chrono::year_month_day{record.begins.localDay()}.year() == std::chrono::year{year})
                last = numberOf(all, record.id);
        return last;
    };
    EXPECT_EQ(lastOf(2024), 208);
    EXPECT_EQ(lastOf(2025), 262);
    EXPECT_GT(lastOf(2026), 300);
}

TEST_F(Demo, LeftFlapFirstReadsNearTheEdgeAtRigging255AndIsThenRefitted)
{
    const std::vector<int> near = shownAt("QX-17", "Left flap", Verdict::NearEdge);
    ASSERT_GE(near.size(), 4U);
    EXPECT_EQ(near.front(), 255);
    EXPECT_LE(near.back(), 262);
    const CouplingHistory flap = history("QX-17", "Left flap");
    ASSERT_EQ(flap.fittings.size(), 2U);
    EXPECT_EQ(flap.fittings[1].fitting.begins, dayOf(2026, 2, 20));
    EXPECT_EQ(flap.fittings[1].baseline.readings(), 12);
    EXPECT_TRUE(flap.fittings[1].isFrozen);
}

TEST_F(Demo, ElevatorScattersTwiceAsMuchUntilItIsCleaned)
{
    const AirframeFacts& all = of("QX-17");
    const auto spread = [&](Day from, Day to) {
        std::vector<double> middles;
        for (const KeptReading& kept : all.readings)
            if (kept.reading.coupling == coupling("QX-17", "Elevator").id && kept.shown &&
                kept.shown->judgement.verdict != Verdict::Outside && kept.reading.turn == Turn::First &&
                from <= kept.reading.when.localDay() && kept.reading.when.localDay() < to)
                middles.push_back((kept.reading.interval.enters.inMillimetres() +
                                   kept.reading.interval.refuses->inMillimetres()) /
                                  2);
        double mean = 0;
        for (const double middle : middles)
            mean += middle / static_cast<double>(middles.size());
        double squares = 0;
        for (const double middle : middles)
            squares += (middle - mean) * (middle - mean);
        return std::sqrt(squares / static_cast<double>(middles.size() - 1));
    };
    const double quiet = spread(dayOf(2024, 4, 1), dayOf(2025, 9, 11));
    EXPECT_GT(spread(dayOf(2025, 9, 11), dayOf(2026, 2, 20)), 1.5 * quiet);
    EXPECT_LT(spread(dayOf(2026, 2, 20), dayOf(2026, 11, 1)), 1.3 * quiet);
}

TEST_F(Demo, WornLeafSetMarksTwentyFourReadingsOnThreeDays)
{
    const AirframeFacts& all = of("QX-17");
    std::map<Day, int> marked;
    for (const char* registration : {"QX-17", "QX-42", "QX-88"})
        for (const KeptReading& kept : of(registration).readings)
            if (kept.reading.gauge &&
                isQuarantined(*kept.reading.gauge, kept.reading.when.localDay(), all.gaugeChecks))
                ++marked[kept.reading.when.localDay()];
    EXPECT_EQ(marked, (std::map<Day, int>{
                          {dayOf(2025, 7, 11), 8}, {dayOf(2025, 7, 13), 8}, {dayOf(2025, 7, 19), 8}}));
}

TEST_F(Demo, TheWornLeafSetWasAskedAboutWhereItReadAndTheQuestionClosed)
{
    int concerned = 0;
    for (const char* registration : {"QX-17", "QX-42", "QX-88"}) {
        const AirframeFacts& all = of(registration);
        QuarantineDays days{all.gaugeChecks};
        const bool isConcerned = std::ranges::any_of(
            all.readings, [&days](const KeptReading& kept) { return days.covers(kept.reading); });
        const auto asked = std::ranges::find_if(all.questions, [](const QuestionStory& one) {
            return one.question.kind == QuestionKind::GaugeQuarantined;
        });
        ASSERT_EQ(asked != all.questions.end(), isConcerned) << registration;
        EXPECT_TRUE(!isConcerned || !asked->isOpen());
        concerned += isConcerned ? 1 : 0;
        EXPECT_TRUE(std::ranges::none_of(all.questions, [](const QuestionStory& one) {
            return one.question.kind == QuestionKind::BandInDoubt;
        })) << "no baseline was read with it in that time";
    }
    EXPECT_GT(concerned, 0);
}

TEST_F(Demo, NineReadingsFellOutsideAndEachHasAnOutcome)
{
    int outside = 0;
    int stopped = 0;
    for (const char* registration : {"QX-17", "QX-42", "QX-88"}) {
        const AirframeFacts& all = of(registration);
        for (const KeptReading& kept : all.readings) {
            if (!kept.shown || kept.shown->judgement.verdict != Verdict::Outside)
                continue;
            ++outside;
            const auto close = std::ranges::find(all.closings, *kept.reading.record, &RecordClose::record);
            ASSERT_NE(close, all.closings.end());
            EXPECT_FALSE(close->note.empty());
            stopped += close->closing == Closing::LeftOpen ? 1 : 0;
            const auto story = std::ranges::find_if(all.questions, [&kept](const QuestionStory& one) {
                return one.question.reading == kept.reading.id;
            });
            ASSERT_NE(story, all.questions.end());
            EXPECT_FALSE(story->isOpen());
        }
    }
    EXPECT_EQ(outside, 9);
    EXPECT_EQ(stopped, 1) << "the right airbrake of QX-42, left as it was";
}

TEST_F(Demo, OnlyTheMissingMirrorsQuestionIsOpen)
{
    int open = 0;
    for (const char* registration : {"QX-17", "QX-42", "QX-88"})
        for (const QuestionStory& story : of(registration).questions)
            if (story.isOpen()) {
                ++open;
                EXPECT_EQ(story.question.kind, QuestionKind::CannotSee);
                EXPECT_EQ(story.question.coupling, coupling("QX-42", "Left aileron").id);
            }
    EXPECT_EQ(open, 1);
}

TEST_F(Demo, ThePartSeatedAileronOfQx42HadComeThroughItsControlCheck)
{
    const RecordClose* close = closeOn("QX-42", dayOf(2025, 4, 20));
    ASSERT_TRUE(close);
    const RecordContent content = must(store->records().content(close->record));
    ASSERT_FALSE(content.surfaceChecks.empty());
    EXPECT_TRUE(savedBefore(content.surfaceChecks.front(), content.readings.front()));
    for (const SurfaceCheck& check : content.surfaceChecks)
        EXPECT_EQ(check.answer, Answer::Yes);
}

TEST_F(Demo, TheControlsOfQx42WereTriedAgainAfterTheAileronWasReconnected)
{
    const RecordClose* close = closeOn("QX-42", dayOf(2025, 4, 20));
    ASSERT_TRUE(close);
    EXPECT_EQ(close->closing, Closing::Complete);
    const RecordSummary summary = summaryOf(of("QX-42"), must(store->records().content(close->record)));
    EXPECT_EQ(std::ranges::count(summary.notDone, OpenItemKind::SurfaceSetBack, &OpenItem::kind), 0);
    for (const SummarySurface& surface : summary.surfaces) {
        const auto counted = std::ranges::count(surface.answers, true, &SummarySurfaceAnswer::isLast);
        EXPECT_EQ(counted, std::ssize(checksOf(surface.surface))) << surface.surface.name;
    }
    EXPECT_EQ(summary.surfaces[1].answers.front().hand, "Right aileron");
}

TEST_F(Demo, EverySurfaceWasCalledBothWays)
{
    const RecordClose* close = closeOn("QX-17", dayOf(2024, 9, 14));
    ASSERT_TRUE(close);
    for (const SummarySurface& surface :
         summaryOf(of("QX-17"), must(store->records().content(close->record))).surfaces)
        for (const SummarySurfaceAnswer& one : surface.answers)
            if (isCall(one.check.kind)) {
                const auto expected = expectedOf(surface.surface).of(one.check.kind);
                EXPECT_TRUE(one.check.seen && (!expected || one.check.seen == expected))
                    << surface.surface.name;
            }
}

TEST_F(Demo, EverySecondPersonNeitherConnectedNorMeasuredTheJoint)
{
    int records = 0;
    for (const char* registration : {"QX-17", "QX-42", "QX-88"})
        for (const RecordClose& close : of(registration).closings) {
            const RecordContent content = must(store->records().content(close.record));
            for (const Coupling& coupling : of(registration).couplings)
                for (const Check& check : content.checks)
                    if (check.coupling == coupling.id && check.turn == Turn::Second) {
                        const auto connected = whoConnected(coupling.side, content.connected);
                        EXPECT_EQ(std::ranges::count(connected, check.person), 0);
                    }
            records += content.connected.empty() ? 0 : 1;
        }
    EXPECT_GT(records, 100);
}

TEST_F(Demo, AfterTheOutlandingTheSecondNameHadConnectedTheRightSide)
{
    const RecordClose* close = closeOn("QX-88", dayOf(2026, 8, 16));
    ASSERT_TRUE(close);
    const RecordSummary summary = summaryOf(of("QX-88"), must(store->records().content(close->record)));
    EXPECT_EQ(summary.second, "T. Vale");
    EXPECT_EQ(summary.secondName.connected, (std::vector{Side::Right, Side::None}));
}

TEST_F(Demo, NoRecordThatWasClosedAsCompleteHasAControlCheckFromBeforeALaterHand)
{
    for (const char* registration : {"QX-17", "QX-42", "QX-88"})
        for (const RecordClose& close : of(registration).closings) {
            if (close.closing != Closing::Complete)
                continue;
            const RecordSummary summary =
                summaryOf(of(registration), must(store->records().content(close.record)));
            EXPECT_EQ(std::ranges::count(summary.notDone, OpenItemKind::SurfaceSetBack, &OpenItem::kind), 0);
        }
}

TEST_F(Demo, TheElevatorOfQx42ConnectsByItselfAndIsLookedAtAndTriedWithoutAReading)
{
    const AirframeFacts& all = of("QX-42");
    EXPECT_EQ(std::ranges::count(all.surfaces, SurfaceKind::Elevator, &Surface::kind), 1);
    const auto elevator = std::ranges::find(all.couplings, Circuit::Elevator, &Coupling::circuit);
    ASSERT_NE(elevator, all.couplings.end());
    EXPECT_EQ(elevator->kind, CouplingKind::ByItself);
    EXPECT_TRUE(all.readingsOf(elevator->id).empty());
    int looked = 0;
    for (const RecordClose& close : all.closings) {
        if (close.closing != Closing::Complete)
            continue;
        const RecordContent content = must(store->records().content(close.record));
        for (const Turn turn : {Turn::First, Turn::Second}) {
            const CouplingFlow flow = flowOf(content, *elevator, turn);
            EXPECT_TRUE(flow.isDone());
            EXPECT_TRUE(isSeen(flow, CheckKind::Engaged) && isSeen(flow, CheckKind::NoStep));
            ++looked;
        }
    }
    EXPECT_GT(looked, 40);
    const AirframeReview review = airframeReviewOf(all, reviewPeriods(all, dayOf(2026, 11, 1)).front());
    EXPECT_EQ(review.find(elevator->id)->standing.says, Says::NoGap);
    EXPECT_TRUE(review.find(elevator->id)->signs.empty());
}

TEST_F(Demo, PlayWasFeltAtTheLeftFlapOfQx17BeforeItsBallWasChanged)
{
    const AirframeFacts& all = of("QX-17");
    ASSERT_EQ(all.jointPlays.size(), 1U);
    const JointPlay& play = all.jointPlays.front();
    EXPECT_EQ(play.day, dayOf(2026, 2, 20));
    EXPECT_EQ(play.along, (PlayFound{PlayFelt::Felt, Gap::micrometres(150)}));
    EXPECT_EQ(play.across.felt, PlayFelt::None);
    EXPECT_EQ(all.nameOf(play.person), "A. Quill");
}

TEST_F(Demo, RightAirbrakeOfQx42StepsOutsideAndGetsASecondFitting)
{
    EXPECT_EQ(shownAt("QX-42", "Right airbrake", Verdict::Outside).size(), 1U);
    const CouplingHistory airbrake = history("QX-42", "Right airbrake");
    ASSERT_EQ(airbrake.fittings.size(), 2U);
    EXPECT_EQ(airbrake.fittings[1].fitting.begins, dayOf(2024, 6, 9));
    EXPECT_EQ(airbrake.fittings[1].baseline.readings(), 10);
    EXPECT_NEAR(airbrake.fittings[1].baseline.band()->median, 0.76, 0.01);
}

TEST_F(Demo, RightAileronOfQx42WasFoundPartSeatedBelowItsBand)
{
    const AirframeFacts& all = of("QX-42");
    std::vector<KeptReading> thatDay;
    for (const KeptReading& kept : all.readings)
        if (kept.reading.coupling == coupling("QX-42", "Right aileron").id &&
            kept.reading.when.localDay() == dayOf(2025, 4, 20))
            thatDay.push_back(kept);
    ASSERT_EQ(thatDay.size(), 3U);
    EXPECT_EQ(thatDay[0].shown->judgement.verdict, Verdict::Outside);
    EXPECT_EQ(thatDay[0].shown->judgement.direction, Direction::Below);
    EXPECT_EQ(thatDay[1].reading.corrects, thatDay[0].reading.id);
    EXPECT_EQ(thatDay[1].reading.state, SeatState::PartSeated);
    EXPECT_EQ(thatDay[2].shown->judgement.verdict, Verdict::Inside);
}

TEST_F(Demo, OverlapOnTheRightAirbrakeOfQx88EndsInCannotTell)
{
    const AirframeFacts& all = of("QX-88");
    const CouplingId id = coupling("QX-88", "Right airbrake").id;
    const auto last =
        std::ranges::find_if(all.readings.rbegin(), all.readings.rend(), [id](const KeptReading& kept) {
            return kept.reading.coupling == id && kept.shown;
        });
    EXPECT_EQ(last->shown->judgement.verdict, Verdict::CannotTell);
    EXPECT_EQ(last->shown->judgement.reason, Reason::GapIsNoWitness);
}

TEST_F(Demo, IverReadsAboveValeOnFiveCouplings)
{
    const AirframeFacts& all = of("QX-17");
    std::map<CouplingId, std::pair<Gap, Gap>> both;
    for (const KeptReading& kept : all.readings)
        if (kept.reading.when.localDay() == dayOf(2024, 7, 20))
            (kept.reading.turn == Turn::First ? both[kept.reading.coupling].first
                                              : both[kept.reading.coupling].second) =
                kept.reading.interval.enters;
    int above = 0;
    for (const auto& [coupling, gaps] : both)
        if (gaps.second >= gaps.first + Gap::micrometres(20))
            ++above;
    EXPECT_EQ(above, 5);
}

TEST_F(Demo, OnlyTheMissingMirrorLeavesARecordOpen)
{
    EXPECT_FALSE(must(store->records().openRecord(of("QX-17").airframe.id)));
    EXPECT_FALSE(must(store->records().openRecord(of("QX-88").airframe.id)));
    const auto open = must(store->records().openRecord(of("QX-42").airframe.id));
    ASSERT_TRUE(open);
    const RecordContent content = must(store->records().content(*open));
    EXPECT_EQ(content.record.begins.localDay(), dayOf(2026, 5, 16));
    ASSERT_EQ(content.checks.size(), 1U);
    EXPECT_EQ(content.checks[0].answer, Answer::CannotSee);
}

TEST_F(Demo, ClosedCompleteMeansNothingWasMissing)
{
    for (const char* registration : {"QX-17", "QX-42", "QX-88"}) {
        const AirframeFacts& all = of(registration);
        EXPECT_FALSE(all.closings.empty()) << registration;
        std::map<CouplingId, CouplingHistory> histories;
        for (const Coupling& one : all.couplings)
            histories[one.id] = history(registration, one.name);
        const Judge judge = [&](const Reading& reading) {
            return judgeIn(histories[reading.coupling], reading);
        };
        for (const RecordClose& close : all.closings) {
            const RecordContent content = must(store->records().content(close.record));
            const std::vector<Coupling> couplings = all.couplingsInUse();
            const std::vector<Surface> surfaces = all.surfacesInUse();
            const RecordScope scope{
                couplings, surfaces,
                stoodBefore(content.record, all.riggingRecords, all.closings).isFirstOfYear};
            EXPECT_EQ(reviewOf(content, scope, judge).mayCloseComplete(), close.closing == Closing::Complete)
                << registration << ' ' << numberOf(all, close.record);
        }
    }
}

TEST_F(Demo, InterruptionOutlandingAndNewcomerAreInTheRecords)
{
    const RecordClose* interrupted = closeOn("QX-17", dayOf(2024, 9, 14));
    ASSERT_TRUE(interrupted);
    EXPECT_EQ(must(store->records().content(interrupted->record)).interruptions.size(), 1U);
    const RecordClose* abandoned = closeOn("QX-88", dayOf(2026, 8, 15));
    ASSERT_TRUE(abandoned);
    EXPECT_EQ(abandoned->closing, Closing::Abandoned);
    const RecordClose* nextMorning = closeOn("QX-88", dayOf(2026, 8, 16));
    ASSERT_TRUE(nextMorning);
    EXPECT_EQ(nextMorning->closing, Closing::Complete);
    const RecordClose* newcomer = closeOn("QX-88", dayOf(2024, 4, 13));
    ASSERT_TRUE(newcomer);
    EXPECT_EQ(of("QX-88").nameOf(*newcomer->first), "J. Iver");
}

TEST_F(Demo, ComesOutTheSameEveryTime)
{
    TempStore again;
    must(buildDemo(again.file(), demo::Language::English));
    const AirframeId airframe = must(again.records().airframes()).front().id;
    EXPECT_EQ(airframe, of("QX-17").airframe.id);
    const auto readings = must(again.records().readings(airframe));
    ASSERT_EQ(readings.size(), of("QX-17").readings.size());
    for (std::size_t i = 0; i < readings.size(); ++i) {
        EXPECT_EQ(readings[i].reading.id, of("QX-17").readings[i].reading.id);
        EXPECT_EQ(readings[i].reading.interval, of("QX-17").readings[i].reading.interval);
    }
}

TEST_F(Demo, JIverLearnedQx88UnderMOrenAndTheSignOffHasExpired)
{
    const AirframeFacts& all = of("QX-88");
    const LearningFacts learning = must(store->records().learning(all.airframe.id));
    ASSERT_EQ(learning.signOffs.size(), 1u);
    const PersonId iver = learning.signOffs.front().person;
    EXPECT_EQ(all.nameOf(iver), "J. Iver");
    EXPECT_EQ(all.nameOf(learning.signOffs.front().signer), "M. Oren");
    EXPECT_GE(std::ssize(learning.supervisedRiggings), kSupervisedWanted);
    const auto last = lastRoundsOf(iver, learning.rounds, learning.seatingAnswers);
    EXPECT_EQ(learning.rounds.size(), 3u);
    EXPECT_FALSE(last.empty());
    EXPECT_TRUE(std::ranges::all_of(last, [](const auto& one) { return one.second.missedNothing(); }));
    EXPECT_TRUE(std::ranges::any_of(learning.seatingAnswers, [](const SeatingAnswer& one) {
        return isMissed(one, JointState::PartSeated);
    }));
    const auto standings = must(personStandingsOn(store->records(), all, dayOf(2026, 11, 1)));
    EXPECT_EQ(standings.at(iver).state, SignOffState::Expired);
    EXPECT_FALSE(standings.contains(learning.signOffs.front().signer));
    EXPECT_TRUE(must(personStandingsOn(store->records(), of("QX-17"), dayOf(2026, 11, 1))).empty());
}

TEST_F(Demo, SaysWhereTheLeafGoesAsTheJointIsDrawn)
{
    for (const auto& [registration, told] : facts)
        for (const Coupling& one : told.couplings) {
            if (!isBallJoint(one.kind))
                continue;
            CutawayJoint joint{one.layout, one.kind, {}, {}};
            const CouplingHistory known = history(registration, one.name);
            if (!known.partSeated.empty())
                joint.partSeatedMm = middleOf(known.partSeated.front());
            if (joint.partSeatedMm)
                joint.lockedMm = 0.5;
            EXPECT_EQ(cutawayOf(joint, {}).gap.fromHousing, one.leafPlace.find("socket") != std::string::npos)
                << registration << " " << one.name;
        }
}
