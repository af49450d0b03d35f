#include "app/pictures/lettering.h"

#include <cmath>

namespace rig {

Lettering::Lettering(const FontSizes& fonts)
    : m_fonts{fonts}, m_small{fontOf(fonts.small())}, m_strong{fontOf(fonts.small(), Weight::SemiBold)},
      m_line{std::ceil(m_small.height())}
{
}

double Lettering::widthOf(const QString& text, bool strong) const
{
    return std::ceil((strong ? m_strong : m_small).horizontalAdvance(text)) + 1;
}

QString Lettering::fitted(const QString& text, double width, bool strong) const
{
    if (widthOf(text, strong) <= width)
        return text;
    return (strong ? m_strong : m_small).elidedText(text, Qt::ElideMiddle, width - 1);
}

DrawnLabel Lettering::label(const QRectF& where, const QString& text, Qt::Alignment align, Role role,
                            bool strong) const
{
    DrawnLabel label;
    label.where = where;
    label.text = text;
    label.role = role;
    label.pixels = m_fonts.small();
    label.strong = strong;
    label.align = align | Qt::AlignVCenter;
    return label;
}

DrawnLabel Lettering::sentence(QSizeF size, const QString& text) const
{
    DrawnLabel label;
    label.where = QRectF{QPointF{}, size}.adjusted(4, 4, -4, -4);
    label.text = text;
    label.pixels = m_fonts.body();
    label.align = Qt::AlignCenter;
    label.wrapped = true;
    return label;
}

} // namespace rig
