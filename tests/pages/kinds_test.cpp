// A coupling without a gap to measure is told as that everywhere, and never as one that lacks something;
// joint play stands beside it and is never told with the gap.

#include "app/pages/annual/annual_presenter.h"
#include "app/pages/rigged_today/coupling_panel.h"
#include "app/pages/rigged_today/summary_presenter.h"
#include "app/pages/setup/baseline_panel.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/trends/trends_page.h"
#include "app/report/record_report.h"
#include "app/report/review_report.h"
#include "app/wording/joint_play_words.h"
#include "core/exchange/csv.h"
#include "core/exchange/review_tables.h"
#include "core/exchange/tables_out.h"
#include "core/store/airframe_facts.h"
#include "tests/pages/trends_scene.h"
#include "tests/support/clipped.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"

#include <QAbstractButton>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QListWidget>

#include <algorithm>
#include <gtest/gtest.h>
#include <map>

using namespace rig;
using namespace rig::test;

namespace {

// The left aileron has its band and was rigged once; the right one connects by itself, under the same name.
class KindsOfCouplings : public testing::Test
{
protected:
    KindsOfCouplings()
    {
        scene.baselineDay(kBaselineDay);
        turnInto(CouplingKind::ByItself, {false, true, false});
        rigged = scene.rig(dayOf(2026, 10, 24), 500);
    }

    void turnInto(CouplingKind kind, CouplingParts parts)
    {
        for (Coupling coupling : must(scene.store.records().couplings(hangar().airframe))) {
            if (coupling.id != hangar().rightAileron)
                continue;
            coupling.kind = kind;
            coupling.parts = parts;
            must(scene.store.records().add(coupling));
        }
    }

    void answer(CheckKind kind, Turn turn)
    {
        Check check;
        check.record = rigged;
        check.coupling = hangar().rightAileron;
        check.kind = kind;
        check.answer = Answer::Yes;
        check.turn = turn;
        check.person = turn == Turn::First ? hangar().oren : hangar().vale;
        check.when = TrendsScene::at(dayOf(2026, 10, 24), 11);
        must(scene.store.records().add(check));
    }

    void feelPlay(CouplingId coupling, Day day, std::optional<RecordId> record = {})
    {
        JointPlay play;
        play.coupling = coupling;
        play.record = record;
        play.day = day;
        play.along = {PlayFelt::Felt, Gap::micrometres(150)};
        play.across = {PlayFelt::None, {}};
        play.person = hangar().vale;
        play.note = "Dial gauge.";
        must(scene.store.records().add(play));
    }

    const Hangar& hangar() const { return scene.hangar; }
    AirframeFacts facts() { return must(factsOf(scene.store.records(), hangar().airframe)); }

    AirframeReview review()
    {
        const AirframeFacts all = facts();
        return airframeReviewOf(all, reviewPeriods(all, scene.store.clock().now().localDay()).front());
    }

    TrendsScene scene;
    RecordId rigged;
};

QStringList textsIn(const TableBlock& table)
{
    QStringList words;
    for (const std::vector<Cell>& row : table.rows)
        for (const Cell& cell : row)
            for (const CellText& text : cell)
                words << text.text;
    return words;
}

// All that is written in one part of a paper: from the heading of rank 3 with this text to the next one.
QString sectionOf(const std::vector<Block>& blocks, const QString& heading)
{
    QStringList words;
    bool isIn = false;
    for (const Block& block : blocks) {
        if (const auto* head = std::get_if<HeadingBlock>(&block))
            isIn = head->text == heading;
        if (!isIn)
            continue;
        if (const auto* beside = std::get_if<BesideBlock>(&block))
            words << beside->picture.lay({300, 120}, {}).inWords << textsIn(beside->table);
        if (const auto* paragraph = std::get_if<ParagraphBlock>(&block))
            words << paragraph->text;
        if (const auto* table = std::get_if<TableBlock>(&block))
            words << textsIn(*table);
        if (const auto* picture = std::get_if<PictureBlock>(&block))
            words << picture->lay({600, 80}, {}).inWords;
    }
    return words.join('\n');
}

// The words of a table's row that begins with this.
QString rowOf(const std::vector<Block>& blocks, const QString& first)
{
    QStringList words;
    for (const Block& block : blocks)
        if (const auto* table = std::get_if<TableBlock>(&block))
            for (const std::vector<Cell>& row : table->rows)
                if (row.front().front().text == first)
                    for (const Cell& cell : row)
                        for (const CellText& text : cell)
                            words << (text.picture ? text.picture({120, 20}, {}).inWords : text.text);
    return words.join('\n');
}

void expectNothingIsMissing(const QString& said)
{
    EXPECT_FALSE(said.isEmpty());
    EXPECT_TRUE(said.contains("no gap to measure", Qt::CaseInsensitive)) << said.toStdString();
    for (const char* lack :
         {"no band yet", "not read", "no reading", "noted as part-seated", "0 reading", "No baseline"})
        EXPECT_FALSE(said.contains(lack, Qt::CaseInsensitive)) << lack << " in: " << said.toStdString();
}

} // namespace

