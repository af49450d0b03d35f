#include "app/bench/told_season.h"

#include <algorithm>
#include <cmath>

namespace rig::bench {
namespace {

constexpr int kRiggings = 90;
constexpr int kCouplings = 8;
constexpr int kBaselineReadings = 12;
constexpr int kRiggingsToReach = 20; // riggings in which a movement reaches its 4 or 6 sigma
constexpr double kMissing = 0.1;

// Persons and gauges by label.
constexpr int kFirst = 1;
constexpr int kSecond = 2;
constexpr int kLowReader = 3;
constexpr int kLoner = 4;
constexpr int kGoodSet = 1;
constexpr int kOtherSet = 2;
constexpr int kBentSet = 3;
constexpr int kLonersSet = 4;

int wholeBelow(Draws& draws, int end)
{
    return static_cast<int>(draws.uniform() * end);
}

// One day's hand, gauge and common error.
struct RiggingDay
{
    int person = kFirst;
    int gauge = kGoodSet;
    double shift = 0;
};

class Teller
{
public:
    Teller(const SeasonSetting& setting, int number, std::uint64_t seed)
        : m_setting{setting}, m_number{number}, m_draws{seed}
    {
        const double sign = m_draws.uniform() < 0.5 ? -1 : 1;
        m_season.persons = {{kFirst, 0},
                            {kSecond, 0.006 * m_draws.normal()},
                            {kLowReader, sign * setting.readerOff},
                            {kLoner, 0.01}};
        m_season.gauges = {
            {kGoodSet, 0}, {kOtherSet, 0.006 * m_draws.normal()}, {kBentSet, 0.04}, {kLonersSet, 0}};
        m_season.lowReader = kLowReader;
        m_season.bentGauge = kBentSet;
        m_season.loner = kLoner;
        m_season.hasLoner = number % 4 == 3;
        m_dayDeviation = 0.25 * setting.sigma * m_draws.uniform();
    }

    ToldSeason told()
    {
        layDays();
        for (int coupling = 0; coupling < kCouplings; ++coupling)
            tellCoupling(coupling);
        return std::move(m_season);
    }

private:
    void layDays()
    {
        const bool secondIsFaithful = m_number % 2 == 1; // only ever uses the other set
        std::vector<int> order;
        for (int i = 0; i < kRiggings; ++i) {
            RiggingDay day;
            day.person = m_draws.uniform() < 0.6 ? kFirst : kSecond;
            day.gauge = m_draws.uniform() < 0.7 ? kGoodSet : kOtherSet;
            if (secondIsFaithful && day.person == kSecond)
                day.gauge = kOtherSet;
            day.shift = m_dayDeviation * m_draws.normal();
            m_days.push_back(day);
            order.push_back(i);
        }
        for (int i = kRiggings; i-- > 1;)
            std::swap(order[static_cast<std::size_t>(i)],
                      order[static_cast<std::size_t>(wholeBelow(m_draws, i + 1))]);
        for (std::size_t i = 0; i < 12; ++i)
            m_days[static_cast<std::size_t>(order[i])].person = kLowReader;
        if (m_season.hasLoner)
            for (std::size_t i = 12; i < 18; ++i) {
                m_days[static_cast<std::size_t>(order[i])].person = kLoner;
                m_days[static_cast<std::size_t>(order[i])].gauge = kLonersSet;
            }
        const int bent = 10 + wholeBelow(m_draws, kRiggings - 30);
        for (int i = bent; i < bent + 3; ++i)
            if (m_days[static_cast<std::size_t>(i)].person != kLoner)
                m_days[static_cast<std::size_t>(i)].gauge = kBentSet;
    }

