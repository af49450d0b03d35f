#include "app/pages/setup/baseline_couplings.h"

#include "app/wording/baseline_words.h"

#include <QSignalBlocker>

#include <algorithm>

namespace rig {

BaselineCouplings::BaselineCouplings(QWidget* parent) : QListWidget{parent}
{
    setObjectName("couplings");
    setAccessibleName(BaselineWords::couplings());
    setWordWrap(true);
    setTextElideMode(Qt::ElideNone);
    setResizeMode(QListView::Adjust);
    setSpacing(2);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    connect(this, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row >= 0)
            emit couplingChosen(m_ids[static_cast<std::size_t>(row)]);
    });
}

void BaselineCouplings::display(const std::vector<Row>& rows, std::optional<CouplingId> chosen)
{
    const QSignalBlocker quiet{this};
    clear();
    m_ids.clear();
    int current = -1;
    for (const Row& row : rows) {
        if (row.id == chosen)
            current = static_cast<int>(m_ids.size());
        m_ids.push_back(row.id);
        auto* item = new QListWidgetItem{row.name + QLatin1Char('\n') + row.detail, this};
        item->setData(Qt::AccessibleTextRole, row.name + QStringLiteral(", ") + row.detail);
    }
    setCurrentRow(current);
    updateGeometry();
}

void BaselineCouplings::focusInEvent(QFocusEvent* event)
{
    // Not the list's own: that makes the first coupling the current one as soon as the keys come here.
    QWidget::focusInEvent(event);
    viewport()->update();
}

QSize BaselineCouplings::sizeHint() const
{
    // Wide enough for the names, as far as the readings beside them leave room; longer ones wrap.
    const int letter = fontMetrics().averageCharWidth();
    int widest = 0;
    for (int row = 0; row < count(); ++row)
        widest = std::max(widest, fontMetrics().horizontalAdvance(item(row)->text().section('\n', 0, 0)));
    return {std::clamp(widest + 40, 15 * letter + 24, 20 * letter + 24), 6 * fontMetrics().height()};
}

} // namespace rig
