#include "core/numbers/offsets.h"

#include "core/numbers/distributions.h"
#include "core/numbers/pivoted_qr.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace rig::numbers {
namespace {

constexpr double kInsideTail = 0.975; // of a 95 % interval

using Labels = std::vector<int>;

Labels labelsOf(std::span<const LabelledScore> scores, int LabelledScore::*field)
{
    Labels labels;
    for (const LabelledScore& score : scores)
        labels.push_back(score.*field);
    return labels;
}

std::map<int, int> countedLevels(const Labels& labels)
{
    std::map<int, int> levels;
    for (const int label : labels)
        ++levels[label];
    return levels;
}

// The column less the mean of each day, which takes the days' effects out exactly.
Column withoutDays(Column column, const Labels& days)
{
    struct Sum
    {
        double total = 0;
        double count = 0;
    };
    std::map<int, Sum> sums;
    for (std::size_t i = 0; i < days.size(); ++i) {
        sums[days[i]].total += column[i];
        ++sums[days[i]].count;
    }
    for (std::size_t i = 0; i < days.size(); ++i)
        column[i] -= sums[days[i]].total / sums[days[i]].count;
    return column;
}

// One column for each level, in the order of their labels: 1 where a reading has it, days taken out.
std::vector<Column> columnsOf(const Labels& factor, const Labels& days)
{
    std::vector<Column> columns;
    for (const auto& [label, count] : countedLevels(factor)) {
        Column column;
        for (const int own : factor)
            column.push_back(own == label ? 1 : 0);
        columns.push_back(withoutDays(std::move(column), days));
    }
    return columns;
}

// A column in the part of space that `nuisance` cannot reach.
Column beyond(const PivotedQr& nuisance, Column column)
{
    column = nuisance.turned(std::move(column));
    column.erase(column.begin(), column.begin() + static_cast<std::ptrdiff_t>(nuisance.rank()));
    return column;
}

// A factor with everything else taken out of it.
struct Isolated
{
    PivotedQr nuisance;
    PivotedQr own;
};

Isolated isolated(const Labels& factor, const Labels& other, const Labels& days)
{
    // Columns are at most as long as the root of their readings; rounding leaves some 1e-15 of that.
    const double nothing = 1e-9 * std::sqrt(static_cast<double>(factor.size()));
    const PivotedQr nuisance{columnsOf(other, days), nothing};
    std::vector<Column> own;
    for (Column& column : columnsOf(factor, days))
        own.push_back(beyond(nuisance, std::move(column)));
    return {nuisance, PivotedQr{std::move(own), nothing}};
}

// Every difference between its levels can be told from everything else just when one level's worth of rank is
// missing and no more.
bool isSeparable(const Labels& factor, const Labels& other, const Labels& days)
{
    return isolated(factor, other, days).own.rank() + 1 == countedLevels(factor).size();
}

struct Residual
{
    int degreesOfFreedom = 0;
    double variance = 0;
};

Residual residualOf(const Isolated& fit, const Column& scores, const Labels& days)
{
    const Column left = beyond(fit.own, beyond(fit.nuisance, scores));
    double squares = 0;
    for (const double entry : left)
        squares += entry * entry;
    const auto degrees = static_cast<int>(left.size()) - static_cast<int>(countedLevels(days).size());
    return {degrees, degrees > 0 ? squares / degrees : 0};
}

std::vector<LevelOffset> levelsOf(const Labels& factor, const Isolated& fit, const Column& scores,
                                  const Residual& residual)
{
    const std::map<int, int> counts = countedLevels(factor);
    const Column effects = fit.own.solvedWith(fit.own.turned(beyond(fit.nuisance, scores)));
    const double reach = studentQuantile(kInsideTail, residual.degreesOfFreedom);
    std::vector<int> labels; // of the basis; the level left out of it has the effect 0
    for (const std::size_t place : fit.own.basis())
        labels.push_back(std::next(counts.begin(), static_cast<std::ptrdiff_t>(place))->first);

    std::vector<LevelOffset> levels;
    for (const auto& [label, count] : counts) {
        if (count < kReadingsForOffset)
            continue;
        Column contrast; // this level less the mean over readings
        LevelOffset level{label, count, 0, 0, {}};
        for (std::size_t i = 0; i < labels.size(); ++i) {
            const double share = counts.at(labels[i]) / static_cast<double>(factor.size());
            contrast.push_back((labels[i] == label ? 1 : 0) - share);
            level.estimate += contrast[i] * effects[i];
        }
        double squares = 0;
        for (const double entry : fit.own.solvedAcross(contrast))
            squares += entry * entry;
        level.standardError = std::sqrt(residual.variance * squares);
        level.interval = {level.estimate - reach * level.standardError,
                          level.estimate + reach * level.standardError};
        levels.push_back(level);
    }
    return levels;
}

struct FactorDesign
{
    Labels factor;
    OffsetFactor otherName;
    Labels other;
    Labels days;
    Labels noFactor; // one level: the same as none
};

FactorOffsets factorOffsets(const FactorDesign& design, const Column& scores, const Residual& residual)
{
    FactorOffsets offsets;
    if (countedLevels(design.factor).size() < 2)
        return offsets;
    const Isolated fit = isolated(design.factor, design.other, design.days);
    if (fit.own.rank() + 1 < countedLevels(design.factor).size()) {
        offsets.state = OffsetsState::CannotBeToldApart;
        if (isSeparable(design.factor, design.noFactor, design.days))
            offsets.hiddenBehind.push_back(design.otherName);
        if (isSeparable(design.factor, design.other, design.noFactor))
            offsets.hiddenBehind.push_back(OffsetFactor::Day);
        return offsets;
    }
    if (residual.degreesOfFreedom < 1) {
        offsets.state = OffsetsState::NoDegreesOfFreedom;
        return offsets;
    }
    offsets.state = OffsetsState::Estimated;
    offsets.levels = levelsOf(design.factor, fit, scores, residual);
    return offsets;
}

} // namespace

std::optional<Offsets> offsetsOf(std::span<const LabelledScore> scores)
{
    const auto isFinite = [](const LabelledScore& score) { return std::isfinite(score.score); };
    if (scores.empty() || !std::ranges::all_of(scores, isFinite))
        return std::nullopt;
    const Labels persons = labelsOf(scores, &LabelledScore::person);
    const Labels leafSets = labelsOf(scores, &LabelledScore::leafSet);
    const Labels days = labelsOf(scores, &LabelledScore::day);
    const Labels none(scores.size(), 0);
    Column column;
    for (const LabelledScore& score : scores)
        column.push_back(score.score);
    column = withoutDays(std::move(column), days);

    const Residual residual = residualOf(isolated(persons, leafSets, days), column, days);
    if (!std::isfinite(residual.variance))
        return std::nullopt;
    Offsets offsets;
    offsets.degreesOfFreedom = residual.degreesOfFreedom;
    offsets.residualDeviation = std::sqrt(residual.variance);
    offsets.persons = factorOffsets({persons, OffsetFactor::LeafSet, leafSets, days, none}, column, residual);
    offsets.leafSets = factorOffsets({leafSets, OffsetFactor::Person, persons, days, none}, column, residual);
    return offsets;
}

} // namespace rig::numbers
