// The engineer's report of airframes told in memory: what it says, and that it stands well on its pages.

#include "app/report/pdf_file.h"
#include "app/report/review_files.h"
#include "app/wording/chain_words.h"
#include "app/wording/report_words.h"
#include "tests/report/pages.h"
#include "tests/support/airframe_in_memory.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/temp_store.h"

#include <QFile>

#include <algorithm>
#include <filesystem>
#include <map>

using namespace rig;
using namespace rig::test;

namespace {

constexpr Day kBegins = dayOf(2024, 3, 1);

// Couplings read at every rigging; the first one opens slowly after a while, and is once read far off.
class ToldYears
{
public:
    ToldYears(int couplings, int riggings)
    {
        told.facts.airframe.type = "Orvane 15";
        told.facts.airframe.annualDue = kBegins + std::chrono::days{3 * riggings + 60};
        for (int i = 0; i < couplings; ++i)
            told.addCoupling("Coupling " + std::to_string(i), 0.50, kBegins, i == 1 ? 3 : 12);
        static constexpr double kOff[] = {0.01, -0.02, 0.02, 0, -0.01, 0, 0.01};
        for (int i = 0; i < riggings; ++i) {
            day += std::chrono::days{3};
            told.rig(day);
            for (int j = 0; j < couplings; ++j) {
                const double wear = j == 0 && 2 * i > riggings ? 0.001 * (i - riggings / 2) : 0;
                const double off = kOff[static_cast<std::size_t>(i + 3 * j) % 7];
                told.read(told.facts.couplings[static_cast<std::size_t>(j)].id,
                          0.50 + off + std::min(wear, 0.05));
            }
        }
    }

    Reading& readOff(std::size_t coupling, double gap)
    {
        return told.read(told.facts.couplings[coupling].id, gap);
    }

    QuestionId ask(const Reading& about)
    {
        Question question;
        question.id = told.next<QuestionId>();
        question.coupling = about.coupling;
        question.reading = about.id;
        question.record = about.record;
        question.stamp = {about.person, about.when};
        told.facts.questions.push_back({question, {}});
        return question.id;
    }

    void close(const std::string& found)
    {
        Resolution resolution;
        resolution.question = told.facts.questions.back().question.id;
        resolution.person = told.facts.persons[1].id;
        resolution.found = found;
        resolution.done = "cleaned";
        resolution.stamp = {resolution.person, noonOf(day)};
        told.facts.questions.back().resolution = resolution;
    }

    AirframeReview review() const
    {
        return airframeReviewOf(told.facts, reviewPeriods(told.facts, day).front());
    }
    Printing printing(Paper paper = Paper::A4) const { return {paper, day, QStringLiteral("Rigband 0.1.0")}; }
    PageFlow pages(Paper paper = Paper::A4) const
    {
        return layoutReview(told.facts, review(), printing(paper));
    }

    AirframeInMemory told;
    Day day = kBegins;
};

void expectWhole(const PageFlow& flow)
{
    expectWellPlaced(flow);
    for (std::size_t i = 0; i < flow.pages.size(); ++i) {
        const QString words = textsOf(flow.pages[i]).join(QLatin1Char(' '));
        EXPECT_TRUE(words.contains(ReportWords::caution())) << "page " << i + 1;
        EXPECT_TRUE(words.contains(
            ReportWords::pageOf(static_cast<int>(i) + 1, static_cast<int>(flow.pages.size()))));
        EXPECT_TRUE(words.contains("QX-99")) << "page " << i + 1;
        EXPECT_TRUE(words.contains("Rigband 0.1.0")) << "page " << i + 1;
    }
}

QStringList struckIn(const PageFlow& flow)
{
    QStringList struck;
    for (const PrintedPage& page : flow.pages)
        for (const PageText& text : page.texts)
            if (text.struck)
                struck << text.text;
    return struck;
}

} // namespace

