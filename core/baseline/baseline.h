#pragma once

#include "core/baseline/band.h"
#include "core/measure/gap_interval.h"
#include "core/numbers/interval_posterior.h"

#include <optional>
#include <span>

namespace rig {

// Fewer admitted readings than this make no band; fewer than ten make a thin one (docs/method.md).
inline constexpr int kReadingsForBand = 5;
inline constexpr int kReadingsToFreeze = 10;

// Names the rules that a stored judgement was made by; raised whenever a figure could come out differently.
inline constexpr int kMethodVersion = 3;

// How one fitting behaves when locked, learnt from its admitted readings. Immutable; build once, judge often.
class Baseline
{
public:
    // Never fails: with too few or contradictory readings there is no band, and status() says why.
    static Baseline from(std::span<const GapInterval> readings);

    numbers::ReadingsStatus status() const { return m_status; }
    int readings() const { return m_readings; }
    const std::optional<Band>& band() const { return m_band; }
    // Empty exactly when the readings have no posterior at all; it may exist below kReadingsForBand.
    const std::optional<numbers::IntervalPosterior>& posterior() const { return m_posterior; }

private:
    numbers::ReadingsStatus m_status = numbers::ReadingsStatus::NoReadings;
    int m_readings = 0;
    std::optional<Band> m_band;
    std::optional<numbers::IntervalPosterior> m_posterior;
};

} // namespace rig
