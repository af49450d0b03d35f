#include "app/widgets/asked_frame.h"

#include <QPainter>

namespace rig {

namespace {

constexpr double kAskedFrame = 2; // pixels
constexpr double kCorner = 8;     // the style sheet's

} // namespace

AskedFrame::AskedFrame(QWidget* parent) : QFrame{parent}
{
    setProperty("card", true);
}

void AskedFrame::setAsked(bool asked)
{
    if (m_isAsked != asked)
        update();
    m_isAsked = asked;
}

// Painted here: a frame of another style would have everything around it laid out anew at every answer.
void AskedFrame::paintEvent(QPaintEvent* event)
{
    QFrame::paintEvent(event);
    if (!m_isAsked)
        return;
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{palette().color(QPalette::Highlight), kAskedFrame});
    painter.drawRoundedRect(QRectF{rect()}.adjusted(1, 1, -1, -1), kCorner, kCorner);
}

} // namespace rig