TEST_F(KindsOfCouplings, BeforeTheAnnualSaysThereIsNoGapAndMissesNothing)
{
    const AnnualView view =
        must(AnnualPresenter{scene.store.records(), scene.store.clock()}.view(hangar().airframe, {}));
    const auto row = std::ranges::find(view.rows, QStringLiteral("Right aileron"), &AnnualRow::name);
    ASSERT_NE(row, view.rows.end());
    EXPECT_EQ(row->says, Says::NoGap);
    EXPECT_NE(shapeOf(row->says), MarkShape::DiscTick);
    EXPECT_NE(shapeRoleOf(row->says), Role::Inside) << "nothing is green that no gap speaks for";
    EXPECT_TRUE(row->signs.isEmpty()) << row->signs.join(", ").toStdString();
    for (const QString& said : {row->saysInWords, row->noBand, row->moved.instead, row->excursion.instead,
                                row->scatter.instead, row->chance.instead})
        EXPECT_EQ(said, "no gap to measure");
    EXPECT_FALSE(row->bar.hasGap);
    for (const AnnualStory& story : view.tooFew)
        EXPECT_FALSE(story.text.contains("Right aileron")) << story.text.toStdString();
    EXPECT_FALSE(view.nothingGrave.contains("Nothing can be said of")) << view.nothingGrave.toStdString();
    EXPECT_TRUE(view.nothingGrave.contains("No gap to measure: Right aileron."));
}

TEST_F(KindsOfCouplings, TheReportSaysThereIsNoGapInItsRankingAndInTheCouplingsOwnPart)
{
    const std::vector<Block> blocks = reviewBlocks(facts(), review());
    expectNothingIsMissing(sectionOf(blocks, "Right aileron"));
    expectNothingIsMissing(rowOf(blocks, "Right aileron"));
}

TEST_F(KindsOfCouplings, TheTablesLeaveItsFiguresEmptyAndSayWhy)
{
    const auto rows = csvRows(reviewCouplingsTable(review()), ',');
    const auto& heads = rows.front().fields;
    const auto right =
        std::ranges::find_if(rows, [](const CsvRow& row) { return row.fields.front() == "Right aileron"; });
    ASSERT_NE(right, rows.end());
    const auto field = [&](const char* head) {
        return right->fields[static_cast<std::size_t>(std::ranges::find(heads, head) - heads.begin())];
    };
    EXPECT_EQ(field("kind"), "by-itself");
    EXPECT_EQ(field("gap"), "no");
    EXPECT_EQ(field("standing"), "no-gap");
    for (const char* figure : {"baseline_readings", "frozen", "witness", "part_seated_readings", "readings",
                               "no_band", "riggings_missed", "signs"})
        EXPECT_EQ(field(figure), "") << figure;
    EXPECT_TRUE(must(writeCouplings(scene.store.records())).find(",by-itself,no,yes,no,") !=
                std::string::npos);
}

