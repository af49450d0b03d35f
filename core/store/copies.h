#pragma once

#include "core/clock.h"
#include "core/progress.h"
#include "core/result.h"

#include <cstdint>
#include <filesystem>
#include <stop_token>
#include <string>
#include <vector>

namespace rig {

inline constexpr std::size_t kDaysKept = 10;
// The dated copies together take at most this part of the space that is free or theirs.
inline constexpr std::uintmax_t kShareOfFree = 4; // a quarter

// Where the copies of this file lie: a folder beside it.
std::filesystem::path copiesFolder(const std::filesystem::path& file);

// The first call on a day keeps the file as it is then, unless it is as the newest copy has it. Of the days
// on which it was changed the last ten stay, fewer where they would take more than their share of the disk.
// NoRoomForCopy when not even one fits; CopyOfLaterDay, with today's copy made, when one is of a day to come.
Outcome keepTodaysCopy(const std::string& path, Day today, const std::stop_token& stop = {});
// The same on a disk with so many bytes free.
Outcome keepTodaysCopy(const std::string& path, Day today, std::uintmax_t free,
                       const std::stop_token& stop = {});

// Of days after `today`: the clock was wrong once. They count as no days, and nothing removes them.
std::vector<std::filesystem::path> copiesOfLaterDays(const std::filesystem::path& file, Day today);

// One copy beside a file, of a day or from before it was changed as a whole.
struct KeptCopy
{
    std::filesystem::path path;
    Day day{};
    std::uintmax_t bytes = 0;
};

// All that lie beside this file, the newest first.
std::vector<KeptCopy> keptCopies(const std::filesystem::path& file);

// All that is saved in a file, or in a copy of one, as of one moment in a new file; never over one that is
// there: FileExists. It may be open meanwhile.
// Stopped: Unexpected, and nothing is there.
Outcome copyIntoNew(const std::filesystem::path& from, const std::filesystem::path& into,
                    Progress* progress = nullptr);

// Copies that nothing removes; where they lie.
Result<std::filesystem::path> copyBeforeUpgrade(const std::string& path, Day today, int toVersion);
Result<std::filesystem::path> copyBeforeTakingIn(const std::string& path, Day today,
                                                 const std::stop_token& stop = {});
// One of them whose reason was given up, and the folder where it was the first.
void takeBackCopy(const std::filesystem::path& copy);

} // namespace rig
