#include "app/report/pdf_file.h"
#include "app/report/record_report.h"
#include "app/wording/report_words.h"
#include "tests/house/forbidden_words.h"
#include "tests/report/pages.h"
#include "tests/report/told_record.h"

using namespace rig;
using namespace rig::test;

namespace {

constexpr Day kToday = dayOf(2026, 6, 15);

PageFlow printed(const RecordSummary& summary, Paper paper = Paper::A4)
{
    return layoutRecord(summary, {paper, kToday, QStringLiteral("Rigband 0.1.0")});
}

// Everything a record can hold, on the left aileron; the right one is untouched.
RecordSummary fullRecord()
{
    ToldRecord told;
    told.answer(CheckKind::BallInSocket, Answer::Yes);
    told.interrupt();
    told.lookAndPull(Turn::First);
    const ReadingId wrong = told.read(900, Verdict::Outside);
    told.read(500, Verdict::Inside, wrong);
    const QuestionId closed = told.ask(QuestionKind::OutsideReading, wrong);
    told.lookAndPull(Turn::Second);
    told.close();
    told.resolve(closed);
    told.ask(QuestionKind::ReadingsDisagree, wrong);
    return told.summary();
}

// Many couplings with many readings each, from one told coupling.
RecordSummary manyOf(std::size_t couplings, std::size_t readings)
{
    RecordSummary summary = fullRecord();
    SummaryCoupling one = summary.couplings.front();
    one.readings.assign(readings, one.readings.back());
    summary.couplings.assign(couplings, one);
    for (std::size_t i = 0; i < couplings; ++i)
        summary.couplings[i].coupling.name = "Coupling " + std::to_string(i);
    return summary;
}

} // namespace

TEST(RecordReport, TellsWhoStruckAReadingAndWhy)
{
    ToldRecord told;
    told.strike(told.read(900, Verdict::Outside));
    const QString words = wordsOf(printed(told.summary()));
    EXPECT_TRUE(words.contains("Struck by M. Oren")) << words.toStdString();
    EXPECT_TRUE(words.contains("read on the wrong joint. Nothing takes its place")) << words.toStdString();
}

TEST(RecordReport, TellsEverythingOfTheRecord)
{
    const QString words = wordsOf(printed(fullRecord()));
    for (const char* part : {"Rigging record, 3 May 2026",
                             "led by M. Oren",
                             "closed with open items",
                             "stated by M. Oren and T. Vale",
                             "Note: wind from the north",
                             "Not done, or open at the close",
                             "Right aileron: the look is not finished",
                             "before an interruption",
                             "First person interrupted at",
                             "0.90–0.95 mm",
                             "the wrong leaf was pressed",
                             "Outside the band",
                             "Inside the band",
                             "mm, 12 readings",
                             "Yes: T. Vale",
                             "Found: grit under the sleeve",
                             "Done: cleaned and put together again",
                             "Decided by T. Vale",
                             "readings disagree",
                             "open",
                             "Nothing was answered or read here.",
                             "No surfaces were set up",
                             "not stated",
                             "Rigging leader M. Oren: day, signature",
                             "Second person T. Vale: day, signature",
                             "Findings of the person who assesses this"})
        EXPECT_TRUE(words.contains(QString::fromUtf8(part))) << part;
}

TEST(RecordReport, SaysWhatTheFactsOfTodaySayAndWhatWasShownAtTheTimeOnlyWhereItWasAnother)
{
    ToldRecord told;
    told.read(500, Verdict::Inside);
    told.close();
    EXPECT_FALSE(wordsOf(printed(told.summary())).contains("shown at the time"));
    told.leaveOutTheBaseline();
    const QString words = wordsOf(printed(told.summary()));
    EXPECT_FALSE(words.contains("Inside the band")) << words.toStdString();
    EXPECT_TRUE(words.contains("No band yet"));
    EXPECT_TRUE(words.contains("shown at the time: inside"));
}

