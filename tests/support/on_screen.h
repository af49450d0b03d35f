#pragma once

#include "app/theme/theme.h"

#include <QAbstractButton>
#include <QApplication>
#include <QFontMetrics>
#include <QLabel>
#include <QTest>
#include <QWidget>

#include <gtest/gtest.h>
#include <string>

namespace rig::test {

// Shows a widget as the program's window would: style sheet, text size, window size. Offscreen, no waiting.
inline void showAt(QWidget& widget, QSize size, const Look& look = {})
{
    widget.setStyleSheet(styleSheetFor(look.theme, look.fonts));
    widget.resize(size);
    widget.show();
    QApplication::processEvents();
}

inline Look lookAt(double scale)
{
    Look look;
    look.fonts.scale = scale;
    return look;
}

template <typename T = QWidget> T& part(const QWidget& in, const char* objectName)
{
    T* found = in.findChild<T*>(QLatin1String(objectName));
    if (!found) {
        ADD_FAILURE() << "no " << objectName;
        std::abort();
    }
    return *found;
}

inline std::string textOf(const QWidget& in, const char* objectName)
{
    return part<QLabel>(in, objectName).text().toStdString();
}

inline void typeOn(QWidget& widget, const char* keys)
{
    QTest::keyClicks(&widget, QLatin1String(keys));
}

// Every button that is seen holds its text and lies within what holds it; every label has room for its words.
inline void expectNothingClipped(const QWidget& in)
{
    for (const QAbstractButton* button : in.findChildren<QAbstractButton*>()) {
        if (!button->isVisible())
            continue;
        EXPECT_GE(button->width(), button->minimumSizeHint().width()) << button->text().toStdString();
        EXPECT_GE(button->height(), button->minimumSizeHint().height()) << button->text().toStdString();
        EXPECT_TRUE(button->parentWidget()->rect().contains(button->geometry()))
            << button->text().toStdString();
    }
    for (const QLabel* label : in.findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty())
            continue;
        if (label->wordWrap())
            EXPECT_GE(label->height(), label->heightForWidth(label->width())) << label->text().toStdString();
        else
            EXPECT_GE(label->width(), label->sizeHint().width()) << label->text().toStdString();
        EXPECT_TRUE(label->parentWidget()->rect().contains(label->geometry())) << label->text().toStdString();
    }
}

} // namespace rig::test
