#include "app/pictures/scale.h"

#include "app/wording/trend_words.h"

#include <QDateTime>

#include <array>
#include <cmath>

namespace rig {

namespace {

constexpr double kDaySeconds = 86400;
constexpr double kMonthSeconds = kDaySeconds * 365.2425 / 12;
constexpr double kMostTicks = 400; // more would never fit: spare the work

QDate dayOf(double seconds)
{
    return QDateTime::fromSecsSinceEpoch(static_cast<qint64>(std::floor(seconds)), Qt::UTC).date();
}

double secondsOf(QDate day)
{
    return static_cast<double>(QDateTime{day, QTime{0, 0}, Qt::UTC}.toSecsSinceEpoch());
}

bool fits(const std::vector<Tick>& ticks, const Scale& scale,
          const std::function<double(const QString&)>& extent, double apart)
{
    double lastEnd = 0;
    for (std::size_t i = 0; i < ticks.size(); ++i) {
        const double half = extent(ticks[i].text) / 2;
        const double middle = std::abs(scale.at(ticks[i].value) - scale.at(scale.from()));
        if (i > 0 && middle - half < lastEnd + apart)
            return false;
        lastEnd = middle + half;
    }
    return true;
}

} // namespace

Scale::Scale(ScaleKind kind, double from, double to, double atFrom, double atTo)
    : m_kind{kind}, m_from{from}, m_to{to > from ? to : from + 1}, m_atFrom{atFrom}
{
    m_pixels = (atTo - atFrom) / (m_to - m_from);
}

std::vector<Tick> Scale::stepped(double step) const
{
    std::vector<Tick> ticks;
    const auto first = static_cast<qint64>(std::ceil(m_from / step - 1e-9));
    const auto last = static_cast<qint64>(std::floor(m_to / step + 1e-9));
    for (qint64 i = first; i <= last; ++i) {
        const double value = static_cast<double>(i) * step;
        const QString text = m_kind == ScaleKind::Millimetres ? TrendWords::millimetreTick(value)
                                                              : TrendWords::riggingTick(std::llround(value));
        ticks.push_back({value, text});
    }
    return ticks;
}

std::vector<Tick> Scale::dayTicks(int days) const
{
    std::vector<Tick> ticks;
    for (QDate day = dayOf(m_from); secondsOf(day) <= m_to; day = day.addDays(1)) {
        const bool wanted = days == 1 || (day.day() % days == 1 && day.daysInMonth() - day.day() >= days / 2);
        if (!wanted || secondsOf(day) < m_from)
            continue;
        const bool withYear = ticks.empty() || (day.month() == 1 && day.day() == 1);
        ticks.push_back(
            {secondsOf(day), withYear ? TrendWords::dayTick(day) : TrendWords::shortDayTick(day)});
    }
    return ticks;
}

std::vector<Tick> Scale::monthTicks(int months) const
{
    std::vector<Tick> ticks;
    const QDate first = dayOf(m_from);
    const int yearStep = std::max(1, months / 12);
    const int startYear = first.year() / yearStep * yearStep;
    for (QDate day{startYear, 1, 1}; secondsOf(day) <= m_to; day = day.addMonths(months)) {
        if (secondsOf(day) < m_from)
            continue;
        if (day.month() == 1)
            ticks.push_back({secondsOf(day), TrendWords::yearTick(day)});
        else
            ticks.push_back({secondsOf(day),
                             ticks.empty() ? TrendWords::monthTick(day) : TrendWords::shortMonthTick(day)});
    }
    return ticks;
}

// From the finest to the coarsest.
std::vector<std::vector<Tick>> Scale::choices() const
{
    std::vector<std::vector<Tick>> all;
    if (m_kind != ScaleKind::Dates) {
        const double finest = m_kind == ScaleKind::Millimetres ? 0.01 : 1;
        for (double decade = finest; decade < 1e9; decade *= 10)
            for (const double factor : {1.0, 2.0, 5.0}) {
                const double step = decade * factor;
                // Steps of 0.02 mm would pass between the leaves of most sets.
                const bool isPleasant = m_kind != ScaleKind::Millimetres || step < 0.015 || step > 0.03;
                if (isPleasant && roughSteps(step) < kMostTicks && roughSteps(step) > 0.2)
                    all.push_back(stepped(step));
            }
        return all;
    }
    for (const int days : {1, 2, 5, 10, 15})
        if (roughSteps(days * kDaySeconds) < kMostTicks)
            all.push_back(dayTicks(days));
    for (const int months : {1, 2, 3, 6, 12, 24, 60, 120, 240, 600, 1200})
        if (roughSteps(months * kMonthSeconds) < kMostTicks)
            all.push_back(monthTicks(months));
    return all;
}

std::vector<Tick> Scale::ticks(const std::function<double(const QString&)>& extent, double apart) const
{
    std::vector<Tick> last;
    for (std::vector<Tick>& ticks : choices()) {
        if (ticks.empty())
            break;
        if (fits(ticks, *this, extent, apart))
            return ticks;
        last = {ticks.front()};
    }
    return last;
}

} // namespace rig
