#pragma once

#include "core/clock.h"
#include "core/progress.h"
#include "core/result.h"
#include "core/review/file_evidence.h"
#include "core/store/file_use.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace rig {

// SQLite application_id of a .rigband file: the letters R G B D.
inline constexpr int kApplicationId = 0x52474244;

enum class OpenAs {
    Existing, // must be there
    New,      // must not be there; refused with FileExists otherwise
    ToLook,   // must be there; is only read, an older layout brought up to date in memory, and no copy made
};

// When a file that is there is looked through as a whole.
enum class LookedThrough {
    First,  // before it is open
    Behind, // while it is already shown; nothing is written to it before it is known to be whole
};

// What of a table salvage did not carry over.
struct NotCarried
{
    std::string table;
    std::int64_t unread = 0;  // rows on pages that cannot be read, as far as that can be told
    bool endUnread = false;   // and as many as there were behind the damage
    std::int64_t refused = 0; // rows that are no facts of their table
    std::int64_t lost = 0;    // rows of something that could not be carried over

    bool isAnything() const { return unread > 0 || endUnread || refused > 0 || lost > 0; }
};

struct Salvaged
{
    int facts = 0; // carried over
    std::vector<NotCarried> notCarried;
    int dangling = 0; // of the facts carried over: those that name somebody or something that is not there
};

// Whether salvaging failed at the new file, and not at the damaged one.
constexpr bool failedAtNewFile(ProblemKind kind)
{
    return kind == ProblemKind::FileExists || kind == ProblemKind::DiskFull ||
           kind == ProblemKind::FileReadOnly || kind == ProblemKind::FolderReadOnly;
}

// What salvage() is for: the file is one of ours, and can be opened no more.
constexpr bool mayBeSalvaged(ProblemKind kind)
{
    return kind == ProblemKind::DamagedFile || kind == ProblemKind::ForeignLayout ||
           kind == ProblemKind::WrongVersion;
}

// Opens, checks, copies and upgrades one .rigband file. Never writes to a file that is damaged, foreign or
// newer.
class StoreFile
{
public:
    // Path in UTF-8. Existing: probes, runs integrity_check, keeps today's rolling copy (core/store/copies.h)
    // and a copy before any upgrade, then upgrades. What needs an upgrade is always looked through first. A
    // read-only file or folder opens for reading; see isReadOnly(). Stopped while it is looked through:
    // Unexpected.
    static Result<std::unique_ptr<StoreFile>> open(const std::string& path, OpenAs as, const Clock& clock,
                                                   LookedThrough when = LookedThrough::First,
                                                   const std::stop_token& stop = {});

    ~StoreFile();
    StoreFile(const StoreFile&) = delete;
    StoreFile& operator=(const StoreFile&) = delete;

    const std::string& path() const;
    bool isReadOnly() const;
    // FileReadOnly or FolderReadOnly; empty when facts can be saved.
    std::optional<ProblemKind> readOnlyFor() const;
    // DamagedFile when it is not whole; empty while it is still looked through behind the window.
    std::optional<Outcome> wholeness() const;
    // Whether nothing goes on behind the window any more.
    bool isLookedThrough() const;
    // Why today's copy beside the file could not be made. The file itself is open and can be used.
    std::optional<Problem> copyProblem() const;
    int schemaVersion() const;
    // An older Rigband had written it; as it was it is kept in a copy beside it.
    bool isUpgraded() const;
    // Another program on this machine has it open too.
    bool isOpenElsewhere() const;

    // How far the file has come.
    Result<FileEnd> end();
    // The chain of the whole file held against what stands there, now: some microseconds for each fact.
    Result<ChainState> lookAtChain(Progress* progress = nullptr);
    // The same as it was found behind the window; empty while it is not known, and where it was not looked
    // at.
    std::optional<ChainState> chainFound() const;
    // Of which couplings the facts were found in doubt: behind the window, and where nothing goes on there
    // when the chain was looked at last. Nothing while it was not.
    FactsInDoubt inDoubt() const;
    // Moves on whenever another program has written, and when what is in doubt is found behind the window.
    Result<std::int64_t> changesElsewhere() const;
    // Another program has written: looked at once more, behind the window.
    void lookAtChainAgain() const;
    // Where a print with this short form stands, see readShortForm(); empty where this file never had it.
    Result<std::optional<PrintPlace>> placeOfPrint(const std::string& shortForm);
    // When the last fact was saved; empty where nothing tells it.
    Result<std::optional<Moment>> lastSaved();

    // All of it for a print: the chain as it was found behind the window, or looked at now where another
    // program has written since.
    Result<FileEvidence> evidence(const std::vector<std::string>& shortForms = {});
    // The same with the chain as whoever asks has just looked at it.
    Result<FileEvidence> evidenceWith(std::optional<ChainState> chain,
                                      const std::vector<std::string>& shortForms);

    // Facts that name another one which is not in the file; only a salvaged file has any.
    Result<int> danglingReferences();

    // Reads what can be read of a damaged file into a new one at `into`. The damaged file is only read.
    // Stopped: Unexpected, and nothing is there.
    static Result<Salvaged> salvage(const std::string& damaged, const std::string& into, const Clock& clock,
                                    Progress* progress = nullptr);

    struct Connection; // Qt Sql, known to core/store only
    Connection& connection();

private:
    explicit StoreFile(std::unique_ptr<Connection> connection);
    std::unique_ptr<Connection> m_connection;
    FileUse m_use;
};

} // namespace rig
