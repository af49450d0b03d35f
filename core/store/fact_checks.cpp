#include "core/store/fact_checks.h"

#include "core/store/connection.h"
#include "core/store/names.h"
#include "core/store/values.h"

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

template <typename Tag> Outcome notYetSaved(const Id<Tag>& id)
{
    if (!id.isNull())
        return refused("already saved: " + textOf(id.bytes));
    return Done{};
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

} // namespace

Outcome FactChecks::known(const char* table, const IdBytes& id) const
{
    const bool versioned = std::ranges::count(std::array<std::string_view, 5>{"person", "airframe", "gauge",
                                                                              "coupling", "surface"},
                                              std::string_view{table}) > 0;
    const QString sql =
        sqlOf(versioned ? "SELECT 1 FROM %1 WHERE id = ? AND subject = id" : "SELECT 1 FROM %1 WHERE id = ?",
              table);
    const auto found = m_connection.integer(sql, {valueOf(id)});
    if (!found)
        return found.problem();
    if (!found.value())
        return refused(std::string{"no such "} + table + ": " + textOf(id));
    return Done{};
}

Outcome FactChecks::knownIfAny(const char* table, const IdBytes& id) const
{
    return id == IdBytes{} ? Outcome{Done{}} : known(table, id);
}

Outcome FactChecks::unused(const char* table, const char* column, const std::string& name, const IdBytes& own,
                           const char* within, const IdBytes& withinId) const
{
    const std::string wanted = comparable(name);
    if (wanted.empty())
        return refused(std::string{"empty: "} + column);
    QString sql =
        QStringLiteral(
            "SELECT subject, %2 FROM %1 t WHERE id = (SELECT max(id) FROM %1 WHERE subject = t.subject)")
            .arg(QString::fromLatin1(table), QString::fromLatin1(column));
    QVariantList values;
    if (within) {
        sql += QStringLiteral(" AND %1 = ?").arg(QString::fromLatin1(within));
        values.append(valueOf(withinId));
    }
    bool taken = false;
    const Outcome read = m_connection.each(sql, values, [&](Row& row) {
        const bool other = row.bytes() != own;
        taken = taken || (other && comparable(row.text()) == wanted);
    });
    if (!read)
        return read;
    if (taken)
        return refused(std::string{"already in use as "} + table + " " + column + ": " + name);
    return Done{};
}

Outcome FactChecks::sameAirframe(const RecordId& record, const CouplingId& coupling) const
{
    const auto found = m_connection.integer(
        QStringLiteral(
            "SELECT 1 FROM rigging_record r JOIN coupling c ON c.airframe = r.airframe WHERE r.id = ? AND "
            "c.id = ? AND c.subject = c.id"),
        {valueOf(record), valueOf(coupling)});
    if (!found)
        return found.problem();
    if (!found.value())
        return refused("the record and the coupling are not of one airframe");
    return Done{};
}

Outcome FactChecks::sameAirframe(const RecordId& record, const SurfaceId& surface) const
{
    const auto found = m_connection.integer(
        QStringLiteral(
            "SELECT 1 FROM rigging_record r JOIN surface s ON s.airframe = r.airframe WHERE r.id = ? AND "
            "s.id = ? AND s.subject = s.id"),
        {valueOf(record), valueOf(surface)});
    if (!found)
        return found.problem();
    if (!found.value())
        return refused("the record and the surface are not of one airframe");
    return Done{};
}

Outcome FactChecks::ofAirframe(const char* table, const IdBytes& id, const AirframeId& airframe) const
{
    const auto found = m_connection.integer(sqlOf("SELECT 1 FROM %1 WHERE id = ? AND airframe = ?", table),
                                            {valueOf(id), valueOf(airframe)});
    if (!found)
        return found.problem();
    if (!found.value())
        return refused(std::string{"not of this airframe: "} + table);
    return Done{};
}

Outcome FactChecks::notYetToCome(Moment when) const
{
    if (when.utcSeconds > m_now.utcSeconds + kDaySeconds)
        return refused("in the future");
    return Done{};
}

Outcome FactChecks::open(const RecordId& record) const
{
    const auto closed =
        m_connection.integer(QStringLiteral("SELECT 1 FROM closing WHERE record = ?"), {valueOf(record)});
    if (!closed)
        return closed.problem();
    if (closed.value())
        return refused("the record is already closed");
    return Done{};
}

