// Whatever is saved in whatever order, by this window or another: a book that takes it in fact by fact holds
// what a book holds that reads the file anew.

#include "core/store/airframe_facts.h"
#include "core/store/facts_book.h"
#include "tests/support/hangar.h"

#include <gtest/gtest.h>
#include <random>
#include <sstream>

using namespace rig;
using namespace rig::test;

namespace {

constexpr int kWrites = 240;

void tell(std::ostream& out, const Stamp& stamp)
{
    out << ' ' << stamp.when.utcSeconds << ' ' << (stamp.by ? textOf(stamp.by->bytes) : "nobody");
}

template <typename Facts, typename More>
void tellAll(std::ostream& out, const char* kind, const Facts& facts, More more)
{
    for (const auto& fact : facts) {
        out << kind << ' ' << textOf(fact.id.bytes);
        tell(out, fact.stamp);
        more(fact);
        out << '\n';
    }
}

void tellFacts(std::ostream& out, const AirframeFacts& facts)
{
    const auto name = [&out](const auto& one) { out << ' ' << one.name; };
    const auto nothing = [](const auto&) {};
    out << textOf(facts.airframe.id.bytes) << ' ' << facts.airframe.type << '\n';
    tellAll(out, "person", facts.persons, name);
    tellAll(out, "gauge", facts.gauges,
            [&out](const Gauge& one) { out << one.name << one.set.sizes().size(); });
    tellAll(out, "check", facts.gaugeChecks, nothing);
    tellAll(out, "coupling", facts.couplings, name);
    tellAll(out, "fitting", facts.fittings, nothing);
    tellAll(out, "event", facts.events, nothing);
    tellAll(out, "exclusion", facts.exclusions, nothing);
    tellAll(out, "baseline", facts.frozenBaselines,
            [&out](const FrozenBaseline& one) { out << ' ' << one.readings.size(); });
    tellAll(out, "record", facts.riggingRecords, nothing);
    tellAll(out, "closing", facts.closings, nothing);
    tellAll(out, "surface", facts.surfaces, name);
    for (const QuestionStory& story : facts.questions)
        out << "question " << textOf(story.question.id.bytes) << story.isOpen() << '\n';
    for (const KeptReading& kept : facts.readings)
        out << "reading " << textOf(kept.reading.id.bytes) << ' ' << kept.reading.when.utcSeconds << ' '
            << kept.shown.has_value() << '\n';
}

void tellHistory(std::ostream& out, const CouplingHistory& history)
{
    out << textOf(history.coupling.bytes) << ' ' << history.gauges.size() << ' ' << history.checks.size();
    for (const GapInterval& one : history.partSeated)
        out << ' ' << one.enters.inMicrometres();
    for (const FittingHistory& fitting : history.fittings) {
        out << '\n' << textOf(fitting.fitting.id.bytes) << fitting.isFrozen << ' ' << fitting.admitted.size();
        out << ' ' << fitting.inDoubt.size() << ' ' << fitting.gauges.size();
        if (const auto& band = fitting.baseline.band())
            out << ' ' << band->outer.lower << ' ' << band->outer.upper;
        for (const auto& [gauge, finding] : fitting.witness)
            out << ' ' << textOf(gauge.bytes) << static_cast<int>(finding.witness) << finding.shown;
    }
    out << '\n';
}

std::string told(const KnownAirframe& known)
{
    std::ostringstream out;
    out.precision(17);
    tellFacts(out, known.facts());
    if (const RiggingRecord* open = openRecordIn(known.facts()))
        out << "open " << textOf(open->id.bytes) << '\n';
    for (const Coupling& coupling : known.facts().couplings) {
        tellHistory(out, known.history(coupling.id));
        for (const KeptReading* kept : known.readingsOf(coupling.id))
            out << textOf(kept->reading.id.bytes) << known.isSuperseded(kept->reading.id) << '\n';
        for (const KeptReading* kept : known.lastLocked(coupling.id, 12, {}))
            out << textOf(kept->reading.id.bytes) << '\n';
    }
    return out.str();
}

// Saves something or other, each time of a kind that is drawn.
class SomeWriter
{
public:
    SomeWriter(Records& records, const Clock& clock, const Hangar& hangar, std::mt19937& random)
        : m_records{records}, m_clock{clock}, m_hangar{hangar}, m_random{random}
    {
    }

    void write()
    {
        switch (draw(16)) {
        case 0:
            return person();
        case 1:
            return static_cast<void>(m_records.add(withId(aLeafSet("set " + number()), m_hangar.setA)));
        case 2:
            return gaugeCheck();
        case 3:
            return static_cast<void>(m_records.add(
                withId(aCoupling(m_hangar.airframe, "left " + number()), m_hangar.leftAileron)));
        case 4:
            return fitting();
        case 5:
            return static_cast<void>(m_records.add(
                Event{{}, m_hangar.airframe, m_hangar.leftAileron, EventKind::Cleaned, day(), "", {}, {}}));
        case 6:
            return exclusion();
        case 7:
            return record();
        case 8:
            return question();
        case 9:
            return freeze();
        default:
            return reading();
        }
    }

private:
    int draw(int below) { return static_cast<int>(m_random() % static_cast<unsigned>(below)); }
    std::string number() { return std::to_string(m_random()); }
    Day day() { return m_clock.now().localDay() - std::chrono::days{draw(60)}; }
    template <typename Fact, typename SomeId> Fact withId(Fact fact, SomeId id)
    {
        fact.id = id;
        return fact;
    }

