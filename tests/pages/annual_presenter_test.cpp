#include "app/pages/annual/annual_presenter.h"
#include "tests/pages/trends_scene.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class BeforeTheAnnual : public testing::Test
{
protected:
    AnnualView view(const std::optional<PeriodOffer>& period = {})
    {
        return must(
            AnnualPresenter{scene.store.records(), scene.store.clock()}.view(scene.hangar.airframe, period));
    }

    static const AnnualRow& row(const AnnualView& view, const QString& name)
    {
        const auto found = std::ranges::find(view.rows, name, &AnnualRow::name);
        EXPECT_NE(found, view.rows.end()) << name.toStdString();
        return *found;
    }

    // Twelve riggings where the band is; of the twelve after them each second one leaf higher.
    void tellADrift()
    {
        // In one transaction: the disk is asked once.
        must(scene.store.records().together([this]() -> Outcome {
            scene.baselineDay(dayOf(2026, 3, 7));
            for (int i = 0; i < 24; ++i)
                scene.rig(dayOf(2026, 4, 4) + std::chrono::days{7 * i},
                          500 + (i < 12 ? 0 : 50 * ((i - 10) / 2)));
            return Done{};
        }));
    }

    TrendsScene scene;
};

} // namespace

TEST_F(BeforeTheAnnual, SaysOfACouplingWithoutReadingsThatNothingIsKnown)
{
    const AnnualView before = view();
    EXPECT_EQ(before.title, "Before the annual");
    EXPECT_TRUE(before.counted.contains("no reading")) << before.counted.toStdString();
    const AnnualRow& left = row(before, "Left aileron");
    EXPECT_EQ(left.says, Says::NotRead);
    EXPECT_EQ(left.saysInWords, "not read");
    EXPECT_EQ(left.moved.figure, QString{});
    EXPECT_EQ(left.moved.instead, "no band yet");
    EXPECT_EQ(left.chance.instead, "no band yet");
    EXPECT_TRUE(left.signs.contains("no reading in this period"));
    EXPECT_TRUE(before.nothingGrave.contains("one sign only"));
    EXPECT_TRUE(before.nothingGrave.contains("Nothing can be said of Left aileron and Right aileron"));
    EXPECT_TRUE(before.nothingGrave.contains("No gap was read in this period."));
    EXPECT_FALSE(before.nothingGrave.contains("Nothing stands out")) << before.nothingGrave.toStdString();
}

TEST_F(BeforeTheAnnual, PutsACouplingThatOpensFirstWithItsIntervalAndSaysSoAtTheTop)
{
    tellADrift();
    const AnnualView told = view();
    EXPECT_EQ(told.rows.front().name, "Left aileron");
    EXPECT_TRUE(told.rows.front().isGrave);
    EXPECT_TRUE(told.rows.front().moved.standsOut);
    EXPECT_TRUE(told.rows.front().moved.beside.contains(" to "));
    ASSERT_EQ(told.headlines.size(), 1u);
    EXPECT_TRUE(told.headlines.front().sentence.startsWith(
        "Left aileron: the gap has been growing since about rigging 1"));
    EXPECT_TRUE(told.headlines.front().figures.contains("95 % interval"));
    EXPECT_EQ(told.nothingGrave, QString{});
    EXPECT_EQ(told.rows.front().chance.instead, "no annual date");
}

TEST_F(BeforeTheAnnual, TellsHowLikelyAReadingLiesOutsideOnceTheAnnualHasADay)
{
    tellADrift();
    Airframe airframe = must(scene.store.records().airframes()).front();
    airframe.annualDue = dayOf(2027, 3, 1);
    must(scene.store.records().add(airframe));
    const AnnualView told = view();
    EXPECT_EQ(told.title, "Before the annual of 1 March 2027");
    EXPECT_NE(told.rows.front().chance.figure, QString{});
    EXPECT_TRUE(told.headlines.front().figures.contains(" in 100."));
    EXPECT_TRUE(told.riggings.join(' ').contains("more until the annual"));
}

TEST_F(BeforeTheAnnual, TellsEveryReadingOutsideWithWhoReadItAndWhatIsNotKnown)
{
    scene.baselineDay(dayOf(2026, 3, 7));
    scene.rig(dayOf(2026, 4, 4), 500);
    scene.rig(dayOf(2026, 4, 11), 900);
    scene.rig(dayOf(2026, 4, 18), 500);
    const AnnualView told = view();
    ASSERT_EQ(told.outside.size(), 1u);
    EXPECT_EQ(told.outside.front().title, "Left aileron, 11 April 2026: 0.90–0.95 mm");
    EXPECT_TRUE(told.outside.front().text.contains("Above its band"));
    EXPECT_TRUE(told.outside.front().text.contains("Read by M. Oren with leaf set A. Rigging 2."));
    EXPECT_TRUE(told.outside.front().text.contains("nothing is noted of what was found"));
    EXPECT_EQ(told.outside.front().state, QString{});
}

