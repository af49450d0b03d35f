#include "core/clock.h"

#include <ctime>

namespace rig {

Moment SystemClock::now() const
{
    const std::time_t seconds = std::time(nullptr);
    std::tm local{};
    localtime_r(&seconds, &local);
    return Moment{static_cast<std::int64_t>(seconds), static_cast<std::int32_t>(local.tm_gmtoff)};
}

} // namespace rig
