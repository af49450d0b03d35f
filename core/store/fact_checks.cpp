#include "core/store/fact_checks.h"

#include "core/store/cells.h"
#include "core/store/connection.h"
#include "core/store/names.h"
#include "core/store/newest.h"
#include "core/store/shapes.h"

#include <algorithm>
#include <set>

namespace rig {

namespace {

// A laptop's clock may be set wrong by hours, and noon stands for a day of which no hour is known.
constexpr std::int64_t kDaySeconds = 24 * 3600;

Outcome refused(const std::string& why)
{
    return Problem{ProblemKind::FactRefused, why};
}

// The first problem among checks that are already made; all are cheap.
Outcome firstProblem(std::initializer_list<Outcome> outcomes)
{
    for (const Outcome& outcome : outcomes)
        if (!outcome)
            return outcome;
    return Done{};
}

Outcome filled(const std::string& text, const char* what)
{
    if (isBlank(text))
        return refused(std::string{"empty: "} + what);
    return Done{};
}

Outcome twoPeople(const std::optional<PersonId>& first, const std::optional<PersonId>& second)
{
    if (first && second && *first == *second)
        return refused("the same person twice");
    return Done{};
}

QString sqlOf(const char* form, const char* table)
{
    return QString::fromLatin1(form).arg(QString::fromLatin1(table));
}

bool hasVersions(std::string_view table)
{
    return table == Shape<Person>::table || table == Shape<Airframe>::table || table == Shape<Gauge>::table ||
           table == Shape<Coupling>::table || table == Shape<Surface>::table;
}

// What a fact is about to say: whether each value may stand in its column, and to what it refers.
struct ToldCells
{
    struct Reference
    {
        const char* table;
        IdBytes id;
    };

    const char* table;
    std::string problem;
    std::vector<Reference> references;

