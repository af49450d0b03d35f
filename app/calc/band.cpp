#include "app/calc/fields.h"
#include "core/numbers/admission.h"

namespace rig::calc {
namespace {

using numbers::AdmissionFlag;
using numbers::Grade;
using numbers::Interval;
using numbers::IntervalPosterior;
using numbers::Place;

const char* nameOf(Place place)
{
    switch (place) {
    case Place::OutsideLow:
        return "OUTSIDE_LOW";
    case Place::StraddlesLow:
        return "STRADDLES_LOW";
    case Place::Inside:
        return "INSIDE";
    case Place::Covers:
        return "COVERS";
    case Place::StraddlesHigh:
        return "STRADDLES_HIGH";
    case Place::OutsideHigh:
        return "OUTSIDE_HIGH";
    }
    return "";
}

const char* nameOf(Grade grade)
{
    switch (grade) {
    case Grade::Outside:
        return "OUTSIDE";
    case Grade::Watch:
        return "WATCH";
    case Grade::Unresolved:
        return "UNRESOLVED";
    case Grade::Normal:
        return "NORMAL";
    }
    return "";
}

const char* nameOf(AdmissionFlag flag)
{
    switch (flag) {
    case AdmissionFlag::None:
        return "NONE";
    case AdmissionFlag::Straggler:
        return "STRAGGLER";
    case AdmissionFlag::Outlier:
        return "OUTLIER";
    case AdmissionFlag::NotTestable:
        return "NOT_TESTABLE";
    }
    return "";
}

Output judgedByBand(const std::vector<Interval>& readings, const IntervalPosterior& posterior,
                    const numbers::PredictiveBands& bands, double extraVariance)
{
    Output list = Output::array();
    for (const Interval& reading : readings) {
        const numbers::Grading grading = numbers::gradingOf(reading, posterior, bands, extraVariance);
        list.push_back({{"reading", pairOf(reading)},
                        {"p_high", grading.high},
                        {"p_low", grading.low},
                        {"p_tail", grading.tail},
                        {"state95", nameOf(grading.inner)},
                        {"state9973", nameOf(grading.outer)},
                        {"grade", nameOf(grading.grade)},
                        {"score_z", numbers::scoreOf(reading, posterior, extraVariance)}});
    }
    return list;
}

Output admission(const numbers::IntervalSet& readings, const numbers::SigmaPrior& prior)
{
    Output list = Output::array();
    for (const numbers::AdmissionFinding& finding : numbers::admissionOf(readings, prior))
        list.push_back({{"reading", pairOf(finding.reading)},
                        {"p", finding.tail ? Output(*finding.tail) : Output(nullptr)},
                        {"flag", nameOf(finding.flag)}});
    return list;
}

Output bandSummary(const IntervalPosterior& posterior, const numbers::PredictiveBands& bands)
{
    return {{"status", "OK"},
            {"n", posterior.readings()},
            {"s_min_used", posterior.sMin()},
            {"s_max_used", posterior.sMax()},
            {"delta_median", posterior.medianWidth()},
            {"band95", pairOf(bands.inner)},
            {"band9973", pairOf(bands.outer)},
            {"predictive_median", bands.median},
            {"mean_mu", posterior.meanMu()},
            {"sd_mu", posterior.sdMu()},
            {"mean_sigma", posterior.meanSigma()},
            {"sigma_at_cap", posterior.sigmaAtCap()},
            {"log_evidence", posterior.logEvidence()}};
}

} // namespace

// {readings, judge?, loo?, u_set2?, nu0?, s0?, smin?, smax?}
Output answerBand(CaseInput& input)
{
    const numbers::IntervalSet readings = numbers::intervalSetOf(input.readings("readings"));
    const std::vector<Interval> toJudge = input.readingsToJudge("judge");
    const numbers::SigmaPrior prior = input.prior();
    const double extraVariance = input.number("u_set2").value_or(0);
    const bool wantsAdmission = input.flag("loo");
    if (extraVariance < 0)
        input.fail("\"u_set2\" is negative");
    if (!input.isGood())
        return {};
    if (readings.status != numbers::ReadingsStatus::Ok)
        return {{"status", calc::nameOf(readings.status)}};
    const auto posterior = posteriorOf(input, readings, prior);
    if (!posterior)
        return {};

    const numbers::PredictiveBands bands = numbers::bandsOf(*posterior, extraVariance);
    Output output = bandSummary(*posterior, bands);
    output["judged"] = judgedByBand(toJudge, *posterior, bands, extraVariance);
    if (wantsAdmission)
        output["admission"] = admission(readings, prior);
    return output;
}

} // namespace rig::calc
