#include "core/review/season_review.h"

#include "core/baseline/gap_numbers.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace rig {

namespace {

constexpr int kNobody = -1; // whose reading somebody else copied down, or with a gauge not known

// Small numbers for persons and gauges.
class HandLabels
{
public:
    explicit HandLabels(const AirframeFacts& facts) : m_gauges{static_cast<int>(facts.gauges.size())}
    {
        for (std::size_t i = 0; i < facts.persons.size(); ++i)
            m_personLabels.emplace(facts.persons[i].id, static_cast<int>(i));
        for (std::size_t i = 0; i < facts.gauges.size(); ++i)
            m_gaugeLabels.emplace(facts.gauges[i].id, static_cast<int>(i));
    }

    int person(const Reading& reading) const
    {
        const auto found = m_personLabels.find(reading.person);
        return reading.copiedBy || found == m_personLabels.end() ? kNobody : found->second;
    }
    // A gauge in doubt is another one than it was before.
    int gauge(const Reading& reading, bool inDoubt) const
    {
        const auto found = m_gaugeLabels.find(reading.gauge.value_or(GaugeId{}));
        if (!reading.gauge || found == m_gaugeLabels.end())
            return kNobody;
        return found->second + (inDoubt ? m_gauges : 0);
    }
    int placeOfGauge(int label) const { return label % std::max(1, m_gauges); }

private:
    std::map<PersonId, int> m_personLabels;
    std::map<GaugeId, int> m_gaugeLabels;
    int m_gauges = 0;
};

const numbers::HandOffset* toldIn(const numbers::HandFactor& factor, int label)
{
    const auto found = std::ranges::find(factor.levels, label, &numbers::HandOffset::label);
    const bool isTold = found != factor.levels.end() && label != kNobody && found->isNamed() &&
                        std::abs(found->estimate) >= kLeastOffsetTold;
    return isTold ? &*found : nullptr;
}

double toldOffsetIn(const numbers::HandFactor& factor, int label)
{
    const numbers::HandOffset* offset = toldIn(factor, label);
    return offset ? offset->estimate : 0;
}

// The middle of all gauges that are not in doubt is 0, so that one in doubt makes no other read low.
void centre(numbers::HandFactor& gauges, int undoubted)
{
    double sum = 0;
    int readings = 0;
    for (const numbers::HandOffset& level : gauges.levels)
        if (level.label < undoubted) {
            sum += level.readings * level.estimate;
            readings += level.readings;
        }
    if (readings == 0)
        return;
    const double middle = sum / readings;
    for (numbers::HandOffset& level : gauges.levels) {
        level.estimate -= middle;
        level.interval = {level.interval.lower - middle, level.interval.upper - middle};
    }
}

// The riggings that enter.
std::set<int> riggingsTaken(const AirframeReadings& all)
{
    std::set<int> riggings;
    for (const CouplingReadings& coupling : all.couplings)
        for (const LaterReading& one : coupling.readings)
            if (one.score)
                riggings.insert(static_cast<int>(std::floor(one.rigging)));
    if (riggings.size() <= kRiggingsOfSeason)
        return riggings;
    const std::size_t earlier = riggings.size() - (kRiggingsOfSeason - kEarlierRiggings);
    const std::size_t step = (earlier + kEarlierRiggings - 1) / kEarlierRiggings;
    std::set<int> taken;
    std::size_t place = 0;
    for (const int rigging : riggings) {
        if (place >= earlier || place % step == 0)
            taken.insert(rigging);
        ++place;
    }
    return taken;
}

class SeasonMaker
{
public:
    SeasonMaker(const AirframeFacts& facts, const RiggingNumbers& numbers, AirframeReadings& all)
        : m_facts{facts}, m_numbers{numbers}, m_labels{facts}, m_all{all}
    {
    }

    SeasonReview make()
    {
        takeFittings();
        takeBaselines();
        takeRiggings();
        auto season = numbers::seasonOf(m_given);
        if (!season)
            return {};
        centre(season->offsets.gauges, static_cast<int>(m_facts.gauges.size()));
        SeasonReview review;
        review.hands = season->offsets;
        for (const numbers::SeasonFitting& one : season->fittings) {
            for (const numbers::SingleReading& single : one.singles)
                review.singles.emplace(m_ids[single.reading], single);
            review.fittings.emplace(m_fittings[static_cast<std::size_t>(one.fitting)], one);
        }
        tellDays(*season);
        tellReadings(review);
        return review;
    }

private:
    void takeFittings()
    {
        for (const CouplingReadings& coupling : m_all.couplings)
            for (const FittingHistory& fitting : coupling.history.fittings)
                if (hasGap(coupling.coupling) && fitting.baseline.band()) {
                    m_fittingLabels.emplace(fitting.fitting.id, static_cast<int>(m_fittings.size()));
                    m_fittings.push_back(fitting.fitting.id);
                    m_admitted.push_back(&fitting);
                }
    }

    void take(const Reading& reading, double rigging, int day, bool inDoubt, bool isSecond)
    {
        const auto fitting = m_fittingLabels.find(reading.fitting);
        if (fitting == m_fittingLabels.end())
            return;
        m_given.push_back({inNumbers(reading.interval), rigging, fitting->second, m_labels.person(reading),
                           m_labels.gauge(reading, inDoubt), day, isSecond});
        m_ids.push_back(reading.id);
    }

    // The day's label where no rigging gives it one.
    static int outsideRiggings(const Reading& reading)
    {
        return -static_cast<int>(reading.when.localDay().time_since_epoch().count());
    }

