#include "app/pictures/trend_layout.h"
#include "app/wording/trend_words.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace rig {

namespace trend {

namespace {

constexpr double kDay = 86400;
constexpr double kSideBySide = 0.8; // of a rigging is shared by its readings

Spot spotOf(const TrendReading& reading, TrendAxis axis)
{
    Spot spot;
    spot.x = along(axis, reading.when, reading.rigging);
    spot.low = reading.interval.enters.inMillimetres();
    spot.high = reading.interval.refuses ? reading.interval.refuses->inMillimetres() : spot.low;
    spot.verdict = reading.verdict;
    spot.isOpen = reading.interval.isOpen();
    spot.isPart = reading.state != SeatState::Locked;
    spot.isNotSecured = reading.state == SeatState::NotSecured;
    spot.hollow = reading.setAside || reading.inDoubt;
    spot.ofBaseline = reading.ofBaseline;
    return spot;
}

void spreadRun(std::vector<Spot>& spots, std::size_t begin, std::size_t end, bool part)
{
    double count = 0;
    for (std::size_t i = begin; i < end; ++i)
        count += spots[i].isPart == part ? 1 : 0;
    double place = 0.5 - count / 2;
    for (std::size_t i = begin; i < end; ++i)
        if (spots[i].isPart == part)
            spots[i].x += place++ * kSideBySide / count;
}

Range readingsRange(const std::vector<Spot>& spots)
{
    Range range{std::numeric_limits<double>::max(), std::numeric_limits<double>::lowest()};
    for (const Spot& spot : spots) {
        range.from = std::min(range.from, spot.x);
        range.to = std::max(range.to, spot.x);
    }
    return spots.empty() ? Range{} : range;
}

double marginOf(const Range& readings, TrendAxis axis)
{
    const double least = axis == TrendAxis::ByRigging ? 0.8 : 2 * kDay;
    return std::max(least, readings.width() * 0.015);
}

// A fitting holds from the beginning of its day.
double beginOf(const TrendFitting& fitting, TrendAxis axis)
{
    if (axis == TrendAxis::ByRigging)
        return fitting.rigging;
    const auto day = std::chrono::sys_seconds{fitting.begins.localDay()};
    return static_cast<double>(day.time_since_epoch().count() - fitting.begins.offsetSeconds);
}

// Between the last reading before the fitting and its first one.
double boundaryOf(const TrendFitting& fitting, const TrendSeries& series, TrendAxis axis,
                  const std::vector<Spot>& spots, double margin)
{
    const double said = beginOf(fitting, axis);
    const auto first = std::partition_point(series.readings.begin(), series.readings.end(),
                                            [day = fitting.begins.localDay()](const TrendReading& reading) {
                                                return reading.when.localDay() < day;
                                            });
    const auto index = static_cast<std::size_t>(first - series.readings.begin());
    if (index >= spots.size())
        return said;
    if (index == 0)
        return std::min(said, spots[index].x - margin);
    const double before = spots[index - 1].x;
    const double after = spots[index].x;
    if (said > before && said < after)
        return said;
    return after > before ? (before + after) / 2 : said;
}

void include(Range& range, double value)
{
    range.from = std::min(range.from, value);
    range.to = std::max(range.to, value);
}

std::optional<Range> bandsRange(const TrendSeries& series)
{
    std::optional<Range> range;
    for (const TrendFitting& fitting : series.fittings) {
        if (!fitting.band)
            continue;
        const Range outer{std::max(0.0, fitting.band->outer.lower), fitting.band->outer.upper};
        if (!range)
            range = outer;
        include(*range, outer.from);
        include(*range, outer.to);
    }
    return range;
}

// The middle four fifths of the readings: what they are mostly like, whatever a few of them are.
std::optional<Range> mostReadings(const std::vector<Spot>& spots)
{
    std::vector<double> middles;
    for (const Spot& spot : spots)
        if (!spot.isPart && !spot.hollow)
            middles.push_back((spot.low + spot.high) / 2);
    if (middles.empty())
        return std::nullopt;
    const auto tenth = static_cast<std::ptrdiff_t>(middles.size() / 10);
    std::nth_element(middles.begin(), middles.begin() + tenth, middles.end());
    const double from = middles[static_cast<std::size_t>(tenth)];
    std::nth_element(middles.begin(), middles.end() - 1 - tenth, middles.end());
    return Range{from, *(middles.end() - 1 - tenth)};
}

Range padded(Range range, double least)
{
    const double wanted = std::max(range.width() * 1.16, least);
    const double pad = (wanted - range.width()) / 2;
    const bool touchesNothing = range.from - pad < 0;
    range.to += pad;
    range.from = touchesNothing ? std::min(0.0, range.from) : range.from - pad;
    return range;
}

// In the order of the readings. Several at one rigging stand side by side.
std::vector<Spot> spotsOf(const TrendSeries& series, TrendAxis axis)
{
    std::vector<Spot> spots;
    spots.reserve(series.readings.size());
    for (const TrendReading& reading : series.readings)
        spots.push_back(spotOf(reading, axis));
    if (axis == TrendAxis::ByDate)
        return spots;
    for (std::size_t begin = 0; begin < spots.size();) {
        std::size_t end = begin + 1;
        while (end < spots.size() && spots[end].x == spots[begin].x)
            ++end;
        if (end - begin > 1) {
            spreadRun(spots, begin, end, false);
            spreadRun(spots, begin, end, true);
        }
        begin = end;
    }
    return spots;
}

// What is shown when everything is.
TrendWindow wholeWindow(const TrendSeries& series, TrendAxis axis, const std::vector<Spot>& spots)
{
    const Range readings = readingsRange(spots);
    Range all = readings;
    for (const TrendPoint& point : series.forecast)
        include(all, along(axis, point.when, point.rigging));
    const double reach = std::max(readings.width() * 0.6, axis == TrendAxis::ByRigging ? 10.0 : 60 * kDay);
    if (const auto annual = annualAlong(series, axis); annual && *annual <= readings.to + reach)
        include(all, *annual);
    for (const TrendEvent& event : series.events) {
        const double x = along(axis, event.when, event.rigging);
        if (x >= readings.from - reach / 2 && x <= readings.to + reach / 2)
            include(all, x);
    }
    const double margin = marginOf(all, axis);
    return {axis, all.from - margin, all.to + margin};
}

std::vector<Range> fittingRanges(const TrendSeries& series, TrendAxis axis, const std::vector<Spot>& spots)
{
    const Range readings = readingsRange(spots);
    const double margin = marginOf(readings, axis);
    std::vector<Range> ranges;
    for (const TrendFitting& fitting : series.fittings) {
        const double from = boundaryOf(fitting, series, axis, spots, margin);
        if (!ranges.empty())
            ranges.back().to = std::max(ranges.back().from, from);
        ranges.push_back({from, std::max(from, readings.to + margin)});
    }
    return ranges;
}

Range lockedRange(const TrendSeries& series, const std::vector<Spot>& spots)
{
    std::optional<Range> core = bandsRange(series);
    if (!core)
        core = mostReadings(spots);
    if (!core)
        return {0, 1};
    const double reach = 1.5 * std::max(core->width(), 0.1);
    const Range allowed{core->from - reach, core->to + reach};
    Range range = *core;
    for (const Spot& spot : spots) {
        if (spot.isPart)
            continue;
        for (const double end : {spot.low, spot.isOpen ? spot.low + 0.03 : spot.high})
            if (allowed.contains(end))
                include(range, end);
    }
    return padded(range, 0.16);
}

Range partRange(const std::vector<Spot>& spots)
{
    std::optional<Range> range;
    for (const Spot& spot : spots) {
        if (!spot.isPart)
            continue;
        if (!range)
            range = Range{spot.low, spot.low};
        include(*range, spot.low);
        include(*range, spot.isOpen ? spot.low + 0.05 : spot.high);
    }
    return range ? padded(*range, 0.1) : Range{0, 1};
}

std::vector<std::uint32_t> byPlace(const std::vector<Spot>& spots)
{
    std::vector<std::uint32_t> order(spots.size());
    std::iota(order.begin(), order.end(), 0U);
    const auto isLeftOf = [&spots](std::uint32_t a, std::uint32_t b) { return spots[a].x < spots[b].x; };
    if (!std::is_sorted(order.begin(), order.end(), isLeftOf))
        std::stable_sort(order.begin(), order.end(), isLeftOf);
    return order;
}

// Between two readings that do not stand at the same place.
double leastApart(const TrendIndex& index)
{
    double least = std::numeric_limits<double>::max();
    for (std::size_t i = 1; i < index.byPlace.size(); ++i) {
        const double apart = index.spots[index.byPlace[i]].x - index.spots[index.byPlace[i - 1]].x;
        if (apart > 0)
            least = std::min(least, apart);
    }
    return least == std::numeric_limits<double>::max() ? 0 : least;
}

double middleOf(const std::vector<Spot>& spots, bool part)
{
    double sum = 0;
    double count = 0;
    for (const Spot& spot : spots)
        if (spot.isPart == part) {
            sum += (spot.low + spot.high) / 2;
            ++count;
        }
    return count > 0 ? sum / count : 0;
}

} // namespace

std::optional<double> annualAlong(const TrendSeries& series, TrendAxis axis)
{
    if (axis == TrendAxis::ByRigging)
        return series.annualRigging;
    if (!series.annualDue)
        return std::nullopt;
    return static_cast<double>(series.annualDue->utcSeconds);
}

} // namespace trend

TrendIndex indexOf(const TrendSeries& series, TrendAxis axis)
{
    using namespace trend;
    TrendIndex index;
    index.axis = axis;
    index.spots = spotsOf(series, axis);
    const std::vector<Spot>& spots = index.spots;
    index.byPlace = byPlace(spots);
    index.reach.whole = wholeWindow(series, axis, spots);
    index.reach.isEmpty = spots.empty();
    if (!spots.empty()) {
        index.reach.first = spots[index.byPlace.front()].x;
        index.reach.last = spots[index.byPlace.back()].x;
        index.reach.narrowest = narrowestOf(axis, leastApart(index));
    }
    index.fittings = fittingRanges(series, axis, spots);
    index.locked = lockedRange(series, spots);
    index.part = partRange(spots);
    index.hasPart = std::any_of(spots.begin(), spots.end(), [](const Spot& spot) { return spot.isPart; });
    index.partAbove = middleOf(spots, true) >= middleOf(spots, false);
    index.inWords = TrendWords::summary(series);
    return index;
}

} // namespace rig
