#include "core/numbers/movement.h"

#include "core/numbers/interval_set.h"
#include "core/numbers/movement_series.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace rig::numbers {
namespace {

using enum MovementKind;

// Docs/method.md M.
constexpr double kPriorSteady = 0.90;
constexpr double kPriorChange = 0.05; // of a step, and of a drift
constexpr double kSettled = 0.95;     // the chance from which on a second change is looked for

constexpr double kWorthFitting = 7;     // ln units below the best place
constexpr std::size_t kMostFitted = 60; // places of a kind that are fitted one by one
constexpr double kKindMatters = 0.05;   // the chance below which its places are not fitted one by one
constexpr double kWorthKeeping = 1e-4;  // of the likeliest place's chance
constexpr int kMostScreens = 6;
constexpr double kFarthestReading = 1e6; // mm: no gap is a kilometre wide
double logMeanExp(std::span<const double> logs)
{
    const double most = std::ranges::max(logs);
    if (!std::isfinite(most))
        return -kInfinity;
    double sum = 0;
    for (const double log : logs)
        sum += std::exp(log - most);
    return most + std::log(sum / static_cast<double>(logs.size()));
}

// The ln likelihood of every place around one that was fitted: the squares of a screen of its
// pseudo-readings, with sigma following as its information says. (N / 2) ln(squares) on exact readings.
class Neighbourhood
{
public:
    Neighbourhood(const PathFit& fit, std::span<const PseudoReading> pseudo, std::span<const double> riggings,
                  const ChangePlaces& fitted)
        : m_fit{fit}, m_screen{pseudo, riggings}, m_squares{
                                                      m_screen.solved(fitted.first, fitted.second).squares}
    {
    }

    const PathFit& fit() const { return m_fit; }
    const MovementScreen& screen() const { return m_screen; }
    double logAt(double squares) const
    {
        const double more = squares - m_squares;
        const double information = m_fit.sigmaInformation;
        if (!(information < kInfinity) || !(information > 0))
            return m_fit.logLikelihood - 0.5 * more;
        return m_fit.logLikelihood - 0.25 * information * std::log1p(std::max(-0.9, 2 * more / information));
    }

private:
    PathFit m_fit;
    MovementScreen m_screen;
    double m_squares;
};

// A place with its ln likelihood and what follows from it.
struct Candidate
{
    ChangePlaces places;
    double log = -kInfinity;
    Vector3 coefficients{};
    Matrix3 covariance{};
    double sigma = 0;
};

struct KindFound
{
    double logEvidence = -kInfinity; // without the prior
    std::vector<Candidate> candidates;
};

class MovementSearch
{
public:
    explicit MovementSearch(std::span<const SeriesReading> readings) : m_series{readings} {}

    std::optional<Movement> found(MovementDepth depth)
    {
        const auto steady = m_series.fitOf({}, m_series.robustStart());
        if (!steady)
            return std::nullopt;
        Movement movement;
        movement.readings = static_cast<int>(m_series.size());
        movement.riggings = movement.readings - static_cast<int>(m_series.baseline());
        movement.medianWidth = m_series.medianWidth();
        m_logs.push_back(std::log(kPriorSteady) + steady->logLikelihood - m_series.logCount());
        m_found.push_back({0, {candidateOf({}, *steady)}});

        if (depth == MovementDepth::Steady) {
            tell(movement);
            return movement;
        }
        const std::vector<PseudoReading> robust = m_series.robustReadings();
        for (const MovementKind kind : {Step, Drift})
            lookFor(kind, robust);
        if (depth == MovementDepth::Full) {
            refineKindsThatMatter();
            if (chanceMoved() >= kSettled)
                lookForSecond(robust);
        }
        tell(movement);
        return movement;
    }

private:
    std::vector<ChangePlaces> singlePlaces(MovementKind kind) const
    {
        std::vector<ChangePlaces> places;
        for (std::size_t i = m_series.firstPlace(kind, m_series.baseline()); i < m_series.endPlace(kind); ++i)
            places.push_back({{kind, i}, {}});
        return places;
    }

    // The place with the least squares in a screen.
    static ChangePlaces bestIn(const MovementScreen& screen, const std::vector<ChangePlaces>& places)
    {
        double least = kInfinity;
        ChangePlaces best = places.front();
        for (const ChangePlaces& one : places) {
            const double squares = screen.squaresLeft(one.first, one.second);
            if (squares < least) {
                least = squares;
                best = one;
            }
        }
        return best;
    }

