#include "app/pictures/cutaway.h"

#include "app/pictures/cutaway_layout.h"
#include "app/wording/lesson_picture_words.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr double kThreadApart = 1.7; // units
constexpr double kThreadLong = 24;   // from the sleeve's stop on
constexpr int kCoils = 4;

class CutawayLayout
{
public:
    CutawayLayout(const CutawayView& view, QSizeF size, const FontSizes& fonts)
        : m_view{view}, m_fonts{fonts}, m_cutaway{cutawayOf(view.joint, view.pose)},
          m_rows{rowsOf(view, m_cutaway, size, fonts)}, m_place{m_rows.place}, m_stroke{std::clamp(
                                                                                   m_place.pixels * 0.42, 1.0,
                                                                                   2.0)}
    {
    }

    CutawayPicture make()
    {
        m_picture.state = m_cutaway.state;
        addRod();
        addHousing();
        addSpring();
        addPlunger();
        addBall();
        addCover();
        m_cutaway.hasSleeve ? addSleeve() : addCollar();
        addPin();
        addGhosts();
        addCutawayLabels(m_picture, m_view, m_cutaway, m_rows, m_fonts);
        m_picture.inWords = LessonPictureWords::cutaway(m_cutaway);
        m_picture.over.inWords = m_picture.inWords;
        return std::move(m_picture);
    }

private:
    QPainterPath outline(const LessonOutline& of) const
    {
        QPainterPath path;
        for (std::size_t i = 0; i < of.size(); ++i)
            i == 0 ? path.moveTo(m_place.at(of[i])) : path.lineTo(m_place.at(of[i]));
        path.closeSubpath();
        return path;
    }

    QPainterPath disc(LessonPoint centre, double radius) const
    {
        QPainterPath path;
        path.addEllipse(m_place.at(centre), radius * m_place.pixels, radius * m_place.pixels);
        return path;
    }

    QPainterPath box(double left, double top, double right, double bottom, double round = 0) const
    {
        QPainterPath path;
        path.addRoundedRect(m_place.box(left, top, right, bottom), round * m_place.pixels,
                            round * m_place.pixels);
        return path;
    }

    void add(const QPainterPath& path, Role fill, double opacity = 1)
    {
        m_picture.parts.push_back({path, fill, opacity, true, Role::Ink, m_stroke, false});
    }

    void addStroke(const QPainterPath& path, Role role, double width, bool dashed = false)
    {
        m_picture.parts.push_back({path, Role::Card, 0, false, role, width, dashed});
    }

    // A light or a tint over what is there.
    void addTint(const QPainterPath& path, Role role, double opacity)
    {
        m_picture.parts.push_back({path, role, opacity, false, Role::Ink, 0, false});
    }

    void addRod()
    {
        const double from = m_cutaway.housingEnd - 1;
        add(box(from, -kRodHalf, m_cutaway.rodEnd, kRodHalf, 0.6), Role::Line);
        addTint(box(from, -kRodHalf + 1, m_cutaway.rodEnd - 0.5, -kRodHalf + 2.6), Role::BarText, 0.2);
        QPainterPath thread;
        const double begin = m_cutaway.sleeve.stop;
        const double end = begin + (m_cutaway.hasSleeve ? kThreadLong : 0);
        for (double x = begin + 0.6; x < end - 1; x += kThreadApart) {
            thread.moveTo(m_place.at({x, kRodHalf}));
            thread.lineTo(m_place.at({x + 1.1, -kRodHalf}));
        }
        addStroke(thread, Role::InkSoft, std::max(1.0, m_stroke * 0.8));
        if (!m_cutaway.hasSleeve)
            return;
        const double ring = begin + kSleeveLength - kSleeveWall;
        add(box(ring - 2.4, -7, ring, 7, 0.5), Role::InkSoft, 0.55);
    }

