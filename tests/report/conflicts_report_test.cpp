// What two laptops say differently, on paper.

#include "app/report/record_report.h"
#include "app/report/review_report.h"
#include "app/wording/conflict_words.h"
#include "core/review/record_summary.h"
#include "core/store/decide.h"
#include "core/store/facts_book.h"
#include "tests/report/pages.h"
#include "tests/support/laptop.h"

#include <filesystem>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

constexpr Day kPrintedOn = dayOf(2026, 6, 15);
const QString kOneOpen = ConflictWords::bar(std::vector<ToldConflict>(1));

// Two laptops closed one record apart, and one of them took the other one in. A second airframe stands in the
// same file.
class ConflictsReport : public testing::Test
{
protected:
    TempStore store;
    Hangar hangar{store.records()};
    AirframeId other = must(store.records().add(anAirframe("QX-42")));
    RecordId record;
    RecordId laterRecord;
    std::unique_ptr<Laptop> ours;

    void SetUp() override
    {
        record = must(store.records().add(hangar.record(store.clock().now())));
        store.clock().passMinutes(3 * 24 * 60);
        laterRecord = must(store.records().add(hangar.record(store.clock().now())));
        store.close();
        const std::string twin = store.folder() / "twin.rigband";
        fs::copy_file(store.path(), twin);
        ours = std::make_unique<Laptop>(store.path(), 3);
        Laptop theirs{twin, 5};
        ours->clock.passMinutes(4 * 24 * 60);
        theirs.clock.passMinutes(4 * 24 * 60 + 30);
        close(*ours, hangar.oren);
        close(theirs, hangar.vale);
        takenIn(*ours, twin);
        ours->clock.passMinutes(60);
    }

    void close(Laptop& laptop, PersonId by) const
    {
        RecordClose close;
        close.record = record;
        close.stamp.by = by;
        must(laptop.records->add(close));
    }
    void decideForTheOther() const
    {
        const auto open = must(ours->records->openConflicts());
        ASSERT_EQ(open.size(), 1U);
        Decision decision;
        decision.kind = open.front().conflict.kind;
        decision.first.bytes = open.front().conflict.first;
        decision.second.bytes = open.front().conflict.second;
        decision.holds = Holds::Second;
        decision.person = hangar.vale;
        decision.reason = "asked both at the trailer";
        decision.stamp.by = hangar.vale;
        must(decide(*ours->records, decision));
    }
    Printing printing() const
    {
        return {Paper::A4, kPrintedOn, QStringLiteral("Rigband 0.1.0"), true,
                must(ours->records->evidence())};
    }
    PageFlow report(AirframeId airframe) const
    {
        const AirframeFacts& facts = must(ours->records->book().airframe(airframe))->facts();
        return layoutReview(facts, airframeReviewOf(facts, reviewPeriods(facts, kPrintedOn).front()),
                            printing());
    }
    QString paperOf(RecordId which) const
    {
        const AirframeFacts& facts = must(ours->records->book().airframe(hangar.airframe))->facts();
        return wordsOf(layoutRecord(summaryOf(facts, must(ours->records->content(which))), printing()));
    }
};

} // namespace

TEST_F(ConflictsReport, TellsBothSidesOfWhatIsOpenAndThatFirst)
{
    const PageFlow flow = report(hangar.airframe);
    const QString first = textsOf(flow.pages.front()).join(QLatin1Char(' '));
    EXPECT_TRUE(first.contains(kOneOpen)) << first.toStdString();
    const QString all = wordsOf(flow);
    EXPECT_TRUE(all.contains("One record was closed twice")) << all.toStdString();
    EXPECT_TRUE(all.contains("by M. Oren"));
    EXPECT_TRUE(all.contains("by T. Vale"));
    EXPECT_TRUE(all.contains(ConflictWords::until(ConflictKind::Closings)));
    EXPECT_FALSE(all.contains(ConflictWords::decidedHeading()));
}

TEST_F(ConflictsReport, TellsWhatWasDecidedByWhomAndWhyInTheAppendix)
{
    decideForTheOther();
    const PageFlow flow = report(hangar.airframe);
    const QString all = wordsOf(flow);
    EXPECT_FALSE(all.contains(kOneOpen));
    EXPECT_FALSE(all.contains(ConflictWords::heading()));
    EXPECT_TRUE(all.contains(ConflictWords::decidedHeading()));
    EXPECT_TRUE(all.contains("The other holds: said by T. Vale on")) << all.toStdString();
    EXPECT_TRUE(all.contains("asked both at the trailer"));
}

TEST_F(ConflictsReport, SpeaksOfNoOtherLaptopWhereOneFileSaysAThingTwice)
{
    decideForTheOther();
    RecordClose close;
    close.record = laterRecord;
    close.stamp.by = hangar.oren;
    must(ours->records->add(close));
    putInOnceMore(ours->file().connection(), "closing");
    const QString all = wordsOf(report(hangar.airframe));
    EXPECT_TRUE(all.contains(ConflictWords::bar(must(ours->records->openConflicts())))) << all.toStdString();
    EXPECT_FALSE(all.contains(kOneOpen)) << all.toStdString();
    EXPECT_FALSE(all.contains(ConflictWords::heading()));
}

TEST_F(ConflictsReport, SaysNothingOfAnotherAirframes)
{
    for (const bool isDecided : {false, true}) {
        if (isDecided)
            decideForTheOther();
        const QString all = wordsOf(report(other));
        EXPECT_FALSE(all.contains(ConflictWords::heading())) << isDecided;
        EXPECT_FALSE(all.contains(ConflictWords::decidedHeading())) << isDecided;
    }
}

TEST_F(ConflictsReport, StandsOnTheRecordThatItIsAboutUntilItIsDecided)
{
    const QString open = QStringLiteral("Open for a person to decide: One record was closed twice");
    EXPECT_TRUE(paperOf(record).contains(open)) << paperOf(record).toStdString();
    EXPECT_FALSE(paperOf(laterRecord).contains(open));
    decideForTheOther();
    EXPECT_FALSE(paperOf(record).contains(open));
}
