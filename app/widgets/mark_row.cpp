#include "app/widgets/mark_row.h"

#include "app/widgets/focus_ring.h"
#include "app/widgets/parts.h"
#include "app/widgets/plain_tip.h"

#include <QKeyEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace rig {

MarkRow::MarkRow(QWidget* parent) : QAbstractButton{parent}
{
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void MarkRow::show(MarkShape shape, Role role, const QString& title, const QString& detail)
{
    m_shape = shape;
    m_role = role;
    m_title = title;
    m_detail = detail;
    setAccessibleName(title);
    setAccessibleDescription(detail);
    setToolTip(plainTip(title + QLatin1Char('\n') + detail));
    if (m_wraps)
        updateGeometry();
    update();
}

void MarkRow::setLook(const Look& look)
{
    m_look = look;
    updateGeometry();
    update();
}

QSize MarkRow::sizeHint() const
{
    return {static_cast<int>(240 * m_look.fonts.scale),
            static_cast<int>(std::lround(50 * m_look.fonts.scale))};
}

void MarkRow::setWraps(bool wraps)
{
    m_wraps = wraps;
    QSizePolicy policy = sizePolicy();
    // A fixed one would hold it at the height of two lines.
    policy.setVerticalPolicy(wraps ? QSizePolicy::Minimum : QSizePolicy::Fixed);
    policy.setHeightForWidth(wraps);
    setSizePolicy(policy);
}

double MarkRow::textLeft() const
{
    return 38 * m_look.fonts.scale; // the mark, and room around it
}

// Of one line the height that it always had.
double MarkRow::linesHigh(const QString& text, const QFont& font, double width) const
{
    if (!m_wraps)
        return 20 * m_look.fonts.scale;
    const QRectF room{0, 0, width, 10'000};
    return std::max(20 * m_look.fonts.scale,
                    QFontMetricsF{font}.boundingRect(room, Qt::TextWordWrap, text).height());
}

int MarkRow::heightForWidth(int width) const
{
    const double room = width - textLeft() - 8;
    const double lines = linesHigh(m_title, fontOf(m_look.fonts.body(), Weight::SemiBold), room) +
                         linesHigh(m_detail, fontOf(m_look.fonts.small()), room);
    return std::max(sizeHint().height(), static_cast<int>(std::ceil(lines + 10 * m_look.fonts.scale)));
}

QSize MarkRow::minimumSizeHint() const
{
    return {120, sizeHint().height()};
}

void MarkRow::keyPressEvent(QKeyEvent* event)
{
    if (isEnter(*event))
        click();
    else
        QAbstractButton::keyPressEvent(event);
}

void MarkRow::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const double scale = m_look.fonts.scale;
    const QRectF frame = QRectF{rect()}.adjusted(1, 1, -1, -1);
    if (isChecked() || underMouse()) {
        painter.setPen(isChecked() ? QPen{m_look.theme.color(Role::Accent), 1.6} : QPen{Qt::NoPen});
        painter.setBrush(m_look.theme.color(Role::AccentFill));
        painter.drawRoundedRect(frame, 6, 6);
    }
    if (hasFocus())
        paintFocusRing(painter, frame.adjusted(2, 2, -2, -2), m_look.theme); // within that of the chosen one
    const double side = 16 * scale;
    const QRectF mark{12 * scale, (height() - side) / 2, side, side};
    paintMark(painter, m_shape, m_role, mark, m_look.theme);

    const double left = textLeft();
    const double width = this->width() - left - 8;
    const auto line = [&](const QString& text, const QFont& font, Role role, Qt::TextElideMode cut,
                          double top) {
        painter.setFont(font);
        painter.setPen(m_look.theme.color(role));
        const double high = linesHigh(text, font, width);
        const QString fitting =
            m_wraps ? text : painter.fontMetrics().elidedText(text, cut, static_cast<int>(width));
        painter.drawText(QRectF{left, top, width, high},
                         Qt::AlignLeft | Qt::AlignVCenter | (m_wraps ? Qt::TextWordWrap : 0), fitting);
        return top + high;
    };
    const Weight weight = isChecked() ? Weight::SemiBold : Weight::Medium;
    const double top = m_detail.isEmpty() ? (height() - 20 * scale) / 2 : 5 * scale;
    // Names that begin alike differ at their end.
    const double below = line(m_title, fontOf(m_look.fonts.body(), weight), Role::Ink, Qt::ElideMiddle, top);
    line(m_detail, fontOf(m_look.fonts.small()), Role::InkSoft, Qt::ElideRight, below);
}

} // namespace rig
