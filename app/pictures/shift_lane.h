#pragma once

#include "app/pictures/aircraft.h"
#include "app/pictures/lettering.h"

namespace rig {

// One bar of the lane and where it stands.
struct ShiftBar
{
    double x = 0;
    const ShiftDay* shift = nullptr;
};

// The bars of shared shifts around a zero line, the same below the couplings and alone.
class ShiftLane
{
public:
    // `words` is the room above the lane for the causes of called days.
    ShiftLane(Drawing& drawing, const Lettering& letters, const QRectF& lane, const QRectF& words);

    // What the lane's scale reaches either side of zero for these bars.
    static double reachOf(const std::vector<ShiftDay>& shifts);
    void addScale(double reach);
    void addBars(const std::vector<ShiftBar>& bars, double width); // from left to right

private:
    double at(double score) const;
    void addBar(const ShiftBar& bar, double width);
    void addColumns(const std::vector<ShiftBar>& bars);
    void addCauses(const std::vector<ShiftBar>& bars);
    void addCause(double left, double right, const ShiftDay& shift);

    Drawing& m_drawing;
    const Lettering& m_letters;
    QRectF m_lane;
    QRectF m_words;
    double m_reach = 1;
};

} // namespace rig
