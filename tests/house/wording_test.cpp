// Nothing the program says sounds as if it decided: not in its source, not on its pages, not on paper.

#include "app/report/record_report.h"
#include "app/report/review_report.h"
#include "app/window/main_window.h"
#include "app/wording/cause_words.h"
#include "app/wording/question_words.h"
#include "app/wording/report_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/verdict_words.h"
#include "core/demo/demo.h"
#include "core/review/review_period.h"
#include "core/store/airframe_facts.h"
#include "tests/house/forbidden_words.h"
#include "tests/house/wording.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/temp_store.h"

#include <QAction>
#include <QDirIterator>
#include <QFile>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QRegularExpression>
#include <QVBoxLayout>

#include <algorithm>

using namespace rig;
using namespace rig::test;

namespace {

constexpr Day kToday = dayOf(2026, 11, 2);

void expectClean(const QStringList& words, const QString& where)
{
    EXPECT_FALSE(words.isEmpty()) << where.toStdString();
    for (const QString& text : words)
        EXPECT_EQ(forbiddenIn(text).join(QLatin1Char(' ')), QString{})
            << "in “" << text.toStdString() << "” of " << where.toStdString();
}

QStringList wordsOf(const PageFlow& flow)
{
    QStringList words;
    for (const PrintedPage& page : flow.pages) {
        QStringList onPage;
        for (const PageText& text : page.texts)
            onPage << text.text;
        words << onPage.join(QLatin1Char(' '));
        for (const PagePicture& picture : page.pictures)
            words << picture.picture.inWords;
    }
    return words;
}

QString sourceOf(const QString& path)
{
    QFile file{path};
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return QString::fromUtf8(file.readAll());
}

} // namespace

TEST(ForbiddenWords, AreEachFoundWhereverTheyStand)
{
    const QStringList words = forbiddenWords();
    EXPECT_GE(words.size(), 13);
    for (const QString& word : words) {
        EXPECT_EQ(forbiddenIn("It is " + word + ".").size(), 1) << word.toStdString();
        EXPECT_EQ(forbiddenIn(word.toUpper()).size(), 1) << word.toStdString();
    }
}

TEST(ForbiddenWords, AreFoundWholeAndInAnyCase)
{
    const char* bad[] = {"This coupling is safe.",       "Airworthy",
                         "The check was PASSED",         "OK",
                         "All gaps are within  limits.", "approved by the program",
                         "Remaining\nlife: 40 riggings", "a statement of airworthiness"};
    for (const char* text : bad)
        EXPECT_EQ(forbiddenIn(QString::fromUtf8(text)).size(), 1) << text;
    for (const char* text : {"Not unsafe", "The safety officer", "okay", "bypassed", "inside its band"})
        EXPECT_TRUE(forbiddenIn(QString::fromUtf8(text)).isEmpty()) << text;
    EXPECT_TRUE(forbiddenIn(ReportWords::caution()).isEmpty()) << "which says what a page is not";
    EXPECT_FALSE(forbiddenIn(ReportWords::caution() + " It is safe.").isEmpty());
}

TEST(ForbiddenWords, AreFoundInLiteralsOverSeveralLinesButNotInComments)
{
    const QString source = QStringLiteral("#include \"safe.h\"\n"
                                          "// safe\n"
                                          "/* passed */ const char c = '\"';\n"
                                          "say(tr(\"It is sa\"\n"
                                          "       \"fe, \\\"as ever\\\"\"), \"other\", 10'000);\n");
    const QStringList literals = literalsIn(source);
    EXPECT_EQ(literals, (QStringList{"It is safe, \"as ever\"", "other"}));
    EXPECT_EQ(forbiddenIn(literals.first()), QStringList{"safe"});
}

TEST(ForbiddenWords, AreFoundOnWidgets)
{
    QWidget window;
    auto* layout = new QVBoxLayout{&window};
    auto* line = new QLineEdit;
    line->setPlaceholderText("is it safe?");
    auto* button = new QPushButton{"Passed"};
    button->setToolTip("approved");
    button->setAccessibleName("certified");
    layout->addWidget(line);
    layout->addWidget(button);
    layout->addWidget(new QLabel{"healthy"});
    EXPECT_EQ(forbiddenIn(wordsOn(window).join(QLatin1Char(' '))).size(), 5);
}

TEST(Wording, OfTheSourceNeverDecides)
{
    int files = 0;
    for (const char* folder : {"/app", "/core/demo"})
        for (QDirIterator it{QStringLiteral(RIG_SOURCE) + folder,
                             {"*.h", "*.cpp"},
                             QDir::Files,
                             QDirIterator::Subdirectories};
             it.hasNext();) {
            const QString path = it.next();
            if (path.contains("/app/calc/")) // names of fields for scripts, as the reference cases have them
                continue;
            ++files;
            for (const QString& literal : literalsIn(sourceOf(path)))
                EXPECT_TRUE(forbiddenIn(literal).isEmpty())
                    << "“" << literal.toStdString() << "” in " << path.toStdString();
        }
    EXPECT_GT(files, 100);
}

