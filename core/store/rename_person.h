#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/person.h"
#include "core/clock.h"
#include "core/result.h"
#include "core/store/join.h"
#include "core/store/other_file.h"

#include <cstdint>
#include <string>
#include <vector>

namespace rig {

class IdSource;

// Whose name is to be replaced, by what, and who does it.
struct RenameWanted
{
    PersonId person;
    std::string as;
    PersonId by;
};

struct Renamed
{
    FileEnd end;
    std::int64_t versions = 0;         // of the person, in which it was replaced
    std::vector<FactCount> stillNamed; // facts whose texts hold a name or number that this person had, by kind
};

// A new file at `out` that is the whole one but for the name, and the telephone number, in every version of a
// person: docs/decisions, 0008. FileExists when something stands at `out`; FactRefused where somebody else in
// the file has the name that is wanted; NotFound without that person.
Result<Renamed> replaceName(OtherFile& whole, const RenameWanted& wanted, IdSource& ids, const Clock& clock,
                            const std::string& out);

} // namespace rig
