#pragma once

#include "app/pictures/trend_index.h"

#include <chrono>
#include <cmath>
#include <cstdint>
#include <ctime>
#include <string>

namespace rig::test {

inline const TrendWindow kRiggings{TrendAxis::ByRigging, 0, 0};
inline const TrendWindow kDates{TrendAxis::ByDate, 0, 0};
inline const QSizeF kUsual{900, 480};

// Noise that is the same on every machine and in every run.
class Dice
{
public:
    double even() // 0 to 1
    {
        m_state = m_state * 6364136223846793005ULL + 1442695040888963407ULL;
        return static_cast<double>(m_state >> 11) / static_cast<double>(1ULL << 53);
    }
    double bell(double scatter) // sum of twelve: close to normal
    {
        double sum = -6;
        for (int i = 0; i < 12; ++i)
            sum += even();
        return sum * scatter;
    }

private:
    std::uint64_t m_state = 17;
};

// Processor time of this thread, so that a busy machine does not count.
inline double processorMilliseconds()
{
    std::timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

inline Moment at(int year, unsigned month, unsigned day, int hour = 10)
{
    using namespace std::chrono;
    const Day on = sys_days{std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{day}};
    return {noonOf(on).utcSeconds + (hour - 14) * 3600, 7200};
}

inline Band bandAround(double middle, double inner, double outer)
{
    Band band;
    band.inner = {middle - inner, middle + inner};
    band.outer = {middle - outer, middle + outer};
    band.median = middle;
    band.readings = 12;
    return band;
}

// The leaf of 0.05 mm steps that enters, and the next that does not.
inline GapInterval leafReading(double mm)
{
    const auto um = static_cast<std::int32_t>(std::floor(mm / 0.05)) * 50;
    return {Gap::micrometres(um), Gap::micrometres(um + 50)};
}

inline Verdict verdictIn(const Band& band, const GapInterval& gap)
{
    const double low = gap.enters.inMillimetres();
    const double high = gap.refuses ? gap.refuses->inMillimetres() : 99;
    if (low >= band.outer.upper || high <= band.outer.lower)
        return Verdict::Outside;
    if (low >= band.inner.upper || high <= band.inner.lower)
        return Verdict::NearEdge;
    return high > band.outer.upper || low < band.outer.lower ? Verdict::CannotTell : Verdict::Inside;
}

inline TrendReading readingOf(const GapInterval& gap, double rigging, Moment when, Verdict verdict)
{
    TrendReading reading;
    reading.interval = gap;
    reading.rigging = rigging;
    reading.when = when;
    reading.verdict = verdict;
    reading.person = "T. Vale";
    reading.gauge = "set A";
    return reading;
}

// The invented left flap: 54 riggings, one refit, a slow opening, part-seated shown twice.
inline TrendSeries leftFlap()
{
    TrendSeries series;
    series.name = "Left flap, wing root";
    const Band first = bandAround(1.11, 0.07, 0.10);
    const Band second = bandAround(1.155, 0.045, 0.08);
    series.fittings = {{at(2024, 3, 9, 14), 209.5, first, "first baseline"},
                       {at(2025, 4, 3, 14), 223.5, second, "sleeve refitted"}};
    Dice dice;
    const auto add = [&series](const TrendReading& reading) { series.readings.push_back(reading); };
    const auto part = [&add](std::int32_t enters, double rigging, Moment when) {
        TrendReading reading = readingOf({Gap::micrometres(enters), Gap::micrometres(enters + 50)}, rigging,
                                         when, Verdict::Outside);
        reading.state = SeatState::PartSeated;
        add(reading);
    };
    for (int i = 0; i < 14; ++i) {
        const GapInterval gap = leafReading(1.11 + dice.bell(0.02));
        TrendReading reading =
            readingOf(gap, 210 + i, at(2024, 4, 1 + static_cast<unsigned>(i) * 2), Verdict::Inside);
        reading.when.utcSeconds += i * 9LL * 86400;
        reading.verdict = verdictIn(first, gap);
        reading.ofBaseline = i < 10;
        add(reading);
        if (i == 9)
            part(2300, 219.5, {reading.when.utcSeconds + 7200, 7200});
    }
    for (int i = 0; i < 40; ++i) {
        const double drift = i > 12 ? (i - 12) * 0.0023 : 0;
        const GapInterval gap = leafReading(1.165 + drift + dice.bell(0.018));
        TrendReading reading = readingOf(gap, 224 + i, at(2025, 4, 3), verdictIn(second, gap));
        reading.when.utcSeconds += i * 5LL * 86400;
        reading.ofBaseline = i < 12;
        add(reading);
        if (i == 11)
            for (const std::int32_t enters : {2250, 2350})
                part(enters, 235.4, {reading.when.utcSeconds + enters, 7200});
    }
    TrendReading wrong = readingOf(leafReading(1.32), 249, series.readings[41].when, Verdict::Outside);
    wrong.setAside = true;
    wrong.note = "wrong leaf pressed";
    series.readings.insert(series.readings.begin() + 42, wrong);
    series.readings[50].interval.refuses.reset();
    series.readings[50].verdict = Verdict::CannotTell;
    series.readings[55].interval = leafReading(1.33);
    series.readings[55].verdict = Verdict::Outside;
    series.events = {{at(2024, 7, 11, 14), 217.5, EventKind::Note, "cleaned and greased"},
                     {at(2025, 2, 20, 14), 223.2, EventKind::Annual, ""},
                     {at(2025, 4, 3, 14), 223.5, EventKind::Note, "sleeve refitted"},
                     {at(2025, 7, 11, 14), 244.5, EventKind::Note, "cleaned and greased"},
                     {at(2025, 7, 20, 14), 246.5, EventKind::Note, "leaf set B in quarantine"}};
    for (const double rigging : {236.0, 263.0})
        series.path.push_back(
            {at(2025, rigging > 250 ? 10 : 6, 1), rigging, 0, 1.165 + (rigging - 236) * 0.0023, 0});
    for (const double more : {0.0, 4.0, 8.0, 13.0}) {
        const double middle = 1.227 + more * 0.0023;
        const double half = 0.02 + more * 0.003;
        Moment when = at(2025, 10, 1);
        when.utcSeconds += static_cast<std::int64_t>(more * 11 * 86400);
        series.forecast.push_back({when, 263 + more, middle - half, middle, middle + half});
    }
    series.annualDue = at(2026, 2, 20, 14);
    series.annualRigging = 271;
    return series;
}

// What a widget asks of an index it keeps, for a series that a test looks at once.
inline std::optional<QRectF> placeOf(const TrendSeries& series, const TrendPicture& picture,
                                     std::size_t reading)
{
    return rig::placeOf(indexOf(series, picture.window.axis), picture, reading);
}

inline std::optional<std::size_t> readingAt(const TrendSeries& series, const TrendPicture& picture,
                                            QPointF point)
{
    return rig::readingAt(indexOf(series, picture.window.axis), picture, point);
}

inline TrendWindow zoomed(const TrendSeries& series, const TrendWindow& drawn, double factor, double about)
{
    return rig::zoomed(indexOf(series, drawn.axis).reach, drawn, factor, about);
}

inline TrendWindow panned(const TrendSeries& series, const TrendWindow& drawn, double share)
{
    return rig::panned(indexOf(series, drawn.axis).reach, drawn, share);
}

} // namespace rig::test
