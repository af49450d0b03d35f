#include "app/calc/fields.h"
#include "core/numbers/reading_pair.h"

#include <cmath>

namespace rig::calc {
namespace {

const char* verdictName(numbers::PairVerdict verdict)
{
    switch (verdict) {
    case numbers::PairVerdict::Agree:
        return "agree";
    case numbers::PairVerdict::Disagree:
        return "disagree";
    case numbers::PairVerdict::Unresolved:
        return "unresolved";
    }
    return "";
}

} // namespace

// {first, second, s_r, s_R, two_persons?}; only the deviation that counts is needed, s_R for two persons.
Output answerRepeatPair(CaseInput& input)
{
    const numbers::Interval first = input.reading("first");
    const numbers::Interval second = input.reading("second");
    const char* const deviation = input.flag("two_persons") ? "s_R" : "s_r";
    const double limit = numbers::kDifferenceFactor * input.size(deviation);
    if (!std::isfinite(limit))
        input.fail(std::string{"\""} + deviation + "\" is too large to compute with: give it in mm");
    if (!input.isGood())
        return {};
    const auto pair = numbers::readingPair(first, second, limit);
    if (!pair) {
        input.fail("\"first\" or \"second\" holds no number, or they lie too far apart: give bounds in mm");
        return {};
    }
    const bool isOpen = std::isinf(pair->largestDifference);
    return {{"smallest_difference", pair->smallestDifference},
            {"largest_difference", isOpen ? Output(nullptr) : Output(pair->largestDifference)},
            {"limit", limit},
            {"verdict", verdictName(pair->verdict)}};
}

} // namespace rig::calc
