#pragma once

#include <cstdlib>
#include <string>
#include <utility>
#include <variant>

namespace rig {

// What went wrong outside the program. `wording/` turns each kind into a sentence.
enum class ProblemKind {
    NoSuchFile,
    CannotOpen,
    NotOurFile,
    NewerFile,
    ForeignLayout, // something in it that the program did not make; the detail is its name, fit to be shown
    WrongVersion,  // laid out as another version than it says
    DamagedFile,
    FileReadOnly,
    SaveBrokenOff, // what undoes it stands beside the file, which was opened only to be read
    FolderReadOnly,
    DiskFull,
    BusyElsewhere,
    StillLookedThrough, // not known yet whether the file is whole, so nothing was written
    NoRoomForCopy,      // a copy of the day would take too much of the disk
    CopyOfLaterDay,     // beside it lies a copy of a day still to come; the detail is its name
    NoGreaterId,        // a fact has the greatest id there is, so none can be saved after it
    FactRefused,
    NotFound,
    FileExists,
    Unexpected,
};

struct Problem
{
    ProblemKind kind = ProblemKind::Unexpected;
    std::string detail; // technical, English, for the log; never shown alone
};

// Either a value or a Problem. The small stand-in for std::expected, which GCC 12 lacks.
template <typename T> class [[nodiscard]] Result
{
public:
    Result(T value) : m_state{std::move(value)} {}
    Result(Problem problem) : m_state{std::move(problem)} {}

    explicit operator bool() const { return std::holds_alternative<T>(m_state); }

    const T& value() const& { return held<T>(m_state); }
    // By value, so that a loop over a result just returned does not walk over something gone.
    T value() && { return std::move(held<T>(m_state)); }
    const Problem& problem() const { return held<Problem>(m_state); }

private:
    // Asking for what is not held is a broken promise of ours: it ends the program, in a release build too.
    template <typename Held, typename State> static auto& held(State& state)
    {
        auto* const held = std::get_if<Held>(&state);
        if (!held)
            std::abort();
        return *held;
    }

    std::variant<T, Problem> m_state;
};

// Moves the value into `into`, or the problem into `problem`; says whether there was a value. For reading
// many things in a row with one check at the end.
template <typename T> bool take(Result<T> result, T& into, Problem& problem)
{
    if (!result) {
        problem = result.problem();
        return false;
    }
    into = std::move(result).value();
    return true;
}

struct Done
{
};
using Outcome = Result<Done>;

} // namespace rig
