#include "app/widgets/wrap_layout.h"

#include <algorithm>

namespace rig {

WrapLayout::WrapLayout(int gap, bool equalWidths, QWidget* parent)
    : QLayout{parent}, m_gap{gap}, m_equalWidths{equalWidths}
{
}

WrapLayout::~WrapLayout()
{
    for (QLayoutItem* item : m_items)
        delete item;
}

void WrapLayout::addItem(QLayoutItem* item)
{
    m_items.push_back(item);
    invalidate();
}

int WrapLayout::count() const
{
    return static_cast<int>(m_items.size());
}

QLayoutItem* WrapLayout::itemAt(int index) const
{
    return index >= 0 && index < count() ? m_items[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* WrapLayout::takeAt(int index)
{
    QLayoutItem* item = itemAt(index);
    if (item)
        m_items.erase(m_items.begin() + index);
    invalidate();
    return item;
}

std::vector<WrapLayout::Row> WrapLayout::rowsIn(int width) const
{
    std::vector<Row> rows;
    int used = 0;
    int widest = 0;
    for (QLayoutItem* item : m_items) {
        if (item->isEmpty())
            continue;
        const int own = item->minimumSize().expandedTo(item->sizeHint()).width();
        widest = std::max(widest, own);
        const int next = static_cast<int>(rows.empty() ? 0 : rows.back().size()) + 1;
        // Equal shares need room for the widest; otherwise each takes what it asks for.
        const int needed = m_equalWidths ? next * widest + (next - 1) * m_gap : used + m_gap + own;
        if (rows.empty() || needed > width) {
            rows.emplace_back();
            used = own;
            widest = own;
        } else {
            used = needed;
        }
        rows.back().push_back(item);
    }
    return rows;
}

int WrapLayout::itemWidth(const Row& row, const QLayoutItem& item, int width) const
{
    const int count = static_cast<int>(row.size());
    if (m_equalWidths)
        return (width - (count - 1) * m_gap) / count;
    return std::min(width, item.sizeHint().width());
}

int WrapLayout::rowHeight(const Row& row, int width) const
{
    int height = 0;
    for (const QLayoutItem* item : row) {
        const int own = itemWidth(row, *item, width);
        height = std::max(height,
                          item->hasHeightForWidth() ? item->heightForWidth(own) : item->sizeHint().height());
    }
    return height;
}

int WrapLayout::heightForWidth(int width) const
{
    const auto known = m_heights.find(width);
    return known != m_heights.end() ? known->second : m_heights.emplace(width, heightIn(width)).first->second;
}

int WrapLayout::heightIn(int width) const
{
    const QMargins margins = contentsMargins();
    const int inner = width - margins.left() - margins.right();
    int height = margins.top() + margins.bottom();
    const std::vector<Row> rows = rowsIn(inner);
    for (const Row& row : rows)
        height += rowHeight(row, inner);
    return height + m_gap * std::max(0, static_cast<int>(rows.size()) - 1);
}

void WrapLayout::setGeometry(const QRect& rect)
{
    QLayout::setGeometry(rect);
    const QRect inner = rect.marginsRemoved(contentsMargins());
    int top = inner.top();
    for (const Row& row : rowsIn(inner.width())) {
        const int height = rowHeight(row, inner.width());
        int left = inner.left();
        for (QLayoutItem* item : row) {
            const int width = itemWidth(row, *item, inner.width());
            item->setGeometry({left, top, width, height});
            left += width + m_gap;
        }
        top += height + m_gap;
    }
}

void WrapLayout::invalidate()
{
    m_heights.clear();
    m_minimum.reset();
    QLayout::invalidate();
}

QSize WrapLayout::minimumSize() const
{
    if (m_minimum)
        return *m_minimum;
    QSize size;
    for (const QLayoutItem* item : m_items)
        size = size.expandedTo(item->minimumSize());
    const QMargins margins = contentsMargins();
    m_minimum = size + QSize{margins.left() + margins.right(), margins.top() + margins.bottom()};
    return *m_minimum;
}

QSize WrapLayout::sizeHint() const
{
    return minimumSize();
}

} // namespace rig
