#include "core/numbers/hand_offsets.h"

#include "core/numbers/distributions.h"
#include "core/numbers/mixed_fit.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace rig::numbers {
namespace {

constexpr double kReach = 0.975; // the upper end of a 95 % interval

using Counts = std::map<int, int>; // readings by label

Counts countsOf(std::span<const HandReading> readings, int HandReading::*factor)
{
    Counts counts;
    for (const HandReading& reading : readings)
        ++counts[reading.*factor];
    return counts;
}

// The readings whose person and gauge both have enough of them.
std::vector<HandReading> frequentOnly(std::span<const HandReading> readings)
{
    std::vector<HandReading> kept{readings.begin(), readings.end()};
    for (std::size_t before = kept.size() + 1; kept.size() < before;) {
        before = kept.size();
        const Counts persons = countsOf(kept, &HandReading::person);
        const Counts gauges = countsOf(kept, &HandReading::gauge);
        std::erase_if(kept, [&](const HandReading& reading) {
            return persons.at(reading.person) < kReadingsForOffset ||
                   gauges.at(reading.gauge) < kReadingsForOffset;
        });
    }
    return kept;
}

// Persons and gauges that readings join, directly or through others.
class Company
{
public:
    explicit Company(std::span<const HandReading> readings)
    {
        for (const HandReading& reading : readings)
            ++m_pairs[{reading.person, reading.gauge}];
        for (bool grows = true; grows;) {
            grows = false;
            for (const auto& [pair, count] : m_pairs) {
                const int least = std::min(ofPerson(pair.first), ofGauge(pair.second));
                grows = grows || ofPerson(pair.first) != least || ofGauge(pair.second) != least;
                m_ofPerson[pair.first] = m_ofGauge[pair.second] = least;
            }
        }
    }

    // The company with the most readings.
    int largest() const
    {
        std::map<int, int> sizes;
        for (const auto& [pair, count] : m_pairs)
            sizes[m_ofPerson.at(pair.first)] += count;
        const auto most =
            std::ranges::max_element(sizes, [](const auto& a, const auto& b) { return a.second < b.second; });
        return most->first;
    }
    bool holds(int company, const HandReading& reading) const
    {
        return m_ofPerson.at(reading.person) == company;
    }

private:
    // Until they are joined, each person is a company of its own.
    int ofPerson(int person)
    {
        return m_ofPerson.emplace(person, static_cast<int>(m_ofPerson.size())).first->second;
    }
    int ofGauge(int gauge) { return m_ofGauge.emplace(gauge, kNoCompany).first->second; }

    static constexpr int kNoCompany = 1 << 30;
    std::map<std::pair<int, int>, int> m_pairs;
    std::map<int, int> m_ofPerson;
    std::map<int, int> m_ofGauge;
};

// Which column stands for a level; the first level of a factor has none.
struct LevelColumns
{
    Counts counts;
    std::map<int, std::size_t> columns;
    double readings = 0;
};

class HandDesign
{
public:
    explicit HandDesign(std::span<const HandReading> readings) : m_readings{readings}
    {
        addPaths();
        m_persons = added(&HandReading::person);
        m_gauges = added(&HandReading::gauge);
    }

    const std::vector<Column>& columns() const { return m_columns; }
    const LevelColumns& persons() const { return m_persons; }
    const LevelColumns& gauges() const { return m_gauges; }

private:
    Column& blank() { return m_columns.emplace_back(m_readings.size(), 0.0); }

    // A level for each coupling, and a column for each shape that some of its readings have.
    void addPaths()
    {
        std::map<std::size_t, std::vector<std::size_t>> byCoupling;
        for (std::size_t i = 0; i < m_readings.size(); ++i)
            byCoupling[m_readings[i].coupling].push_back(i);
        for (const auto& [coupling, own] : byCoupling) {
            Column& level = blank();
            for (const std::size_t i : own)
                level[i] = 1;
            for (std::size_t shape = 0; shape < 2; ++shape) {
                const auto isThere = [&](std::size_t i) { return m_readings[i].shape[shape] != 0; };
                if (std::ranges::none_of(own, isThere))
                    continue;
                Column& column = blank();
                for (const std::size_t i : own)
                    column[i] = m_readings[i].shape[shape];
            }
        }
    }

