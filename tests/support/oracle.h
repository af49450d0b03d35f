#pragma once

#include "core/numbers/interval_posterior.h"
#include "tests/support/json_file.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <gtest/gtest.h>
#include <vector>

namespace rig::tests {

using CaseBody = void (*)(const nlohmann::json& oneCase);

class CaseTest : public testing::Test
{
public:
    CaseTest(CaseBody body, const nlohmann::json& oneCase) : m_body{body}, m_case(oneCase) {}
    void TestBody() override { m_body(m_case); }

private:
    CaseBody m_body;
    nlohmann::json m_case;
};

inline bool registerCases(const std::string& suite, const std::string& name, CaseBody body,
                          const std::vector<nlohmann::json>& cases, const char* file, int line)
{
    if (cases.empty()) { // would prove nothing
        std::fprintf(stderr, "no cases of %s.%s\n", suite.c_str(), name.c_str());
        std::abort();
    }
    for (const nlohmann::json& oneCase : cases)
        testing::RegisterTest(suite.c_str(), (name + '/' + testNameOf(oneCase)).c_str(), nullptr, nullptr,
                              file, line, [body, oneCase] {
                                  return new CaseTest{body, oneCase};
                              });
    return true;
}

// A test for each of some cases, ORIGIN/SUITE.NAME/ID; its body knows the case as `oneCase`. For what a suite
// with a parameter of its own would expand to, each table would take half a processor second to compile.
#define TEST_OF_CASES(origin, suite, name, cases)                                                            \
    static void suite##name(const nlohmann::json& oneCase);                                                  \
    [[maybe_unused]] static const bool suite##name##IsRegistered =                                           \
        rig::tests::registerCases(#origin "/" #suite, #name, suite##name, cases, __FILE__, __LINE__);        \
    static void suite##name([[maybe_unused]] const nlohmann::json& oneCase)

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
