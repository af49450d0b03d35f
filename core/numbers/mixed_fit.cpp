#include "core/numbers/mixed_fit.h"

#include "core/numbers/golden_section.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

namespace rig::numbers {
namespace {

constexpr double kDependent = 1e-10; // of a column's own square, left once the others are taken out
// Of the ratio, in units of a value's mean weight, on a scale of logarithms. What is smaller is 0.
constexpr double kLeastLogRatio = -10;
constexpr double kMostLogRatio = 15;
constexpr double kRatioStep = 1.25;
constexpr double kLogRatioAccuracy = 1e-3; // Newton's steps do the rest
constexpr int kMostPolishing = 20;
constexpr double kNothingLeft = 1e-14; // of the squares of the values

using Numbers = std::vector<double>;

// Lower triangle of a positive definite matrix; empty when it is not.
std::optional<SquareMatrix> rootOf(SquareMatrix matrix)
{
    const std::size_t size = matrix.size();
    for (std::size_t i = 0; i < size; ++i)
        for (std::size_t j = 0; j <= i; ++j) {
            const double own = matrix.at(i, j);
            double rest = own;
            for (std::size_t k = 0; k < j; ++k)
                rest -= matrix.at(i, k) * matrix.at(j, k);
            if (i != j)
                matrix.at(i, j) = rest / matrix.at(j, j);
            else if (rest > kDependent * own && std::isfinite(rest))
                matrix.at(i, i) = std::sqrt(rest);
            else
                return std::nullopt;
        }
    return matrix;
}

Numbers solvedByRoot(const SquareMatrix& root, Numbers right)
{
    const std::size_t size = root.size();
    for (std::size_t i = 0; i < size; ++i) {
        for (std::size_t k = 0; k < i; ++k)
            right[i] -= root.at(i, k) * right[k];
        right[i] /= root.at(i, i);
    }
    for (std::size_t i = size; i-- > 0;) {
        for (std::size_t k = i + 1; k < size; ++k)
            right[i] -= root.at(k, i) * right[k];
        right[i] /= root.at(i, i);
    }
    return right;
}

SquareMatrix inverseByRoot(const SquareMatrix& root)
{
    SquareMatrix inverse{root.size()};
    for (std::size_t i = 0; i < root.size(); ++i) {
        Numbers unit(root.size(), 0.0);
        unit[i] = 1;
        const Numbers column = solvedByRoot(root, std::move(unit));
        for (std::size_t j = 0; j < root.size(); ++j)
            inverse.at(j, i) = column[j];
    }
    return inverse;
}

double product(const Numbers& a, const Numbers& b)
{
    double sum = 0;
    for (std::size_t i = 0; i < a.size(); ++i)
        sum += a[i] * b[i];
    return sum;
}

Numbers product(const SquareMatrix& matrix, const Numbers& vector)
{
    Numbers result(matrix.size(), 0.0);
    for (std::size_t i = 0; i < matrix.size(); ++i)
        for (std::size_t j = 0; j < matrix.size(); ++j)
            result[i] += matrix.at(i, j) * vector[j];
    return result;
}

SquareMatrix product(const SquareMatrix& a, const SquareMatrix& b)
{
    SquareMatrix result{a.size()};
    for (std::size_t i = 0; i < a.size(); ++i)
        for (std::size_t k = 0; k < a.size(); ++k)
            for (std::size_t j = 0; j < a.size(); ++j)
                result.at(i, j) += a.at(i, k) * b.at(k, j);
    return result;
}

// The trace of the product of symmetric matrices.
double traceOf(const SquareMatrix& a, const SquareMatrix& b)
{
    double sum = 0;
    for (std::size_t i = 0; i < a.size(); ++i)
        for (std::size_t j = 0; j < a.size(); ++j)
            sum += a.at(i, j) * b.at(i, j);
    return sum;
}

// Weighted sums of one group: of 1, of the columns, of the value.
struct GroupSums
{
    double weight = 0;
    Numbers columns;
    double value = 0;
};

// X'V^-1X, X'V^-1y and y'V^-1y, or a derivative of them by the ratio.
struct NormalSums
{
    SquareMatrix columns;
    Numbers right;
    double squares = 0;
};

// V in units of the residual variance is 1/weight on the diagonal, plus the ratio within a group. Its inverse
// takes from each group's weighted sums ratio / (1 + ratio S) times their product, S the group's weight.
class MixedSums
{
public:
    MixedSums(std::span<const GroupedValue> values, const std::vector<Column>& columns)
        : m_whole{SquareMatrix{columns.size()}, Numbers(columns.size(), 0.0), 0}, m_values{values.size()}
    {
        std::map<int, std::size_t> groups;
        std::vector<std::size_t> there; // columns that are not 0 at a value
        for (std::size_t i = 0; i < values.size(); ++i) {
            const auto& [value, weight, label] = values[i];
            const std::size_t group = groups.emplace(label, groups.size()).first->second;
            if (group == m_groups.size())
                m_groups.push_back({0, Numbers(columns.size(), 0.0), 0});
            GroupSums& sums = m_groups[group];
            there.clear();
            for (std::size_t k = 0; k < columns.size(); ++k)
                if (columns[k][i] != 0)
                    there.push_back(k);
            for (const std::size_t k : there) {
                const double weighted = weight * columns[k][i];
                for (const std::size_t j : there)
                    m_whole.columns.at(k, j) += weighted * columns[j][i];
                m_whole.right[k] += weighted * value;
                sums.columns[k] += weighted;
            }
            m_whole.squares += weight * value * value;
            sums.weight += weight;
            sums.value += weight * value;
            m_logWeights += std::log(weight);
            m_weight += weight;
        }
    }

