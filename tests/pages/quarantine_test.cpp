// A gauge in quarantine, from the form of its check to the pages that tell of it.

#include "app/pages/questions/question_row_text.h"
#include "app/pages/questions/questions_presenter.h"
#include "app/pages/setup/baseline_day_presenter.h"
#include "app/pages/setup/doubt_text.h"
#include "app/pages/setup/setup_presenter.h"
#include "app/pages/trends/trends_presenter.h"
#include "app/wording/doubt_words.h"
#include "app/wording/gauge_words.h"
#include "app/wording/setup_words.h"
#include "core/day_entry.h"
#include "core/rigging/rigging_flow.h"
#include "tests/pages/quarantine_scene.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

using Why = DoubtProposal::Why;

constexpr Day kChecked = dayOf(2026, 5, 2);

class QuarantinePages : public testing::Test
{
protected:
    QuarantineOutlook outlook(GaugeId gauge) { return must(setUp.gauges.outlook(gauge)); }
    DoubtProposal proposal() { return outlook(scene.setB).proposal(kChecked); }

    Result<Saved> doubt(GaugeId gauge, Day from)
    {
        const GaugeCheckEntry entry{QString::fromStdString(dayText(kChecked)), "micrometer", "worn tips",
                                    true, QString::fromStdString(dayText(from))};
        return setUp.gauges.save(entry, gauge);
    }

    QuestionRow bandQuestion()
    {
        for (const QuestionRow& row : must(questions.view(scene.hangar.airframe)).rows)
            if (row.story.question.kind == QuestionKind::BandInDoubt)
                return row;
        ADD_FAILURE() << "no question about the band";
        return {};
    }

    BaselineSheet sheet() { return must(baseline.sheet(scene.hangar.airframe, scene.hangar.leftAileron)); }

    CouplingTrend trend()
    {
        return must(TrendsPresenter{store.records(), store.clock()}.view(scene.hangar.airframe))
            .couplings.front();
    }

    TempStore store;
    QuarantineScene scene{store};
    SetUpPresenter setUp{store.records(), store.clock()};
    QuestionsPresenter questions{store.records()};
    BaselineDayPresenter baseline{store.records(), store.clock()};
};

} // namespace

TEST_F(QuarantinePages, ProposesTheDayAfterTheLastGoodCheck)
{
    scene.check(scene.setB, dayOf(2026, 3, 1));
    scene.check(scene.setB, dayOf(2026, 3, 20));
    const DoubtProposal proposed = proposal();
    EXPECT_EQ(proposed.from, dayOf(2026, 3, 21));
    EXPECT_EQ(proposed.why, Why::AfterGoodCheck);
    EXPECT_EQ(proposed.readings, 4);
    EXPECT_EQ(proposed.airframes, 1);
    EXPECT_EQ(sentenceOf(proposed).toStdString(),
              "Proposed: the day after its last good check, 20 March 2026. What was read since then was read "
              "with a set of which nothing is known. That concerns 4 readings on one airframe.");
}

TEST_F(QuarantinePages, ProposesTheFirstReadingsDayWhereTheFileHasNoGoodCheck)
{
    const DoubtProposal proposed = proposal();
    EXPECT_EQ(proposed.from, kBaselineWithTwoSets);
    EXPECT_EQ(proposed.why, Why::FirstReading);
    EXPECT_EQ(proposed.readings, 4);
}

TEST_F(QuarantinePages, ProposesTheDayOfTheCheckWhereNothingWasRead)
{
    const GaugeId setC = must(store.records().add(aLeafSet("C")));
    const DoubtProposal proposed = outlook(setC).proposal(kChecked);
    EXPECT_EQ(proposed.from, kChecked);
    EXPECT_EQ(proposed.why, Why::NeverRead);
    EXPECT_EQ(proposed.readings, 0);
}

TEST_F(QuarantinePages, ProposesNoDayAfterTheCheck)
{
    scene.check(scene.setB, kChecked);
    EXPECT_EQ(proposal().from, kChecked);
    EXPECT_EQ(proposal().why, Why::OnDayOfGoodCheck);
}

