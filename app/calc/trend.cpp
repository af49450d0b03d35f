#include "app/calc/fields.h"
#include "core/numbers/interval_trend.h"

namespace rig::calc {
namespace {

using numbers::Interval;
using numbers::IntervalTrend;
using numbers::TrendEdge;

// The field "band", empty where missing.
std::optional<Interval> bandIn(CaseInput& input)
{
    if (!input.has("band"))
        return std::nullopt;
    const std::vector<double> edges = input.numbersIn("band");
    if (edges.size() == 2 && edges[0] < edges[1])
        return Interval{edges[0], edges[1]};
    input.fail("\"band\" is not a pair of numbers that rise: give [lower, upper] in mm, or leave it out");
    return std::nullopt;
}

Output covarianceOf(const numbers::LineCovariance& covariance)
{
    return Output::array({Output::array({covariance.level, covariance.levelAndSlope}),
                          Output::array({covariance.levelAndSlope, covariance.slope})});
}

Output trendSummary(const IntervalTrend& trend)
{
    return {{"n", trend.readings},           {"t_mean", trend.meanDay},
            {"level_at_mean", trend.level},  {"slope_per_year", trend.slope},
            {"sigma_ml", trend.sigmaMl},     {"sigma_floored", trend.isFloored},
            {"loglik", trend.logLikelihood}, {"cov_ml", covarianceOf(trend.covariance)},
            {"sigma_adj", trend.sigma},      {"slope_ci95", pairOf(trend.slope95)},
            {"slope_p", trend.slopeP}};
}

Output predictions(CaseInput& input, const IntervalTrend& trend, const std::vector<double>& days)
{
    Output list = Output::array();
    for (const double day : days) {
        const auto prediction = trend.predictionAt(day);
        if (!prediction) {
            input.fail(
                "\"predict_at\" has a day too far away to compute with: give days nearer the readings");
            return list;
        }
        list.push_back({{"t", day},
                        {"fit", prediction->fit},
                        {"se_mean", prediction->meanError},
                        {"se_pred", prediction->readingError},
                        {"pi95", pairOf(prediction->reading95)}});
    }
    return list;
}

std::optional<IntervalTrend> trendIn(CaseInput& input)
{
    const std::vector<double> days = input.numbersIn("t_days");
    const std::vector<Interval> readings = input.readings("readings");
    if (!input.has("t_days"))
        input.fail("\"t_days\" is missing: give one day for each of \"readings\"");
    if (days.size() != readings.size())
        input.fail("\"t_days\" has not as many entries as \"readings\": give one day for each reading");
    const numbers::IntervalSet set = numbers::intervalSetOf(readings);
    if (set.status != numbers::ReadingsStatus::Ok)
        input.fail(std::string{"\"readings\" have no trend: "} + nameOf(set.status) +
                   "; put the bounds right, or add readings that have the missing one");
    if (set.readings < 3)
        input.fail("\"readings\" are too few for a line: give at least 3 with a bound");
    if (!input.isGood())
        return std::nullopt;
    const auto trend = numbers::intervalTrendOf(days, readings);
    if (!trend)
        input.fail("\"readings\" have no line of their own: give readings on at least two different "
                   "\"t_days\" that hold it from below and from above");
    return trend;
}

} // namespace

// {t_days, readings, band?, predict_at?, inspection_day?}; what needs a field that is missing is left out.
Output answerTrend(CaseInput& input)
{
    const auto band = bandIn(input);
    const std::vector<double> predictAt = input.numbersIn("predict_at");
    const std::optional<double> inspection = input.number("inspection_day");
    const auto trend = trendIn(input);
    if (!trend || !input.isGood())
        return {};

    Output output = trendSummary(*trend);
    if (input.has("predict_at"))
        output["predictions"] = predictions(input, *trend, predictAt);
    if (band && inspection) {
        output["p_reading_outside_at_inspection"] = orNull(trend->chanceReadingOutside(*band, *inspection));
        output["p_mean_outside_at_inspection"] = orNull(trend->chanceLineOutside(*band, *inspection));
    }
    if (band) {
        output["day_line_crosses"] = orNull(trend->firstDayReaching(*band, TrendEdge::Line));
        output["day_pi95_touches"] = orNull(trend->firstDayReaching(*band, TrendEdge::Reading95));
        output["day_mean_ci95_touches"] = orNull(trend->firstDayReaching(*band, TrendEdge::Mean95));
    }
    return output;
}

} // namespace rig::calc
