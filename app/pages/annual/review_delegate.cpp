#include "app/pages/annual/review_delegate.h"

#include "app/pages/annual/review_model.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr int kWrapped = int{Qt::AlignLeft} | int{Qt::AlignTop} | int{Qt::TextWordWrap};

QFont fontAt(double pixels, bool strong)
{
    return fontOf(pixels, strong ? Weight::SemiBold : Weight::Regular);
}

} // namespace

ReviewDelegate::ReviewDelegate(const ReviewModel& model, QObject* parent)
    : QStyledItemDelegate{parent}, m_model{model}
{
}

double ReviewDelegate::margin() const
{
    return 7 * m_look.fonts.scale;
}

double ReviewDelegate::markRoom() const
{
    return 26 * m_look.fonts.scale;
}

double ReviewDelegate::heightOf(const QString& text, double width, double pixels, bool strong) const
{
    return QFontMetricsF{fontAt(pixels, strong)}.boundingRect({0, 0, width, 1e4}, kWrapped, text).height();
}

double ReviewDelegate::write(QPainter& painter, const QRectF& where, const QString& text, double pixels,
                             Role role, bool strong) const
{
    painter.setFont(fontAt(pixels, strong));
    painter.setPen(m_look.theme.color(role));
    painter.drawText(where, kWrapped, text);
    return heightOf(text, where.width(), pixels, strong);
}

int ReviewDelegate::heightOf(const AnnualRow& row, int couplingWidth, int movedWidth, int signsWidth) const
{
    const FontSizes& fonts = m_look.fonts;
    const double room = couplingWidth - 2 * margin() - markRoom();
    const double coupling =
        heightOf(row.name, room, fonts.body(), true) + heightOf(row.saysInWords, room, fonts.small(), false);
    const double moved =
        heightOf(row.moved.figure, movedWidth - 2 * margin(), fonts.body(), row.moved.standsOut) +
        heightOf(row.moved.beside, movedWidth - 2 * margin(), fonts.small(), false);
    double signs = 0;
    for (qsizetype i = 0; i < row.signsShown.size(); ++i)
        signs +=
            heightOf(row.signsShown.at(i), signsWidth - 2 * margin(), fonts.label(), i == 0 && row.isGrave);
    return static_cast<int>(std::ceil(std::max({coupling, moved, signs}) + 2 * margin()));
}

void ReviewDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const
{
    const AnnualRow& row = m_model.rowAt(index.row());
    const QRectF whole{option.rect};
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const bool isChosen = option.state & QStyle::State_Selected;
    if (isChosen)
        painter->fillRect(whole, m_look.theme.color(Role::AccentFill));
    painter->setPen(m_look.theme.color(Role::Line));
    painter->drawLine(QPointF{whole.left(), whole.bottom() - 0.5},
                      QPointF{whole.right(), whole.bottom() - 0.5});
    if (isChosen && option.widget && option.widget->hasFocus()) {
        painter->setPen(QPen{m_look.theme.color(Role::Accent), 2});
        painter->drawLine(whole.topLeft() + QPointF{0, 1}, whole.topRight() + QPointF{0, 1});
        painter->drawLine(whole.bottomLeft() - QPointF{0, 1}, whole.bottomRight() - QPointF{0, 1});
    }
    const QRectF cell = whole.adjusted(margin(), margin(), -margin(), -margin());
    switch (static_cast<AnnualColumn>(index.column())) {
    case AnnualColumn::Coupling:
        paintCoupling(*painter, cell, row);
        break;
    case AnnualColumn::Band: {
        painter->translate(cell.topLeft());
        const double height = std::min(cell.height(), 34 * m_look.fonts.scale);
        rig::paint(*painter, layoutBandBar(row.bar, {cell.width(), height}, m_look.fonts), m_look.theme);
        break;
    }
    case AnnualColumn::Moved:
        paintFigure(*painter, cell, row.moved);
        break;
    case AnnualColumn::Excursion:
        paintFigure(*painter, cell, row.excursion);
        break;
    case AnnualColumn::Scatter:
        paintFigure(*painter, cell, row.scatter);
        break;
    case AnnualColumn::Chance:
        paintFigure(*painter, cell, row.chance);
        break;
    case AnnualColumn::Questions:
        write(*painter, cell, QLocale{}.toString(row.openQuestions), m_look.fonts.body(),
              row.openQuestions > 0 ? Role::Outside : Role::InkSoft, row.openQuestions > 0);
        break;
    case AnnualColumn::StandsOut:
    case AnnualColumn::Last_:
        paintSigns(*painter, cell, row);
        break;
    }
    painter->restore();
}

void ReviewDelegate::paintCoupling(QPainter& painter, const QRectF& cell, const AnnualRow& row) const
{
    const double side = 17 * m_look.fonts.scale;
    const QRectF mark{cell.left(), cell.top() + 1, side, side};
    paintMark(painter, shapeOf(row.says), shapeRoleOf(row.says), mark, m_look.theme);
    QRectF words = cell.adjusted(markRoom(), 0, 0, 0);
    words.setTop(words.top() + write(painter, words, row.name, m_look.fonts.body(), Role::Ink, true));
    write(painter, words, row.saysInWords, m_look.fonts.small(), textRoleOf(row.says), false);
}

void ReviewDelegate::paintFigure(QPainter& painter, const QRectF& cell, const AnnualFigure& figure) const
{
    if (figure.figure.isEmpty()) {
        write(painter, cell, figure.instead, m_look.fonts.small(), Role::InkSoft, false);
        return;
    }
    QRectF below = cell;
    below.setTop(below.top() + write(painter, cell, figure.figure, m_look.fonts.body(),
                                     figure.standsOut ? Role::Outside : Role::Ink, figure.standsOut));
    write(painter, below, figure.beside, m_look.fonts.small(), Role::InkSoft, false);
}

void ReviewDelegate::paintSigns(QPainter& painter, const QRectF& cell, const AnnualRow& row) const
{
    QRectF room = cell;
    for (qsizetype i = 0; i < row.signsShown.size(); ++i) {
        const bool strong = i == 0 && row.isGrave;
        room.setTop(room.top() + write(painter, room, row.signsShown.at(i), m_look.fonts.label(),
                                       strong ? Role::Ink : Role::InkSoft, strong));
    }
}

} // namespace rig
