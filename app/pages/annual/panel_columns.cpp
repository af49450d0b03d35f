#include "app/pages/annual/panel_columns.h"

#include <QHBoxLayout>
#include <QResizeEvent>
#include <QVBoxLayout>

namespace rig {

namespace {

constexpr int kColumnGap = 14;
constexpr double kLeastColumn = 440; // at the usual text size

int heightOf(const QWidget& panel, int width)
{
    return panel.hasHeightForWidth() ? panel.heightForWidth(width) : panel.sizeHint().height();
}

} // namespace

PanelColumns::PanelColumns(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(kColumnGap);
    for (QVBoxLayout** column : {&m_left, &m_right}) {
        *column = new QVBoxLayout;
        (*column)->setSpacing(kColumnGap);
        layout->addLayout(*column, 1);
    }
}

void PanelColumns::add(QWidget* panel)
{
    panel->setParent(this);
    m_panels.push_back(panel);
}

void PanelColumns::setTextScale(double scale)
{
    m_scale = scale;
    arrange();
}

void PanelColumns::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width())
        arrange();
}

void PanelColumns::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (m_isDue)
        arrange();
}

// To measure what nobody sees takes long, and its width is not known yet.
void PanelColumns::arrange()
{
    m_isDue = !isVisible();
    if (m_isDue)
        return;
    const bool isTwo = width() >= 2 * kLeastColumn * m_scale + kColumnGap;
    for (QVBoxLayout* column : {m_left, m_right})
        while (QLayoutItem* item = column->takeAt(0))
            delete item;
    const int columnWidth = (width() - kColumnGap) / 2;
    int left = 0;
    int right = 0;
    for (QWidget* panel : m_panels) {
        const bool isLeft = !isTwo || left <= right;
        (isLeft ? m_left : m_right)->addWidget(panel);
        (isLeft ? left : right) += kColumnGap + heightOf(*panel, columnWidth);
    }
    m_left->addStretch(1);
    m_right->addStretch(1);
    auto* both = static_cast<QHBoxLayout*>(layout());
    both->setStretch(1, isTwo ? 1 : 0);
    both->setSpacing(isTwo ? kColumnGap : 0);
}

} // namespace rig
