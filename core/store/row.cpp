#include "core/store/row.h"

#include "core/day_entry.h"
#include "core/store/values.h"

#include <QByteArray>

#include <algorithm>

namespace rig {

QVariant valueOf(const IdBytes& id)
{
    return QByteArray(reinterpret_cast<const char*>(id.data()), static_cast<qsizetype>(id.size()));
}

QVariant valueOf(const std::string& text)
{
    return QString::fromStdString(text);
}

QVariant valueOf(Day day)
{
    return valueOf(dayText(day));
}

std::int64_t Row::integer()
{
    return m_query.value(m_column++).toLongLong();
}

double Row::number()
{
    return m_query.value(m_column++).toDouble();
}

std::string Row::text()
{
    return m_query.value(m_column++).toString().toStdString();
}

Day Row::day()
{
    const std::string written = text();
    const std::optional<Day> read = parseDay(written);
    if (!read)
        m_problem = "not a day: " + written;
    return read.value_or(Day{});
}

Moment Row::moment()
{
    const std::int64_t seconds = integer();
    return Moment{seconds, static_cast<std::int32_t>(integer())};
}

IdBytes Row::bytes()
{
    const QByteArray blob = m_query.value(m_column++).toByteArray();
    IdBytes id{};
    if (blob.size() == static_cast<qsizetype>(id.size()))
        std::ranges::copy(blob, reinterpret_cast<char*>(id.data()));
    else
        m_problem = "an id of the wrong length";
    return id;
}

Stamp Row::stamp()
{
    Stamp stamp;
    stamp.by = maybeId<PersonId>();
    stamp.when = moment();
    return stamp;
}

bool Row::skipNull()
{
    if (!m_query.isNull(m_column))
        return false;
    ++m_column;
    return true;
}

std::optional<double> Row::maybeNumber()
{
    if (skipNull())
        return std::nullopt;
    return number();
}

std::optional<Gap> Row::maybeGap()
{
    if (skipNull())
        return std::nullopt;
    return gap();
}

std::optional<Day> Row::maybeDay()
{
    if (skipNull())
        return std::nullopt;
    return day();
}

} // namespace rig