    void person()
    {
        Person one = aPerson("somebody " + number());
        if (draw(2))
            one.id = m_hangar.vale;
        static_cast<void>(m_records.add(one));
    }

    void gaugeCheck()
    {
        GaugeCheck check;
        check.gauge = m_hangar.setA;
        check.day = day();
        check.how = "against a micrometer";
        check.found = "as marked";
        if (draw(2))
            check.quarantineFrom = day();
        check.stamp.by = m_hangar.oren;
        static_cast<void>(m_records.add(check));
    }

    void fitting()
    {
        static_cast<void>(
            m_records.add(Fitting{{}, m_hangar.leftAileron, day(), FittingKind::Other, "ball replaced", {}}));
    }

    std::vector<KeptReading> known()
    {
        return must(m_records.readingsOf(draw(2) ? m_hangar.leftAileron : m_hangar.rightAileron));
    }

    void exclusion()
    {
        const std::vector<KeptReading> all = known();
        if (all.empty())
            return;
        Exclusion one;
        one.reading = all[m_random() % all.size()].reading.id;
        one.reason = "sand in the socket";
        one.stamp.by = m_hangar.oren;
        static_cast<void>(m_records.add(one));
    }

    void record()
    {
        const auto open = must(m_records.openRecord(m_hangar.airframe));
        if (!open)
            return static_cast<void>(m_records.add(m_hangar.record(m_clock.now())));
        RecordClose close;
        close.record = *open;
        close.closing = Closing::Abandoned;
        close.stamp.by = m_hangar.oren;
        static_cast<void>(m_records.add(close));
    }

    void question()
    {
        const auto all = must(m_records.questions(m_hangar.airframe));
        if (!all.empty() && all.back().isOpen()) {
            Resolution closed{{}, all.back().question.id, m_hangar.vale, "nothing", "cleaned", {}};
            return static_cast<void>(m_records.add(closed));
        }
        Question one;
        one.airframe = m_hangar.airframe;
        one.kind = QuestionKind::GaugeQuarantined;
        one.gauge = m_hangar.setA;
        static_cast<void>(m_records.add(one));
    }

    void freeze()
    {
        FrozenBaseline one;
        one.fitting = m_hangar.leftFitting;
        for (const KeptReading& kept : must(m_records.readingsOf(m_hangar.leftAileron)))
            if (kept.reading.fitting == one.fitting && kept.reading.purpose == Purpose::Baseline)
                one.readings.push_back(kept.reading.id);
        one.first = m_hangar.oren;
        one.second = m_hangar.vale;
        static_cast<void>(m_records.add(one));
    }

    void reading()
    {
        const int um = 500 + 50 * draw(8);
        Reading one = m_hangar.reading(between(um, um + 50), m_clock.now());
        one.when.utcSeconds -= draw(3) ? 0 : draw(90 * 24 * 3600);
        one.purpose = draw(2) ? Purpose::Baseline : Purpose::Rigging;
        one.state = draw(8) ? SeatState::Locked : SeatState::PartSeated;
        if (draw(2)) {
            one.coupling = m_hangar.rightAileron;
            one.fitting = m_hangar.rightFitting;
        }
        const std::vector<KeptReading> all = must(m_records.readingsOf(one.coupling));
        if (!all.empty() && !draw(5)) {
            const Reading& wrong = all[m_random() % all.size()].reading;
            one.corrects = wrong.id;
            one.note = "wrong leaf";
            one.record = wrong.record;
        }
        const std::optional<Shown> shown = draw(2) ? std::optional<Shown>{} : Shown{};
        static_cast<void>(m_records.add(one, shown)); // a second correction of one is refused
    }

    Records& m_records;
    const Clock& m_clock;
    Hangar m_hangar;
    std::mt19937& m_random;
};

} // namespace

TEST(BookProperty, HoldsWhatIsReadAnewAfterAnySequenceOfWrites)
{
    TempStore store;
    const Hangar hangar{store.records()};
    const auto otherFile = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
    IdSource otherIds{7};
    Records other{*otherFile, otherIds, store.clock()};
    std::mt19937 random{20291};
    SomeWriter here{store.records(), store.clock(), hangar, random};
    SomeWriter there{other, store.clock(), hangar, random};
    const auto expectTheSame = [&](int write) {
        const KnownAirframe& held = *must(store.records().book().airframe(hangar.airframe));
        const KnownAirframe fresh{must(factsOf(store.records(), hangar.airframe))};
        ASSERT_EQ(told(held), told(fresh)) << "after write " << write;
        const auto open = must(store.records().openRecord(hangar.airframe));
        ASSERT_EQ(openRecordIn(held.facts()) ? std::optional{openRecordIn(held.facts())->id} : std::nullopt,
                  open);
    };
    for (int write = 0; write < kWrites && !testing::Test::HasFatalFailure(); ++write) {
        const auto kind = random() % 10;
        if (kind == 0) {
            there.write();
        } else if (kind == 1) {
            const Outcome takenBack = store.records().together([&]() -> Outcome {
                here.write();
                expectTheSame(write);
                return Problem{};
            });
            EXPECT_FALSE(takenBack);
        } else {
            here.write();
        }
        store.clock().passMinutes(7);
        if (random() % 3 == 0)
            expectTheSame(write);
    }
    expectTheSame(kWrites);
}
