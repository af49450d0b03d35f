#include "core/numbers/interval_regression.h"

#include "core/numbers/cholesky.h"
#include "core/numbers/interval_curve.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace rig::numbers {
namespace {

constexpr int kMostFitSteps = 200;
constexpr int kMostHalvings = 60;
constexpr int kMostLoadings = 16;
constexpr double kSmallDecrement = 1e-16; // gradient' H^-1 gradient: twice what a step can still gain
constexpr double kRounding = 1e-12;       // of the log-likelihood: a fall by this much is no fall
constexpr double kSmallestTau = 1e-9;     // sigma 1e9 times the scatter of the midpoints: no maximum

// Index of level/sigma, slope/sigma and 1/sigma.
constexpr std::size_t kLevel = 0;
constexpr std::size_t kSlope = 1;
constexpr std::size_t kTau = 2;

// A reading in the units of the fit.
struct Term
{
    IntervalKind kind = IntervalKind::Exact;
    double x = 0;
    double place = 0; // value, middle, or the only finite bound
    double half = 0;  // of the width; 0 unless closed
    double count = 0;
};

// The fit works with (value - centre) / scale and x / xScale.
struct Units
{
    double centre = 0;
    double scale = 1;
    double xScale = 1;
};

bool hasPlace(const RegressionReading& reading)
{
    return std::isfinite(reading.x) && reading.interval.holdsANumber();
}

// The smallest and the largest x among readings.
struct Reach
{
    double least = kInfinity;
    double most = -kInfinity;

    void include(double x)
    {
        least = std::min(least, x);
        most = std::max(most, x);
    }
};

// Whether the readings hold the predictor from both sides. It can run away only along a shift that lowers no
// reading's probability: nowhere down where there is a lower bound, nowhere up where there is an upper one.
// No straight line but 0 does that just when either kind of bound reaches beyond the other.
bool isHeld(std::span<const RegressionReading> readings, Predictor predictor)
{
    Reach withLower;
    Reach withUpper;
    for (const auto& [x, interval, count] : readings) {
        if (std::isfinite(interval.lower))
            withLower.include(x);
        if (std::isfinite(interval.upper))
            withUpper.include(x);
    }
    if (predictor == Predictor::Line)
        return withLower.most > withUpper.least && withUpper.most > withLower.least;
    return withLower.most > -kInfinity && withUpper.most > -kInfinity;
}

struct Spread
{
    double middle = 0; // median of the places
    double mean = 0;
    double deviation = 0; // divided by n
};

Spread spreadOf(std::span<const RegressionReading> readings)
{
    std::vector<double> places;
    double sum = 0;
    double total = 0;
    for (const RegressionReading& reading : readings) {
        places.push_back(reading.interval.place());
        sum += reading.count * places.back();
        total += reading.count;
    }
    Spread spread;
    spread.mean = sum / total;
    double squares = 0;
    for (std::size_t i = 0; i < readings.size(); ++i)
        squares += readings[i].count * (places[i] - spread.mean) * (places[i] - spread.mean);
    spread.deviation = std::sqrt(squares / total);
    const auto middle = places.begin() + static_cast<std::ptrdiff_t>(places.size() / 2);
    std::ranges::nth_element(places, middle);
    spread.middle = *middle;
    return spread;
}

std::vector<Term> termsOf(std::span<const RegressionReading> readings, const Units& units)
{
    std::vector<Term> terms;
    for (const auto& [x, interval, count] : readings)
        terms.push_back(
            {intervalKindOf(interval), x / units.xScale, (interval.place() - units.centre) / units.scale,
             interval.isClosed() ? 0.5 * interval.width() / units.scale : 0, static_cast<double>(count)});
    return terms;
}

// The log-likelihood at a point, its gradient, and its observed information (minus the second derivatives).
struct Height
{
    double log = 0;
    Vector3 gradient{};
    Matrix3 information{};
};

Height heightAt(const Vector3& point, std::span<const Term> terms)
{
    Height height;
    const double tau = point[kTau];
    for (const Term& term : terms) {
        const double m = tau * term.place - point[kLevel] - point[kSlope] * term.x;
        const IntervalCurve curve = intervalCurveOf(term.kind, m, tau * term.half);
        const Vector3 byM{-1, -term.x, term.place};
        const Vector3 byD{0, 0, term.half};
        height.log += term.count * curve.log;
        for (std::size_t i = 0; i < 3; ++i) {
            height.gradient[i] += term.count * (curve.m * byM[i] + curve.d * byD[i]);
            for (std::size_t j = 0; j < 3; ++j)
                height.information[i][j] -=
                    term.count * (curve.mm * byM[i] * byM[j] + curve.dd * byD[i] * byD[j] +
                                  curve.md * (byM[i] * byD[j] + byD[i] * byM[j]));
        }
        if (term.kind == IntervalKind::Exact) { // the density has 1/sigma in front
            height.log += term.count * std::log(tau);
            height.gradient[kTau] += term.count / tau;
            height.information[kTau][kTau] += term.count / (tau * tau);
        }
    }
    return height;
}

// Takes the parameters that are not free out of a matrix: their rows become those of the unit matrix.
Matrix3 restricted(Matrix3 matrix, const std::array<bool, 3>& isFree)
{
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < 3; ++j)
            if (!isFree[i] || !isFree[j])
                matrix[i][j] = i == j ? 1 : 0;
    return matrix;
}

