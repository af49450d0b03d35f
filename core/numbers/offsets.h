#pragma once

#include "core/numbers/interval.h"

#include <optional>
#include <span>
#include <vector>

namespace rig::numbers {

// A score of a reading after freezing, and who read it, with what, on which occasion: labels, equal or not.
struct LabelledScore
{
    double score = 0;
    int person = 0;
    int leafSet = 0;
    int day = 0;
};

enum class OffsetFactor { Person, LeafSet, Day };

// How far the readings of one person, or with one leaf set, lie from all of them, the other factors allowed
// for. In units of the score, which have no length.
struct LevelOffset
{
    int label = 0;
    int readings = 0;
    double estimate = 0;
    double standardError = 0;
    Interval interval; // 95 %, Student's t with Offsets::degreesOfFreedom
};

enum class OffsetsState {
    OneLevel,           // nothing to compare: nothing is claimed
    CannotBeToldApart,  // at least one difference within the factor is also one within others
    NoDegreesOfFreedom, // no reading is left over to judge the fit by
    Estimated,
};

inline constexpr int kReadingsForOffset = 10;

struct FactorOffsets
{
    OffsetsState state = OffsetsState::OneLevel;
    // When Estimated: levels of kReadingsForOffset readings or more, by label. May be empty.
    std::vector<LevelOffset> levels;
    // When it cannot be told apart: each factor but for which it could. Empty when it takes more than one.
    std::vector<OffsetFactor> hiddenBehind;
};

struct Offsets
{
    FactorOffsets persons;
    FactorOffsets leafSets;
    int degreesOfFreedom = 0;     // readings less the rank of the whole model
    double residualDeviation = 0; // 0 without degrees of freedom
};

// Additive model person + leaf set + rigging day by least squares; each factor's offsets, weighted by its
// readings, add up to 0 (docs/method.md J). Days are only allowed for, as fixed effects: a factor that never
// changes within a day cannot be told from the days. Householder QR with column pivoting after the days'
// means are taken out (Golub & Van Loan, Matrix Computations, 5.2 and 5.4, from memory). Empty without
// scores, or when one is not finite or too large to square.
std::optional<Offsets> offsetsOf(std::span<const LabelledScore> scores);

} // namespace rig::numbers
