#include "core/review/review_period.h"
#include "core/review/rigging_numbers.h"

#include <algorithm>
#include <array>
#include <ranges>

namespace rig {

namespace {

constexpr std::array kLastRiggings{10, 20, 50, 100};
constexpr std::chrono::days kOneDay{1};

// The first annual after that day, else the one that is due.
std::optional<Day> annualAfter(const AirframeFacts& facts, Day last, Day today)
{
    std::optional<Day> next;
    for (const Event& event : facts.events)
        if (event.kind == EventKind::Annual && !event.coupling && event.day > last && event.day <= today)
            next = std::min(next.value_or(event.day), event.day);
    return next ? next : facts.airframe.annualDue;
}

int calendarYearOf(Day day)
{
    return static_cast<int>(std::chrono::year_month_day{day}.year());
}

class Offers
{
public:
    Offers(const AirframeFacts& facts, Day today) : m_facts{facts}, m_today{today}, m_numbers{facts} {}

    std::vector<PeriodOffer> made()
    {
        for (const ReviewPeriod& period : reviewPeriods(m_facts, m_today))
            m_offers.push_back({period});
        addSeasons();
        for (const Coupling& coupling : m_facts.couplingsInUse())
            addFittings(coupling.id);
        addLastRiggings();
        return std::move(m_offers);
    }

private:
    ReviewPeriod periodOf(Day from, Day to, PeriodKind kind) const
    {
        return {from, to, annualAfter(m_facts, to, m_today), false, to == m_today, kind};
    }

    void addSeasons()
    {
        const std::optional<Day> first = m_numbers.firstDay();
        if (!first)
            return;
        for (int year = calendarYearOf(m_today); year >= calendarYearOf(*first); --year) {
            using namespace std::chrono;
            const Day from{std::chrono::year{year} / January / 1};
            const Day to = std::min(m_today, Day{std::chrono::year{year} / December / 31});
            if (m_numbers.within(from, to) > 0)
                m_offers.push_back({periodOf(from, to, PeriodKind::BySeason), year});
        }
    }

    void addFittings(CouplingId coupling)
    {
        std::vector<const Fitting*> fittings;
        for (const Fitting& fitting : m_facts.fittings)
            if (fitting.coupling == coupling)
                fittings.push_back(&fitting);
        std::ranges::stable_sort(fittings, {}, &Fitting::begins);
        Day to = m_today;
        for (std::size_t i = fittings.size(); i-- > 0;) {
            const Fitting& one = *fittings[i];
            if (one.begins <= to)
                m_offers.push_back({periodOf(one.begins, to, PeriodKind::ByFitting), static_cast<int>(i) + 1,
                                    coupling, one.id});
            to = std::min(to, one.begins - kOneDay);
        }
    }

    void addLastRiggings()
    {
        for (const int count : kLastRiggings)
            if (const std::optional<Day> from = m_numbers.firstDayOfLast(count, m_today))
                m_offers.push_back({periodOf(*from, m_today, PeriodKind::LastRiggings), count});
    }

    const AirframeFacts& m_facts;
    Day m_today;
    RiggingNumbers m_numbers;
    std::vector<PeriodOffer> m_offers;
};

PeriodOffer daysWithin(const PeriodOffer& chosen, const AirframeFacts& facts, Day today)
{
    PeriodOffer offer = chosen;
    offer.period.annual = annualAfter(facts, chosen.period.to, today);
    offer.period.isCurrent = chosen.period.to == today;
    return offer;
}

// All riggings, where there are not more than that many.
PeriodOffer lastWithin(const PeriodOffer& chosen, const AirframeFacts& facts, Day today)
{
    const RiggingNumbers numbers{facts};
    const Day first = numbers.firstDayOfLast(chosen.number, today)
                          .value_or(std::min(numbers.firstDay().value_or(today), today));
    PeriodOffer offer = chosen;
    offer.period = {first, today, annualAfter(facts, today, today), false, true, PeriodKind::LastRiggings};
    return offer;
}

bool holdsAnything(const ReviewPeriod& period, const AirframeFacts& facts)
{
    const auto isRead = [&](const KeptReading& one) { return period.contains(one.reading.when.localDay()); };
    const auto isAsked = [&](const QuestionStory& one) { return period.contains(one.question.day()); };
    return std::ranges::any_of(facts.readings | std::views::reverse, isRead) ||
           std::ranges::any_of(facts.questions, isAsked);
}

} // namespace

bool PeriodOffer::isSameChoiceAs(const PeriodOffer& other) const
{
    if (period.kind != other.period.kind || number != other.number || fitting != other.fitting)
        return false;
    switch (period.kind) {
    case PeriodKind::ByAnnual:
        return period.from == other.period.from && period.isCurrent == other.period.isCurrent;
    case PeriodKind::Days:
        return period.from == other.period.from && period.to == other.period.to;
    case PeriodKind::BySeason:
    case PeriodKind::ByFitting:
    case PeriodKind::LastRiggings:
        break;
    }
    return true;
}

std::vector<PeriodOffer> offeredPeriods(const AirframeFacts& facts, Day today)
{
    return Offers{facts, today}.made();
}

PeriodOffer anyDays(Day from, Day to)
{
    PeriodOffer offer;
    offer.period = {from, to, {}, false, false, PeriodKind::Days};
    return offer;
}

PeriodOffer lastRiggings(int count)
{
    PeriodOffer offer;
    offer.period.kind = PeriodKind::LastRiggings;
    offer.number = count;
    return offer;
}

PeriodOffer chosenAmong(const std::vector<PeriodOffer>& offers, const std::optional<PeriodOffer>& chosen,
                        const AirframeFacts& facts)
{
    const Day today = offers.front().period.to;
    if (chosen && chosen->period.kind == PeriodKind::Days)
        return daysWithin(*chosen, facts, today);
    const auto same = std::ranges::find_if(
        offers, [&](const PeriodOffer& one) { return chosen && one.isSameChoiceAs(*chosen); });
    if (same != offers.end())
        return *same;
    if (chosen && chosen->period.kind == PeriodKind::LastRiggings)
        return lastWithin(*chosen, facts, today);
    const auto held = std::ranges::find_if(
        offers, [&](const PeriodOffer& one) { return holdsAnything(one.period, facts); });
    return held == offers.end() ? offers.front() : *held;
}

} // namespace rig
