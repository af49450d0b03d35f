#include "app/file/open_file.h"
#include "app/file/terminal_progress.h"
#include "app/file/verbs.h"
#include "app/wording/chain_words.h"
#include "app/wording/file_words.h"
#include "core/exchange/nameless.h"
#include "core/exchange/review_tables.h"
#include "core/exchange/tables_out.h"
#include "core/store/connection.h"
#include "core/store/passing_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <array>

namespace rig::file {

namespace {

struct Table
{
    const char* name;
    Result<std::string> (*write)(const Records&);
};

constexpr std::array kTables = {
    Table{"readings.csv", writeReadings},  Table{"couplings.csv", writeCouplings},
    Table{"events.csv", writeEvents},      Table{"people.csv", writePeople},
    Table{"gauges.csv", writeGauges},      Table{"joint_play.csv", writeJointPlays},
    Table{"sign_offs.csv", writeSignOffs}, Table{"supervised.csv", writeSupervised}};

struct Written
{
    QString path;
    std::string text;
};

Result<std::vector<NamedTable>> tablesOf(const OpenFile& open, bool nameless, Progress& progress)
{
    const Watched watched{open.file->connection(), &progress};
    std::vector<NamedTable> tables;
    const auto add = [&tables](const char* name, Result<std::string> text) -> Outcome {
        if (!text)
            return text.problem();
        tables.push_back({name, std::move(text).value()});
        return Done{};
    };
    for (const Table& table : kTables) {
        if (!progress.goOn(tables.size(), kTables.size()))
            return stoppedWork();
        if (const Outcome added = add(table.name, table.write(*open.records)); !added)
            return added.problem();
    }
    if (!nameless)
        return tables;
    const Day today = open.clock.now().localDay();
    if (const Outcome added = add("counts.csv", writeCounts(*open.records, today)); !added)
        return added.problem();
    Nameless without;
    for (NamedTable& table : tables)
        table.text = without.table(table.text);
    return tables;
}

// Never over a file that is there, and under a name of its own until it is whole; false also when only a part
// could be written, which is taken away again.
bool writeNew(const Written& table)
{
    QFile file{QString::fromStdString(makingName(table.path.toStdString()))};
    if (!file.open(QIODevice::WriteOnly))
        return false;
    const auto size = static_cast<qint64>(table.text.size());
    const bool whole = file.write(table.text.data(), size) == size && file.flush();
    file.close();
    if (!whole || file.error() != QFileDevice::NoError || !file.rename(table.path)) {
        file.remove();
        return false;
    }
    return true;
}

// All of them or none.
int writeAll(const std::vector<Written>& tables, const QString& folder)
{
    QStringList names;
    if (!tables.empty())
        removeLeftBehind(tables.front().path.toStdString());
    for (std::size_t i = 0; i < tables.size(); ++i) {
        if (!writeNew(tables[i])) {
            for (std::size_t before = 0; before < i; ++before)
                QFile::remove(tables[before].path);
            complain(FileWords::cannotWrite(tables[i].path));
            return kCouldNot;
        }
        names.append(QFileInfo{tables[i].path}.fileName());
    }
    say(FileWords::exported(folder, names));
    return kDone;
}

} // namespace

int exportTables(const QString& file, const QString& folder, NamesOut names)
{
    TerminalProgress progress;
    WorkInParts parts{&progress, {1, 1}};
    OpenFile open;
    if (const Outcome opened = open.open(file, OpenAs::Existing, &progress); !opened)
        return couldNot(progress, opened.problem(), file);
    const bool nameless = names == NamesOut::Nameless;
    Problem problem;
    std::vector<NamedTable> tables;
    if (!take(tablesOf(open, nameless, parts), tables, problem))
        return couldNot(progress, problem, file);
    parts.endPart();
    const auto chain = open.file->lookAtChain(&parts);
    if (!chain)
        return couldNot(progress, chain.problem(), file);
    if (isGivenUp(progress))
        return kCouldNot;
    std::vector<Written> written;
    for (NamedTable& table : tables) {
        const QString path = QDir{folder}.filePath(QString::fromStdString(table.name));
        if (QFileInfo::exists(path)) {
            removeLeftBehind(path.toStdString());
            return couldNot(Problem{ProblemKind::FileExists, {}}, path);
        }
        written.push_back({path, std::move(table.text)});
    }
    if (!QDir{}.mkpath(folder)) {
        complain(QFileInfo::exists(folder) ? FileWords::noFolder(folder)
                                           : FileWords::cannotMakeFolder(folder));
        return kCouldNot;
    }
    const int ended = writeAll(written, folder);
    if (nameless && ended == kDone)
        for (const QString& sentence : FileWords::nameless())
            say(sentence);
    if (ended != kDone || chain.value().faults == 0)
        return ended;
    for (const QString& sentence : {FileWords::tablesOfChanged(), ChainWords::faultsAdvice()})
        complain(sentence);
    return kFound;
}

} // namespace rig::file
