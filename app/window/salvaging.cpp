#include "app/window/salvaging.h"

#include "app/pages/prompts.h"
#include "app/widgets/long_work.h"
#include "app/wording/copy_words.h"
#include "app/wording/file_words.h"
#include "app/wording/long_work_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/window_words.h"
#include "core/store/copies.h"
#include "core/store/store_file.h"

#include <QFileInfo>

namespace rig {

namespace {

QStringList toldOf(const Salvaged& told, const QString& into)
{
    QStringList lines{FileWords::salvaged(told.facts, into)};
    for (const NotCarried& one : told.notCarried)
        lines << FileWords::notCarried(one.table, one.unread, one.endUnread, one.refused, one.lost);
    if (told.dangling > 0)
        lines << FileWords::dangling(told.dangling);
    if (lines.size() == 1)
        lines << CopyWords::salvageNothingLeftOut();
    return lines;
}

} // namespace

QString askNewRigband(QWidget* parent, Prompts& prompts)
{
    const QLatin1String ending{".rigband"};
    const QString path = prompts.askNewFile(parent, WindowWords::fileFilter());
    return path.isEmpty() || path.endsWith(ending) ? path : path + ending;
}

std::optional<Outcome> copyIntoNewBehind(QWidget& window, const QString& from, const QString& into)
{
    Outcome made = Problem{};
    const bool isStopped =
        !LongWork::run(window, LongWorkWords::copying(QFileInfo{from}.fileName()), [&](Progress& progress) {
            made = copyIntoNew(from.toStdString(), into.toStdString(), &progress);
        });
    return !made && isStopped ? std::nullopt : std::optional{made};
}

QString salvageIntoNew(QWidget* parent, const QString& damaged, Prompts& prompts, const Clock& clock)
{
    const QString into = askNewRigband(parent, prompts);
    if (into.isEmpty())
        return {};
    Result<Salvaged> told = Problem{};
    const bool isStopped = !LongWork::run(
        *parent, LongWorkWords::salvaging(QFileInfo{damaged}.fileName()), [&](Progress& progress) {
            told = StoreFile::salvage(damaged.toStdString(), into.toStdString(), clock, &progress);
        });
    if (!told && isStopped)
        return {};
    if (!told) {
        const Problem& problem = told.problem();
        const QString about = failedAtNewFile(problem.kind) ? into : damaged;
        prompts.tell(parent, ProblemWords::sentence(problem, QFileInfo{about}.fileName()));
        return {};
    }
    prompts.tell(parent, toldOf(told.value(), QFileInfo{into}.fileName()).join(QLatin1String{"\n\n"}));
    return into;
}

} // namespace rig
