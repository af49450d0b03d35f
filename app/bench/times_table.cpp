#include "app/bench/draws.h"
#include "app/bench/invented_airframe.h"
#include "app/bench/tables.h"
#include "core/judgement/judge.h"
#include "core/numbers/admission.h"
#include "core/numbers/change_point.h"
#include "core/numbers/grading.h"
#include "core/numbers/interval_trend.h"
#include "core/review/airframe_review.h"

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <functional>

namespace rig::bench {
namespace {

using numbers::Interval;
using numbers::IntervalPosterior;

constexpr std::uint64_t kSeed = 20270;

struct Task
{
    const char* name;
    double goalMs;
    int repeats;
    std::function<double()> run; // what it returns is added up, so that no work can be left out
};

IntervalPosterior posteriorOf(const std::vector<Interval>& readings)
{
    return *IntervalPosterior::of(numbers::intervalSetOf(readings));
}

double bandOf(const std::vector<Interval>& readings)
{
    return numbers::bandsOf(posteriorOf(readings)).outer.upper;
}

// Thirty readings, no two alike.
std::vector<Interval> thirtyDistinct()
{
    std::vector<Interval> readings;
    for (int i = 0; i < 30; ++i)
        readings.push_back({0.7 + 0.01 * i, 0.71 + 0.01 * i});
    return readings;
}

// A slow rise read every tenth day.
std::vector<Interval> sixtyRising(const ReadingKind& kind, Draws& draws)
{
    std::vector<Interval> readings;
    for (int i = 0; i < 60; ++i)
        readings.push_back(readingOf(0.5 + 0.001 * i + 0.03 * draws.normal(), kind));
    return readings;
}

double trendAndChangePoint(const std::vector<Interval>& readings)
{
    std::vector<double> days;
    for (std::size_t i = 0; i < readings.size(); ++i)
        days.push_back(10.0 * static_cast<double>(i));
    const auto trend = numbers::intervalTrendOf(days, readings);
    const auto reached = trend->firstDayReaching({0.35, 0.75}, numbers::TrendEdge::Reading95);
    return trend->slope + reached.value_or(0) + numbers::changePointOf(readings)->p;
}

// What happens between a pressed leaf and the verdict on the screen, drawing apart.
std::function<double()> typedReading(const std::vector<Interval>& readings)
{
    std::vector<GapInterval> gaps;
    for (const Interval& reading : readings) {
        const auto um = [](double mm) {
            return Gap::micrometres(static_cast<std::int32_t>(1000 * mm + 0.5));
        };
        gaps.push_back({um(reading.lower), um(reading.upper)});
    }
    return [baseline = Baseline::from(gaps)] {
        return judge({Gap::micrometres(500), Gap::micrometres(550)}, baseline, {}).tail;
    };
}

std::function<double()> reviewed(AirframeFacts facts)
{
    const Day last = facts.riggingRecords.back().begins.localDay();
    return [facts = std::move(facts), last] {
        return airframeReviewOf(facts, reviewPeriods(facts, last).front())
            .couplings.front()
            .movement->path->first.moved();
    };
}

double medianMsOf(const Task& task, double& sum)
{
    std::vector<double> times;
    for (int i = 0; i < task.repeats; ++i) {
        const std::clock_t begin = std::clock();
        sum += task.run();
        times.push_back(1e3 * static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC);
    }
    std::ranges::nth_element(times, times.begin() + task.repeats / 2);
    return times[static_cast<std::size_t>(task.repeats / 2)];
}

std::vector<Task> tasks()
{
    Draws draws{kSeed};
    const auto leaves = readingsOf(30, 0.5, 0.03, kLeaves, draws);
    const auto distinct = thirtyDistinct();
    std::vector<std::vector<Interval>> hangar;
    for (int i = 0; i < 1000; ++i)
        hangar.push_back(readingsOf(10, 0.3 + draws.uniform(), 0.03, kLeaves, draws));

    return {
        {"band from 30 leaf readings", 1, 201, [leaves] { return bandOf(leaves); }},
        {"band from 30 distinct readings of 0.01 mm", 2.5, 201, [distinct] { return bandOf(distinct); }},
        {"bands of 1000 couplings, 10 leaf readings each", 1000, 5,
         [hangar] {
             double sum = 0;
             for (const auto& readings : hangar)
                 sum += bandOf(readings);
             return sum;
         }},
        {"admission test of 30 distinct readings of 0.01 mm", 30, 51,
         [set = numbers::intervalSetOf(distinct)] {
             return static_cast<double>(numbers::admissionOf(set).size());
         }},
        {"trend, forecast and change point of 60 leaf readings", 20, 51,
         [rising = sixtyRising(kLeaves, draws)] { return trendAndChangePoint(rising); }},
        {"the same of 60 readings of 0.01 mm", 20, 51,
         [rising = sixtyRising(kTaper, draws)] { return trendAndChangePoint(rising); }},
        {"review of eight couplings, 300 riggings", 100, 11, reviewed(inventedAirframe(8, 300, kSeed))},
        {"review of one coupling, 100 000 riggings", 2000, 3, reviewed(inventedAirframe(1, 100'000, kSeed))},
        {"verdict of one typed reading", 16, 201, typedReading(leaves)},
    };
}

} // namespace

void printTimes()
{
    std::printf("| What | median, ms | goal, ms | share of the goal |\n|---|---|---|---|\n");
    double sum = 0;
    for (const Task& task : tasks()) {
        const double ms = medianMsOf(task, sum);
        std::printf("| %s | %.3g | %g | %.2f |\n", task.name, ms, task.goalMs, ms / task.goalMs);
    }
    std::printf("\nProcessor time of one thread. Check sum %.6g.\n", sum);
}

} // namespace rig::bench
