#pragma once

#include <chrono>
#include <compare>
#include <cstdint>

namespace rig {

// A calendar day, without a time.
using Day = std::chrono::sys_days;

// A point in time with the local offset that held where it was noted.
struct Moment
{
    std::int64_t utcSeconds = 0;
    std::int32_t offsetSeconds = 0; // local minus UTC

    constexpr auto operator<=>(const Moment& other) const { return utcSeconds <=> other.utcSeconds; }
    constexpr bool operator==(const Moment& other) const { return utcSeconds == other.utcSeconds; }

    Day localDay() const
    {
        return std::chrono::floor<std::chrono::days>(
            std::chrono::sys_seconds{std::chrono::seconds{utcSeconds + offsetSeconds}});
    }
};

// Noon UTC of a day: used where only the day is known, as in an imported table.
inline Moment noonOf(Day day)
{
    return Moment{std::chrono::sys_seconds{day}.time_since_epoch().count() + 12 * 3600, 0};
}

class Clock
{
public:
    virtual ~Clock() = default;
    virtual Moment now() const = 0;
};

class SystemClock : public Clock
{
public:
    Moment now() const override;
};

} // namespace rig
