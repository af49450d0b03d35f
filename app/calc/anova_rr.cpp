#include "app/calc/fields.h"
#include "core/numbers/measurer_study.h"

namespace rig::calc {
namespace {

using numbers::StudyStatus;

const char* whyNot(StudyStatus status)
{
    switch (status) {
    case StudyStatus::Ok:
        return "";
    case StudyStatus::NotANumber:
        return "\"y\" has an entry that is not a number: leave that reading's part out";
    case StudyStatus::TooFewParts:
        return "\"part\" has too few parts: give readings of 2 or more";
    case StudyStatus::TooFewPersons:
        return "\"operator\" has too few persons: give readings by 2 or more";
    case StudyStatus::Unbalanced:
        return "\"part\" and \"operator\" are unbalanced: give the same number of readings for each person "
               "on "
               "each part";
    case StudyStatus::TooFewRepeats:
        return "\"y\" has one reading for each person on each part: give 2 or more";
    case StudyStatus::OutOfRange:
        return "\"y\" has figures too large or too small to compute with: give them in another unit";
    }
    return "";
}

std::vector<numbers::StudyReading> studyReadings(CaseInput& input)
{
    const std::vector<double> values = input.neededNumbersIn("y");
    const std::vector<int> parts = input.labels("part");
    const std::vector<int> persons = input.labels("operator");
    if (parts.size() != values.size())
        input.fail("\"part\" has not as many entries as \"y\": give one for each reading");
    if (persons.size() != values.size())
        input.fail("\"operator\" has not as many entries as \"y\": give one for each reading");
    std::vector<numbers::StudyReading> readings;
    for (std::size_t i = 0; input.isGood() && i < values.size(); ++i)
        readings.push_back({values[i], parts[i], persons[i]});
    return readings;
}

Output studySummary(const numbers::MeasurerStudy& study)
{
    return {{"df", {study.parts.df, study.persons.df, study.interaction.df, study.repeats.df}},
            {"ms",
             {study.parts.meanSquare, study.persons.meanSquare, study.interaction.meanSquare,
              study.repeats.meanSquare}},
            {"F_interaction", orNull(study.interactionF)},
            {"p_interaction", orNull(study.interactionP)},
            {"var_repeatability", study.repeatVariance},
            {"var_interaction", study.interactionVariance},
            {"var_operator", study.personVariance},
            {"var_part", study.partVariance},
            {"s_r", study.repeatSd},
            {"s_R", study.reproducedSd},
            {"repeatability_limit", study.repeatLimit},
            {"reproducibility_limit", study.reproducedLimit}};
}

} // namespace

// {y, part, operator, step?}; with the step of the gauge also whether it limits s_r. df and ms are of parts,
// persons, their interaction and repeats.
Output answerMeasurerStudy(CaseInput& input)
{
    const std::vector<numbers::StudyReading> readings = studyReadings(input);
    const double step = input.size("step", 0);
    if (!input.isGood())
        return {};
    const auto [status, study] = numbers::measurerStudy(readings, step);
    if (!study) {
        input.fail(whyNot(status));
        return {};
    }
    Output output = studySummary(*study);
    if (step > 0)
        output["limited_by_step"] = study->limitedByStep;
    return output;
}

} // namespace rig::calc
