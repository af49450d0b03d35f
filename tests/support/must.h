#pragma once

#include "core/result.h"

#include <gtest/gtest.h>
#include <string>

namespace rig::test {

inline std::string describe(const Problem& problem)
{
    return "problem " + std::to_string(static_cast<int>(problem.kind)) + ": " + problem.detail;
}

// The value; without one the test fails, says why, and ends there.
template <typename T> T must(Result<T> result)
{
    if (!result) {
        ADD_FAILURE() << describe(result.problem());
        std::abort();
    }
    return std::move(result).value();
}

} // namespace rig::test
