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
    bool startsPage = false; // on paper
    QString beside{};        // said softly behind it, as far as there is room
    bool keepsTogether =
        false;     // on paper: on one page with all up to the next heading, where one can hold it
    int place = 0; // by which a cell tells its page; 0: none does
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
    bool box = false;         // on paper: one to tick by hand stands before the text
    int pageOf = 0;           // on paper, in place of the text: the number of the page of the heading there
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
    bool isTight = false; // rows close together, without rules
};

struct PictureBlock
{
    double height = 86; // 1/96 inch at the usual text size; the width is what there is
    PictureMaker lay;
    // On paper: what its axes count, with the unit, above it and below.
    QString upwards{};
    QString across{};
};

// A picture, and what is told of it to its right; never parted where a page can hold both. The picture is as
// high as what is told, where that is more.
struct BesideBlock
{
    PictureBlock picture;
    TableBlock table;
    double share = 0.42; // of the width, for the picture
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

// Something to fill in: a box to tick with its word behind it, or a word with a line to write on behind it.
struct FormItem
{
    QString text;
    double line = 0; // 1/96 inch, at least; none: a box
};

// On paper only: what is asked, and beside it what is filled in, in as many lines as it takes.
struct FormBlock
{
    QString about; // empty: the items take the whole width
    std::vector<FormItem> items;
    bool staysWithNext = false;
};

using Block = std::variant<HeadingBlock, ParagraphBlock, TableBlock, PictureBlock, SignatureBlock, BlankBlock,
                           FormBlock, BesideBlock>;

} // namespace rig