TEST_F(BeforeTheAnnual, PutsAnOpenQuestionFirstInItsStoryAndInTheList)
{
    scene.baselineDay(dayOf(2026, 3, 7));
    const RecordId record = scene.rig(dayOf(2026, 4, 11), 900);
    Question question;
    question.airframe = scene.hangar.airframe;
    question.record = record;
    question.coupling = scene.hangar.leftAileron;
    question.reading = must(scene.store.records().readingsOf(scene.hangar.leftAileron)).back().reading.id;
    must(scene.store.records().add(question));
    const AnnualView told = view();
    EXPECT_EQ(row(told, "Left aileron").openQuestions, 1);
    ASSERT_EQ(told.questions.size(), 1u);
    EXPECT_TRUE(told.questions.front().title.contains("Left aileron, outside its band"));
    EXPECT_EQ(told.outside.front().state, "open");
    EXPECT_TRUE(told.outside.front().text.contains("Still open"));
    EXPECT_TRUE(told.headlines.front().sentence.startsWith("Left aileron: a reading outside"));
}

TEST_F(BeforeTheAnnual, LooksBackFromAnnualToAnnualAndOnTheCurrentOneWhenThePeriodIsGone)
{
    tellADrift();
    scene.event(dayOf(2026, 6, 1), EventKind::Annual, "by A. Quill");
    const AnnualView now = view();
    ASSERT_GE(now.offers.size(), 3u);
    EXPECT_TRUE(now.chosen.isSameChoiceAs(now.offers[0]));
    const AnnualView earlier = view(now.offers[1]);
    EXPECT_TRUE(earlier.chosen.isSameChoiceAs(now.offers[1]));
    EXPECT_EQ(earlier.title, "Before the annual of 1 June 2026");
    EXPECT_TRUE(earlier.headlines.empty());
    PeriodOffer gone = now.offers[1];
    gone.period.from -= std::chrono::days{1};
    EXPECT_TRUE(view(gone).chosen.isSameChoiceAs(now.offers[0]));
}

TEST_F(BeforeTheAnnual, TellsTheBandBeforeAndAfterANewFitting)
{
    scene.baselineDay(dayOf(2026, 3, 7));
    const FittingId second = scene.refit(dayOf(2026, 5, 1), "sleeve readjusted");
    scene.baselineDay(dayOf(2026, 5, 2), second, 100);
    const AnnualView told = view();
    ASSERT_FALSE(told.changes.empty());
    EXPECT_TRUE(told.changes.front().text.contains("sleeve readjusted. Band before: 0.4"))
        << told.changes.front().text.toStdString();
    EXPECT_TRUE(told.changes.front().text.contains("Band after: 0.5"));
}

TEST_F(BeforeTheAnnual, BeginsWithTheLastPeriodInWhichAnythingWasRead)
{
    tellADrift();
    scene.event(dayOf(2026, 10, 20), EventKind::Annual, "by A. Quill");
    const AnnualView told = view();
    EXPECT_EQ(told.title, "Before the annual of 20 October 2026");
    EXPECT_EQ(told.headlines.size(), 1u);
    const AnnualView empty = view(told.offers.front());
    ASSERT_EQ(empty.headlines.size(), 1u) << "nobody has said yet what the readings outside were";
    EXPECT_TRUE(empty.headlines.front().sentence.contains("outside before this period"));
}

TEST_F(BeforeTheAnnual, LeadsFromAReadingOutsideToThatReading)
{
    scene.baselineDay(dayOf(2026, 3, 7));
    scene.rig(dayOf(2026, 4, 11), 900);
    const ReadingId outside =
        must(scene.store.records().readingsOf(scene.hangar.leftAileron)).back().reading.id;
    const AnnualView told = view();
    ASSERT_EQ(told.outside.size(), 1u);
    EXPECT_EQ(told.outside.front().coupling, scene.hangar.leftAileron);
    EXPECT_EQ(told.outside.front().reading, outside);
    EXPECT_EQ(told.outside.front().day, dayOf(2026, 4, 11));
}

TEST_F(BeforeTheAnnual, TellsAFindingAmongWhatChangedAndWhatSomebodyAsksAmongTheQuestions)
{
    Event finding;
    finding.airframe = scene.hangar.airframe;
    finding.coupling = scene.hangar.leftAileron;
    finding.kind = EventKind::Finding;
    finding.day = dayOf(2026, 10, 3);
    finding.note = "a flat on the ball";
    finding.done = "turned by a quarter";
    finding.person = scene.hangar.vale;
    must(scene.store.records().add(finding));
    Question question;
    question.airframe = scene.hangar.airframe;
    question.kind = QuestionKind::Asked;
    question.text = "who has the spare ball?";
    question.stamp.by = scene.hangar.vale;
    must(scene.store.records().add(question));
    const AnnualView told = view();
    ASSERT_FALSE(told.changes.empty());
    EXPECT_EQ(told.changes.front().text.toStdString(),
              "3 October 2026, Left aileron: found: a flat on the ball; done: turned by a quarter (T. Vale)");
    ASSERT_EQ(told.questions.size(), 1u);
    EXPECT_TRUE(told.questions.front().title.contains("QX-17, a question in words since"))
        << told.questions.front().title.toStdString();
    EXPECT_TRUE(told.questions.front().title.contains("“who has the spare ball?”"));
}