// Newton's step; where the information is not positive definite its diagonal is made heavier until it is.
std::optional<Vector3> stepFrom(const Height& height, const std::array<bool, 3>& isFree)
{
    const Matrix3 information = restricted(height.information, isFree);
    Vector3 gradient = height.gradient;
    for (std::size_t i = 0; i < 3; ++i)
        if (!isFree[i])
            gradient[i] = 0;
    double load = 0;
    for (int i = 0; i < kMostLoadings; ++i) {
        Matrix3 loaded = information;
        for (std::size_t k = 0; k < 3; ++k)
            loaded[k][k] += load * std::max(1.0, information[k][k]);
        if (const auto root = choleskyOf(loaded))
            return choleskySolution(*root, gradient);
        load = std::max(1e-10, 10 * load);
    }
    return std::nullopt;
}

struct Top
{
    Vector3 point{};
    Height height;
    bool isFloored = false;
};

// The way up. 1/sigma never passes `mostTau`: there it is held, and let go again if the likelihood then falls
// towards it, so that in the end it is held just when the maximum lies at the floor.
class Climb
{
public:
    Climb(std::span<const Term> terms, Predictor predictor, double mostTau)
        : m_terms{terms}, m_isLine{predictor == Predictor::Line}, m_mostTau{mostTau}
    {
    }

    std::optional<Top> from(const Vector3& start)
    {
        m_top.point = start;
        m_top.point[kTau] = std::min(start[kTau], m_mostTau);
        m_top.isFloored = false;
        m_top.height = heightAt(m_top.point, m_terms);
        for (int i = 0; i < kMostFitSteps; ++i) {
            const auto step = stepFrom(m_top.height, isFree());
            if (!step || m_top.point[kTau] < kSmallestTau)
                return std::nullopt;
            const double decrement = productOf(m_top.height.gradient, *step);
            const double share = shareToFloor(*step);
            if (share > 0 && !hasRisen(*step, share))
                return std::nullopt;
            const bool isTop = share == 1 && decrement < kSmallDecrement;
            const bool wasFloored = m_top.isFloored;
            m_top.isFloored = m_top.point[kTau] == m_mostTau && (wasFloored || share < 1);
            if (isTop && wasFloored && m_top.height.gradient[kTau] < 0)
                m_top.isFloored = false;
            else if (isTop)
                return m_top;
        }
        return std::nullopt;
    }

private:
    std::array<bool, 3> isFree() const { return {true, m_isLine, !m_top.isFloored}; }

    double productOf(const Vector3& gradient, const Vector3& step) const
    {
        double sum = 0;
        for (std::size_t i = 0; i < 3; ++i)
            sum += isFree()[i] ? gradient[i] * step[i] : 0;
        return sum;
    }

    // How much of a step can be taken before 1/sigma reaches its bound.
    double shareToFloor(const Vector3& step) const
    {
        const double room = m_mostTau - m_top.point[kTau]; // never negative
        return m_top.isFloored || step[kTau] <= room ? 1 : room / step[kTau];
    }

    // Takes the step, or as much of it as does not lower the likelihood.
    bool hasRisen(const Vector3& step, double share)
    {
        const double enough = m_top.height.log - kRounding * (1 + std::abs(m_top.height.log));
        for (int i = 0; i < kMostHalvings; ++i, share *= 0.5) {
            Vector3 point = m_top.point;
            for (std::size_t k = 0; k < 3; ++k)
                point[k] += isFree()[k] ? share * step[k] : 0;
            point[kTau] = i == 0 && share < 1 ? m_mostTau : std::min(point[kTau], m_mostTau);
            if (!(point[kTau] > 0))
                continue;
            const Height height = heightAt(point, m_terms);
            if (height.log >= enough && std::isfinite(height.log)) {
                m_top.point = point;
                m_top.height = height;
                return true;
            }
        }
        return false;
    }