    void addHousing()
    {
        QPainterPath whole = outline(m_cutaway.housing);
        QPainterPath hollow;
        for (const LessonOutline& pocket : m_cutaway.pockets)
            hollow = hollow.united(outline(pocket));
        QPainterPath inside;
        inside.addRect(whole.boundingRect());
        addTint(hollow.intersected(inside), Role::Ink, 0.1);
        QPainterPath socket = box(-kSocketRadius, -kHousingHalf, kSocketRadius, 0);
        socket = socket.united(disc({0, kBallRadius - kSocketRadius}, kSocketRadius));
        addTint(socket.subtracted(hollow), Role::Ink, 0.1);
        add(whole.subtracted(hollow).subtracted(socket), Role::StripGround);
    }

    void addSpring()
    {
        const LessonPoint from = m_cutaway.spring.from;
        const LessonPoint to = m_cutaway.spring.to;
        constexpr double kHalf = 2.4;
        QPainterPath path;
        path.moveTo(m_place.at(from));
        for (int i = 0; i < 2 * kCoils; ++i) {
            const double t = (i + 0.5) / (2 * kCoils);
            const double side = i % 2 == 0 ? -kHalf : kHalf;
            path.lineTo(m_place.at({std::lerp(from.x, to.x, t), std::lerp(from.y, to.y, t) + side}));
        }
        path.lineTo(m_place.at(to));
        const double apart = std::hypot(to.x - from.x, to.y - from.y) * m_place.pixels / (2 * kCoils);
        addStroke(path, Role::Accent, std::clamp(apart * 0.5, 0.8, m_stroke * 1.1));
    }

    void addPlunger()
    {
        QPainterPath path = disc(m_cutaway.nose.centre, m_cutaway.nose.radius);
        for (const LessonOutline& piece : m_cutaway.plunger)
            path = path.united(outline(piece));
        add(path.simplified(), Role::Hatch, 0.62);
        add(disc(m_cutaway.hole.centre, m_cutaway.hole.radius), Role::Card);
    }

    void addBall()
    {
        const LessonPoint centre = m_cutaway.ball.value_or(LessonPoint{});
        const double pixels = kBallRadius * m_place.pixels;
        m_picture.ball = {m_place.at(centre) - QPointF{pixels, pixels}, QSizeF{2 * pixels, 2 * pixels}};
        m_picture.ballHomeY = m_place.y(0);
        m_picture.ballAwayY = m_place.y(cutawayOf(m_view.joint, {0, true, false}).ball->y);
        if (!m_cutaway.ball) {
            addStroke(disc({}, kBallRadius), Role::Outside, m_stroke, true);
            return;
        }
        const double top = centre.y - kBallRadius;
        add(box(-kStemHalf, top - kStemLength, kStemHalf, top + 2, 0.6), Role::InkSoft, 0.5);
        add(disc(centre, kBallRadius), Role::InkSoft, 0.5);
        addTint(disc({centre.x - 3.2, centre.y - 3.4}, 3.2), Role::BarText, 0.25); // light in both themes
        QPainterPath widest;
        widest.moveTo(m_place.at({centre.x - kBallRadius, centre.y}));
        widest.lineTo(m_place.at({centre.x + kBallRadius, centre.y}));
        addStroke(widest, Role::InkSoft, 1, true);
    }

    void addCover() { add(outline(m_cutaway.cover), Role::StripGround); }

    void addSleeve()
    {
        const CutawaySleeve& sleeve = m_cutaway.sleeve;
        addTint(box(sleeve.front, -kSleeveBore, sleeve.back - kSleeveWall, kSleeveBore), Role::Accent, 0.14);
        QPainterPath path = box(sleeve.front, -kSleeveOuter, sleeve.back, -kSleeveBore, 0.7);
        path = path.united(box(sleeve.front, kSleeveBore, sleeve.back, kSleeveOuter, 0.7));
        path = path.united(box(sleeve.back - kSleeveWall, -kSleeveOuter, sleeve.back, -kRodHalf - 0.4));
        path = path.united(box(sleeve.back - kSleeveWall, kRodHalf + 0.4, sleeve.back, kSleeveOuter));
        add(path, Role::Accent, 0.3);
        if (!sleeve.finger.empty())
            add(outline(sleeve.finger), Role::Accent, 0.3);
        m_picture.sleeve = m_place.box(sleeve.front, -kSleeveOuter, sleeve.back, kSleeveOuter);
    }

