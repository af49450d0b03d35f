#pragma once

#include "core/airframe/ids.h"
#include "core/clock.h"
#include "core/measure/gap.h"

#include <QVariant>

#include <optional>
#include <string>
#include <string_view>

namespace rig {

// How each type of ours is bound: ids as 16 bytes, days as yyyy-MM-dd, lengths in micrometres. Qt would bind
// its own date and id types as text.
QVariant valueOf(const IdBytes& id);
QVariant valueOf(const std::string& text);
QVariant valueOf(Day day);
inline QVariant valueOf(Gap gap)
{
    return gap.inMicrometres();
}
inline QVariant valueOf(double number)
{
    return number;
}
inline QVariant valueOf(bool flag)
{
    return flag ? 1 : 0;
}
inline QVariant valueOf(int number)
{
    return number;
}
inline QVariant valueOf(std::int64_t number)
{
    return static_cast<qlonglong>(number);
}
inline QVariant valueOf(std::string_view word)
{
    return QString::fromLatin1(word.data(), static_cast<qsizetype>(word.size()));
}
template <typename Tag> QVariant valueOf(const Id<Tag>& id)
{
    return valueOf(id.bytes);
}
template <typename T> QVariant valueOf(const std::optional<T>& value)
{
    return value ? valueOf(*value) : QVariant{};
}

} // namespace rig
