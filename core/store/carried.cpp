#include "core/store/carried.h"

#include "core/day_entry.h"
#include "core/judgement/judgement.h"
#include "core/lesson/photo.h"
#include "core/store/chain_look.h"
#include "core/store/connection.h"
#include "core/store/create_file.h"
#include "core/store/every_shape.h"
#include "core/store/inspection.h"
#include "core/store/migrations.h"
#include "core/store/tables.h"
#include "core/store/values.h"

#include <QStringList>

#include <algorithm>
#include <limits>

namespace rig {

namespace {

constexpr Range kHash{32, 32};
constexpr Range kPlaceInChain{1, std::numeric_limits<std::int64_t>::max()};
constexpr Range kYesOrNo{0, 1};

ColumnInfo cell(const char* name, Storage storage, Range range = {})
{
    return {name, storage, false, nullptr, range};
}

CarriedTable carriedTableOf(const FactShape& shape)
{
    CarriedTable table{shape.table, {}};
    if (shape.hasVersions)
        table.columns.push_back(cell("id", Storage::Id));
    table.columns.insert(table.columns.end(), shape.columns.begin(), shape.columns.end());
    if (const std::optional<ChildShape>& children = shape.children)
        table.belonging.push_back({children->table, {children->value}, children->owner.name, true});
    for (const FactShape* attached : {&factShape<Shown>(), &factShape<PhotoImage>()})
        if (table.name == attached->owner)
            table.belonging.push_back({attached->table, attached->columns, attached->owner, false});
    return table;
}

// From left to right, as they are in the file.
CarriedCell cellFrom(Row& row)
{
    switch (row.type()) {
    case CellType::Integer:
        return row.integer();
    case CellType::Real:
        return row.number();
    case CellType::Text:
        return row.text();
    case CellType::Bytes:
        return std::string{row.bytesView()};
    case CellType::Empty:
        break;
    }
    row.skip(1);
    return {};
}

QVariant boundOf(const ColumnInfo& column, const CarriedCell& cell)
{
    if (const auto* number = std::get_if<std::int64_t>(&cell))
        return valueOf(*number);
    if (const auto* number = std::get_if<double>(&cell))
        return valueOf(*number);
    const auto* bytes = std::get_if<std::string>(&cell);
    if (!bytes)
        return {};
    if (column.storage == Storage::Id || column.storage == Storage::Bytes)
        return QByteArray::fromStdString(*bytes);
    // Qt takes a byte order mark at the beginning for none of the text.
    const bool hasMark = bytes->starts_with("\xEF\xBB\xBF");
    return hasMark ? QString{QChar{0xFEFF}} + valueOf(std::string_view{*bytes}.substr(3)).toString()
                   : valueOf(std::string_view{*bytes});
}

bool isKnownWord(const ColumnInfo& column, std::string_view text)
{
    for (int i = 0; !column.word(i).empty(); ++i)
        if (column.word(i) == text)
            return true;
    return false;
}

CellFault faultOfText(const ColumnInfo& column, const std::string& text)
{
    switch (column.storage) {
    case Storage::Integer:
    case Storage::Real:
        return CellFault::WrongType;
    case Storage::Id:
        return text.size() == IdBytes{}.size() ? CellFault::None : CellFault::WrongType;
    case Storage::Date:
        return parseDay(text) ? CellFault::None : CellFault::NotADay;
    case Storage::Word:
        return !column.word || isKnownWord(column, text) ? CellFault::None : CellFault::UnknownWord;
    case Storage::Text:
    case Storage::Bytes:
        break;
    }
    return lies(std::string_view{text}, column.range) ? CellFault::None : CellFault::OutOfRange;
}

IdBytes idFrom(const CarriedCell& cell)
{
    IdBytes id{};
    if (const auto* bytes = std::get_if<std::string>(&cell); bytes && bytes->size() == id.size())
        std::ranges::copy(*bytes, id.begin());
    return id;
}

bool isAnId(const ColumnInfo& column)
{
    return std::string_view{column.name} == "id";
}

QStringList namesOf(const CarriedTable& table)
{
    QStringList names;
    if (!table.owner.empty())
        names << QString::fromStdString(table.owner);
    for (const ColumnInfo& column : table.columns)
        names << QString::fromLatin1(column.name);
    return names;
}

// Rows of one file come in one order, whatever the order in which they were saved.
QString rowsSql(const CarriedTable& table)
{
    const QString name = QString::fromStdString(table.name);
    const QString columns = namesOf(table).join(u',');
    if (!table.owner.empty())
        return QStringLiteral("SELECT %1 FROM %2 WHERE %3 = ? ORDER BY %1")
            .arg(columns, name, QString::fromStdString(table.owner));
    return QStringLiteral("SELECT %1 FROM %2 ORDER BY %3")
        .arg(columns, name, isAnId(table.columns.front()) ? QStringLiteral("id") : columns);
}

class CarryingOut
{
public:
    CarryingOut(StoreFile::Connection& file, const CarriedTable& table) : m_file{file}, m_table{table} {}

