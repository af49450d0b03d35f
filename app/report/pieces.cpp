#include "app/report/pieces.h"

#include "app/report/form_piece.h"
#include "app/report/table_pieces.h"

#include <QFontMetricsF>
#include <QTextLayout>

#include <algorithm>
#include <cmath>
#include <utility>

namespace rig {

namespace {

// 1/96 inch: 12 is 9 point.
constexpr double kSmallText = 12;
constexpr double kText = 13;
constexpr double kSignatureRoom = 46;
constexpr double kBetweenSignatures = 28;
constexpr double kBeside = 14; // between a picture and what is told of it to its right
constexpr double kLeastBeside = 60;

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

class Pieces
{
public:
    Pieces(double width, double tallest, Measured& measured)
        : m_width{width}, m_tallest{tallest}, m_measured{measured}
    {
    }

    void operator()(const HeadingBlock& block)
    {
        endTogether();
        const HeadingStyle style = styleOf(block.rank);
        Piece piece = linesPiece(wrapped(block.text, m_width, style.pixels, Weight::SemiBold), style.pixels,
                                 Weight::SemiBold, Role::Ink);
        piece.space = style.space;
        piece.keepsWithNext = true;
        piece.startsPage = block.startsPage;
        if (block.place != 0)
            piece.shapes.places.push_back(block.place);
        if (!block.beside.isEmpty())
            addBeside(piece, block.beside, style.pixels);
        if (block.rank == 2) {
            piece.shapes.lines.push_back({{0, piece.height + 2}, {m_width, piece.height + 2}, Role::Line, 1});
            piece.height += 5;
        }
        m_pieces.push_back(std::move(piece));
        if (block.keepsTogether)
            m_together = m_pieces.size();
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
        for (Piece& piece : tablePieces(block, m_width, m_tallest, &m_measured))
            m_pieces.push_back(std::move(piece));
    }

    void operator()(const PictureBlock& block)
    {
        Piece piece = picturePiece(block, m_width);
        piece.space = 6;
        piece.keepsWithNext = true;
        m_pieces.push_back(std::move(piece));
    }