    // The sums at a ratio (`order` 0) or their first or second derivative by it.
    NormalSums at(double ratio, int order) const
    {
        const std::size_t size = m_whole.columns.size();
        NormalSums sums = order == 0 ? m_whole : NormalSums{SquareMatrix{size}, Numbers(size, 0.0), 0};
        for (const GroupSums& group : m_groups) {
            const double below = 1 + ratio * group.weight;
            const double taken = order == 0   ? ratio / below
                                 : order == 1 ? 1 / (below * below)
                                              : -2 * group.weight / (below * below * below);
            for (std::size_t i = 0; i < size; ++i) {
                if (group.columns[i] == 0)
                    continue;
                const double weighted = taken * group.columns[i];
                for (std::size_t j = 0; j <= i; ++j)
                    sums.columns.at(i, j) -= weighted * group.columns[j];
                sums.right[i] -= weighted * group.value;
            }
            sums.squares -= taken * group.value * group.value;
        }
        for (std::size_t i = 0; i < size; ++i)
            for (std::size_t j = 0; j < i; ++j)
                sums.columns.at(j, i) = sums.columns.at(i, j);
        return sums;
    }

    double meanWeight() const { return m_weight / static_cast<double>(m_values); }
    double logDeterminant(double ratio) const
    {
        double sum = -m_logWeights;
        for (const GroupSums& group : m_groups)
            sum += std::log1p(ratio * group.weight);
        return sum;
    }
    // The first and second derivative of ln |V| by the ratio.
    double determinantSlope(double ratio) const
    {
        double sum = 0;
        for (const GroupSums& group : m_groups)
            sum += group.weight / (1 + ratio * group.weight);
        return sum;
    }
    double determinantCurvature(double ratio) const
    {
        double sum = 0;
        for (const GroupSums& group : m_groups) {
            const double share = group.weight / (1 + ratio * group.weight);
            sum -= share * share;
        }
        return sum;
    }

