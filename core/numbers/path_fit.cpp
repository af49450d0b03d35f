#include "core/numbers/path_fit.h"

#include "core/numbers/interval_curve.h"

#include <algorithm>
#include <cmath>

namespace rig::numbers {
namespace {

constexpr std::size_t kTauPlace = 3; // of 1/sigma among the parameters; before it level and sizes over sigma
constexpr int kMostFitTurns = 1000;  // slow where many readings may be wild or not
constexpr int kMostHalfSteps = 40;
constexpr double kLittleGain = 1e-9; // of the ln likelihood, in one turn
constexpr double kLeastTau = 1e-6;   // in the units of the start

// The share of the wild range that an interval covers; of an exact value, the density.
double wildChanceOf(const Interval& interval)
{
    return interval.isExact() ? 1 / kWildRange : std::min(1.0, interval.width() / kWildRange);
}

// A reading in the units of the fit: lengths from the start's level, in its sigmas.
struct PathTerm
{
    IntervalKind kind = IntervalKind::Exact;
    double place = 0;
    double half = 0;
    double wild = 0;
    double one = 1; // of the level: all of this is divided by the reading's own scatters
    std::array<double, kMostShapes> shape{};
    double count = 1;
};

// The ln likelihood at a point, its gradient, and the information that the weights of EM leave.
struct PathHeight
{
    double log = 0;
    Vector4 gradient{};
    Matrix4 information{};
};

PathHeight pathHeightAt(const Vector4& point, std::span<const PathTerm> terms)
{
    PathHeight height;
    const double tau = point[kTauPlace];
    const double logTau = std::log(tau);
    for (const PathTerm& term : terms) {
        const double m =
            tau * term.place - point[0] * term.one - point[1] * term.shape[0] - point[2] * term.shape[1];
        const IntervalCurve curve = intervalCurveOf(term.kind, m, tau * term.half);
        const bool isExact = term.kind == IntervalKind::Exact;
        const double tame = (1 - kWildShare) * std::exp(curve.log + (isExact ? logTau : 0));
        const double wild = kWildShare * term.wild;
        const double weight = term.count * tame / (tame + wild);
        height.log += term.count * std::log(tame + wild);

        const Vector4 byM{-term.one, -term.shape[0], -term.shape[1], term.place};
        const double mixed = curve.md * term.half;
        for (std::size_t i = 0; i < 4; ++i) {
            height.gradient[i] += weight * curve.m * byM[i];
            for (std::size_t j = 0; j <= i; ++j)
                height.information[i][j] -=
                    weight * (curve.mm * byM[i] + (i == kTauPlace ? mixed : 0)) * byM[j];
        }
        height.gradient[kTauPlace] += weight * curve.d * term.half;
        height.information[kTauPlace][kTauPlace] -=
            weight * term.half * (curve.dd * term.half + curve.md * term.place);
        if (isExact) { // the density has 1/sigma in front
            height.gradient[kTauPlace] += weight / tau;
            height.information[kTauPlace][kTauPlace] += weight / (tau * tau);
        }
    }
    return height;
}

// The way up, as in interval_regression.cpp: 1/sigma never passes `mostTau`, is held there, and let go again
// if the likelihood then falls towards it.
class PathClimb
{
public:
    PathClimb(std::span<const PathTerm> terms, std::size_t shapes, double mostTau)
        : m_terms{terms}, m_shapes{shapes}, m_mostTau{mostTau}
    {
    }

    bool climb(const Vector4& start)
    {
        m_point = start;
        m_point[kTauPlace] = std::min(start[kTauPlace], m_mostTau);
        m_height = pathHeightAt(m_point, m_terms);
        for (int i = 0; i < kMostFitTurns && std::isfinite(m_height.log); ++i) {
            const auto step = newtonStep();
            if (!step || m_point[kTauPlace] < kLeastTau)
                return false;
            const double room = m_mostTau - m_point[kTauPlace];
            const double rise = (*step)[kTauPlace];
            const double share = m_isFloored || rise <= room ? 1 : room / rise;
            const double gain = gainOf(*step);
            const bool isTop = share == 1 && gain < kLittleGain;
            if (!isTop && share > 0 && !rises(*step, share))
                return false;
            const bool wasFloored = m_isFloored;
            m_isFloored = m_point[kTauPlace] == m_mostTau && (wasFloored || share < 1);
            if (isTop && wasFloored && m_height.gradient[kTauPlace] < 0)
                m_isFloored = false;
            else if (isTop)
                return true;
        }
        return false;
    }

