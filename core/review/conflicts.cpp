#include "core/review/conflicts.h"

#include "core/review/decided.h"

#include <algorithm>
#include <tuple>

namespace rig {

namespace {

using Apart = std::function<bool(const IdBytes&, const IdBytes&)>;

// One that was decided is no rival any more, and neither are two that may both stand.
class Deciding
{
public:
    explicit Deciding(std::span<const Decision> decisions)
        : m_decisions{lastOfEach(decisions)}, m_decided{decidedBy(decisions)}
    {
    }

    bool isSetAside(const Rival& rival) const { return m_decided.isSetAside(rival.id); }
    bool isDecided(const Rival& one, const Rival& other) const
    {
        return std::ranges::any_of(m_decisions, [&](const Decision& decision) {
            const auto is = [&](const Rival& first, const Rival& second) {
                return decision.first.bytes == first.id && decision.second.bytes == second.id;
            };
            return decision.kind == one.kind && (is(one, other) || is(other, one));
        });
    }

private:
    std::vector<Decision> m_decisions;
    Decided m_decided;
};

bool mayDiffer(ConflictKind kind, const Rival& one, const Rival& other, const Apart& areApart)
{
    // A table tells nobody who imports it whether the day's rigging is one that is in the file already; two
    // of tables are the same or not as they tell the same time.
    if (one.fromTable || other.fromTable)
        return !(one.fromTable && other.fromTable) || one.isTimed != other.isTimed;
    const bool isKnownByTheChain = kind == ConflictKind::Versions || kind == ConflictKind::Records;
    return !isKnownByTheChain || areApart(one.id, other.id);
}

// Each against the one that counts: the newest of versions, else the one saved first. Records each against
// each.
void takeRivals(std::span<const Rival> rivals, const Deciding& deciding, const Apart& areApart,
                std::vector<Conflict>& into)
{
    const ConflictKind kind = rivals.front().kind;
    const bool lastCounts = kind == ConflictKind::Versions;
    for (std::size_t i = 0; i < rivals.size(); ++i) {
        const bool counts = lastCounts ? i + 1 == rivals.size() : i == 0 || kind == ConflictKind::Records;
        if (!counts)
            continue;
        for (std::size_t j = lastCounts ? 0 : i + 1; j < (lastCounts ? i : rivals.size()); ++j) {
            const Rival& other = rivals[j];
            // A later version of the same line stands for the ones before it.
            const bool isReplaced =
                lastCounts &&
                std::any_of(rivals.begin() + static_cast<std::ptrdiff_t>(j) + 1, rivals.end() - 1,
                            [&](const Rival& later) { return !areApart(other.id, later.id); });
            if (!isReplaced && mayDiffer(kind, rivals[i], other, areApart) &&
                !deciding.isDecided(rivals[i], other))
                into.push_back({kind, other.table, rivals[i].id, other.id, areApart(rivals[i].id, other.id)});
        }
    }
}

} // namespace

bool concerns(const ToldConflict& told, AirframeId airframe)
{
    const auto isOf = [airframe](const FaultyFact& side) {
        return side.airframe == IdBytes{} || side.airframe == airframe.bytes;
    };
    return isOf(told.first) || isOf(told.second);
}

bool concerns(const ToldConflict& told, RecordId record)
{
    return told.first.record == record.bytes || told.second.record == record.bytes;
}

bool areAllApart(std::span<const ToldConflict> open)
{
    return std::ranges::all_of(open, [](const ToldConflict& told) { return told.conflict.areApart; });
}

std::vector<Conflict> openConflicts(std::vector<Rival> rivals, std::span<const Decision> decisions,
                                    const Apart& areApart)
{
    const Deciding deciding{decisions};
    std::erase_if(rivals, [&](const Rival& rival) { return deciding.isSetAside(rival); });
    const auto group = [](const Rival& rival) { return std::tie(rival.kind, rival.table, rival.about); };
    std::ranges::sort(rivals, [&](const Rival& one, const Rival& other) {
        return group(one) != group(other) ? group(one) < group(other) : one.saved < other.saved;
    });
    std::vector<Conflict> conflicts;
    for (std::size_t from = 0; from < rivals.size();) {
        std::size_t to = from + 1;
        while (to < rivals.size() && group(rivals[to]) == group(rivals[from]))
            ++to;
        takeRivals(std::span{rivals}.subspan(from, to - from), deciding, areApart, conflicts);
        from = to;
    }
    return conflicts;
}

} // namespace rig