TEST_F(QuarantinePages, CountsNoGoodCheckThatCameLater)
{
    scene.check(scene.setB, dayOf(2026, 3, 20));
    scene.check(scene.setB, dayOf(2026, 4, 30));
    EXPECT_EQ(outlook(scene.setB).proposal(dayOf(2026, 4, 15)).goodCheck, dayOf(2026, 3, 20));
}

TEST_F(QuarantinePages, ShowsBeforeSavingWhatItMarksWhichBandsChangeAndWhatItAsks)
{
    scene.read(650, scene.hangar.setA, dayOf(2026, 4, 20));
    const DoubtPreview preview = outlook(scene.setB).preview(kChecked, kBaselineWithTwoSets);
    ASSERT_EQ(preview.airframes.size(), 1U);
    EXPECT_EQ(preview.marked(), 4);
    ASSERT_EQ(preview.questions.size(), 2U);
    EXPECT_EQ(preview.questions[0].place, "B");
    EXPECT_EQ(preview.questions[1].place, "Left aileron");
    const QStringList said = sentencesOf(preview);
    ASSERT_EQ(said.size(), 4);
    EXPECT_EQ(said[0].toStdString(), "It marks 4 readings on one airframe as in doubt: they make no band, "
                                     "and show “cannot tell” unless they lie outside.");
    EXPECT_TRUE(said[1].startsWith("QX-17, Left aileron: the band ")) << said[1].toStdString();
    EXPECT_TRUE(said[1].endsWith(", from 8 readings.")) << said[1].toStdString();
    EXPECT_EQ(said[2].toStdString(),
              "QX-17, Left aileron: one reading taken with another gauge is then judged otherwise.");
    EXPECT_EQ(said[3].toStdString(), "It opens 2 questions. QX-17: Gauge B, readings in doubt; QX-17: Left "
                                     "aileron, its band is in doubt.");
    EXPECT_TRUE(scene.questions().empty()) << "nothing is kept by looking";
}

TEST_F(QuarantinePages, ShowsBeforeSavingThatABandGoes)
{
    const QStringList said = sentencesOf(outlook(scene.hangar.setA).preview(kChecked, kBaselineWithTwoSets));
    EXPECT_TRUE(said[1].endsWith(" goes. No band: 4 readings left, 5 are needed.")) << said[1].toStdString();
}

TEST_F(QuarantinePages, WarnsOfADoubtThatGoesBackBeyondTheLastGoodCheck)
{
    scene.check(scene.setB, dayOf(2026, 4, 10));
    const DoubtPreview before = outlook(scene.setB).preview(kChecked, kBaselineWithTwoSets);
    EXPECT_EQ(before.goodCheckPassed, dayOf(2026, 4, 10));
    EXPECT_EQ(sentencesOf(before).front(), DoubtWords::beforeGoodCheck(dayOf(2026, 4, 10)));
    EXPECT_FALSE(outlook(scene.setB).preview(kChecked, dayOf(2026, 4, 11)).goodCheckPassed);
}

TEST_F(QuarantinePages, AsksWithTheCheckOrNotAtAll)
{
    const ReadingId latest = scene.read(650, scene.hangar.setA, dayOf(2026, 4, 20));
    EXPECT_FALSE(must(doubt(scene.setB, dayOf(2026, 5, 3))).isSaved());
    EXPECT_TRUE(scene.questions().empty());
    EXPECT_TRUE(must(doubt(scene.setB, kBaselineWithTwoSets)).isSaved());
    const auto asked = scene.questions();
    ASSERT_EQ(asked.size(), 2U);
    EXPECT_EQ(asked[0].kind, QuestionKind::GaugeQuarantined);
    EXPECT_EQ(asked[1].kind, QuestionKind::BandInDoubt);
    EXPECT_EQ(asked[1].coupling, scene.hangar.leftAileron);
    EXPECT_EQ(asked[1].gauge, scene.setB);
    EXPECT_EQ(asked[1].reading, latest);
}

