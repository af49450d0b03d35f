#include "core/airframe/id_source.h"
#include "core/store/connection.h"
#include "core/store/fact_rows.h"
#include "core/store/facts_book.h"
#include "core/store/records.h"
#include "core/store/values.h"
#include "core/store/writer.h"

#include <map>

namespace rig {

namespace {

// Only the newest version of each.
constexpr const char* kAirframes =
    "SELECT subject, stated_by, stated_at, stated_offset, registration, type, serial, jurisdiction, "
    "manual_refs,"
    " annual_due, call_name, call_phone, riggings_before FROM airframe t"
    " WHERE id = (SELECT max(id) FROM airframe WHERE subject = t.subject) ORDER BY subject";
constexpr const char* kPersons =
    "SELECT subject, stated_by, stated_at, stated_offset, name, role, phone FROM person t"
    " WHERE id = (SELECT max(id) FROM person WHERE subject = t.subject) ORDER BY subject";
constexpr const char* kGauges =
    "SELECT id, subject, stated_by, stated_at, stated_offset, name, kind, resolution_um, tolerance_um, note, "
    "in_use"
    " FROM gauge t WHERE id = (SELECT max(id) FROM gauge WHERE subject = t.subject) ORDER BY subject";
constexpr const char* kCouplings =
    "SELECT subject, stated_by, stated_at, stated_offset, airframe, name, circuit, side, plan_x, plan_y, "
    "access,"
    " leaf_place, layout, securing, rigging_order, note, in_use FROM coupling t"
    " WHERE airframe = ? AND id = (SELECT max(id) FROM coupling WHERE subject = t.subject)"
    " ORDER BY rigging_order, subject";
constexpr const char* kGaugeChecks =
    "SELECT id, stated_by, stated_at, stated_offset, gauge, day, how, found, quarantine_from FROM gauge_check"
    " ORDER BY day, id";

constexpr const char* kFittings =
    "SELECT f.id, f.stated_by, f.stated_at, f.stated_offset, f.coupling, f.begins, f.reason"
    " FROM coupling c JOIN fitting f ON f.coupling = c.id WHERE c.airframe = ? AND c.subject = c.id"
    " ORDER BY f.begins, f.id";
constexpr const char* kEvents =
    "SELECT id, stated_by, stated_at, stated_offset, airframe, coupling, kind, day, note"
    " FROM event WHERE airframe = ? ORDER BY day, id";
constexpr const char* kRecordColumns =
    "SELECT id, stated_by, stated_at, stated_offset, airframe, origin, leader, begins_at, begins_offset"
    " FROM rigging_record ";
constexpr const char* kClosingColumns =
    "SELECT k.id, k.stated_by, k.stated_at, k.stated_offset, k.record, k.closing, k.first, k.second, k.note ";

constexpr const char* kSurfaces =
    "SELECT subject, stated_by, stated_at, stated_offset, airframe, name, kind, side, check_order, "
    "sense_call,"
    " unit, measured_at_um, up_nominal, up_tolerance, down_nominal, down_tolerance, most_play,"
    " manual_reference, in_use FROM surface t"
    " WHERE airframe = ? AND id = (SELECT max(id) FROM surface WHERE subject = t.subject)"
    " ORDER BY check_order, subject";
constexpr const char* kQuestionColumns =
    "SELECT q.id, q.stated_by, q.stated_at, q.stated_offset, q.airframe, q.kind, q.record, q.coupling,"
    " q.surface, q.reading, q.gauge, q.check_kind, q.surface_check, a.id, a.stated_by, a.stated_at,"
    " a.stated_offset, a.person, a.found, a.done"
    " FROM question q LEFT JOIN resolution a ON a.question = q.id ";

constexpr const char* kReadingColumns =
    "SELECT r.id, r.stated_by, r.stated_at, r.stated_offset, r.coupling, r.fitting, r.record, r.enters_um,"
    " r.refuses_um, r.technique, r.gauge, r.state, r.purpose, r.turn, r.person, r.measured_at, "
    "r.measured_offset,"
    " r.note, r.corrects, s.method, s.verdict, s.reason, s.direction, s.tail, s.witness, s.miss, "
    "s.inner_lower,"
    " s.inner_upper, s.outer_lower, s.outer_upper, s.median, s.scatter, s.readings, s.at_cap ";

QString sql(const char* columns, const char* rest = "")
{
    return QString::fromLatin1(columns) + QString::fromLatin1(rest);
}

template <typename Made>
Result<std::vector<Made>> all(StoreFile& file, const QString& statement, const QVariantList& values,
                              Made (*make)(Row&))
{
    std::vector<Made> found;
    const Outcome read =
        file.connection().each(statement, values, [&](Row& row) { found.push_back(make(row)); });
    if (!read)
        return read.problem();
    return found;
}

} // namespace

Records::Records(StoreFile& file, IdSource& ids, const Clock& clock, FactChecking checking)
    : m_file{file}, m_ids{ids}, m_clock{clock}, m_checking{checking}, m_book{std::make_unique<FactsBook>(
                                                                          *this, file)}
{
}

Records::~Records() = default;

Writer Records::writer()
{
    return Writer{m_file.connection(), m_ids, m_clock.now(), m_checking};
}

Result<std::vector<Airframe>> Records::airframes() const
{
    return all(m_file, sql(kAirframes), {}, airframeFrom);
}

Result<std::vector<Person>> Records::persons() const
{
    return all(m_file, sql(kPersons), {}, personFrom);
}

Result<std::vector<Gauge>> Records::gauges() const
{
    std::map<IdBytes, std::vector<Gap>> sizes;
    const Outcome read = m_file.connection().each(QStringLiteral("SELECT gauge, size_um FROM gauge_size"), {},
                                                  [&sizes](Row& row) {
                                                      const IdBytes gauge = row.bytes();
                                                      sizes[gauge].push_back(row.gap());
                                                  });
    if (!read)
        return read.problem();
    std::vector<Gauge> gauges;
    const Outcome listed = m_file.connection().each(sql(kGauges), {}, [&](Row& row) {
        Gauge gauge;
        const IdBytes version = row.bytes();
        gauge.id = row.id<GaugeId>();
        gauge.stamp = row.stamp();
        gauge.name = row.text();
        const auto kind = row.kind<GaugeKind>();
        const std::optional<Gap> resolution = row.maybeGap();
        gauge.set = kind == GaugeKind::Taper ? GaugeSet::taper(resolution.value_or(Gap{}))
                                             : GaugeSet{kind, sizes[version]};
        gauge.tolerance = row.maybeGap();
        gauge.note = row.text();
        gauge.inUse = row.flag();
        gauges.push_back(gauge);
    });
    if (!listed)
        return listed.problem();
    return gauges;
}

Result<std::vector<GaugeCheck>> Records::gaugeChecks() const
{
    return all(m_file, sql(kGaugeChecks), {}, gaugeCheckFrom);
}

Result<std::vector<Coupling>> Records::couplings(AirframeId airframe) const
{
    return all(m_file, sql(kCouplings), {valueOf(airframe)}, couplingFrom);
}

Result<std::vector<Surface>> Records::surfaces(AirframeId airframe) const
{
    return all(m_file, sql(kSurfaces), {valueOf(airframe)}, surfaceFrom);
}

Result<std::vector<QuestionStory>> Records::questions(AirframeId airframe) const
{
    return all(m_file, sql(kQuestionColumns, "WHERE q.airframe = ? ORDER BY q.id"), {valueOf(airframe)},
               questionStoryFrom);
}

Result<std::vector<Fitting>> Records::fittings(AirframeId airframe) const
{
    return all(m_file, sql(kFittings), {valueOf(airframe)}, fittingFrom);
}

Result<std::vector<Event>> Records::events(AirframeId airframe) const
{
    return all(m_file, sql(kEvents), {valueOf(airframe)}, eventFrom);
}

Result<std::vector<KeptReading>> Records::readings(AirframeId airframe) const
{
    return all(m_file,
               sql(kReadingColumns, "FROM coupling c JOIN reading r ON r.coupling = c.id LEFT JOIN shown s ON"
                                    " s.reading = r.id WHERE c.airframe = ? AND c.subject = c.id"
                                    " ORDER BY r.measured_at, r.id"),
               {valueOf(airframe)}, keptReadingFrom);
}

Result<std::vector<KeptReading>> Records::readingsOf(CouplingId coupling) const
{
    return all(m_file,
               sql(kReadingColumns,
                   "FROM reading r LEFT JOIN shown s ON s.reading = r.id WHERE r.coupling = ?"
                   " ORDER BY r.measured_at, r.id"),
               {valueOf(coupling)}, keptReadingFrom);
}

Result<KeptReading> Records::reading(ReadingId reading) const
{
    auto found = all(
        m_file, sql(kReadingColumns, "FROM reading r LEFT JOIN shown s ON s.reading = r.id WHERE r.id = ?"),
        {valueOf(reading)}, keptReadingFrom);
    if (!found)
        return found.problem();
    if (found.value().empty())
        return Problem{ProblemKind::NotFound, "no reading " + textOf(reading.bytes)};
    return std::move(found).value().front();
}

Result<std::vector<Exclusion>> Records::exclusions(AirframeId airframe) const
{
    return all(m_file,
               QStringLiteral(
                   "SELECT e.id, e.stated_by, e.stated_at, e.stated_offset, e.reading, e.reason"
                   " FROM exclusion e JOIN reading r ON r.id = e.reading JOIN coupling c ON c.id = r.coupling"
                   " WHERE c.airframe = ? ORDER BY e.id"),
               {valueOf(airframe)}, exclusionFrom);
}

Result<std::vector<FrozenBaseline>> Records::frozenBaselines(AirframeId airframe) const
{
    auto baselines =
        all(m_file,
            QStringLiteral(
                "SELECT b.id, b.stated_by, b.stated_at, b.stated_offset, b.fitting, b.first, b.second"
                " FROM coupling c JOIN fitting f ON f.coupling = c.id JOIN baseline b ON b.fitting = f.id"
                " WHERE c.airframe = ? AND c.subject = c.id ORDER BY b.id"),
            {valueOf(airframe)}, baselineFrom);
    if (!baselines)
        return baselines;
    std::vector<FrozenBaseline> whole = std::move(baselines).value();
    for (FrozenBaseline& baseline : whole) {
        const Outcome read = m_file.connection().each(
            QStringLiteral("SELECT reading FROM baseline_reading WHERE baseline = ? ORDER BY reading"),
            {valueOf(baseline.id)}, [&](Row& row) { baseline.readings.push_back(row.id<ReadingId>()); });
        if (!read)
            return read.problem();
    }
    return whole;
}

Result<std::vector<RiggingRecord>> Records::riggingRecords(AirframeId airframe) const
{
    return all(m_file, sql(kRecordColumns, "WHERE airframe = ? ORDER BY begins_at, id"), {valueOf(airframe)},
               recordFrom);
}

Result<std::vector<RecordClose>> Records::closings(AirframeId airframe) const
{
    return all(m_file,
               sql(kClosingColumns,
                   "FROM rigging_record r JOIN closing k ON k.record = r.id WHERE r.airframe = ?"
                   " ORDER BY k.id"),
               {valueOf(airframe)}, closingFrom);
}

Result<RecordContent> Records::content(RecordId record) const
{
    const QVariantList values{valueOf(record)};
    const auto rows = [&](const char* columns, const char* rest, auto make) {
        return all(m_file, sql(columns, rest), values, make);
    };
    std::vector<RiggingRecord> found;
    std::vector<RecordClose> closings;
    RecordContent content;
    Problem problem;
    const bool isRead =
        take(rows(kRecordColumns, "WHERE id = ?", recordFrom), found, problem) &&
        take(rows("SELECT id, stated_by, stated_at, stated_offset, record, coupling, kind, answer, turn, "
                  "person,"
                  " answered_at, answered_offset FROM answer ",
                  "WHERE record = ? ORDER BY id", checkFrom),
             content.checks, problem) &&
        take(rows(kReadingColumns,
                  "FROM reading r LEFT JOIN shown s ON s.reading = r.id WHERE r.record = ?"
                  " ORDER BY r.id",
                  readingFrom),
             content.readings, problem) &&
        take(rows("SELECT id, stated_by, stated_at, stated_offset, record, coupling, turn, reason",
                  " FROM interruption WHERE record = ? ORDER BY id", interruptionFrom),
             content.interruptions, problem) &&
        take(rows("SELECT id, stated_by, stated_at, stated_offset, record, surface, kind, answer, person, "
                  "cockpit",
                  " FROM surface_answer WHERE record = ? ORDER BY id", surfaceCheckFrom),
             content.surfaceChecks, problem) &&
        take(rows("SELECT id, stated_by, stated_at, stated_offset, record, surface, kind, unit, value,"
                  " measured_at_um, person",
                  " FROM surface_measure WHERE record = ? ORDER BY id", surfaceMeasureFrom),
             content.surfaceMeasures, problem) &&
        take(rows("SELECT id, stated_by, stated_at, stated_offset, record, kind, person",
                  " FROM tick WHERE record = ? ORDER BY id", tickFrom),
             content.ticks, problem) &&
        take(rows(kQuestionColumns, "WHERE q.record = ? ORDER BY q.id", questionStoryFrom), content.questions,
             problem) &&
        take(rows(kClosingColumns, "FROM closing k WHERE k.record = ? ORDER BY k.id", closingFrom), closings,
             problem);
    if (!isRead)
        return problem;
    if (found.empty())
        return Problem{ProblemKind::NotFound, "no rigging record " + textOf(record.bytes)};
    content.record = found.front();
    if (!closings.empty())
        content.close = closings.front();
    return content;
}

Result<std::optional<RecordId>> Records::openRecord(AirframeId airframe) const
{
    const auto found =
        all(m_file,
            sql(kRecordColumns,
                "r WHERE airframe = ? AND origin <> 'imported-table' AND NOT EXISTS (SELECT 1 FROM"
                " closing WHERE record = r.id) ORDER BY id DESC LIMIT 1"),
            {valueOf(airframe)}, recordFrom);
    if (!found)
        return found.problem();
    if (found.value().empty())
        return std::optional<RecordId>{};
    return std::optional{found.value().front().id};
}

} // namespace rig
