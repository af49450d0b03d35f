#include "app/file/verbs.h"

#include "app/file/open_file.h"
#include "app/pictures/drawn_photo.h"
#include "app/wording/file_words.h"
#include "app/wording/problem_words.h"
#include "core/demo/demo.h"

#include <QFile>

#include <cstdio>

namespace rig::file {

namespace {

void print(const QString& sentence, std::FILE* where)
{
    std::fputs(sentence.toUtf8().append('\n').constData(), where);
}

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

Outcome tellContent(const Records& records)
{
    Problem problem;
    std::vector<Airframe> airframes;
    std::vector<Person> people;
    std::vector<Gauge> gauges;
    const bool read = take(records.airframes(), airframes, problem) &&
                      take(records.persons(), people, problem) && take(records.gauges(), gauges, problem);
    if (!read)
        return problem;
    say(FileWords::people(static_cast<int>(people.size()), static_cast<int>(gauges.size())));
    if (airframes.empty())
        say(FileWords::noAirframes());
    for (const Airframe& airframe : airframes) {
        const auto tally = tallyOf(records, airframe);
        if (!tally)
            return tally.problem();
        say(FileWords::airframe(tally.value()));
    }
    return Done{};
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
    complain(ProblemWords::sentence(problem, path));
    return kCouldNot;
}

int couldNot(const QString& sentence)
{
    complain(sentence);
    return kCouldNot;
}

int check(const QString& file)
{
    OpenFile open;
    if (const Outcome opened = open.open(file); !opened)
        return couldNot(opened.problem(), file);
    say(FileWords::isAFile(file));
    if (open.file->isReadOnly())
        say(FileWords::readOnly());
    if (const Outcome told = tellContent(*open.records); !told) {
        if (told.problem().kind == ProblemKind::DamagedFile)
            complain(FileWords::cannotStand(QString::fromStdString(told.problem().detail)));
        return couldNot(told.problem(), file);
    }
    const auto dangling = open.file->danglingReferences();
    if (!dangling)
        return couldNot(dangling.problem(), file);
    if (dangling.value() == 0)
        return kDone;
    complain(FileWords::dangling(dangling.value()));
    return kCouldNot;
}

int writeDemo(const QString& into)
{
    const SystemClock clock;
    auto opened = StoreFile::open(into.toStdString(), OpenAs::New, clock);
    if (!opened)
        return couldNot(opened.problem(), into);
    if (const Outcome built = buildDemo(*opened.value(), drawnPhoto); !built) {
        opened = built.problem(); // closes the file before it is taken away
        QFile::remove(into);
        return couldNot(built.problem(), into);
    }
    say(FileWords::demoWritten(into));
    return kDone;
}

int salvage(const QString& damaged, const QString& into)
{
    const SystemClock clock;
    const auto facts = StoreFile::salvage(damaged.toStdString(), into.toStdString(), clock);
    if (facts) {
        say(FileWords::salvaged(facts.value(), into));
        return kDone;
    }
    const ProblemKind kind = facts.problem().kind;
    const bool aboutTarget = kind == ProblemKind::FileExists || kind == ProblemKind::DiskFull ||
                             kind == ProblemKind::FileReadOnly || kind == ProblemKind::FolderReadOnly;
    return couldNot(facts.problem(), aboutTarget ? into : damaged);
}

} // namespace rig::file