    Outcome each(const std::function<Outcome(const CarriedRow&)>& take)
    {
        if (const Outcome lost = refuseWhatBelongsToNothing(); !lost)
            return lost;
        Outcome outcome = Done{};
        const Outcome read = m_file.each(rowsSql(m_table), {}, [&](Row& row) {
            if (!outcome)
                return;
            CarriedRow carried{{}};
            outcome = takeCells(m_table, row, carried);
            if (outcome)
                outcome = takeBelonging(carried);
            if (outcome)
                outcome = take(carried);
        });
        return read ? outcome : read;
    }

private:
    Outcome takeCells(const CarriedTable& table, Row& row, CarriedRow& into)
    {
        for (const ColumnInfo& column : table.columns) {
            const CarriedCell& taken = into.cells.emplace_back(cellFrom(row));
            if (isAnId(column))
                m_id = textOf(idFrom(taken));
            if (faultOf(column, taken) != CellFault::None)
                return Problem{ProblemKind::DamagedFile, table.name + ' ' + m_id + ": " + column.name};
        }
        return Done{};
    }

    Outcome takeBelonging(CarriedRow& into)
    {
        for (const CarriedTable& table : m_table.belonging) {
            std::vector<CarriedRow>& rows = into.belonging.emplace_back();
            Outcome outcome = Done{};
            const Outcome read =
                m_file.each(rowsSql(table), {valueOf(idFrom(into.cells.front()))}, [&](Row& row) {
                    row.skip(1);
                    if (outcome)
                        outcome = takeCells(table, row, rows.emplace_back());
                });
            if (!read || !outcome)
                return read ? outcome : read;
        }
        return Done{};
    }

    Outcome refuseWhatBelongsToNothing()
    {
        for (const CarriedTable& table : m_table.belonging) {
            const auto lost = m_file.integer(
                QStringLiteral("SELECT count(*) FROM %1 WHERE %2 NOT IN (SELECT id FROM %3)")
                    .arg(QString::fromStdString(table.name), QString::fromStdString(table.owner),
                         QString::fromStdString(m_table.name)));
            if (!lost)
                return lost.problem();
            if (lost.value().value_or(0) > 0)
                return Problem{ProblemKind::DamagedFile, table.name + ": " + table.owner};
        }
        return Done{};
    }

    StoreFile::Connection& m_file;
    const CarriedTable& m_table;
    std::string m_id; // of the row, once it was read
};

// In one transaction of a new file.
class CarryingIn
{
public:
    explicit CarryingIn(StoreFile::Connection& into) : m_into{into} {}

    Result<Put> put(const CarriedTable& table, const CarriedRow& row)
    {
        if (const Outcome inserted = insert(table, row, nullptr); !inserted)
            return isRefused(inserted) ? whyRefused(table, row) : Result<Put>{inserted.problem()};
        for (std::size_t i = 0; i < row.belonging.size(); ++i)
            for (const CarriedRow& each : row.belonging[i])
                if (const Outcome inserted = insert(table.belonging[i], each, &row.cells.front()); !inserted)
                    return isRefused(inserted) ? Result<Put>{Put::CannotStand} : inserted.problem();
        return Put::Done;
    }

private:
    Outcome insert(const CarriedTable& table, const CarriedRow& row, const CarriedCell* owner)
    {
        QVariantList values;
        if (owner)
            values << valueOf(idFrom(*owner));
        for (std::size_t i = 0; i < table.columns.size(); ++i)
            values << boundOf(table.columns[i], row.cells[i]);
        const QStringList names = namesOf(table);
        return m_into.run(QStringLiteral("INSERT INTO %1 (%2) VALUES (%3)")
                              .arg(QString::fromStdString(table.name), names.join(u','),
                                   QStringList(names.size(), QStringLiteral("?")).join(u',')),
                          values);
    }

