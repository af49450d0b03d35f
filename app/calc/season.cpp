#include "core/numbers/season.h"

#include "app/calc/movement_fields.h"

namespace rig::calc {
namespace {

using numbers::Season;

struct SeasonInput
{
    std::vector<numbers::SeasonReading> readings;
    nlohmann::json couplings;
    nlohmann::json persons;
    nlohmann::json gauges;
    nlohmann::json days;
};

const nlohmann::json& nameIn(const nlohmann::json& names, int label)
{
    return names[static_cast<std::size_t>(label)];
}

SeasonInput seasonIn(CaseInput& input)
{
    const std::vector<numbers::Interval> intervals = input.readings("readings");
    const auto riggings = input.numbersOrNull("rigging");
    const std::vector<int> couplings = input.labels("coupling");
    const std::vector<int> persons = input.labels("person");
    const std::vector<int> gauges = input.labels("gauge");
    const std::vector<int> days = input.labels("day");
    const std::vector<bool> seconds = input.flags("second", intervals.size());
    for (const std::size_t count :
         {riggings.size(), couplings.size(), persons.size(), gauges.size(), days.size(), seconds.size()})
        if (count != intervals.size())
            input.fail(
                "\"rigging\", \"coupling\", \"person\", \"gauge\", \"day\" and \"second\" need one entry for "
                "each of \"readings\"");
    if (!input.isGood())
        return {};
    SeasonInput season{{},
                       input.labelNames("coupling"),
                       input.labelNames("person"),
                       input.labelNames("gauge"),
                       input.labelNames("day")};
    for (std::size_t i = 0; i < intervals.size(); ++i)
        season.readings.push_back({intervals[i], riggings[i].value_or(0), couplings[i], persons[i], gauges[i],
                                   days[i], seconds[i]});
    return season;
}

const char* explainerName(numbers::ExplainedBy by)
{
    using numbers::ExplainedBy;
    switch (by) {
    case ExplainedBy::Nothing:
        return "nothing";
    case ExplainedBy::Person:
        return "person";
    case ExplainedBy::Gauge:
        return "gauge";
    case ExplainedBy::Both:
        return "person and gauge";
    }
    return "";
}

// The kind by name, or that it moved and how is not yet told.
const char* kindTold(const numbers::SeasonFitting& fitting)
{
    const numbers::KindChances& chances = fitting.movement.first;
    if (!fitting.isTold())
        return "steady";
    if (chances.step >= numbers::kKindNamed)
        return "step";
    return chances.drift >= numbers::kKindNamed ? "drift" : "step-or-drift";
}

Output scatterFields(const std::optional<numbers::ScatterChange>& scatter, int couplings)
{
    if (!scatter)
        return nullptr;
    return {{"now", scatter->now},
            {"before", scatter->before},
            {"ratio", scatter->ratio()},
            {"chance_grown", scatter->chanceGrown},
            {"said_to_have_grown", scatter->hasGrown(couplings)}};
}

Output singleFields(const std::vector<numbers::SingleReading>& singles)
{
    Output list = Output::array();
    for (const numbers::SingleReading& single : singles)
        list.push_back({{"reading", single.reading},
                        {"away_mm", single.away},
                        {"away_scatters", single.scatters},
                        {"explained_by", explainerName(single.explainedBy)}});
    return list;
}

const char* stateName(numbers::OffsetsState state)
{
    using numbers::OffsetsState;
    switch (state) {
    case OffsetsState::OneLevel:
        return "nothing to compare";
    case OffsetsState::CannotBeToldApart:
        return "cannot be told apart";
    case OffsetsState::Estimated:
        return "estimated";
    }
    return "";
}

Output handFields(const numbers::HandFactor& factor, const nlohmann::json& names)
{
    Output levels = Output::array();
    for (const numbers::HandOffset& level : factor.levels)
        levels.push_back({{"who", nameIn(names, level.label)},
                          {"n", level.readings},
                          {"offset_mm", level.estimate},
                          {"ci95", pairOf(level.interval)},
                          {"df", level.degreesOfFreedom},
                          {"named", level.isNamed()}});
    Output hidden = Output::array();
    for (const int label : factor.hidden)
        hidden.push_back(Output(nameIn(names, label)));
    return {{"state", stateName(factor.state)}, {"levels", levels}, {"not_told_apart", hidden}};
}

Output dayFields(const std::vector<numbers::SeasonDay>& days, const nlohmann::json& names)
{
    Output list = Output::array();
    for (const numbers::SeasonDay& day : days) {
        if (!day.shift.isCalled)
            continue;
        list.push_back({{"day", nameIn(names, day.day)},
                        {"couplings", day.shift.scores},
                        {"median_mm", day.median},
                        {"z", day.shift.z},
                        {"explained_by", explainerName(day.explainedBy)}});
    }
    return list;
}

} // namespace

// A season of an airframe: "readings" as pairs, and for each "rigging" (its number, null in a baseline),
// "coupling" (one fitting of it), "person", "gauge" and "day"; "second" is true for a further reading of the
// same joint on the same rigging. Places in "single" count from 0 in "readings".
Output answerSeason(CaseInput& input)
{
    const SeasonInput given = seasonIn(input);
    if (!input.isGood())
        return {};
    const auto season = numbers::seasonOf(given.readings);
    if (!season) {
        input.fail(
            "\"readings\" tell of no path: give some that are closed, in order and of sizes that occur");
        return {};
    }
    const auto couplings = static_cast<int>(season->fittings.size());
    Output fittings = Output::array();
    for (const numbers::SeasonFitting& fitting : season->fittings) {
        Output fields{{"coupling", nameIn(given.couplings, fitting.fitting)}, {"kind", kindTold(fitting)}};
        fields.update(movementFields(fitting.movement));
        fields["scatter"] = scatterFields(fitting.scatter, couplings);
        fields["single"] = singleFields(fitting.singles);
        fittings.push_back(fields);
    }
    return {{"couplings", fittings},
            {"persons", handFields(season->offsets.persons, given.persons)},
            {"gauges", handFields(season->offsets.gauges, given.gauges)},
            {"day_deviation_mm", season->offsets.dayDeviation},
            {"days", dayFields(season->days, given.days)},
            {"turns", season->turns},
            {"settled", season->hasSettled}};
}

} // namespace rig::calc
