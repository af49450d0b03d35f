#include "app/report/form_piece.h"

#include <algorithm>

namespace rig {

namespace {

// 1/96 inch: 12 is 9 point, a row 6.3 mm: for a pencil in a cold hand.
constexpr double kFormText = 12;
constexpr double kRow = 24;
constexpr double kBetween = 12;
constexpr double kAboutShare = 0.34;
constexpr double kBeforeLine = 5;

class FormRows
{
public:
    FormRows(double left, double right) : m_left{left}, m_right{right}, m_x{left} {}

    void add(const FormItem& item)
    {
        const double before = item.line > 0 ? 0 : kTickRoom;
        const double after = item.line > 0 ? kBeforeLine + item.line : 0;
        const double text = textAt({}, item.text, kFormText).where.width();
        if (m_x > m_left && m_x + before + text + after > m_right)
            beginRow();
        if (item.line <= 0)
            m_piece.shapes.boxes.push_back(
                {{m_x + 0.5, m_y + (kRow - kTickBox) / 2, kTickBox, kTickBox}, Role::Ink});
        m_x += before;
        addText(item.text);
        if (item.line > 0)
            addLine(item.line);
        m_x += kBetween;
    }

    Piece take(double least)
    {
        m_piece.height = std::max(least, m_y + kRow);
        return std::move(m_piece);
    }

    void write(const QString& text, QPointF at)
    {
        m_piece.shapes.texts.push_back(
            textAt({at.x(), at.y() + (kRow - lineHeight(kFormText)) / 2}, text, kFormText));
    }

private:
    void beginRow()
    {
        m_y += kRow;
        m_x = m_left;
    }

    // One line but for a text that is longer than the form is wide.
    void addText(const QString& text)
    {
        if (text.isEmpty())
            return;
        bool isFirst = true;
        const double indent = m_x;
        for (const QString& line : wrapped(text, m_right - indent, kFormText, Weight::Regular)) {
            if (!isFirst)
                m_y += lineHeight(kFormText);
            isFirst = false;
            write(line, {indent, m_y});
            m_x = m_piece.shapes.texts.back().where.right();
        }
    }

    // To write on; what is left of the row would be of no use beside it, so a long one takes all of it.
    void addLine(double length)
    {
        m_x += kBeforeLine;
        if (m_x + length > m_right)
            beginRow();
        const double to = m_right - (m_x + length) < kLeast ? m_right : m_x + length;
        m_piece.shapes.lines.push_back({{m_x, m_y + kRow - 4}, {to, m_y + kRow - 4}, Role::InkSoft, 0.75});
        m_x = to;
    }

    static constexpr double kLeast = 60;

    Piece m_piece;
    double m_left;
    double m_right;
    double m_x;
    double m_y = 0;
};

} // namespace

Piece formPiece(const FormBlock& block, double width)
{
    const double left = block.about.isEmpty() ? 0 : width * kAboutShare;
    FormRows rows{left, width};
    double about = 0;
    if (!block.about.isEmpty())
        for (const QString& line : wrapped(block.about, left - kBetween, kFormText, Weight::Regular)) {
            rows.write(line, {0, about});
            about += lineHeight(kFormText);
        }
    for (const FormItem& item : block.items)
        rows.add(item);
    Piece piece = rows.take(about > 0 ? about + kRow - lineHeight(kFormText) : 0);
    piece.keepsWithNext = block.staysWithNext;
    return piece;
}

} // namespace rig