    static bool isRefused(const Outcome& outcome)
    {
        return outcome.problem().kind == ProblemKind::FactRefused;
    }

    Result<Put> whyRefused(const CarriedTable& table, const CarriedRow& row)
    {
        if (!isAnId(table.columns.front()))
            return Put::CannotStand;
        const auto there = m_into.integer(
            QStringLiteral("SELECT count(*) FROM %1 WHERE id = ?").arg(QString::fromStdString(table.name)),
            {valueOf(idFrom(row.cells.front()))});
        if (!there)
            return there.problem();
        return there.value().value_or(0) > 0 ? Put::ThereAlready : Put::CannotStand;
    }

    StoreFile::Connection& m_into;
};

// The id of a row, or of the fact that it belongs to.
Result<std::string> idOfRow(StoreFile::Connection& file, const std::string& table, std::int64_t row)
{
    std::string key = "id";
    for (const CarriedTable& fact : carriedFacts())
        for (const CarriedTable& belonging : fact.belonging)
            if (belonging.name == table)
                key = belonging.owner;
    std::string id;
    const Outcome read =
        file.each(QStringLiteral("SELECT %1 FROM %2 WHERE rowid = ?")
                      .arg(QString::fromStdString(key), QString::fromStdString(table)),
                  {valueOf(row)}, [&id](Row& found) { id = textOf(found.bytes().value_or(IdBytes{})); });
    if (!read)
        return read.problem();
    return id;
}

Result<std::optional<NotCarriedIn>> firstUnreadable(StoreFile::Connection& file)
{
    std::optional<NotCarriedIn> first;
    std::int64_t at = 0;
    const Outcome read =
        eachUnreadableRow(file, [&](const char* table, std::int64_t row, const std::string& why) {
            if (first)
                return;
            // "table.column: why"
            const std::size_t point = why.find('.');
            const std::size_t colon = why.find(':');
            at = row;
            first = NotCarriedIn{table, {}, why.substr(point + 1, colon - point - 1), {}};
        });
    if (!read)
        return read.problem();
    Problem problem;
    if (first && !take(idOfRow(file, first->table, at), first->id, problem))
        return problem;
    return first;
}

// A tie of ends on which nothing was saved: it would hide one of them.
Result<std::optional<NotCarriedIn>> firstLooseTie(StoreFile::Connection& file)
{
    const auto loose = file.integer(
        QStringLiteral("SELECT 1 FROM tie WHERE before NOT IN (SELECT before FROM link) LIMIT 1"));
    if (!loose)
        return loose.problem();
    std::optional<NotCarriedIn> first;
    if (loose.value())
        first = NotCarriedIn{"tie", {}, "before", "link"};
    return first;
}

// The version that a fact names as a thing, where it stands there as a version of something else: then that
// is what is wrong, and nothing is lost.
Result<std::optional<NotCarriedIn>> madeAnother(StoreFile::Connection& file, const LostReference& lost,
                                                std::int64_t row)
{
    const FactShape* const named = shapeOfTable(lost.named);
    std::optional<NotCarriedIn> version;
    if (!named || !named->hasVersions || lost.byRow)
        return version;
    const Outcome read = file.each(
        QStringLiteral("SELECT id FROM %1 WHERE id = (SELECT %2 FROM %3 WHERE rowid = ?)")
            .arg(QLatin1String{lost.named}, QLatin1String{lost.column}, QLatin1String{lost.table}),
        {valueOf(row)}, [&](Row& found) {
            version = NotCarriedIn{lost.named, textOf(found.bytes().value_or(IdBytes{})), "subject", {}};
        });
    if (!read)
        return read.problem();
    return version;
}

Result<std::optional<NotCarriedIn>> firstLost(StoreFile::Connection& file)
{
    std::optional<NotCarriedIn> first;
    const Outcome read = eachLostReference(file, [&](const LostReference& lost) -> Outcome {
        if (first)
            return Done{};
        const auto rows = lost.rows();
        if (!rows)
            return rows.problem();
        if (rows.value().empty())
            return Done{};
        Problem problem;
        if (!take(madeAnother(file, lost, rows.value().front()), first, problem))
            return problem;
        if (first)
            return Done{};
        first = NotCarriedIn{lost.table, {}, lost.column, lost.named};
        return take(idOfRow(file, first->table, rows.value().front()), first->id, problem) ? Outcome{Done{}}
                                                                                           : problem;
    });
    if (!read)
        return read.problem();
    return first;
}

Outcome lookAt(StoreFile::Connection& file, CarriedIn& carried)
{
    Problem problem;
    const bool looked = take(firstUnreadable(file), carried.unreadable, problem) &&
                        take(firstLost(file), carried.lost, problem) &&
                        take(lookAtChain(file), carried.chain, problem) &&
                        take(endOf(file), carried.end, problem);
    if (!looked || (!carried.lost && !take(firstLooseTie(file), carried.lost, problem)))
        return problem;
    return Done{};
}

Outcome fillFile(const std::string& path, CarryWhat what,
                 const std::function<Outcome(const PutRow& put)>& fill, CarriedIn& carried)
{
    const auto made = createFile(path, newestSchemaVersion());
    if (!made)
        return made.problem();
    StoreFile::Connection& into = *made.value();
    // What is named that is not there is looked at once everything has come.
    if (const Outcome off = into.run(QStringLiteral("PRAGMA foreign_keys = OFF")); !off)
        return off;
    Transaction transaction{into};
    if (!transaction.begun())
        return transaction.begun();
    CarryingIn carrying{into};
    if (const Outcome filled = fill([&carrying](const CarriedTable& table, const CarriedRow& row) {
            return carrying.put(table, row);
        });
        !filled)
        return filled;
    if (const Outcome looked = lookAt(into, carried); !looked)
        return looked;
    const bool holds = !carried.lost && carried.chain.faults == 0;
    if (carried.unreadable || (what == CarryWhat::WhatHolds && !holds))
        return Problem{ProblemKind::FactRefused, "not made: see what was found"};
    carried.isMade = true;
    return transaction.commit();
}

} // namespace

const std::vector<CarriedTable>& carriedFacts()
{
    static const std::vector<CarriedTable> all = [] {
        std::vector<CarriedTable> tables;
        for (const FactTable& table : kFactTables)
            if (table.isFact)
                tables.push_back(carriedTableOf(*shapeOfTable(table.name)));
        return tables;
    }();
    return all;
}

const std::vector<CarriedTable>& carriedChain()
{
    static const std::vector<CarriedTable> all{
        {"origin",
         {cell("id", Storage::Id), cell("begun_at", Storage::Integer, kAnyTime),
          cell("begun_offset", Storage::Integer, kOffset), cell("taken_over", Storage::Integer, kYesOrNo)}},
        {"link",
         {cell("sequence", Storage::Integer, kPlaceInChain), cell("hash", Storage::Bytes, kHash),
          cell("origin", Storage::Id), cell("kind", Storage::Text, {1, 40}), cell("fact", Storage::Id),
          cell("before", Storage::Bytes, kHash)}},
        {"tie",
         {cell("before", Storage::Bytes, kHash), cell("hash", Storage::Bytes, kHash),
          cell("sequence", Storage::Integer, kPlaceInChain)}},
    };
    return all;
}

int carriedLayout()
{
    return newestSchemaVersion();
}

CellFault faultOf(const ColumnInfo& column, const CarriedCell& cell)
{
    if (std::holds_alternative<std::monostate>(cell))
        return column.mayBeEmpty ? CellFault::None : CellFault::Missing;
    if (const auto* text = std::get_if<std::string>(&cell))
        return faultOfText(column, *text);
    if (const auto* number = std::get_if<std::int64_t>(&cell)) {
        if (column.storage != Storage::Integer)
            return CellFault::WrongType;
        return lies(*number, column.range) ? CellFault::None : CellFault::OutOfRange;
    }
    if (column.storage != Storage::Real)
        return CellFault::WrongType;
    return lies(std::get<double>(cell), column.range) ? CellFault::None : CellFault::OutOfRange;
}

Outcome eachCarried(StoreFile::Connection& file, const CarriedTable& table,
                    const std::function<Outcome(const CarriedRow&)>& take)
{
    return CarryingOut{file, table}.each(take);
}

Result<CarriedIn> carryInto(const std::string& out, CarryWhat what,
                            const std::function<Outcome(const PutRow& put)>& fill)
{
    CarriedIn carried;
    const Outcome made = makeUnderAnotherName(
        out, [&](const std::string& making) { return fillFile(making, what, fill, carried); });
    const bool isSaid = carried.unreadable || carried.lost || carried.chain.faults > 0;
    if (!made && (carried.isMade || !isSaid))
        return made.problem();
    return carried;
}

} // namespace rig
