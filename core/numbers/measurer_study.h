#pragma once

#include <optional>
#include <span>

namespace rig::numbers {

// One reading of a study in which every person reads every part the same number of times. Labels are any
// integers. Of an interval give the middle.
struct StudyReading
{
    double value = 0;
    int part = 0;
    int person = 0;
};

// Why there are no figures, in the order in which it is looked for.
enum class StudyStatus {
    Ok,
    NotANumber,    // a value is not finite, or the gauge step is negative or not finite
    TooFewParts,   // fewer than two
    TooFewPersons, // fewer than two
    Unbalanced,    // some person did not read some part as often as the others
    TooFewRepeats, // each person read each part only once
    OutOfRange,    // a figure beyond a double's range
};

struct StudyRow
{
    int df = 0;
    double meanSquare = 0;
};

// Standard deviations and limits in the unit of the values, variances and mean squares in its square.
struct MeasurerStudy
{
    StudyRow parts;
    StudyRow persons;
    StudyRow interaction; // of persons with parts
    StudyRow repeats;
    std::optional<double> interactionF; // empty when repeats do not scatter at all
    std::optional<double> interactionP;
    double partVariance = 0; // each 0 where its estimate is negative
    double personVariance = 0;
    double interactionVariance = 0;
    double repeatVariance = 0;
    double repeatSd = 0;        // s_r: one person, one part
    double reproducedSd = 0;    // s_R: any person
    bool limitedByStep = false; // s_r lies below what the gauge's step alone amounts to
    double repeatLimit = 0;     // r: two readings of one person
    double reproducedLimit = 0; // R: readings of two persons
};

struct MeasurerStudyResult
{
    StudyStatus status = StudyStatus::TooFewParts;
    std::optional<MeasurerStudy> study; // there just when the status is Ok
};

// Two-way random analysis of variance with interaction, nothing pooled (docs/method.md F; ISO 5725-2 and
// 5725-3, limits 5725-6, all from memory). The order of readings does not matter. `step` is the step of the
// gauge in the unit of the values, 0 where it does not count: when s_r comes out below step / sqrt(12), the
// standard uncertainty of the step itself (JCGM 100:2008 4.3.7, from memory), r and R are worked out with
// that in place of s_r.
MeasurerStudyResult measurerStudy(std::span<const StudyReading> readings, double step = 0);

// The limit for means of n1 and n2 readings by two persons: sqrt(R^2 - r^2 (1 - 1/(2 n1) - 1/(2 n2))) (ISO
// 5725-6, from memory). Empty unless 0 <= r <= R, both finite, and n1, n2 >= 1.
std::optional<double> limitForMeans(double repeatLimit, double reproducedLimit, int n1, int n2);

} // namespace rig::numbers
