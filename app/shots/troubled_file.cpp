#include "app/shots/troubled_file.h"

#include "core/airframe/id_source.h"
#include "core/demo/demo.h"
#include "core/demo/sayings.h"
#include "core/store/copies.h"
#include "core/store/join.h"
#include "core/store/records.h"
#include "core/store/store_file.h"

#include <QByteArray>
#include <QFile>

#include <cassert>
#include <filesystem>

namespace rig {

namespace {

constexpr demo::Saying kClosedAtHangar{"Closed at the hangar.", "An der Halle abgeschlossen.",
                                       "Clos au hangar."};
constexpr demo::Saying kClosedAtTrailer{"Closed at the trailer.", "Am Anhänger abgeschlossen.",
                                        "Clos à la remorque."};
// Of as many bytes as kBallReplaced, in the place of which it is put.
constexpr demo::Saying kBallSaidOtherwise{"ball and plunger repaired", "Kugel und Riegel poliert",
                                          "bille et verrou resserrés"};

// Two laptops do nothing in the same minute.
class MinutesLater : public Clock
{
public:
    MinutesLater(const Clock& clock, int minutes) : m_clock{clock}, m_minutes{minutes} {}

    Moment now() const override
    {
        Moment moment = m_clock.now();
        moment.utcSeconds += 60 * m_minutes;
        return moment;
    }

private:
    const Clock& m_clock;
    int m_minutes;
};

// One of them.
struct Laptop
{
    std::string path;
    const Clock& clock;
    demo::Language language;
    std::uint64_t seed;
};

struct ApartOn
{
    AirframeId airframe;
    RecordId record;
    PersonId leader;
};

Result<ApartOn> writeCommon(const Laptop& laptop)
{
    const auto file = StoreFile::open(laptop.path, OpenAs::New, laptop.clock);
    if (!file)
        return file.problem();
    if (const Outcome built = buildDemo(*file.value(), laptop.language); !built)
        return built.problem();
    IdSource ids{laptop.seed};
    Records records{*file.value(), ids, laptop.clock};
    const auto airframes = records.airframes();
    const auto persons = records.persons();
    if (!airframes || !persons)
        return airframes ? persons.problem() : airframes.problem();
    ApartOn apart;
    apart.airframe = airframes.value().front().id;
    apart.leader = persons.value().front().id;
    RiggingRecord record;
    record.airframe = apart.airframe;
    record.leader = apart.leader;
    record.begins = laptop.clock.now();
    const auto begun = records.add(record);
    if (!begun)
        return begun.problem();
    apart.record = begun.value();
    return apart;
}

// The record of the day closed, and a new member entered, on each of the two.
Outcome writeApart(const Laptop& laptop, const ApartOn& apart, const demo::Saying& note)
{
    const auto file = StoreFile::open(laptop.path, OpenAs::Existing, laptop.clock);
    if (!file)
        return file.problem();
    IdSource ids{laptop.seed};
    Records records{*file.value(), ids, laptop.clock};
    Person member;
    member.name = "N. Brook";
    member.role = demo::says::kMember.in(laptop.language);
    if (const auto kept = records.add(member); !kept)
        return kept.problem();
    RecordClose close;
    close.record = apart.record;
    close.note = note.in(laptop.language);
    close.stamp = {apart.leader, laptop.clock.now()};
    if (const auto kept = records.add(close); !kept)
        return kept.problem();
    return Done{};
}

Outcome takeInTwin(const Laptop& ours, const std::string& twin)
{
    const auto file = StoreFile::open(ours.path, OpenAs::Existing, ours.clock);
    if (!file)
        return file.problem();
    const auto theirs = OtherFile::read(twin, ours.path);
    if (!theirs)
        return theirs.problem();
    const auto joined = takeIn(*file.value(), *theirs.value());
    return joined ? Outcome{Done{}} : Outcome{joined.problem()};
}

// As another program does that writes into the file by itself: a word of the same length.
Outcome changeByHand(const Laptop& laptop)
{
    QFile file{QString::fromStdString(laptop.path)};
    if (!file.open(QIODevice::ReadWrite))
        return Problem{ProblemKind::CannotOpen, file.errorString().toStdString()};
    QByteArray bytes = file.readAll();
    const std::string replaced = demo::says::kBallReplaced.in(laptop.language);
    const std::string otherwise = kBallSaidOtherwise.in(laptop.language);
    assert(replaced.size() == otherwise.size());
    bytes.replace(QByteArray::fromStdString(replaced), QByteArray::fromStdString(otherwise));
    if (!file.seek(0) || file.write(bytes) != bytes.size())
        return Problem{ProblemKind::DiskFull, file.errorString().toStdString()};
    return Done{};
}

} // namespace

Outcome writeTroubledFile(const std::string& path, const Clock& now, demo::Language language)
{
    const Day today = now.now().localDay();
    const MinutesLater later{now, 25};
    const Laptop ours{path, now, language, 11};
    const Laptop theirs{path + ".twin", later, language, 12};
    const auto apart = writeCommon(ours);
    if (!apart)
        return apart.problem();
    if (const Outcome kept = keepTodaysCopy(path, today - std::chrono::days{6}); !kept)
        return kept;
    std::error_code error;
    std::filesystem::copy_file(path, theirs.path, error);
    if (error)
        return Problem{ProblemKind::FolderReadOnly, error.message()};
    if (const Outcome done = writeApart(ours, apart.value(), kClosedAtHangar); !done)
        return done;
    if (const Outcome done = writeApart(theirs, apart.value(), kClosedAtTrailer); !done)
        return done;
    if (const auto kept = copyBeforeTakingIn(path, today); !kept)
        return kept.problem();
    if (const Outcome done = takeInTwin(ours, theirs.path); !done)
        return done;
    return changeByHand(ours);
}

} // namespace rig
