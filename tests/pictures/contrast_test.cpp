// What is read stands out from what it stands on, in every scheme of colours. The ratio and the bounds of 4.5
// for words and 3 for marks, edges and the focus are those of the Web Content Accessibility Guidelines 2.1
// (W3C Recommendation, 5 June 2018): "contrast ratio" and "relative luminance" in its section 6,
// criteria 1.4.3 and 1.4.11. For sunlight 7, as in 1.4.6, and 4.5.

#include "app/pictures/band_bar.h"
#include "app/pictures/gap_strip.h"
#include "app/pictures/readings_strip.h"
#include "tests/pictures/aircraft_scene.h"

#include <QApplication>
#include <QPushButton>

#include <algorithm>
#include <array>
#include <cmath>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;
using namespace rig::literals;

namespace {

struct Pair
{
    Role what;
    Role on;
};

const char* nameOf(Scheme scheme)
{
    switch (scheme) {
    case Scheme::Light:
        return "light";
    case Scheme::Dark:
        return "dark";
    case Scheme::Sunlight:
        break;
    }
    return "sunlight";
}

constexpr std::array kSchemes{Scheme::Light, Scheme::Dark, Scheme::Sunlight};

// What pages, cards, rows and fields are filled with.
constexpr std::array kGrounds{Role::Paper,        Role::Card,        Role::AccentFill,  Role::InsideFill,
                              Role::NearEdgeFill, Role::OutsideFill, Role::UnknownFill, Role::StripGround};

std::vector<Pair> wordPairs()
{
    std::vector<Pair> all{
        {Role::BarText, Role::Bar},       {Role::BarText, Role::BarChosen}, {Role::BarTextSoft, Role::Bar},
        {Role::AccentText, Role::Accent}, // primary buttons, chosen answers, what is selected
        {Role::Card, Role::NearEdgeText}, // a chosen answer that is a doubt
    };
    for (const Role what : {Role::Ink, Role::InkSoft, Role::Accent, Role::Inside, Role::NearEdgeText,
                            Role::Outside, Role::Unknown})
        for (const Role on : kGrounds)
            all.push_back({what, on});
    return all;
}

// Shapes, bars, lines that say something; the edges of what is pressed or typed into; the focus.
std::vector<Pair> markPairs()
{
    std::vector<Pair> all{
        {Role::Card, Role::Inside},           // the tick on its disc
        {Role::BarTextSoft, Role::Bar},       // the focus in the top bar
        {Role::BarTextSoft, Role::BarChosen}, // the focus on the page that is shown
        {Role::AccentText, Role::Accent},     // the focus on what is chosen
    };
    for (const Role on : kGrounds)
        for (const Role what : {Role::Ink, Role::InkSoft, Role::Accent, Role::Inside, Role::NearEdge,
                                Role::Outside, Role::Unknown, Role::Border})
            all.push_back({what, on});
    for (const Role on : {Role::Band, Role::NearZone, Role::Card, Role::StripGround})
        for (const Role what : {Role::Ink, Role::InkSoft, Role::Accent, Role::NearEdge, Role::Outside,
                                Role::Unknown, Role::Centre, Role::Hatch})
            all.push_back({what, on});
    return all;
}

void expectApart(const std::vector<Pair>& pairs, Scheme scheme, double least)
{
    const Theme theme = Theme::of(scheme);
    for (const auto& [what, on] : pairs)
        EXPECT_GE(contrastOf(theme.color(what), theme.color(on)), least)
            << nameOf(scheme) << ": role " << static_cast<int>(what) << " on " << static_cast<int>(on);
}

Band widerBand()
{
    return {{0.55, 0.71}, {0.50, 0.76}, 0.63, 0.03, 58};
}

// One way across the zones of a picture: where a box begins and ends on it, and where the lines stand.
struct Across
{
    double (*from)(const QRectF&);
    double (*to)(const QRectF&);
    double (*at)(const QPointF&);
};

constexpr Across kLevel{[](const QRectF& box) { return box.left(); },
                        [](const QRectF& box) { return box.right(); },
                        [](const QPointF& point) { return point.x(); }};
constexpr Across kUpright{[](const QRectF& box) { return box.top(); },
                          [](const QRectF& box) { return box.bottom(); },
                          [](const QPointF& point) { return point.y(); }};

// Where the zones of a band end, with what lies on the two sides.
struct Edge
{
    double at;
    Role one;
    Role other;
};

template <typename Box>
std::vector<Edge> edgesOf(const std::vector<Box>& boxes, const Across& across, Role ground)
{
    std::vector<Edge> edges;
    for (const Box& box : boxes) {
        if (box.role != Role::NearZone)
            continue;
        for (const double at : {across.from(box.where), across.to(box.where)}) {
            const bool isInner = std::ranges::any_of(boxes, [&](const Box& other) {
                return other.role == Role::Band && (std::abs(across.from(other.where) - at) < 0.01 ||
                                                    std::abs(across.to(other.where) - at) < 0.01);
            });
            edges.push_back({at, Role::NearZone, isInner ? Role::Band : ground});
        }
    }
    return edges;
}

// At each edge stands a line that is seen against both of its sides.
template <typename Picture> void expectEdgesSeen(const Picture& picture, const Across& across, Role ground)
{
    const auto edges = edgesOf(picture.boxes, across, ground);
    ASSERT_GE(edges.size(), 4U);
    for (const Edge& edge : edges) {
        const auto line = std::ranges::find_if(picture.lines, [&](const auto& one) {
            return one.role != Role::Grid && std::abs(across.at(one.from) - edge.at) < 0.01 &&
                   std::abs(across.at(one.to) - edge.at) < 0.01;
        });
        ASSERT_NE(line, picture.lines.end()) << "at " << edge.at;
        EXPECT_TRUE(std::none_of(line, picture.lines.end(),
                                 [&](const auto& one) {
                                     return one.role == Role::Grid &&
                                            std::abs(across.at(one.from) - edge.at) < 1 &&
                                            std::abs(across.at(one.to) - edge.at) < 1;
                                 }))
            << "the grid is drawn over it at " << edge.at;
        for (const Scheme scheme : kSchemes)
            expectApart({{line->role, edge.one}, {line->role, edge.other}}, scheme,
                        scheme == Scheme::Sunlight ? 4.5 : 3);
    }
}

} // namespace

