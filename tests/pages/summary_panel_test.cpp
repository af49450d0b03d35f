// A closed record read again: on the page, by its panel and by its presenter.

#include "app/pages/rigged_today/summary_panel.h"
#include "app/widgets/choice_box.h"
#include "core/review/record_summary.h"
#include "core/store/airframe_facts.h"
#include "tests/house/forbidden_words.h"
#include "tests/report/told_record.h"
#include "tests/support/clipped.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"

#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>

#include <filesystem>

using namespace rig;
using namespace rig::test;

namespace {

class Summary : public testing::Test
{
protected:
    Summary()
    {
        told.lookAndPull(Turn::First);
        wrong = told.read(900, Verdict::Outside);
        told.lookAndPull(Turn::Second);
        told.close();
        QObject::connect(&panel, &SummaryPanel::problemArose, &panel,
                         [this](const QString& sentence) { problem = sentence; });
        must(panel.showLast(told.hangar.airframe));
    }

    QStringList words()
    {
        QStringList words;
        for (const QLabel* label : panel.findChildren<QLabel*>())
            words << label->text();
        return words;
    }

    void correct(const char* figure, const char* reason, int who)
    {
        part<QComboBox>(panel, "correctReading").setCurrentIndex(1);
        part<QLineEdit>(panel, "correctFigure").setText(QLatin1String(figure));
        part<QLineEdit>(panel, "correctReason").setText(QLatin1String(reason));
        part<QComboBox>(panel, "correctWho").setCurrentIndex(who);
        part<QPushButton>(panel, "correctNow").click();
    }

    std::vector<Reading> readings() { return must(told.store.records().content(told.record)).readings; }

    ToldRecord told;
    ReadingId wrong;
    ScriptedPrompts prompts;
    SummaryPanel panel{told.store.records(), told.store.clock(), prompts};
    QString problem;
};

} // namespace

TEST_F(Summary, ShowsTheSameAsThePaper)
{
    const QString all = words().join(QLatin1Char('\n'));
    for (const char* part :
         {"Rigging record, 3 May 2026", "led by M. Oren", "Outside the band", "0.90–0.95 mm",
          "Right aileron: the look is not finished", "A part-seated joint can go unnoticed in this check.",
          "none of the official logs"})
        EXPECT_TRUE(all.contains(QString::fromUtf8(part))) << part;
    EXPECT_FALSE(all.contains("signature")) << "signing is for paper";
}

TEST_F(Summary, NeverPrefillsWhoCorrects)
{
    EXPECT_FALSE(part<QComboBox>(panel, "correctWho").currentData().toByteArray().size());
    EXPECT_FALSE(part<QComboBox>(panel, "correctReading").currentData().toByteArray().size());
}

TEST_F(Summary, CorrectsAReadingAndKeepsTheOldOneStruckThrough)
{
    told.store.clock().passMinutes(60);
    correct("0.50 0.55", "wrote the leaf above", 2);
    EXPECT_EQ(problem, "");
    const auto now = readings();
    ASSERT_EQ(now.size(), 2U);
    EXPECT_EQ(now.back().corrects, wrong);
    EXPECT_EQ(now.back().interval, between(500, 550));
    EXPECT_EQ(now.back().note, "wrote the leaf above");
    EXPECT_EQ(now.back().stamp.by, told.hangar.vale);
    EXPECT_EQ(now.back().person, told.hangar.oren) << "who measured stays";
    EXPECT_EQ(now.back().when, now.front().when);
    QStringList struck;
    for (const QLabel* label : panel.findChildren<QLabel*>())
        if (label->font().strikeOut())
            struck << label->text();
    EXPECT_EQ(struck, QStringList{QString::fromUtf8("0.90–0.95 mm")});
    EXPECT_TRUE(words().join(QLatin1Char('\n')).contains("wrote the leaf above"));
}

TEST_F(Summary, TakesTheLeafThatEntered)
{
    correct("0,5", "wrote the leaf above", 1);
    ASSERT_EQ(readings().size(), 2U);
    EXPECT_EQ(readings().back().interval, between(500, 550));
}

