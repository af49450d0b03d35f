// Looks, pulls, the control check and what was measured on the surfaces, in the report and in its tables.

#include "app/report/record_report.h"
#include "app/report/review_report.h"
#include "app/wording/review_words.h"
#include "core/exchange/review_tables.h"
#include "core/exchange/tables_out.h"
#include "core/review/answers_review.h"
#include "core/review/record_summary.h"
#include "core/store/airframe_facts.h"
#include "tests/support/hangar.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class ReviewAnswers : public testing::Test
{
protected:
    ReviewAnswers()
    {
        Surface surface;
        surface.airframe = hangar.airframe;
        surface.name = "Left aileron";
        surface.kind = SurfaceKind::Aileron;
        surface.up = ManualDeflection{{20'000}, {1'000}};
        surface.manualReference = "page 4-2";
        aileron = must(store.records().add(surface));
        RiggingRecord rigging = hangar.record(store.clock().now());
        rigging.celsius = 7;
        record = must(store.records().add(rigging));
        answer(CheckKind::BallInSocket, Answer::Yes);
        answer(CheckKind::PlungerHome, Answer::CannotSee);
        answer(CheckKind::PlungerHome, Answer::Felt);
        answer(CheckKind::SleeveAtStop, Answer::Yes);
        answer(CheckKind::Pull, Answer::Yes);
        answer(CheckKind::Secured, Answer::Yes);
        store.clock().passMinutes(1);
        surface.id = aileron;
        for (const SurfaceCheckKind kind : checksOf(surface)) {
            SurfaceCheck check{{}, record, aileron, kind, Answer::Yes, hangar.oren, hangar.vale, {}};
            if (isCall(kind))
                check.seen = kind == SurfaceCheckKind::CalledOneWay ? Movement::Up : Movement::Down;
            must(store.records().add(check));
        }
        must(store.records().add(SurfaceMeasure{
            {}, record, aileron, MeasureKind::Up, DeflectionUnit::Degrees, {23'500}, {}, hangar.oren, {}}));
        readAgain();
    }

    void readAgain()
    {
        facts = must(factsOf(store.records(), hangar.airframe));
        EXPECT_TRUE(readContents(store.records(), facts));
    }

    // Rigged on 4 April, typed in by Vale; the second person's column is Oren's and copied.
    void typeInFromPaper()
    {
        const Moment then = noonOf(dayOf(2026, 4, 4));
        RiggingRecord paper = hangar.record(then);
        paper.enteredBy = hangar.vale;
        const RecordId typed = must(store.records().add(paper));
        must(store.records().add(SideConnected{{}, typed, Side::Left, {hangar.vale}, {hangar.vale, {}}}));
        Check pull{{}, typed, hangar.leftAileron, CheckKind::Pull, Answer::Yes, Turn::Second, {}, then, {}};
        pull.person = hangar.oren;
        pull.copiedBy = hangar.vale;
        must(store.records().add(pull));
        Reading reading = hangar.reading(between(500, 550), then);
        reading.record = typed;
        reading.turn = Turn::Second;
        reading.copiedBy = hangar.vale;
        must(store.records().add(reading, std::nullopt));
        readAgain();
    }

    void answer(CheckKind kind, Answer given)
    {
        store.clock().passMinutes(1);
        must(store.records().add(Check{
            {}, record, hangar.leftAileron, kind, given, Turn::First, hangar.oren, store.clock().now(), {}}));
    }

    AirframeReview review() const { return airframeReviewOf(facts, period); }

    static bool has(const std::string& table, const char* line)
    {
        return table.find(line) != std::string::npos;
    }

    TempStore store;
    Hangar hangar{store.records()};
    SurfaceId aileron;
    RecordId record;
    AirframeFacts facts;
    ReviewPeriod period{dayOf(2026, 1, 1), dayOf(2026, 12, 31), {}};
};

} // namespace

TEST_F(ReviewAnswers, AreCountedForEachCouplingAndEachSurface)
{
    const AnswersReview all = answersOf(facts, period);
    ASSERT_EQ(all.looks.size(), 2U);
    EXPECT_EQ(all.looks[0].riggings, 1);
    EXPECT_EQ(all.looks[0].wholeFirst, 1) << "what could not be seen was felt afterwards";
    EXPECT_EQ(all.looks[0].wholeSecond, 0);
    EXPECT_EQ(all.looks[0].felt, 1);
    EXPECT_EQ(all.looks[0].cannotSee, 1);
    EXPECT_EQ(all.looks[1].riggings, 0);
    ASSERT_EQ(all.surfaces.size(), 1U);
    EXPECT_EQ(all.surfaces[0].whole, 1);
    EXPECT_EQ(all.surfaces[0].measured.at(MeasureKind::Up).value.thousandths, 23'500);
}

TEST_F(ReviewAnswers, StandInTablesBesideTheReport)
{
    const std::string looks = reviewLooksTable(facts, review());
    EXPECT_TRUE(has(looks, "Left aileron,first,plunger-home,cannot-see,M. Oren")) << looks;
    EXPECT_TRUE(has(looks, "Left aileron,first,plunger-home,felt,M. Oren"));
    EXPECT_TRUE(has(looks, ",no\r\n") || has(looks, ",no\n")) << "the first of the two no longer counts";
    const std::string control = reviewControlTable(facts, review());
    EXPECT_TRUE(has(control, "Left aileron,sense,yes,M. Oren,T. Vale")) << control;
    const std::string figures = reviewDeflectionsTable(facts, review());
    EXPECT_TRUE(has(figures, "Left aileron,up,23.500,degrees,,M. Oren,20.000,1.000,degrees,2.500,page 4-2"))
        << figures;
    const std::string riggings = reviewRiggingsTable(facts, review());
    EXPECT_TRUE(has(riggings, ",rigging,M. Oren,open,,,7,,,yes,no,")) << riggings;
    std::vector<std::string> names;
    for (const NamedTable& table : reviewTables(facts, review()))
        names.push_back(table.name);
    for (const char* name :
         {"riggings.csv", "connected.csv", "looks.csv", "control_checks.csv", "deflections.csv"})
        EXPECT_NE(std::ranges::find(names, name), names.end()) << name;
}

TEST_F(ReviewAnswers, OfAControlCheckCountNoMoreOnceAHandWasOnAJointOfItsCircuit)
{
    EXPECT_TRUE(has(reviewControlTable(facts, review()), ",yes,up,no")) << "it counts, and what was seen";
    answer(CheckKind::Pull, Answer::Yes);
    readAgain();
    EXPECT_EQ(answersOf(facts, period).surfaces[0].whole, 0);
    EXPECT_EQ(answersOf(facts, period).surfaces[0].riggings, 1);
    EXPECT_TRUE(has(reviewControlTable(facts, review()), ",no,up,no"));
    EXPECT_FALSE(has(reviewControlTable(facts, review()), ",yes,up,no"));
    const RecordSummary summary = summaryOf(facts, must(store.records().content(record)));
    for (const SummarySurfaceAnswer& one : summary.surfaces.at(0).answers)
        EXPECT_EQ(one.hand, "Left aileron");
}

TEST_F(ReviewAnswers, OfAControlCheckCountOnWhateverIsClosedAfterTheRecord)
{
    Question question;
    question.airframe = hangar.airframe;
    question.kind = QuestionKind::CannotSee;
    question.record = record;
    question.coupling = hangar.leftAileron;
    question.check = CheckKind::SleeveAtStop;
    const QuestionId asked = must(store.records().add(question));
    must(store.records().add(RecordClose{{}, record, Closing::LeftOpen, hangar.oren, hangar.vale, {}, {}}));
    store.clock().passMinutes(60);
    must(store.records().add(Resolution{{}, asked, hangar.oren, "a shadow", "looked with a mirror", {}}));
    readAgain();
    EXPECT_EQ(answersOf(facts, period).surfaces[0].whole, 1);
    EXPECT_TRUE(has(reviewControlTable(facts, review()), ",yes,up,no"));
}

TEST_F(ReviewAnswers, FromPaperAreMarkedInEveryTableAndToldInTheReport)
{
    typeInFromPaper();
    const AirframeReview now = review();
    const std::string riggings = reviewRiggingsTable(facts, now);
    EXPECT_TRUE(has(riggings, ",yes,T. Vale,2026-05-02\r\n")) << riggings;
    EXPECT_TRUE(has(riggings, ",no,,\r\n")) << "the other one was rigged at the laptop";
    const std::string connected = reviewConnectedTable(facts, now);
    EXPECT_TRUE(has(connected, "left,T. Vale,T. Vale,2026-04-04,12:00:00,yes,yes\r\n")) << connected;
    const std::string looks = reviewLooksTable(facts, now);
    EXPECT_TRUE(has(looks, "pull,yes,M. Oren,2026-04-04,12:00:00,yes,T. Vale,yes\r\n")) << looks;
    const std::string readings = reviewReadingsTable(facts, now);
    EXPECT_TRUE(has(readings, ",T. Vale,yes\r\n")) << readings;
    EXPECT_TRUE(has(must(writeReadings(store.records())), ",T. Vale,yes,12:00:00,12:00:00\r\n"));
    EXPECT_EQ(ReviewWords::riggings(now).filter("typed in afterwards").join(' ').toStdString(),
              "1 record written on paper and typed in afterwards: 4 April 2026.");
}

TEST_F(ReviewAnswers, FromPaperThatSawWhatWasNotSeenCloseItTheSameOnEveryPaper)
{
    RiggingRecord paper = hangar.record(noonOf(dayOf(2026, 4, 4)));
    paper.enteredBy = hangar.oren;
    paper.id = must(store.records().add(paper));
    Check look{{},
               paper.id,
               hangar.leftAileron,
               CheckKind::PlungerHome,
               Answer::CannotSee,
               Turn::First,
               hangar.oren,
               paper.begins,
               {}};
    must(store.records().add(look));
    must(store.records().add(*questionFrom(look, hangar.airframe)));
    store.clock().passMinutes(1);
    look.answer = Answer::Yes;
    look.turn = Turn::Second;
    look.person = hangar.vale;
    look.copiedBy = hangar.oren;
    must(store.records().add(look));
    readAgain();
    const std::string questions = reviewQuestionsTable(facts, review());
    EXPECT_TRUE(has(questions, "2026-04-04,,cannot-see")) << questions;
    EXPECT_TRUE(has(questions, "2026-04-04,T. Vale,yes,,M. Oren,yes")) << questions;
    const auto story = std::ranges::find(facts.questions, std::optional{paper.id},
                                         [](const QuestionStory& one) { return one.question.record; });
    ASSERT_NE(story, facts.questions.end());
    EXPECT_EQ(ReviewWords{facts}.resolution(*story).toStdString(),
              "Closed on 4 April 2026 by T. Vale, who looked again: copied from paper by M. Oren.");
    const RecordSummary summary = summaryOf(facts, must(store.records().content(paper.id)));
    std::string cells;
    for (const Block& block : recordBlocks(summary))
        if (const auto* table = std::get_if<TableBlock>(&block))
            for (const auto& row : table->rows)
                for (const Cell& cell : row)
                    for (const CellText& text : cell)
                        cells += text.text.toStdString() + '\n';
    EXPECT_TRUE(has(cells, "Yes: T. Vale, 12:00, copied from paper by M. Oren")) << cells;
}

TEST_F(ReviewAnswers, StandOnThePagesOfTheReport)
{
    std::string headings;
    std::string cells;
    for (const Block& block : reviewBlocks(facts, review())) {
        if (const auto* heading = std::get_if<HeadingBlock>(&block))
            headings += heading->text.toStdString() + '\n';
        if (const auto* table = std::get_if<TableBlock>(&block))
            for (const auto& row : table->rows)
                for (const Cell& cell : row)
                    for (const CellText& text : cell)
                        cells += text.text.toStdString() + '\n';
    }
    EXPECT_TRUE(has(headings, "Looks and pulls\n")) << headings;
    EXPECT_TRUE(has(headings, "Control checks and deflections\n"));
    EXPECT_TRUE(has(cells, "up 23.5°, 2 May 2026")) << cells;
}