TEST_F(KindsOfCouplings, ThePaperOfARiggingHasItsOwnQuestionsAndNoReading)
{
    for (const Turn turn : {Turn::First, Turn::Second})
        for (const CheckKind kind : {CheckKind::Engaged, CheckKind::NoStep, CheckKind::Pull})
            answer(kind, turn);
    const auto summary =
        must(SummaryPresenter{scene.store.records(), scene.store.clock()}.view(hangar().airframe, rigged));
    const std::vector<Block> blocks = recordBlocks(summary.summary);
    const QString right = sectionOf(blocks, "Right aileron");
    EXPECT_TRUE(right.contains("Right aileron has no gap to measure.")) << right.toStdString();
    EXPECT_TRUE(right.contains("Engaged all the way"));
    EXPECT_TRUE(right.contains("Parts meet all round, flush"));
    EXPECT_FALSE(right.contains("Ball in the socket"));
    EXPECT_FALSE(right.contains("Secured"));
    EXPECT_FALSE(right.contains("not read"));
    EXPECT_FALSE(rowOf(blocks, "Right aileron").contains("not read"));
    EXPECT_TRUE(rowOf(blocks, "Right aileron").contains("no gap to measure"));
}

TEST_F(KindsOfCouplings, TrendsSaysItInTheListInTheBandsPlaceAndOnTheCard)
{
    TrendsPage page{scene.store.records(), scene.store.clock()};
    page.showAirframe(hangar().airframe);
    showAt(page, {1280, 744});
    auto& row = part<QAbstractButton>(page, "trendRow1");
    EXPECT_EQ(row.accessibleName(), "Right aileron");
    EXPECT_EQ(row.accessibleDescription(), "no gap to measure");
    row.click();
    QApplication::processEvents();
    EXPECT_EQ(textOf(page, "bandSentence"), "Connects by itself: no gap to measure, so there is no band.");
    EXPECT_EQ(textOf(page, "nowTitle"), "No gap to measure");
    EXPECT_TRUE(QString::fromStdString(textOf(page, "noReadings")).startsWith("Right aileron has no gap"));
    EXPECT_FALSE(part(page, "movementCard").isVisible());
    expectNothingClipped(page, 10);
}

TEST_F(KindsOfCouplings, ABaselineDayLeavesItOutAndSaysWhich)
{
    ScriptedPrompts prompts;
    BaselinePanel panel{scene.store.records(), scene.store.clock(), prompts};
    panel.showAirframe(hangar().airframe);
    showAt(panel, {900, 700});
    EXPECT_EQ(part<QListWidget>(panel, "couplings").count(), 1);
    EXPECT_EQ(textOf(panel, "baselineWithoutGap"), "No gap to measure: Right aileron.");
    expectNothingClipped(panel, 10);
}

TEST_F(KindsOfCouplings, SetUpNeedsNoBandOfItAndItsListSaysWhatItIs)
{
    ScriptedPrompts prompts;
    SetUpPresenter presenter{scene.store.records(), scene.store.clock()};
    const SetUpView view = must(presenter.view(hangar().airframe));
    EXPECT_EQ(view.couplingsInUse(), 2);
    EXPECT_EQ(view.couplingsWithGap(), 1);
    EXPECT_TRUE(view.isDone(SetUpPart::BaselineDay)) << "every coupling with a gap has its band";

    CouplingEntry typed = entryOf(view.couplings.front().coupling);
    typed.kind = CouplingKind::WaterBallast;
    typed.parts = {true, true, true};
    must(presenter.couplings.save(typed, hangar().airframe, view.couplings.front().coupling.id));
    Coupling kept = must(scene.store.records().couplings(hangar().airframe)).front();
    EXPECT_EQ(kept.kind, CouplingKind::WaterBallast);
    EXPECT_TRUE(hasGap(kept));
    EXPECT_EQ(entryOf(kept), typed);
    typed.kind = CouplingKind::ByItself;
    must(presenter.couplings.save(typed, hangar().airframe, kept.id));
    kept = must(scene.store.records().couplings(hangar().airframe)).front();
    EXPECT_FALSE(hasGap(kept)) << "one that connects by itself has no leaf, whatever was ticked";
}