    LevelColumns added(int HandReading::*factor)
    {
        LevelColumns levels{countsOf(m_readings, factor), {}, static_cast<double>(m_readings.size())};
        for (auto level = std::next(levels.counts.begin()); level != levels.counts.end(); ++level) {
            levels.columns[level->first] = m_columns.size();
            Column& column = blank();
            for (std::size_t i = 0; i < m_readings.size(); ++i)
                column[i] = m_readings[i].*factor == level->first ? 1 : 0;
        }
        return levels;
    }

    std::span<const HandReading> m_readings;
    std::vector<Column> m_columns;
    LevelColumns m_persons;
    LevelColumns m_gauges;
};

// Each level less the mean over readings.
void addLevels(HandFactor& factor, const LevelColumns& levels, const MixedFit& fit)
{
    if (levels.counts.size() < 2)
        return;
    factor.state = OffsetsState::Estimated;
    for (const auto& [label, count] : levels.counts) {
        std::vector<double> along(fit.effects().size(), 0.0);
        for (const auto& [other, column] : levels.columns)
            along[column] = (other == label ? 1 : 0) - levels.counts.at(other) / levels.readings;
        const MixedContrast contrast = fit.contrast(along);
        HandOffset offset{label, count, contrast.estimate, contrast.standardError, contrast.degreesOfFreedom,
                          {}};
        const double reach = studentQuantile(kReach, offset.degreesOfFreedom) * offset.standardError;
        offset.interval = {offset.estimate - reach, offset.estimate + reach};
        factor.levels.push_back(offset);
    }
}

// What the comparison leaves out of a factor although it has readings enough.
void addHidden(HandFactor& factor, OffsetFactor behind, const Counts& frequent, const Counts& compared)
{
    for (const auto& [label, count] : frequent)
        if (!compared.contains(label))
            factor.hidden.push_back(label);
    if (factor.hidden.empty())
        return;
    factor.hiddenBehind.push_back(behind);
    if (compared.size() < 2)
        factor.state = OffsetsState::CannotBeToldApart;
}

std::optional<MixedFit> fittedTo(std::span<const HandReading> readings, const HandDesign& design)
{
    std::vector<GroupedValue> values;
    for (const HandReading& reading : readings)
        values.push_back({reading.left, 1 / reading.variance, reading.day});
    return MixedFit::of(values, design.columns());
}

void hideBoth(HandOffsets& offsets, const HandDesign& design)
{
    if (design.persons().counts.size() > 1)
        offsets.persons.state = OffsetsState::CannotBeToldApart;
    if (design.gauges().counts.size() > 1)
        offsets.gauges.state = OffsetsState::CannotBeToldApart;
}

} // namespace

double HandFactor::offsetOf(int label) const
{
    const auto level = std::ranges::find(levels, label, &HandOffset::label);
    return level == levels.end() ? 0 : level->estimate;
}

std::optional<HandOffsets> handOffsetsOf(std::span<const HandReading> readings)
{
    const auto isUsable = [](const HandReading& reading) {
        return std::isfinite(reading.left) && reading.variance > 0 && std::isfinite(reading.variance);
    };
    if (!std::ranges::all_of(readings, isUsable))
        return std::nullopt;
    std::vector<HandReading> compared = frequentOnly(readings);
    HandOffsets offsets;
    if (compared.empty())
        return offsets;
    const Counts persons = countsOf(compared, &HandReading::person);
    const Counts gauges = countsOf(compared, &HandReading::gauge);
    const Company company{compared};
    std::erase_if(compared, [&, largest = company.largest()](const HandReading& reading) {
        return !company.holds(largest, reading);
    });

    const HandDesign design{compared};
    addHidden(offsets.persons, OffsetFactor::LeafSet, persons, design.persons().counts);
    addHidden(offsets.gauges, OffsetFactor::Person, gauges, design.gauges().counts);
    const auto fit = fittedTo(compared, design);
    if (!fit) {
        hideBoth(offsets, design);
        return offsets;
    }
    offsets.dayDeviation = std::sqrt(fit->groupVariance());
    addLevels(offsets.persons, design.persons(), *fit);
    addLevels(offsets.gauges, design.gauges(), *fit);
    return offsets;
}

} // namespace rig::numbers