// Stiff grease is what leaves plungers short: nothing may send a person away from the joint in a cold week.
TEST(Wording, NeverTellsTheColdAsAnExcuse)
{
    static const QRegularExpression kExcuse{
        QStringLiteral("\\bcold\\b(?! fingers)|before (a|any|one) coupling|before it is a coupling"),
        QRegularExpression::CaseInsensitiveOption};
    const auto expectNone = [](const QString& text, const QString& path) {
        const auto found = kExcuse.match(text);
        EXPECT_FALSE(found.hasMatch())
            << "“" << text.mid(std::max<qsizetype>(0, found.capturedStart() - 40), 100).toStdString()
            << "” in " << path.toStdString();
    };
    for (const char* folder : {"/app", "/core/demo"})
        for (QDirIterator it{
                 QStringLiteral(RIG_SOURCE) + folder, {"*.cpp"}, QDir::Files, QDirIterator::Subdirectories};
             it.hasNext();) {
            const QString path = it.next();
            for (const QString& literal : literalsIn(sourceOf(path)))
                expectNone(literal, path);
        }
    for (const char* page : {"/README.md", "/docs/terms.md", "/docs/method.md"})
        expectNone(sourceOf(QStringLiteral(RIG_SOURCE) + page).simplified(), page);
}

TEST(Wording, OfASharedShiftSendsToTheSetThePersonAndEachJoint)
{
    numbers::SharedShift shift;
    shift.scores = 8;
    shift.sameSignShare = 1;
    for (const double mean : {2.0, -2.0}) {
        shift.mean = mean;
        const QString said = RiggedWords::sharedShift(shift);
        for (const char* part :
             {"Check the leaf set", "another person", "look at each joint", "Stiff grease"})
            EXPECT_TRUE(said.contains(part)) << said.toStdString();
    }
}

// One order everywhere: stop, leave it as it is, call; only when the cause is found is a joint taken apart.
TEST(Wording, SendsNobodyToTheJointBeforeTheCauseIsFound)
{
    CouplingReview jumped;
    jumped.signs = {Sign::Outside};
    jumped.outside.resize(1);
    const std::vector<CauseText> causes = CauseWords::of(jumped, {});
    ASSERT_EQ(causes.size(), 1U);
    const QString card = VerdictWords::caution(Verdict::Outside, "A. Quill", {});
    for (const QString& said : {causes.front().lookAt, card}) {
        EXPECT_TRUE(said.contains("leave it as it is, call")) << said.toStdString();
        const auto found =
            said.indexOf("Only when the cause is found: disconnect, clean, connect, look, pull, read");
        EXPECT_GT(found, said.indexOf("leave it as it is, call")) << said.toStdString();
    }
    EXPECT_TRUE(card.contains(QuestionWords::onlyWhenFound()));
}

// docs/terms.md: a gauge and its readings are in doubt, a reading is corrected, struck or left out. The word
// that a file has for it never changes, and is nothing that anybody reads.
TEST(Wording, HasOneWordForOneThing)
{
    static const QRegularExpression kOther{
        QStringLiteral("\\b(quarantined?|superseded|struck through|set aside|put aside)\\b"),
        QRegularExpression::CaseInsensitiveOption};
    for (QDirIterator it{QStringLiteral(RIG_SOURCE) + "/app/wording", {"*.cpp"}, QDir::Files};
         it.hasNext();) {
        const QString path = it.next();
        for (const QString& literal : literalsIn(sourceOf(path)))
            EXPECT_FALSE(literal != QLatin1String{"gauge-quarantined"} && kOther.match(literal).hasMatch())
                << "“" << literal.toStdString() << "” in " << path.toStdString();
    }
}

TEST(Wording, OfEveryPageNeverDecides)
{
    FixedClock clock;
    clock.set(kToday);
    ScriptedPrompts prompts;
    MainWindow window{clock, prompts};
    expectClean(wordsOn(window), "the welcome");
    window.resize(1280, 800);
    window.show();
    window.openDemo();
    const auto airframes = [&window] {
        return part<QPushButton>(window, "registration").findChild<QMenu*>()->actions();
    };
    ASSERT_EQ(airframes().size(), 3);
    for (qsizetype i = 0; i < airframes().size(); ++i) {
        airframes().at(i)->trigger();
        for (const Moments moment : {Moments::RiggedToday, Moments::Trends, Moments::BeforeTheAnnual,
                                     Moments::KnowThisAirframe, Moments::SetUp}) {
            window.showMoment(moment);
            expectClean(wordsOn(window), QStringLiteral("moment %1").arg(static_cast<int>(moment) + 1));
        }
        window.showQuestions();
        expectClean(wordsOn(window), "the questions");
    }
}

TEST(Wording, OnPaperNeverDecides)
{
    constexpr std::size_t kRecordsRead = 4;
    TempStore store;
    store.clock().set(kToday);
    must(buildDemo(store.file(), demo::Language::English));
    const Printing printing{Paper::A4, kToday, ReportWords::program("0.1.0")};
    const auto airframes = must(store.records().airframes());
    ASSERT_EQ(airframes.size(), 3U);
    for (const Airframe& airframe : airframes) {
        const AirframeFacts facts = must(factsOf(store.records(), airframe.id));
        const QString name = QString::fromStdString(airframe.registration);
        const auto periods = reviewPeriods(facts, kToday);
        EXPECT_FALSE(periods.empty());
        EXPECT_GE(facts.riggingRecords.size(), kRecordsRead);
        for (const ReviewPeriod& period : periods)
            expectClean(wordsOf(layoutReview(facts, airframeReviewOf(facts, period), printing)), name);
        for (std::size_t i = 0; i < std::min(kRecordsRead, facts.riggingRecords.size()); ++i) {
            const RecordId record = facts.riggingRecords[facts.riggingRecords.size() - 1 - i].id;
            const RecordSummary summary = summaryOf(facts, must(store.records().content(record)));
            expectClean(wordsOf(layoutRecord(summary, printing)), name);
        }
    }
}
