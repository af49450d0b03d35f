#include "core/lesson/spacing.h"

namespace rig {

Spacing spacingOf(std::span<const Recalled> times)
{
    Spacing spacing;
    for (const Recalled& time : times) {
        const bool wasDue = spacing.isDue(time.day);
        if (!time.isRight)
            spacing.step = 0;
        else if (time.isSure && wasDue && spacing.step + 1 < static_cast<int>(kSpacingDays.size()))
            ++spacing.step;
        spacing.wasSureButWrong = !time.isRight && time.isSure;
        if (!time.isRight || wasDue)
            spacing.due = time.day + std::chrono::days{kSpacingDays[static_cast<std::size_t>(spacing.step)]};
    }
    return spacing;
}

bool isRefreshDue(std::optional<Day> lastRigging, Day today, int monthsWithoutRigging)
{
    return lastRigging && monthsAfter(*lastRigging, monthsWithoutRigging) <= today;
}

Day monthsAfter(Day day, int months)
{
    const std::chrono::year_month_day later = std::chrono::year_month_day{day} + std::chrono::months{months};
    return later.ok() ? Day{later} : Day{later.year() / later.month() / std::chrono::last};
}

} // namespace rig
