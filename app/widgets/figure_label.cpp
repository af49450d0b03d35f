#include "app/widgets/figure_label.h"

#include <QAccessible>

namespace rig {

FigureLabel::FigureLabel(const QString& accessibleName, QWidget* parent) : QLabel{parent}
{
    setTextFormat(Qt::PlainText);
    setAccessibleName(accessibleName);
}

void FigureLabel::setFigure(const QString& text, const QString& figure)
{
    setText(text);
    if (figure == m_figure)
        return;
    QAccessibleTextUpdateEvent changed{this, 0, m_figure, figure};
    changed.setCursorPosition(static_cast<int>(figure.size()));
    m_figure = figure;
    QAccessible::updateAccessibility(&changed);
}

} // namespace rig
