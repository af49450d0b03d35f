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
    Line,    // hairlines and borders
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
    NearEdge,     // shapes
    NearEdgeText, // words: darker than the shape
    NearEdgeFill,
    Outside,
    OutsideFill,
    Unknown,
    UnknownFill,
    Band,     // between the inner edges
    NearZone, // between inner and outer edges
    Centre,   // centre line of a band
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

class Theme
{
public:
    static Theme light();
    static Theme dark();

    bool isDark() const;
    QColor color(Role role) const { return m_colors[static_cast<std::size_t>(role)]; }

private:
    explicit Theme(const std::array<QRgb, static_cast<std::size_t>(Role::Last_)>& values);
    std::array<QColor, static_cast<std::size_t>(Role::Last_)> m_colors;
};

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