TEST(ReviewReport, StandsWellOnItsPagesForThreeCouplingsOrThirtyAndTenReadingsOnBothPapers)
{
    for (const Paper paper : {Paper::A4, Paper::Letter})
        for (const int couplings : {3, 30}) {
            SCOPED_TRACE(couplings);
            expectWhole(ToldYears{couplings, 10}.pages(paper));
        }
}

TEST(ReviewReport, StandsWellOnItsPagesForTenThousandReadings)
{
    const ToldYears years{3, 3334};
    const PageFlow flow = years.pages();
    expectWhole(flow);
    EXPECT_GT(flow.pages.size(), 3U);
    EXPECT_LT(flow.pages.size(), 10U) << "ordinary readings are in the picture and the tables";
    EXPECT_LT(pdfOf(flow, {}, {}).size(), 4'000'000);
}

TEST(ReviewReport, HasASectionForEveryCouplingWhateverItShows)
{
    const ToldYears years{5, 12};
    const QStringList texts = textsOf(years.pages());
    for (int i = 0; i < 5; ++i)
        EXPECT_GE(timesIn(texts, QStringLiteral("Coupling %1").arg(i)), 2) << i << ": in the list and alone";
    EXPECT_TRUE(wordsOf(years.pages()).contains("No reading was noted as part-seated here"));
}

TEST(ReviewReport, BeginsWithWhatStandsOut)
{
    const ToldYears years{4, 80};
    const QString words = wordsOf(years.pages());
    EXPECT_TRUE(words.contains("the gap has been growing since about rigging")) << words.toStdString();
    EXPECT_LT(words.indexOf("What stands out first"), words.indexOf("the gap has been growing"));
    EXPECT_LT(words.indexOf("the gap has been growing"), words.indexOf("Where it stands"));
    EXPECT_LT(words.indexOf("Where it stands"), words.indexOf("Each coupling"));
    EXPECT_TRUE(words.contains("Without a band neither drift nor scatter")) << "of the second coupling";
}

TEST(ReviewReport, TellsWhatItIsOf)
{
    const ToldYears years{3, 12};
    const QString words = wordsOf(years.pages());
    for (const char* part :
         {"QX-99 · Orvane 15", "not entered", "M. Oren (36)", "version 3;", "Findings",
          "Name, licence or authority, signature", "Place and date", "never a limit",
          "no check of it is noted", "first fitting", "12 in the period", "12 riggings since."})
        EXPECT_TRUE(words.contains(QString::fromUtf8(part), Qt::CaseInsensitive)) << part;
}

TEST(ReviewReport, ListsEveryOutsideReadingAlsoThoseExplainedAndStrikesWhatWasSuperseded)
{
    ToldYears years{3, 12};
    years.told.rig(years.day);
    const Reading wrong = years.readOff(0, 0.90);
    years.ask(wrong);
    years.close("the wrong leaf");
    Reading& right = years.readOff(0, 0.50);
    right.corrects = wrong.id;
    right.note = "wrong leaf pressed";
    years.ask(years.readOff(2, 0.10));
    const PageFlow flow = years.pages();
    const QString words = wordsOf(flow);
    EXPECT_TRUE(words.contains("0.90–0.92 mm"));
    EXPECT_TRUE(words.contains("the wrong leaf"));
    EXPECT_TRUE(words.contains("0.10–0.12 mm"));
    EXPECT_TRUE(words.contains("Still open"));
    EXPECT_TRUE(words.contains("one question open"));
    EXPECT_TRUE(struckIn(flow).contains("0.90–0.92 mm"));
    EXPECT_FALSE(struckIn(flow).contains("0.10–0.12 mm"));
}

