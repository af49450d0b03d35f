#include "app/file/verbs.h"

#include "app/file/open_file.h"
#include "app/file/terminal_progress.h"
#include "app/pictures/drawn_photo.h"
#include "app/wording/chain_words.h"
#include "app/wording/file_words.h"
#include "app/wording/language.h"
#include "app/wording/long_work_words.h"
#include "app/wording/problem_words.h"
#include "core/demo/demo.h"
#include "core/plain_text.h"
#include "core/store/create_file.h"
#include "core/store/other_file.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>

#include <cstdio>

namespace rig::file {

namespace {

void print(const QString& sentence, std::FILE* where)
{
    // What a file or a table says could otherwise clear a terminal, or cut a sentence off.
    const std::string line = withPlaceholders(sentence.toStdString()) + '\n';
    std::fwrite(line.data(), 1, line.size(), where);
}

} // namespace

void say(const QString& sentence)
{
    print(sentence, stdout);
}

void complain(const QString& sentence)
{
    print(sentence, stderr);
}

int couldNot(const Problem& problem, const QString& path)
{
    // It was typed: that it was there once, as the window says of a file that it knows, is nothing that is
    // known.
    complain(problem.kind == ProblemKind::NoSuchFile ? FileWords::notThere(path)
                                                     : ProblemWords::sentence(problem, path));
    return kCouldNot;
}

int couldNot(const QString& sentence)
{
    complain(sentence);
    return kCouldNot;
}

int writeDemo(const QString& into)
{
    if (!isFree(into))
        return kCouldNot;
    const demo::Language language = demo::languageOf(spokenLanguage().toStdString());
    const Outcome built =
        makeUnderAnotherName(into.toStdString(), [language](const std::string& making) -> Outcome {
            const auto opened = StoreFile::open(making, OpenAs::New, SystemClock{});
            return opened ? buildDemo(*opened.value(), language, drawnPhoto) : Outcome{opened.problem()};
        });
    if (!built)
        return couldNot(built.problem(), into);
    say(FileWords::demoWritten(into));
    return kDone;
}

namespace {

// What another program changed is in the new file too: salvage carries over what stands there.
int tellWhatWasChanged(const QString& into)
{
    const auto file = OtherFile::read(into.toStdString(), into.toStdString());
    const auto chain = file ? file.value()->lookAtChain() : Result<ChainState>{file.problem()};
    if (!chain)
        return couldNot(chain.problem(), into);
    if (chain.value().faults == 0)
        return kDone;
    complain(ChainWords::faults(chain.value().faults));
    for (const QString& sentence : ChainWords::all(chain.value()))
        complain(sentence);
    return kFound;
}

} // namespace

int salvage(const QString& damaged, const QString& into)
{
    if (!isFree(into))
        return kCouldNot;
    const SystemClock clock;
    TerminalProgress progress;
    const auto told = StoreFile::salvage(damaged.toStdString(), into.toStdString(), clock, &progress);
    progress.clear();
    if (!told && progress.isStopped())
        return couldNot(LongWorkWords::stopped());
    if (!told && told.problem().kind == ProblemKind::DamagedFile)
        return couldNot(FileWords::nothingToSalvage(damaged));
    if (!told)
        return couldNot(told.problem(), failedAtNewFile(told.problem().kind) ? into : damaged);
    say(FileWords::salvaged(told.value().facts, into));
    for (const NotCarried& one : told.value().notCarried)
        for (const QString& sentence :
             FileWords::notCarried(one.table, one.unread, one.endUnread, one.refused, one.lost))
            complain(sentence);
    if (told.value().dangling > 0)
        complain(FileWords::dangling(told.value().dangling));
    // What was lost is gone from the chain too, and was told.
    return told.value().notCarried.empty() && told.value().dangling == 0 ? tellWhatWasChanged(into) : kFound;
}

} // namespace rig::file
