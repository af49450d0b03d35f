#pragma once

#include "app/theme/theme.h"
#include "app/widgets/work_behind.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QTest>
#include <QTimer>
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

// The one that is seen where several panels have a part of that name.
template <typename T = QWidget> T& part(const QWidget& in, const char* objectName)
{
    const QList<T*> all = in.findChildren<T*>(QLatin1String(objectName));
    if (all.isEmpty()) {
        ADD_FAILURE() << "no " << objectName;
        std::abort();
    }
    const auto seen = std::find_if(all.begin(), all.end(), [](const T* one) { return one->isVisible(); });
    return seen == all.end() ? *all.front() : **seen;
}

inline std::string textOf(const QWidget& in, const char* objectName)
{
    return part<QLabel>(in, objectName).text().toStdString();
}

// As whoever looks at the screen between two keys: what goes on behind a page is done, and what was typed
// before that is no longer typed ahead.
inline void lookUp()
{
    QApplication::processEvents();
    for (const QWidget* window : QApplication::topLevelWidgets())
        WorkBehind::finishAll(*window);
    QApplication::processEvents();
    for (const QWidget* window : QApplication::topLevelWidgets())
        for (auto* quiet : window->findChildren<QTimer*>(QStringLiteral("typedAhead")))
            quiet->stop();
}

// Looks up after each key; \r is Return.
inline void typeSlowly(QWidget& widget, const char* keys)
{
    for (const char* key = keys; *key; ++key) {
        if (*key == '\r')
            QTest::keyClick(&widget, Qt::Key_Return);
        else
            QTest::keyClick(&widget, *key);
        lookUp();
    }
}

// As a press on that entry does.
inline void chooseIn(const QWidget& in, const char* box, int index)
{
    auto& choice = part<QComboBox>(in, box);
    choice.setCurrentIndex(index);
    emit choice.activated(index);
}

inline void typeOn(QWidget& widget, const char* keys)
{
    QTest::keyClicks(&widget, QLatin1String(keys));
}

} // namespace rig::test
