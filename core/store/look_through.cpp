#include "core/store/look_through.h"

#include "core/store/chain_look.h"
#include "core/store/connection.h"
#include "core/store/copies.h"
#include "core/store/raw_file.h"

namespace rig {

namespace {

constexpr int kStepsBetweenLooks = 10'000; // of SQLite's machine, until it looks whether to stop

int wantsToStop(void* stop)
{
    return static_cast<const std::stop_token*>(stop)->stop_requested() ? 1 : 0;
}

int takeFirst(void* into, int, char** columns, char**)
{
    *static_cast<std::string*>(into) = columns[0] ? columns[0] : "";
    return 0;
}

// Not quick_check: a row that another program took out of an index is in its table still, and no page finds
// it.
Outcome integrityCheck(sqlite3* file, const std::string& path, std::stop_token stop)
{
    sqlite3_progress_handler(file, kStepsBetweenLooks, wantsToStop, &stop);
    std::string found;
    const int done = sqlite3_exec(file, "PRAGMA integrity_check(1)", takeFirst, &found, nullptr);
    sqlite3_progress_handler(file, 0, nullptr, nullptr);
    if (done != SQLITE_OK)
        return problemFrom(file, path);
    if (found != "ok")
        return Problem{ProblemKind::DamagedFile, found};
    return Done{};
}

// Whether it is whole for certain: read without a lock, so that no other window waits, and nobody wrote
// meanwhile.
bool isWholeWithoutLock(const std::string& path, const std::stop_token& stop)
{
    const Result<RawFile> file = openToRead(path, ReadWith::NoLock);
    if (!file)
        return false;
    const auto before = changeCounter(file.value().get());
    const Outcome found = integrityCheck(file.value().get(), path, stop);
    return found && before && before == changeCounter(file.value().get());
}

std::optional<ChainState> chainOf(const std::string& path, const std::stop_token& stop)
{
    const auto file = StoreFile::Connection::open(path, StoreFile::Connection::Access::Reading);
    if (!file)
        return std::nullopt;
    auto found = lookAtChain(*file.value(), stop);
    return found ? std::optional{std::move(found).value()} : std::nullopt;
}

} // namespace

// What the first look finds may be pages of two moments, so only a look with a lock counts as damage.
Outcome lookThrough(const std::string& path, const std::stop_token& stop)
{
    if (isWholeWithoutLock(path, stop))
        return Done{};
    const Result<RawFile> file = openToRead(path, ReadWith::Lock);
    return file ? integrityCheck(file.value().get(), path, stop) : Outcome{file.problem()};
}

Outcome lookThroughToWrite(const std::string& path, const std::stop_token& stop)
{
    Outcome found = lookThrough(path, stop);
    if (found || found.problem().kind != ProblemKind::SaveBrokenOff || fileRefusesWriting(path))
        return found;
    const auto file = StoreFile::Connection::open(path, StoreFile::Connection::Access::Writing);
    if (!file)
        return file.problem();
    if (const auto read = file.value()->integer(QStringLiteral("PRAGMA user_version")); !read)
        return read.problem();
    return lookThrough(path, stop);
}

LookThrough::LookThrough(std::string path, std::optional<Day> copyOn)
    : m_path{std::move(path)}, m_copyOn{copyOn}, m_thread{[this](const std::stop_token& stop) { run(stop); }}
{
}

LookThrough::~LookThrough() = default;

void LookThrough::run(const std::stop_token& stop)
{
    Outcome found = lookThroughToWrite(m_path, stop);
    while (!found && found.problem().kind == ProblemKind::BusyElsewhere && !stop.stop_requested())
        found = lookThroughToWrite(m_path, stop);
    if (stop.stop_requested())
        return; // what was found then says nothing of the file
    {
        const std::lock_guard lock{m_guard};
        m_wholeness = found;
    }
    m_isKnown.notify_all();
    // A bad file never pushes a good copy out.
    const Outcome kept = found && m_copyOn ? keepTodaysCopy(m_path, *m_copyOn, stop) : Outcome{Done{}};
    std::optional<ChainState> chain = found ? chainOf(m_path, stop) : std::nullopt;
    const std::lock_guard lock{m_guard};
    if (!kept)
        m_copyProblem = kept.problem();
    keep(std::move(chain));
    m_isDone = true;
}

void LookThrough::keep(std::optional<ChainState> chain)
{
    const FactsInDoubt before = m_chain ? m_chain->inDoubt : FactsInDoubt{};
    m_chain = std::move(chain);
    if ((m_chain ? m_chain->inDoubt : FactsInDoubt{}) != before)
        ++m_doubtsFound;
}

std::optional<Outcome> LookThrough::wholeness(std::chrono::milliseconds most) const
{
    std::unique_lock lock{m_guard};
    m_isKnown.wait_for(lock, most, [this] { return m_wholeness.has_value(); });
    return m_wholeness;
}

bool LookThrough::isDone() const
{
    const std::lock_guard lock{m_guard};
    return m_isDone;
}

void LookThrough::lookAtChainAgain()
{
    m_again = std::jthread{[this](const std::stop_token& stop) {
        std::optional<ChainState> chain = chainOf(m_path, stop);
        const std::lock_guard lock{m_guard};
        if (chain)
            keep(std::move(chain));
    }};
}

std::optional<ChainState> LookThrough::chainFound() const
{
    const std::lock_guard lock{m_guard};
    return m_chain;
}

FactsInDoubt LookThrough::inDoubt() const
{
    const std::lock_guard lock{m_guard};
    return m_chain ? m_chain->inDoubt : FactsInDoubt{};
}

std::int64_t LookThrough::doubtsFound() const
{
    const std::lock_guard lock{m_guard};
    return m_doubtsFound;
}

std::optional<Problem> LookThrough::copyProblem() const
{
    const std::lock_guard lock{m_guard};
    return m_copyProblem;
}

} // namespace rig