    double freedom() const
    {
        return static_cast<double>(m_values) - static_cast<double>(m_whole.columns.size());
    }

private:
    NormalSums m_whole;
    std::vector<GroupSums> m_groups;
    double m_logWeights = 0;
    double m_weight = 0;
    std::size_t m_values = 0;
};

// The restricted ln likelihood with the residual variance at its best for the ratio.
struct RestrictedHeight
{
    double log = -kInfinity;
    double residualVariance = 0;
};

RestrictedHeight restrictedHeight(const MixedSums& all, double ratio)
{
    const NormalSums sums = all.at(ratio, 0);
    const auto root = rootOf(sums.columns);
    if (!root)
        return {};
    const double squares = sums.squares - product(sums.right, solvedByRoot(*root, sums.right));
    const double variance = squares / all.freedom();
    if (!(squares > kNothingLeft * sums.squares) || !std::isfinite(variance))
        return {};
    double logDeterminant = all.logDeterminant(ratio);
    for (std::size_t i = 0; i < root->size(); ++i)
        logDeterminant += 2 * std::log(root->at(i, i));
    const double twoPi = 2 * std::numbers::pi;
    return {-0.5 * (all.freedom() * (std::log(twoPi * variance) + 1) + logDeterminant), variance};
}

// The restricted ln likelihood about a ratio, the residual variance v at its best there.
struct RestrictedCurve
{
    double slope = 0;        // by the ratio
    double byRatio = 0;      // observed information of the ratio, v held
    double mixed = 0;        // of ratio and ln v
    double byResidual = 0;   // of ln v
    SquareMatrix inverse{0}; // of X'V^-1X
    SquareMatrix byRatioOfInverse{0};
    Numbers effects;