    const Vector4& point() const { return m_point; }
    const PathHeight& height() const { return m_height; }
    bool isFloored() const { return m_isFloored; }

    // The information with what is not free made into rows of the unit matrix.
    Matrix4 freeInformation(bool tauIsFree) const
    {
        Matrix4 matrix = m_height.information;
        for (std::size_t i = 0; i < 4; ++i)
            for (std::size_t j = 0; j <= i; ++j)
                if (!isFree(i, tauIsFree) || !isFree(j, tauIsFree))
                    matrix[i][j] = i == j ? 1 : 0;
        return matrix;
    }

private:
    bool isFree(std::size_t place, bool tauIsFree) const
    {
        return place == kTauPlace ? tauIsFree : place <= m_shapes;
    }

    // Where the information is not positive definite, its diagonal is made heavier until it is.
    std::optional<Vector4> newtonStep() const
    {
        const Matrix4 information = freeInformation(!m_isFloored);
        Vector4 gradient = m_height.gradient;
        for (std::size_t i = 0; i < 4; ++i)
            if (!isFree(i, !m_isFloored))
                gradient[i] = 0;
        double load = 0;
        for (int i = 0; i < 14; ++i) {
            Matrix4 loaded = information;
            for (std::size_t k = 0; k < 4; ++k)
                loaded[k][k] += load * std::max(1.0, information[k][k]);
            if (const auto root = choleskyOf(loaded))
                return choleskySolution(*root, gradient);
            load = std::max(1e-8, 10 * load);
        }
        return std::nullopt;
    }

    double gainOf(const Vector4& step) const
    {
        double sum = 0;
        for (std::size_t i = 0; i < 4; ++i)
            sum += isFree(i, !m_isFloored) ? m_height.gradient[i] * step[i] : 0;
        return sum;
    }

    bool rises(const Vector4& step, double share)
    {
        const double enough = m_height.log - 1e-12 * (1 + std::abs(m_height.log));
        for (int i = 0; i < kMostHalfSteps; ++i, share *= 0.5) {
            Vector4 point = m_point;
            for (std::size_t k = 0; k < 4; ++k)
                point[k] += share * step[k];
            point[kTauPlace] = i == 0 && share < 1 ? m_mostTau : std::min(point[kTauPlace], m_mostTau);
            if (!(point[kTauPlace] > 0))
                continue;
            const PathHeight height = pathHeightAt(point, m_terms);
            if (!(height.log >= enough))
                continue;
            m_point = point;
            m_height = height;
            return true;
        }
        return false;
    }

