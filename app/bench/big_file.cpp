#include "app/bench/big_file.h"

#include "app/bench/draws.h"
#include "core/airframe/id_source.h"
#include "core/store/records.h"

#include <cmath>
#include <vector>

namespace rig::bench {

namespace {

constexpr std::uint64_t kFileSeed = 20281;
constexpr int kBaselineReadings = 12;             // a coupling
constexpr std::int64_t kBetweenRiggings = 28'800; // seconds: more often than any glider is rigged
constexpr Moment kLastRigging{1'790'000'000, 3600};
constexpr int kLeafStep = 50; // micrometres

class HandClock : public Clock
{
public:
    Moment now() const override { return m_now; }
    void set(Moment now) { m_now = now; }

private:
    Moment m_now = kLastRigging;
};

// Every add() of the one below went well, or the first problem.
class Keeping
{
public:
    template <typename T> T operator()(Result<T> result)
    {
        if (result)
            return std::move(result).value();
        if (m_outcome)
            m_outcome = result.problem();
        return {};
    }
    const Outcome& outcome() const { return m_outcome; }

private:
    Outcome m_outcome = Done{};
};

class Maker
{
public:
    Maker(Records& records, HandClock& clock) : m_records{records}, m_clock{clock} {}

    Outcome introduce()
    {
        for (const char* name : {"A. Quill", "B. Reed"})
            m_persons.push_back(m_keep(m_records.add(Person{{}, name, "member", {}, {}})));
        std::vector<Gap> leaves;
        for (int um = kLeafStep; um <= 2000; um += kLeafStep)
            leaves.push_back(Gap::micrometres(um));
        Gauge set;
        set.name = "A";
        set.set = GaugeSet{GaugeKind::Leaves, leaves};
        m_set = m_keep(m_records.add(set));
        return m_keep.outcome();
    }

    Outcome addAirframe(int number, int readings)
    {
        const int riggings = std::max(0, readings / kCouplingsEach - kBaselineReadings);
        m_when = {kLastRigging.utcSeconds - (riggings + 1) * kBetweenRiggings, kLastRigging.offsetSeconds};
        m_clock.set(m_when);
        Airframe airframe;
        airframe.registration = "QX-" + std::to_string(number);
        airframe.type = "invented";
        m_airframe = m_keep(m_records.add(airframe));
        m_couplings.clear();
        for (int i = 0; i < kCouplingsEach; ++i)
            addCoupling(i);
        for (int i = 0; i < riggings && m_keep.outcome(); ++i)
            addRigging();
        return m_keep.outcome();
    }

private:
    struct Joint
    {
        CouplingId id;
        FittingId fitting;
        double centre = 0; // mm
    };

    void addCoupling(int number)
    {
        Coupling coupling;
        coupling.airframe = m_airframe;
        coupling.name = "coupling " + std::to_string(number + 1);
        coupling.circuit = Circuit::Other;
        coupling.riggingOrder = number;
        Joint joint{m_keep(m_records.add(coupling)), {}, 0.6 + 0.05 * number};
        joint.fitting =
            m_keep(m_records.add(Fitting{{}, joint.id, m_when.localDay(), FittingKind::First, {}, {}}));
        for (int i = 0; i < kBaselineReadings; ++i)
            m_keep(m_records.add(reading(joint, Purpose::Baseline), std::nullopt));
        m_couplings.push_back(joint);
    }

    void addRigging()
    {
        m_when.utcSeconds += kBetweenRiggings;
        m_clock.set(m_when);
        RiggingRecord record;
        record.airframe = m_airframe;
        record.leader = m_persons[0];
        record.begins = m_when;
        RecordClose close;
        close.record = m_keep(m_records.add(record));
        for (const Joint& joint : m_couplings) {
            Reading one = reading(joint, Purpose::Rigging);
            one.record = close.record;
            m_keep(m_records.add(one, std::nullopt));
        }
        close.closing = Closing::Complete;
        close.first = m_persons[0];
        close.second = m_persons[1];
        m_keep(m_records.add(close));
    }

    Reading reading(const Joint& joint, Purpose purpose)
    {
        const double mm = joint.centre + 0.03 * m_draws.normal();
        const int enters = static_cast<int>(std::floor(mm * 1000 / kLeafStep)) * kLeafStep;
        Reading one;
        one.coupling = joint.id;
        one.fitting = joint.fitting;
        one.interval = {Gap::micrometres(enters), Gap::micrometres(enters + kLeafStep)};
        one.gauge = m_set;
        one.purpose = purpose;
        one.person = m_persons[0];
        one.when = m_when;
        one.stamp.by = one.person;
        return one;
    }

    Records& m_records;
    HandClock& m_clock;
    Keeping m_keep;
    Draws m_draws{kFileSeed};
    std::vector<PersonId> m_persons;
    GaugeId m_set;
    AirframeId m_airframe;
    std::vector<Joint> m_couplings;
    Moment m_when;
};

} // namespace

Moment dayAfter()
{
    return {kLastRigging.utcSeconds + 24 * 3600, kLastRigging.offsetSeconds};
}

Outcome makeBigFile(const std::string& path, const BigFile& wanted)
{
    HandClock clock;
    auto file = StoreFile::open(path, OpenAs::New, clock);
    if (!file)
        return file.problem();
    IdSource ids{kFileSeed};
    Records records{*file.value(), ids, clock, FactChecking::None};
    Maker maker{records, clock};
    return records.together([&]() -> Outcome {
        if (const Outcome introduced = maker.introduce(); !introduced)
            return introduced;
        for (int i = 0; i < wanted.airframes; ++i)
            if (const Outcome added = maker.addAirframe(i + 1, wanted.readings / wanted.airframes); !added)
                return added;
        return Done{};
    });
}

} // namespace rig::bench
