#pragma once

#include "app/bench/draws.h"
#include "core/numbers/season.h"

#include <map>
#include <vector>

namespace rig::bench {

// What is told of a season in one row of the table.
struct SeasonSetting
{
    ReadingKind kind;
    double sigma = 0;     // mm, from rigging to rigging
    double readerOff = 0; // mm, of the person who reads 12 of 90 days
};

enum class Plot { Steady, Step, Drift, WiderScatter, OneStranger };

// One coupling's truth. Its movement begins at a rigging, in one fitting.
struct ToldCoupling
{
    Plot plot = Plot::Steady;
    bool isBig = false; // reaches 6 sigma 20 riggings after its beginning, else 4 or 5
    double begins = 0;  // of a step the first rigging at the new level, of a drift the last at the old
    double size = 0;    // mm; of a drift mm per 100 riggings
};

// Invented readings of one season and the truth about them.
struct ToldSeason
{
    std::vector<numbers::SeasonReading> readings;
    std::vector<ToldCoupling> fittings; // by label
    std::map<int, double> persons;      // true offsets, mm
    std::map<int, double> gauges;
    int lowReader = 0;     // the person who reads 12 of 90 days
    bool hasLoner = false; // a person and a set that only ever come together
    int loner = 0;
    int bentGauge = 0; // read on three days
};

// Eight couplings, 90 riggings, a baseline of 12. Several stories at once: in each season one movement of 6
// sigma and one of 4 sigma, a wider scatter at the end, one stranger, a gauge that reads high on three days,
// a low reader; by turns two couplings that drift alike, a new fitting in the middle, a person who only ever
// uses one set, a person and a set that only come together. One reading in ten is missing.
ToldSeason toldSeason(const SeasonSetting& setting, int number, std::uint64_t seed);

} // namespace rig::bench
