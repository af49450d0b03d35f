#include "core/store/faulty_fact.h"

#include "core/plain_text.h"
#include "core/store/every_shape.h"
#include "core/store/values.h"

#include <QStringList>

#include <algorithm>
#include <array>
#include <functional>

namespace rig {

namespace {

constexpr std::array kNotTold{"id", "subject", "stated_by", "stated_at", "stated_offset"};

// The way from a fact to what it is about is never longer.
constexpr int kMostSteps = 4;

// Of an id, and of a picture, only what `nameOf` and its size say. Empty where there is nothing to tell.
FactValue told(Row& row, const std::function<std::string(const IdBytes&)>& nameOf)
{
    using Is = FactValue::Is;
    switch (row.type()) {
    case CellType::Integer:
        return {Is::WholeNumber, std::to_string(row.integer())};
    case CellType::Real:
        return {Is::Number, QString::number(row.number(), 'g', 15).toStdString()};
    case CellType::Text:
        return {Is::Text, withPlaceholders(row.text())};
    case CellType::Bytes: {
        const std::string_view bytes = row.bytesView();
        IdBytes id{};
        if (bytes.size() != id.size())
            return {Is::Bytes, std::to_string(bytes.size())};
        std::ranges::copy(bytes, id.begin());
        return {Is::Text, nameOf(id)};
    }
    case CellType::Empty:
        row.skip(1);
        break;
    }
    return {};
}

class Teller
{
public:
    explicit Teller(StoreFile::Connection& connection) : m_connection{connection} {}

    // Empty where it is not there or cannot be read.
    std::string textIn(const char* table, const char* column, const IdBytes& id)
    {
        std::string text;
        static_cast<void>(m_connection.each(QStringLiteral("SELECT %1 FROM %2 WHERE id = ? OR subject = ? "
                                                           "ORDER BY id")
                                                .arg(QString::fromLatin1(column), QString::fromLatin1(table)),
                                            {valueOf(id), valueOf(id)}, [&text](Row& row) {
                                                if (row.type() == CellType::Text)
                                                    text = withPlaceholders(row.text());
                                            }));
        return text;
    }

    std::optional<IdBytes> idIn(const char* table, const char* column, const IdBytes& id)
    {
        std::optional<IdBytes> found;
        static_cast<void>(m_connection.each(QStringLiteral("SELECT %1 FROM %2 WHERE id = ?")
                                                .arg(QString::fromLatin1(column), QString::fromLatin1(table)),
                                            {valueOf(id)}, [&found](Row& row) {
                                                if (row.type() == CellType::Bytes)
                                                    found = row.bytes();
                                            }));
        return found;
    }

    // The coupling and the airframe that a fact is about, over what it refers to.
    void about(const std::string& table, const IdBytes& id, FaultyFact& fact, int steps = kMostSteps)
    {
        if (table == "coupling")
            fact.coupling = textIn("coupling", "name", id);
        if (table == "airframe") {
            fact.registration = textIn("airframe", "registration", id);
            fact.airframe = idIn("airframe", "subject", id).value_or(id);
        }
        if (table == "rigging_record")
            fact.record = id;
        const FactShape* const shape = shapeOfTable(table);
        if (!shape || steps == 0)
            return;
        for (const ColumnInfo& column : shape->columns) {
            const std::string_view named = column.refersTo ? column.refersTo : "";
            const bool isRecord = named == "rigging_record" && fact.record == IdBytes{};
            const bool isAsked = isRecord || (!named.empty() && named != "person" &&
                                              (fact.coupling.empty() || fact.registration.empty()));
            if (!isAsked)
                continue;
            if (const auto next = idIn(shape->table, column.name, id); next && *next != id)
                about(column.refersTo, *next, fact, steps - 1);
        }
    }

    void says(const FactShape& shape, const IdBytes& id, FaultyFact& fact)
    {
        QStringList names;
        for (const ColumnInfo& column : shape.columns)
            names.append(QString::fromLatin1(column.name));
        static_cast<void>(m_connection.each(
            QStringLiteral("SELECT %1 FROM %2 WHERE id = ?")
                .arg(names.join(u','), QString::fromLatin1(shape.table)),
            {valueOf(id)}, [&](Row& row) {
                for (const ColumnInfo& column : shape.columns) {
                    FactValue value = told(row, namesIn(column.refersTo));
                    if (!value.text.empty() &&
                        std::ranges::find(kNotTold, std::string_view{column.name}) == kNotTold.end())
                        fact.says.push_back({column.name, {std::move(value)}});
                }
            }));
    }

    // What belongs to it: each column with all its values.
    void saysBesides(const BelongingTable& belonging, const IdBytes& id, FaultyFact& fact)
    {
        const QString table = valueOf(belonging.table).toString();
        std::vector<std::string> columns;
        static_cast<void>(m_connection.each(QStringLiteral("SELECT name FROM pragma_table_info(?)"), {table},
                                            [&columns](Row& row) { columns.push_back(row.text()); }));
        std::erase(columns, std::string{belonging.owner});
        for (const std::string& column : columns) {
            FactCells cells{column, {}};
            static_cast<void>(m_connection.each(
                QStringLiteral("SELECT %1 FROM %2 WHERE %3 = ? ORDER BY 1")
                    .arg(QString::fromStdString(column), table, valueOf(belonging.owner).toString()),
                {valueOf(id)}, [&](Row& row) {
                    FactValue value = told(row, namesIn(column == "person" ? "person" : nullptr));
                    if (!value.text.empty())
                        cells.values.push_back(std::move(value));
                }));
            if (!cells.values.empty())
                fact.says.push_back(std::move(cells));
        }
    }

private:
    // What has a name is told by it; of anything else an id says nothing to a reader.
    std::function<std::string(const IdBytes&)> namesIn(const char* table)
    {
        constexpr std::array<std::string_view, 3> kNamed{"person", "gauge", "surface"};
        const bool isNamed = table && std::ranges::find(kNamed, std::string_view{table}) != kNamed.end();
        return [this, table, isNamed](const IdBytes& id) {
            return isNamed ? textIn(table, "name", id) : std::string{};
        };
    }

    StoreFile::Connection& m_connection;
};

} // namespace

FaultyFact tellOf(StoreFile::Connection& connection, ChainFault fault, const std::string& table,
                  const IdBytes& id)
{
    FaultyFact fact{.fault = fault,
                    .table = table,
                    .fact = id,
                    .savedMilliseconds = millisecondsIn(id),
                    .savedBy = {},
                    .registration = {},
                    .coupling = {},
                    .says = {},
                    .airframe = {},
                    .record = {}};
    const FactShape* const shape = shapeOfTable(table);
    if (!shape)
        return fact;
    Teller teller{connection};
    if (const auto by = teller.idIn(shape->table, "stated_by", id))
        fact.savedBy = teller.textIn("person", "name", *by);
    teller.about(table, id, fact);
    teller.says(*shape, id, fact);
    for (const BelongingTable& belonging : tablesBelongingTo(table))
        teller.saysBesides(belonging, id, fact);
    return fact;
}

} // namespace rig
