#include "app/shots/crowded_file.h"

#include "core/airframe/id_source.h"
#include "core/store/records.h"
#include "core/store/store_file.h"

#include <array>

namespace rig {

namespace {

constexpr int kPairs = 10; // of couplings, left and right
constexpr int kPeople = 15;
constexpr int kLeaves = 40;
constexpr int kReadings = 12; // of each coupling
constexpr std::size_t kNameLetters = 40;
constexpr std::int64_t kDay = 86'400; // seconds

// Forty letters of it, with its number at the end, where a name that is cut there would lose it.
std::string longName(const std::string& begins, int number)
{
    const std::string end = " no. " + std::to_string(number);
    return begins.substr(0, kNameLetters - end.size()) + end;
}

class CrowdedFile
{
public:
    CrowdedFile(Records& records, const Clock& clock) : m_records{records}, m_clock{clock} {}

    Outcome write()
    {
        return m_records.together([this] { return writeAll(); });
    }

private:
    Outcome writeAll()
    {
        for (int i = 1; i <= kPeople; ++i)
            if (const Outcome kept = addPerson(i); !kept)
                return kept;
        if (const Outcome kept = addLeafSet(); !kept)
            return kept;
        if (const Outcome kept = addAirframe(); !kept)
            return kept;
        for (int i = 0; i < 2 * kPairs; ++i)
            if (const Outcome kept = addCoupling(i); !kept)
                return kept;
        return Done{};
    }

    Outcome addPerson(int number)
    {
        Person person;
        person.name = longName("Wilhelmine Constantia Hollerbrook of Ard", number);
        person.role = "member";
        const auto kept = m_records.add(person);
        if (!kept)
            return kept.problem();
        m_person = kept.value();
        return Done{};
    }

    Outcome addLeafSet()
    {
        std::vector<Gap> sizes;
        for (int i = 0; i < kLeaves; ++i)
            sizes.push_back(Gap::micrometres(50 + 25 * i));
        Gauge gauge;
        gauge.name = longName("Leaf set in the long grey case with a lid", 1);
        gauge.set = GaugeSet{GaugeKind::Leaves, sizes};
        const auto kept = m_records.add(gauge);
        if (!kept)
            return kept.problem();
        m_gauge = kept.value();
        return Done{};
    }

    Outcome addAirframe()
    {
        Airframe airframe;
        airframe.registration = "QX-17";
        airframe.type = longName("Orvane with the long wing and tall rudder", 18);
        airframe.serial = "1017";
        const auto kept = m_records.add(airframe);
        if (!kept)
            return kept.problem();
        m_airframe = kept.value();
        return Done{};
    }

    Outcome addCoupling(int index)
    {
        constexpr std::array kCircuits{Circuit::Aileron, Circuit::Flap, Circuit::Airbrake};
        const bool isLeft = index % 2 == 0;
        const int pair = index / 2;
        Coupling coupling;
        coupling.airframe = m_airframe;
        coupling.name = longName(isLeft ? "Left aileron, under the hatch by the root"
                                        : "Right aileron, under the hatch by the root",
                                 pair + 1);
        coupling.circuit = kCircuits[static_cast<std::size_t>(pair) % kCircuits.size()];
        coupling.side = isLeft ? Side::Left : Side::Right;
        coupling.access = longName("By the hatch behind the spar, from above", pair + 1);
        coupling.riggingOrder = index + 1;
        const auto kept = m_records.add(coupling);
        if (!kept)
            return kept.problem();
        Fitting fitting;
        fitting.coupling = kept.value();
        fitting.begins = m_clock.now().localDay() - std::chrono::days{60};
        fitting.kind = FittingKind::First;
        const auto fitted = m_records.add(fitting);
        return fitted ? addReadings(kept.value(), fitted.value(), index) : Outcome{fitted.problem()};
    }

    Outcome addReadings(CouplingId coupling, FittingId fitting, int index)
    {
        for (int i = 0; i < kReadings; ++i) {
            Reading reading;
            reading.coupling = coupling;
            reading.fitting = fitting;
            const int enters = 300 + 25 * (index % 8) + 25 * (i % 3);
            reading.interval = GapInterval{Gap::micrometres(enters), Gap::micrometres(enters + 25)};
            reading.gauge = m_gauge;
            reading.person = m_person;
            reading.purpose = Purpose::Baseline;
            reading.when = m_clock.now();
            reading.when.utcSeconds -= (kReadings - i) * kDay;
            if (const auto kept = m_records.add(reading, std::nullopt); !kept)
                return kept.problem();
        }
        return Done{};
    }

    Records& m_records;
    const Clock& m_clock;
    PersonId m_person; // the last one, who measured
    GaugeId m_gauge;
    AirframeId m_airframe;
};

} // namespace

Outcome writeCrowdedFile(const std::string& path, const Clock& now)
{
    const auto file = StoreFile::open(path, OpenAs::New, now);
    if (!file)
        return file.problem();
    IdSource ids{13};
    Records records{*file.value(), ids, now};
    return CrowdedFile{records, now}.write();
}

} // namespace rig
