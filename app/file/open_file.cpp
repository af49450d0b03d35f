#include "app/file/open_file.h"

#include "app/file/terminal_progress.h"
#include "app/file/verbs.h"
#include "app/wording/file_words.h"
#include "app/wording/join_words.h"
#include "app/wording/long_work_words.h"
#include "core/store/airframe_facts.h"
#include "core/store/connection.h"
#include "core/store/names.h"
#include "core/store/passing_file.h"

#include <QFileInfo>

#include <algorithm>
#include <random>

namespace rig::file {

namespace {

std::uint64_t seedFromTheSystem()
{
    std::random_device entropy;
    return (std::uint64_t{entropy()} << 32) | entropy();
}

} // namespace

OpenFile::OpenFile() : ids{seedFromTheSystem()} {}

Outcome OpenFile::open(const QString& path, OpenAs as, const Progress* progress)
{
    auto opened = StoreFile::open(path.toStdString(), as, clock, LookedThrough::First, stopOf(progress));
    if (!opened)
        return opened.problem();
    file = std::move(opened).value();
    if (file->isUpgraded() && as != OpenAs::ToLook)
        complain(FileWords::madeNewer(path));
    records = std::make_unique<Records>(*file, ids, clock);
    return Done{};
}

const Airframe* airframeNamed(const std::vector<Airframe>& airframes, const QString& registration)
{
    const std::string wanted = comparable(registration.toStdString());
    const auto found = std::ranges::find_if(
        airframes, [&wanted](const Airframe& one) { return comparable(one.registration) == wanted; });
    return found == airframes.end() ? nullptr : &*found;
}

std::optional<AirframeFacts> factsNamed(OpenFile& open, const QString& path, const QString& registration,
                                        TerminalProgress& progress, Progress* told)
{
    const auto refused = [&](const Problem& problem) {
        couldNot(progress, problem, path);
        return std::nullopt;
    };
    if (const Outcome opened = open.open(path, OpenAs::Existing, &progress); !opened)
        return refused(opened.problem());
    const Watched watched{open.file->connection(), &progress};
    const auto airframes = open.records->airframes();
    if (!airframes)
        return refused(airframes.problem());
    const Airframe* const named = airframeNamed(airframes.value(), registration);
    if (!named) {
        couldNot(progress, FileWords::noSuchAirframe(path, registration));
        return std::nullopt;
    }
    // Before facts are read: they tell what is in doubt.
    if (Problem problem;
        !take(open.file->lookAtChain(told ? told : &progress), open.chain.emplace(), problem))
        return refused(problem);
    auto facts = factsOf(*open.records, named->id);
    return facts ? std::optional{std::move(facts).value()} : refused(facts.problem());
}

int couldNot(TerminalProgress& progress, const Problem& problem, const QString& path)
{
    progress.clear();
    return progress.isStopped() ? couldNot(LongWorkWords::stopped()) : couldNot(problem, path);
}

int couldNot(TerminalProgress& progress, const QString& sentence)
{
    progress.clear();
    return couldNot(progress.isStopped() ? LongWorkWords::stopped() : sentence);
}

bool isGivenUp(TerminalProgress& progress)
{
    progress.clear();
    if (progress.isStopped())
        complain(LongWorkWords::stopped());
    return progress.isStopped();
}

int endAfterPrint(const OpenFile& open, const QString& whereItStands)
{
    if (!open.chain || open.chain->faults == 0)
        return kDone;
    complain(FileWords::foundBeforePrint(open.chain->faults, whereItStands));
    return kFound;
}

std::optional<ChainState> chainToldOf(OtherFile& file, const Progress* progress)
{
    const QString path = QString::fromStdString(file.path());
    auto chain = file.lookAtChain(stopOf(progress));
    if (!chain) {
        if (isStopped(progress))
            complain(LongWorkWords::stopped());
        else
            couldNot(chain.problem(), path);
        return std::nullopt;
    }
    for (const QString& line : JoinWords::findings(path, chain.value()))
        complain(line);
    return std::move(chain).value();
}

bool isFree(const QString& out)
{
    const QFileInfo place{out};
    const bool isFolderThere = QFileInfo{place.absolutePath()}.isDir();
    if (isFolderThere) // also where nothing will be made
        removeLeftBehind(out.toStdString());
    if (place.exists())
        couldNot(Problem{ProblemKind::FileExists, {}}, out);
    else if (!isFolderThere)
        couldNot(FileWords::noFolderFor(out));
    return isFolderThere && !place.exists();
}

bool isAFile(const QString& path)
{
    const QFileInfo info{path};
    if (!info.exists() || info.isFile())
        return true;
    couldNot(FileWords::noFile(path));
    return false;
}

} // namespace rig::file