TEST_F(QuarantinePages, AsksNothingTwice)
{
    scene.read(650, scene.hangar.setA, dayOf(2026, 4, 20));
    must(doubt(scene.setB, kBaselineWithTwoSets));
    const DoubtPreview again = outlook(scene.setB).preview(kChecked, kBaselineWithTwoSets);
    EXPECT_TRUE(again.isOpenAlready);
    EXPECT_EQ(sentencesOf(again), (QStringList{DoubtWords::marksNothing(), DoubtWords::isOpenAlready()}));
    must(doubt(scene.setB, kBaselineWithTwoSets));
    EXPECT_EQ(scene.questions().size(), 2U);
}

TEST_F(QuarantinePages, TellTheQuestionWithBothBandsAndTheLastReadingJudgedOtherwise)
{
    scene.read(650, scene.hangar.setA, dayOf(2026, 4, 20));
    must(doubt(scene.setB, kBaselineWithTwoSets));
    const QuestionRow row = bandQuestion();
    EXPECT_EQ(titleOf(row).toStdString(), "Left aileron, its band is in doubt");
    ASSERT_TRUE(row.band);
    EXPECT_EQ(row.band->doubted, 4);
    EXPECT_EQ(row.band->judgedOtherwise, 1);
    EXPECT_EQ(row.band->after, Verdict::Outside);
    const QStringList story = storyOf(row);
    EXPECT_TRUE(story[0].startsWith("Without the 4 readings of leaf set B in doubt the band of Left aileron "
                                    "is "))
        << story[0].toStdString();
    EXPECT_EQ(story[1], DoubtWords::verdicts(1));
    EXPECT_TRUE(story[2].contains("0.65–0.70 mm on 20 April 2026: “Outside the band”"))
        << story[2].toStdString();
    EXPECT_EQ(consequenceOf(row), DoubtWords::staysSo("leaf set B"));
}

TEST_F(QuarantinePages, CloseTheQuestionByANamedPersonWithoutSendingAnybodyBackToTheLook)
{
    scene.read(650, scene.hangar.setA, dayOf(2026, 4, 20));
    must(doubt(scene.setB, kBaselineWithTwoSets));
    const RecordId record = must(store.records().add(scene.hangar.record(store.clock().now())));
    Check look;
    look.record = record;
    look.coupling = scene.hangar.leftAileron;
    look.kind = CheckKind::BallInSocket;
    look.person = scene.hangar.oren;
    look.when = store.clock().now();
    must(store.records().add(look));
    const QuestionRow row = bandQuestion();
    EXPECT_FALSE(row.startsAgain);

    const QuestionId id = row.story.question.id;
    EXPECT_FALSE(must(questions.close(scene.hangar.airframe, id, {})).isClosed());
    const CloseEntry entry{scene.hangar.vale, scene.hangar.oren, "sleeve in order", "read again with A"};
    const Closed closed = must(questions.close(scene.hangar.airframe, id, entry));
    EXPECT_TRUE(closed.isClosed());
    EXPECT_FALSE(closed.startsAgain);
    EXPECT_TRUE(must(store.records().content(record)).interruptions.empty());
    EXPECT_FALSE(bandQuestion().story.isOpen());
    EXPECT_EQ(must(questions.open(scene.hangar.airframe)).size(), 1U) << "the one about the gauge stays";

    // Once closed, a further bad check that changes nothing more asks only about the gauge.
    must(doubt(scene.setB, kBaselineWithTwoSets));
    EXPECT_EQ(scene.questions().size(), 2U);
}

TEST_F(QuarantinePages, CountInTheQuestionNoReadingAfterTheSetWasFoundUsable)
{
    scene.check(scene.setB, dayOf(2026, 4, 10), kBaselineWithTwoSets);
    Question question;
    question.airframe = scene.hangar.airframe;
    question.kind = QuestionKind::GaugeQuarantined;
    question.gauge = scene.setB;
    must(store.records().add(question));
    scene.check(scene.setB, dayOf(2026, 4, 15));
    scene.read(500, scene.setB, dayOf(2026, 4, 20));
    EXPECT_EQ(must(questions.view(scene.hangar.airframe)).rows.front().inDoubt->count, 4);
}

