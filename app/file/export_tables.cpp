#include "app/file/open_file.h"
#include "app/file/verbs.h"
#include "app/wording/file_words.h"
#include "app/wording/problem_words.h"
#include "core/exchange/tables_out.h"

#include <QCoreApplication>
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

QString sentenceOf(const Problem& problem, const QString& path)
{
    return ProblemWords::sentence(problem, path);
}

// Never over a file that is there, and under a name of its own until it is whole; false also when only a part
// could be written, which is taken away again.
bool writeNew(const Written& table)
{
    QFile file{table.path + QStringLiteral(".writing-%1").arg(QCoreApplication::applicationPid())};
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

int exportTables(const QString& file, const QString& folder)
{
    OpenFile open;
    if (const Outcome opened = open.open(file); !opened) {
        complain(sentenceOf(opened.problem(), file));
        return kCouldNot;
    }
    std::vector<Written> tables;
    for (const Table& table : kTables) {
        const QString path = QDir{folder}.filePath(QString::fromLatin1(table.name));
        if (QFileInfo::exists(path)) {
            complain(sentenceOf(Problem{ProblemKind::FileExists, {}}, path));
            return kCouldNot;
        }
        auto text = table.write(*open.records);
        if (!text) {
            complain(sentenceOf(text.problem(), file));
            return kCouldNot;
        }
        tables.push_back({path, std::move(text).value()});
    }
    if (!QDir{}.mkpath(folder)) {
        complain(FileWords::cannotMakeFolder(folder));
        return kCouldNot;
    }
    return writeAll(tables, folder);
}

} // namespace rig::file