TEST_F(KindsOfCouplings, TheFormAsksForWhatAKindDoesNotSayItself)
{
    ScriptedPrompts prompts;
    SetUpPage page{scene.store.records(), scene.store.clock(), prompts};
    page.showAirframe(hangar().airframe);
    showAt(page, {1024, 740});
    QTest::keyClick(&page, Qt::Key_2, Qt::AltModifier);
    QApplication::processEvents();
    EXPECT_TRUE(
        page.findChild<QAbstractButton*>("coupling1")->accessibleDescription().contains("no gap to measure"))
        << page.findChild<QAbstractButton*>("coupling1")->accessibleDescription().toStdString();
    part<QAbstractButton>(page, "addCoupling").click();
    QApplication::processEvents();
    auto& kind = part<QComboBox>(page, "couplingKind");
    struct Row
    {
        CouplingKind kind;
        bool pull, securing, gap, layout, leaf;
    };
    for (const Row& row : {Row{CouplingKind::Sleeve, false, false, false, true, true},
                           Row{CouplingKind::SleeveAndPin, false, false, false, true, true},
                           Row{CouplingKind::ByItself, true, true, false, false, false},
                           Row{CouplingKind::WaterBallast, true, true, true, false, true},
                           Row{CouplingKind::Other, true, true, true, false, true}}) {
        SCOPED_TRACE(static_cast<int>(row.kind));
        kind.setCurrentIndex(static_cast<int>(row.kind));
        QApplication::processEvents();
        EXPECT_EQ(page.findChild<QCheckBox*>("partPull")->isVisible(), row.pull);
        EXPECT_EQ(page.findChild<QCheckBox*>("partSecuring")->isVisible(), row.securing);
        EXPECT_EQ(page.findChild<QCheckBox*>("partGap")->isVisible(), row.gap);
        EXPECT_EQ(page.findChild<QComboBox*>("layout")->isVisible(), row.layout);
        EXPECT_EQ(page.findChild<QWidget*>("leafPlace")->isVisible(), row.leaf);
        expectNothingClipped(page, 10);
    }
}

TEST_F(KindsOfCouplings, JointPlayIsToldOnEveryPageWithItsNameAndWhoseLimitCounts)
{
    feelPlay(hangar().leftAileron, dayOf(2026, 10, 24), rigged);
    feelPlay(hangar().rightAileron, dayOf(2026, 9, 1));
    const QString left =
        "Joint play on 24 October 2026: along the rod play, 0.15 mm; sideways no play. Tried by T. Vale. "
        "Dial gauge.";

    TrendsPage page{scene.store.records(), scene.store.clock()};
    page.showAirframe(hangar().airframe);
    showAt(page, {1280, 744});
    EXPECT_EQ(
        textOf(page, "jointPlay"),
        (left + " If there is a limit, it is in the manual. Refer any play to the engineer.").toStdString());
    EXPECT_EQ(QString::fromStdString(textOf(page, "nowTitle")).contains("play"), false)
        << "apart from the gap";

    const AnnualView annual =
        must(AnnualPresenter{scene.store.records(), scene.store.clock()}.view(hangar().airframe, {}));
    EXPECT_TRUE(std::ranges::any_of(annual.changes, [&](const AnnualStory& story) {
        return story.text == "Left aileron: " + left +
                                 " If there is a limit, it is in the manual. Refer any play to the engineer.";
    }));

    const QString report = sectionOf(reviewBlocks(facts(), review()), "Left aileron");
    EXPECT_TRUE(
        report.contains(left + " If there is a limit, it is in the manual. Refer any play to the engineer."))
        << report.toStdString();
    const auto summary =
        must(SummaryPresenter{scene.store.records(), scene.store.clock()}.view(hangar().airframe, rigged));
    EXPECT_TRUE(sectionOf(recordBlocks(summary.summary), "Left aileron").contains(left));

    const std::string line = "Left aileron,2026-10-24,felt,0.15,none,,T. Vale,Dial gauge.";
    EXPECT_NE(must(writeJointPlays(scene.store.records())).find("QX-17," + line), std::string::npos)
        << must(writeJointPlays(scene.store.records()));
    EXPECT_NE(reviewJointPlayTable(facts(), review()).find("2026-09-01,Right aileron,felt,0.15,none,"),
              std::string::npos)
        << reviewJointPlayTable(facts(), review());
    // It changes no verdict, no standing and no sign.
    EXPECT_EQ(review().find(hangar().leftAileron)->standing.says, Says::Inside);
}

