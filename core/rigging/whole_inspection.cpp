#include "core/rigging/whole_inspection.h"

#include "core/rigging/rigging_flow.h"

#include <algorithm>

namespace rig {

namespace {

bool isToldLater(const Check& /*check*/)
{
    return false;
}

bool isToldLater(const Reading& reading)
{
    return reading.corrects.has_value();
}

class AskedPart
{
public:
    AskedPart(const InspectionAsked& asked, const RiggingRecord& record)
        : m_asked{asked}, m_isFromPaper{record.isFromPaper()}
    {
    }

    template <typename Fact> bool lacks(const Fact& fact) const
    {
        const SaveOrder saved = saveOrderOf(fact);
        const bool isLater = m_isFromPaper || isToldLater(fact);
        return (m_asked.until && *m_asked.until < saved) ||
               std::ranges::any_of(m_asked.since, [&](const LeftPartSeated& left) {
                   return isLater || left.isToldLater ? fact.when <= left.when : saved < left.saved;
               });
    }

private:
    const InspectionAsked& m_asked;
    bool m_isFromPaper;
};

} // namespace

LeftPartSeated::LeftPartSeated(const Reading& shown)
    : when{shown.when}, saved{saveOrderOf(shown)}, isToldLater{shown.when.localDay() <
                                                               shown.stamp.when.localDay()}
{
}

LeftPartSeated::LeftPartSeated(const Question& asked) : when{asked.stamp.when}, saved{saveOrderOf(asked)} {}

std::optional<InspectedBy> whollyInspected(RecordContent content, const Coupling& coupling,
                                           const InspectionAsked& asked)
{
    const AskedPart part{asked, content.record};
    const auto isBeside = [&part](const auto& fact) { return part.lacks(fact); };
    std::erase_if(content.checks, isBeside);
    std::erase_if(content.readings, isBeside);
    const CouplingFlow first = flowOf(content, coupling, Turn::First);
    const CouplingFlow second = flowOf(content, coupling, Turn::Second);
    if (!first.isDone() || !second.isDone() || first.hasDoubt() || second.hasDoubt())
        return std::nullopt;
    const Check* last[2] = {nullptr, nullptr};
    for (const Check& check : content.checks)
        if (check.coupling == coupling.id)
            last[check.turn == Turn::First ? 0 : 1] = &check;
    if (last[0]->person == last[1]->person)
        return std::nullopt;
    return InspectedBy{last[0]->person, last[1]->person, std::max(last[0]->when, last[1]->when)};
}

} // namespace rig
