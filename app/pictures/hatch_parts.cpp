#include "app/pictures/hatch_parts.h"

#include <QTransform>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr double kShownUnits = 39;  // radius of the opening
constexpr double kMiddleUnits = 24; // along the rod
constexpr double kHousingAcross = 14;
constexpr double kTabAcross = 5;
constexpr double kTongueAcross = 2.2; // of a tab that goes under the sleeve: thread shows beside it
constexpr double kOutOfSight = -60;   // the stem goes on to its lever: its length tells nothing
constexpr double kThreadPitch = 1.7;

struct Reach
{
    double left = 1e9;
    double right = -1e9;
    double top = 1e9;
    double bottom = -1e9;
};

Reach reachOf(const LessonOutline& outline)
{
    Reach reach;
    for (const LessonPoint& one : outline) {
        reach.left = std::min(reach.left, one.x);
        reach.right = std::max(reach.right, one.x);
        reach.top = std::min(reach.top, one.y);
        reach.bottom = std::max(reach.bottom, one.y);
    }
    return reach;
}

class SeenParts
{
public:
    SeenParts(const Cutaway& cutaway, AccessSide from, bool torch, const HatchOpening& opening)
        : m_cutaway{cutaway}, m_from{from}, m_torch{torch}, m_opening{opening},
          m_pixels{opening.radius / kShownUnits}, m_stroke{std::clamp(m_pixels * 0.45, 1.0, 2.0)}
    {
    }

    std::vector<CutawayPart> make()
    {
        switch (m_from) {
        case AccessSide::Above:
        case AccessSide::Unknown: // drawn as from above
        case AccessSide::Below:
            addRodAndSleeve();
            m_from == AccessSide::Above ? addTop() : addUnderside();
            break;
        case AccessSide::Left:
        case AccessSide::Right:
            addFromTheSide();
            break;
        case AccessSide::Front:
            addFromTheFront();
            break;
        case AccessSide::Rear:
            addFromTheRear();
            break;
        }
        turn();
        return std::move(m_parts);
    }

private:
    bool isAlongTheRod() const { return m_from == AccessSide::Front || m_from == AccessSide::Rear; }

    QPointF at(double x, double y) const
    {
        const double middle = isAlongTheRod() ? 0 : kMiddleUnits;
        return {m_opening.centre.x() + (x - middle) * m_pixels, m_opening.centre.y() + y * m_pixels};
    }

    // Left stays left of who looks; and a mirror turns it once more.
    void turn()
    {
        const bool turned = (m_from == AccessSide::Right) != m_opening.isMirror;
        if (!turned)
            return;
        QTransform flip;
        flip.translate(2 * m_opening.centre.x(), 0);
        flip.scale(-1, 1);
        for (CutawayPart& part : m_parts)
            part.path = flip.map(part.path);
    }

    QPainterPath box(double left, double top, double right, double bottom, double round = 0.6) const
    {
        QPainterPath path;
        path.addRoundedRect(QRectF{at(left, top), at(right, bottom)}, round * m_pixels, round * m_pixels);
        return path;
    }

    QPainterPath disc(double x, double y, double radius) const
    {
        QPainterPath path;
        path.addEllipse(at(x, y), radius * m_pixels, radius * m_pixels);
        return path;
    }

    void add(const QPainterPath& path, Role fill, double opacity = 1)
    {
        m_parts.push_back({path, fill, opacity, true, Role::Ink, m_stroke, false});
    }

    void addRodAndSleeve()
    {
        add(box(m_cutaway.housingEnd - 1, -kRodHalf, m_cutaway.rodEnd, kRodHalf), Role::Line);
        const CutawaySleeve& sleeve = m_cutaway.sleeve;
        if (!m_cutaway.hasSleeve) {
            add(box(sleeve.stop, -kSleeveOuter, sleeve.stop + 8, kSleeveOuter), Role::Line);
            return;
        }
        QPainterPath thread;
        for (double x = sleeve.stop + 0.6; x < sleeve.front; x += kThreadPitch) {
            thread.moveTo(at(x, kRodHalf));
            thread.lineTo(at(x + 1.1, -kRodHalf));
        }
        m_parts.push_back({thread, Role::Card, 0, false, Role::Ink, m_stroke, false});
    }

    // Solid, as everything is that is not cut open.
    void addSleeve()
    {
        const CutawaySleeve& sleeve = m_cutaway.sleeve;
        if (!m_cutaway.hasSleeve)
            return;
        add(box(sleeve.front, -kSleeveOuter, sleeve.back, kSleeveOuter, 1.2), Role::Accent, 0.3);
        m_parts.push_back({box(sleeve.front + 1, -kSleeveOuter + 2, sleeve.back - 1, -kSleeveOuter + 5.5),
                           Role::BarText, 0.22, false, Role::Ink, 0, false});
    }

    Reach tab() const { return reachOf(m_cutaway.plunger.back()); }

