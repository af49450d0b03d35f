#include "app/report/pdf_file.h"
#include "app/report/sheet_report.h"
#include "app/wording/paper_words.h"
#include "app/wording/report_words.h"
#include "tests/house/forbidden_words.h"
#include "tests/report/pages.h"
#include "tests/report/told_record.h"

using namespace rig;
using namespace rig::test;

namespace {

constexpr Day kPrintDay = dayOf(2026, 6, 15);

Coupling ofKind(CouplingKind kind, const std::string& name)
{
    Coupling coupling;
    coupling.name = name;
    coupling.kind = kind;
    return coupling;
}

// The small hangar, its left aileron with a band around 0.5 mm; whom to call is set up.
PaperSheet sheetOfTheHangar()
{
    ToldRecord told;
    told.addSurface("Left aileron surface", SurfaceKind::Aileron);
    told.addSurface("Left airbrake", SurfaceKind::Airbrake);
    told.read(500, Verdict::Inside);
    AirframeFacts facts = must(factsOf(told.store.records(), told.hangar.airframe));
    facts.airframe.callName = "R. Lindqvar";
    facts.airframe.callPhone = "0555 0101";
    const KnownAirframe known{std::move(facts)};
    return paperSheetOf(known, gaugeUsedLast(known.facts()), kPrintDay);
}

PaperSheet withCouplings(std::size_t count)
{
    PaperSheet sheet = sheetOfTheHangar();
    const SheetCoupling one = sheet.couplings.front();
    sheet.couplings.assign(count, one);
    for (std::size_t i = 0; i < count; ++i)
        sheet.couplings[i].coupling.name = "Coupling with a name of some length " + std::to_string(i);
    return sheet;
}

PageFlow sheetPages(const PaperSheet& sheet, Paper paper = Paper::A4)
{
    return layoutSheet(sheet, {paper, kPrintDay, QStringLiteral("Rigband 0.1.0")});
}

QStringList textsAbout(const Coupling& coupling, std::vector<GaugeStep> leaves = {})
{
    PaperSheet sheet;
    sheet.couplings.push_back({coupling, std::move(leaves)});
    return textsOf(sheetPages(sheet));
}

std::size_t boxesOn(const PageFlow& flow)
{
    std::size_t boxes = 0;
    for (const PrintedPage& page : flow.pages)
        boxes += page.boxes.size();
    return boxes;
}

} // namespace

TEST(SheetOnPaper, HasRoomForAllThatARecordHolds)
{
    const QString words = wordsOf(sheetPages(sheetOfTheHangar()));
    for (const char* part : {"QX-17",
                             "Day",
                             "Begun at",
                             "Taken apart",
                             "Stood rigged",
                             "First person, who leads",
                             "Second person",
                             "Who connected the joints",
                             "Left",
                             "Right",
                             "Tail",
                             "Leaf set or gauge",
                             "1 Left aileron",
                             "2 Right aileron",
                             "Ball in the socket",
                             "Felt, not seen",
                             "Cannot see",
                             "Pull: nothing moves",
                             "Secured",
                             "Thickest leaf that enters",
                             "No leaf enters",
                             "Thickest leaf still loose",
                             "Control check",
                             "At the surface",
                             "In the cockpit",
                             "Control moved",
                             "Surface does",
                             "Locks with even force",
                             "counted back out",
                             "Hatches closed",
                             "first rigging of a year or when nothing was rigged or rechecked for 12 weeks",
                             "Rigging leader",
                             "Notes"})
        EXPECT_TRUE(words.contains(QString::fromUtf8(part))) << part << " in " << words.toStdString();
}

TEST(SheetOnPaper, SaysOnEveryPageThatAStopIsAStopAndWhomToCall)
{
    const PageFlow flow = sheetPages(withCouplings(12));
    ASSERT_GT(flow.pages.size(), 2U);
    for (const PrintedPage& page : flow.pages) {
        const QString words = textsOf(page).join(QLatin1Char(' '));
        EXPECT_TRUE(words.contains(QString::fromUtf8(
            "is a stop: stop, leave everything as it is, and call R. Lindqvar, 0555 0101.")))
            << words.toStdString();
        EXPECT_TRUE(words.contains("Manuals and directives prevail."));
    }
    EXPECT_TRUE(wordsOf(flow).contains("Outside is a stop as well"));
    EXPECT_TRUE(wordsOf(flow).contains("replaces no manual"));
}

