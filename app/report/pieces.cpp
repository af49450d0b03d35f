#include "app/report/pieces.h"

#include <QFontMetricsF>
#include <QTextLayout>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace rig {

namespace {

// 1/96 inch: 12 is 9 point.
constexpr double kTableText = 12;
constexpr double kText = 13;
constexpr double kCellPad = 5;
constexpr double kRowPad = 3;
constexpr double kMark = 12;
constexpr double kMarkRoom = 17;
constexpr std::size_t kShortTable = 6; // rows; kept on one page
constexpr double kSignatureRoom = 46;
constexpr double kBetweenSignatures = 28;

struct HeadingStyle
{
    double pixels = 17;
    double space = 18;
};

HeadingStyle styleOf(int rank)
{
    if (rank <= 1)
        return {24, 0};
    return rank == 2 ? HeadingStyle{17, 20} : HeadingStyle{14, 14};
}

// A line of a cell after wrapping.
struct CellLine
{
    QString text;
    const CellText* style = nullptr;
    bool isFirst = false; // the mark stands at the first line only
};

std::vector<CellLine> linesOf(const Cell& cell, double width)
{
    std::vector<CellLine> lines;
    for (const CellText& one : cell) {
        const double room = width - 2 * kCellPad - (one.mark ? kMarkRoom : 0);
        const Weight weight = one.strong ? Weight::SemiBold : Weight::Regular;
        bool isFirst = true;
        for (const QString& line : wrapped(one.text, room, kTableText, weight)) {
            lines.push_back({line, &one, isFirst});
            isFirst = false;
        }
    }
    return lines;
}

class Pieces
{
public:
    Pieces(double width, double tallest) : m_width{width}, m_tallest{tallest} {}

    void operator()(const HeadingBlock& block)
    {
        const HeadingStyle style = styleOf(block.rank);
        Piece piece = linesPiece(wrapped(block.text, m_width, style.pixels, Weight::SemiBold), style.pixels,
                                 Weight::SemiBold, Role::Ink);
        piece.space = style.space;
        piece.keepsWithNext = true;
        if (block.rank == 2) {
            piece.shapes.lines.push_back({{0, piece.height + 2}, {m_width, piece.height + 2}, Role::Line, 1});
            piece.height += 5;
        }
        m_pieces.push_back(std::move(piece));
    }

    void operator()(const ParagraphBlock& block)
    {
        const Weight weight = block.strong ? Weight::SemiBold : Weight::Regular;
        const auto lines = wrapped(block.text, m_width, kText, weight);
        for (std::size_t i = 0; i < lines.size(); ++i) {
            Piece piece = linesPiece({lines[i]}, kText, weight, block.role);
            piece.space = i == 0 ? 6 : 0;
            // No line stands alone at the foot of a page, or at the top.
            piece.keepsWithNext =
                i + 1 < lines.size() ? i == 0 || i + 2 == lines.size() : block.staysWithNext;
            m_pieces.push_back(std::move(piece));
        }
    }

    void operator()(const TableBlock& block)
    {
        const std::vector<double> widths = widthsOf(block.columns);
        std::vector<Cell> names;
        for (const Column& column : block.columns)
            names.push_back({{column.head, Role::InkSoft, true, false, {}}});
        const double all = m_tallest;
        auto head = std::make_shared<Piece>(rowPieces(names, widths, all).front());
        head->space = 6;
        head->keepsWithNext = true;
        head->shapes.lines.front().role = Role::InkSoft;
        m_pieces.push_back(*head);
        for (const std::vector<Cell>& row : block.rows) {
            for (Piece& piece : rowPieces(row, widths, all - head->height)) {
                piece.head = head;
                piece.keepsWithNext = block.rows.size() <= kShortTable && &row != &block.rows.back();
                m_pieces.push_back(std::move(piece));
            }
        }
    }

    void operator()(const PictureBlock& block)
    {
        Piece piece;
        piece.height = std::min(block.height, m_tallest);
        piece.space = 6;
        piece.keepsWithNext = true;
        const QSizeF size{m_width, piece.height};
        piece.shapes.pictures.push_back({QRectF{{0, 0}, size}, block.lay(size, FontSizes{})});
        m_pieces.push_back(std::move(piece));
    }

    void operator()(const SignatureBlock& block)
    {
        const auto count = static_cast<double>(std::max<std::size_t>(1, block.below.size()));
        const double width = (m_width - (count - 1) * kBetweenSignatures) / count;
        Piece piece;
        piece.space = 10;
        piece.keepsWithNext = true; // what is filled in by hand stands on one sheet
        piece.height = kSignatureRoom;
        double x = 0;
        for (const QString& below : block.below) {
            double y = kSignatureRoom;
            piece.shapes.lines.push_back({{x, y}, {x + width, y}, Role::Ink, 1});
            y += 3;
            for (const QString& line : wrapped(below, width, kTableText, Weight::Regular)) {
                piece.shapes.texts.push_back(
                    textAt({x, y}, line, kTableText, Weight::Regular, Role::InkSoft));
                y += lineHeight(kTableText);
            }
            piece.height = std::max(piece.height, y);
            x += width + kBetweenSignatures;
        }
        m_pieces.push_back(std::move(piece));
    }

