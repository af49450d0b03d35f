#pragma once

#include "core/numbers/interval_posterior.h"
#include "tests/support/json_file.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <vector>

namespace rig::tests {

inline std::string caseName(const testing::TestParamInfo<nlohmann::json>& info)
{
    return testNameOf(info.param);
}

inline numbers::Interval intervalOf(const nlohmann::json& pair)
{
    return {boundOf(pair.at(0), -numbers::kInfinity), boundOf(pair.at(1), numbers::kInfinity)};
}

inline std::vector<numbers::Interval> intervalsOf(const nlohmann::json& pairs)
{
    std::vector<numbers::Interval> intervals;
    for (const nlohmann::json& pair : pairs)
        intervals.push_back(intervalOf(pair));
    return intervals;
}

// The cases of an oracle file that have something at `pointer`, each with the file's tolerances under
// "tolerance".
inline std::vector<nlohmann::json> oracleCases(const std::string& name,
                                               const std::string& pointer = "/expected")
{
    const nlohmann::json file = jsonFile(name);
    std::vector<nlohmann::json> cases;
    for (nlohmann::json oneCase : file.at("cases")) {
        if (!oneCase.contains(nlohmann::json::json_pointer{pointer}))
            continue;
        oneCase["tolerance"] = file.at("tolerance");
        cases.push_back(oneCase);
    }
    return cases;
}

// The cases of tests/data/published/NAME whose id begins with `prefix`; each has its own tolerance.
inline std::vector<nlohmann::json> publishedCases(const std::string& name, const std::string& prefix = "")
{
    const nlohmann::json file = jsonFile("published/" + name);
    std::vector<nlohmann::json> found;
    for (const nlohmann::json& oneCase : file.at("cases"))
        if (oneCase.at("id").get<std::string>().starts_with(prefix))
            found.push_back(oneCase);
    return found;
}

// The one case with this id.
inline nlohmann::json publishedCase(const std::string& name, const std::string& id)
{
    return publishedCases(name, id).at(0);
}

inline void expectBand(const numbers::Interval& actual, const nlohmann::json& expected, double allowed)
{
    EXPECT_NEAR(actual.lower, expected.at(0).get<double>(), allowed);
    EXPECT_NEAR(actual.upper, expected.at(1).get<double>(), allowed);
}

} // namespace rig::tests
