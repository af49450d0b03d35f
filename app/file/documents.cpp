#include "app/file/open_file.h"
#include "app/file/terminal_progress.h"
#include "app/file/verbs.h"
#include "app/wording/document_words.h"
#include "app/wording/file_words.h"
#include "app/wording/join_words.h"
#include "app/wording/long_work_words.h"
#include "core/exchange/document.h"
#include "core/store/connection.h"
#include "core/store/create_file.h"
#include "core/store/other_file.h"

#include <QFile>
#include <QFileInfo>

#include <unistd.h>

namespace rig::file {

namespace {

Outcome writeInto(const std::string& path, StoreFile::Connection& file, Progress& progress)
{
    const Watched watched{file, &progress};
    std::size_t rows = 0;
    QFile document{QString::fromStdString(path)};
    if (!document.open(QIODevice::WriteOnly | QIODevice::NewOnly))
        return Problem{ProblemKind::FolderReadOnly, path};
    const Outcome written = writeDocument(file, [&](std::string_view text) {
        const auto size = static_cast<qint64>(text.size());
        return progress.goOn(++rows, 0) && document.write(text.data(), size) == size;
    });
    if (!written)
        return written;
    if (!document.flush() || ::fsync(document.handle()) != 0)
        return Problem{ProblemKind::DiskFull, path};
    return Done{};
}

int tellRefused(const ImportedDocument& wanted, const DocumentRead& document)
{
    if (document.fault.problem != DocumentProblem::None)
        complain(DocumentWords::sentence(wanted.document, document.fault));
    for (const QString& line : JoinWords::findings(wanted.document, document.made.chain))
        complain(line);
    const bool mayBeTaken =
        !document.made.unreadable && (document.made.lost || document.made.chain.faults > 0);
    if (mayBeTaken)
        complain(DocumentWords::asFoundInstead());
    return couldNot(DocumentWords::nothingMade());
}

} // namespace

int exportDocument(const ExportedDocument& wanted)
{
    if (!isFree(wanted.document))
        return kCouldNot;
    TerminalProgress progress;
    const auto file = OtherFile::read(wanted.file.toStdString(), wanted.document.toStdString(), &progress);
    if (!file)
        return couldNot(progress, file.problem(),
                        failedAtNewFile(file.problem().kind) ? wanted.document : wanted.file);
    progress.clear();
    const auto chain = chainToldOf(*file.value(), &progress);
    if (!chain)
        return kCouldNot;
    if (chain->faults > 0 && !wanted.asFound)
        return couldNot(JoinWords::lookFirst());
    const Outcome made = makeUnderAnotherName(wanted.document.toStdString(), [&](const std::string& making) {
        return writeInto(making, file.value()->connection(), progress);
    });
    progress.clear();
    if (!made && progress.isStopped())
        return couldNot(LongWorkWords::stopped());
    if (!made && made.problem().kind == ProblemKind::DamagedFile)
        return couldNot(FileWords::cannotStand(QString::fromStdString(made.problem().detail)));
    if (!made)
        return couldNot(made.problem(), wanted.document);
    say(DocumentWords::written(wanted.document, wanted.file, chain->end.facts));
    return chain->faults > 0 ? kFound : kDone;
}

int importDocument(const ImportedDocument& wanted)
{
    if (!isFree(wanted.file) || !isAFile(wanted.document))
        return kCouldNot;
    if (QFileInfo{wanted.document}.size() > kMostDocumentBytes)
        return couldNot(DocumentWords::tooLarge(wanted.document));
    QFile source{wanted.document};
    if (!source.open(QIODevice::ReadOnly))
        return couldNot(FileWords::cannotRead(wanted.document));
    const auto document = readDocument(
        [&source](char* into, std::size_t most) { return source.read(into, static_cast<qint64>(most)); },
        wanted.file.toStdString(), wanted.asFound ? CarryWhat::AllAsFound : CarryWhat::WhatHolds);
    if (!document)
        return couldNot(document.problem(), wanted.file);
    const CarriedIn& made = document.value().made;
    if (!made.isMade)
        return tellRefused(wanted, document.value());
    for (const QString& line : JoinWords::findings(wanted.file, made.chain))
        complain(line);
    if (made.lost)
        complain(DocumentWords::sentence(wanted.document, document.value().fault));
    say(DocumentWords::made(wanted.file, made.end.facts));
    return made.lost || made.chain.faults > 0 ? kFound : kDone;
}

} // namespace rig::file
