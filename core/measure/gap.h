#pragma once

#include <compare>
#include <cstdint>

namespace rig {

// A locked-state gap, or a leaf's thickness. Whole micrometres, so 0.60 mm is 0.60 mm after any round trip.
class Gap
{
public:
    constexpr Gap() = default;
    static constexpr Gap micrometres(std::int32_t um) { return Gap{um}; }
    constexpr std::int32_t inMicrometres() const { return m_um; }
    constexpr double inMillimetres() const { return m_um / 1000.0; }
    constexpr auto operator<=>(const Gap&) const = default;
    constexpr Gap operator+(Gap other) const { return Gap{m_um + other.m_um}; }
    constexpr Gap operator-(Gap other) const { return Gap{m_um - other.m_um}; }

private:
    constexpr explicit Gap(std::int32_t um) : m_um{um} {}
    std::int32_t m_um = 0;
};

namespace literals {
constexpr Gap operator""_um(unsigned long long um)
{
    return Gap::micrometres(static_cast<std::int32_t>(um));
}
} // namespace literals

// Nothing wider than this is a gap between plunger and sleeve; a larger figure is a slip of the pen.
inline constexpr Gap kWidestGap = Gap::micrometres(10'000);

} // namespace rig
