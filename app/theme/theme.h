#pragma once

#include <QColor>
#include <QFont>
#include <QPalette>

#include <array>

class QPainter;

namespace rig {

// What a colour is for. Only theme/ knows its value.
enum class Role {
    Paper,   // behind the cards
    Card,    // surface of a card
    Line,    // hairlines: edges of cards, rules
    Border,  // edges of what is typed into or pressed: at least 3:1 on everything they stand on
    Ink,     // text and readings
    InkSoft, // second-rank text
    Bar,     // the top bar
    BarText,
    BarTextSoft,
    BarChosen,
    Accent,     // chosen, primary
    AccentText, // on Accent
    AccentFill, // behind a chosen row
    Inside,
    InsideFill,
    NearEdge,     // shapes, and the outer edges of a band
    NearEdgeText, // words: darker than the shape
    NearEdgeFill,
    Outside,
    OutsideFill,
    Unknown,
    UnknownFill,
    Band,     // between the inner edges
    NearZone, // between inner and outer edges
    Centre,   // centre line of a band, and its inner edges
    StripGround,
    Hatch, // part-seated region
    Grid,
    Last_, // count
};

// Sizes in device-independent pixels, scaled as a whole by the reader's text size.
struct FontSizes
{
    double scale = 1.0;
    double small() const { return 12 * scale; }
    double body() const { return 14 * scale; }
    double label() const { return 13 * scale; }
    double section() const { return 17 * scale; }
    double title() const { return 23 * scale; }
};

enum class Weight { Regular, Medium, SemiBold, Bold };

// The bundled font at a pixel size, hinted the same everywhere.
QFont fontOf(double pixels, Weight weight = Weight::Regular);

// The same with every character as its own glyph: the bundled font's contextual forms of hyphen, dash and
// colon cannot be read out of a PDF again.
QFont plainFontOf(double pixels, Weight weight = Weight::Regular);
// The one of the two that suits what is painted on.
QFont fontOn(const QPainter& painter, double pixels, Weight weight = Weight::Regular);

// Makes the bundled fonts known to the application. False when a resource is missing.
bool loadFonts();

enum class Scheme { Light, Dark, Sunlight };

class Theme
{
public:
    static Theme light();
    static Theme dark();
    static Theme outdoor(); // for bright sun: words 7:1, marks and borders 4.5:1
    static Theme of(Scheme scheme);

    Scheme scheme() const { return m_scheme; }
    QColor color(Role role) const { return m_colors[static_cast<std::size_t>(role)]; }

private:
    Theme(Scheme scheme, const std::array<QRgb, static_cast<std::size_t>(Role::Last_)>& values);

    Scheme m_scheme;
    std::array<QColor, static_cast<std::size_t>(Role::Last_)> m_colors;
};

// How far apart two colours are in lightness, 1 to 21: the contrast ratio of relative luminances, as the Web
// Content Accessibility Guidelines 2.1 define both. Colours without transparency.
double contrastOf(const QColor& one, const QColor& other);

// How the reader wants everything to look; handed from the window to each page.
struct Look
{
    Theme theme = Theme::light();
    FontSizes fonts;
};

// For what the style sheet leaves to the style: drop-down lists, tick boxes.
QPalette paletteFor(const Theme& theme);

// The style sheet of all pages. Widgets opt in by dynamic properties:
//   card=true            a QFrame on a white card with a border
//   kind="title|section|label|strong|soft|caution"   QLabel ranks
//   kind="primary|choice|leaf|bar|plain|link" QPushButton ranks (choice and leaf are checkable)
//   kind="row"           a chosen-able list row
//   verdict="inside|near|outside|unknown"  a QFrame that carries a verdict, and the QLabel that words it
//   asked=true           a QFrame whose question is open now
QString styleSheetFor(const Theme& theme, const FontSizes& sizes);

} // namespace rig