    std::span<const PathTerm> m_terms;
    std::size_t m_shapes;
    double m_mostTau;
    Vector4 m_point{};
    PathHeight m_height;
    bool m_isFloored = false;
};

// Inverse information moved from (coefficients, 1) / sigma to the coefficients by the delta method, in units
// of the fit.
std::optional<Matrix3> pathCovariance(const PathClimb& climb, std::size_t shapes)
{
    const bool tauIsFree = !climb.isFloored();
    const auto root = choleskyOf(climb.freeInformation(tauIsFree));
    if (!root)
        return std::nullopt;
    const double tau = climb.point()[kTauPlace];
    std::array<Vector4, 3> by{};
    for (std::size_t i = 0; i <= shapes; ++i) {
        by[i][i] = 1 / tau;
        by[i][kTauPlace] = tauIsFree ? -climb.point()[i] / (tau * tau) : 0;
    }
    Matrix3 covariance{};
    for (std::size_t i = 0; i <= shapes; ++i) {
        const Vector4 turned = choleskySolution(*root, by[i]);
        for (std::size_t j = 0; j <= shapes; ++j)
            for (std::size_t k = 0; k < 4; ++k)
                covariance[i][j] += by[j][k] * turned[k];
    }
    return covariance;
}

// What is left for 1/sigma once the coefficients follow it (a Schur complement), by ln sigma.
double sigmaInformationOf(const PathClimb& climb)
{
    if (climb.isFloored())
        return kInfinity;
    const auto root = choleskyOf(climb.freeInformation(true));
    if (!root)
        return 0;
    const double tau = climb.point()[kTauPlace];
    const double left = (*root)[kTauPlace][kTauPlace];
    return left * left * tau * tau;
}

std::vector<PathTerm> pathTermsOf(std::span<const PathReading> readings, double centre, double scale)
{
    std::vector<PathTerm> terms;
    terms.reserve(readings.size());
    for (const auto& [interval, shape, count, scatters] : readings) {
        const double unit = scale * scatters;
        terms.push_back({intervalKindOf(interval),
                         (interval.place() - centre) / unit,
                         interval.isClosed() ? 0.5 * interval.width() / unit : 0,
                         interval.isExact() ? unit / kWildRange : wildChanceOf(interval),
                         1 / scatters,
                         {shape[0] / scatters, shape[1] / scatters},
                         count});
    }
    return terms;
}

bool isPlain(const PathFit& fit)
{
    for (std::size_t i = 0; i < 3; ++i)
        if (!std::isfinite(fit.coefficients[i]) || !std::isfinite(fit.covariance[i][i]))
            return false;
    return std::isfinite(fit.sigma) && std::isfinite(fit.logLikelihood);
}

} // namespace

std::optional<PathFit> pathFitOf(std::span<const PathReading> readings, std::size_t shapes, double sigmaFloor,
                                 const PathFit& start)
{
    const double centre = start.coefficients[0];
    const double scale = start.sigma;
    if (!(scale > 0) || !std::isfinite(scale) || !std::isfinite(centre))
        return std::nullopt;
    const std::vector<PathTerm> terms = pathTermsOf(readings, centre, scale);
    PathClimb climb{terms, shapes, sigmaFloor > 0 ? scale / sigmaFloor : kInfinity};
    if (!climb.climb({0, start.coefficients[1] / scale, start.coefficients[2] / scale, 1}))
        return std::nullopt;
    const auto covariance = pathCovariance(climb, shapes);
    if (!covariance)
        return std::nullopt;

    const double tau = climb.point()[kTauPlace];
    PathFit fit;
    fit.sigma = scale / tau;
    fit.isFloored = climb.isFloored();
    fit.sigmaInformation = sigmaInformationOf(climb);
    fit.logLikelihood = climb.height().log;
    for (std::size_t i = 0; i <= shapes; ++i) {
        fit.coefficients[i] = (i == 0 ? centre : 0) + scale * climb.point()[i] / tau;
        for (std::size_t j = 0; j <= shapes; ++j)
            fit.covariance[i][j] = scale * scale * (*covariance)[i][j];
    }
    for (const PathReading& reading : readings)
        fit.logLikelihood -=
            reading.interval.isExact() ? reading.count * std::log(scale * reading.scatters) : 0;
    return isPlain(fit) ? std::optional{fit} : std::nullopt;
}

PseudoReading pseudoReadingOf(const Interval& interval, double mean, double sigma)
{
    const double half = interval.isClosed() ? 0.5 * interval.width() : 0;
    const IntervalCurve curve =
        intervalCurveOf(intervalKindOf(interval), (interval.place() - mean) / sigma, half / sigma);
    const double tame = (1 - kWildShare) * std::exp(curve.log) / (interval.isExact() ? sigma : 1);
    PseudoReading reading;
    reading.tame = tame / (tame + kWildShare * wildChanceOf(interval));
    reading.weight = reading.tame * -curve.mm / (sigma * sigma);
    reading.value = reading.weight > 0 ? mean + sigma * curve.m / curve.mm : mean;
    return reading;
}

} // namespace rig::numbers
