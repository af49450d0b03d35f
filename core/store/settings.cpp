#include "core/store/settings.h"

#include <sqlite3.h>
#include <utility>

namespace rig {

namespace {

constexpr std::pair<int, int> kLimits[] = {
    {SQLITE_LIMIT_LENGTH, 8'000'000}, // bytes of a row; a photo has 4,000,000 at most
    {SQLITE_LIMIT_SQL_LENGTH, 100'000}, {SQLITE_LIMIT_COLUMN, 100},       {SQLITE_LIMIT_EXPR_DEPTH, 100},
    {SQLITE_LIMIT_ATTACHED, 0},         {SQLITE_LIMIT_TRIGGER_DEPTH, 10}, {SQLITE_LIMIT_WORKER_THREADS, 0},
};

} // namespace

bool setUp(sqlite3* file, ReadsDamage damage)
{
    for (const auto& [limit, most] : kLimits)
        sqlite3_limit(file, limit, most);
    // To read a damaged file SQLite must be let at its own tables; that connection cannot write anyway.
    const int defensive = damage == ReadsDamage::No ? 1 : 0;
    return sqlite3_db_config(file, SQLITE_DBCONFIG_DEFENSIVE, defensive, nullptr) == SQLITE_OK &&
           sqlite3_db_config(file, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr) == SQLITE_OK &&
           sqlite3_db_config(file, SQLITE_DBCONFIG_WRITABLE_SCHEMA, 1 - defensive, nullptr) == SQLITE_OK &&
           sqlite3_db_config(file, SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0, nullptr) == SQLITE_OK &&
           sqlite3_exec(file, "PRAGMA cell_size_check = ON", nullptr, nullptr, nullptr) == SQLITE_OK;
}

} // namespace rig
