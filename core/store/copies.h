#pragma once

#include "core/clock.h"
#include "core/result.h"
#include "core/store/store_file.h"

#include <filesystem>

namespace rig {

inline constexpr int kDaysKept = 10;

// Where the copies of this file lie: a folder beside it.
std::filesystem::path copiesFolder(const std::filesystem::path& file);

// The first call on a day keeps the file as it is then; of the days on which it was used the last ten stay.
Outcome keepTodaysCopy(StoreFile::Connection& connection, Day today);

// A copy that nothing removes.
Outcome copyBeforeUpgrade(StoreFile::Connection& connection, Day today, int toVersion);

} // namespace rig