TEST_F(Summary, SaysWhatLacksAndGuessesNothing)
{
    const std::tuple<const char*, const char*, int, const char*> table[] = {
        {"0.5x", "slip", 1, "0.5x"},       {"0.55 0.50", "slip", 1, "has to be thinner"},
        {"0.51", "slip", 1, "0.51"},       {"0.5 0.55 0.6", "slip", 1, "two figures"},
        {"0.50 0.55", "  ", 1, "Say why"}, {"0.50 0.55", "slip", 0, "Choose who"},
    };
    for (const auto& [figure, reason, who, said] : table) {
        correct(figure, reason, who);
        const std::string answer = rig::test::textOf(panel, "correctProblem");
        EXPECT_NE(answer.find(said), std::string::npos) << answer;
    }
    EXPECT_EQ(readings().size(), 1U);
}

TEST_F(Summary, AsksAQuestionWhenTheCorrectedReadingLiesOutside)
{
    for (int i = 0; i < 12; ++i) {
        Reading reading = told.hangar.reading(between(i % 3 ? 500 : 450, i % 3 ? 550 : 500), told.now());
        reading.purpose = Purpose::Baseline;
        must(told.store.records().add(reading, std::nullopt));
    }
    correct("0.95 1.00", "wrote the leaf below", 1);
    const auto questions = must(told.store.records().questions(told.hangar.airframe));
    ASSERT_EQ(questions.size(), 1U);
    EXPECT_EQ(questions.front().question.kind, QuestionKind::OutsideReading);
    EXPECT_EQ(questions.front().question.reading, readings().back().id);
    EXPECT_NE(rig::test::textOf(panel, "summarySaid").find("Outside"), std::string::npos);
    const AirframeFacts facts = must(factsOf(told.store.records(), told.hangar.airframe));
    const std::optional<RecordId> record = lastClosedRecord(facts);
    ASSERT_TRUE(record);
    const RecordSummary summary = summaryOf(facts, must(told.store.records().content(*record)));
    const auto here = std::ranges::find_if(
        summary.couplings, [this](const auto& one) { return one.coupling.id == told.hangar.leftAileron; });
    ASSERT_NE(here, summary.couplings.end());
    EXPECT_EQ(here->standing.says, Says::Outside) << "the paper says no longer what the wrong reading said";
}

TEST_F(Summary, WritesThePdfUnderTheNameOfAirframeAndDay)
{
    const std::string path = (told.store.folder() / "out.pdf").string();
    prompts.saveFiles = {path};
    QKeyEvent press{QEvent::KeyPress, Qt::Key_P, Qt::NoModifier, QStringLiteral("p")};
    EXPECT_TRUE(panel.takeKey(&press));
    ASSERT_EQ(prompts.suggested.size(), 1U);
    EXPECT_EQ(prompts.suggested.front(), "QX-17-2026-05-03-rigging.pdf");
    EXPECT_GT(std::filesystem::file_size(path), 5000U);
    EXPECT_NE(rig::test::textOf(panel, "summarySaid").find("out.pdf"), std::string::npos);
    EXPECT_EQ(part<QComboBox>(panel, "paper").currentText(), "A4") << "as usual in the United Kingdom";
}

TEST_F(Summary, SaysThatThePdfCannotBeWritten)
{
    prompts.saveFiles = {(told.store.folder() / "no/such/out.pdf").string()};
    part<QPushButton>(panel, "printRecord").click();
    EXPECT_TRUE(problem.contains("cannot be written")) << problem.toStdString();
    prompts.saveFiles = {};
    problem.clear();
    part<QPushButton>(panel, "printRecord").click();
    EXPECT_EQ(problem, "") << "turning away is no problem";
}

TEST_F(Summary, ClipsNothingAtUsualAndLargerText)
{
    for (const double scale : {1.0, 1.5}) {
        const Look look = lookAt(scale);
        panel.setLook(look);
        showAt(panel, {980, 740}, look);
        expectNothingClipped(panel, 60);
    }
}

TEST_F(Summary, NeverSaysWhatTheProgramDoesNotDecide)
{
    EXPECT_GE(words().size(), 20);
    for (const QString& word : words())
        EXPECT_EQ(forbiddenIn(word).join(", "), "") << word.toStdString();
}