TEST(ReviewReport, ShowsBothVersionsOfABandThatReadingsInDoubtWerePartOf)
{
    ToldYears years{2, 12};
    for (std::size_t i = 0; i < 6; ++i)
        years.told.facts.readings[i].reading.gauge = years.told.facts.gauges[1].id;
    GaugeCheck check;
    check.gauge = years.told.facts.gauges[1].id;
    check.day = kBegins + std::chrono::days{20};
    check.found = "tips worn";
    check.quarantineFrom = kBegins;
    years.told.facts.gaugeChecks.push_back(check);
    const QString words = wordsOf(years.pages());
    EXPECT_TRUE(words.contains("Bands that readings in doubt were part of"));
    EXPECT_TRUE(words.contains("With the readings in doubt left in it would be"));
    EXPECT_TRUE(words.contains("tips worn"));
}

TEST(ReviewReport, SplitsNoStoryOverTwoPages)
{
    constexpr int kStories = 60;
    ToldYears years{3, 12};
    for (int i = 0; i < kStories; ++i) {
        years.told.rig(years.day);
        years.ask(years.readOff(0, 0.90 + 0.02 * i));
        const std::string number = std::to_string(i);
        std::string found = "begins" + number;
        for (int word = 0; word < 40; ++word)
            found += " somewhat";
        years.close(found + " ends" + number);
    }
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        const PageFlow flow = years.pages(paper);
        expectWhole(flow);
        std::map<int, int> seen;
        for (const PrintedPage& page : flow.pages) {
            const QString words = textsOf(page).join(QLatin1Char(' ')) + QLatin1Char(' ');
            for (int i = 0; i < kStories; ++i) {
                const auto times = words.count(QStringLiteral("begins%1 ").arg(i));
                EXPECT_EQ(times, words.count(QStringLiteral("ends%1.").arg(i))) << "story " << i;
                seen[i] += static_cast<int>(times);
            }
        }
        for (int i = 0; i < kStories; ++i)
            EXPECT_EQ(seen[i], 1) << "story " << i << ": once, with the reading it is about";
    }
}

TEST(ReviewReport, HasRoomForLongNamesAndLongNotes)
{
    ToldYears years{3, 12};
    const std::string longWord(180, 'W');
    AirframeFacts& facts = years.told.facts;
    facts.airframe.type = longWord;
    facts.airframe.manualReferences = longWord + " " + longWord;
    facts.couplings[0].name = longWord;
    facts.couplings[1].name = "Left aileron outboard of the second hatch, the one that is hard to see";
    facts.couplings[1].access = longWord;
    facts.persons[0].name = longWord;
    facts.gauges[0].name = longWord;
    facts.fittings[0].reason = longWord;
    years.told.happen(EventKind::Note, years.day);
    facts.events.back().note = longWord + " " + longWord;
    years.ask(years.readOff(0, 0.9));
    for (const Paper paper : {Paper::A4, Paper::Letter})
        expectWhole(years.pages(paper));
}

TEST(ReviewReport, NamesACouplingThatWasTakenOutOfUse)
{
    ToldYears years{3, 12};
    years.told.facts.couplings[2].inUse = false;
    EXPECT_TRUE(wordsOf(years.pages()).contains("readings.csv: Coupling 2."));
}

TEST(ReviewReport, SaysThatNothingWasRead)
{
    ToldYears years{2, 0};
    const QString words = wordsOf(years.pages());
    EXPECT_TRUE(words.contains("No gap was read at a rigging in this period"));
    EXPECT_TRUE(words.contains("no reading in this period"));
}

TEST(ReviewReport, OfAnAirframeWithoutCouplingsIsStillAReport)
{
    const AirframeInMemory told;
    const PageFlow flow =
        layoutReview(told.facts, airframeReviewOf(told.facts, reviewPeriods(told.facts, kBegins).front()),
                     {Paper::A4, kBegins, QStringLiteral("Rigband 0.1.0")});
    expectWhole(flow);
}

