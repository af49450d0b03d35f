#pragma once

#include "core/airframe/ids.h"

#include <QVariant>

#include <optional>
#include <string_view>

namespace rig {

// How what a cell may hold is bound: ids as 16 bytes. Qt would bind its own date and id types as text.
QVariant valueOf(const IdBytes& id);
QVariant valueOf(std::string_view text);
inline QVariant valueOf(double number)
{
    return number;
}
inline QVariant valueOf(std::int64_t number)
{
    return static_cast<qlonglong>(number);
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
