#include "app/widgets/pressable.h"

#include "app/widgets/focus_ring.h"
#include "app/widgets/parts.h"

#include <QChildEvent>
#include <QKeyEvent>
#include <QPainter>

#include <algorithm>

namespace rig {

Pressable::Pressable(QWidget* parent) : QAbstractButton{parent}
{
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setAttribute(Qt::WA_Hover);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

void Pressable::setLook(const Look& look)
{
    m_look = look;
    update();
}

void Pressable::paintEvent(QPaintEvent*)
{
    if (!underMouse() && !hasFocus())
        return;
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_look.theme.color(Role::AccentFill));
    painter.drawRoundedRect(QRectF{rect()}.adjusted(1, 1, -1, -1), 5, 5);
    if (hasFocus())
        paintFocusRing(painter, rect(), m_look.theme);
}

void Pressable::keyPressEvent(QKeyEvent* event)
{
    if (isEnter(*event))
        click();
    else
        QAbstractButton::keyPressEvent(event);
}

// A click on a word inside is one on the whole.
void Pressable::childEvent(QChildEvent* event)
{
    QAbstractButton::childEvent(event);
    if (auto* inside = qobject_cast<QWidget*>(event->child()); inside && event->added())
        inside->setAttribute(Qt::WA_TransparentForMouseEvents);
}

Pressable* nextOf(const QList<Pressable*>& links)
{
    if (links.isEmpty())
        return nullptr;
    const auto now = std::ranges::find_if(links, [](const Pressable* one) { return one->hasFocus(); });
    return now == links.end() || now + 1 == links.end() ? links.front() : *(now + 1);
}

} // namespace rig
