#pragma once

#include "app/blocks/blocks.h"
#include "app/pictures/marks.h"
#include "core/progress.h"

#include <QLocale>
#include <QPointF>
#include <QRectF>

#include <span>
#include <vector>

namespace rig {

enum class Paper { A4, Letter, A5 };

// Letter where inches are used in the American way, A4 everywhere else.
Paper usualPaper(const QLocale& locale);
// All lengths on a page are in 1/96 inch, so that fonts and pictures have the sizes they have on the screen.
QSizeF sizeOf(Paper paper);

// What stands on every page, above and below.
struct PageFrame
{
    QString airframe; // registration and type
    QString title;
    QString caution;
    QString printed; // day and program
};

struct PageText
{
    QPointF baseline;
    QRectF where;
    QString text; // one line
    double pixels = 12;
    Weight weight = Weight::Regular;
    Role role = Role::Ink;
    bool struck = false;
    int pageOf = 0; // the text is the number of the page on which this place stands
};

struct PageLine
{
    QPointF from;
    QPointF to;
    Role role = Role::Line;
    double width = 1;
};

struct PageBox
{
    QRectF where; // an outline
    Role role = Role::InkSoft;
};

struct PageMark
{
    QRectF where;
    Says says = Says::NoBandYet;
};

struct PagePicture
{
    QRectF where;
    LaidPicture picture;
};

// Plain shapes; painting decides nothing.
struct PrintedPage
{
    std::vector<PageText> texts;
    std::vector<PageLine> lines;
    std::vector<PageBox> boxes;
    std::vector<PageMark> marks;
    std::vector<PagePicture> pictures;
    std::vector<int> places; // of headings, by which their page is told

    void add(const PrintedPage& other, QPointF at);
};

struct PageFlow
{
    Paper paper = Paper::A4;
    bool isAcross = false; // the longer edge lies level
    QRectF body;           // between what stands above and below, the same on every page
    std::vector<PrintedPage> pages;
};

QSizeF sizeOf(const PageFlow& flow); // of each of its pages

// Blocks alone, on as many pages as they take.
std::vector<PrintedPage> placedIn(const QRectF& body, std::span<const Block> blocks,
                                  Progress* progress = nullptr);

// Measures every block, then places them. A row of a table is never split, unless it is longer than a page; a
// table that runs on repeats its head, and no row of it stands alone; a heading stays with what follows. A
// section that asks for one page breaks only where the whole then takes fewer pages. Where a page is told by
// its number, the number is filled in last, in the room that was left for it. Stopped: no pages. Touches no
// widget: a thread of its own may do it, with blocks that no other one uses.
PageFlow layoutPages(const PageFrame& frame, std::span<const Block> blocks, Paper paper,
                     Progress* progress = nullptr);

void paint(QPainter& painter, const PrintedPage& page, const Theme& theme);

} // namespace rig
