#pragma once

#include "app/pictures/drawing.h"
#include "core/lesson/plan_view.h"

#include <QSizeF>

#include <optional>

namespace rig {

// One coupling on the plan.
struct PlanItem
{
    QString name;
    Circuit circuit = Circuit::Other;
    Side side = Side::None;
    std::optional<PlanPlace> place; // where its circuit usually is, when nobody said
    CouplingKind kind = CouplingKind::Sleeve;
    bool inUse = true;
    int order = 0; // of rigging; 0: none
    MarkShape mark = MarkShape::Waiting;
    Role role = Role::Unknown;
    QString word; // what the mark says: "inside", "seen 6 of 6"
};

// As it is entered; its name as it is to be shown.
PlanItem planItemOf(const Coupling& coupling, const QString& name);

struct PlanView
{
    PlanGlider glider;
    std::vector<PlanItem> items;
    std::optional<std::size_t> chosen;
    bool withOrder = false; // numbers in the marks, and the way from one to the next
};

struct PlanMarkSpot
{
    QPointF centre;
    double radius = 0;
};

struct PlanPicture
{
    QRectF plan;                     // from wing tip to wing tip, from nose to tail
    Drawing below;                   // the glider
    Drawing over;                    // way, marks and letters
    std::vector<PlanMarkSpot> spots; // as many as items
    QString inWords;

    std::optional<std::size_t> itemAt(QPointF point) const;
    PlanPlace placeAt(QPointF point) const;
};

PlanPicture layoutPlan(const PlanView& view, QSizeF size, const FontSizes& fonts);
void paint(QPainter& painter, const PlanPicture& picture, const Theme& theme);

} // namespace rig
