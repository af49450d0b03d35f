#include "app/pictures/plan_view.h"

#include "app/pictures/lettering.h"
#include "app/wording/plan_words.h"

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr double kMarkRadius = 11;   // with the disc around it
constexpr double kLeastRadius = 8.5; // in a narrow picture
constexpr double kWidthPerRadius = 32;
constexpr double kMostStretch = 1.75; // of the length: marks need room on the fuselage
constexpr double kTipLight = 4;
constexpr int kRound = 20; // corners of a ring

class PlanLayout
{
public:
    PlanLayout(const PlanView& view, QSizeF size, const FontSizes& fonts)
        : m_view{view}, m_size{size}, m_letters{fonts}, m_radius{fonts.scale *
                                                                 std::clamp(size.width() / fonts.scale /
                                                                                kWidthPerRadius,
                                                                            kLeastRadius, kMarkRadius)}
    {
        const double margin = m_radius + 4;
        const double letters = m_letters.line() + 2;
        const double width = std::max(60.0, size.width() - 2 * margin);
        const double usual = usualLength(view.glider) * width;
        const double most = std::max(60.0, size.height() - 2 * margin - letters / 2);
        const double length = std::min(most, usual * kMostStretch);
        const double across = std::min(width, length / usualLength(view.glider)); // never longer than wide
        m_made.plan = {size.width() / 2 - across / 2, size.height() / 2 - length / 2, across, length};
    }

    PlanPicture make()
    {
        addGlider();
        placeMarks();
        if (m_view.withOrder)
            addWay();
        for (std::size_t i = 0; i < m_view.items.size(); ++i)
            addItem(i);
        addTips();
        m_made.inWords = PlanWords::plan(describe());
        m_made.over.inWords = m_made.inWords;
        return std::move(m_made);
    }

private:
    QPointF at(const PlanPlace& place) const
    {
        const QRectF& plan = m_made.plan;
        return {plan.center().x() + place.x * plan.width() / 2, plan.top() + place.y * plan.height()};
    }

    QPolygonF outline(const std::vector<PlanPlace>& places) const
    {
        QPolygonF polygon;
        for (const PlanPlace& one : places)
            polygon.push_back(at(one));
        return polygon;
    }

    // The wing is drawn over the fuselage where it goes through, so each is outlined before it is filled.
    void addShape(const std::vector<PlanPlace>& places)
    {
        const QPolygonF polygon = outline(places);
        m_made.below.areas.push_back({polygon, Role::StripGround, 1});
        QPolygonF closed = polygon;
        closed.push_back(polygon.front());
        DrawnCurve curve;
        curve.pieces = {closed};
        curve.role = Role::InkSoft;
        curve.width = 1.4;
        m_made.below.curves.push_back(curve);
    }

    void addGlider()
    {
        const PlanOutlines outlines = outlinesOf(m_view.glider);
        addShape(outlines.wing);
        addShape(outlines.fuselage);
        for (const auto& surface : outlines.tail)
            addShape(surface);
        for (const auto& [front, back] : outlines.joints)
            m_made.below.linesOver.push_back({at(front), at(back), Role::InkSoft, 1.2});
        DrawnCurve canopy; // says which end is the nose
        QPolygonF ring;
        for (int i = 0; i <= kRound; ++i) {
            const double angle = 2 * 3.14159265 * i / kRound;
            ring.push_back(at({0.022 * std::cos(angle), 0.14 + 0.075 * std::sin(angle)}));
        }
        canopy.pieces = {ring};
        canopy.width = 1;
        m_made.below.curves.push_back(canopy);
    }

