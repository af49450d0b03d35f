#pragma once

#include "app/calc/kinds.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace rig::calc {

inline constexpr std::size_t kMostBytes = 50'000'000;
inline constexpr int kDeepest = 64; // lists and objects within one another; a case has five

// What comes of a text of cases.
struct Answered
{
    std::string json;                    // an answer to each case; empty where the text holds no list of them
    std::vector<std::string> complaints; // of the text, or one for each case that has no answer

    bool isWhole() const { return complaints.empty(); }
};

// Reads {"cases": [{"id": ..., "input": {...}}, ...]} and answers each case. Whatever the text is, it is
// refused in words: more than kMostBytes, deeper than kDeepest, no JSON, no cases.
Answered answerText(const Kind& kind, std::string_view text);

} // namespace rig::calc