Outcome FactChecks::correctable(const Reading& reading) const
{
    // A closed record takes no further readings; one of its own may still be put right.
    if (!reading.corrects)
        return reading.record ? open(*reading.record) : Outcome{Done{}};
    if (isBlank(reading.note))
        return refused("a correction without a reason");
    const auto same =
        m_connection.integer(QStringLiteral("SELECT 1 FROM reading WHERE id = ? AND coupling = ?"),
                             {valueOf(*reading.corrects), valueOf(reading.coupling)});
    if (!same)
        return same.problem();
    if (!same.value())
        return refused("corrects no reading of this coupling");
    const auto sameRecord =
        m_connection.integer(QStringLiteral("SELECT 1 FROM reading WHERE id = ? AND record IS ?"),
                             {valueOf(*reading.corrects), valueOf(reading.record)});
    if (!sameRecord)
        return sameRecord.problem();
    if (!sameRecord.value())
        return refused("corrects a reading of another record");
    const auto superseded = m_connection.integer(QStringLiteral("SELECT 1 FROM reading WHERE corrects = ?"),
                                                 {valueOf(*reading.corrects)});
    if (!superseded)
        return superseded.problem();
    if (superseded.value())
        return refused("that reading was corrected before");
    return Done{};
}

Outcome FactChecks::check(const Airframe& airframe) const
{
    return firstProblem(
        {knownIfAny("airframe", airframe.id.bytes),
         airframe.riggingsBefore < 0 ? refused("riggings before the file below 0") : Outcome{Done{}},
         unused("airframe", "registration", airframe.registration, airframe.id.bytes)});
}

Outcome FactChecks::check(const Person& person) const
{
    return firstProblem(
        {knownIfAny("person", person.id.bytes), unused("person", "name", person.name, person.id.bytes)});
}

Outcome FactChecks::check(const Gauge& gauge) const
{
    const bool taper = gauge.set.kind() == GaugeKind::Taper;
    if (gauge.set.isEmpty() || (taper && gauge.set.resolution() <= Gap{}))
        return refused("a gauge without sizes");
    if (std::ranges::any_of(gauge.set.sizes(), [](Gap size) { return size <= Gap{} || size > kWidestGap; }))
        return refused("a leaf of no thickness, or too thick");
    if (gauge.tolerance && *gauge.tolerance < Gap{})
        return refused("a tolerance below 0");
    return firstProblem(
        {knownIfAny("gauge", gauge.id.bytes), unused("gauge", "name", gauge.name, gauge.id.bytes)});
}

Outcome FactChecks::check(const GaugeCheck& check) const
{
    return firstProblem({notYetSaved(check.id), known("gauge", check.gauge.bytes)});
}

Outcome FactChecks::check(const Coupling& coupling) const
{
    return firstProblem(
        {knownIfAny("coupling", coupling.id.bytes), known("airframe", coupling.airframe.bytes),
         unused("coupling", "name", coupling.name, coupling.id.bytes, "airframe", coupling.airframe.bytes)});
}

Outcome FactChecks::check(const Fitting& fitting) const
{
    return firstProblem({notYetSaved(fitting.id), known("coupling", fitting.coupling.bytes)});
}

Outcome FactChecks::check(const Event& event) const
{
    const Outcome first = firstProblem({notYetSaved(event.id), known("airframe", event.airframe.bytes)});
    if (!first || !event.coupling)
        return first;
    const auto own = m_connection.integer(
        QStringLiteral("SELECT 1 FROM coupling WHERE id = ? AND subject = id AND airframe = ?"),
        {valueOf(*event.coupling), valueOf(event.airframe)});
    if (!own)
        return own.problem();
    if (!own.value())
        return refused("the coupling is not of this airframe");
    return Done{};
}

Outcome FactChecks::check(const RiggingRecord& record) const
{
    return firstProblem({notYetSaved(record.id), notYetToCome(record.begins),
                         known("airframe", record.airframe.bytes), known("person", record.leader.bytes)});
}

Outcome FactChecks::check(const Check& check) const
{
    return firstProblem({notYetSaved(check.id), notYetToCome(check.when),
                         sameAirframe(check.record, check.coupling), known("person", check.person.bytes),
                         open(check.record)});
}

Outcome FactChecks::check(const Reading& reading) const
{
    if (problemOf(reading.interval) != IntervalProblem::None)
        return refused("no possible interval");
    if (!reading.id.isNull())
        return notYetSaved(reading.id);
    const auto fits = m_connection.integer(
        QStringLiteral(
            "SELECT 1 FROM fitting f JOIN coupling c ON c.id = f.coupling WHERE f.id = ? AND f.coupling = ?"),
        {valueOf(reading.fitting), valueOf(reading.coupling)});
    if (!fits)
        return fits.problem();
    if (!fits.value())
        return refused("no such coupling, or the fitting is not of it");
    if (reading.record)
        if (const Outcome same = sameAirframe(*reading.record, reading.coupling); !same)
            return same;
    if (reading.gauge)
        if (const Outcome gauge = known("gauge", reading.gauge->bytes); !gauge)
            return gauge;
    return firstProblem(
        {notYetToCome(reading.when), known("person", reading.person.bytes), correctable(reading)});
}