TEST_F(QuarantinePages, ShowBothVersionsOfTheBandOnTheBaselineDay)
{
    const Band before = *sheet().band;
    EXPECT_FALSE(sheet().doubted);
    must(doubt(scene.setB, kBaselineWithTwoSets));
    const BaselineSheet now = sheet();
    EXPECT_EQ(now.admitted, 8);
    EXPECT_EQ(now.stage, BaselineStage::Thin);
    EXPECT_LT(now.band->outer.upper, before.outer.upper);
    ASSERT_TRUE(now.doubted);
    EXPECT_EQ(now.doubted->readings, 4);
    EXPECT_EQ(now.doubted->band->outer.upper, before.outer.upper);
    EXPECT_FALSE(now.readings.back().admitted);
    EXPECT_EQ(now.readings.back().inDoubtFrom, kBaselineWithTwoSets);
    EXPECT_EQ(now.gauges, 1) << "the spread is that of the readings that count";
    EXPECT_TRUE(DoubtWords::otherVersion(*now.doubted, true)
                    .startsWith("With the 4 readings of leaf set B in doubt it would be "));
}

TEST_F(QuarantinePages, FreezeABaselineWithoutItsReadingsInDoubt)
{
    must(doubt(scene.setB, kBaselineWithTwoSets));
    EXPECT_EQ(sheet().obstacle, FreezeObstacle::TooFewReadings) << "eight are left of twelve";
    for (int i = 0; i < 2; ++i)
        scene.read(500, scene.hangar.setA, dayOf(2026, 4, 2), Purpose::Baseline);
    ASSERT_EQ(sheet().obstacle, FreezeObstacle::None);
    ASSERT_TRUE(baseline.freeze(sheet(), scene.hangar.oren, scene.hangar.vale));
    EXPECT_EQ(must(store.records().frozenBaselines(scene.hangar.airframe)).front().readings.size(), 10U);
    EXPECT_FALSE(sheet().doubted);
}

TEST_F(QuarantinePages, KeepTheListOfAFrozenBaselineAndWorkItsBandOutWithoutTheDoubtedReadings)
{
    ASSERT_TRUE(baseline.freeze(sheet(), scene.hangar.oren, scene.hangar.vale));
    must(doubt(scene.setB, kBaselineWithTwoSets));
    const BaselineSheet now = sheet();
    EXPECT_EQ(now.stage, BaselineStage::Frozen);
    EXPECT_EQ(must(store.records().frozenBaselines(scene.hangar.airframe)).front().readings.size(), 12U);
    EXPECT_EQ(now.band->readings, 8);
    EXPECT_EQ(now.doubted->readings, 4);
}

TEST_F(QuarantinePages, MarkTheReadingsInTheTableAndTellBothVersionsInTrends)
{
    scene.read(500, scene.setB, dayOf(2026, 4, 20));
    must(doubt(scene.setB, kBaselineWithTwoSets));
    const CouplingTrend told = trend();
    EXPECT_EQ(told.origin.confirmedReadings, 8);
    ASSERT_TRUE(told.origin.doubted);
    EXPECT_EQ(told.origin.doubted->readings, 4);
    const TrendsReading& last = told.readings.back();
    EXPECT_TRUE(last.inDoubt);
    EXPECT_EQ(last.note, "leaf set B in doubt from 1 April 2026");
    EXPECT_EQ(last.judgement.verdict, Verdict::CannotTell);
    EXPECT_FALSE(told.readings[8].ofBaseline) << "the first of B's readings makes no band";
    EXPECT_FALSE(told.readings.front().inDoubt);
    EXPECT_TRUE(told.readings.front().note.empty());
    EXPECT_EQ(told.counts.cannotTell + told.counts.outside, 5);
}
