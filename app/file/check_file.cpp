#include "app/file/open_file.h"
#include "app/file/terminal_progress.h"
#include "app/file/verbs.h"
#include "app/photos/photo_faults.h"
#include "app/wording/chain_words.h"
#include "app/wording/file_words.h"
#include "app/wording/formats.h"
#include "app/wording/long_work_words.h"
#include "core/review/saved_oddly.h"
#include "core/store/airframe_facts.h"
#include "core/store/conflicts_in.h"
#include "core/store/connection.h"
#include "core/store/copies.h"
#include "core/store/faulty_fact.h"
#include "core/store/inspection.h"
#include "core/store/problems.h"

#include <algorithm>
#include <map>

namespace rig::file {

namespace {

Result<AirframeTally> tallyOf(const Records& records, const Airframe& airframe)
{
    Problem problem;
    std::vector<Coupling> couplings;
    std::vector<RiggingRecord> riggings;
    std::vector<KeptReading> readings;
    const bool read = take(records.couplings(airframe.id), couplings, problem) &&
                      take(records.riggingRecords(airframe.id), riggings, problem) &&
                      take(records.readings(airframe.id), readings, problem);
    if (!read)
        return problem;
    if (const auto learning = records.learning(airframe.id); !learning)
        return learning.problem();
    return AirframeTally{QString::fromStdString(airframe.registration), static_cast<int>(couplings.size()),
                         static_cast<int>(riggings.size()), static_cast<int>(readings.size())};
}

// What stands in it is said only where all of it can be read.
Result<QStringList> contentOf(const Records& records, Progress& progress)
{
    Problem problem;
    std::vector<Airframe> airframes;
    std::vector<Person> people;
    std::vector<Gauge> gauges;
    const bool read = take(records.airframes(), airframes, problem) &&
                      take(records.persons(), people, problem) && take(records.gauges(), gauges, problem);
    if (!read)
        return problem;
    QStringList content{FileWords::people(static_cast<int>(people.size()), static_cast<int>(gauges.size()))};
    if (airframes.empty())
        content.append(FileWords::noAirframes());
    std::size_t done = 0;
    for (const Airframe& airframe : airframes) {
        if (!progress.goOn(done++, airframes.size()))
            return stoppedWork();
        const auto tally = tallyOf(records, airframe);
        if (!tally)
            return tally.problem();
        content.append(FileWords::airframe(tally.value()));
    }
    return content;
}

QString toldOf(const Finding& finding)
{
    const QString table = QString::fromStdString(finding.table);
    const QString about = QString::fromStdString(finding.about);
    switch (finding.kind) {
    case FindingKind::Unreadable:
        return FileWords::unreadable(table, finding.rows, about);
    case FindingKind::LostReference:
        return FileWords::lostReference(table, finding.rows, about);
    case FindingKind::NotTogether:
        return FileWords::notTogether(table, finding.rows);
    case FindingKind::LastId:
        return FileWords::lastId(table);
    case FindingKind::FutureId:
        break;
    }
    return FileWords::futureId(table, finding.rows);
}

QString toldOf(PhotoFault fault, int photos)
{
    switch (fault) {
    case PhotoFault::NoPicture:
        return FileWords::noPicture(photos);
    case PhotoFault::OtherSize:
        return FileWords::otherSize(photos);
    case PhotoFault::MoreThanPicture:
        break;
    }
    return FileWords::moreThanPicture(photos);
}

// Every photo, also one that was withdrawn.
Outcome findPhotoFaults(StoreFile& file, QStringList& found, Progress& progress)
{
    std::map<PhotoFault, int> faults;
    const auto take = [&faults](const Photo& photo, const PhotoImage& image) {
        if (const auto fault = faultOf(photo, image))
            ++faults[*fault];
    };
    const Outcome read = eachPhoto(file.connection(), take, &progress);
    for (const auto& [fault, photos] : faults)
        found.append(toldOf(fault, photos));
    return read;
}

// How long the parts of the look take against each other: rows, photos, the chain, what stands in it, what
// was saved oddly, conflicts.
std::vector<std::size_t> partsOfCheck()
{
    return {6, 1, 20, 2, 3, 1};
}

struct Found
{
    QStringList faults;
    QStringList content;
    QStringList replacedNames; // which are none
    std::vector<Conflict> conflicts;
    std::int64_t takenOver = 0;
};

// How far the file has come, and what nobody can tell from it.
Outcome tellChain(StoreFile& file, std::int64_t takenOver)
{
    const auto end = file.end();
    if (!end)
        return end.problem();
    say(ChainWords::file(end.value()));
    const auto last = file.lastSaved();
    if (!last)
        return last.problem();
    if (last.value())
        say(ChainWords::lastSaved(*last.value()));
    if (takenOver > 0)
        say(ChainWords::takenOver(takenOver));
    return Done{};
}

void tellConflicts(const std::vector<Conflict>& open)
{
    const auto apart = static_cast<int>(std::ranges::count(open, true, &Conflict::areApart));
    if (apart > 0)
        say(FileWords::toBeDecided(apart));
    if (const int twice = static_cast<int>(open.size()) - apart; twice > 0)
        say(FileWords::saidTwice(twice));
}

// What is wrong with rows, photos and the chain. `found` is what was met before a problem.
Outcome findFaults(OpenFile& open, Found& all, WorkInParts& parts)
{
    QStringList& found = all.faults;
    const auto findings = findingsIn(open.file->connection(), open.clock.now(), &parts);
    if (!findings)
        return findings.problem();
    for (const Finding& finding : findings.value())
        found.append(toldOf(finding));
    parts.endPart();
    if (const Outcome read = findPhotoFaults(*open.file, found, parts); !read)
        return read;
    parts.endPart();
    const auto chain = open.file->lookAtChain(&parts);
    if (!chain)
        return chain.problem();
    if (chain.value().faults > 0)
        found.append(ChainWords::faults(chain.value().faults));
    found.append(ChainWords::all(chain.value()));
    for (const auto& copy : copiesOfLaterDays(open.file->path(), open.clock.now().localDay()))
        found.append(FileWords::copyOfLaterDay(QString::fromStdString(copy.filename().string())));
    all.replacedNames = ChainWords::replacedNames(chain.value());
    all.takenOver = chain.value().takenOver;
    parts.endPart();
    return Done{};
}

// What the appendix of the report says of readings, and of a closing too, for every airframe.
class Odd
{
public:
    explicit Odd(OpenFile& open) : m_connection{open.file->connection()}, m_now{open.clock.now()} {}

