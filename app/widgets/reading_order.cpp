#include "app/widgets/reading_order.h"

#include <QFormLayout>
#include <QGridLayout>
#include <QScrollArea>

#include <algorithm>
#include <set>
#include <utility>

namespace rig {

namespace {

// Row and column, where a layout has them; else the parts stand in the order in which they were put there.
std::pair<int, int> cellOf(const QLayout& layout, int index)
{
    int row = 0;
    int column = index;
    if (const auto* grid = qobject_cast<const QGridLayout*>(&layout)) {
        int rows = 0;
        int columns = 0;
        grid->getItemPosition(index, &row, &column, &rows, &columns);
    } else if (const auto* form = qobject_cast<const QFormLayout*>(&layout)) {
        QFormLayout::ItemRole role = QFormLayout::LabelRole;
        form->getItemPosition(index, &row, &role);
        column = static_cast<int>(role);
    }
    return {row, column};
}

bool isStop(const QWidget& one)
{
    return (one.focusPolicy() & Qt::TabFocus) == Qt::TabFocus && one.isEnabled() && !one.focusProxy();
}

class Reader
{
public:
    explicit Reader(const QWidget* from) : m_from{from} {}

    void read(QWidget& one)
    {
        if (!one.isWindow() && (isStop(one) || &one == m_from))
            m_stops.push_back(&one);
        std::set<const QWidget*> read;
        if (one.layout())
            readLayout(*one.layout(), read);
        for (QObject* child : one.children())
            readChild(qobject_cast<QWidget*>(child), read);
    }
    std::vector<QWidget*> stops() && { return std::move(m_stops); }

private:
    void readLayout(const QLayout& layout, std::set<const QWidget*>& done)
    {
        std::vector<std::pair<std::pair<int, int>, int>> order;
        for (int i = 0; i < layout.count(); ++i)
            order.emplace_back(cellOf(layout, i), i);
        std::ranges::stable_sort(order);
        for (const auto& [place, index] : order) {
            QLayoutItem* item = layout.itemAt(index);
            if (const QLayout* inner = item->layout())
                readLayout(*inner, done);
            else
                readChild(item->widget(), done);
        }
    }

    void readChild(QWidget* child, std::set<const QWidget*>& done)
    {
        if (child && !child->isWindow() && child->isVisible() && done.insert(child).second)
            read(*child);
    }

    const QWidget* m_from = nullptr; // also where Tab would not go to it
    std::vector<QWidget*> m_stops;
};

std::vector<QWidget*> stopsFrom(QWidget& in, const QWidget* from)
{
    Reader reader{from};
    reader.read(in);
    return std::move(reader).stops();
}

void bringIntoView(QWidget& one)
{
    for (QWidget* around = one.parentWidget(); around; around = around->parentWidget())
        if (auto* area = qobject_cast<QScrollArea*>(around))
            area->ensureWidgetVisible(&one);
}

} // namespace

std::vector<QWidget*> inReadingOrder(QWidget& in)
{
    return stopsFrom(in, nullptr);
}

bool goOnAsRead(QWidget& in, bool next)
{
    const QWidget* from = in.focusWidget();
    const std::vector<QWidget*> stops = stopsFrom(in, from);
    const std::size_t count = stops.size();
    const auto found = std::ranges::find(stops, from);
    std::size_t at =
        found == stops.end() ? (next ? count - 1 : 0) : static_cast<std::size_t>(found - stops.begin());
    for (std::size_t i = 0; i < count; ++i) {
        at = (at + (next ? 1 : count - 1)) % count;
        if (stops[at] == from || !isStop(*stops[at]))
            continue;
        stops[at]->setFocus(next ? Qt::TabFocusReason : Qt::BacktabFocusReason);
        bringIntoView(*stops[at]);
        return true;
    }
    return false;
}

} // namespace rig
