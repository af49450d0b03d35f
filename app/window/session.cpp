#include "app/window/session.h"

#include "app/pictures/drawn_photo.h"
#include "app/window/demo_copy.h"
#include "app/wording/language.h"
#include "core/demo/demo.h"
#include "core/store/copies.h"

#include <random>

namespace rig {

namespace {

std::uint64_t entropy()
{
    std::random_device device;
    return (static_cast<std::uint64_t>(device()) << 32) | device();
}

} // namespace

Session::Session(std::unique_ptr<StoreFile> file, const Clock& clock, std::unique_ptr<DemoCopy> demo)
    : m_demo{std::move(demo)}, m_file{std::move(file)}, m_clock{clock}, m_ids{entropy()}, m_records{*m_file,
                                                                                                    m_ids,
                                                                                                    clock}
{
}

Session::~Session() = default;

Result<std::unique_ptr<Session>> Session::open(const std::string& path, OpenAs as, const Clock& clock)
{
    auto file = StoreFile::open(path, as, clock, LookedThrough::Behind);
    if (!file)
        return file.problem();
    return std::unique_ptr<Session>{new Session{std::move(file).value(), clock, nullptr}};
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
    const demo::Language language = demo::languageOf(spokenLanguage().toStdString());
    auto copy = DemoCopy::make(language);
    if (!copy)
        return copy.problem();
    auto file =
        StoreFile::open(copy.value()->file().toStdString(), OpenAs::Existing, clock, LookedThrough::Behind);
    if (!file)
        return file.problem();
    if (const Outcome drawn = addDemoPhotos(*file.value(), language, drawnPhoto); !drawn)
        return drawn.problem();
    return std::unique_ptr<Session>{new Session{std::move(file).value(), clock, std::move(copy).value()}};
}

} // namespace rig
