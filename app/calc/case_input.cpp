#include "app/calc/case_input.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace rig::calc {
namespace {

using numbers::kInfinity;

std::string placeIn(const std::string& name, std::size_t index)
{
    return name + "[" + std::to_string(index) + "]";
}

} // namespace

CaseInput::CaseInput(const nlohmann::json& input) : m_input{input}
{
    if (!m_input.is_object())
        fail("\"input\" is missing or not an object");
}

void CaseInput::fail(const std::string& what)
{
    if (m_error.empty())
        m_error = what;
}

bool CaseInput::has(const char* name) const
{
    return m_input.is_object() && m_input.contains(name);
}

std::vector<numbers::Interval> CaseInput::readings(const char* name)
{
    static const nlohmann::json kNothing;
    return pairsIn(has(name) ? m_input[name] : kNothing, name);
}

std::vector<std::vector<numbers::Interval>> CaseInput::groups(const char* name)
{
    std::vector<std::vector<numbers::Interval>> result;
    if (!has(name) || !m_input[name].is_array()) {
        fail(std::string{"\""} + name + "\" is missing or not a list of lists of [lower, upper]");
        return result;
    }
    for (const nlohmann::json& list : m_input[name])
        result.push_back(pairsIn(list, placeIn(name, result.size())));
    return result;
}

std::vector<numbers::Interval> CaseInput::readingsToJudge(const char* name)
{
    if (!has(name))
        return {};
    std::vector<numbers::Interval> result = readings(name);
    for (std::size_t i = 0; i < result.size(); ++i) {
        if (std::isnan(result[i].lower) || std::isnan(result[i].upper))
            fail(placeIn(name, i) + " is not a number");
        if (result[i].lower > result[i].upper)
            fail(placeIn(name, i) + " has reversed bounds");
    }
    return result;
}

std::vector<double> CaseInput::numbersIn(const char* name)
{
    return has(name) ? numbersOf(m_input[name], name) : std::vector<double>{};
}

std::vector<double> CaseInput::neededNumbersIn(const char* name)
{
    if (!has(name))
        fail(std::string{"\""} + name + "\" is missing: give a list of numbers");
    return numbersIn(name);
}

std::vector<std::vector<double>> CaseInput::numberGroups(const char* name)
{
    std::vector<std::vector<double>> result;
    if (!has(name) || !m_input[name].is_array()) {
        fail(std::string{"\""} + name + "\" is missing or not a list of lists of numbers");
        return result;
    }
    for (const nlohmann::json& list : m_input[name])
        result.push_back(numbersOf(list, placeIn(name, result.size())));
    return result;
}

std::vector<int> CaseInput::labels(const char* name)
{
    std::vector<int> result;
    if (!has(name) || !m_input[name].is_array()) {
        fail(std::string{"\""} + name + "\" is missing or not a list: give one label for each reading");
        return result;
    }
    std::map<nlohmann::json, int> known;
    for (const nlohmann::json& label : m_input[name]) {
        if (!label.is_number() && !label.is_string())
            fail(placeIn(name, result.size()) + " is neither a number nor a word in quotes");
        result.push_back(known.emplace(label, static_cast<int>(known.size())).first->second);
    }
    return result;
}

nlohmann::json CaseInput::labelNames(const char* name) const
{
    nlohmann::json names = nlohmann::json::array();
    for (const nlohmann::json& label : m_input[name])
        if (std::find(names.begin(), names.end(), label) == names.end())
            names.push_back(label);
    return names;
}

std::vector<std::optional<double>> CaseInput::numbersOrNull(const char* name)
{
    std::vector<std::optional<double>> result;
    if (!has(name) || !m_input[name].is_array()) {
        fail(std::string{"\""} + name +
             "\" is missing or not a list: give a number or null for each reading");
        return result;
    }
    for (const nlohmann::json& value : m_input[name]) {
        if (!value.is_number() && !value.is_null())
            fail(placeIn(name, result.size()) + " is neither a number nor null");
        result.push_back(value.is_number() ? std::optional{value.get<double>()} : std::nullopt);
    }
    return result;
}

std::vector<bool> CaseInput::flags(const char* name, std::size_t count)
{
    if (!has(name))
        return std::vector<bool>(count, false);
    std::vector<bool> result;
    if (!m_input[name].is_array())
        fail(std::string{"\""} + name + "\" is not a list of true and false");
    for (const nlohmann::json& value : m_input[name]) {
        if (!value.is_boolean())
            fail(placeIn(name, result.size()) + " is neither true nor false");
        result.push_back(value.is_boolean() && value.get<bool>());
    }
    return result;
}

