#include "app/report/airframe_card.h"
#include "app/report/folded_pages.h"
#include "app/report/pdf_file.h"
#include "tests/house/forbidden_words.h"
#include "tests/report/pages.h"
#include "tests/support/hangar.h"

#include <QRegularExpression>

using namespace rig;
using namespace rig::test;

namespace {

constexpr Day kCardDay = dayOf(2026, 6, 15);

Coupling onCard(const std::string& name, Side side, Layout layout = Layout::C,
                CouplingKind kind = CouplingKind::Sleeve)
{
    Coupling coupling;
    coupling.name = name;
    coupling.side = side;
    coupling.circuit = side == Side::None ? Circuit::Elevator : Circuit::Aileron;
    coupling.layout = layout;
    coupling.kind = kind;
    return coupling;
}

CardSource smallGlider()
{
    CardSource source;
    source.airframe.registration = "QX-17";
    source.airframe.type = "Orvane 15";
    source.airframe.callName = "R. Lindqvar";
    source.airframe.callPhone = "0555 0101";
    source.couplings = {onCard("Left aileron", Side::Left), onCard("Right aileron", Side::Right),
                        onCard("Tailplane", Side::None, Layout::Unknown, CouplingKind::ByItself)};
    source.couplings[0].access = "From above, by the hatch";
    source.couplings[1].seenFrom = AccessSide::Above;
    source.couplings[1].mirrorFrom = AccessSide::Below;
    return source;
}

CardSource gliderWith(std::size_t couplings)
{
    CardSource source = smallGlider();
    const Coupling one = onCard("Coupling with a name of some length", Side::Right);
    source.couplings.assign(couplings, one);
    return source;
}

PageFlow card(const CardSource& source)
{
    return cardOf(source, {Paper::A4, kCardDay, QStringLiteral("Rigband 0.1.0")});
}

int picturesOn(const PageFlow& flow)
{
    std::size_t count = 0;
    for (const PrintedPage& page : flow.pages)
        count += page.pictures.size();
    return static_cast<int>(count);
}

// What stands on one half of one side, in reading order of the shapes.
QString half(const PageFlow& flow, std::size_t side, bool isRight)
{
    const double fold = sizeOf(flow).width() / 2;
    QStringList words;
    for (const PageText& text : flow.pages[side].texts)
        if ((text.where.left() > fold) == isRight)
            words << text.text;
    return words.join(QLatin1Char(' '));
}

// Nothing lies over anything else, beyond an edge, or in the fold.
void expectFolded(const PageFlow& flow)
{
    constexpr double kEdge = 22; // 6 mm
    const QSizeF size = sizeOf(flow);
    const QRectF left{kEdge, kEdge, size.width() / 2 - 2 * kEdge, size.height() - 2 * kEdge};
    const QRectF right = left.translated(size.width() / 2, 0);
    for (const PrintedPage& page : flow.pages) {
        std::vector<QRectF> places;
        for (const PageText& text : page.texts)
            places.push_back(text.where);
        for (const PagePicture& picture : page.pictures)
            places.push_back(picture.where);
        for (std::size_t i = 0; i < places.size(); ++i) {
            EXPECT_TRUE(left.contains(places[i]) || right.contains(places[i]))
                << places[i].x() << ", " << places[i].y() << " wide " << places[i].width();
            for (std::size_t j = i + 1; j < places.size(); ++j)
                EXPECT_FALSE(places[i].adjusted(0.1, 0.1, -0.1, -0.1).intersects(places[j]))
                    << "two things at " << places[i].x() << ", " << places[i].y();
        }
    }
}

} // namespace

TEST(AirframeCard, SaysWhereEachCouplingIsAndFromWhereItIsSeen)
{
    const QString words = wordsOf(card(smallGlider()));
    for (const char* part : {"QX-17", "Orvane 15", "1 Left Left aileron From above, by the hatch",
                             "2 Right Right aileron Seen from above, mirror from below.",
                             "Held by its sleeve.", "3 Tailplane Connects by itself."})
        EXPECT_TRUE(words.contains(QString::fromUtf8(part))) << part << " in " << words.toStdString();
}

TEST(AirframeCard, SaysWhatLockedLooksLikeOfEachKind)
{
    CardSource source = smallGlider();
    source.couplings.push_back(onCard("Trim", Side::None, Layout::C, CouplingKind::Pin));
    const QStringList texts = textsOf(card(source));
    EXPECT_EQ(timesIn(texts, "Ball in the socket, at the bottom."), 2) << "of each kind of ball joint";
    EXPECT_EQ(timesIn(texts, "Sleeve at its stop, no thread showing."), 1);
    EXPECT_EQ(timesIn(texts, "Safety pin in and through."), 1);
    EXPECT_EQ(timesIn(texts, "The parts meet all round, flush."), 1);
    EXPECT_TRUE(texts.join(QLatin1Char(' ')).contains("schematic, nothing to scale"));
}

TEST(AirframeCard, ShowsEachLayoutOnceInAllFourStates)
{
    EXPECT_EQ(picturesOn(card(smallGlider())), 2) << "the plan and one layout";
    CardSource source = smallGlider();
    source.couplings[1].layout = Layout::A;
    const PageFlow two = card(source);
    EXPECT_EQ(picturesOn(two), 3);
    for (const PrintedPage& page : two.pages)
        for (const PagePicture& picture : page.pictures)
            if (picture.picture.inWords.contains("Ball in the socket")) {
                for (const char* state : {"Seated and locked", "Part-seated", "not secured", "Not connected"})
                    EXPECT_TRUE(picture.picture.inWords.contains(state)) << state;
                EXPECT_GT(picture.where.height(), 190) << "large enough to be seen on A6";
            }
    const QString words = wordsOf(two);
    EXPECT_TRUE(words.contains("Locking moves the tab away from the sleeve: Right aileron."));
    EXPECT_FALSE(words.contains("Layout")) << "plain words";
    source.couplings[1].layout = Layout::Unknown;
    const PageFlow flow = card(source);
    EXPECT_EQ(picturesOn(flow), 2);
    EXPECT_TRUE(wordsOf(flow).contains("how plunger and sleeve stand to each other at: Right aileron."))
        << wordsOf(flow).toStdString();
}

