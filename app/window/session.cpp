#include "app/window/session.h"

#include "app/pictures/drawn_photo.h"
#include "core/demo/demo.h"
#include "core/store/copies.h"

#include <QDir>
#include <QTemporaryDir>

#include <random>

namespace rig {

namespace {

std::uint64_t entropy()
{
    std::random_device device;
    return (static_cast<std::uint64_t>(device()) << 32) | device();
}

} // namespace

Session::Session(std::unique_ptr<StoreFile> file, const Clock& clock, bool isDemo)
    : m_file{std::move(file)}, m_clock{clock}, m_ids{entropy()}, m_records{*m_file, m_ids, clock}, m_isDemo{
                                                                                                       isDemo}
{
}

Result<std::unique_ptr<Session>> Session::open(const std::string& path, OpenAs as, const Clock& clock)
{
    auto file = StoreFile::open(path, as, clock, LookedThrough::Behind);
    if (!file)
        return file.problem();
    return std::unique_ptr<Session>{new Session{std::move(file).value(), clock, false}};
}

Result<Joined> Session::takeIn(OtherFile& theirs, Progress* progress)
{
    const auto kept = copyBeforeTakingIn(m_file->path(), m_clock.now().localDay(), stopOf(progress));
    if (!kept)
        return kept.problem();
    auto joined = rig::takeIn(m_file->path(), theirs, progress);
    if (!joined && isStopped(progress))
        takeBackCopy(kept.value());
    return joined;
}

Result<std::unique_ptr<Session>> Session::openDemo(const Clock& clock)
{
    QTemporaryDir folder{QDir::tempPath() + QStringLiteral("/rigband-demo-XXXXXX")};
    if (!folder.isValid())
        return Problem{ProblemKind::FolderReadOnly, folder.errorString().toStdString()};
    folder.setAutoRemove(false); // what somebody tried in the demonstration stays until the system tidies up
    auto file = StoreFile::open(folder.filePath("demo.rigband").toStdString(), OpenAs::New, clock);
    if (!file)
        return file.problem();
    if (const Outcome built = buildDemo(*file.value(), drawnPhoto); !built)
        return built.problem();
    return std::unique_ptr<Session>{new Session{std::move(file).value(), clock, true}};
}

} // namespace rig
