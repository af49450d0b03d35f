#include "core/store/row.h"

#include "core/day_entry.h"
#include "core/store/values.h"

#include <QByteArray>

#include <cstring>
#include <sqlite3.h>

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
    return sqlite3_column_int64(m_statement, m_column++);
}

double Row::number()
{
    return sqlite3_column_double(m_statement, m_column++);
}

std::string Row::text()
{
    const auto* written = reinterpret_cast<const char*>(sqlite3_column_text(m_statement, m_column));
    const int size = sqlite3_column_bytes(m_statement, m_column++);
    return written ? std::string(written, static_cast<std::size_t>(size)) : std::string{};
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
    const void* blob = sqlite3_column_blob(m_statement, m_column);
    const int size = sqlite3_column_bytes(m_statement, m_column++);
    IdBytes id{};
    if (blob && size == static_cast<int>(id.size()))
        std::memcpy(id.data(), blob, id.size());
    else
        m_problem = "an id of the wrong length";
    return id;
}

QVariant Row::raw(int column) const
{
    switch (sqlite3_column_type(m_statement, column)) {
    case SQLITE_INTEGER:
        return static_cast<qlonglong>(sqlite3_column_int64(m_statement, column));
    case SQLITE_FLOAT:
        return sqlite3_column_double(m_statement, column);
    case SQLITE_TEXT:
        return QString::fromUtf8(reinterpret_cast<const char*>(sqlite3_column_text(m_statement, column)),
                                 sqlite3_column_bytes(m_statement, column));
    case SQLITE_BLOB:
        return QByteArray(static_cast<const char*>(sqlite3_column_blob(m_statement, column)),
                          sqlite3_column_bytes(m_statement, column));
    default:
        return {};
    }
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
    if (sqlite3_column_type(m_statement, m_column) != SQLITE_NULL)
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