Outcome FactChecks::check(const Exclusion& exclusion) const
{
    return firstProblem({notYetSaved(exclusion.id), filled(exclusion.reason, "reason"),
                         exclusion.stamp.by ? Outcome{Done{}} : refused("excluded by nobody"),
                         known("reading", exclusion.reading.bytes)});
}

Outcome FactChecks::check(const FrozenBaseline& baseline) const
{
    if (baseline.readings.empty())
        return refused("a baseline of no readings");
    const Outcome names =
        firstProblem({notYetSaved(baseline.id), twoPeople(baseline.first, baseline.second),
                      known("fitting", baseline.fitting.bytes), known("person", baseline.first.bytes),
                      known("person", baseline.second.bytes)});
    if (!names)
        return names;
    if (std::set(baseline.readings.begin(), baseline.readings.end()).size() != baseline.readings.size())
        return refused("a reading twice in one baseline");
    for (const ReadingId& reading : baseline.readings) {
        const auto own =
            m_connection.integer(QStringLiteral("SELECT 1 FROM reading WHERE id = ? AND fitting = ?"),
                                 {valueOf(reading), valueOf(baseline.fitting)});
        if (!own)
            return own.problem();
        if (!own.value())
            return refused("a reading of another fitting");
    }
    return Done{};
}

Outcome FactChecks::check(const Interruption& interruption) const
{
    return firstProblem(
        {notYetSaved(interruption.id), sameAirframe(interruption.record, interruption.coupling)});
}

Outcome FactChecks::check(const RecordClose& close) const
{
    if (close.closing == Closing::Complete && (!close.first || !close.second))
        return refused("a complete close needs two names");
    return firstProblem({notYetSaved(close.id), twoPeople(close.first, close.second),
                         known("rigging_record", close.record.bytes), open(close.record)});
}

Outcome FactChecks::check(const Surface& surface) const
{
    const auto isBelowNothing = [](const std::optional<ManualDeflection>& given) {
        return given && (given->nominal < Deflection{} || given->tolerance < Deflection{});
    };
    if (isBelowNothing(surface.up) || isBelowNothing(surface.down) ||
        (surface.mostPlay && *surface.mostPlay < Deflection{}))
        return refused("a deflection below 0");
    if (surface.measuredAt && *surface.measuredAt <= Gap{})
        return refused("a distance from the hinge of nothing");
    if ((surface.up || surface.down || surface.mostPlay) && isBlank(surface.manualReference))
        return refused("figures from a manual without its page");
    return firstProblem(
        {knownIfAny("surface", surface.id.bytes), known("airframe", surface.airframe.bytes),
         unused("surface", "name", surface.name, surface.id.bytes, "airframe", surface.airframe.bytes)});
}

Outcome FactChecks::check(const SurfaceCheck& check) const
{
    return firstProblem({notYetSaved(check.id), sameAirframe(check.record, check.surface),
                         known("person", check.person.bytes), known("person", check.cockpit.bytes),
                         twoPeople(check.person, check.cockpit), open(check.record)});
}

Outcome FactChecks::check(const SurfaceMeasure& measure) const
{
    if (measure.value < Deflection{} || (measure.measuredAt && *measure.measuredAt <= Gap{}))
        return refused("a measure below 0");
    return firstProblem({notYetSaved(measure.id), sameAirframe(measure.record, measure.surface),
                         known("person", measure.person.bytes), open(measure.record)});
}

Outcome FactChecks::check(const RecordTick& tick) const
{
    return firstProblem({notYetSaved(tick.id), known("rigging_record", tick.record.bytes),
                         known("person", tick.person.bytes), open(tick.record)});
}

Outcome FactChecks::check(const Question& question) const
{
    const AirframeId& airframe = question.airframe;
    const Outcome first =
        firstProblem({notYetSaved(question.id), known("airframe", airframe.bytes),
                      question.reading ? known("reading", question.reading->bytes) : Outcome{Done{}},
                      question.gauge ? known("gauge", question.gauge->bytes) : Outcome{Done{}}});
    if (!first)
        return first;
    return firstProblem(
        {question.record ? ofAirframe("rigging_record", question.record->bytes, airframe) : Outcome{Done{}},
         question.coupling ? ofAirframe("coupling", question.coupling->bytes, airframe) : Outcome{Done{}},
         question.surface ? ofAirframe("surface", question.surface->bytes, airframe) : Outcome{Done{}}});
}

Outcome FactChecks::check(const Resolution& resolution) const
{
    const auto closed = m_connection.integer(QStringLiteral("SELECT 1 FROM resolution WHERE question = ?"),
                                             {valueOf(resolution.question)});
    if (!closed)
        return closed.problem();
    if (closed.value())
        return refused("the question is already closed");
    return firstProblem({notYetSaved(resolution.id), known("question", resolution.question.bytes),
                         known("person", resolution.person.bytes), filled(resolution.found, "what was found"),
                         filled(resolution.done, "what was done")});
}

} // namespace rig
