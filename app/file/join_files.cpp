#include "app/file/verbs.h"
#include "app/wording/join_words.h"
#include "core/store/join.h"

namespace rig::file {

namespace {

// Complains of it where it cannot be read.
std::unique_ptr<OtherFile> readOr(const QString& path, const QString& beside)
{
    auto file = OtherFile::read(path.toStdString(), beside.toStdString());
    if (file)
        return std::move(file).value();
    const ProblemKind kind = file.problem().kind;
    couldNot(file.problem(),
             kind == ProblemKind::DiskFull || kind == ProblemKind::FolderReadOnly ? beside : path);
    return nullptr;
}

// Empty where the chain cannot be read.
std::optional<std::int64_t> tellFindings(OtherFile& file)
{
    const QString path = QString::fromStdString(file.path());
    const auto chain = file.lookAtChain();
    if (!chain) {
        couldNot(chain.problem(), path);
        return std::nullopt;
    }
    for (const QString& line : JoinWords::findings(path, chain.value()))
        complain(line);
    return chain.value().faults;
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
    say(JoinWords::joined(wanted.out, {joined.onlyOurs, joined.onlyTheirs(), joined.all, joined.end}));
    return kDone;
}

} // namespace

int joinFiles(const JoinWanted& wanted)
{
    const auto ours = readOr(wanted.ours, wanted.out);
    const auto theirs = ours ? readOr(wanted.theirs, wanted.out) : nullptr;
    if (!theirs)
        return kCouldNot;
    const auto faults = tellFindings(*ours);
    const auto others = faults ? tellFindings(*theirs) : std::nullopt;
    if (!others)
        return kCouldNot;
    if (*faults + *others > 0 && !wanted.asFound)
        return couldNot(JoinWords::lookFirst());
    const auto made = join(*ours, *theirs, wanted.out.toStdString());
    return made ? tellJoined(wanted, made.value()) : couldNot(made.problem(), wanted.out);
}

} // namespace rig::file
