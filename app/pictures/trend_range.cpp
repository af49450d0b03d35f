#include "app/pictures/trend_layout.h"

#include <algorithm>
#include <cmath>
#include <limits>

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
    spot.isPart = reading.state == SeatState::PartSeated;
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

} // namespace

double along(TrendAxis axis, const Moment& when, double rigging)
{
    return axis == TrendAxis::ByDate ? static_cast<double>(when.utcSeconds) : rigging;
}

std::optional<double> annualAlong(const TrendSeries& series, TrendAxis axis)
{
    if (axis == TrendAxis::ByRigging)
        return series.annualRigging;
    if (!series.annualDue)
        return std::nullopt;
    return static_cast<double>(series.annualDue->utcSeconds);
}

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

} // namespace trend

namespace {

double narrowest(const std::vector<trend::Spot>& spots, TrendAxis axis)
{
    std::vector<double> places;
    places.reserve(spots.size());
    for (const trend::Spot& spot : spots)
        places.push_back(spot.x);
    std::sort(places.begin(), places.end());
    double least = std::numeric_limits<double>::max();
    for (std::size_t i = 1; i < places.size(); ++i)
        if (places[i] > places[i - 1])
            least = std::min(least, places[i] - places[i - 1]);
    if (least == std::numeric_limits<double>::max())
        least = 0;
    // Two riggings or two days: narrower, no axis has ticks to tell where one is.
    return std::max(least, axis == TrendAxis::ByRigging ? 2.0 : 2 * 86400.0);
}

TrendWindow kept(TrendWindow window, const TrendWindow& whole, const std::vector<trend::Spot>& spots)
{
    const double width = window.to - window.from;
    double first = whole.to;
    double last = whole.from;
    for (const trend::Spot& spot : spots) {
        first = std::min(first, spot.x);
        last = std::max(last, spot.x);
    }
    const double leastFrom = std::min(whole.from, first - width / 2);
    const double mostFrom = std::max(whole.to, last + width / 2) - width;
    window.from = std::clamp(window.from, leastFrom, std::max(leastFrom, mostFrom));
    window.to = window.from + width;
    return window;
}

} // namespace

TrendWindow zoomed(const TrendSeries& series, const TrendWindow& drawn, double factor, double about)
{
    const std::vector<trend::Spot> spots = trend::spotsOf(series, drawn.axis);
    const TrendWindow whole = trend::wholeWindow(series, drawn.axis, spots);
    if (spots.empty() || drawn.isWhole() || factor <= 0)
        return whole;
    const double width = drawn.to - drawn.from;
    const double wanted =
        std::max(width / factor, std::min(narrowest(spots, drawn.axis), whole.to - whole.from));
    if (wanted >= whole.to - whole.from)
        return whole;
    const double place = drawn.from + about * width;
    return kept({drawn.axis, place - about * wanted, place + (1 - about) * wanted}, whole, spots);
}

TrendWindow panned(const TrendSeries& series, const TrendWindow& drawn, double share)
{
    const std::vector<trend::Spot> spots = trend::spotsOf(series, drawn.axis);
    const TrendWindow whole = trend::wholeWindow(series, drawn.axis, spots);
    if (spots.empty() || drawn.isWhole())
        return whole;
    const double by = share * (drawn.to - drawn.from);
    return kept({drawn.axis, drawn.from + by, drawn.to + by}, whole, spots);
}

} // namespace rig