TEST(RecordReport, TellsWhatASurfaceDidBothWaysBesideWhatWasExpected)
{
    ToldRecord told;
    const SurfaceId elevator = told.addSurface("Elevator", SurfaceKind::Elevator);
    told.trySurface(elevator, SurfaceKind::Elevator);
    const QString words = wordsOf(printed(told.summary()));
    EXPECT_TRUE(words.contains("Expected: Stick back: trailing edge up.")) << words.toStdString();
    EXPECT_TRUE(words.contains("Stick back. What it did"));
    EXPECT_TRUE(words.contains("Up (expected: Up)"));
    EXPECT_TRUE(words.contains("Stick forward. What it did"));
    EXPECT_TRUE(words.contains("Down (expected: Down)"));
    EXPECT_FALSE(words.contains("Called aloud"));
}

TEST(RecordReport, LeavesAPlainYesOfAnEarlierVersionWhatItWas)
{
    ToldRecord told;
    const SurfaceId elevator = told.addSurface("Elevator", SurfaceKind::Elevator);
    told.tryOnly(elevator, SurfaceCheckKind::Sense);
    const QString words = wordsOf(printed(told.summary()));
    EXPECT_TRUE(words.contains("Called aloud: Stick back: trailing edge up.")) << words.toStdString();
    EXPECT_TRUE(words.contains("Moves as expected"));
    EXPECT_FALSE(words.contains("What it did"));
}

TEST(RecordReport, TellsAControlCheckFromBeforeALaterHandOnAJoint)
{
    ToldRecord told;
    const SurfaceId aileron = told.addSurface("Left aileron flap", SurfaceKind::Aileron);
    told.lookAndPull(Turn::First);
    told.trySurface(aileron, SurfaceKind::Aileron);
    EXPECT_FALSE(wordsOf(printed(told.summary())).contains("before somebody was at"));
    told.answer(CheckKind::Pull, Answer::Yes, Turn::Second);
    const QString words = wordsOf(printed(told.summary()));
    EXPECT_TRUE(words.contains("Yes (before somebody was at Left aileron)")) << words.toStdString();
    EXPECT_TRUE(words.contains("Left aileron flap: to be tried again, somebody was at Left aileron after"))
        << words.toStdString();
}

TEST(RecordReport, TellsWhoConnectedEachSideAndNothingMoreWhereTheSecondNameConnectedNothing)
{
    ToldRecord told;
    told.connect(Side::Left, {told.hangar.oren});
    told.connect(Side::Right, {told.hangar.oren});
    told.close();
    const QString words = wordsOf(printed(told.summary()));
    EXPECT_TRUE(words.contains("The left side was connected by M. Oren.")) << words.toStdString();
    EXPECT_TRUE(words.contains("The right side was connected by M. Oren."));
    EXPECT_FALSE(words.contains("independent"));
}

TEST(RecordReport, SaysThatNobodyIndependentWasThere)
{
    ToldRecord told;
    told.connect(Side::Left, {told.hangar.oren});
    told.connect(Side::Right, {told.hangar.oren, told.hangar.vale});
    told.close();
    const QString words = wordsOf(printed(told.summary()));
    EXPECT_TRUE(words.contains("The right side was connected by M. Oren and T. Vale."));
    EXPECT_TRUE(
        words.contains("No independent second name: T. Vale is named as having connected the right side."))
        << words.toStdString();
}

TEST(RecordReport, SaysThatTheSecondPersonOfAJointConnectedItToo)
{
    ToldRecord told;
    told.connect(Side::Left, {told.hangar.vale});
    told.answer(CheckKind::Pull, Answer::Yes, Turn::Second);
    EXPECT_EQ(told.summary().couplings.front().secondsWhoConnected, std::vector<std::string>{"T. Vale"});
    EXPECT_TRUE(wordsOf(printed(told.summary()))
                    .contains("No independent look at this joint: T. Vale, the second person, is named as"));
}