    void take(const AirframeFacts& facts)
    {
        const ClosedRecords closed{facts};
        for (const KeptReading& kept : facts.readings) {
            takeFuture("reading", kept.reading);
            if (closed.tookIn(kept.reading))
                add("reading", kept.reading.id.bytes, ChainWords::inAClosedRecord(saved(kept.reading.stamp)));
        }
        for (const RecordClose& close : facts.closings)
            takeFuture("closing", close);
    }
    QStringList sentences() const
    {
        return m_more > 0 ? m_said + QStringList{ChainWords::andMore(m_more)} : m_said;
    }

private:
    static QString saved(const Stamp& stamp) { return Formats{}.moment(stamp.when); }
    template <typename Fact> void takeFuture(const char* table, const Fact& fact)
    {
        if (isOfTheFuture(fact.stamp, m_now))
            add(table, fact.id.bytes, ChainWords::inTheFuture(saved(fact.stamp)));
    }
    void add(const char* table, const IdBytes& fact, const QString& why)
    {
        if (m_said.size() >= kFaultsTold)
            ++m_more;
        else
            m_said.append(ChainWords::odd(tellOf(m_connection, {}, table, fact), why));
    }

    StoreFile::Connection& m_connection;
    Moment m_now;
    QStringList m_said;
    std::int64_t m_more = 0;
};

Result<QStringList> oddIn(OpenFile& open, Progress& progress)
{
    const auto airframes = open.records->airframes();
    if (!airframes)
        return airframes.problem();
    Odd odd{open};
    std::size_t done = 0;
    for (const Airframe& airframe : airframes.value()) {
        if (!progress.goOn(done++, airframes.value().size()))
            return stoppedWork();
        const auto facts = factsOf(*open.records, airframe.id);
        if (!facts)
            return facts.problem();
        odd.take(facts.value());
    }
    return odd.sentences();
}

// What its facts say.
Outcome readFacts(OpenFile& open, Found& all, WorkInParts& parts)
{
    Problem problem;
    QStringList odd;
    if (!take(contentOf(*open.records, parts), all.content, problem))
        return problem;
    parts.endPart();
    if (!take(oddIn(open, parts), odd, problem))
        return problem;
    all.faults.append(odd);
    parts.endPart();
    if (auto conflicts = openConflictsIn(open.file->connection()))
        all.conflicts = std::move(conflicts).value();
    return parts.endPart() ? Done{} : Outcome{stoppedWork()};
}

// Reading ended at something that cannot stand there: nothing is said of a whole file then.
int tellUnreadable(const Problem& problem, const Found& found, const QString& file)
{
    for (const QString& sentence : found.faults)
        complain(sentence);
    if (problem.kind == ProblemKind::DamagedFile)
        complain(FileWords::cannotStand(QString::fromStdString(problem.detail)));
    return couldNot(problem, file);
}

} // namespace

int check(const QString& file)
{
    TerminalProgress progress;
    WorkInParts parts{&progress, partsOfCheck()};
    OpenFile open;
    if (const Outcome opened = open.open(file, OpenAs::ToLook, &progress); !opened)
        return couldNot(progress, opened.problem(), file);
    Found found;
    {
        const Watched watched{open.file->connection(), &progress};
        if (const Outcome looked = findFaults(open, found, parts); !looked)
            return couldNot(progress, looked.problem(), file);
        const Outcome read = readFacts(open, found, parts);
        progress.clear();
        if (!read)
            return progress.isStopped() ? couldNot(LongWorkWords::stopped())
                                        : tellUnreadable(read.problem(), found, file);
    }
    say(found.faults.isEmpty() ? FileWords::isAFile(file) : FileWords::isAFileWithFindings(file));
    if (open.file->isUpgraded())
        say(FileWords::isOlder());
    if (fileRefusesWriting(file.toStdString()) || folderRefusesWriting(file.toStdString()))
        say(FileWords::readOnly());
    for (const QString& sentence : found.content)
        say(sentence);
    if (const Outcome said = tellChain(*open.file, found.takenOver); !said)
        return couldNot(said.problem(), file);
    for (const QString& sentence : found.replacedNames)
        say(sentence);
    tellConflicts(found.conflicts);
    for (const QString& sentence : found.faults)
        complain(sentence);
    return found.faults.isEmpty() ? kDone : kFound;
}

} // namespace rig::file
