#include "core/lesson/plan_view.h"

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr double kWingRootFront = 0.30;
constexpr double kWingRootBack = 0.47;
constexpr double kWingTipFront = 0.375;
constexpr double kWingTipBack = 0.425;
constexpr int kRounds = 200;

struct Width
{
    double y = 0;
    double half = 0;
};

// The fuselage's half width along its length, for a glider of 15 m.
constexpr Width kFuselage[] = {{0, 0},        {0.015, 0.017}, {0.05, 0.031},   {0.12, 0.041},
                               {0.22, 0.045}, {0.32, 0.043},  {0.42, 0.034},   {0.52, 0.021},
                               {0.65, 0.015}, {0.85, 0.0115}, {0.985, 0.0085}, {1.0, 0.004}};

double share(double from, double to, double at)
{
    return from + (to - from) * at;
}

std::vector<PlanPlace> fuselageOf(const PlanGlider& glider)
{
    const double scale = 15 / std::clamp(glider.spanMetres, kShortestSpan, kLongestSpan);
    std::vector<PlanPlace> outline;
    for (const Width& one : kFuselage)
        outline.push_back({one.half * scale, one.y});
    for (auto one = std::rbegin(kFuselage); one != std::rend(kFuselage); ++one)
        outline.push_back({-one->half * scale, one->y});
    return outline;
}

std::vector<PlanPlace> wingOf()
{
    return {{-1, kWingTipFront}, {-0.55, 0.325}, {0, kWingRootFront}, {0.55, 0.325},  {1, kWingTipFront},
            {1, kWingTipBack},   {0.55, 0.452},  {0, kWingRootBack},  {-0.55, 0.452}, {-1, kWingTipBack}};
}

std::pair<PlanPlace, PlanPlace> jointAt(double x)
{
    const double at = std::abs(x);
    const double front =
        at < 0.55 ? share(kWingRootFront, 0.325, at / 0.55) : share(0.325, kWingTipFront, (at - 0.55) / 0.45);
    const double back =
        at < 0.55 ? share(kWingRootBack, 0.452, at / 0.55) : share(0.452, kWingTipBack, (at - 0.55) / 0.45);
    return {{x, front}, {x, back}};
}

std::vector<std::vector<PlanPlace>> tailOf(TailForm form)
{
    constexpr double kHalf = 0.17;
    switch (form) {
    case TailForm::Low:
        return {{{-kHalf, 0.915}, {0, 0.885}, {kHalf, 0.915}, {kHalf, 0.955}, {0, 0.965}, {-kHalf, 0.955}}};
    case TailForm::V:
        return {{{0, 0.90}, {kHalf, 0.955}, {kHalf * 1.02, 0.995}, {0, 0.965}},
                {{0, 0.90}, {-kHalf, 0.955}, {-kHalf * 1.02, 0.995}, {0, 0.965}}};
    case TailForm::T:
    case TailForm::Unknown:
        break;
    }
    return {{{-kHalf, 0.955}, {0, 0.925}, {kHalf, 0.955}, {kHalf, 0.99}, {0, 1.0}, {-kHalf, 0.99}}};
}

double along(PlanWay way, double dx, double dy)
{
    switch (way) {
    case PlanWay::Left:
        return -dx;
    case PlanWay::Right:
        return dx;
    case PlanWay::Up:
        return -dy;
    case PlanWay::Down:
        break;
    }
    return dy;
}

} // namespace

PlanGlider gliderOf(const Airframe& airframe)
{
    PlanGlider glider;
    if (airframe.spanCentimetres)
        glider.spanMetres = *airframe.spanCentimetres / 100.0;
    glider.tail = airframe.tail;
    glider.panels = airframe.wingPanels.value_or(glider.panels);
    return glider;
}

double usualLength(const PlanGlider& glider)
{
    const double span = std::clamp(glider.spanMetres, kShortestSpan, kLongestSpan);
    return (4.2 + 0.18 * span) / span;
}

PlanOutlines outlinesOf(const PlanGlider& glider)
{
    PlanOutlines made{fuselageOf(glider), wingOf(), tailOf(glider.tail), {}};
    const int panels = std::clamp(glider.panels, 1, kMostPanels);
    for (int i = 1; i < panels; ++i)
        made.joints.push_back(jointAt(-1 + 2.0 * i / panels));
    return made;
}

PlanPlace usualPlace(Circuit circuit, Side side)
{
    const double sign = side == Side::Left ? -1 : side == Side::Right ? 1 : 0;
    switch (circuit) {
    case Circuit::Flap:
        return {sign * 0.09, 0.40};
    case Circuit::Airbrake:
        return {sign * 0.18, 0.38};
    case Circuit::Aileron:
        return {sign * 0.27, 0.40};
    case Circuit::WaterDump:
        return {sign * 0.36, 0.37};
    case Circuit::Elevator:
        return {sign * 0.05, 0.95};
    case Circuit::Trim:
        return {sign * 0.05, 0.88};
    case Circuit::Rudder:
        return {sign * 0.05, 0.82};
    case Circuit::Other:
        break;
    }
    return {sign * 0.05, 0.55};
}

std::vector<PlanPoint> pushedApart(std::vector<PlanPoint> marks, double apart, double width, double height)
{
    const auto keepInside = [&](PlanPoint& one) {
        one.x = std::min(std::max(one.x, one.leftmost), one.rightmost);
        one.x = std::clamp(one.x, std::min(apart / 2, width / 2), std::max(width - apart / 2, width / 2));
        one.y = std::clamp(one.y, std::min(apart / 2, height / 2), std::max(height - apart / 2, height / 2));
    };
    for (PlanPoint& one : marks)
        keepInside(one);
    for (int round = 0; round < kRounds; ++round) {
        bool moved = false;
        for (std::size_t i = 0; i < marks.size(); ++i)
            for (std::size_t j = i + 1; j < marks.size(); ++j) {
                double dx = marks[j].x - marks[i].x;
                double dy = marks[j].y - marks[i].y;
                double distance = std::hypot(dx, dy);
                if (distance >= apart)
                    continue;
                if (distance < 1e-9) { // on one another: each pair goes its own way
                    const double angle = 2.4 * static_cast<double>(i + 3 * j);
                    dx = std::cos(angle);
                    dy = std::sin(angle);
                    distance = 1;
                }
                const double by = (apart * 1.02 - std::min(distance, apart)) / 2;
                marks[i].x -= dx / distance * by;
                marks[i].y -= dy / distance * by;
                marks[j].x += dx / distance * by;
                marks[j].y += dy / distance * by;
                keepInside(marks[i]);
                keepInside(marks[j]);
                moved = true;
            }
        if (!moved)
            break;
    }
    return marks;
}

std::optional<std::size_t> nearestOn(PlanWay way, const std::vector<PlanPoint>& marks, std::size_t from)
{
    std::optional<std::size_t> found;
    double best = 0;
    for (std::size_t i = 0; i < marks.size(); ++i) {
        const double dx = marks[i].x - marks[from].x;
        const double dy = marks[i].y - marks[from].y;
        const double ahead = along(way, dx, dy);
        const double aside = way == PlanWay::Left || way == PlanWay::Right ? std::abs(dy) : std::abs(dx);
        if (i == from || ahead <= 0.5 || aside > 4 * ahead)
            continue;
        const double far = ahead + 2 * aside;
        if (!found || far < best) {
            found = i;
            best = far;
        }
    }
    return found;
}

PlanPlace withinPlan(PlanPlace place)
{
    return {std::clamp(place.x, -1.0, 1.0), std::clamp(place.y, 0.0, 1.0)};
}

} // namespace rig
