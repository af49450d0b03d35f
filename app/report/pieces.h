#pragma once

#include "app/blocks/blocks.h"
#include "app/report/page_flow.h"
#include "core/progress.h"

#include <memory>
#include <span>
#include <vector>

namespace rig {

// A part of a block that is not split further, measured, with its shapes as if its corner were at the origin.
struct Piece
{
    PrintedPage shapes;
    double height = 0;
    double space = 0;           // kept free above it, except at the top of a page
    bool keepsWithNext = false; // heading and first row, say
    bool startsPage = false;
    // Pieces of one section stand on one page, unless that costs a page; 0: of none.
    int section = 0;
    // For a row: its table's head, put above it again when it comes first on a page.
    std::shared_ptr<const Piece> head;
};

// 1/96 inch: a box to tick by hand, 4 mm, and the room it takes before what stands behind it.
inline constexpr double kTickBox = 15;
inline constexpr double kTickRoom = 21;

// `tallest` is the height of a page's body: what is longer is split between its lines. Stopped: not all of
// them.
std::vector<Piece> piecesOf(std::span<const Block> blocks, double width, double tallest,
                            Progress* progress = nullptr);

// One paragraph's lines at a font, and how high a line is.
std::vector<QString> wrapped(const QString& text, double width, double pixels, Weight weight);
double lineHeight(double pixels);
// A line of text with its upper left corner at `corner`.
PageText textAt(QPointF corner, const QString& text, double pixels, Weight weight = Weight::Regular,
                Role role = Role::Ink);

} // namespace rig
