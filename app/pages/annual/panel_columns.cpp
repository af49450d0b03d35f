#include "app/pages/annual/panel_columns.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace rig {

namespace {

constexpr int kGap = 14;
constexpr double kLeastColumn = 440; // at the usual text size

} // namespace

PanelColumns::PanelColumns(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(kGap);
    for (QVBoxLayout** column : {&m_left, &m_right}) {
        *column = new QVBoxLayout;
        (*column)->setSpacing(kGap);
        layout->addLayout(*column, 1);
    }
}

void PanelColumns::add(QWidget* panel, int column)
{
    panel->setParent(this);
    m_panels.push_back({panel, column});
    m_columns = 0;
}

void PanelColumns::setTextScale(double scale)
{
    m_scale = scale;
    divide();
}

void PanelColumns::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    divide();
}

void PanelColumns::divide()
{
    const int columns = width() >= 2 * kLeastColumn * m_scale + kGap ? 2 : 1;
    if (columns == m_columns)
        return;
    m_columns = columns;
    for (QVBoxLayout* column : {m_left, m_right})
        while (QLayoutItem* item = column->takeAt(0))
            delete item;
    for (const Panel& panel : m_panels)
        (columns == 2 && panel.column == 1 ? m_right : m_left)->addWidget(panel.widget);
    m_left->addStretch(1);
    m_right->addStretch(1);
    auto* both = static_cast<QHBoxLayout*>(layout());
    both->setStretch(1, columns == 2 ? 1 : 0);
    both->setSpacing(columns == 2 ? kGap : 0);
}

} // namespace rig
