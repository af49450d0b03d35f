#pragma once

#include "app/theme/theme.h"
#include "core/review/says.h"

#include <QSizeF>
#include <QString>

#include <functional>
#include <optional>
#include <variant>
#include <vector>

class QPainter;

namespace rig {

// What a report is made of, from top to bottom. The same blocks are laid out on pages (page_flow.h) and shown
// on the screen.

// 1: what this is; 2: a part of it; 3: one coupling or surface. Stays with what follows it.
struct HeadingBlock
{
    QString text;
    int rank = 2;
};

struct ParagraphBlock
{
    QString text; // wraps; may have several lines
    Role role = Role::Ink;
    bool strong = false;
    bool staysWithNext = false; // said of what follows: not left behind at the foot of a page
};

// A picture after its own layout: how it is painted with its corner at the origin, and what it says in words.
struct LaidPicture
{
    std::function<void(QPainter&, const Theme&)> paint;
    QString inWords;
};

using PictureMaker = std::function<LaidPicture(QSizeF, const FontSizes&)>;

// One thing said in a cell of a table.
struct CellText
{
    QString text;
    Role role = Role::Ink;
    bool strong = false;
    bool struck = false;      // superseded, and still to be read
    std::optional<Says> mark; // its shape stands before the text
    PictureMaker picture{};   // on paper, in place of the text: one line high, as wide as the cell
};

using Cell = std::vector<CellText>; // one below the other

struct Column
{
    QString head;
    double share = 1; // of the width, against the other columns
};

// Without a head when no column has one; `continued` then stands above the rows that go on to another page.
struct TableBlock
{
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows; // as many cells as columns
    QString continued{};
};

struct PictureBlock
{
    double height = 86; // 1/96 inch at the usual text size; the width is what there is
    PictureMaker lay;
};

// On paper only: lines to sign on, side by side, and an empty box to write in.
struct SignatureBlock
{
    std::vector<QString> below; // what stands under each line
};

struct BlankBlock
{
    QString label;
    double height = 150;
};

using Block =
    std::variant<HeadingBlock, ParagraphBlock, TableBlock, PictureBlock, SignatureBlock, BlankBlock>;

} // namespace rig
