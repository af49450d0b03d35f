#include "core/day_entry.h"

#include <algorithm>
#include <array>
#include <cstdio>

namespace rig {

namespace {

// All of `text` as digits; -1 when anything else is in it.
int figuresIn(std::string_view text)
{
    int value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9')
            return -1;
        value = value * 10 + (c - '0');
    }
    return value;
}

} // namespace

std::optional<Day> parseDay(std::string_view text)
{
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos)
        return std::nullopt;
    text = text.substr(first, text.find_last_not_of(" \t") - first + 1);
    if (text.size() != 10 || text[4] != '-' || text[7] != '-')
        return std::nullopt;
    const int year = figuresIn(text.substr(0, 4));
    const int month = figuresIn(text.substr(5, 2));
    const int day = figuresIn(text.substr(8, 2));
    if (year < 1900 || month < 0 || day < 0)
        return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year{year},
                                           std::chrono::month{static_cast<unsigned>(month)},
                                           std::chrono::day{static_cast<unsigned>(day)}};
    if (!date.ok())
        return std::nullopt;
    return Day{date};
}

std::string dayText(Day day)
{
    const std::chrono::year_month_day date{day};
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return text.data();
}

} // namespace rig