    std::span<const Term> m_terms;
    bool m_isLine = false;
    double m_mostTau = 0;
    Top m_top;
};

// Inverse information moved from (level/sigma, slope/sigma, 1/sigma) to (level, slope) by the delta method;
// with sigma held, the block of the two at that sigma.
std::optional<LineCovariance> covarianceAt(const Top& top, Predictor predictor)
{
    const std::array<bool, 3> isFree{true, predictor == Predictor::Line, !top.isFloored};
    const auto root = choleskyOf(restricted(top.height.information, isFree));
    if (!root)
        return std::nullopt;
    const double tau = top.point[kTau];
    const auto derivativesOf = [&](std::size_t which) {
        Vector3 by{};
        by[which] = 1 / tau;
        by[kTau] = isFree[kTau] ? -top.point[which] / (tau * tau) : 0;
        return by;
    };
    const auto product = [](const Vector3& a, const Vector3& b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    };
    const Vector3 byLevel = derivativesOf(kLevel);
    LineCovariance covariance;
    covariance.level = product(byLevel, choleskySolution(*root, byLevel));
    if (predictor == Predictor::Level)
        return covariance;
    const Vector3 bySlope = derivativesOf(kSlope);
    covariance.levelAndSlope = product(bySlope, choleskySolution(*root, byLevel));
    covariance.slope = product(bySlope, choleskySolution(*root, bySlope));
    return covariance;
}

// Back to the readings' units; empty when a figure is not finite there.
std::optional<IntervalFit> fitAt(const Top& top, Predictor predictor, const Units& units,
                                 double exactReadings)
{
    const auto covariance = covarianceAt(top, predictor);
    if (!covariance)
        return std::nullopt;
    const double tau = top.point[kTau];
    const double slopeScale = units.scale / units.xScale;
    IntervalFit fit;
    fit.level = units.centre + units.scale * top.point[kLevel] / tau;
    fit.slope = slopeScale * top.point[kSlope] / tau;
    fit.sigma = units.scale / tau;
    fit.isFloored = top.isFloored;
    fit.covariance = {units.scale * units.scale * covariance->level,
                      units.scale * slopeScale * covariance->levelAndSlope,
                      slopeScale * slopeScale * covariance->slope};
    fit.logLikelihood = top.height.log - exactReadings * std::log(units.scale);
    for (const double figure : {fit.level, fit.slope, fit.sigma, fit.covariance.level,
                                fit.covariance.levelAndSlope, fit.covariance.slope, fit.logLikelihood})
        if (!std::isfinite(figure))
            return std::nullopt;
    return fit;
}

double exactAmong(std::span<const Term> terms)
{
    double count = 0;
    for (const Term& term : terms)
        count += term.kind == IntervalKind::Exact ? term.count : 0;
    return count;
}

} // namespace

std::optional<IntervalFit> intervalFitOf(std::span<const RegressionReading> readings, Predictor predictor,
                                         double sigmaFloor, const std::optional<IntervalFit>& start)
{
    std::vector<RegressionReading> kept;
    std::ranges::copy_if(readings, std::back_inserter(kept),
                         [](const RegressionReading& reading) { return !reading.interval.isOpenBothWays(); });
    if (!std::ranges::all_of(kept, hasPlace) || !isHeld(kept, predictor) || !(sigmaFloor >= 0))
        return std::nullopt;

    const Spread spread = spreadOf(kept);
    Units units{spread.middle, std::max(2 * sigmaFloor, spread.deviation), 0};
    for (const RegressionReading& reading : kept)
        units.xScale = std::max(units.xScale, std::abs(reading.x));
    if (predictor == Predictor::Level)
        units.xScale = 1;
    if (!(units.scale > 0) || !std::isfinite(units.scale) || !std::isfinite(spread.mean))
        return std::nullopt;

    const std::vector<Term> terms = termsOf(kept, units);
    const double mostTau = sigmaFloor > 0 ? units.scale / sigmaFloor : kInfinity;
    Climb climb{terms, predictor, mostTau};
    const auto fitFrom = [&](const Vector3& point) -> std::optional<IntervalFit> {
        const auto top = climb.from(point);
        return top ? fitAt(*top, predictor, units, exactAmong(terms)) : std::nullopt;
    };
    if (start) {
        const double tau = units.scale / start->sigma;
        if (const auto fit = fitFrom({(start->level - units.centre) / start->sigma,
                                      start->slope * units.xScale / start->sigma, tau}))
            return fit;
    }
    return fitFrom({(spread.mean - units.centre) / units.scale, 0, 1});
}

} // namespace rig::numbers