TEST(ReviewReport, IsNamedAfterAirframeAndLastDay)
{
    ToldYears years{1, 1};
    EXPECT_EQ(reviewFileName(years.review().airframe, years.review().period), "QX-99-2024-03-04-review.pdf");
    years.told.facts.airframe.registration = "../Q 9";
    EXPECT_EQ(reviewFileName(years.review().airframe, years.review().period), "---Q-9-2024-03-04-review.pdf");
}

TEST(ReviewReport, ReplacesItsOwnFilesAndSaysWhichCouldNotBeWritten)
{
    const ToldYears years{2, 12};
    const TempFolder folder;
    const QString pdf = QString::fromStdString(folder.file("r.pdf"));
    QString failed;
    for (int i = 0; i < 2; ++i)
        EXPECT_TRUE(writeReviewFiles(pdf, years.told.facts, years.review(), years.printing(), failed));
    EXPECT_EQ(failed, "");
    EXPECT_TRUE(QFile::exists(QString::fromStdString(folder.file("r-csv/readings.csv"))));
    const QString nowhere = QString::fromStdString(folder.file("none/r.pdf"));
    EXPECT_FALSE(writeReviewFiles(nowhere, years.told.facts, years.review(), years.printing(), failed));
    EXPECT_EQ(failed, nowhere);
}

namespace {

// Page numbers counted from 1; 0: nowhere.
std::size_t pageWithPlace(const PageFlow& flow, int place)
{
    for (std::size_t i = 0; i < flow.pages.size(); ++i)
        if (std::ranges::find(flow.pages[i].places, place) != flow.pages[i].places.end())
            return i + 1;
    return 0;
}

// Each one's picture, figures and lines to write on, but for couplings that break below their picture to save
// a page: each of those leaves two pages uneven.
void expectFewCouplingsAreCut(const PageFlow& flow)
{
    int uneven = 0;
    int pictures = 0;
    int forms = 0;
    for (const PrintedPage& page : flow.pages) {
        const QStringList texts = textsOf(page);
        pictures += timesIn(texts, "Locked gap, mm");
        forms += timesIn(texts, "looked at");
        uneven += timesIn(texts, "Locked gap, mm") == timesIn(texts, "looked at") ? 0 : 1;
        EXPECT_EQ(timesIn(texts, "Locked gap, mm"), timesIn(texts, "Number of the rigging"));
        EXPECT_EQ(timesIn(texts, "looked at"), timesIn(texts, "Initials"));
    }
    EXPECT_EQ(pictures, forms);
    EXPECT_LE(uneven, 4) << "two couplings";
}

} // namespace

TEST(ReviewReport, TellsTheTruePagesOfWhatItsFirstPageListsOnBothPapers)
{
    ToldYears years{9, 40};
    years.ask(years.readOff(0, 0.9));
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        const PageFlow flow = years.pages(paper);
        int told = 0;
        for (const PageText& text : flow.pages.front().texts) {
            if (text.pageOf == 0)
                continue;
            ++told;
            EXPECT_EQ(text.text, QString::number(pageWithPlace(flow, text.pageOf))) << text.pageOf;
        }
        EXPECT_GE(told, 9 + 5) << "every coupling, and the parts";
    }
}

TEST(ReviewReport, KeepsCouplingsOnOnePageAndLeavesNoPageBlank)
{
    ToldYears years{9, 40};
    years.ask(years.readOff(0, 0.9));
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        const PageFlow flow = years.pages(paper);
        expectFewCouplingsAreCut(flow);
        for (const PrintedPage& page : flow.pages)
            EXPECT_GT(page.texts.size(), 8U) << "more than what stands above and below";
    }
}

TEST(ReviewReport, GivesACouplingWithNothingToTellAThirdOfAPageAtMost)
{
    const PageFlow flow = ToldYears{9, 12}.pages();
    std::size_t most = 0;
    for (const PrintedPage& page : flow.pages)
        most = std::max(most, static_cast<std::size_t>(timesIn(textsOf(page), "looked at")));
    EXPECT_GE(most, 3U);
}

