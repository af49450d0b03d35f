#pragma once

#include "core/numbers/interval_posterior.h"

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

namespace rig::calc {

// Reads the named fields of one case. The first thing that is wrong is kept in error(); what is returned
// after that is not to be used.
class CaseInput
{
public:
    explicit CaseInput(const nlohmann::json& input);

    const std::string& error() const { return m_error; }
    bool isGood() const { return m_error.empty(); }
    void fail(const std::string& what);

    bool has(const char* name) const;
    // Pairs [lower, upper], an open bound as null. "NaN" is taken, for readings whose status is asked for.
    std::vector<numbers::Interval> readings(const char* name);
    // A list of such lists.
    std::vector<std::vector<numbers::Interval>> groups(const char* name);
    // As readings(), empty where the field is missing; reversed or NaN bounds are an error.
    std::vector<numbers::Interval> readingsToJudge(const char* name);
    std::vector<double> numbersIn(const char* name); // empty where missing
    std::vector<double> neededNumbersIn(const char* name);
    std::vector<std::vector<double>> numberGroups(const char* name); // a needed list of lists of numbers
    // A needed list of numbers or words that only tell things apart, as whole numbers: equal ones equal.
    std::vector<int> labels(const char* name);
    // The same labels as they were given, each once: the n-th is what labels() calls n.
    nlohmann::json labelNames(const char* name) const;
    // A needed list of numbers, null for what has none.
    std::vector<std::optional<double>> numbersOrNull(const char* name);
    // A list of true and false; all false, `count` of them, where missing.
    std::vector<bool> flags(const char* name, std::size_t count);
    // A needed pair [lower, upper] with its bounds in order; an open bound as null.
    numbers::Interval reading(const char* name);
    std::optional<double> number(const char* name); // empty where missing or null
    // A number of 0 or more; `otherwise` where missing or null, and an error when there is none.
    double size(const char* name, std::optional<double> otherwise = {});
    bool flag(const char* name);                       // false where missing
    std::optional<std::string> word(const char* name); // empty where missing or null
    // Fields nu0, s0, smin, smax of the case itself, or of the object `name` in it.
    numbers::SigmaPrior prior();
    numbers::SigmaPrior prior(const char* name);

private:
    std::vector<numbers::Interval> pairsIn(const nlohmann::json& list, const std::string& name);
    std::vector<double> numbersOf(const nlohmann::json& list, const std::string& name);
    double bound(const nlohmann::json& value, double open, const std::string& where);

    const nlohmann::json& m_input;
    std::string m_error;
};

} // namespace rig::calc