TEST(AirframeCard, IsDrawnAsTheScreenIsWhereReadingsShowAnotherLayout)
{
    CardSource source = smallGlider();
    source.couplings.resize(1);
    source.drawn[source.couplings[0].id] = drawnLayout({Layout::C, CouplingKind::Sleeve, 0.6, 0.2});
    const QString words = wordsOf(card(source));
    EXPECT_TRUE(words.contains("Locking moves the tab away from the sleeve: Left aileron."));
    EXPECT_TRUE(words.contains("not as its layout was entered: Left aileron"));
}

TEST(AirframeCard, SaysOfASquareOnlyWhereThereIsOne)
{
    CardSource source = smallGlider();
    EXPECT_TRUE(wordsOf(card(source)).contains("A square connects by itself."));
    source.couplings.pop_back();
    EXPECT_FALSE(wordsOf(card(source)).contains("A square"));
}

TEST(AirframeCard, SaysWhomToCallOnItsFrontAndOnItsBack)
{
    const PageFlow flow = card(gliderWith(5));
    ASSERT_EQ(flow.pages.size(), 2U);
    for (const bool isFront : {true, false}) {
        const QString words = half(flow, 0, isFront);
        EXPECT_TRUE(words.contains("Stop, leave everything as it is, and call R. Lindqvar. 0555 0101"))
            << words.toStdString();
    }
    CardSource nobody = smallGlider();
    nobody.airframe.callName.clear();
    nobody.airframe.callPhone.clear();
    EXPECT_TRUE(wordsOf(card(nobody)).contains("call the person entitled to decide"));
}

TEST(AirframeCard, HoldsNoBandNoGapAndNoLimit)
{
    const PageFlow flow = card(smallGlider());
    static const QRegularExpression figure{QStringLiteral("[0-9]+[.,][0-9]|\\bmm\\b")};
    for (QString text : textsOf(flow)) {
        text.remove(QStringLiteral("Rigband 0.1.0"));
        EXPECT_FALSE(text.contains(figure)) << text.toStdString();
    }
    for (const PrintedPage& page : flow.pages)
        for (const PagePicture& picture : page.pictures) {
            EXPECT_FALSE(picture.picture.inWords.contains(figure)) << picture.picture.inWords.toStdString();
            EXPECT_FALSE(picture.picture.inWords.contains("gap")) << picture.picture.inWords.toStdString();
        }
    for (std::size_t side = 0; side < 2; ++side)
        for (const bool isRight : {false, true})
            EXPECT_EQ(half(flow, side, isRight).count("No band"), 1) << "once on each page";
}

TEST(AirframeCard, IsReadInOrderWhenItsSheetIsFolded)
{
    const PageFlow flow = card(gliderWith(5));
    ASSERT_EQ(flow.pages.size(), 2U) << "both sides of one sheet";
    EXPECT_GT(sizeOf(flow).width(), sizeOf(flow).height()) << "folded in the middle it is A6";
    EXPECT_TRUE(half(flow, 0, true).contains("Page 1 of 4"));
    EXPECT_TRUE(half(flow, 1, false).contains("Page 2 of 4"));
    EXPECT_TRUE(half(flow, 1, true).contains("Page 3 of 4"));
    EXPECT_TRUE(half(flow, 0, false).contains("Page 4 of 4"));
    EXPECT_TRUE((half(flow, 1, true) + half(flow, 0, false)).contains("To keep in mind"));
}

TEST(AirframeCard, FitsAnyNumberOfCouplingsAndNamesOfAnyLength)
{
    for (const std::size_t couplings : {1U, 8U, 14U, 40U})
        expectFolded(card(gliderWith(couplings)));
    EXPECT_EQ(card(gliderWith(40)).pages.size() % 2, 0U) << "whole sheets";
    CardSource source = smallGlider();
    source.airframe.type = std::string(90, 'W');
    source.airframe.callName = std::string(120, 'N');
    source.airframe.callPhone = std::string(120, '5');
    source.couplings[0].name = std::string(200, 'M');
    source.couplings[0].access = std::string(400, 'x');
    expectFolded(card(source));
}

TEST(AirframeCard, NeverSaysWhatTheProgramDoesNotDecide)
{
    CardSource source = smallGlider();
    for (const CouplingKind kind :
         {CouplingKind::SleeveAndPin, CouplingKind::WaterBallast, CouplingKind::Other})
        source.couplings.push_back(onCard("One more", Side::Left, Layout::B, kind));
    EXPECT_EQ(forbiddenIn(wordsOf(card(source))).join(", ").toStdString(), "");
}

TEST(AirframeCard, IsPrintedAcrossA5)
{
    const QByteArray pdf = pdfOf(card(smallGlider()), "card", "Rigband");
    EXPECT_TRUE(pdf.contains("/MediaBox [0 0 595 420]") || pdf.contains("/MediaBox [0 0 595.")) << "A5";
}

TEST(AirframeCard, IsNamedAfterItsAirframe)
{
    EXPECT_EQ(cardFileName(smallGlider()), "QX-17-card.pdf");
}
