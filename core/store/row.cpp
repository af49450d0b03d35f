#include "core/store/row.h"

#include "core/store/values.h"

#include <QByteArray>

#include <cstring>
#include <sqlite3.h>

namespace rig {

QVariant valueOf(const IdBytes& id)
{
    return QByteArray(reinterpret_cast<const char*>(id.data()), static_cast<qsizetype>(id.size()));
}

QVariant valueOf(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

std::int64_t Row::integer()
{
    return sqlite3_column_int64(m_statement, m_column++);
}

double Row::number()
{
    return sqlite3_column_double(m_statement, m_column++);
}

std::string_view Row::textView()
{
    const auto* written = reinterpret_cast<const char*>(sqlite3_column_text(m_statement, m_column));
    const int size = sqlite3_column_bytes(m_statement, m_column++);
    return written ? std::string_view{written, static_cast<std::size_t>(size)} : std::string_view{};
}

std::string_view Row::bytesView()
{
    const auto* blob = static_cast<const char*>(sqlite3_column_blob(m_statement, m_column));
    const int size = sqlite3_column_bytes(m_statement, m_column++);
    return blob ? std::string_view{blob, static_cast<std::size_t>(size)} : std::string_view{};
}

std::optional<IdBytes> Row::bytes()
{
    const void* blob = sqlite3_column_blob(m_statement, m_column);
    const int size = sqlite3_column_bytes(m_statement, m_column++);
    IdBytes id{};
    if (!blob || size != static_cast<int>(id.size()))
        return std::nullopt;
    std::memcpy(id.data(), blob, id.size());
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

void Row::refuse(const std::string& why)
{
    if (m_problem.empty())
        m_problem = why;
}

CellType Row::type(int ahead) const
{
    switch (sqlite3_column_type(m_statement, m_column + ahead)) {
    case SQLITE_INTEGER:
        return CellType::Integer;
    case SQLITE_FLOAT:
        return CellType::Real;
    case SQLITE_TEXT:
        return CellType::Text;
    case SQLITE_BLOB:
        return CellType::Bytes;
    default:
        return CellType::Empty;
    }
}

bool Row::skipNull()
{
    if (sqlite3_column_type(m_statement, m_column) != SQLITE_NULL)
        return false;
    ++m_column;
    return true;
}

} // namespace rig
