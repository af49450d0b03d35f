#include "app/pages/setup/setup_view.h"

#include <algorithm>

namespace rig {

namespace {

// Two names stand under every record; docs/terms.md, second person.
constexpr std::size_t kFewestPeople = 2;

constexpr std::array<SetUpPart, 5> kGuidedWay{SetUpPart::Airframe, SetUpPart::Couplings, SetUpPart::Gauges,
                                              SetUpPart::People, SetUpPart::BaselineDay};

template <typename Rows, typename Wanted> int countOf(const Rows& rows, Wanted wanted)
{
    return static_cast<int>(std::ranges::count_if(rows, wanted));
}

bool isOfABaselineDay(const CouplingRow& row)
{
    return row.coupling.inUse && hasGap(row.coupling);
}

} // namespace

int SetUpView::couplingsInUse() const
{
    return countOf(couplings, [](const CouplingRow& row) { return row.coupling.inUse; });
}

int SetUpView::couplingsWithGap() const
{
    return countOf(couplings, isOfABaselineDay);
}

int SetUpView::couplingsWithBand() const
{
    return countOf(couplings, [](const CouplingRow& row) { return isOfABaselineDay(row) && row.hasBand; });
}

int SetUpView::couplingsShownPartSeated() const
{
    return countOf(couplings,
                   [](const CouplingRow& row) { return isOfABaselineDay(row) && row.wasShownPartSeated; });
}

int SetUpView::gaugesInUse() const
{
    return countOf(gauges, [](const GaugeRow& row) { return row.gauge.inUse; });
}

int SetUpView::surfacesInUse() const
{
    return countOf(surfaces, [](const Surface& one) { return one.inUse; });
}

bool SetUpView::isDone(SetUpPart part) const
{
    switch (part) {
    case SetUpPart::Airframe:
        return airframe.has_value();
    case SetUpPart::Couplings:
        return couplingsInUse() > 0;
    case SetUpPart::Surfaces:
        return surfacesInUse() > 0;
    case SetUpPart::Gauges:
        return gaugesInUse() > 0;
    case SetUpPart::People:
        return persons.size() >= kFewestPeople;
    case SetUpPart::Events:
        return !events.empty();
    case SetUpPart::BaselineDay:
        return couplingsInUse() > 0 && couplingsWithBand() == couplingsWithGap();
    case SetUpPart::Paper:
        return false; // nothing of it is ever done once for all
    case SetUpPart::Demonstration:
        break;
    }
    return couplingsInUse() > 0 && couplingsShownPartSeated() == couplingsWithGap();
}

bool SetUpView::mayRig() const
{
    return couplingsInUse() > 0 && isDone(SetUpPart::People) &&
           (couplingsWithGap() == 0 || isDone(SetUpPart::Gauges));
}

std::optional<SetUpPart> SetUpView::nextToDo() const
{
    const auto next = std::ranges::find_if(kGuidedWay, [this](SetUpPart part) { return !isDone(part); });
    if (next == kGuidedWay.end())
        return std::nullopt;
    return *next;
}

int SetUpView::stepsDone() const
{
    return countOf(kGuidedWay, [this](SetUpPart part) { return isDone(part); });
}

std::optional<SetUpPart> partAfter(SetUpPart part)
{
    const auto here = std::ranges::find(kGuidedWay, part);
    if (here == kGuidedWay.end() || std::next(here) == kGuidedWay.end())
        return std::nullopt;
    return *std::next(here);
}

bool isOnGuidedWay(SetUpPart part)
{
    return std::ranges::find(kGuidedWay, part) != kGuidedWay.end();
}

} // namespace rig
