#include "core/store/columns.h"

#include <cmath>

namespace rig {

bool lies(const IdBytes&, const Range&)
{
    return true;
}

bool lies(std::int64_t number, const Range& range)
{
    return range.least <= number && number <= range.most;
}

bool lies(double number, const Range& range)
{
    return std::isfinite(number) && static_cast<double>(range.least) <= number &&
           number <= static_cast<double>(range.most);
}

bool lies(std::string_view text, const Range& range)
{
    return lies(static_cast<std::int64_t>(text.size()), range);
}

bool lies(BytesView bytes, const Range& range)
{
    return lies(static_cast<std::int64_t>(bytes.bytes.size()), range);
}

} // namespace rig
