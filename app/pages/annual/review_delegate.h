#pragma once

#include "app/pages/annual/annual_view.h"
#include "app/theme/theme.h"
#include "app/wording/annual_words.h"

#include <QStyledItemDelegate>

namespace rig {

class ReviewModel;

// Paints a cell of the ranked table: a figure with what belongs to it below, a mark with its words, a band
// bar, or the signs.
class ReviewDelegate : public QStyledItemDelegate
{
    Q_OBJECT

public:
    ReviewDelegate(const ReviewModel& model, QObject* parent);

    void setLook(const Look& look) { m_look = look; }
    int heightOf(const AnnualRow& row, int couplingWidth, int movedWidth, int signsWidth) const;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;

private:
    // Text in a rectangle from its top, wrapped; says how high it was.
    double write(QPainter& painter, const QRectF& where, const QString& text, double pixels, Role role,
                 bool strong) const;
    double heightOf(const QString& text, double width, double pixels, bool strong) const;
    void paintCoupling(QPainter& painter, const QRectF& cell, const AnnualRow& row) const;
    void paintFigure(QPainter& painter, const QRectF& cell, const AnnualFigure& figure) const;
    void paintSigns(QPainter& painter, const QRectF& cell, const AnnualRow& row) const;
    double markRoom() const;
    double margin() const;

    const ReviewModel& m_model;
    Look m_look;
};

} // namespace rig
