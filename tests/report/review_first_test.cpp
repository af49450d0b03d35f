// The first page of the engineer's report: what to look at first. And how many pages the demonstration takes.

#include "app/report/review_report.h"
#include "app/wording/report_words.h"
#include "core/demo/demo.h"
#include "core/store/airframe_facts.h"
#include "tests/report/pages.h"
#include "tests/report/told_record.h"

using namespace rig;
using namespace rig::test;

namespace {

const Day kDemonstrationDay = dayOf(2026, 11, 29);

class FirstPage : public testing::Test
{
protected:
    FirstPage() { told.addSurface("Left aileron flap", SurfaceKind::Aileron); }

    QStringList texts(bool withAppendix = true)
    {
        AirframeFacts facts = must(factsOf(told.store.records(), told.hangar.airframe));
        EXPECT_TRUE(readContents(told.store.records(), facts));
        const ReviewPeriod period{dayOf(2026, 1, 1), dayOf(2026, 12, 31), {}};
        Printing printing{Paper::A4, kDemonstrationDay, QStringLiteral("Rigband 0.1.0")};
        printing.withAppendix = withAppendix;
        const PageFlow flow = layoutReview(facts, airframeReviewOf(facts, period), printing);
        expectWellPlaced(flow);
        return textsOf(flow.pages.front());
    }

    ToldRecord told;
};

std::size_t pagesWithoutPlan(const AirframeFacts& facts, const AirframeReview& review)
{
    const PageFrame frame{QStringLiteral("QX"), QStringLiteral("one line"), ReportWords::caution(),
                          QStringLiteral("one line")};
    return layoutPages(frame, reviewBlocks(facts, review), Paper::A4).pages.size();
}

int plansOn(const PageFlow& flow)
{
    int plans = 0;
    for (const PrintedPage& page : flow.pages)
        for (const PagePicture& picture : page.pictures)
            plans += picture.picture.inWords.startsWith("The airframe from above");
    return plans;
}

} // namespace

TEST_F(FirstPage, TellsASurfaceThatMovedTheWrongWayBeforeAnyCoupling)
{
    const SurfaceId rudder = told.addSurface("The rudder", SurfaceKind::Rudder);
    SurfaceCheck check;
    check.record = told.record;
    check.surface = rudder;
    check.kind = SurfaceCheckKind::CalledOneWay;
    check.answer = Answer::No;
    check.seen = Movement::Right;
    check.person = told.hangar.vale;
    check.cockpit = told.hangar.oren;
    check.stamp.when = told.now();
    must(told.store.records().add(check));
    for (const bool withAppendix : {true, false}) {
        const QString words = texts(withAppendix).join(QLatin1Char(' '));
        const auto at = words.indexOf("The rudder");
        ASSERT_GE(at, 0) << words.toStdString();
        EXPECT_TRUE(words.mid(at).contains("moved otherwise than expected, or not at all: 1 time, last on"))
            << words.toStdString();
        EXPECT_LT(at, words.indexOf("Left aileron"));
    }
}

TEST_F(FirstPage, TellsWhatCouldNotBeSeen)
{
    told.answer(CheckKind::SleeveAtStop, Answer::CannotSee);
    const QString words = texts().join(QLatin1Char(' '));
    EXPECT_TRUE(words.contains("“cannot see” answered: 1 time, last on")) << words.toStdString();
}

TEST_F(FirstPage, HasABoxToTickBeforeEachThing)
{
    AirframeFacts facts = must(factsOf(told.store.records(), told.hangar.airframe));
    const ReviewPeriod period{dayOf(2026, 1, 1), dayOf(2026, 12, 31), {}};
    const PageFlow flow = layoutReview(facts, airframeReviewOf(facts, period),
                                       {Paper::Letter, kDemonstrationDay, QStringLiteral("Rigband 0.1.0")});
    EXPECT_GE(flow.pages.front().boxes.size(), facts.couplings.size());
}

TEST(ReviewOfTheDemonstration, TakesTenPagesAtMostOfEachAirframeAndNoMoreWithoutTheAppendix)
{
    int plans = 0;
    TempStore store;
    store.clock().set(kDemonstrationDay);
    must(buildDemo(store.file(), demo::Language::English));
    for (const Airframe& airframe : must(store.records().airframes())) {
        AirframeFacts facts = must(factsOf(store.records(), airframe.id));
        EXPECT_TRUE(readContents(store.records(), facts));
        const AirframeReview review =
            airframeReviewOf(facts, reviewPeriods(facts, kDemonstrationDay).front());
        Printing printing{Paper::A4, kDemonstrationDay, QStringLiteral("Rigband 0.1.0")};
        const PageFlow whole = layoutReview(facts, review, printing);
        expectWellPlaced(whole);
        EXPECT_LE(whole.pages.size(), 10U) << airframe.registration;
        EXPECT_LE(whole.pages.size(), pagesWithoutPlan(facts, review)) << airframe.registration;
        plans += plansOn(whole);
        printing.withAppendix = false;
        EXPECT_LE(layoutReview(facts, review, printing).pages.size(), whole.pages.size());
        EXPECT_TRUE(textsOf(whole.pages.front()).contains("Findings")) << "the whole list of parts";
        printing.paper = Paper::Letter;
        const PageFlow letter = layoutReview(facts, review, printing);
        expectWellPlaced(letter);
        EXPECT_TRUE(textsOf(letter.pages.front()).contains("Findings"));
    }
    EXPECT_GT(plans, 0) << "the airframe from above, where it takes no other page";
}