    // Of the ratio with v following.
    double profile() const { return byRatio - mixed * mixed / byResidual; }
};

RestrictedCurve restrictedCurve(const MixedSums& all, double ratio, double v)
{
    const NormalSums sums = all.at(ratio, 0);
    const NormalSums first = all.at(ratio, 1);
    const NormalSums second = all.at(ratio, 2);
    const SquareMatrix root = *rootOf(sums.columns);
    RestrictedCurve curve;
    curve.inverse = inverseByRoot(root);
    curve.effects = solvedByRoot(root, sums.right);
    const SquareMatrix share = product(curve.inverse, first.columns);
    curve.byRatioOfInverse = product(share, curve.inverse);
    for (std::size_t i = 0; i < share.size(); ++i)
        for (std::size_t j = 0; j < share.size(); ++j)
            curve.byRatioOfInverse.at(i, j) *= -1;

    // Derivatives of the squares left over and of ln |X'V^-1X|.
    const Numbers turned = product(first.columns, curve.effects);
    Numbers rest = first.right;
    for (std::size_t i = 0; i < rest.size(); ++i)
        rest[i] -= turned[i];
    const double squares =
        first.squares - 2 * product(curve.effects, first.right) + product(curve.effects, turned);
    const double moreSquares = second.squares - 2 * product(curve.effects, second.right) +
                               product(curve.effects, product(second.columns, curve.effects)) -
                               2 * product(rest, product(curve.inverse, rest));
    double shares = 0;
    double sharesSquared = 0;
    for (std::size_t i = 0; i < share.size(); ++i) {
        shares += share.at(i, i);
        for (std::size_t j = 0; j < share.size(); ++j)
            sharesSquared += share.at(i, j) * share.at(j, i);
    }
    curve.slope = -0.5 * (all.determinantSlope(ratio) + shares + squares / v);
    curve.byRatio = 0.5 * (all.determinantCurvature(ratio) + traceOf(curve.inverse, second.columns) -
                           sharesSquared + moreSquares / v);
    curve.mixed = -0.5 * squares / v;
    curve.byResidual = 0.5 * all.freedom();
    return curve;
}

// Newton's steps from where the scan ended.
double polished(const MixedSums& all, double ratio)
{
    for (int i = 0; i < kMostPolishing; ++i) {
        const RestrictedHeight height = restrictedHeight(all, ratio);
        if (!std::isfinite(height.log))
            break;
        const RestrictedCurve curve = restrictedCurve(all, ratio, height.residualVariance);
        const double next = ratio + curve.slope / curve.profile();
        if (!(curve.profile() > 0) || !(next > 0.5 * ratio) || !(next < 2 * ratio))
            break;
        const double step = std::abs(next - ratio);
        ratio = next;
        if (step < 1e-12 * ratio)
            break;
    }
    return ratio;
}

double likeliestRatio(const MixedSums& all)
{
    const double unit = 1 / all.meanWeight();
    const auto heightAt = [&](double logRatio) {
        return restrictedHeight(all, unit * std::exp(logRatio)).log;
    };
    double best = kLeastLogRatio;
    double most = -kInfinity;
    for (double place = kLeastLogRatio; place <= kMostLogRatio; place += kRatioStep)
        if (const double height = heightAt(place); height > most) {
            most = height;
            best = place;
        }
    const Peak peak = highestPoint({best - kRatioStep, best + kRatioStep}, kLogRatioAccuracy, heightAt);
    return peak.height > restrictedHeight(all, 0).log ? polished(all, unit * std::exp(peak.at)) : 0;
}

} // namespace

std::optional<MixedFit> MixedFit::of(std::span<const GroupedValue> values, const std::vector<Column>& columns)
{
    const auto isUsable = [](const GroupedValue& one) {
        return std::isfinite(one.value) && one.weight > 0 && std::isfinite(one.weight);
    };
    if (columns.empty() || values.size() <= columns.size() || !std::ranges::all_of(values, isUsable))
        return std::nullopt;
    const MixedSums all{values, columns};
    MixedFit fit;
    fit.m_ratio = likeliestRatio(all);
    const RestrictedHeight height = restrictedHeight(all, fit.m_ratio);
    if (!std::isfinite(height.log))
        return std::nullopt;
    fit.m_freedom = all.freedom();
    fit.m_residualVariance = height.residualVariance;
    fit.m_logLikelihood = height.log;

    RestrictedCurve curve = restrictedCurve(all, fit.m_ratio, height.residualVariance);
    const double determinant = curve.byRatio * curve.byResidual - curve.mixed * curve.mixed;
    if (fit.m_ratio > 0 && determinant > 0) {
        fit.m_varianceOfRatio = curve.byResidual / determinant;
        fit.m_covariance = -curve.mixed / determinant;
        fit.m_varianceOfResidual = curve.byRatio / determinant;
    } else {
        fit.m_varianceOfResidual = 1 / curve.byResidual;
    }
    fit.m_inverse = std::move(curve.inverse);
    fit.m_byRatio = std::move(curve.byRatioOfInverse);
    fit.m_effects = std::move(curve.effects);
    const auto isFinite = [](double figure) { return std::isfinite(figure); };
    const bool isPlain = std::ranges::all_of(fit.m_effects, isFinite) &&
                         std::isfinite(fit.m_varianceOfRatio) && std::isfinite(fit.groupVariance());
    return isPlain ? std::optional{fit} : std::nullopt;
}

MixedContrast MixedFit::contrast(std::span<const double> along) const
{
    const Numbers direction{along.begin(), along.end()};
    const double own = product(direction, product(m_inverse, direction));
    MixedContrast contrast{product(direction, m_effects),
                           std::sqrt(m_residualVariance) * std::sqrt(std::max(0.0, own)), m_freedom};
    if (!(own > 0))
        return contrast;
    // The derivatives of ln v, v the contrast's variance: by the ratio this, by ln of the residual
    // variance 1.
    const double byRatio = product(direction, product(m_byRatio, direction)) / own;
    const double spread =
        byRatio * byRatio * m_varianceOfRatio + 2 * byRatio * m_covariance + m_varianceOfResidual;
    if (spread > 0)
        contrast.degreesOfFreedom = 2 / spread;
    return contrast;
}

} // namespace rig::numbers