    static bool areSame(const ChangePlaces& a, const ChangePlaces& b)
    {
        return a.first.index == b.first.index && a.second.index == b.second.index;
    }

    // The best place by turns of screen and fit, from pseudo-readings that know no path yet.
    template <typename BestIn>
    std::optional<std::pair<ChangePlaces, Neighbourhood>> bestOf(std::span<const PseudoReading> robust,
                                                                 const BestIn& bestPlaceIn) const
    {
        const MovementScreen first{robust, m_series.riggings()};
        ChangePlaces best = bestPlaceIn(first);
        auto fit = m_series.fitOf(best, m_series.startAt(first.solved(best.first, best.second), robust));
        std::optional<std::pair<ChangePlaces, Neighbourhood>> found;
        for (int i = 0; i < kMostScreens && fit; ++i) {
            if (found && found->second.fit().logLikelihood >= fit->logLikelihood)
                break;
            found.emplace(
                best, Neighbourhood{*fit, m_series.pseudoReadingsAt(best, *fit), m_series.riggings(), best});
            const MovementScreen& screen = found->second.screen();
            const ChangePlaces next = bestPlaceIn(screen);
            if (areSame(next, best))
                break;
            best = next;
            PathFit start = *fit;
            start.coefficients = screen.solved(best.first, best.second).coefficients;
            fit = m_series.fitOf(best, start);
        }
        return found;
    }

    Candidate candidateOf(const ChangePlaces& places, const PathFit& fit) const
    {
        return {places, fit.logLikelihood, fit.coefficients, fit.covariance, fit.sigma};
    }

    static double logAt(const ChangePlaces& places, const Neighbourhood& around)
    {
        return around.logAt(around.screen().squaresLeft(places.first, places.second));
    }
    static Candidate candidateAt(const ChangePlaces& places, const Neighbourhood& around)
    {
        const auto solution = around.screen().solved(places.first, places.second);
        return {places, logAt(places, around), solution.coefficients, solution.covariance,
                around.fit().sigma};
    }

    void lookFor(MovementKind kind, std::span<const PseudoReading> robust)
    {
        KindFound found;
        const std::vector<ChangePlaces> places = singlePlaces(kind);
        if (!places.empty()) {
            const auto best =
                bestOf(robust, [&](const MovementScreen& screen) { return bestIn(screen, places); });
            if (best) {
                found.candidates = candidatesAmong(places, best->second);
                weigh(found, 1.5);
            }
        }
        m_logs.push_back(std::log(kPriorChange) + found.logEvidence);
        m_found.push_back(std::move(found));
    }

    // Those that are worth telling; to the evidence the others would add next to nothing, and add nothing.
    static std::vector<Candidate> candidatesAmong(const std::vector<ChangePlaces>& places,
                                                  const Neighbourhood& around)
    {
        std::vector<Candidate> candidates;
        for (const ChangePlaces& one : places) {
            const double log = logAt(one, around);
            if (log - around.fit().logLikelihood > std::log(kWorthKeeping))
                candidates.push_back(candidateAt(one, around));
        }
        return candidates;
    }

    // A single change: mean over all its places, penalty of the values that are free.
    void weigh(KindFound& found, double penalty) const
    {
        std::vector<double> logs;
        for (const Candidate& one : found.candidates)
            logs.push_back(one.log);
        logs.resize(singlePlaces(found.candidates.front().places.first.kind).size(), -kInfinity);
        found.logEvidence = logMeanExp(logs) - penalty * m_series.logCount();
    }

    std::vector<double> chances() const
    {
        const double most = std::ranges::max(m_logs);
        std::vector<double> result;
        double sum = 0;
        for (const double log : m_logs)
            sum += result.emplace_back(std::exp(log - most));
        for (double& chance : result)
            chance /= sum;
        return result;
    }

    double chanceMoved() const { return 1 - chances().front(); }

    void refineKindsThatMatter()
    {
        const std::vector<double> before = chances();
        for (std::size_t kind = 1; kind < m_found.size(); ++kind) {
            KindFound& found = m_found[kind];
            if (before[kind] < kKindMatters || found.candidates.empty())
                continue;
            refine(found.candidates);
            weigh(found, 1.5);
            m_logs[kind] = std::log(kPriorChange) + found.logEvidence;
        }
    }

