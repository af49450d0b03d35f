// Whatever is saved on two or three laptops of one syndicate, with a file taken in now and then: joined in
// whatever order it is the same, nothing of it is lost, its chain holds, and each coupling is judged as if
// all had been written into one file.

#include "core/review/judged_readings.h"
#include "core/store/facts_book.h"
#include "core/store/tables.h"
#include "tests/store/through_a_document.h"
#include "tests/support/laptop.h"

#include <filesystem>
#include <gtest/gtest.h>
#include <map>
#include <random>
#include <set>
#include <sstream>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

constexpr int kDeeds = 30;
constexpr unsigned kHistories = 6;

// What somebody did on one of the laptops.
struct Deed
{
    std::size_t laptop = 0;
    unsigned kind = 0;
    int enters = 0; // micrometres
    unsigned drawn = 0;
};

// Tells deeds to one file, in which the readings of before may stand under other ids.
class Told
{
public:
    Told(Records& records, const Clock& clock, const Hangar& hangar)
        : m_records{records}, m_clock{clock}, m_hangar{hangar}
    {
    }

    void tell(const Deed& deed, int number)
    {
        switch (deed.kind) {
        case 0:
            return check(deed);
        case 1:
            must(m_records.add(Fitting{
                {}, m_hangar.rightAileron, m_clock.now().localDay(), FittingKind::Other, "ball", {}}));
            return;
        case 2:
            return exclude(deed);
        case 3:
            return rename(deed);
        default:
            return read(deed, number);
        }
    }

private:
    void check(const Deed& deed)
    {
        GaugeCheck check;
        check.gauge = m_hangar.setA;
        check.day = m_clock.now().localDay();
        check.how = "against a micrometer";
        check.found = "as marked";
        if (deed.drawn % 3 == 0)
            check.quarantineFrom = check.day - std::chrono::days{deed.drawn % 20};
        check.stamp.by = m_hangar.oren;
        must(m_records.add(check));
    }

    void exclude(const Deed& deed)
    {
        if (m_own[deed.laptop].empty())
            return;
        Exclusion one;
        one.reading = m_own[deed.laptop][deed.drawn % m_own[deed.laptop].size()];
        one.reason = "sand in the socket";
        one.stamp.by = m_hangar.oren;
        static_cast<void>(m_records.add(one)); // a second one of one reading is refused
    }

    void rename(const Deed& deed)
    {
        Coupling left = aCoupling(m_hangar.airframe, "Left " + std::to_string(deed.drawn));
        left.id = m_hangar.leftAileron;
        must(m_records.add(left));
    }

    void read(const Deed& deed, int number)
    {
        Reading one = m_hangar.reading(between(deed.enters, deed.enters + 50), m_clock.now());
        one.purpose = deed.drawn % 4 ? Purpose::Baseline : Purpose::Rigging;
        one.note = "deed " + std::to_string(number);
        std::vector<ReadingId>& own = m_own[deed.laptop];
        if (deed.kind == 4 && !own.empty()) {
            one.corrects = own[deed.drawn % own.size()];
            one.note += ", wrong leaf";
        }
        if (const auto kept = m_records.add(one, std::optional<Shown>{}))
            own.push_back(kept.value());
    }

    Records& m_records;
    const Clock& m_clock;
    Hangar m_hangar;
    std::map<std::size_t, std::vector<ReadingId>> m_own; // of each laptop
};

void tellBands(std::ostream& out, const CouplingHistory& history)
{
    for (const FittingHistory& fitting : history.fittings) {
        out << "fitting " << fitting.fitting.begins.time_since_epoch().count() << ' '
            << fitting.admitted.size() << ' ' << fitting.inDoubt.size();
        if (const auto& band = fitting.baseline.band())
            out << ' ' << band->outer.lower << ' ' << band->outer.upper;
        out << '\n';
    }
}

std::string judged(Records& records, const Hangar& hangar)
{
    std::ostringstream out;
    out.precision(12);
    const KnownAirframe& known = *must(records.book().airframe(hangar.airframe));
    for (const Coupling& coupling : known.facts().couplings) {
        out << coupling.name << '\n';
        tellBands(out, known.history(coupling.id));
    }
    for (const JudgedReading& one : judgedReadings(known.facts(), dayOf(2027, 1, 1)))
        out << one.reading.note << ' ' << static_cast<int>(one.judgement.verdict) << one.inDoubt
            << one.ofBaseline << one.superseded << one.struck << one.leftOut << '\n';
    return out.str();
}

std::set<std::string> factIdsOf(const std::string& path)
{
    std::set<std::string> ids;
    const auto file = must(OtherFile::read(path, path));
    for (const FactTable& table : kFactTables)
        if (table.isFact)
            must(file->connection().each(QString("SELECT id FROM %1").arg(table.name), {}, [&](Row& row) {
                ids.insert(table.name + textOf(row.bytes().value_or(IdBytes{})));
            }));
    return ids;
}

std::string contentOfJoined(const std::string& one, const std::string& other, const std::string& out)
{
    joined(one, other, out);
    return contentOf(out);
}

// The same deeds on several laptops, and in one file.
class Syndicate
{
public:
    Syndicate(unsigned seed, std::size_t laptops) : m_random{seed}
    {
        takeTwelve(m_base, m_hangar);
        m_base.close();
        for (std::size_t i = 0; i < laptops; ++i)
            paths.push_back(copied("laptop" + std::to_string(i), i));
        m_one = std::make_unique<Laptop>(copy("one"), seed + 100);
        m_toldOne = std::make_unique<Told>(*m_one->records, m_one->clock, m_hangar);
        for (int i = 0; i < kDeeds; ++i)
            deed(i);
    }

