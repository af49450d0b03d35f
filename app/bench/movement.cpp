#include "app/bench/movement.h"

#include "core/airframe/id_source.h"
#include "core/baseline/gap_numbers.h"
#include "core/numbers/grading.h"

#include <cmath>

namespace rig::bench {
namespace {

constexpr Day kBaselineDay{std::chrono::days{19'800}};

GapInterval inGaps(const numbers::Interval& reading)
{
    const auto um = [](double mm) {
        return Gap::micrometres(static_cast<std::int32_t>(std::lround(1000 * mm)));
    };
    return {um(reading.lower), um(reading.upper)};
}

} // namespace

InventedCoupling::InventedCoupling(int baselineReadings, double sigma, const ReadingKind& kind,
                                   std::uint64_t seed)
    : m_draws{seed}, m_sigma{sigma}, m_kind{kind}, m_mean{0.5 + 0.05 * m_draws.uniform()}
{
    FittingHistory fitting;
    fitting.fitting.begins = kBaselineDay;
    std::vector<GapInterval> gaps;
    for (const auto& reading : readingsOf(baselineReadings, m_mean, sigma, kind, m_draws))
        gaps.push_back(inGaps(reading));
    fitting.baseline = Baseline::from(gaps);
    m_all.history.fittings.push_back(std::move(fitting));
}

void InventedCoupling::rig(double shift, double timesScatter)
{
    const double gap = m_mean + shift + timesScatter * m_sigma * m_draws.normal();
    LaterReading one;
    one.reading.interval = inGaps(readingOf(gap, m_kind));
    one.rigging = static_cast<double>(m_all.readings.size()) + 1;
    one.reading.when = noonOf(kBaselineDay + std::chrono::days{m_all.readings.size() + 1});
    one.score = numbers::scoreOf(inNumbers(one.reading.interval),
                                 *m_all.history.fittings.front().baseline.posterior());
    m_all.readings.push_back(one);
}

FittingMovement InventedCoupling::movement() const
{
    const Day last = kBaselineDay + std::chrono::days{m_all.readings.size() + 1};
    return *movementOf(m_all, {kBaselineDay, last, {}, false, true}, 0);
}

AirframeFacts inventedAirframe(int couplings, int riggings, std::uint64_t seed)
{
    Draws draws{seed};
    IdSource ids{seed};
    AirframeFacts facts;
    facts.airframe.id = {ids.next(0)};
    facts.persons.emplace_back().id = {ids.next(0)};
    facts.gauges.emplace_back().id = {ids.next(0)};
    for (int i = 0; i < couplings; ++i) {
        rig::Coupling coupling; // a fact, not what the coverage is asked of
        coupling.id = {ids.next(0)};
        Fitting fitting;
        fitting.id = {ids.next(0)};
        fitting.coupling = coupling.id;
        fitting.begins = kBaselineDay;
        facts.couplings.push_back(coupling);
        facts.fittings.push_back(fitting);
    }
    const auto read = [&](int coupling, Day day, Purpose purpose) {
        Reading reading;
        reading.id = {ids.next(0)};
        reading.coupling = facts.couplings[static_cast<std::size_t>(coupling)].id;
        reading.fitting = facts.fittings[static_cast<std::size_t>(coupling)].id;
        if (purpose == Purpose::Rigging)
            reading.record = facts.riggingRecords.back().id;
        reading.interval = inGaps(readingOf(0.52 + 0.02 * draws.normal(), kLeaves));
        reading.gauge = facts.gauges.front().id;
        reading.person = facts.persons.front().id;
        reading.purpose = purpose;
        reading.when = noonOf(day);
        facts.readings.push_back({reading, {}});
    };
    for (int i = 0; i < couplings; ++i)
        for (int j = 0; j < 12; ++j)
            read(i, kBaselineDay, Purpose::Baseline);
    for (int rigging = 1; rigging <= riggings; ++rigging) {
        RiggingRecord record;
        record.id = {ids.next(0)};
        record.begins = noonOf(kBaselineDay + std::chrono::days{rigging});
        facts.riggingRecords.push_back(record);
        for (int i = 0; i < couplings; ++i)
            read(i, kBaselineDay + std::chrono::days{rigging}, Purpose::Rigging);
    }
    return facts;
}

} // namespace rig::bench
