#pragma once

#include "app/report/page_flow.h"

#include <QStringList>

#include <gtest/gtest.h>

namespace rig::test {

inline QStringList textsOf(const PrintedPage& page)
{
    QStringList texts;
    for (const PageText& text : page.texts)
        texts << text.text;
    return texts;
}

inline QStringList textsOf(const PageFlow& flow)
{
    QStringList texts;
    for (const PrintedPage& page : flow.pages)
        texts << textsOf(page);
    return texts;
}

inline QString wordsOf(const PageFlow& flow)
{
    return textsOf(flow).join(QLatin1Char(' '));
}

inline int timesIn(const QStringList& texts, const QString& text)
{
    return static_cast<int>(texts.count(text));
}

// Nothing lies over anything else, and nothing beyond the margins.
inline void expectWellPlaced(const PageFlow& flow)
{
    EXPECT_FALSE(textsOf(flow).isEmpty()) << "nothing is printed";
    const QSizeF size = sizeOf(flow.paper);
    const QRectF within{flow.body.left() - 0.5, 30, flow.body.width() + 1, size.height() - 60};
    for (const PrintedPage& page : flow.pages) {
        std::vector<QRectF> places;
        for (const PageText& text : page.texts) {
            EXPECT_TRUE(within.contains(text.where)) << text.text.toStdString();
            places.push_back(text.where);
        }
        for (const PagePicture& picture : page.pictures) {
            EXPECT_TRUE(flow.body.adjusted(-0.5, -0.5, 0.5, 0.5).contains(picture.where));
            places.push_back(picture.where);
        }
        for (const PageBox& box : page.boxes)
            EXPECT_TRUE(flow.body.adjusted(-0.5, -0.5, 0.5, 0.5).contains(box.where));
        for (std::size_t i = 0; i < places.size(); ++i)
            for (std::size_t j = i + 1; j < places.size(); ++j)
                EXPECT_FALSE(places[i].adjusted(0.1, 0.1, -0.1, -0.1).intersects(places[j]))
                    << "two things at " << places[i].x() << ", " << places[i].y();
    }
}

} // namespace rig::test