    // Begins so late that 20 to 23 riggings are left.
    ToldCoupling moving(Plot plot, double sigmas, bool isBig)
    {
        ToldCoupling coupling{plot, isBig, 0, 0};
        const int left = kRiggingsToReach + wholeBelow(m_draws, 4);
        const double sign = m_draws.uniform() < 0.5 ? -1 : 1;
        const double reached = sign * sigmas * m_setting.sigma;
        coupling.begins = kRiggings - left + (plot == Plot::Step ? 1.0 : 0.0);
        coupling.size = plot == Plot::Step ? reached : reached / kRiggingsToReach * numbers::kRateUnit;
        return coupling;
    }

    ToldCoupling plotOf(int coupling)
    {
        const bool isEven = m_number % 2 == 0;
        const bool isNextEven = m_number / 2 % 2 == 0;
        switch (coupling) {
        case 0:
            return moving(isEven ? Plot::Step : Plot::Drift, 6, true);
        case 1:
            return moving(isNextEven ? Plot::Step : Plot::Drift, 4, false);
        case 2:
            return {Plot::WiderScatter, false, kRiggings - 9, 2.5};
        case 3:
            return {Plot::OneStranger, false, 8.0 + wholeBelow(m_draws, kRiggings - 10), 0.35};
        default:
            return {};
        }
    }

    void tellCoupling(int coupling)
    {
        ToldCoupling truth = plotOf(coupling);
        if ((coupling == 4 || coupling == 5) && m_number % 5 == 2) { // two that drift alike
            if (coupling == 4)
                m_alike = moving(Plot::Drift, 5, false);
            truth = m_alike;
        }
        const bool isRenewed = coupling == 6 && m_number % 3 == 0;
        const int renewedAt = 40 + wholeBelow(m_draws, 10);
        tellFitting(truth, 1, isRenewed ? renewedAt : kRiggings + 1);
        if (isRenewed)
            tellFitting({}, renewedAt, kRiggings + 1);
    }

    void tellFitting(const ToldCoupling& truth, int from, int end)
    {
        const double mean = 0.5 + 0.3 * m_draws.uniform();
        const int label = static_cast<int>(m_season.fittings.size());
        m_season.fittings.push_back(truth);
        for (int i = 0; i < kBaselineReadings; ++i)
            read(label, mean + m_setting.sigma * m_draws.normal(), 0, {kFirst, kGoodSet, 0}, -label);
        for (int rigging = from; rigging < end; ++rigging) {
            const double scatter =
                truth.plot == Plot::WiderScatter && rigging >= truth.begins ? truth.size : 1;
            const double gap = mean + movedBy(truth, rigging) + scatter * m_setting.sigma * m_draws.normal();
            if (m_draws.uniform() >= kMissing)
                read(label, gap, rigging, m_days[static_cast<std::size_t>(rigging - 1)], rigging);
        }
    }

    static double movedBy(const ToldCoupling& truth, double rigging)
    {
        switch (truth.plot) {
        case Plot::Step:
            return rigging >= truth.begins ? truth.size : 0;
        case Plot::Drift:
            return std::max(0.0, rigging - truth.begins) / numbers::kRateUnit * truth.size;
        case Plot::OneStranger:
            return rigging == truth.begins ? truth.size : 0;
        case Plot::Steady:
        case Plot::WiderScatter:
            return 0;
        }
        return 0;
    }

    void read(int label, double gap, double rigging, const RiggingDay& day, int date)
    {
        const double shown =
            gap + day.shift + m_season.persons.at(day.person) + m_season.gauges.at(day.gauge);
        m_season.readings.push_back({readingOf(std::max(0.0, shown), m_setting.kind), rigging, label,
                                     day.person, day.gauge, date, false});
    }

    SeasonSetting m_setting;
    int m_number;
    Draws m_draws;
    ToldSeason m_season;
    std::vector<RiggingDay> m_days;
    double m_dayDeviation = 0;
    ToldCoupling m_alike;
};

} // namespace

ToldSeason toldSeason(const SeasonSetting& setting, int number, std::uint64_t seed)
{
    return Teller{setting, number, seed}.told();
}

} // namespace rig::bench