TEST(SheetOnPaper, PrintsNeitherBandNorVerdictNorAnEarlierReading)
{
    const PaperSheet sheet = sheetOfTheHangar();
    ASSERT_EQ(sheet.couplings.front().leaves.size(), kSheetLeaves);
    EXPECT_TRUE(sheet.couplings.back().leaves.empty()) << "nothing is known of where it reads";
    const QStringList texts = textsOf(sheetPages(sheet));
    for (const QString& text : texts) {
        EXPECT_FALSE(text.contains(QString::fromUtf8("–"))) << text.toStdString() << " is an interval";
        EXPECT_FALSE(text.contains(" mm")) << text.toStdString();
        EXPECT_FALSE(text.contains("nside the band")) << text.toStdString();
    }
    for (const GaugeStep& leaf : sheet.couplings.front().leaves)
        EXPECT_EQ(timesIn(texts, QString::number(leaf.size.inMillimetres(), 'f', 2)), 2)
            << "a box of each person, and no leaf is told apart from the others";
}

TEST(SheetOnPaper, DoesNotPrintWhatASurfaceIsExpectedToDo)
{
    const QString words = wordsOf(sheetPages(sheetOfTheHangar()));
    EXPECT_FALSE(words.contains("aileron up")) << words.toStdString();
}

TEST(SheetOnPaper, AsksOfEachKindItsOwnQuestions)
{
    const QStringList byItself = textsAbout(ofKind(CouplingKind::ByItself, "Tailplane"));
    EXPECT_EQ(timesIn(byItself, "Engaged all the way"), 2) << "of both persons";
    EXPECT_EQ(timesIn(byItself, "Parts meet all round, flush"), 2);
    EXPECT_EQ(timesIn(byItself, "Ball in the socket"), 0);
    EXPECT_EQ(timesIn(byItself, "No leaf enters"), 0) << "one without a gap has no boxes for leaves";
    EXPECT_EQ(timesIn(byItself, "Enters"), 0);
    const QStringList pin = textsAbout(ofKind(CouplingKind::Pin, "Trim"));
    EXPECT_EQ(timesIn(pin, "Safety pin in and through"), 2);
    EXPECT_EQ(timesIn(pin, "Sleeve at its stop"), 0);
    EXPECT_EQ(timesIn(pin, "Secured"), 1) << "nobody asks the second person to secure";
    EXPECT_EQ(timesIn(pin, "No leaf enters"), 2);
    const QStringList both = textsAbout(ofKind(CouplingKind::SleeveAndPin, "Elevator"));
    EXPECT_EQ(timesIn(both, "Safety pin in and through"), 2);
    EXPECT_EQ(timesIn(both, "Sleeve at its stop"), 2);
}

TEST(SheetOnPaper, GivesTheSecondPersonPagesWithoutTheFirstOnes)
{
    const PageFlow flow = sheetPages(sheetOfTheHangar());
    ASSERT_GE(flow.pages.size(), 2U);
    for (const PrintedPage& page : flow.pages) {
        const QString words = textsOf(page).join(QLatin1Char(' '));
        EXPECT_FALSE(words.contains("One joint at a time") && words.contains("Your own look"))
            << "on one page";
    }
}

TEST(SheetOnPaper, OffersPinsAndATaperGaugeInTheirOwnWords)
{
    PaperSheet sheet = withCouplings(1);
    sheet.couplings.front().leaves.clear();
    sheet.gauge->set = GaugeSet::taper(Gap::micrometres(20));
    EXPECT_EQ(timesIn(textsOf(sheetPages(sheet)), "Value read"), 2);
    EXPECT_EQ(timesIn(textsOf(sheetPages(sheet)), "No leaf enters"), 0);
    sheet.gauge->set = GaugeSet{GaugeKind::Pins, {Gap::micrometres(500), Gap::micrometres(600)}};
    EXPECT_EQ(timesIn(textsOf(sheetPages(sheet)), "No pin enters"), 2);
}

