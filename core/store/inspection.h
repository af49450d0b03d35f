#pragma once

#include "core/clock.h"
#include "core/lesson/photo.h"
#include "core/progress.h"
#include "core/result.h"
#include "core/store/store_file.h"

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace rig {

enum class FindingKind {
    Unreadable,    // rows that are no facts of their table
    LostReference, // rows that name something that is not there
    NotTogether,   // rows that name things of two airframes, or a reading of another coupling
    LastId,        // the greatest id that there can be: nothing can be saved after it
    FutureId,      // rows with an id of more than a day ahead, or of after 2100
};

struct Finding
{
    FindingKind kind = FindingKind::Unreadable;
    std::string table;
    std::int64_t rows = 0;
    std::string about; // the first cell that cannot be read, or the table that is named

    bool operator==(const Finding&) const = default;
};

// Everything in an open file that no Rigband could have saved, row by row; nothing when there is none.
// DamagedFile where reading ends. Stopped: Unexpected.
Result<std::vector<Finding>> findingsIn(StoreFile::Connection& file, Moment now,
                                        Progress* progress = nullptr);

// Every photo that has an image, also one that was withdrawn; rows that cannot be read are passed over.
// Stopped: Unexpected.
Outcome eachPhoto(StoreFile::Connection& file,
                  const std::function<void(const Photo& photo, const PhotoImage& image)>& take,
                  Progress* progress = nullptr);

// What salvage leaves out: calls `take` with the table, the row number and why for each row that cannot be
// read as a fact.
Outcome eachUnreadableRow(
    StoreFile::Connection& file,
    const std::function<void(const char* table, std::int64_t row, const std::string& why)>& take,
    Progress* progress = nullptr);

// A column that names what is in another table, where that is not there.
struct LostReference
{
    StoreFile::Connection& file;
    const char* table;
    const char* column;
    const char* named;
    bool byRow; // names one version and not the thing

    Result<std::vector<long long>> rows() const; // their row numbers
};
Outcome eachLostReference(StoreFile::Connection& file,
                          const std::function<Outcome(const LostReference&)>& take,
                          Progress* progress = nullptr);

// Of each table, by the table that is named: how many of its rows name something that is not there.
Result<std::vector<Finding>> lostReferences(StoreFile::Connection& file, Progress* progress = nullptr);

} // namespace rig
