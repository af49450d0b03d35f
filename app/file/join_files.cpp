#include "app/file/open_file.h"
#include "app/file/terminal_progress.h"
#include "app/file/verbs.h"
#include "app/wording/file_words.h"
#include "app/wording/join_words.h"
#include "app/wording/long_work_words.h"
#include "core/store/join.h"
#include "core/store/newest.h"
#include "core/store/part.h"

namespace rig::file {

namespace {

// Complains of it where it cannot be read.
std::unique_ptr<OtherFile> readOr(const QString& path, const QString& beside, TerminalProgress& progress)
{
    auto file = OtherFile::read(path.toStdString(), beside.toStdString(), &progress);
    progress.clear();
    if (file)
        return std::move(file).value();
    if (progress.isStopped()) {
        complain(LongWorkWords::stopped());
        return nullptr;
    }
    const ProblemKind kind = file.problem().kind;
    couldNot(file.problem(),
             kind == ProblemKind::DiskFull || kind == ProblemKind::FolderReadOnly ? beside : path);
    return nullptr;
}

// Says what does not stand as it was saved, and how many facts that are; nothing where they are not to be
// gone on with.
std::optional<std::int64_t> faultsFoundIn(std::initializer_list<OtherFile*> files, bool asFound,
                                          const QString& advice, const Progress& progress)
{
    std::int64_t faults = 0;
    for (OtherFile* file : files) {
        const auto chain = chainToldOf(*file, &progress);
        if (!chain)
            return std::nullopt;
        faults += chain->faults;
    }
    if (faults == 0 || asFound)
        return faults;
    complain(advice);
    return std::nullopt;
}

int tellJoined(const JoinWanted& wanted, const Joined& joined)
{
    for (const FaultyFact& fact : joined.leftOut)
        complain(JoinWords::leftOut(fact));
    for (const auto& [ours, theirs] : joined.undecided)
        complain(JoinWords::undecided(ours, theirs));
    if (!joined.undecided.empty())
        return couldNot(JoinWords::nothingJoined());
    say(JoinWords::onlyIn(wanted.ours, joined.onlyOurs));
    say(JoinWords::onlyIn(wanted.theirs, joined.onlyTheirs()));
    say(JoinWords::joined(wanted.out, joined.end));
    return joined.leftOut.empty() ? kDone : kFound;
}

} // namespace

int joinFiles(const JoinWanted& wanted)
{
    if (!isFree(wanted.out))
        return kCouldNot;
    TerminalProgress progress;
    const auto ours = readOr(wanted.ours, wanted.out, progress);
    const auto theirs = ours ? readOr(wanted.theirs, wanted.out, progress) : nullptr;
    if (!theirs)
        return kCouldNot;
    const auto found =
        faultsFoundIn({ours.get(), theirs.get()}, wanted.asFound, JoinWords::lookFirst(), progress);
    if (!found)
        return kCouldNot;
    const auto made = join(*ours, *theirs, wanted.out.toStdString(), &progress);
    progress.clear();
    if (!made && progress.isStopped())
        return couldNot(LongWorkWords::stopped());
    if (!made)
        return couldNot(made.problem(), wanted.out);
    const int ended = tellJoined(wanted, made.value());
    return ended == kDone && *found > 0 ? kFound : ended;
}

int handOnPart(const PartWanted& wanted)
{
    if (!isFree(wanted.out))
        return kCouldNot;
    TerminalProgress progress;
    const auto whole = readOr(wanted.file, wanted.out, progress);
    if (!whole)
        return kCouldNot;
    const auto airframes = newest<Airframe>(whole->connection());
    if (!airframes)
        return couldNot(airframes.problem(), wanted.file);
    const Airframe* const airframe = airframeNamed(airframes.value(), wanted.airframe);
    if (!airframe)
        return couldNot(FileWords::noSuchAirframe(wanted.file, wanted.airframe));
    // Taken over anew, nothing would show it any more.
    if (!faultsFoundIn({whole.get()}, false, JoinWords::wholeInstead(), progress))
        return kCouldNot;
    const auto made = handOn(*whole, airframe->id, wanted.out.toStdString());
    if (!made)
        return couldNot(made.problem(), wanted.out);
    say(JoinWords::handedOn(wanted.airframe, wanted.out, made.value().end));
    say(JoinWords::handedOnFrom(wanted.file, made.value().original));
    return kDone;
}

} // namespace rig::file