TEST(SheetOnPaper, FitsThreeCouplingsOrThirtyOnEveryPaper)
{
    for (const Paper paper : {Paper::A4, Paper::Letter, Paper::A5})
        for (const std::size_t couplings : {3U, 30U}) {
            const PageFlow flow = sheetPages(withCouplings(couplings), paper);
            expectWellPlaced(flow);
            EXPECT_GT(boxesOn(flow), couplings * 40);
            EXPECT_LT(flow.pages.size(), 4 + couplings * (paper == Paper::A5 ? 2 : 1)) << couplings;
            for (const PrintedPage& page : flow.pages)
                for (const PageLine& line : page.lines)
                    EXPECT_LE(line.to.x(), flow.body.right() + 0.5);
        }
}

TEST(SheetOnPaper, FitsNamesOfAnyLength)
{
    PaperSheet sheet = withCouplings(3);
    sheet.gauge->name = std::string(120, 'W');
    sheet.couplings.front().coupling.name = std::string(200, 'M');
    sheet.airframe.callName = std::string(120, 'N');
    for (const Paper paper : {Paper::A4, Paper::A5})
        expectWellPlaced(sheetPages(sheet, paper));
}

TEST(SheetOnPaper, KeepsAJointOnOnePage)
{
    for (const PrintedPage& page : sheetPages(withCouplings(30), Paper::A5).pages) {
        const QStringList texts = textsOf(page);
        EXPECT_EQ(texts.filter("Coupling with a name").size(), timesIn(texts, "Pull: nothing moves"));
    }
}

TEST(SheetOnPaper, IsOfTheSizeOfItsPaper)
{
    EXPECT_TRUE(pdfOf(sheetPages(withCouplings(3), Paper::A5), "sheet", "Rigband").contains("/MediaBox"));
    EXPECT_NEAR(sizeOf(Paper::A5).width() * 25.4 / 96, 148, 0.01);
    EXPECT_NEAR(sizeOf(Paper::A5).height() * 25.4 / 96, 210, 0.01);
}

TEST(SheetOnPaper, GivesTheSameBytesForTheSameFacts)
{
    const PaperSheet sheet = sheetOfTheHangar();
    const auto bytes = [&sheet] {
        QByteArray pdf = pdfOf(sheetPages(sheet), "sheet", "Rigband");
        const auto at = pdf.indexOf("/CreationDate");
        return pdf.remove(at, pdf.indexOf('\n', at) - at);
    };
    EXPECT_EQ(bytes(), bytes());
}

TEST(SheetOnPaper, ShowsTheAirframeFromAboveWithoutAnotherPage)
{
    for (const Paper paper : {Paper::A4, Paper::Letter, Paper::A5})
        for (const std::size_t couplings : {1U, 2U, 5U, 8U, 13U}) {
            const PaperSheet sheet = withCouplings(couplings);
            const PageFrame frame{ReportWords::airframe(QString::fromStdString(sheet.airframe.registration),
                                                        QString::fromStdString(sheet.airframe.type)),
                                  PaperWords::title(),
                                  PaperWords::foot(QString::fromStdString(sheet.airframe.callName),
                                                   QString::fromStdString(sheet.airframe.callPhone)),
                                  ReportWords::printed(kPrintDay, QStringLiteral("Rigband 0.1.0"))};
            EXPECT_EQ(sheetPages(sheet, paper).pages.size(),
                      layoutPages(frame, sheetBlocks(sheet), paper).pages.size())
                << couplings;
        }
    std::size_t plans = 0;
    for (const PrintedPage& page : sheetPages(withCouplings(8)).pages)
        plans += page.pictures.size();
    EXPECT_EQ(plans, 1U);
}

TEST(SheetOnPaper, NeverSaysWhatTheProgramDoesNotDecide)
{
    EXPECT_EQ(forbiddenIn(wordsOf(sheetPages(sheetOfTheHangar()))).join(", ").toStdString(), "");
}

TEST(SheetOnPaper, IsNamedAfterItsAirframe)
{
    PaperSheet sheet;
    sheet.airframe.registration = "../QX 17";
    EXPECT_EQ(sheetFileName(sheet), "---QX-17-sheet.pdf");
}
