#include "core/exchange/field_text.h"

#include "core/day_entry.h"
#include "core/store/kind_words.h"

#include <array>
#include <charconv>
#include <chrono>
#include <cmath>

namespace rig {

namespace {

// to_chars knows no locale, which printf follows.
std::string written(double value, std::chars_format format, int precision)
{
    if (!std::isfinite(value))
        return {};
    std::array<char, 400> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), value, format, precision);
    return {text.data(), end.ptr};
}

std::string twoDigits(std::int64_t value)
{
    return std::to_string(100 + value).substr(1);
}

} // namespace

std::string millimetres(Gap gap)
{
    const std::int32_t um = gap.inMicrometres();
    std::string decimals = std::to_string(1000 + um % 1000).substr(1);
    if (decimals.back() == '0')
        decimals.pop_back();
    return std::to_string(um / 1000) + "." + decimals;
}

std::string millimetresOrNothing(const std::optional<Gap>& gap)
{
    return gap ? millimetres(*gap) : std::string{};
}

std::string dayOrNothing(const std::optional<Day>& day)
{
    return day ? dayText(*day) : std::string{};
}

std::string yesNo(bool yes)
{
    return yes ? "yes" : "no";
}

std::string decimal(double value, int decimals)
{
    const std::string text = written(value, std::chars_format::fixed, decimals);
    const bool isZero = text.find_first_not_of("-0.") == std::string::npos;
    return isZero && text.starts_with('-') ? text.substr(1) : text;
}

std::string significant(double value, int figures)
{
    return written(value, std::chars_format::general, figures);
}

std::string timeText(const Moment& moment)
{
    const auto local =
        std::chrono::sys_seconds{std::chrono::seconds{moment.utcSeconds + moment.offsetSeconds}};
    const std::chrono::hh_mm_ss time{local - std::chrono::floor<std::chrono::days>(local)};
    return twoDigits(time.hours().count()) + ":" + twoDigits(time.minutes().count()) + ":" +
           twoDigits(time.seconds().count());
}

std::string circuitText(const Coupling& coupling)
{
    return coupling.circuit == Circuit::Other ? coupling.otherCircuit : std::string{wordOf(coupling.circuit)};
}

std::string reasonText(const Fitting& fitting)
{
    return fitting.reason.empty() ? std::string{wordOf(fitting.kind)} : fitting.reason;
}

} // namespace rig