TEST(ReviewReport, TellsReadingsThatFollowOneAnotherOutsideInOneLine)
{
    ToldYears years{3, 12};
    for (int i = 0; i < 20; ++i) {
        years.told.rig(years.day + std::chrono::days{i});
        years.readOff(0, 0.90 + 0.02 * i);
    }
    years.day += std::chrono::days{19};
    const QString words = wordsOf(years.pages());
    EXPECT_TRUE(words.contains("20 readings, from")) << words.toStdString();
    EXPECT_EQ(words.count("No question was asked"), 1);
}

TEST(ReviewReport, TellsWhatWasNotedWithAReadingAndOfItsGauge)
{
    ToldYears years{3, 12};
    years.told.rig(years.day);
    years.readOff(0, 0.90).note = "leaf put in from the left";
    years.told.facts.gauges[0].note = "the thinnest leaf is bent";
    const QString words = wordsOf(years.pages());
    EXPECT_TRUE(words.contains("leaf put in from the left")) << words.toStdString();
    EXPECT_TRUE(words.contains("the thinnest leaf is bent"));
}

TEST(ReviewReport, NamesInOneLineThePartsThatHaveNothingToTell)
{
    const ToldYears years{3, 12};
    const PageFlow flow = years.pages();
    const QString words = wordsOf(flow);
    const auto at = words.indexOf("These parts are left out");
    ASSERT_GE(at, 0);
    EXPECT_GT(words.indexOf("Open questions"), at) << "no heading for it";
    EXPECT_GT(words.indexOf("Every reading outside its band or found part-seated"), at);
    EXPECT_EQ(words.count("Open questions"), 1);
}

TEST(ReviewReport, CanBePrintedWithoutItsAppendix)
{
    ToldYears years{3, 12};
    years.told.rig(years.day);
    Reading& wrong = years.readOff(2, 0.50);
    const ReadingId id = wrong.id;
    Reading& right = years.readOff(2, 0.52);
    right.corrects = id;
    right.note = "wrong leaf pressed";
    Printing printing = years.printing();
    const QString listed = QStringLiteral("Near the edge, corrected, struck or left out");
    EXPECT_TRUE(wordsOf(layoutReview(years.told.facts, years.review(), printing)).contains(listed));
    printing.withAppendix = false;
    const PageFlow flow = layoutReview(years.told.facts, years.review(), printing);
    expectWhole(flow);
    EXPECT_FALSE(wordsOf(flow).contains(listed));
    EXPECT_TRUE(wordsOf(flow).contains("Printed without its appendix"));
    EXPECT_TRUE(wordsOf(flow).contains("Name, licence or authority, signature"));
}

TEST(ReviewReport, SaysWhatInTheFileDoesNotStandAsItWasSavedAndWhereEarlierPrintsStand)
{
    const ToldYears years{3, 10};
    Printing printing = years.printing();
    FileEvidence file;
    file.end = {1506, std::string(64, '0')};
    file.chain.emplace().end = file.end;
    file.chain->faults = 1;
    file.chain->told.push_back({ChainFault::Changed,
                                "reading",
                                {},
                                1'781'352'000'000,
                                "J. Iver",
                                "QX-99",
                                "Left aileron",
                                {{"enters_um", {{FactValue::Is::WholeNumber, "800"}}}}});
    file.prints = {{"ABCDE-FG234", PrintPlace{1200, 1'781'352'000'000}}, {"ZZZZZ-22222", {}}};
    printing.file = file;
    const PageFlow flow = layoutReview(years.told.facts, years.review(), printing);
    expectWhole(flow);
    const QString first = textsOf(flow.pages.front()).join(QLatin1Char(' '));
    EXPECT_TRUE(first.contains(ChainWords::faults(1))) << first.toStdString();
    QString all;
    for (const PrintedPage& page : flow.pages) {
        const QString words = textsOf(page).join(QLatin1Char(' '));
        EXPECT_TRUE(words.contains("AAAAA-AAAAA")) << "how far the file had come, on every page";
        all += words + QLatin1Char(' ');
    }
    EXPECT_TRUE(all.contains("Left aileron · saved on"));
    EXPECT_TRUE(all.contains("enters: 0.80 mm")) << "what it says now";
    EXPECT_TRUE(all.contains("ABCDE-FG234 is how this file ended after fact 1,200"));
    EXPECT_TRUE(all.contains("facts in it have been changed since")) << "no print is vouched for then";
    EXPECT_TRUE(all.contains("ZZZZZ-22222 is not an end of this file"));
    EXPECT_FALSE(all.contains(ChainWords::noFaults()));
}