    void takeBaselines()
    {
        for (const KeptReading& kept : m_facts.readings) {
            const Reading& reading = kept.reading;
            if (reading.purpose != Purpose::Baseline)
                continue;
            const auto label = m_fittingLabels.find(reading.fitting);
            if (label == m_fittingLabels.end())
                continue;
            const FittingHistory& fitting = *m_admitted[static_cast<std::size_t>(label->second)];
            if (fitting.admitted.contains(reading.id) && !fitting.inDoubt.contains(reading.id))
                take(reading, 0, outsideRiggings(reading), false, false);
        }
    }

    void takeRiggings()
    {
        const std::set<int> taken = riggingsTaken(m_all);
        for (const CouplingReadings& coupling : m_all.couplings) {
            for (const bool isSecond : {false, true})
                for (const LaterReading& one : isSecond ? coupling.others : coupling.readings)
                    if (one.score && taken.contains(static_cast<int>(std::floor(one.rigging))))
                        take(one.reading, one.rigging, dayOf(one.reading), one.inDoubt,
                             isSecond || one.inDoubt);
        }
    }

    int dayOf(const Reading& reading) const
    {
        const auto number = m_numbers.of(reading);
        return number ? *number : outsideRiggings(reading);
    }

    void tellDays(const numbers::Season& season)
    {
        std::map<int, const numbers::SeasonDay*> told;
        for (const numbers::SeasonDay& day : season.days)
            told.emplace(day.day, &day);
        for (DayShift& shift : m_all.shifts)
            if (const auto day = told.find(shift.rigging); day != told.end()) {
                shift.shift = day->second->shift;
                shift.millimetres = day->second->median;
                if (shift.shift.isCalled)
                    explain(shift, day->second->explainedBy, season.offsets);
            }
    }

    // Of several hands of the day with a told offset the one with the largest; a trifle accuses nobody.
    void explain(DayShift& shift, numbers::ExplainedBy by, const numbers::HandOffsets& hands) const
    {
        using enum numbers::ExplainedBy;
        double mostOfPerson = 0;
        double mostOfGauge = 0;
        for (const numbers::SeasonReading& reading : m_given) {
            if (reading.day != shift.rigging)
                continue;
            const auto* person = toldIn(hands.persons, reading.person);
            if (person && by != Gauge && by != Nothing && std::abs(person->estimate) > mostOfPerson) {
                mostOfPerson = std::abs(person->estimate);
                shift.ofPerson = m_facts.persons[static_cast<std::size_t>(reading.person)].id;
            }
            const auto* gauge = toldIn(hands.gauges, reading.gauge);
            if (gauge && by != Person && by != Nothing && std::abs(gauge->estimate) > mostOfGauge) {
                mostOfGauge = std::abs(gauge->estimate);
                shift.ofGauge =
                    m_facts.gauges[static_cast<std::size_t>(m_labels.placeOfGauge(reading.gauge))].id;
            }
        }
    }

    void tellReadings(const SeasonReview& review)
    {
        std::map<int, double> unexplained; // mm, by rigging
        for (const DayShift& day : m_all.shifts)
            if (day.shift.isCalled && !day.ofGauge && !day.ofPerson)
                unexplained.emplace(day.rigging, day.millimetres);
        for (CouplingReadings& coupling : m_all.couplings)
            for (std::vector<LaterReading>* readings : {&coupling.readings, &coupling.others}) {
                for (LaterReading& one : *readings) {
                    one.person = toldOffsetIn(review.hands.persons, m_labels.person(one.reading));
                    one.gauge = toldOffsetIn(review.hands.gauges, m_labels.gauge(one.reading, one.inDoubt));
                    if (const auto day = unexplained.find(dayOf(one.reading)); day != unexplained.end())
                        one.day = day->second;
                }
                tellPaths(review, *readings);
            }
    }

    static void tellPaths(const SeasonReview& review, std::vector<LaterReading>& readings)
    {
        std::map<FittingId, std::vector<LaterReading*>> byFitting;
        for (LaterReading& one : readings)
            if (one.score)
                byFitting[one.reading.fitting].push_back(&one);
        for (auto& [id, of] : byFitting) {
            const auto fitting = review.fittings.find(id);
            if (fitting == review.fittings.end())
                continue;
            std::ranges::stable_sort(of, {}, &LaterReading::rigging);
            std::vector<double> riggings;
            for (const LaterReading* one : of)
                riggings.push_back(one->rigging);
            const std::vector<double> means = fitting->second.movement.meansAt(riggings);
            for (std::size_t i = 0; i < of.size(); ++i)
                of[i]->path = means[i];
        }
    }

    const AirframeFacts& m_facts;
    const RiggingNumbers& m_numbers;
    HandLabels m_labels;
    AirframeReadings& m_all;
    std::map<FittingId, int> m_fittingLabels;
    std::vector<FittingId> m_fittings;             // by label
    std::vector<const FittingHistory*> m_admitted; // likewise
    std::vector<numbers::SeasonReading> m_given;
    std::vector<ReadingId> m_ids; // of those given
};

} // namespace

SeasonReview seasonReviewOf(const AirframeFacts& facts, const RiggingNumbers& numbers, AirframeReadings& all)
{
    return SeasonMaker{facts, numbers, all}.make();
}

SeasonUntil seasonUntil(const AirframeFacts& facts, Day last, const HistoryOfCoupling& historyOfCoupling)
{
    SeasonUntil season{last, RiggingNumbers{facts}, {}, {}};
    season.readings = readingsUntil(facts, season.numbers, last, historyOfCoupling);
    season.season = seasonReviewOf(facts, season.numbers, season.readings);
    return season;
}

} // namespace rig
