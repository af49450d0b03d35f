#pragma once

#include "app/calc/case_input.h"

#include <nlohmann/json.hpp>
#include <span>
#include <string_view>

namespace rig::calc {

using Output = nlohmann::ordered_json;

// One thing that can be worked out: its name on the command line, and the function that answers one case. The
// answer counts only while the input is good.
struct Kind
{
    std::string_view name;
    Output (*answer)(CaseInput& input);
};

// A new kind is one line in this table and one file beside band.cpp.
std::span<const Kind> kinds();

Output answerAnova(CaseInput& input);
Output answerArl(CaseInput& input);
Output answerBand(CaseInput& input);
Output answerBudget(CaseInput& input);
Output answerChangePoint(CaseInput& input);
Output answerDescribe(CaseInput& input);
Output answerDiscrimination(CaseInput& input);
Output answerDrift(CaseInput& input);
Output answerEmpiricalBayesInterval(CaseInput& input);
Output answerEmpiricalBayesMoments(CaseInput& input);
Output answerLine(CaseInput& input);
Output answerMannKendallTheilSen(CaseInput& input);
Output answerMeasurerStudy(CaseInput& input);
Output answerMixedModel(CaseInput& input);
Output answerMovement(CaseInput& input);
Output answerRepeatPair(CaseInput& input);
Output answerSeason(CaseInput& input);
Output answerSharedShift(CaseInput& input);
Output answerTrend(CaseInput& input);

} // namespace rig::calc
