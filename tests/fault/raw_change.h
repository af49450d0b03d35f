#pragma once

#include <gtest/gtest.h>
#include <sqlite3.h>
#include <string>

namespace rig::test {

// Changes a file as another program would, past everything that the program itself looks at.
inline void changeBy(const std::string& path, const std::string& sql)
{
    sqlite3* file = nullptr;
    ASSERT_EQ(sqlite3_open(path.c_str(), &file), SQLITE_OK);
    sqlite3_db_config(file, SQLITE_DBCONFIG_DEFENSIVE, 0, nullptr);
    EXPECT_EQ(sqlite3_exec(file, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(file);
    sqlite3_close(file);
}

} // namespace rig::test
