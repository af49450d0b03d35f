#include "app/file/open_file.h"
#include "app/file/terminal_progress.h"
#include "app/file/verbs.h"
#include "app/wording/file_words.h"
#include "app/wording/import_words.h"
#include "app/wording/long_work_words.h"
#include "core/exchange/csv.h"
#include "core/exchange/tables_in.h"
#include "core/review/judged_readings.h"
#include "core/rigging/counts_as.h"
#include "core/store/airframe_facts.h"

#include <QByteArray>
#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <map>
#include <utility>

namespace rig::file {

namespace {

// One of the tables, where it was named on the command line.
struct TableFile
{
    TableKind kind = TableKind::Readings;
    QString path;
    std::optional<std::string_view> TablesGiven::*member = nullptr;
    QByteArray bytes = {};
};

using TableFiles = std::vector<TableFile>;

TableFiles filesOf(const TablesWanted& wanted)
{
    TableFiles files{
        {TableKind::Couplings, wanted.couplings, &TablesGiven::couplings},
        {TableKind::People, wanted.people, &TablesGiven::people},
        {TableKind::Gauges, wanted.gauges, &TablesGiven::gauges},
        {TableKind::Events, wanted.events, &TablesGiven::events},
        {TableKind::JointPlays, wanted.jointPlays, &TablesGiven::jointPlays},
        {TableKind::Readings, wanted.readings, &TablesGiven::readings},
    };
    std::erase_if(files, [](const TableFile& file) { return file.path.isEmpty(); });
    return files;
}

bool isRead(TableFile& file)
{
    QFile source{file.path};
    if (!source.open(QIODevice::ReadOnly))
        return false;
    file.bytes = source.readAll();
    return source.error() == QFileDevice::NoError;
}

TablesGiven givenIn(const TableFiles& files)
{
    TablesGiven given;
    for (const TableFile& file : files)
        given.*file.member =
            std::string_view{file.bytes.constData(), static_cast<std::size_t>(file.bytes.size())};
    return given;
}

// Readings and events are always of something that is there.
bool mayMakeAFile(const TablesWanted& wanted)
{
    return !wanted.couplings.isEmpty() || !wanted.people.isEmpty() || !wanted.gauges.isEmpty();
}

// A table that was saved wrongly has the same thing on every line: the first ones say what it is.
int tellBadRows(const std::vector<BadRow>& bad, const TableFiles& files)
{
    constexpr int kMostTold = 10;
    std::map<std::pair<TableKind, RowProblem>, int> times;
    for (const BadRow& row : bad) {
        if (++times[{row.table, row.problem}] > kMostTold)
            continue;
        const auto file = std::ranges::find(files, row.table, &TableFile::kind);
        complain(file == files.end() ? ImportWords::sentence(row)
                                     : ImportWords::inTable(QFileInfo{file->path}.fileName(), row));
    }
    int untold = 0;
    for (const auto& [what, count] : times)
        untold += std::max(0, count - kMostTold);
    if (untold > 0)
        complain(ImportWords::moreOfTheSame(untold));
    complain(ImportWords::nothingImported(static_cast<int>(bad.size())));
    return kBadUse;
}

// Those that came since `from` and that the page would have stopped at.
Result<int> outsideSince(const Records& records, const Moment& from, Day today)
{
    const auto airframes = records.airframes();
    if (!airframes)
        return airframes.problem();
    int outside = 0;
    for (const Airframe& airframe : airframes.value()) {
        const auto facts = factsOf(records, airframe.id);
        if (!facts)
            return facts.problem();
        outside += static_cast<int>(
            std::ranges::count_if(judgedReadings(facts.value(), today), [&from](const JudgedReading& one) {
                return one.reading.stamp.when >= from && isLockedAtRigging(one.reading) &&
                       !one.isStruckThrough() && one.judgement.verdict == Verdict::Outside;
            }));
    }
    return outside;
}

void tell(const Imported& imported)
{
    if (imported.things() > 0)
        say(ImportWords::added(imported));
    if (imported.readings > 0)
        say(ImportWords::imported(imported.readings, imported.records));
    if (imported.sameDay > 0)
        say(ImportWords::sameDay(imported.sameDay, imported.sameDays));
    if (imported.things() == 0 && imported.readings == 0)
        say(ImportWords::nothingNew());
    if (imported.thereAlready > 0)
        say(ImportWords::thereAlready(imported.thereAlready));
    if (imported.setAside > 0)
        say(ImportWords::passedOver(imported.setAside));
    if (imported.notSecured > 0)
        say(ImportWords::notSecured(imported.notSecured));
}

int importInto(const TablesWanted& wanted, const TableFiles& files, OpenAs as, bool& isKept)
{
    OpenFile open;
    if (const Outcome opened = open.open(wanted.file, as); !opened)
        return couldNot(opened.problem(), wanted.file);
    isKept = as == OpenAs::Existing;
    const Moment from = open.clock.now();
    TerminalProgress progress;
    const auto imported = rig::importTables(*open.records, open.clock, givenIn(files), &progress);
    progress.clear();
    if (!imported && progress.isStopped())
        return couldNot(LongWorkWords::stopped());
    if (!imported)
        return couldNot(imported.problem(), wanted.file);
    const Imported& result = imported.value();
    if (!result.bad.empty())
        return tellBadRows(result.bad, files);
    isKept = isKept || result.things() > 0 || result.readings > 0;
    if (isKept && as == OpenAs::New)
        say(FileWords::made(wanted.file));
    tell(result);
    if (result.readings > 0) {
        const auto outside = outsideSince(*open.records, from, from.localDay());
        if (!outside)
            return couldNot(outside.problem(), wanted.file);
        if (outside.value() > 0)
            say(ImportWords::outside(outside.value()));
    }
    return kDone;
}

} // namespace

int importTables(const TablesWanted& wanted)
{
    TableFiles files = filesOf(wanted);
    for (TableFile& file : files) {
        if (!isAFile(file.path))
            return kCouldNot;
        if (QFileInfo{file.path}.size() > static_cast<qint64>(kMostTableBytes))
            return couldNot(FileWords::tableTooLarge(file.path));
        if (!isRead(file))
            return couldNot(FileWords::cannotRead(file.path));
    }
    const bool isThere = QFileInfo::exists(wanted.file);
    const bool makes = !isThere && mayMakeAFile(wanted);
    if (!isThere && !makes)
        return couldNot(FileWords::cannotBeMade(wanted.file));
    if (makes && !isFree(wanted.file))
        return kCouldNot;
    bool isKept = true; // what could not be opened was not made here either
    const int status = importInto(wanted, files, makes ? OpenAs::New : OpenAs::Existing, isKept);
    if (isKept)
        return status;
    QFile::remove(wanted.file);
    complain(FileWords::notKept(wanted.file));
    return status;
}

} // namespace rig::file