    void placeMarks()
    {
        const double apart = 2 * m_radius + 3;
        const double middle = m_made.plan.center().x();
        std::vector<PlanPoint> points;
        for (const PlanItem& one : m_view.items) {
            const PlanPlace place = withinPlan(one.place.value_or(usualPlace(one.circuit, one.side)));
            PlanPoint point{at(place).x(), at(place).y()};
            if (one.side == Side::Left && place.x < 0) // never over to the other wing
                point.rightmost = middle - apart / 2;
            if (one.side == Side::Right && place.x > 0)
                point.leftmost = middle + apart / 2;
            points.push_back(point);
        }
        points = pushedApart(std::move(points), apart, m_size.width(), m_size.height());
        for (const PlanPoint& one : points)
            m_made.spots.push_back({{one.x, one.y}, m_radius});
    }

    std::vector<std::size_t> ordered() const
    {
        std::vector<std::size_t> order;
        for (std::size_t i = 0; i < m_view.items.size(); ++i)
            if (m_view.items[i].order > 0 && m_view.items[i].inUse)
                order.push_back(i);
        std::ranges::stable_sort(order, {}, [this](std::size_t i) { return m_view.items[i].order; });
        return order;
    }

    void addWay()
    {
        const std::vector<std::size_t> order = ordered();
        for (std::size_t i = 1; i < order.size(); ++i)
            m_made.over.lines.push_back({m_made.spots[order[i - 1]].centre, m_made.spots[order[i]].centre,
                                         Role::Accent, 1.6 * m_letters.scale(), true});
    }

    QPolygonF ringAround(QPointF centre, double radius) const
    {
        QPolygonF ring;
        for (int i = 0; i <= 2 * kRound; ++i) {
            const double angle = 3.14159265 * i / kRound;
            ring.push_back(centre + radius * QPointF{std::cos(angle), std::sin(angle)});
        }
        return ring;
    }

    QPolygonF squareAround(QPointF centre, double half) const
    {
        return {{centre + QPointF{-half, -half}, centre + QPointF{half, -half}, centre + QPointF{half, half},
                 centre + QPointF{-half, half}, centre + QPointF{-half, -half}}};
    }

    void addRing(const QPolygonF& ring, Role role, double width)
    {
        DrawnCurve curve;
        curve.pieces = {ring};
        curve.role = role;
        curve.width = width;
        m_made.over.curves.push_back(curve);
    }

    // A disc for a joint that hands connect, a square for one that connects by itself, fainter when not in
    // use.
    void addItem(std::size_t index)
    {
        const PlanItem& item = m_view.items[index];
        const PlanMarkSpot& spot = m_made.spots[index];
        const bool bySelf = item.kind == CouplingKind::ByItself;
        const QPolygonF shape =
            bySelf ? squareAround(spot.centre, m_radius * 0.84) : ringAround(spot.centre, m_radius * 0.92);
        if (m_view.chosen == index) // as areas: a wide line round many corners would show each of them
            addChosen(spot, bySelf);
        m_made.over.areas.push_back({shape, Role::Card, 1});
        addRing(shape, item.inUse ? Role::InkSoft : Role::Border, item.inUse ? 1.4 : 1);
        if (m_view.withOrder && item.order > 0 && item.inUse)
            addNumber(item, spot);
        else
            addMark(item, spot);
    }

    void addChosen(const PlanMarkSpot& spot, bool bySelf)
    {
        const auto around = [&](double more) {
            return bySelf ? squareAround(spot.centre, m_radius * 0.84 + more)
                          : ringAround(spot.centre, m_radius * 0.92 + more);
        };
        const double scale = m_letters.scale();
        m_made.over.areas.push_back({around(5.5 * scale), Role::Accent, 1});
        m_made.over.areas.push_back({around(2.5 * scale), Role::Card, 1});
    }

    void addMark(const PlanItem& item, const PlanMarkSpot& spot)
    {
        const double side = 2 * m_radius * (item.inUse ? 0.62 : 0.45);
        m_made.over.marks.push_back({{spot.centre.x() - side / 2, spot.centre.y() - side / 2, side, side},
                                     item.inUse ? item.mark : MarkShape::DashedRing,
                                     item.inUse ? item.role : Role::Unknown});
    }