    void refine(std::vector<Candidate>& candidates) const
    {
        std::vector<std::size_t> order(candidates.size());
        std::iota(order.begin(), order.end(), 0);
        std::ranges::stable_sort(order, std::ranges::greater{},
                                 [&](std::size_t i) { return candidates[i].log; });
        const double enough = candidates[order.front()].log - kWorthFitting;
        for (std::size_t i = 0; i < std::min(kMostFitted, order.size()); ++i) {
            Candidate& one = candidates[order[i]];
            if (one.log < enough)
                break;
            PathFit start;
            start.coefficients = one.coefficients;
            start.sigma = one.sigma;
            if (const auto fit = m_series.fitOf(one.places, start))
                one = candidateOf(one.places, *fit);
        }
    }

    // The best pair: a coarse net over all, then each change in turn while the other stays.
    ChangePlaces bestPairIn(const MovementScreen& screen, MovementKind first, MovementKind second) const
    {
        const std::size_t begin = m_series.firstPlace(first, m_series.baseline());
        const std::size_t end = m_series.endPlace(second);
        const std::size_t mesh = std::max<std::size_t>(1, (end - begin) / 50);
        double least = kInfinity;
        ChangePlaces best;
        const auto tryPlaces = [&](std::size_t i, std::size_t j) {
            const ChangePlaces one{{first, i}, {second, j}};
            const double squares = screen.squaresLeft(one.first, one.second);
            if (squares < least) {
                least = squares;
                best = one;
            }
        };
        for (std::size_t i = begin; i < end; i += mesh)
            for (std::size_t j = m_series.secondFrom({first, i}, second); j < end; j += mesh)
                tryPlaces(i, j);
        for (double before = kInfinity; least < before;) {
            before = least;
            const std::size_t j = best.second.index;
            for (std::size_t i = begin; i < end && m_series.secondFrom({first, i}, second) <= j; ++i)
                tryPlaces(i, j);
            const std::size_t i = best.first.index;
            for (std::size_t k = m_series.secondFrom(best.first, second); k < end; ++k)
                tryPlaces(i, k);
        }
        return best;
    }

    void lookForSecond(std::span<const PseudoReading> robust)
    {
        const std::size_t singles = m_logs.size();
        for (std::size_t i = 1; i < singles; ++i)
            m_logs[i] += std::log(kPriorSteady); // no second change
        for (const MovementKind first : {Step, Drift})
            for (const MovementKind second : {Step, Drift})
                lookForPair(first, second, robust);
    }

    void lookForPair(MovementKind first, MovementKind second, std::span<const PseudoReading> robust)
    {
        const std::size_t begin = m_series.firstPlace(first, m_series.baseline());
        if (m_series.secondFrom({first, begin}, second) >= m_series.endPlace(second))
            return;
        const auto best =
            bestOf(robust, [&](const MovementScreen& screen) { return bestPairIn(screen, first, second); });
        if (!best)
            return;
        m_found.push_back(pairsAround(best->first, best->second));
        m_logs.push_back(2 * std::log(kPriorChange) + m_found.back().logEvidence);
    }

    // The places of either change while the other stays at its best are taken as independent of each other.
    KindFound pairsAround(const ChangePlaces& best, const Neighbourhood& around) const
    {
        const std::size_t begin = m_series.firstPlace(best.first.kind, m_series.baseline());
        const std::size_t end = m_series.endPlace(best.second.kind);
        const double top = logAt(best, around);
        std::vector<double> logs;
        std::vector<std::size_t> firsts;
        std::vector<std::size_t> seconds;
        std::size_t pairs = 0;
        for (std::size_t i = begin; m_series.secondFrom({best.first.kind, i}, best.second.kind) < end; ++i) {
            pairs += end - m_series.secondFrom({best.first.kind, i}, best.second.kind);
            if (m_series.secondFrom({best.first.kind, i}, best.second.kind) > best.second.index)
                continue;
            logs.push_back(logAt({{best.first.kind, i}, best.second}, around) - top);
            if (logs.back() > std::log(kWorthKeeping))
                firsts.push_back(i);
        }
        double massFirst = 0;
        for (const double log : logs)
            massFirst += std::exp(log);
        double massSecond = 0;
        for (std::size_t j = m_series.secondFrom(best.first, best.second.kind); j < end; ++j) {
            const double log = logAt({best.first, {best.second.kind, j}}, around) - top;
            massSecond += std::exp(log);
            if (log > std::log(kWorthKeeping))
                seconds.push_back(j);
        }
        KindFound found;
        found.logEvidence =
            top + std::log(massFirst * massSecond / static_cast<double>(pairs)) - 2 * m_series.logCount();
        const std::size_t stepFirst = 1 + firsts.size() / kMostFitted;
        const std::size_t stepSecond = 1 + seconds.size() / kMostFitted;
        for (std::size_t i = 0; i < firsts.size(); i += stepFirst)
            for (std::size_t j = 0; j < seconds.size(); j += stepSecond) {
                const ChangePlace one{best.first.kind, firsts[i]};
                if (seconds[j] >= m_series.secondFrom(one, best.second.kind))
                    found.candidates.push_back(candidateAt({one, {best.second.kind, seconds[j]}}, around));
            }
        return found;
    }

