#include "app/report/table_pieces.h"

#include <QFontMetricsF>
#include <QRegularExpression>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace rig {

namespace {

// 1/96 inch: 12 is 9 point.
constexpr double kTableText = 12;
constexpr double kCellPad = 5;
constexpr double kRowPad = 3;
constexpr double kTightPad = 1;
constexpr double kTickPad = 5; // boxes to tick stand apart
constexpr double kTableSpace = 6;
constexpr double kTightSpace = 4;
constexpr double kMark = 12;
constexpr double kMarkRoom = 17;
constexpr std::size_t kShortTable = 6;    // rows; kept on one page
constexpr std::size_t kTableOfWords = 40; // rows at most; longer ones are lists of figures

// Room for the number of a page before it is known.
QString widestPage()
{
    return QStringLiteral("000");
}

// A line of a cell after wrapping.
struct CellLine
{
    QString text;
    const CellText* style = nullptr;
    bool isFirst = false; // box and mark stand at the first line only
};

std::vector<CellLine> linesIn(const Cell& cell, double width)
{
    std::vector<CellLine> lines;
    for (const CellText& one : cell) {
        if (one.picture) {
            lines.push_back({{}, &one, true});
            continue;
        }
        if (one.pageOf != 0) {
            lines.push_back({widestPage(), &one, true});
            continue;
        }
        const double room = width - 2 * kCellPad - (one.mark ? kMarkRoom : 0) - (one.box ? kTickRoom : 0);
        const Weight weight = one.strong ? Weight::SemiBold : Weight::Regular;
        bool isFirst = true;
        for (const QString& line : wrapped(one.text, room, kTableText, weight)) {
            lines.push_back({line, &one, isFirst});
            isFirst = false;
        }
    }
    return lines;
}

bool hasBoxes(const TableBlock& block)
{
    for (const std::vector<Cell>& row : block.rows)
        for (const Cell& cell : row)
            if (std::ranges::any_of(cell, &CellText::box))
                return true;
    return false;
}

class TablePieces
{
public:
    TablePieces(double width, double tallest, Measured* measured)
        : m_width{width}, m_tallest{tallest}, m_measured{measured}
    {
    }

    std::vector<Piece> of(const TableBlock& block)
    {
        m_isTight = block.isTight;
        m_hasBoxes = hasBoxes(block);
        const std::vector<double> widths = widthsOf(block);
        const std::shared_ptr<const Piece> head = headOf(block, widths);
        const bool isShown =
            std::ranges::any_of(block.columns, [](const Column& column) { return !column.head.isEmpty(); });
        if (isShown)
            m_pieces.push_back(*head);
        const double tallest = head ? m_tallest - head->height : m_tallest;
        for (const std::vector<Cell>& row : block.rows) {
            if (m_measured && !m_measured->goesOnWithOne())
                break;
            for (Piece& piece : rowPieces(row, widths, tallest)) {
                piece.head = head;
                piece.space = !isShown && &row == &block.rows.front() ? spaceAbove() : 0;
                piece.keepsWithNext = staysWithNext(block.rows, row);
                m_pieces.push_back(std::move(piece));
            }
        }
        return std::move(m_pieces);
    }

private:
    // Short tables stay whole; of the others no row stands alone below its head, or on a page of its own.
    static bool staysWithNext(const std::vector<std::vector<Cell>>& rows, const std::vector<Cell>& row)
    {
        const auto place = static_cast<std::size_t>(&row - rows.data());
        if (rows.size() <= kShortTable)
            return place + 1 < rows.size();
        return place == 0 || place + 2 == rows.size();
    }

    // By their shares, but that in a table of words no column is narrower than its longest word: a language
    // with longer words would have them broken. The other columns give it, each of what it has to spare.
    std::vector<double> widthsOf(const TableBlock& block) const
    {
        const std::vector<double> shares = sharesOf(block.columns);
        if (block.rows.size() > kTableOfWords)
            return shares;
        std::vector<double> widths = shares;
        std::vector<double> spare;
        double lacking = 0;
        for (std::size_t i = 0; i < widths.size(); ++i) {
            const double needed = longestWordIn(block, i);
            lacking += std::max(0.0, needed - widths[i]);
            spare.push_back(std::max(0.0, widths[i] - needed));
            widths[i] = std::max(widths[i], needed);
        }
        const double toSpare = std::accumulate(spare.begin(), spare.end(), 0.0);
        if (lacking > toSpare)
            return shares;
        for (std::size_t i = 0; i < widths.size() && lacking > 0; ++i)
            widths[i] -= lacking * spare[i] / toSpare;
        return widths;
    }

    std::vector<double> sharesOf(const std::vector<Column>& columns) const
    {
        const double all =
            std::accumulate(columns.begin(), columns.end(), 0.0,
                            [](double sum, const Column& column) { return sum + column.share; });
        std::vector<double> widths;
        for (const Column& column : columns)
            widths.push_back(m_width * column.share / all);
        return widths;
    }