    void addNumber(const PlanItem& item, const PlanMarkSpot& spot)
    {
        const QString text = PlanWords::number(item.order);
        const double width = m_letters.widthOf(text, true);
        m_made.over.labels.push_back(m_letters.label(
            {spot.centre.x() - width / 2, spot.centre.y() - m_letters.line() / 2, width, m_letters.line()},
            text, Qt::AlignHCenter, Role::Ink, true));
    }

    bool isFree(const QRectF& where) const
    {
        const bool onMark = std::ranges::any_of(m_made.spots, [&](const PlanMarkSpot& spot) {
            return QRectF{spot.centre.x() - m_radius, spot.centre.y() - m_radius, 2 * m_radius, 2 * m_radius}
                .intersects(where);
        });
        return !onMark && QRectF{QPointF{}, m_size}.contains(where);
    }

    // The lights of the wing tips: red left, green right, and said by a letter.
    void addTips()
    {
        for (const double sign : {-1.0, 1.0}) {
            const QPointF tip = at({sign, 0.40});
            const Role role = sign < 0 ? Role::Outside : Role::Inside;
            const double half = kTipLight * m_letters.scale();
            m_made.below.areas.push_back({ringAround(tip, half), role, 1});
            const QString text = sign < 0 ? PlanWords::leftLetter() : PlanWords::rightLetter();
            const double width = m_letters.widthOf(text, true);
            const double left = std::clamp(tip.x() - width / 2, 0.0, m_size.width() - width);
            for (const double top : {tip.y() + half + 3, tip.y() - half - 3 - m_letters.line()}) {
                const QRectF where{left, top, width, m_letters.line()};
                if (!isFree(where))
                    continue;
                m_made.over.labels.push_back(m_letters.label(where, text, Qt::AlignHCenter, role, true));
                break;
            }
        }
    }

    std::vector<PlanWords::Told> describe() const
    {
        std::vector<PlanWords::Told> all;
        for (std::size_t i = 0; i < m_view.items.size(); ++i) {
            const PlanItem& one = m_view.items[i];
            all.push_back({one.name, one.word, one.side, one.kind == CouplingKind::ByItself, one.inUse,
                           m_view.withOrder ? one.order : 0, m_view.chosen == i});
        }
        return all;
    }

    const PlanView& m_view;
    QSizeF m_size;
    Lettering m_letters;
    double m_radius = kMarkRadius;
    PlanPicture m_made;
};

} // namespace

PlanItem planItemOf(const Coupling& coupling, const QString& name)
{
    PlanItem item;
    item.name = name;
    item.circuit = coupling.circuit;
    item.side = coupling.side;
    item.place = coupling.place;
    item.kind = coupling.kind;
    item.inUse = coupling.inUse;
    return item;
}

std::optional<std::size_t> PlanPicture::itemAt(QPointF point) const
{
    std::optional<std::size_t> found;
    double nearest = 1e9;
    for (std::size_t i = 0; i < spots.size(); ++i) {
        const QPointF away = spots[i].centre - point;
        const double distance = std::hypot(away.x(), away.y());
        if (distance <= spots[i].radius + 2 && distance < nearest) {
            found = i;
            nearest = distance;
        }
    }
    return found;
}

PlanPlace PlanPicture::placeAt(QPointF point) const
{
    if (plan.isEmpty())
        return {};
    return withinPlan(
        {(point.x() - plan.center().x()) / (plan.width() / 2), (point.y() - plan.top()) / plan.height()});
}

PlanPicture layoutPlan(const PlanView& view, QSizeF size, const FontSizes& fonts)
{
    return PlanLayout{view, size, fonts}.make();
}

void paint(QPainter& painter, const PlanPicture& picture, const Theme& theme)
{
    paint(painter, picture.below, theme);
    paint(painter, picture.over, theme);
}

} // namespace rig
