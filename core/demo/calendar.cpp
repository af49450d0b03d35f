#include "core/demo/calendar.h"

namespace rig::demo {

namespace {

bool isClubDay(Day day)
{
    const unsigned weekday = std::chrono::weekday{day}.iso_encoding();
    return weekday == 3 || weekday >= 5;
}

} // namespace

std::vector<Day> flyingDays(Day from, Day to, int count, const std::set<Day>& wanted,
                            const std::set<Day>& unwanted)
{
    std::vector<Day> free;
    for (Day day = from; day <= to; day += std::chrono::days{1})
        if (isClubDay(day) && !wanted.contains(day) && !unwanted.contains(day))
            free.push_back(day);
    std::set<Day> chosen = wanted;
    const std::size_t missing = static_cast<std::size_t>(count) - wanted.size();
    for (std::size_t i = 0; i < missing; ++i)
        chosen.insert(free[i * free.size() / missing]);
    return {chosen.begin(), chosen.end()};
}

} // namespace rig::demo