TEST(RecordReport, SaysOfWhichSideNobodySaidOrKnowsWhoConnected)
{
    ToldRecord told;
    told.connect(Side::Left, {});
    told.close();
    const QString words = wordsOf(printed(told.summary()));
    EXPECT_TRUE(words.contains("It is not known who connected the left side.")) << words.toStdString();
    EXPECT_TRUE(words.contains("Nobody said who connected the right side."));
    EXPECT_TRUE(words.contains("Whether T. Vale, the second name, is independent is not known"));
}

TEST(RecordReport, OfARecordThatWasNeverAskedSaysSoInOneSentence)
{
    ToldRecord told;
    told.close();
    EXPECT_TRUE(wordsOf(printed(told.summary())).contains("Nobody said who connected the joints."));
}

TEST(RecordReport, SaysThatAReadingWasPartSeated)
{
    ToldRecord told;
    told.read(900, Verdict::Outside, {}, SeatState::PartSeated);
    EXPECT_TRUE(wordsOf(printed(told.summary())).contains("found part-seated"));
}

TEST(RecordReport, StrikesThroughOnlyTheSupersededReading)
{
    QStringList struck;
    const PageFlow flow = printed(fullRecord());
    for (const PrintedPage& page : flow.pages)
        for (const PageText& text : page.texts)
            if (text.struck)
                struck << text.text;
    EXPECT_EQ(struck, QStringList{QString::fromUtf8("0.90–0.95 mm")});
}

TEST(RecordReport, CarriesTheCautions)
{
    const PageFlow flow = printed(manyOf(12, 2));
    const QString words = wordsOf(flow);
    EXPECT_TRUE(words.contains("A gap inside the band is one sign only."));
    EXPECT_TRUE(words.contains("A part-seated joint can go unnoticed in this check."));
    EXPECT_TRUE(words.contains("This is none of the official logs"));
    ASSERT_GT(flow.pages.size(), 2U);
    for (const PrintedPage& page : flow.pages)
        EXPECT_TRUE(textsOf(page).join(QLatin1Char(' ')).contains(ReportWords::caution()));
}

TEST(RecordReport, DrawsOneStripPerCouplingThatWasRead)
{
    std::size_t strips = 0;
    const PageFlow flow = printed(manyOf(7, 1));
    for (const PrintedPage& page : flow.pages)
        for (const PagePicture& picture : page.pictures) {
            EXPECT_TRUE(picture.picture.inWords.contains("0.90"));
            ++strips;
        }
    EXPECT_EQ(strips, 7U);
}

TEST(RecordReport, PlacesThreeCouplingsOrThirtyAndOneReadingOrTwoHundred)
{
    for (const Paper paper : {Paper::A4, Paper::Letter})
        for (const std::size_t couplings : {3U, 30U})
            for (const std::size_t readings : {1U, 200U})
                if (couplings * readings < 1000)
                    expectWellPlaced(printed(manyOf(couplings, readings), paper));
}

TEST(RecordReport, NeverSaysWhatTheProgramDoesNotDecide)
{
    const QString words = wordsOf(printed(fullRecord()));
    EXPECT_TRUE(words.contains("0.90")) << "the pages are read";
    EXPECT_EQ(forbiddenIn(words).join(", ").toStdString(), "");
}

TEST(RecordReport, GivesTheSamePagesForTheSameFacts)
{
    const RecordSummary summary = fullRecord();
    const auto bytes = [&summary] {
        QByteArray pdf = pdfOf(printed(summary), "record", "Rigband");
        const auto at = pdf.indexOf("/CreationDate");
        return pdf.remove(at, pdf.indexOf('\n', at) - at);
    };
    EXPECT_EQ(bytes(), bytes());
}

TEST(RecordReport, IsNamedAfterAirframeAndDay)
{
    RecordSummary summary = fullRecord();
    EXPECT_EQ(recordFileName(summary), "QX-17-2026-05-03-rigging.pdf");
    summary.airframe.registration = "../QX 17/a";
    EXPECT_EQ(recordFileName(summary), "---QX-17-a-2026-05-03-rigging.pdf");
}
