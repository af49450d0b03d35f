#pragma once

#include "app/pictures/drawing.h"

#include <QFontMetricsF>

namespace rig {

// Small text in a picture: how much room it takes, and the label it becomes.
class Lettering
{
public:
    explicit Lettering(const FontSizes& fonts);

    double scale() const { return m_fonts.scale; }
    double line() const { return m_line; } // height of a line
    double widthOf(const QString& text, bool strong = false) const;
    // The text, or its beginning, an ellipsis and its end when it is wider than that.
    QString fitted(const QString& text, double width, bool strong = false) const;
    DrawnLabel label(const QRectF& where, const QString& text, Qt::Alignment align, Role role = Role::InkSoft,
                     bool strong = false) const;
    // A sentence that wraps, in the middle of what there is: all that an empty picture shows.
    DrawnLabel sentence(QSizeF size, const QString& text) const;

private:
    FontSizes m_fonts;
    QFontMetricsF m_small;
    QFontMetricsF m_strong;
    double m_line = 0;
};

} // namespace rig