    void addCollar()
    {
        const double stop = m_cutaway.sleeve.stop;
        add(box(stop, -kSleeveOuter, stop + 8, kSleeveOuter, 0.7), Role::Line);
    }

    void addPin()
    {
        if (!m_cutaway.hasPin)
            return;
        LessonPoint at = m_cutaway.hole.centre;
        const double radius = m_cutaway.hole.radius;
        const double away = m_cutaway.gap.above ? -1 : 1;
        if (!m_cutaway.pinIn)
            at = {at.x - 2, at.y + away * 8};
        QPainterPath loop;
        const double wide = 3 * m_place.pixels;
        const QPointF end = m_place.at(at);
        loop.addEllipse(QRectF{end.x() - wide * 1.9, end.y() - wide / 2 - wide * 0.4 * away * -1 - wide * 0.4,
                               wide * 1.9, wide});
        addStroke(loop, Role::Accent, m_stroke * 1.4);
        add(disc(at, radius * 0.75), Role::Accent);
    }

    // Where ball and tab would be at home.
    void addGhosts()
    {
        if (m_cutaway.plungerBack < 0.2)
            return;
        const Cutaway home = cutawayOf(m_view.joint, {1, m_view.pose.sleeveForward, false});
        addStroke(outline(home.plunger.back()), Role::Outside, m_stroke * 0.8, true);
        addStroke(disc({}, kBallRadius), Role::Outside, m_stroke * 0.8, true);
    }

    const CutawayView& m_view;
    FontSizes m_fonts;
    Cutaway m_cutaway;
    CutawayRows m_rows;
    CutawayPlace m_place;
    double m_stroke = 1.4;
    CutawayPicture m_picture;
};

} // namespace

double CutawayPicture::seatingAt(double y) const
{
    if (ballHomeY <= ballAwayY)
        return 1;
    return std::clamp((y - ballAwayY) / (ballHomeY - ballAwayY), 0.0, 1.0);
}

MarkShape shapeOf(JointState state)
{
    switch (state) {
    case JointState::PartSeated:
        return MarkShape::Diamond;
    case JointState::NotSecured:
        return MarkShape::Triangle;
    case JointState::NotConnected:
        return MarkShape::DashedRing;
    case JointState::Locked:
        break;
    }
    return MarkShape::Done;
}

Role shapeRoleOf(JointState state)
{
    switch (state) {
    case JointState::PartSeated:
    case JointState::NotConnected:
        return Role::Outside;
    case JointState::NotSecured:
        return Role::NearEdge;
    case JointState::Locked:
        break;
    }
    return Role::Accent;
}

Role textRoleOf(JointState state)
{
    return state == JointState::NotSecured ? Role::NearEdgeText : shapeRoleOf(state);
}

CutawayPicture layoutCutaway(const CutawayView& view, QSizeF size, const FontSizes& fonts)
{
    return CutawayLayout{view, size, fonts}.make();
}

void paint(QPainter& painter, const CutawayPart& part, const Theme& theme)
{
    QPen pen{theme.color(part.line), part.width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
    if (part.dashed)
        pen.setDashPattern({3, 2.5});
    painter.setPen(Qt::NoPen);
    if (part.opacity > 0) {
        QColor color = theme.color(part.fill);
        if (part.overCard)
            painter.fillPath(part.path, theme.color(Role::Card));
        color.setAlphaF(static_cast<float>(part.opacity));
        painter.fillPath(part.path, color);
    }
    if (part.width <= 0)
        return;
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(part.path);
}

void paint(QPainter& painter, const CutawayPicture& picture, const Theme& theme)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (const CutawayPart& part : picture.parts)
        paint(painter, part, theme);
    painter.restore();
    paint(painter, picture.over, theme);
}

} // namespace rig
