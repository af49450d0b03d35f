#pragma once

#include "core/clock.h"

namespace rig::test {

inline constexpr Day dayOf(int year, unsigned month, unsigned day)
{
    return Day{std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{day}};
}

// Stands still until a test moves it. Starts on 2 May 2026, 09:00 UTC, in summer time.
class FixedClock : public Clock
{
public:
    Moment now() const override { return m_now; }
    void set(Moment now) { m_now = now; }
    void set(Day day) { m_now = Moment{noonOf(day).utcSeconds - 3 * 3600, 7200}; }
    void passMinutes(int minutes) { m_now.utcSeconds += 60 * minutes; }

private:
    Moment m_now{noonOf(dayOf(2026, 5, 2)).utcSeconds - 3 * 3600, 7200};
};

} // namespace rig::test