TEST_F(KindsOfCouplings, JointPlayIsStatedInSetUpByANamedPersonAndRefusedWhenHalfSaid)
{
    SetUpPresenter presenter{scene.store.records(), scene.store.clock()};
    PlayEntry entry;
    entry.day = "2026-10-01";
    Saved saved = must(presenter.events.save(entry));
    std::vector<Field> refused;
    for (const FieldProblem& problem : saved.problems)
        refused.push_back(problem.field);
    EXPECT_EQ(refused, (std::vector{Field::PlayCoupling, Field::PlayPerson, Field::PlayAlong}));

    entry.coupling = hangar().rightAileron;
    entry.person = hangar().vale;
    entry.along = PlayFelt::None;
    entry.alongMm = "0,2";
    entry.across = PlayFelt::Felt;
    entry.acrossMm = "a bit";
    saved = must(presenter.events.save(entry));
    ASSERT_EQ(saved.problems.size(), 2U);
    EXPECT_EQ(saved.problems.front().sentence, JointPlayWords::refusal(PlayProblem::MeasuredNotFelt));
    EXPECT_TRUE(facts().jointPlays.empty());

    entry.along = PlayFelt::Felt;
    entry.acrossMm = "";
    ASSERT_TRUE(must(presenter.events.save(entry)).isSaved());
    const std::vector<JointPlay> kept = facts().jointPlays;
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_EQ(kept.front().along, (PlayFound{PlayFelt::Felt, Gap::micrometres(200)}));
    EXPECT_EQ(kept.front().across, (PlayFound{PlayFelt::Felt, {}}));
    EXPECT_EQ(kept.front().person, hangar().vale);
    EXPECT_FALSE(kept.front().record);
    EXPECT_EQ(must(presenter.view(hangar().airframe)).plays.size(), 1U);
}

namespace {

void expectOneFieldForEachLetter(const QWidget& page)
{
    std::map<QString, std::vector<std::string>> fields;
    for (const QLabel* label : page.findChildren<QLabel*>())
        if (const auto at = label->text().indexOf('&'); label->buddy() && label->isVisible() && at >= 0)
            fields[label->text().mid(at + 1, 1).toLower()].push_back(label->text().toStdString());
    EXPECT_GT(fields.size(), 5U);
    for (const auto& [letter, named] : fields)
        EXPECT_EQ(named.size(), 1U) << letter.toStdString() << ": " << named.front() << ", " << named.back();
}

} // namespace

TEST_F(KindsOfCouplings, SetUpHasAFormForJointPlayAndListsItAmongTheEventsWithItsDay)
{
    scene.event(dayOf(2026, 9, 1), EventKind::Greased, "ball");
    feelPlay(hangar().leftAileron, dayOf(2026, 9, 2));
    ScriptedPrompts prompts;
    SetUpPage page{scene.store.records(), scene.store.clock(), prompts};
    page.showAirframe(hangar().airframe);
    showAt(page, {1024, 740});
    QTest::keyClick(&page, Qt::Key_6, Qt::AltModifier);
    QApplication::processEvents();
    EXPECT_TRUE(page.findChild<QAbstractButton*>("event0")->accessibleName().contains("Joint play"))
        << page.findChild<QAbstractButton*>("event0")->accessibleName().toStdString();
    part<QAbstractButton>(page, "addPlay").click();
    QApplication::processEvents();
    EXPECT_TRUE(part(page, "playAlongMm").isVisible());
    expectOneFieldForEachLetter(page);
    expectNothingClipped(page, 10);
    part<QAbstractButton>(page, "save").click();
    QApplication::processEvents();
    EXPECT_EQ(facts().jointPlays.size(), 1U) << "nothing was said and nobody was named";
}
