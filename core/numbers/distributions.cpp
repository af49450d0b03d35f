#include "core/numbers/distributions.h"

#include "core/numbers/interval.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <boost/math/special_functions/beta.hpp>
#include <boost/math/special_functions/digamma.hpp>
#include <boost/math/special_functions/polygamma.hpp>
#include <boost/math/special_functions/trigamma.hpp>
#include <cmath>
#include <limits>

namespace rig::numbers {
namespace {

using boost::math::policies::domain_error;
using boost::math::policies::evaluation_error;
using boost::math::policies::ignore_error;
using boost::math::policies::overflow_error;
using boost::math::policies::pole_error;
using boost::math::policies::promote_double;

// Nothing throws: Boost answers NaN or infinity instead.
using Quiet = boost::math::policies::policy<domain_error<ignore_error>, pole_error<ignore_error>,
                                            overflow_error<ignore_error>, evaluation_error<ignore_error>,
                                            promote_double<false>>;

constexpr double kNotANumber = std::numeric_limits<double>::quiet_NaN();

// ln P(Z <= z) for z <= -30, where P itself soon underflows: the asymptotic series of the Mills ratio
// (Abramowitz & Stegun 26.2.12, from memory), nested; at z = -30 the first term left out is below 1e-14.
double logNormalFarBelow(double z)
{
    const double i = 1.0 / (z * z);
    const double series = -i * (1 - 3 * i * (1 - 5 * i * (1 - 7 * i * (1 - 9 * i))));
    return -0.5 * z * z - std::log(-z) - kLnSqrtTwoPi + std::log1p(series);
}

} // namespace

double normalDensity(double z)
{
    return std::exp(-0.5 * z * z - kLnSqrtTwoPi);
}

double normalBelow(double z)
{
    return 0.5 * std::erfc(-z * kSqrtHalf);
}

double normalQuantile(double p)
{
    if (std::isnan(p))
        return kNotANumber;
    if (p <= 0)
        return -kInfinity;
    if (p >= 1)
        return kInfinity;
    return boost::math::quantile(boost::math::normal_distribution<double, Quiet>{}, p);
}

double logNormalBelow(double z)
{
    if (z > 5)
        return std::log1p(-0.5 * std::erfc(z * kSqrtHalf));
    if (z > -30)
        return std::log(0.5 * std::erfc(-z * kSqrtHalf));
    return logNormalFarBelow(z);
}

double logNormalBetween(double a, double b)
{
    // Narrow: the density in the middle times the width, with its second-order term.
    if (const double width = b - a; width < 1e-4) {
        const double middle = 0.5 * (a + b);
        return -0.5 * middle * middle - kLnSqrtTwoPi + std::log(width) +
               std::log1p((middle * middle - 1) * width * width / 24);
    }
    if (a <= 0 && b >= 0)
        return std::log(0.5 * (std::erf(b * kSqrtHalf) + std::erf(-a * kSqrtHalf)));
    if (a > 0)
        return logNormalBetween(-b, -a);

    const double upper = logNormalBelow(b);
    if (std::isinf(a))
        return upper;
    const double difference = upper - logNormalBelow(a);
    return upper + (difference > std::numbers::ln2 ? std::log1p(-std::exp(-difference))
                                                   : std::log(-std::expm1(-difference)));
}

double studentBelow(double t, double df)
{
    if (!(df > 0) || std::isnan(t))
        return kNotANumber;
    if (std::isinf(t))
        return t > 0 ? 1.0 : 0.0;
    return boost::math::cdf(boost::math::students_t_distribution<double, Quiet>{df}, t);
}

double studentDensity(double t, double df)
{
    if (!(df > 0) || std::isnan(t))
        return kNotANumber;
    return std::isinf(t) ? 0.0 : boost::math::pdf(boost::math::students_t_distribution<double, Quiet>{df}, t);
}

double studentQuantile(double p, double df)
{
    if (!(df > 0) || std::isnan(p))
        return kNotANumber;
    if (p <= 0)
        return -kInfinity;
    if (p >= 1)
        return kInfinity;
    return boost::math::quantile(boost::math::students_t_distribution<double, Quiet>{df}, p);
}

double digamma(double x)
{
    return x > 0 ? boost::math::digamma(x, Quiet{}) : kNotANumber;
}

double trigamma(double x)
{
    return x > 0 ? boost::math::trigamma(x, Quiet{}) : kNotANumber;
}

// Newton on 1 / psi', which is nearly a straight line, from above (Smyth 2004, appendix, from memory); at the
// far ends psi'(y) is 1 / y^2 or 1 / y to double precision.
double inverseTrigamma(double x)
{
    if (!(x > 0))
        return kNotANumber;
    if (x > 1e7)
        return 1 / std::sqrt(x);
    if (x < 1e-6)
        return 1 / x;
    double y = 0.5 + 1 / x;
    for (int step = 0; step < 50; ++step) {
        const double value = trigamma(y);
        const double change = value * (1 - value / x) / boost::math::polygamma(2, y, Quiet{});
        y += change;
        if (std::abs(change) < 1e-8 * y)
            break;
    }
    return y;
}

double chiSquareBelow(double x, double df)
{
    if (!(df > 0) || std::isnan(x))
        return kNotANumber;
    if (x <= 0)
        return 0;
    if (std::isinf(x))
        return 1;
    return boost::math::cdf(boost::math::chi_squared_distribution<double, Quiet>{df}, x);
}

double chiSquareQuantile(double p, double df)
{
    if (!(df > 0) || std::isnan(p))
        return kNotANumber;
    if (p <= 0)
        return 0;
    if (p >= 1)
        return kInfinity;
    return boost::math::quantile(boost::math::chi_squared_distribution<double, Quiet>{df}, p);
}

double fisherBelow(double f, double df1, double df2)
{
    if (!(df1 > 0) || !(df2 > 0) || std::isnan(f))
        return kNotANumber;
    if (f <= 0)
        return 0;
    if (std::isinf(f))
        return 1;
    return boost::math::cdf(boost::math::fisher_f_distribution<double, Quiet>{df1, df2}, f);
}

double fisherAbove(double f, double df1, double df2)
{
    if (!(df1 > 0) || !(df2 > 0) || std::isnan(f))
        return kNotANumber;
    if (f <= 0)
        return 1;
    if (std::isinf(f))
        return 0;
    const boost::math::fisher_f_distribution<double, Quiet> fisher{df1, df2};
    return boost::math::cdf(boost::math::complement(fisher, f));
}

double fisherQuantile(double p, double df1, double df2)
{
    if (!(df1 > 0) || !(df2 > 0) || std::isnan(p))
        return kNotANumber;
    if (p <= 0)
        return 0;
    if (p >= 1)
        return kInfinity;
    return boost::math::quantile(boost::math::fisher_f_distribution<double, Quiet>{df1, df2}, p);
}

double shareAtMost(int hits, int trials, double confidence)
{
    if (hits < 0 || trials <= 0 || hits > trials || !(confidence > 0) || !(confidence < 1))
        return kNotANumber;
    if (hits == trials)
        return 1;
    return boost::math::ibeta_inv(hits + 1.0, static_cast<double>(trials) - hits, confidence, Quiet{});
}

} // namespace rig::numbers
