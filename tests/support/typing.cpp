#include "tests/support/typing.h"

#include "tests/support/on_screen.h"

#include <QApplication>
#include <QTest>
#include <QWindow>

#include <gtest/gtest.h>

namespace rig::test {

namespace {

constexpr int kTurns =
    3; // what a timer of zero puts off comes in the next turn, and what that puts off after it
constexpr int kBetweenClicks = 1000;
constexpr int kMostTabs = 80;

} // namespace

void Typist::send(int key, const QString& text, Qt::KeyboardModifiers with)
{
    ++m_presses;
    for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease})
        qt_handleKeyEvent(m_window.window()->windowHandle(), type, key, with, text);
    if (m_pace == Pace::KeyByKey)
        look();
}

namespace {

Qt::Key arrowOf(QChar c)
{
    switch (c.unicode()) {
    case u'↑':
        return Qt::Key_Up;
    case u'↓':
        return Qt::Key_Down;
    case u'←':
        return Qt::Key_Left;
    case u'→':
        return Qt::Key_Right;
    default:
        return Qt::Key_unknown;
    }
}

} // namespace

void Typist::press(Qt::Key which, Qt::KeyboardModifiers with)
{
    const char letter = QTest::keyToAscii(which);
    send(which, letter ? QString{QLatin1Char{letter}} : QString{}, with);
}

void Typist::type(const QString& text)
{
    for (const QChar c : text) {
        if (c == QLatin1Char('\n'))
            press(Qt::Key_Return);
        else if (const Qt::Key arrow = arrowOf(c); arrow != Qt::Key_unknown)
            press(arrow);
        else if (c.unicode() < 128)
            send(QTest::asciiToKey(c.toLatin1()), c, Qt::NoModifier);
        else
            send(Qt::Key_unknown, c, Qt::NoModifier);
    }
}

void Typist::click(const QWidget& part)
{
    ASSERT_TRUE(part.isVisible()) << part.objectName().toStdString();
    const QPoint global = part.mapToGlobal(part.rect().center());
    const QPoint local = part.window()->mapFromGlobal(global);
    m_clickedAt += kBetweenClicks;
    for (const QEvent::Type type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease})
        qt_handleMouseEvent(part.window()->windowHandle(), local, global,
                            type == QEvent::MouseButtonPress ? Qt::LeftButton : Qt::NoButton, Qt::LeftButton,
                            type, Qt::NoModifier, m_clickedAt);
    if (m_pace == Pace::KeyByKey)
        look();
}

void Typist::look()
{
    for (int i = 0; i < kTurns; ++i)
        QApplication::processEvents();
    lookUp();
}

void Typist::goTo(const QString& name)
{
    look();
    auto* widget = m_window.findChild<QWidget*>(name);
    ASSERT_TRUE(widget && widget->isVisible()) << name.toStdString();
    widget->setFocus();
    look();
}

void Typist::tabTo(const QString& name)
{
    look();
    for (int i = 0; i < kMostTabs && focused() != name; ++i) {
        press(Qt::Key_Tab);
        look();
    }
    ASSERT_EQ(focused().toStdString(), name.toStdString());
}

QString Typist::focused() const
{
    const QWidget* focus = m_window.window()->focusWidget();
    return focus ? focus->objectName() : QString{};
}

} // namespace rig::test