namespace {

class StopsWhere : public Progress
{
public:
    explicit StopsWhere(int at) : m_at{at} {}
    int asked() const { return m_asked; }
    bool ranBack() const { return m_ranBack; }

private:
    void told(std::size_t done, std::size_t of) override
    {
        const double now = of > 0 ? static_cast<double>(done) / static_cast<double>(of) : 0;
        m_ranBack = m_ranBack || now < m_last;
        m_last = now;
        if (++m_asked == m_at)
            stop();
    }

    int m_at;
    int m_asked = 0;
    double m_last = 0;
    bool m_ranBack = false;
};

} // namespace

TEST(ReviewReport, ThatIsStoppedWhereverItAsksLeavesNoFile)
{
    const ToldYears years{3, 20};
    const TempFolder folder;
    const QString pdf = QString::fromStdString(folder.file("x.pdf"));
    QString failed;
    const auto write = [&](Progress& progress) {
        return bool{writeReviewFiles(pdf, years.told.facts, years.review(), {}, failed, &progress)};
    };
    int stops = 0;
    for (int at = 1;; at += 1 + at / 4) {
        StopsWhere progress{at};
        const bool isWritten = write(progress);
        EXPECT_FALSE(progress.ranBack());
        if (!progress.isStopped()) {
            EXPECT_TRUE(isWritten);
            break;
        }
        ++stops;
        EXPECT_FALSE(isWritten) << at;
        EXPECT_TRUE(std::filesystem::is_empty(folder.path())) << at;
    }
    EXPECT_GT(stops, 10);
    EXPECT_TRUE(QFile::exists(pdf));
}

TEST(ReviewReport, HasNoPagesWhereLayingOutIsStopped)
{
    const ToldYears years{3, 20};
    StopsWhere never{0};
    EXPECT_FALSE(layoutReview(years.told.facts, years.review(), {}, &never).pages.empty());
    for (int at = 1; at <= never.asked(); at += 1 + at / 3) {
        StopsWhere progress{at};
        EXPECT_TRUE(layoutReview(years.told.facts, years.review(), {}, &progress).pages.empty()) << at;
    }
}

// docs/method.md A4: the whole reading beyond the inner band is told before what reaches over the outer edge.
TEST(ReviewReport, DefinesTheVerdictsInTheOrderInWhichTheyAreTold)
{
    const QString words = wordsOf(ToldYears{4, 12}.pages());
    const auto at = [&words](const char* part) {
        EXPECT_TRUE(words.contains(part)) << part;
        return words.indexOf(part);
    };
    const auto near =
        at("Near the edge: the whole reading lies beyond one edge of the inner band (95 %), also "
           "where it reaches over the outer edge.");
    const auto reaches =
        at("Cannot tell: it reaches beyond the outer band, unless it holds the middle of the "
           "band and is no wider than the median of the confirmed readings.");
    EXPECT_LT(at("Outside: the whole reading lies beyond one edge of the outer band"), near);
    EXPECT_LT(at("Cannot tell: its gauge was in doubt"), near);
    EXPECT_LT(near, reaches);
    EXPECT_LT(reaches, at("Inside: every other reading"));
    at("where it is frozen, two persons have stated it");
    EXPECT_FALSE(words.contains("frozen by two persons"));
}
