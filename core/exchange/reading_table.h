#pragma once

#include "core/clock.h"
#include "core/exchange/bad_row.h"
#include "core/measure/gap_interval.h"

#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace rig {

// What a row of the table says of the coupling when it was read.
enum class RowState {
    Locked,
    PartSeated,
    Baseline,   // confirmed locked by other means: may make a band
    NotSecured, // found so at a rigging: it goes out, and is passed over when a table comes in
};

// One reading, names not yet looked up.
struct TableRow
{
    int line = 0;
    std::string airframe;
    std::string coupling;
    Day day;
    GapInterval interval;
    std::string gauge; // empty: not known
    std::string person;
    RowState state = RowState::Locked;
    int repeat = 1; // which of several readings that are the same in all of the above
    std::string note;
    std::string second;                          // who stood by; empty: nobody, or not known
    std::optional<std::chrono::seconds> time;    // of the day, when it was read; empty: not known
    std::optional<std::chrono::seconds> rigging; // when the rigging began to which it belongs; likewise
};

// Why a reading that goes out does not stand; such a row is passed over when a table comes in.
enum class RowAside {
    Corrected, // another reading takes its place
    Struck,    // nothing does
};

struct ReadingTable
{
    std::vector<TableRow> rows; // those without a problem
    std::vector<BadRow> bad;
    bool isRead = false; // false when no row of it could be read
    int setAside = 0;    // rows of readings that do not stand; nothing else is read of them
    int notSecured = 0;  // likewise of readings whose “no” stands in the rigging that they were taken at
};

// Reads a table of readings: docs/import.md describes it.
ReadingTable parseReadings(std::string_view bytes);

// The columns in the order in which they are written out.
const std::vector<std::string>& readingColumns();

std::string_view wordOf(RowState state);
std::string_view wordOf(RowAside aside);

} // namespace rig
