#include "core/store/store_file.h"

#include "core/store/chain_look.h"
#include "core/store/conflicts_in.h"
#include "core/store/connection.h"
#include "core/store/copies.h"
#include "core/store/create_file.h"
#include "core/store/file_header.h"
#include "core/store/layout.h"
#include "core/store/migrations.h"
#include "core/store/passing_file.h"
#include "core/store/tables.h"

#include <cerrno>
#include <fcntl.h>
#include <filesystem>
#include <unistd.h>

namespace rig {

namespace {

using Access = StoreFile::Connection::Access;
using Opened = Result<std::unique_ptr<StoreFile::Connection>>;

std::optional<ProblemKind> whyReadOnly(const std::string& path)
{
    if (fileRefusesWriting(path))
        return ProblemKind::FileReadOnly;
    // The rollback journal lies beside the file: without a writable folder nothing can be saved.
    if (folderRefusesWriting(path))
        return ProblemKind::FolderReadOnly;
    return std::nullopt;
}

bool needsUpgrade(const StoreFile::Connection& connection)
{
    return connection.schemaVersion != newestSchemaVersion();
}

Outcome upgrade(StoreFile::Connection& connection, Day today)
{
    if (!needsUpgrade(connection))
        return Done{};
    if (connection.readOnlyFor)
        return Problem{*connection.readOnlyFor,
                       "needs an upgrade from layout version " + std::to_string(connection.schemaVersion)};
    if (const auto copied = copyBeforeUpgrade(connection.path, today, newestSchemaVersion()); !copied)
        return copied.problem();
    const Outcome migrated = migrate(connection, newestSchemaVersion());
    connection.isUpgraded = static_cast<bool>(migrated);
    return migrated ? checkLayout(connection) : migrated;
}

// Damage in the middle of a file shows only when all of it is read: opening, and even counting rows, works
// without meeting it.
Outcome lookThroughFirst(StoreFile::Connection& connection, Day today, const std::stop_token& stop)
{
    if (const Outcome sound = lookThroughToWrite(connection.path, stop); !sound)
        return sound;
    if (!connection.readOnlyFor)
        if (const Outcome kept = keepTodaysCopy(connection.path, today); !kept)
            connection.copyProblem = kept.problem();
    return upgrade(connection, today);
}

// Also where an upgrade had to look through the file before: what does not stand as it was saved, and what
// was taken over just now, is found here.
Outcome lookBehind(StoreFile::Connection& connection, std::optional<Day> copyOn)
{
    const auto seen = connection.integer(QStringLiteral("PRAGMA data_version"));
    if (!seen)
        return seen.problem();
    connection.chainLookedAt = seen.value();
    connection.looking = std::make_unique<LookThrough>(connection.path, copyOn);
    return Done{};
}

Opened openExisting(const std::string& path, Day today, LookedThrough when, const std::stop_token& stop)
{
    const Result<FileHeader> header = readHeader(path);
    if (!header)
        return header.problem();
    if (const Outcome known = checkHeader(header.value()); !known)
        return known.problem();
    const std::optional<ProblemKind> readOnlyFor = whyReadOnly(path);
    Opened opened = StoreFile::Connection::open(path, readOnlyFor ? Access::Reading : Access::Writing);
    if (!opened)
        return opened;
    StoreFile::Connection& connection = *opened.value();
    connection.readOnlyFor = readOnlyFor;
    if (const Outcome known = readVersion(connection); !known)
        return known.problem();
    if (!readOnlyFor)
        removeLeftBehind(path);
    if (header.value().writeAheadLog && !readOnlyFor)
        if (const auto set = connection.word(QStringLiteral("PRAGMA journal_mode = DELETE")); !set)
            return set.problem();
    const bool isLookedAtFirst = when == LookedThrough::First || needsUpgrade(connection);
    if (isLookedAtFirst)
        if (const Outcome done = lookThroughFirst(connection, today, stop); !done)
            return done.problem();
    if (when == LookedThrough::Behind)
        if (const Outcome begun =
                lookBehind(connection, isLookedAtFirst || readOnlyFor ? std::nullopt : std::optional{today});
            !begun)
            return begun.problem();
    return opened;
}

// Nothing beside it is made and nothing in it changed: an older layout is brought up to date in memory.
Opened openToLook(const std::string& path, const std::stop_token& stop)
{
    const Result<FileHeader> header = readHeader(path);
    if (!header)
        return header.problem();
    if (const Outcome known = checkHeader(header.value()); !known)
        return known.problem();
    Opened opened = StoreFile::Connection::open(path, Access::Reading);
    if (!opened)
        return opened;
    if (const Outcome known = readVersion(*opened.value()); !known)
        return known.problem();
    if (const Outcome sound = lookThrough(path, stop); !sound)
        return sound.problem();
    opened.value()->readOnlyFor = ProblemKind::FileReadOnly;
    if (!needsUpgrade(*opened.value()))
        return opened;
    Opened newer = StoreFile::Connection::open(path, Access::InMemory);
    if (!newer)
        return newer;
    StoreFile::Connection& made = *newer.value();
    if (const Outcome copied = opened.value()->copyInto(made); !copied)
        return copied.problem();
    made.schemaVersion = opened.value()->schemaVersion;
    if (const Outcome migrated = migrate(made, newestSchemaVersion()); !migrated)
        return migrated.problem();
    made.isUpgraded = true;
    made.readOnlyFor = ProblemKind::FileReadOnly;
    return newer;
}

// Makes the empty file itself, so that a file that turned up in the meantime is never written over.
Outcome reserve(const std::string& path)
{
    const int handle = ::open(path.c_str(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, 0666);
    if (handle >= 0) {
        ::close(handle);
        return Done{};
    }
    switch (errno) {
    case EEXIST:
        return Problem{ProblemKind::FileExists, path};
    case EACCES:
    case EROFS:
    case EPERM:
        return Problem{ProblemKind::FolderReadOnly, path};
    case ENOSPC:
    case EDQUOT:
        return Problem{ProblemKind::DiskFull, path};
    default:
        return Problem{ProblemKind::CannotOpen, path};
    }
}

Outcome makeEmpty(const std::string& path, int version)
{
    if (const Outcome reserved = reserve(path); !reserved)
        return reserved;
    const Opened opened = StoreFile::Connection::open(path, Access::Writing);
    return opened ? migrate(*opened.value(), version) : Outcome{opened.problem()};
}

// Over an empty one that is reserved first, so that a file that turned up meanwhile is never written over.
Outcome giveName(const std::string& made, const std::string& path)
{
    if (const Outcome reserved = reserve(path); !reserved)
        return reserved;
    std::error_code failed;
    std::filesystem::rename(made, path, failed);
    return failed ? Outcome{Problem{ProblemKind::CannotOpen, path + ": " + failed.message()}} : Done{};
}

} // namespace

Outcome makeUnderAnotherName(const std::string& path,
                             const std::function<Outcome(const std::string& making)>& make)
{
    std::error_code ignored;
    if (std::filesystem::exists(std::filesystem::symlink_status(path, ignored)))
        return Problem{ProblemKind::FileExists, path};
    removeLeftBehind(path);
    const std::string making = makingName(path);
    std::filesystem::remove(making, ignored); // left behind by another one of that number
    Outcome made = make(making);
    if (made)
        made = giveName(making, path);
    std::filesystem::remove(making, ignored);
    return made;
}

Result<std::unique_ptr<StoreFile::Connection>> createFile(const std::string& path, int version)
{
    const auto make = [version](const std::string& making) { return makeEmpty(making, version); };
    // What is being made has no second name while its layout comes into it.
    const Outcome made = isMakingName(path) ? make(path) : makeUnderAnotherName(path, make);
    if (!made)
        return made.problem();
    Opened opened = StoreFile::Connection::open(path, Access::Writing);
    if (!opened)
        return opened;
    opened.value()->schemaVersion = version;
    if (const Outcome known = checkLayout(*opened.value()); !known)
        return known.problem();
    return opened;
}

Result<std::unique_ptr<StoreFile>> StoreFile::open(const std::string& path, OpenAs as, const Clock& clock,
                                                   LookedThrough when, const std::stop_token& stop)
{
    Opened opened = as == OpenAs::New      ? createFile(path, newestSchemaVersion())
                    : as == OpenAs::ToLook ? openToLook(path, stop)
                                           : openExisting(path, clock.now().localDay(), when, stop);
    if (!opened)
        return opened.problem();
    return std::unique_ptr<StoreFile>{new StoreFile(std::move(opened).value())};
}

StoreFile::StoreFile(std::unique_ptr<Connection> connection)
    : m_connection{std::move(connection)}, m_use{m_connection->path}
{
}

StoreFile::~StoreFile() = default;

const std::string& StoreFile::path() const
{
    return m_connection->path;
}

bool StoreFile::isReadOnly() const
{
    return m_connection->readOnlyFor.has_value();
}

std::optional<ProblemKind> StoreFile::readOnlyFor() const
{
    return m_connection->readOnlyFor;
}

std::optional<Outcome> StoreFile::wholeness() const
{
    return m_connection->looking ? m_connection->looking->wholeness() : Outcome{Done{}};
}

bool StoreFile::isLookedThrough() const
{
    return !m_connection->looking || m_connection->looking->isDone();
}

std::optional<Problem> StoreFile::copyProblem() const
{
    if (m_connection->copyProblem || !m_connection->looking)
        return m_connection->copyProblem;
    return m_connection->looking->copyProblem();
}

bool StoreFile::isUpgraded() const
{
    return m_connection->isUpgraded;
}

int StoreFile::schemaVersion() const
{
    return m_connection->schemaVersion;
}

bool StoreFile::isOpenElsewhere() const
{
    return m_use.isSharedWithOthers();
}

Result<FileEnd> StoreFile::end()
{
    return endOf(*m_connection);
}

Result<ChainState> StoreFile::lookAtChain(Progress* progress)
{
    auto state = rig::lookAtChain(*m_connection, progress);
    if (state)
        m_connection->inDoubt = state.value().inDoubt;
    return state;
}

FactsInDoubt StoreFile::inDoubt() const
{
    return m_connection->looking ? m_connection->looking->inDoubt() : m_connection->inDoubt;
}

Result<std::int64_t> StoreFile::changesElsewhere() const
{
    const auto version = m_connection->integer(QStringLiteral("PRAGMA data_version"));
    if (!version)
        return version.problem();
    return version.value().value_or(0) + (m_connection->looking ? m_connection->looking->doubtsFound() : 0);
}

std::optional<ChainState> StoreFile::chainFound() const
{
    return m_connection->looking ? m_connection->looking->chainFound() : std::nullopt;
}

Result<std::optional<PrintPlace>> StoreFile::placeOfPrint(const std::string& shortForm)
{
    return rig::placeOfPrint(*m_connection, shortForm);
}

Result<std::optional<Moment>> StoreFile::lastSaved()
{
    return rig::lastSaved(*m_connection);
}

void StoreFile::lookAtChainAgain() const
{
    const auto version = m_connection->integer(QStringLiteral("PRAGMA data_version"));
    if (!m_connection->looking || !version || m_connection->chainLookedAt == version.value())
        return;
    m_connection->chainLookedAt = version.value();
    m_connection->looking->lookAtChainAgain();
}

Result<FileEvidence> StoreFile::evidence(const std::vector<std::string>& shortForms)
{
    const auto version = m_connection->integer(QStringLiteral("PRAGMA data_version"));
    if (!version)
        return version.problem();
    if (m_connection->looking && m_connection->chainLookedAt == version.value())
        return evidenceWith(chainFound(), shortForms);
    auto chain = lookAtChain();
    return chain ? evidenceWith(std::move(chain).value(), shortForms) : chain.problem();
}

Result<FileEvidence> StoreFile::evidenceWith(std::optional<ChainState> chain,
                                             const std::vector<std::string>& shortForms)
{
    FileEvidence all;
    all.chain = std::move(chain);
    Problem problem;
    if (!take(end(), all.end, problem))
        return problem;
    for (const std::string& form : shortForms)
        if (!take(placeOfPrint(form), all.prints.emplace_back(ComparedPrint{form, {}}).place, problem))
            return problem;
    if (!take(toldConflictsIn(*m_connection), all.conflicts, problem) ||
        !take(toldDecisionsIn(*m_connection), all.decided, problem))
        return problem;
    return all;
}

Result<int> StoreFile::danglingReferences()
{
    int found = 0;
    const Outcome read =
        m_connection->each(QStringLiteral("PRAGMA foreign_key_check"), {}, [&found](const Row&) { ++found; });
    if (!read)
        return read.problem();
    return found;
}

StoreFile::Connection& StoreFile::connection()
{
    return *m_connection;
}

} // namespace rig
