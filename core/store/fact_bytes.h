#pragma once

#include "core/airframe/ids.h"
#include "core/store/connection.h"

#include <QByteArray>

#include <map>
#include <optional>
#include <string_view>
#include <vector>

namespace rig {

// The canonical bytes of what stands in a file, which the chain hashes: docs/store.md says them, “The chain”.
// They follow from the rows alone: not from the order of columns, nor from columns in which nothing stands.
class FactBytes
{
public:
    explicit FactBytes(StoreFile::Connection& connection) : m_connection{connection} {}

    StoreFile::Connection& connection() { return m_connection; }

    // The fact with what belongs to it: sizes, readings of a baseline, what was shown, a photo. `table` is
    // one of core/store/tables.h. Empty where there is no such row.
    Result<std::optional<QByteArray>> of(std::string_view table, const IdBytes& row);
    Result<std::optional<QByteArray>> ofOrigin(const IdBytes& origin);

private:
    struct Select
    {
        QString sql;
        std::vector<QByteArray> columns; // in the order of their names
    };

    Result<std::optional<QByteArray>> ofRow(std::string_view table, const IdBytes& row);
    Result<std::vector<QByteArray>> blocks(std::string_view table, std::string_view key, const IdBytes& of);
    Result<const Select*> select(std::string_view table, std::string_view key);

    StoreFile::Connection& m_connection;
    std::map<std::string_view, Select> m_selects; // by table
    std::map<IdBytes, QByteArray> m_origins;      // those that were asked for: many facts have one
};

} // namespace rig
