#include "app/window/taking_in.h"

#include "app/pages/prompts.h"
#include "app/widgets/long_work.h"
#include "app/window/session.h"
#include "app/wording/conflict_words.h"
#include "app/wording/join_words.h"
#include "app/wording/long_work_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/window_words.h"

#include <QFileInfo>

namespace rig {

namespace {

constexpr QLatin1String kBetween{"\n\n"};
constexpr std::size_t kMostTold = 4; // facts of each file, one by one: a question has to fit into a window

QStringList findingsOf(const QString& file, const ChainState& chain)
{
    QStringList lines;
    if (chain.faults == 0)
        return lines;
    lines << JoinWords::stillFound(chain.faults);
    ChainState some = chain;
    some.told.resize(std::min(some.told.size(), kMostTold));
    return lines + JoinWords::findings(file, some);
}

QString kindsOf(const Joined& joined)
{
    QStringList kinds;
    std::int64_t others = 0;
    for (const FactCount& count : joined.came) {
        if (JoinWords::kind(count.table) == JoinWords::kind({}))
            others += count.facts;
        else
            kinds << JoinWords::kindCount(count.table, count.facts);
    }
    if (others > 0)
        kinds << JoinWords::kindCount({}, others);
    return JoinWords::kinds(kinds);
}

QStringList comesOf(const Foreseen& foreseen, const QString& ours, const QString& theirs)
{
    QStringList lines{JoinWords::whatIsNew(theirs, kindsOf(foreseen.joined))};
    if (foreseen.first && foreseen.last) {
        QStringList couplings;
        for (const std::string& name : foreseen.couplings)
            couplings << QString::fromStdString(name);
        lines << JoinWords::readingsOf(couplings, *foreseen.first, *foreseen.last);
    }
    lines << findingsOf(ours, foreseen.ours) << findingsOf(theirs, foreseen.theirs);
    for (const FaultyFact& fact : foreseen.joined.leftOut)
        lines << JoinWords::leftOut(fact);
    QStringList titles;
    for (const ToldConflict& told : foreseen.conflicts)
        titles << ConflictWords::title(told);
    if (!titles.isEmpty())
        lines << JoinWords::conflictsArise(titles);
    return lines << JoinWords::copyIsKept();
}

// The copy in which theirs is read lies beside ours.
bool isAboutOurs(const Problem& problem)
{
    return problem.kind == ProblemKind::DiskFull || problem.kind == ProblemKind::FolderReadOnly;
}

// What cannot be joined, or has nothing that is new.
QStringList whyNot(const Joined& joined, const QString& theirs)
{
    QStringList lines;
    for (const auto& [one, other] : joined.undecided)
        lines << JoinWords::undecided(one, other);
    if (!lines.isEmpty())
        return lines << JoinWords::nothingTakenIn();
    if (joined.came.empty() && joined.leftOut.empty())
        lines << JoinWords::nothingNew(theirs);
    return lines;
}

} // namespace

bool takeInAnother(QWidget* parent, Session& session, Prompts& prompts)
{
    const QString path = prompts.askOpenFile(parent, WindowWords::fileFilter());
    if (path.isEmpty())
        return false;
    const std::string& file = session.file().path();
    const QString theirs = QFileInfo{path}.fileName();
    const QString ours = QFileInfo{QString::fromStdString(file)}.fileName();
    const auto tell = [&](const QStringList& lines) {
        prompts.tell(parent, lines.join(kBetween));
        return false;
    };
    // Read once: what was shown is what comes in.
    Result<std::unique_ptr<OtherFile>> other = Problem{};
    if (!LongWork::run(*parent, LongWorkWords::reading(theirs), [&](Progress& progress) {
            other = OtherFile::read(path.toStdString(), file, &progress);
        }))
        return false;
    if (!other)
        return tell({ProblemWords::sentence(other.problem(), isAboutOurs(other.problem()) ? ours : theirs)});
    Result<Foreseen> foreseen = Problem{};
    if (!LongWork::run(*parent, LongWorkWords::comparing(theirs),
                       [&](Progress& progress) { foreseen = foresee(file, *other.value(), &progress); }))
        return false;
    if (!foreseen)
        return tell({ProblemWords::sentence(foreseen.problem(), ours)});
    if (const QStringList why = whyNot(foreseen.value().joined, theirs); !why.isEmpty())
        return tell(why);
    if (!prompts.confirm(parent, JoinWords::takeInTitle(),
                         comesOf(foreseen.value(), ours, theirs).join(kBetween), JoinWords::takeInYes()))
        return false;
    Result<Joined> joined = Problem{};
    const bool isStopped = !LongWork::run(*parent, LongWorkWords::takingIn(theirs), [&](Progress& progress) {
        joined = session.takeIn(*other.value(), &progress);
    });
    if (!joined && isStopped)
        return false;
    if (!joined)
        return tell({ProblemWords::sentence(joined.problem(), ours)});
    if (!joined.value().undecided.empty())
        return tell(whyNot(joined.value(), theirs));
    tell({JoinWords::cameIn(theirs, joined.value().onlyTheirs(), joined.value().end)});
    return true;
}

} // namespace rig