TEST(Contrast, IsTheRatioOfThePublishedExamples)
{
    EXPECT_NEAR(contrastOf(QColor{"#000000"}, QColor{"#ffffff"}), 21, 1e-9);
    EXPECT_NEAR(contrastOf(QColor{"#777777"}, QColor{"#ffffff"}), 4.48, 0.005); // just too little for words,
    EXPECT_NEAR(contrastOf(QColor{"#ffffff"}, QColor{"#767676"}), 4.54, 0.005); // and just enough
}

TEST(Contrast, OfWordsIsEnoughOnEveryGroundTheyStandOn)
{
    expectApart(wordPairs(), Scheme::Light, 4.5);
    expectApart(wordPairs(), Scheme::Dark, 4.5);
    expectApart(wordPairs(), Scheme::Sunlight, 7);
}

TEST(Contrast, OfMarksEdgesOfControlsAndTheFocusIsEnoughOnEveryGround)
{
    expectApart(markPairs(), Scheme::Light, 3);
    expectApart(markPairs(), Scheme::Dark, 3);
    expectApart(markPairs(), Scheme::Sunlight, 4.5);
}

TEST(Contrast, OfTheEdgesOfCardsIsEnoughInSunlight)
{
    for (const Role on : kGrounds)
        expectApart({{Role::Line, on}}, Scheme::Sunlight, 4.5);
}

// A control that is drawn with the edge of a card, or a focus in the colour of what it lies on, is not seen.
TEST(Contrast, OfControlsIsThatOfTheirOwnEdge)
{
    const Theme theme = Theme::light();
    const QString sheet = styleSheetFor(theme, {});
    const QString border = QStringLiteral("border: 1px solid %1").arg(theme.color(Role::Border).name());
    for (const char* control : {"\nQPushButton {", "\nQLineEdit, QPlainTextEdit, QListWidget {"}) {
        const qsizetype begins = sheet.indexOf(QLatin1String(control));
        ASSERT_GE(begins, 0) << control;
        EXPECT_LT(sheet.indexOf(border, begins), sheet.indexOf('}', begins)) << control;
        EXPECT_GE(sheet.indexOf(border, begins), 0) << control;
    }
    EXPECT_EQ(paletteFor(theme).color(QPalette::Mid), theme.color(Role::Border));
}

TEST(BandEdges, OfTheGapStripAreLinesAndNotTintAlone)
{
    GapStripView view;
    view.band = widerBand();
    view.reading = GapInterval{600_um, 650_um};
    view.verdict = Verdict::Inside;
    expectEdgesSeen(layoutGapStrip(view, {800, 92}, {}), kLevel, Role::StripGround);
}

TEST(BandEdges, OfTheBandBarAreLinesAndNotTintAlone)
{
    expectEdgesSeen(layoutBandBar({widerBand(), GapInterval{600_um, 650_um}, Verdict::Inside}, {280, 26}, {}),
                    kLevel, Role::StripGround);
}

TEST(BandEdges, OfTheReadingsStripAreLinesAndNotTintAlone)
{
    ReadingsStripView view;
    view.band = widerBand();
    view.locked = {GapInterval{600_um, 650_um}};
    expectEdgesSeen(layoutReadingsStrip(view, {880, readingsStripHeight({})}, {}), kLevel, Role::StripGround);
}

TEST(BandEdges, OfAllCouplingsTogetherAreLinesAndNotTintAlone)
{
    expectEdgesSeen(layoutAircraft(aircraftOf(54), kRiggings, 2, kUsual, {}), kUpright, Role::Card);
}

TEST(BandEdges, OfTheTrendAreLinesAndNotTintAlone)
{
    expectEdgesSeen(layoutTrend(leftFlap(), kRiggings, kUsual, {}), kUpright, Role::Card);
}
