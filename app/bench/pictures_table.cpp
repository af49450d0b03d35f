#include "app/bench/draws.h"
#include "app/bench/tables.h"
#include "app/pictures/aircraft.h"
#include "app/pictures/trend_index.h"

#include <QGuiApplication>
#include <QImage>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <vector>

namespace rig::bench {
namespace {

constexpr std::uint64_t kSeed = 20271;
constexpr QSize kFrame{1280, 640};
constexpr double kGoalMs = 16; // one frame of a screen
constexpr int kMostReadings = 100'000;
constexpr int kFrames = 21;
constexpr int kCouplings = 8;

double processorMs()
{
    return 1e3 * static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

Moment readAt(int reading)
{
    return {1'600'000'000 + reading * 1800LL, 0}; // every half hour: far more than a glider will see
}

Band invented()
{
    Band band;
    band.inner = {1.085, 1.235};
    band.outer = {1.050, 1.270};
    band.median = 1.160;
    band.readings = 30;
    return band;
}

Verdict verdictIn(const Band& band, double mm)
{
    if (mm < band.outer.lower || mm > band.outer.upper)
        return Verdict::Outside;
    return mm < band.inner.lower || mm > band.inner.upper ? Verdict::NearEdge : Verdict::Inside;
}

// One coupling that is refitted once and shown part-seated now and then, with an event every hundred
// readings.
TrendSeries seriesOf(int readings)
{
    Draws draws{kSeed};
    const Band band = invented();
    TrendSeries series;
    series.name = "invented";
    series.fittings = {{readAt(0), -0.5, band, {}},
                       {readAt(readings / 2), readings / 2 - 0.5, band, "refitted"}};
    for (int i = 0; i < readings; ++i) {
        TrendReading reading;
        const double mm = 1.16 + 0.035 * draws.normal();
        reading.state = i % 97 == 50 ? SeatState::PartSeated : SeatState::Locked;
        const double shown = reading.state == SeatState::PartSeated ? mm + 1 : mm;
        const auto um = static_cast<std::int32_t>(std::lround(shown * 1000));
        reading.interval = {Gap::micrometres(um - 10), Gap::micrometres(um + 10)};
        reading.when = readAt(i);
        reading.rigging = i;
        reading.verdict = verdictIn(band, mm);
        series.readings.push_back(std::move(reading));
        if (i % 100 == 30)
            series.events.push_back({readAt(i), static_cast<double>(i),
                                     i % 1000 == 30 ? EventKind::Annual : EventKind::Note,
                                     "cleaned and greased"});
    }
    return series;
}

AircraftSeries aircraftOf(int readings)
{
    Draws draws{kSeed};
    AircraftSeries series;
    for (int c = 0; c < kCouplings; ++c) {
        AircraftCoupling coupling;
        coupling.name = "coupling " + std::to_string(c + 1);
        for (int i = 0; i < readings / kCouplings; ++i) {
            const double score = draws.normal();
            const Verdict verdict = std::abs(score) > 3      ? Verdict::Outside
                                    : std::abs(score) > 1.96 ? Verdict::NearEdge
                                                             : Verdict::Inside;
            coupling.points.push_back({readAt(i), static_cast<double>(i), score, verdict, false});
        }
        series.couplings.push_back(std::move(coupling));
    }
    for (int i = 0; i < readings / kCouplings; ++i)
        series.shifts.push_back(
            {readAt(i), static_cast<double>(i), 0.4 * draws.normal(), kCouplings, i % 500 == 7, {}});
    return series;
}

// Painted as a widget paints: onto what is there already.
template <typename Picture> void paintOnto(QImage& image, const Picture& picture)
{
    QPainter painter{&image};
    painter.fillRect(image.rect(), Theme::light().color(Role::Card));
    paint(painter, picture, Theme::light());
}

struct Times
{
    double first = 0; // with what is worked out once
    double pan = 0;   // median
};

template <typename FirstLayout, typename Layout>
Times timesOf(const FirstLayout& first, const Layout& layout, const AxisReach& reach, double share)
{
    QImage image{kFrame, QImage::Format_RGB32};
    Times times;
    const double begin = processorMs();
    paintOnto(image, first());
    times.first = processorMs() - begin;
    const double width = (reach.whole.to - reach.whole.from) * share;
    std::vector<double> frames;
    for (int i = 0; i < kFrames; ++i) {
        const double from = reach.whole.from + (reach.whole.to - reach.whole.from - width) * 0.5 +
                            width * 0.003 * (i - kFrames / 2); // a few pixels a frame
        const double before = processorMs();
        paintOnto(image, layout(TrendWindow{reach.whole.axis, from, from + width}));
        frames.push_back(processorMs() - before);
    }
    std::ranges::nth_element(frames, frames.begin() + kFrames / 2);
    times.pan = frames[kFrames / 2];
    return times;
}

Times trendTimes(const TrendSeries& series, TrendAxis axis, double share)
{
    const TrendIndex index = indexOf(series, axis);
    return timesOf(
        [&] {
            return layoutTrend(series, {axis, 0, 0}, kFrame, {});
        },
        [&](const TrendWindow& window) { return layoutTrend(series, index, window, kFrame, {}); },
        index.reach, share);
}

Times aircraftTimes(const AircraftSeries& series, TrendAxis axis, double share)
{
    return timesOf(
        [&] {
            return layoutAircraft(series, {axis, 0, 0}, 2, kFrame, {});
        },
        [&](const TrendWindow& window) { return layoutAircraft(series, window, 2, kFrame, {}); },
        reachOf(series, axis), share);
}

// Whether the goal is met, or does not hold for so few.
bool printRow(const char* picture, int readings, TrendAxis axis, double share, const Times& times)
{
    const bool counts = readings == kMostReadings;
    std::printf("| %s | %d | %s | %.0f %% | %.1f | %.1f | %s |\n", picture, readings,
                axis == TrendAxis::ByDate ? "date" : "rigging", share * 100, times.first, times.pan,
                !counts               ? ""
                : times.pan < kGoalMs ? "met"
                                      : "missed");
    return !counts || times.pan < kGoalMs;
}

} // namespace

bool printPictureTimes(int argc, char** argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application{argc, argv};
    if (!loadFonts())
        return false;
    std::printf("Goal: a pan frame of %d readings below %.0f ms.\n\n"
                "| Picture | Readings | By | Shown | First, ms | Pan frame, ms | Goal |\n"
                "|---|---|---|---|---|---|---|\n",
                kMostReadings, kGoalMs);
    bool isMet = true;
    for (const int readings : {100, 10'000, kMostReadings}) {
        const TrendSeries series = seriesOf(readings);
        const AircraftSeries aircraft = aircraftOf(readings);
        for (const TrendAxis axis : {TrendAxis::ByDate, TrendAxis::ByRigging})
            for (const double share : {1.0, 0.1}) {
                isMet &= printRow("one coupling", readings, axis, share, trendTimes(series, axis, share));
                isMet &=
                    printRow("all couplings", readings, axis, share, aircraftTimes(aircraft, axis, share));
            }
    }
    std::printf("\nProcessor time of one thread, %d by %d pixels offscreen; the median of %d pan frames.\n",
                kFrame.width(), kFrame.height(), kFrames);
    return isMet;
}

} // namespace rig::bench