    void operator()(const BesideBlock& block)
    {
        const double left = m_width * block.share;
        const double at = left + kBeside;
        Piece told;
        for (const Piece& row : tablePieces(block.table, m_width - at, m_tallest)) {
            told.shapes.add(row.shapes, {at, told.height});
            told.height += row.height;
        }
        if (told.height > m_tallest) { // longer than a page: one below the other
            (*this)(block.picture);
            (*this)(block.table);
            return;
        }
        // As high as what is told of it, where that is more.
        PictureBlock grown = block.picture;
        grown.height = std::max(grown.height, told.height);
        Piece piece = picturePiece(grown, left);
        piece.space = 6;
        piece.shapes.add(told.shapes, {0, 0});
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
            for (const QString& line : wrapped(below, width, kSmallText, Weight::Regular)) {
                piece.shapes.texts.push_back(
                    textAt({x, y}, line, kSmallText, Weight::Regular, Role::InkSoft));
                y += lineHeight(kSmallText);
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
        piece.keepsWithNext = true; // as above
        piece.height = std::min(block.height, m_tallest);
        double y = 6;
        for (const QString& line : wrapped(block.label, m_width - 20, kSmallText, Weight::Regular)) {
            piece.shapes.texts.push_back(textAt({10, y}, line, kSmallText, Weight::Regular, Role::InkSoft));
            y += lineHeight(kSmallText);
        }
        piece.shapes.boxes.push_back({{0, 0, m_width, piece.height}, Role::InkSoft});
        m_pieces.push_back(std::move(piece));
    }

    void operator()(const FormBlock& block) { m_pieces.push_back(formPiece(block, m_width)); }

    std::vector<Piece> take()
    {
        endTogether();
        return std::move(m_pieces);
    }

private:
    Piece picturePiece(const PictureBlock& block, double width) const
    {
        Piece piece;
        const double title = lineHeight(kSmallText);
        double y = 0;
        if (!block.upwards.isEmpty()) {
            piece.shapes.texts.push_back(axisTitle({0, 0}, block.upwards, width));
            y += title;
        }
        const double below = block.across.isEmpty() ? 0 : title;
        const QSizeF size{width, std::min(block.height, m_tallest) - y - below};
        piece.shapes.pictures.push_back({QRectF{{0, y}, size}, block.lay(size, FontSizes{})});
        y += size.height();
        if (!block.across.isEmpty()) {
            PageText text = axisTitle({0, y}, block.across, width);
            const double by = width - text.where.width();
            text.where.translate(by, 0);
            text.baseline.rx() += by;
            piece.shapes.texts.push_back(std::move(text));
        }
        piece.height = y + below;
        return piece;
    }

    static PageText axisTitle(QPointF at, const QString& title, double width)
    {
        const auto lines = wrapped(title, width, kSmallText, Weight::Regular);
        return textAt(at, lines.front(), kSmallText, Weight::Regular, Role::InkSoft);
    }

    // On the last line of the heading where it fits, else below.
    void addBeside(Piece& piece, const QString& beside, double pixels) const
    {
        const QRectF last = piece.shapes.texts.back().where;
        const double from = last.right() + kBeside;
        const auto inLine =
            wrapped(beside, std::max(kLeastBeside, m_width - from), kSmallText, Weight::Regular);
        if (inLine.size() == 1 && m_width - from > kLeastBeside) {
            const double y = last.top() + lineHeight(pixels) - lineHeight(kSmallText) - 1;
            piece.shapes.texts.push_back(
                textAt({from, y}, inLine.front(), kSmallText, Weight::Regular, Role::InkSoft));
            return;
        }
        for (const QString& line : wrapped(beside, m_width, kSmallText, Weight::Regular)) {
            piece.shapes.texts.push_back(
                textAt({0, piece.height}, line, kSmallText, Weight::Regular, Role::InkSoft));
            piece.height += lineHeight(kSmallText);
        }
    }

    // What a heading keeps together is put on one page where one can hold it; else it flows as it does. Where
    // that would cost a page it may break below a picture, and what ends it never stands alone.
    void endTogether()
    {
        const std::size_t from = std::exchange(m_together, 0);
        if (from == 0 || m_pieces.size() <= from)
            return;
        double height = 0;
        for (std::size_t i = from - 1; i < m_pieces.size(); ++i)
            height += m_pieces[i].space + m_pieces[i].height;
        if (height > m_tallest)
            return;
        ++m_sections;
        for (std::size_t i = from - 1; i < m_pieces.size(); ++i) {
            m_pieces[i].section = m_sections;
            if (!m_pieces[i].shapes.pictures.empty())
                m_pieces[i].keepsWithNext = false;
        }
        m_pieces[m_pieces.size() - 2].keepsWithNext = true;
        m_pieces.back().keepsWithNext = false;
    }

    Piece linesPiece(const std::vector<QString>& lines, double pixels, Weight weight, Role role) const
    {
        Piece piece;
        for (const QString& line : lines) {
            piece.shapes.texts.push_back(textAt({0, piece.height}, line, pixels, weight, role));
            piece.height += lineHeight(pixels);
        }
        return piece;
    }

    double m_width;
    double m_tallest;
    Measured& m_measured;
    std::size_t m_together = 0; // the piece after the heading that keeps together; 0: none does
    int m_sections = 0;
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

std::vector<Piece> piecesOf(std::span<const Block> blocks, double width, double tallest, Progress* progress)
{
    Measured measured{progress, blocks.size()};
    for (const Block& block : blocks)
        if (const auto* table = std::get_if<TableBlock>(&block))
            measured.of += table->rows.size();
    Pieces pieces{width, tallest, measured};
    for (const Block& block : blocks) {
        if (!measured.goesOnWithOne())
            break;
        std::visit(pieces, block);
    }
    return pieces.take();
}

} // namespace rig