    void addTabAcross()
    {
        const Reach reach = tab();
        const double from = std::max(reach.left, m_cutaway.housingEnd - 0.5);
        const double across = m_cutaway.drawn.layout == Layout::C ? kTongueAcross : kTabAcross;
        if (reach.right > from)
            add(box(from, -across, reach.right, across, 0.4), Role::Hatch, 0.62);
    }

    double housingStart() const { return reachOf(m_cutaway.housing).left; }

    void addTop()
    {
        if (m_cutaway.gap.above)
            addTabAcross();
        addSleeve();
        add(box(housingStart(), -kHousingAcross, m_cutaway.housingEnd, kHousingAcross, 5), Role::StripGround);
        m_parts.push_back({disc(0, 0, kSocketRadius), Role::Bar, 1, true, Role::Ink, m_stroke, false});
        if (m_torch) { // light falls to the ground of the socket
            m_parts.push_back(
                {disc(0, 0, kSocketRadius - 0.5), Role::BarText, 0.18, false, Role::Ink, 0, false});
            if (m_cutaway.ball)
                add(disc(0, 0, kBallRadius), Role::InkSoft, 0.5);
            addNose();
        }
        if (m_cutaway.ball)
            add(disc(0, 0, kStemHalf), Role::InkSoft, 0.75);
        if (!m_cutaway.gap.above)
            return;
        const Reach flag = reachOf(m_cutaway.plunger[1]);
        add(box(flag.left, -1.4, flag.right, 1.4, 0.3), Role::Hatch, 0.62);
        const Reach hood = reachOf(m_cutaway.cover);
        add(box(hood.left, -4, hood.right, 4), Role::StripGround);
    }

    void addNose()
    {
        const double nose = m_cutaway.nose.centre.x;
        const bool isRight = nose > 0;
        const double tip = isRight ? nose - kNoseRadius : nose + kNoseRadius;
        QPainterPath path =
            isRight ? box(tip, -4, kSocketRadius + 2, 4, 2.5) : box(-kSocketRadius - 2, -4, tip, 4, 2.5);
        add(path.intersected(disc(0, 0, kSocketRadius)), Role::Hatch, 0.62);
    }

    void addUnderside()
    {
        if (!m_cutaway.gap.above) {
            const double tail = m_cutaway.housingEnd;
            if (tab().left > tail)
                add(box(tail - 0.5, -2, tab().left + 0.5, 2, 0.2), Role::Hatch, 0.62);
            addTabAcross();
        }
        addSleeve();
        add(box(housingStart(), -kHousingAcross, m_cutaway.housingEnd, kHousingAcross, 5), Role::StripGround);
    }

    QPainterPath outline(const LessonOutline& of) const
    {
        QPainterPath path;
        for (std::size_t i = 0; i < of.size(); ++i)
            i == 0 ? path.moveTo(at(of[i].x, of[i].y)) : path.lineTo(at(of[i].x, of[i].y));
        path.closeSubpath();
        return path;
    }

    void addFromTheSide()
    {
        addRodAndSleeve();
        if (m_cutaway.ball) {
            const double top = m_cutaway.ball->y - kBallRadius;
            add(box(-kStemHalf, kOutOfSight, kStemHalf, top + 4), Role::InkSoft, 0.5);
            if (top < -kHousingHalf) // what stands out of the mouth
                add(disc(0, m_cutaway.ball->y, kBallRadius), Role::InkSoft, 0.5);
        }
        QPainterPath plunger = outline(m_cutaway.plunger[1]);
        for (const LessonOutline& piece : m_cutaway.plunger)
            plunger = plunger.united(outline(piece));
        add(plunger.simplified(), Role::Hatch, 0.62);
        add(disc(m_cutaway.hole.centre.x, m_cutaway.hole.centre.y, m_cutaway.hole.radius),
            m_cutaway.pinIn ? Role::Accent : Role::Bar);
        addSleeve();
        add(box(housingStart(), -kHousingHalf, m_cutaway.housingEnd, kHousingHalf, 3), Role::StripGround);
        add(outline(m_cutaway.cover), Role::StripGround);
    }

    void addFromTheFront()
    {
        if (m_cutaway.ball)
            add(box(-kStemHalf, kOutOfSight, kStemHalf, 0), Role::InkSoft, 0.5);
        add(box(-kHousingAcross, -kHousingHalf, kHousingAcross, kHousingHalf, 4), Role::StripGround);
    }

    void addFromTheRear()
    {
        addFromTheFront();
        add(disc(0, 0, kSleeveOuter), m_cutaway.hasSleeve ? Role::Accent : Role::Line,
            m_cutaway.hasSleeve ? 0.3 : 1);
        add(disc(0, 0, kRodHalf), Role::Line);
    }

    const Cutaway& m_cutaway;
    AccessSide m_from;
    bool m_torch;
    const HatchOpening& m_opening;
    double m_pixels = 1;
    double m_stroke = 1.4;
    std::vector<CutawayPart> m_parts;
};

} // namespace

std::vector<CutawayPart> partsSeen(const Cutaway& cutaway, AccessSide from, bool torch,
                                   const HatchOpening& opening)
{
    return SeenParts{cutaway, from, torch, opening}.make();
}

} // namespace rig
