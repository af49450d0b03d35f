#pragma once

#include "app/pictures/drawing.h"

#include <QFontMetricsF>
#include <QSizeF>

#include <algorithm>
#include <gtest/gtest.h>

namespace rig::test {

// No text is cut, leaves the picture or lies over other text.
inline void expectReadable(const Drawing& drawing, QSizeF size)
{
    const QRectF all{QPointF{}, size};
    EXPECT_FALSE(drawing.labels.empty()) << "there is nothing to read";
    for (std::size_t i = 0; i < drawing.labels.size(); ++i) {
        const DrawnLabel& label = drawing.labels[i];
        const QFontMetricsF metrics{fontOf(label.pixels, label.strong ? Weight::SemiBold : Weight::Regular)};
        EXPECT_TRUE(all.contains(label.where)) << label.text.toStdString();
        const double width = label.wrapped ? 0 : metrics.horizontalAdvance(label.text);
        EXPECT_LE(width, label.where.width() + 0.5) << label.text.toStdString();
        for (std::size_t j = i + 1; j < drawing.labels.size(); ++j)
            EXPECT_FALSE(label.where.intersects(drawing.labels[j].where))
                << label.text.toStdString() << " | " << drawing.labels[j].text.toStdString();
    }
}

inline bool says(const Drawing& drawing, const QString& part)
{
    return std::any_of(drawing.labels.begin(), drawing.labels.end(),
                       [&part](const DrawnLabel& label) { return label.text.contains(part); });
}

} // namespace rig::test
