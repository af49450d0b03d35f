#pragma once

#include "core/airframe/ids.h"
#include "core/clock.h"
#include "core/review/facts_in_doubt.h"

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace rig {

// How far a file has come: what stands on every print of it, so that a later look can tell whether all of
// that is still there. Evidence against a change by mistake or by somebody who does not know the chain; no
// signature: whoever works out the whole chain anew leaves no trace in the file itself.
struct FileEnd
{
    std::int64_t facts = 0; // that have a link
    std::string hash;       // SHA-256 (FIPS 180-4), 64 hexadecimal digits

    bool operator==(const FileEnd&) const = default;
};

// The first 50 bits of a hash in the alphabet of base 32 (RFC 4648 section 6), as two groups of five:
// ABCDE-FG234.
std::string shortForm(const std::string& hash);
// What was typed, without blanks and hyphens, in capitals; empty where it can be no short form.
std::optional<std::string> readShortForm(const std::string& typed);

enum class ChainFault {
    Changed,  // stands otherwise than it was saved
    Missing,  // was saved and is gone
    Inserted, // is no part of the chain: not saved by this program
    Torn,     // what was saved before it is gone from the chain, or stands in another order
};

// What stands in a cell. Of bytes so many, and a name in place of an id.
struct FactValue
{
    enum class Is { Text, WholeNumber, Number, Bytes };
    Is is = Is::Text;
    std::string text;

    bool operator==(const FactValue&) const = default;
};

// In a column, as they stand in the file; several where each is a row of what belongs to the fact.
struct FactCells
{
    std::string column;
    std::vector<FactValue> values;
};

// A fact with which something is wrong, as the file tells of it now.
struct FaultyFact
{
    ChainFault fault{};
    std::string table; // a name of core/store/tables.h
    IdBytes fact{};
    std::int64_t savedMilliseconds = 0; // UTC, from its id
    std::string savedBy;                // names, empty where they are not known
    std::string registration;
    std::string coupling;
    std::vector<FactCells> says; // now
    IdBytes airframe{};          // that it is about, null where it is about none
    IdBytes record{};            // likewise
};

// A person whose name was replaced on request. Every other fact is held against the chain as ever.
struct ReplacedName
{
    std::string name; // as it reads since then
    std::string by;   // empty where it is not known
    Moment when;
    bool holds = true; // false: by other letters than these, which were given later

    bool operator==(const ReplacedName&) const = default;
};

struct ChainState
{
    FileEnd end;
    std::int64_t faults = 0;    // all of them
    std::int64_t takenOver = 0; // facts of before the chain, or of the file that this one was handed on from
    std::vector<FaultyFact> told;                 // the first of them
    std::vector<ReplacedName> replacedNames = {}; // no faults
    FactsInDoubt inDoubt = {};                    // by all of the faults, told or not
};

// So many of each table are told one by one, so that none drowns among those of another.
inline constexpr std::int64_t kFaultsTold = 20;

// Where a print that bears a short form stands in the chain of a file.
struct PrintPlace
{
    std::int64_t sequence = 0;          // the fact that was the last one then, counted from the first
    std::int64_t savedMilliseconds = 0; // of that fact
};

struct ComparedPrint
{
    std::string shortForm;
    std::optional<PrintPlace> place; // empty: this file never ended so
};

} // namespace rig