    PathChange changeOf(ChangePlace place) const
    {
        return {place.kind, place.kind == Steady ? 0 : m_series.riggings()[place.index]};
    }

    // The candidates of one kind as ways that share its chance.
    void addWays(Movement& movement, const KindFound& found, double chance) const
    {
        double most = -kInfinity;
        for (const Candidate& one : found.candidates)
            most = std::max(most, one.log);
        double sum = 0;
        const std::size_t begin = movement.ways.size();
        for (const Candidate& one : found.candidates) {
            const double share = std::exp(one.log - most);
            if (!(share > kWorthKeeping))
                continue;
            sum += share;
            const auto n = static_cast<double>(m_series.size());
            const double df = std::max(1.0, n - 1 - static_cast<double>(one.places.shapes()));
            MovementWay way{{changeOf(one.places.first), changeOf(one.places.second)},
                            share,
                            one.coefficients,
                            one.covariance,
                            one.sigma * std::sqrt(n / df),
                            df};
            for (Vector3& row : way.covariance)
                for (double& entry : row)
                    entry *= n / df;
            movement.ways.push_back(way);
        }
        for (std::size_t i = begin; i < movement.ways.size(); ++i)
            movement.ways[i].chance *= chance / sum;
    }

    static void addChance(KindChances& chances, MovementKind kind, double chance)
    {
        switch (kind) {
        case Steady:
            chances.steady += chance;
            return;
        case Step:
            chances.step += chance;
            return;
        case Drift:
            chances.drift += chance;
            return;
        }
    }

    void tell(Movement& movement) const
    {
        const std::vector<double> all = chances();
        movement.first = {0, 0, 0};
        movement.second = {0, 0, 0};
        for (std::size_t i = 0; i < m_found.size(); ++i) {
            if (m_found[i].candidates.empty())
                continue;
            const ChangePlaces& places = m_found[i].candidates.front().places;
            addChance(movement.first, places.first.kind, all[i]);
            addChance(movement.second, places.second.kind, all[i]);
            addWays(movement, m_found[i], all[i]);
        }
        std::ranges::stable_sort(movement.ways, std::ranges::greater{}, &MovementWay::chance);
    }

    MovementSeries m_series;
    std::vector<double> m_logs; // prior and evidence of each kind
    std::vector<KindFound> m_found;
};

} // namespace

std::optional<Movement> movementOf(std::span<const SeriesReading> readings, MovementDepth depth)
{
    std::vector<SeriesReading> kept;
    std::vector<Interval> intervals;
    for (const SeriesReading& reading : readings) {
        if (reading.interval.isOpenBothWays() || !std::isfinite(reading.rigging))
            continue;
        kept.push_back(reading);
        intervals.push_back(reading.interval);
    }
    const auto isTooFar = [](const Interval& interval) {
        const auto isFar = [](double bound) {
            return std::isfinite(bound) && std::abs(bound) > kFarthestReading;
        };
        return isFar(interval.lower) || isFar(interval.upper);
    };
    if (intervalSetOf(intervals).status != ReadingsStatus::Ok || std::ranges::any_of(intervals, isTooFar))
        return std::nullopt;
    const auto byRigging = [](const SeriesReading& reading) { return std::max(0.0, reading.rigging); };
    std::ranges::stable_sort(kept, {}, byRigging);
    return MovementSearch{kept}.found(depth);
}

} // namespace rig::numbers
