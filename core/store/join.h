#pragma once

#include "core/clock.h"
#include "core/progress.h"
#include "core/review/conflicts.h"
#include "core/store/other_file.h"

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace rig {

// So many facts of one kind.
struct FactCount
{
    std::string table; // a name of core/store/tables.h
    std::int64_t facts = 0;
};

// What came of it. “Ours” is the first of two files, or the one that takes the other in.
struct Joined
{
    FileEnd end;
    std::vector<FactCount> came;     // what theirs alone had, in the order of the tables
    std::int64_t onlyOurs = 0;       // facts that theirs lacks
    std::int64_t all = 0;            // facts there are now
    std::vector<FaultyFact> leftOut; // changed by hand in one of them: as they stood there
    // Of one id, ours and theirs, and nothing tells which was saved: nothing was joined then.
    std::vector<std::pair<FaultyFact, FaultyFact>> undecided;

    std::int64_t onlyTheirs() const;
};

// The union of the facts of two files, of what belongs to them, and of their chains, see docs/store.md, “Two
// copies of a file”. Neither order nor repetition matters. Of two rows with one id that say different things
// the one is taken that a link of its own file confirms; where neither is, or both are, nothing is joined.

// Into a new file at `out`, which stands there once it is whole. FileExists when something stands there.
Result<Joined> join(OtherFile& ours, OtherFile& theirs, const std::string& out, Progress* progress = nullptr);

// What would come of taking theirs in; nothing is written.
struct Foreseen
{
    ChainState ours;
    ChainState theirs;
    Joined joined;
    std::vector<std::string> couplings; // of the readings that come
    std::optional<Day> first;           // and their days
    std::optional<Day> last;
    std::vector<ToldConflict> conflicts; // that are not there yet
};
Result<Foreseen> foresee(const std::string& ours, OtherFile& theirs, Progress* progress = nullptr);

// Into a file that is open, in one transaction; what is held of its facts is then read anew.
Result<Joined> takeIn(StoreFile& ours, OtherFile& theirs);
// The same on a connection of its own, as another program would: whoever has the file open meets it by what
// PRAGMA data_version says. The file is known to be whole. Stopped: Unexpected, and it is as it was.
Result<Joined> takeIn(const std::string& ours, OtherFile& theirs, Progress* progress = nullptr);

} // namespace rig