    template <typename Raw> void put(const ColumnInfo& column, const std::optional<Raw>& raw)
    {
        if (!raw)
            return;
        if (!lies(*raw, column.range) && problem.empty())
            problem = std::string{table} + '.' + column.name + ": out of its range";
        if constexpr (std::is_same_v<Raw, IdBytes>)
            if (column.refersTo)
                references.push_back({column.refersTo, *raw});
    }
};

template <typename Fact> ToldCells toldOf(const Fact& fact)
{
    ToldCells told{Shape<Fact>::table, {}, {}};
    if constexpr (IsAttached<Fact>)
        Shape<Fact>::columns.tell(fact, told);
    else
        tell(fact, told);
    if constexpr (HasChildren<Fact>)
        for (const auto& value : Shape<Fact>::children.all(fact))
            told.put(Shape<Fact>::children.value, std::optional{Shape<Fact>::children.raw(value)});
    return told;
}

} // namespace

template <typename Fact> Outcome FactChecks::fits(const Fact& fact) const
{
    const ToldCells told = toldOf(fact);
    if (!told.problem.empty())
        return refused(told.problem);
    for (const ToldCells::Reference& reference : told.references)
        if (const Outcome there = known(reference.table, reference.id); !there)
            return there;
    return Done{};
}

template <typename Fact> Outcome FactChecks::isNew(const Fact& fact) const
{
    if constexpr (kNamesVersions<decltype(fact.id)>) {
        if (!fact.id.isNull())
            if (const Outcome there = known(Shape<Fact>::table, fact.id.bytes); !there)
                return there;
    } else if (!fact.id.isNull()) {
        return refused("already saved: " + textOf(fact.id.bytes));
    }
    return fits(fact);
}

template <typename Thing> Outcome FactChecks::unused(const Thing& thing, std::string Thing::*name) const
{
    const std::string wanted = comparable(thing.*name);
    if (wanted.empty())
        return refused(std::string{"empty: the name of "} + Shape<Thing>::table);
    const auto all = [&] {
        if constexpr (requires { thing.airframe; })
            return newest<Thing>(m_connection, "WHERE t.airframe = ?", {valueOf(thing.airframe)});
        else
            return newest<Thing>(m_connection);
    }();
    if (!all)
        return all.problem();
    const bool taken = std::ranges::any_of(all.value(), [&](const Thing& other) {
        return other.id != thing.id && comparable(other.*name) == wanted;
    });
    if (taken)
        return refused(std::string{"already in use as a name of "} + Shape<Thing>::table + ": " +
                       thing.*name);
    return Done{};
}

Outcome FactChecks::thereIs(const QString& sql, const QVariantList& values, const std::string& elseWhy) const
{
    const auto found = m_connection.integer(sql, values);
    if (!found)
        return found.problem();
    return found.value() ? Outcome{Done{}} : refused(elseWhy);
}

Outcome FactChecks::thereIsNo(const QString& sql, const QVariantList& values,
                              const std::string& elseWhy) const
{
    const auto found = m_connection.integer(sql, values);
    if (!found)
        return found.problem();
    return found.value() ? refused(elseWhy) : Outcome{Done{}};
}

Outcome FactChecks::known(const char* table, const IdBytes& id) const
{
    return thereIs(sqlOf(hasVersions(table) ? "SELECT 1 FROM %1 WHERE id = ? AND subject = id"
                                            : "SELECT 1 FROM %1 WHERE id = ?",
                         table),
                   {valueOf(id)}, std::string{"no such "} + table + ": " + textOf(id));
}

Outcome FactChecks::sameAirframe(const RecordId& record, const char* table, const IdBytes& part) const
{
    return thereIs(sqlOf("SELECT 1 FROM rigging_record r JOIN %1 p ON p.airframe = r.airframe"
                         " WHERE r.id = ? AND p.id = ? AND p.subject = p.id",
                         table),
                   {valueOf(record), valueOf(part)},
                   std::string{"not of the record's airframe: "} + table + ' ' + textOf(part));
}

Outcome FactChecks::ofAirframe(const char* table, const IdBytes& id, const AirframeId& airframe) const
{
    return thereIs(sqlOf("SELECT 1 FROM %1 WHERE id = ? AND airframe = ?", table),
                   {valueOf(id), valueOf(airframe)}, std::string{"not of this airframe: "} + table);
}

Outcome FactChecks::notYetToCome(Moment when) const
{
    if (when.utcSeconds > m_now.utcSeconds + kDaySeconds)
        return refused("in the future");
    return Done{};
}

Outcome FactChecks::open(const RecordId& record) const
{
    return thereIsNo(QStringLiteral("SELECT 1 FROM closing WHERE record = ?"), {valueOf(record)},
                     "the record is already closed");
}

Outcome FactChecks::correctable(const Reading& reading) const
{
    // A closed record takes no further readings; one of its own may still be put right.
    if (!reading.corrects)
        return reading.record ? open(*reading.record) : Outcome{Done{}};
    if (isBlank(reading.note))
        return refused("a correction without a reason");
    const QVariant corrected = valueOf(*reading.corrects);
    return firstProblem(
        {thereIs(QStringLiteral("SELECT 1 FROM reading WHERE id = ? AND coupling = ?"),
                 {corrected, valueOf(reading.coupling)}, "corrects no reading of this coupling"),
         thereIs(QStringLiteral("SELECT 1 FROM reading WHERE id = ? AND record IS ?"),
                 {corrected, valueOf(reading.record)}, "corrects a reading of another record"),
         thereIsNo(QStringLiteral("SELECT 1 FROM reading WHERE corrects = ?"), {corrected},
                   "that reading was corrected before")});
}

Outcome FactChecks::check(const Airframe& airframe) const
{
    return firstProblem({isNew(airframe), unused(airframe, &Airframe::registration)});
}

Outcome FactChecks::check(const Person& person) const
{
    return firstProblem({isNew(person), unused(person, &Person::name)});
}

Outcome FactChecks::check(const Gauge& gauge) const
{
    if (gauge.set.isEmpty())
        return refused("a gauge without sizes");
    return firstProblem({isNew(gauge), unused(gauge, &Gauge::name)});
}

Outcome FactChecks::check(const GaugeCheck& check) const
{
    return isNew(check);
}

Outcome FactChecks::check(const Coupling& coupling) const
{
    return firstProblem({isNew(coupling), unused(coupling, &Coupling::name)});
}

Outcome FactChecks::check(const Fitting& fitting) const
{
    return isNew(fitting);
}

Outcome FactChecks::check(const Event& event) const
{
    return firstProblem({isNew(event), event.coupling ? ofAirframe(Shape<Coupling>::table,
                                                                   event.coupling->bytes, event.airframe)
                                                      : Outcome{Done{}}});
}

Outcome FactChecks::check(const RiggingRecord& record) const
{
    return firstProblem({isNew(record), notYetToCome(record.begins)});
}

Outcome FactChecks::check(const Check& check) const
{
    return firstProblem({isNew(check), notYetToCome(check.when),
                         sameAirframe(check.record, Shape<Coupling>::table, check.coupling.bytes),
                         open(check.record)});
}

Outcome FactChecks::check(const Reading& reading) const
{
    if (problemOf(reading.interval) != IntervalProblem::None)
        return refused("no possible interval");
    if (const Outcome made = isNew(reading); !made)
        return made;
    return firstProblem(
        {thereIs(QStringLiteral("SELECT 1 FROM fitting WHERE id = ? AND coupling = ?"),
                 {valueOf(reading.fitting), valueOf(reading.coupling)}, "the fitting is not of the coupling"),
         reading.record ? sameAirframe(*reading.record, Shape<Coupling>::table, reading.coupling.bytes)
                        : Outcome{Done{}},
         notYetToCome(reading.when), twoPeople(reading.person, reading.second), correctable(reading)});
}

Outcome FactChecks::check(const Shown& shown) const
{
    return fits(shown);
}

Outcome FactChecks::check(const Exclusion& exclusion) const
{
    return firstProblem({isNew(exclusion), filled(exclusion.reason, "reason"),
                         exclusion.stamp.by ? Outcome{Done{}} : refused("excluded by nobody")});
}

Outcome FactChecks::check(const FrozenBaseline& baseline) const
{
    if (baseline.readings.empty())
        return refused("a baseline of no readings");
    if (const Outcome names = firstProblem({isNew(baseline), twoPeople(baseline.first, baseline.second)});
        !names)
        return names;
    if (std::set(baseline.readings.begin(), baseline.readings.end()).size() != baseline.readings.size())
        return refused("a reading twice in one baseline");
    for (const ReadingId& reading : baseline.readings) {
        const Outcome own =
            thereIs(QStringLiteral("SELECT 1 FROM reading WHERE id = ? AND fitting = ?"),
                    {valueOf(reading), valueOf(baseline.fitting)}, "a reading of another fitting");
        if (!own)
            return own;
    }
    return Done{};
}

Outcome FactChecks::check(const Interruption& interruption) const
{
    return firstProblem({isNew(interruption), sameAirframe(interruption.record, Shape<Coupling>::table,
                                                           interruption.coupling.bytes)});
}

Outcome FactChecks::check(const RecordClose& close) const
{
    if (close.closing == Closing::Complete && (!close.first || !close.second))
        return refused("a complete close needs two names");
    return firstProblem({isNew(close), twoPeople(close.first, close.second), open(close.record)});
}

Outcome FactChecks::check(const Surface& surface) const
{
    if ((surface.up || surface.down || surface.mostPlay) && isBlank(surface.manualReference))
        return refused("figures from a manual without its page");
    return firstProblem({isNew(surface), unused(surface, &Surface::name)});
}

Outcome FactChecks::check(const SurfaceCheck& check) const
{
    return firstProblem({isNew(check), sameAirframe(check.record, Shape<Surface>::table, check.surface.bytes),
                         twoPeople(check.person, check.cockpit), open(check.record)});
}

Outcome FactChecks::check(const SurfaceMeasure& measure) const
{
    return firstProblem({isNew(measure),
                         sameAirframe(measure.record, Shape<Surface>::table, measure.surface.bytes),
                         open(measure.record)});
}

Outcome FactChecks::check(const RecordTick& tick) const
{
    return firstProblem({isNew(tick), open(tick.record)});
}

Outcome FactChecks::check(const Question& question) const
{
    const auto own = [&](const char* table, const auto& id) {
        return id ? ofAirframe(table, id->bytes, question.airframe) : Outcome{Done{}};
    };
    return firstProblem({isNew(question), own(Shape<RiggingRecord>::table, question.record),
                         own(Shape<Coupling>::table, question.coupling),
                         own(Shape<Surface>::table, question.surface)});
}

Outcome FactChecks::check(const Resolution& resolution) const
{
    return firstProblem({isNew(resolution), filled(resolution.found, "what was found"),
                         filled(resolution.done, "what was done"),
                         thereIsNo(QStringLiteral("SELECT 1 FROM resolution WHERE question = ?"),
                                   {valueOf(resolution.question)}, "the question is already closed")});
}

} // namespace rig