    std::string path(const std::string& name) const { return m_base.folder() / (name + ".rigband"); }
    std::string judgedInOne() { return judged(*m_one->records, m_hangar); }
    const Hangar& hangar() const { return m_hangar; }

    std::vector<std::string> paths;

private:
    std::string copy(const std::string& name)
    {
        fs::copy_file(m_base.path(), path(name));
        return path(name);
    }
    std::string copied(const std::string& name, std::size_t number)
    {
        Laptop& laptop = *m_laptops.emplace_back(std::make_unique<Laptop>(copy(name), number + 11));
        m_told.emplace_back(*laptop.records, laptop.clock, m_hangar);
        return laptop.path;
    }

    void deed(int number)
    {
        const Deed deed{m_random() % m_laptops.size(), static_cast<unsigned>(m_random() % 12),
                        450 + 50 * static_cast<int>(m_random() % 3), static_cast<unsigned>(m_random())};
        m_now.passMinutes(1 + static_cast<int>(m_random() % 3000));
        Laptop& laptop = *m_laptops[deed.laptop];
        laptop.clock.set(m_now.now());
        m_one->clock.set(m_now.now());
        if (m_random() % 8 == 0)
            takenIn(laptop, paths[m_random() % paths.size()]);
        m_told[deed.laptop].tell(deed, number);
        m_toldOne->tell(deed, number);
    }

    TempStore m_base;
    Hangar m_hangar{m_base.records()};
    FixedClock m_now;
    std::mt19937 m_random;
    std::vector<std::unique_ptr<Laptop>> m_laptops;
    std::vector<Told> m_told;
    std::unique_ptr<Laptop> m_one;
    std::unique_ptr<Told> m_toldOne;
};

} // namespace

TEST(JoinProperty, IsTheSameInWhateverOrderAndHoweverOftenAndLosesNothing)
{
    for (unsigned seed = 1; seed <= kHistories; ++seed) {
        SCOPED_TRACE(seed);
        Syndicate syndicate{seed, 3};
        const auto& [a, b, c] = std::tie(syndicate.paths[0], syndicate.paths[1], syndicate.paths[2]);
        const auto at = [&syndicate](const char* name) { return syndicate.path(name); };
        const std::string ab = contentOfJoined(a, b, at("ab"));
        EXPECT_EQ(contentOfJoined(b, a, at("ba")), ab);
        EXPECT_EQ(contentOfJoined(a, a, at("aa")), contentOf(a));
        EXPECT_EQ(contentOfJoined(at("ab"), b, at("abb")), ab);
        joined(b, c, at("bc"));
        joined(c, a, at("ca"));
        const std::string all = contentOfJoined(at("ab"), c, at("abc"));
        EXPECT_EQ(contentOfJoined(a, at("bc"), at("a-bc")), all);
        EXPECT_EQ(contentOfJoined(at("ca"), b, at("ca-b")), all);
        std::set<std::string> each;
        for (const std::string& path : syndicate.paths)
            each.merge(factIdsOf(path));
        EXPECT_EQ(factIdsOf(at("abc")), each);
    }
}

TEST(JoinProperty, IsJudgedAsIfAllHadBeenWrittenIntoOneFile)
{
    for (unsigned seed = 21; seed < 21 + kHistories; ++seed) {
        SCOPED_TRACE(seed);
        Syndicate syndicate{seed, 2 + seed % 2};
        Laptop first{syndicate.paths[0], 77};
        for (const std::string& path : syndicate.paths)
            takenIn(first, path);
        EXPECT_EQ(judged(*first.records, syndicate.hangar()), syndicate.judgedInOne());
    }
}

TEST(JoinProperty, HasAChainThatHoldsAlsoAfterTheNextSave)
{
    for (unsigned seed = 41; seed < 41 + kHistories; ++seed) {
        SCOPED_TRACE(seed);
        Syndicate syndicate{seed, 2};
        const std::string out = syndicate.path("out");
        joined(syndicate.paths[0], syndicate.paths[1], out);
        Laptop on{out, 88};
        const ChainState before = must(on.file().lookAtChain());
        EXPECT_EQ(before.faults, 0);
        on.clock.set(dayOf(2026, 12, 1));
        on.read(syndicate.hangar(), 500);
        const ChainState after = must(on.file().lookAtChain());
        EXPECT_EQ(after.faults, 0);
        EXPECT_EQ(after.end.facts, before.end.facts + 1);
        EXPECT_TRUE(must(on.file().placeOfPrint(shortForm(before.end.hash))));
    }
}

TEST(JoinProperty, GoesOutAsADocumentAndComesBackEqual)
{
    for (unsigned seed = 61; seed < 61 + kHistories; ++seed) {
        SCOPED_TRACE(seed);
        Syndicate syndicate{seed, 2};
        joined(syndicate.paths[0], syndicate.paths[1], syndicate.path("out"));
        const auto file = must(OtherFile::read(syndicate.path("out"), syndicate.path("out")));
        throughADocument(file->connection(), syndicate.path("back"));
        EXPECT_EQ(contentOf(syndicate.path("back")), contentOf(file->connection()));
        Laptop back{syndicate.path("back"), 89};
        const ChainState chain = must(back.file().lookAtChain());
        EXPECT_EQ(chain.faults, 0);
        EXPECT_EQ(chain.end, must(file->lookAtChain()).end);
        EXPECT_EQ(judged(*back.records, syndicate.hangar()),
                  judged(*Laptop{syndicate.path("out"), 90}.records, syndicate.hangar()));
    }
}