    // With what stands around it in its cell.
    static double longestWordIn(const TableBlock& block, std::size_t column)
    {
        double longest = 0;
        for (const std::vector<Cell>& row : block.rows)
            if (column < row.size())
                for (const CellText& one : row[column])
                    longest = std::max(longest, longestWordIn(one));
        return longest + 2 * kCellPad + 1;
    }

    static double longestWordIn(const CellText& cell)
    {
        static const QRegularExpression gap{QStringLiteral("[ \\n]+")};
        const QFontMetricsF metrics{
            plainFontOf(kTableText, cell.strong ? Weight::SemiBold : Weight::Regular)};
        double longest = 0;
        for (const QString& word : cell.text.split(gap))
            longest = std::max(longest, metrics.horizontalAdvance(word));
        return longest + (cell.mark ? kMarkRoom : 0) + (cell.box ? kTickRoom : 0);
    }

    // The heads of the columns or, without them, what stands above when the table goes on; null without
    // either.
    std::shared_ptr<const Piece> headOf(const TableBlock& block, const std::vector<double>& widths) const
    {
        const auto named = [](const QString& text) {
            CellText name;
            name.text = text;
            name.role = Role::InkSoft;
            name.strong = true;
            return Cell{name};
        };
        std::vector<Cell> names;
        bool isEmpty = true;
        for (const Column& column : block.columns) {
            names.push_back(named(column.head));
            isEmpty = isEmpty && column.head.isEmpty();
        }
        if (isEmpty && block.continued.isEmpty())
            return nullptr;
        auto head = isEmpty ? rowPieces({named(block.continued)}, {m_width}, m_tallest).front()
                            : rowPieces(names, widths, m_tallest).front();
        head.space = kTableSpace;
        head.keepsWithNext = true;
        for (PageLine& rule : head.shapes.lines)
            rule.role = Role::InkSoft;
        return std::make_shared<Piece>(std::move(head));
    }

    // One piece, or several when the row is higher than `tallest`.
    std::vector<Piece> rowPieces(const std::vector<Cell>& row, const std::vector<double>& widths,
                                 double tallest) const
    {
        std::vector<std::vector<CellLine>> cells;
        std::size_t most = 1;
        for (std::size_t i = 0; i < row.size() && i < widths.size(); ++i) {
            cells.push_back(linesIn(row[i], widths[i]));
            most = std::max(most, cells.back().size());
        }
        const double room = std::max(0.0, tallest - 2 * rowPad() - 1);
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
            double y = rowPad();
            for (std::size_t at = from; at < std::min(to, cells[i].size()); ++at, y += high)
                addCellLine(piece.shapes, cells[i][at], {x + kCellPad, y}, widths[i] - 2 * kCellPad);
            x += widths[i];
        }
        piece.height = 2 * rowPad() + high * static_cast<double>(to - from) + 1;
        if (!m_isTight)
            piece.shapes.lines.push_back(
                {{0, piece.height - 0.5}, {m_width, piece.height - 0.5}, Role::Line, 0.75});
        return piece;
    }

    static void addCellLine(PrintedPage& shapes, const CellLine& line, QPointF at, double width)
    {
        const CellText& style = *line.style;
        if (style.picture) {
            const QRectF where{at + QPointF{0, 1}, QSizeF{width, lineHeight(kTableText) - 2}};
            shapes.pictures.push_back({where, style.picture(where.size(), FontSizes{})});
            return;
        }
        if (style.box && line.isFirst)
            shapes.boxes.push_back(
                {{at.x() + 0.5, at.y() + (lineHeight(kTableText) - kTickBox) / 2, kTickBox, kTickBox},
                 Role::Ink});
        if (style.box)
            at.rx() += kTickRoom;
        if (style.mark && line.isFirst)
            shapes.marks.push_back(
                {{at.x(), at.y() + (lineHeight(kTableText) - kMark) / 2, kMark, kMark}, *style.mark});
        if (style.mark)
            at.rx() += kMarkRoom;
        if (line.text.isEmpty())
            return;
        PageText text =
            textAt(at, line.text, kTableText, style.strong ? Weight::SemiBold : Weight::Regular, style.role);
        text.struck = style.struck;
        text.pageOf = style.pageOf;
        shapes.texts.push_back(std::move(text));
    }

    double spaceAbove() const { return m_isTight ? kTightSpace : kTableSpace; }

    double rowPad() const
    {
        if (m_hasBoxes)
            return kTickPad;
        return m_isTight ? kTightPad : kRowPad;
    }

    double m_width;
    double m_tallest;
    Measured* m_measured;
    bool m_isTight = false;
    bool m_hasBoxes = false;
    std::vector<Piece> m_pieces;
};

} // namespace

std::vector<Piece> tablePieces(const TableBlock& block, double width, double tallest, Measured* measured)
{
    return TablePieces{width, tallest, measured}.of(block);
}

} // namespace rig
