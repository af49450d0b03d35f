#include "tests/support/clipped.h"

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QLabel>
#include <QScrollBar>

#include <gtest/gtest.h>

namespace rig::test {

namespace {

// The viewport of something that scrolls up and down.
bool scrollsDown(const QWidget& widget)
{
    const auto* area = qobject_cast<const QAbstractScrollArea*>(widget.parentWidget());
    return area && area->viewport() == &widget;
}

// Where it lies beyond what holds it, in words; empty where it does not.
std::string beyond(const QWidget& part, const QWidget& in)
{
    for (const QWidget* holder = part.parentWidget(); holder; holder = holder->parentWidget()) {
        const QRect own{part.mapTo(holder, QPoint{}), part.size()};
        const bool fits = scrollsDown(*holder) ? own.left() >= 0 && own.right() < holder->width()
                                               : holder->rect().contains(own);
        if (!fits)
            return "lies beyond " + (holder->objectName().isEmpty() ? holder->metaObject()->className()
                                                                    : holder->objectName().toStdString());
        if (holder == &in || scrollsDown(*holder))
            break;
    }
    return {};
}

std::string inPixels(int width, int height)
{
    return std::to_string(width) + "x" + std::to_string(height);
}

std::string tooSmall(const QAbstractButton& button)
{
    const QSize needs = button.minimumSizeHint();
    if (button.width() >= needs.width() && button.height() >= needs.height())
        return {};
    return inPixels(button.width(), button.height()) + " for " + inPixels(needs.width(), needs.height());
}

std::string tooSmall(const QLabel& label)
{
    const int height = label.wordWrap() ? label.heightForWidth(label.width()) : label.sizeHint().height();
    const int width = label.wordWrap() ? 0 : label.sizeHint().width();
    if (label.width() >= width && label.height() >= height)
        return {};
    return inPixels(label.width(), label.height()) + " for " + inPixels(width, height);
}

template <typename T> int lookThrough(const QWidget& in, std::vector<std::string>& found)
{
    int looked = 0;
    for (const T* one : in.findChildren<T*>()) {
        if (!one->isVisible() || one->text().isEmpty())
            continue;
        ++looked;
        for (const std::string& wrong : {tooSmall(*one), beyond(*one, in)})
            if (!wrong.empty())
                found.push_back("“" + one->text().toStdString() + "” (" + one->objectName().toStdString() +
                                "): " + wrong);
    }
    return looked;
}

} // namespace

Clipping clippingOn(const QWidget& in)
{
    Clipping clipping;
    clipping.buttons = lookThrough<QAbstractButton>(in, clipping.found);
    clipping.labels = lookThrough<QLabel>(in, clipping.found);
    return clipping;
}

std::vector<std::string> beyondReachOn(const QWidget& in)
{
    std::vector<std::string> found;
    for (const QWidget* one : in.findChildren<QWidget*>()) {
        const QWidget* holder = one->parentWidget();
        if (!one->isVisible() || one->isWindow() || holder->rect().contains(one->geometry()))
            continue;
        const auto* area = qobject_cast<const QAbstractScrollArea*>(holder->parentWidget());
        const bool scrolls = area && area->viewport() == holder;
        const bool isReached =
            scrolls && (one->height() <= holder->height() || area->verticalScrollBar()->isVisible()) &&
            (one->width() <= holder->width() || area->horizontalScrollBar()->isVisible());
        if (!isReached)
            found.push_back(one->objectName().toStdString() + " (" + one->metaObject()->className() +
                            ") beyond " + holder->objectName().toStdString() + " (" +
                            holder->metaObject()->className() + ")");
    }
    return found;
}

void expectNothingClipped(const QWidget& in, int atLeast)
{
    const Clipping clipping = clippingOn(in);
    EXPECT_GE(clipping.buttons + clipping.labels, atLeast)
        << clipping.buttons << " buttons and " << clipping.labels << " labels were seen";
    for (const std::string& one : clipping.found)
        ADD_FAILURE() << one;
}

} // namespace rig::test
