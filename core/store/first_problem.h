#pragma once

#include "core/airframe/ids.h"
#include "core/result.h"
#include "core/store/names.h"

#include <initializer_list>
#include <optional>
#include <string>

namespace rig {

// What the checks of facts are put together from.

inline Outcome refused(const std::string& why)
{
    return Problem{ProblemKind::FactRefused, why};
}

// The first problem among checks that are already made; all are cheap.
inline Outcome firstProblem(std::initializer_list<Outcome> outcomes)
{
    for (const Outcome& outcome : outcomes)
        if (!outcome)
            return outcome;
    return Done{};
}

inline Outcome filled(const std::string& text, const char* what)
{
    if (isBlank(text))
        return refused(std::string{"empty: "} + what);
    return Done{};
}

inline Outcome twoPeople(const std::optional<PersonId>& first, const std::optional<PersonId>& second)
{
    if (first && second && *first == *second)
        return refused("the same person twice");
    return Done{};
}

} // namespace rig