numbers::Interval CaseInput::reading(const char* name)
{
    numbers::Interval result;
    const std::string quoted = std::string{"\""} + name + "\"";
    if (!has(name) || !m_input[name].is_array() || m_input[name].size() != 2) {
        fail(quoted + " is missing or not a pair [lower, upper]");
        return result;
    }
    result = {bound(m_input[name][0], -kInfinity, quoted), bound(m_input[name][1], kInfinity, quoted)};
    if (std::isnan(result.lower) || std::isnan(result.upper))
        fail(quoted + " has a bound that is not a number");
    if (result.lower > result.upper)
        fail(quoted + " has reversed bounds: give the smaller first");
    return result;
}

std::optional<double> CaseInput::number(const char* name)
{
    if (!has(name) || m_input[name].is_null())
        return std::nullopt;
    if (m_input[name].is_number())
        return m_input[name].get<double>();
    fail(std::string{"\""} + name + "\" is not a number");
    return std::nullopt;
}

double CaseInput::size(const char* name, std::optional<double> otherwise)
{
    const std::optional<double> given = number(name);
    if (!given && !otherwise)
        fail(std::string{"\""} + name + "\" is missing: give a number, 0 or more");
    if (given && *given < 0)
        fail(std::string{"\""} + name + "\" is negative: give 0 or more");
    return given.value_or(otherwise.value_or(0));
}

bool CaseInput::flag(const char* name)
{
    if (!has(name))
        return false;
    if (m_input[name].is_boolean())
        return m_input[name].get<bool>();
    fail(std::string{"\""} + name + "\" is neither true nor false");
    return false;
}

std::optional<std::string> CaseInput::word(const char* name)
{
    if (!has(name) || m_input[name].is_null())
        return std::nullopt;
    if (m_input[name].is_string())
        return m_input[name].get<std::string>();
    fail(std::string{"\""} + name + "\" is not a word in quotes");
    return std::nullopt;
}

numbers::SigmaPrior CaseInput::prior()
{
    numbers::SigmaPrior prior;
    prior.nu0 = number("nu0").value_or(prior.nu0);
    prior.s0 = number("s0").value_or(prior.s0);
    prior.sMin = number("smin");
    prior.sMax = number("smax");
    return prior;
}

numbers::SigmaPrior CaseInput::prior(const char* name)
{
    if (!has(name))
        return {};
    CaseInput inner{m_input[name]};
    const numbers::SigmaPrior prior = inner.prior();
    if (!inner.isGood())
        fail(std::string{"\""} + name + "\": " + inner.error());
    return prior;
}

std::vector<numbers::Interval> CaseInput::pairsIn(const nlohmann::json& list, const std::string& name)
{
    std::vector<numbers::Interval> result;
    if (!list.is_array()) {
        fail("\"" + name + "\" is missing or not a list of [lower, upper]");
        return result;
    }
    for (const nlohmann::json& pair : list) {
        const std::string where = placeIn(name, result.size());
        if (!pair.is_array() || pair.size() != 2) {
            fail(where + " is not a pair [lower, upper]");
            return {};
        }
        result.push_back({bound(pair[0], -kInfinity, where), bound(pair[1], kInfinity, where)});
    }
    return result;
}

std::vector<double> CaseInput::numbersOf(const nlohmann::json& list, const std::string& name)
{
    std::vector<double> result;
    if (!list.is_array()) {
        fail("\"" + name + "\" is not a list of numbers");
        return result;
    }
    for (const nlohmann::json& value : list) {
        if (!value.is_number())
            fail(placeIn(name, result.size()) + " is not a number");
        result.push_back(value.is_number() ? value.get<double>() : 0);
    }
    return result;
}

// A number, null for `open`, or one of the words for what JSON cannot say as a number.
double CaseInput::bound(const nlohmann::json& value, double open, const std::string& where)
{
    if (value.is_null())
        return open;
    if (value.is_number())
        return value.get<double>();
    if (value == "NaN")
        return std::numeric_limits<double>::quiet_NaN();
    if (value == "Infinity")
        return kInfinity;
    if (value == "-Infinity")
        return -kInfinity;
    fail(where + " has a bound that is neither a number nor null");
    return 0;
}

} // namespace rig::calc