    void operator()(const BlankBlock& block)
    {
        Piece piece;
        piece.space = 10;
        piece.height = std::min(block.height, m_tallest);
        double y = 6;
        for (const QString& line : wrapped(block.label, m_width - 20, kTableText, Weight::Regular)) {
            piece.shapes.texts.push_back(textAt({10, y}, line, kTableText, Weight::Regular, Role::InkSoft));
            y += lineHeight(kTableText);
        }
        piece.shapes.boxes.push_back({{0, 0, m_width, piece.height}, Role::InkSoft});
        m_pieces.push_back(std::move(piece));
    }

    std::vector<Piece> take() { return std::move(m_pieces); }

private:
    Piece linesPiece(const std::vector<QString>& lines, double pixels, Weight weight, Role role) const
    {
        Piece piece;
        for (const QString& line : lines) {
            piece.shapes.texts.push_back(textAt({0, piece.height}, line, pixels, weight, role));
            piece.height += lineHeight(pixels);
        }
        return piece;
    }

    std::vector<double> widthsOf(const std::vector<Column>& columns) const
    {
        const double all =
            std::accumulate(columns.begin(), columns.end(), 0.0,
                            [](double sum, const Column& column) { return sum + column.share; });
        std::vector<double> widths;
        for (const Column& column : columns)
            widths.push_back(m_width * column.share / all);
        return widths;
    }

    // One piece, or several when the row is higher than `tallest`.
    std::vector<Piece> rowPieces(const std::vector<Cell>& row, const std::vector<double>& widths,
                                 double tallest) const
    {
        std::vector<std::vector<CellLine>> cells;
        std::size_t most = 1;
        for (std::size_t i = 0; i < row.size() && i < widths.size(); ++i) {
            cells.push_back(linesOf(row[i], widths[i]));
            most = std::max(most, cells.back().size());
        }
        const double room = std::max(0.0, tallest - 2 * kRowPad - 1);
        const auto fitting =
            std::max<std::size_t>(1, static_cast<std::size_t>(std::floor(room / lineHeight(kTableText))));
        std::vector<Piece> pieces;
        for (std::size_t from = 0; from < most; from += fitting)
            pieces.push_back(rowPiece(cells, widths, from, std::min(most, from + fitting)));
        return pieces;
    }

    Piece rowPiece(const std::vector<std::vector<CellLine>>& cells, const std::vector<double>& widths,
                   std::size_t from, std::size_t to) const
    {
        Piece piece;
        const double high = lineHeight(kTableText);
        double x = 0;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            double y = kRowPad;
            for (std::size_t at = from; at < std::min(to, cells[i].size()); ++at, y += high)
                addCellLine(piece.shapes, cells[i][at], {x + kCellPad, y});
            x += widths[i];
        }
        piece.height = 2 * kRowPad + high * static_cast<double>(to - from) + 1;
        piece.shapes.lines.push_back(
            {{0, piece.height - 0.5}, {m_width, piece.height - 0.5}, Role::Line, 0.75});
        return piece;
    }

    static void addCellLine(PrintedPage& shapes, const CellLine& line, QPointF at)
    {
        const CellText& style = *line.style;
        if (style.mark && line.isFirst)
            shapes.marks.push_back(
                {{at.x(), at.y() + (lineHeight(kTableText) - kMark) / 2, kMark, kMark}, *style.mark});
        if (style.mark)
            at.rx() += kMarkRoom;
        PageText text =
            textAt(at, line.text, kTableText, style.strong ? Weight::SemiBold : Weight::Regular, style.role);
        text.struck = style.struck;
        shapes.texts.push_back(std::move(text));
    }

    double m_width;
    double m_tallest;
    std::vector<Piece> m_pieces;
};

void wrapOne(std::vector<QString>& lines, const QString& text, double width, const QFont& font)
{
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    QTextLayout layout{text, font};
    layout.setTextOption(option);
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        lines.push_back(text.mid(line.textStart(), line.textLength()).trimmed());
    }
    layout.endLayout();
}

} // namespace

std::vector<QString> wrapped(const QString& text, double width, double pixels, Weight weight)
{
    std::vector<QString> lines;
    for (const QString& paragraph : text.split(QLatin1Char('\n')))
        wrapOne(lines, paragraph.simplified(), width, plainFontOf(pixels, weight));
    return lines;
}

double lineHeight(double pixels)
{
    return std::ceil(QFontMetricsF{plainFontOf(pixels)}.height() * 1.06);
}

PageText textAt(QPointF corner, const QString& text, double pixels, Weight weight, Role role)
{
    const QFontMetricsF metrics{plainFontOf(pixels, weight)};
    PageText one;
    one.baseline = {corner.x(), corner.y() + (lineHeight(pixels) - metrics.height()) / 2 + metrics.ascent()};
    one.where = {corner.x(), corner.y(), metrics.horizontalAdvance(text), lineHeight(pixels)};
    one.text = text;
    one.pixels = pixels;
    one.weight = weight;
    one.role = role;
    return one;
}

std::vector<Piece> piecesOf(std::span<const Block> blocks, double width, double tallest)
{
    Pieces pieces{width, tallest};
    for (const Block& block : blocks)
        std::visit(pieces, block);
    return pieces.take();
}

} // namespace rig
