#pragma once

#include "core/measure/gap.h"
#include "core/measure/gap_interval.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace rig {

enum class GaugeKind {
    Leaves, // feeler leaves
    Pins,   // pin or wire gauges
    Taper,  // reads a value at one edge, with a resolution
    GoNoGo, // a block made for one coupling: the thin end is to enter, the thick one to refuse
};

// One thickness that the set can offer: a single leaf or pin, or two leaves stacked.
struct GaugeStep
{
    Gap size;   // what is marked, summed when stacked
    Gap second; // the second leaf of a stack; 0 when single
    bool isStacked() const { return second > Gap{}; }
    bool operator==(const GaugeStep&) const = default;
};

// How a reading was taken; the interval follows from it and is what counts.
enum class Technique {
    Leaf,
    Stack,
    NoLeafEnters,
    ThickestLoose,
    Pin,
    Taper,
    Table,  // bounds taken as they stood in an imported table
    GoNoGo, // the thin end entered and the thick one did not
};

struct GaugeReading
{
    GapInterval interval;
    Technique technique = Technique::Leaf;
};

enum class GaugeProblem {
    NoSizes,    // a set without leaves can measure nothing
    NotASize,   // the set has no such leaf; neighbours are given
    NoNextSize, // the thickest there is entered: "thickest leaf still loose" is the reading
};

struct GaugeRefusal
{
    GaugeProblem problem = GaugeProblem::NoSizes;
    std::optional<Gap> below; // nearest smaller and larger size, where there are any
    std::optional<Gap> above;
};

using GaugeOutcome = std::variant<GaugeReading, GaugeRefusal>;

// Film, burr and curvature between two stacked leaves can add up to this much to what is marked. Assumed
// figure from common practice, no published source; it only ever widens a stacked reading upwards.
inline constexpr Gap kStackFilm = Gap::micrometres(10);

// Which leaves, pins or edges there are to measure with. Sizes are marked thicknesses, rising, without
// repeats.
class GaugeSet
{
public:
    GaugeSet() = default;
    GaugeSet(GaugeKind kind, std::vector<Gap> sizes);
    static GaugeSet taper(Gap resolution);

    GaugeKind kind() const { return m_kind; }
    const std::vector<Gap>& sizes() const { return m_sizes; }
    Gap resolution() const { return m_resolution; }
    bool isEmpty() const { return m_kind != GaugeKind::Taper && m_sizes.empty(); }

    // All that can be offered in rising order, of a go/no-go block its thin end alone; leaf sets continue
    // above the thickest with it and a second leaf.
    std::vector<GaugeStep> steps() const;

    // The reading when `size` enters freely and the next step does not. Taper: `size` is the value read.
    GaugeOutcome enters(Gap size) const;
    GaugeOutcome noLeafEnters() const;
    GaugeOutcome thickestLoose() const;

private:
    GaugeKind m_kind = GaugeKind::Leaves;
    std::vector<Gap> m_sizes;
    Gap m_resolution;
};

} // namespace rig
