#pragma once

#include <fstream>
#include <limits>
#include <nlohmann/json.hpp>
#include <string>

namespace rig::tests {

// A file of tests/data. Null when it cannot be read, which no test survives.
inline nlohmann::json jsonFile(const std::string& name)
{
    std::ifstream file{std::string{RIG_TEST_DATA} + "/" + name};
    return file ? nlohmann::json::parse(file, nullptr, false) : nlohmann::json{};
}

// The case's id as a test name: letters, digits and underscores.
inline std::string testNameOf(const nlohmann::json& oneCase)
{
    std::string name = oneCase.at("id").get<std::string>();
    for (char& letter : name)
        if (!std::isalnum(static_cast<unsigned char>(letter)))
            letter = '_';
    return name;
}

// A bound of a reading: `open` for null, NaN for the word.
inline double boundOf(const nlohmann::json& value, double open)
{
    if (value.is_null())
        return open;
    return value.is_number() ? value.get<double>() : std::numeric_limits<double>::quiet_NaN();
}

} // namespace rig::tests
