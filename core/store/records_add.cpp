#include "core/store/fact_checks.h"
#include "core/store/records.h"
#include "core/store/writer.h"

namespace rig {

namespace {

// Checks a fact and appends it, in one transaction.
template <typename SomeId, typename Fact, typename Append>
Result<SomeId> keep(Writer writer, const Fact& fact, Append append)
{
    return saved<SomeId>(std::move(writer), [&](Writer& within) -> Result<IdBytes> {
        if (within.checksFacts())
            if (const Outcome checked = FactChecks{within.connection(), within.now()}.check(fact); !checked)
                return checked.problem();
        return append(within);
    });
}

Result<IdBytes> subjectOf(const Result<Writer::Version>& version)
{
    if (!version)
        return version.problem();
    return version.value().subject;
}

Result<IdBytes> appendGauge(Writer& writer, const Gauge& gauge)
{
    const bool taper = gauge.set.kind() == GaugeKind::Taper;
    const std::optional<Gap> resolution = taper ? std::optional{gauge.set.resolution()} : std::nullopt;
    const auto version = writer.version("gauge", gauge.id.bytes, gauge.stamp,
                                        {{"name", valueOf(gauge.name)},
                                         kindColumn("kind", gauge.set.kind()),
                                         {"resolution_um", valueOf(resolution)},
                                         {"tolerance_um", valueOf(gauge.tolerance)},
                                         {"note", valueOf(gauge.note)},
                                         {"in_use", valueOf(gauge.inUse)}});
    if (!version)
        return version.problem();
    for (const Gap size : gauge.set.sizes()) {
        const Outcome added =
            writer.insert("gauge_size", {{"gauge", valueOf(version.value().id)}, {"size_um", valueOf(size)}});
        if (!added)
            return added.problem();
    }
    return version.value().subject;
}

Result<IdBytes> appendCoupling(Writer& writer, const Coupling& coupling)
{
    const QVariant x = coupling.place ? valueOf(coupling.place->x) : QVariant{};
    const QVariant y = coupling.place ? valueOf(coupling.place->y) : QVariant{};
    return subjectOf(writer.version("coupling", coupling.id.bytes, coupling.stamp,
                                    {{"airframe", valueOf(coupling.airframe)},
                                     {"name", valueOf(coupling.name)},
                                     {"circuit", valueOf(coupling.circuit)},
                                     kindColumn("side", coupling.side),
                                     {"plan_x", x},
                                     {"plan_y", y},
                                     {"access", valueOf(coupling.access)},
                                     {"leaf_place", valueOf(coupling.leafPlace)},
                                     kindColumn("layout", coupling.layout),
                                     kindColumn("securing", coupling.securing),
                                     {"rigging_order", valueOf(coupling.riggingOrder)},
                                     {"note", valueOf(coupling.note)},
                                     {"in_use", valueOf(coupling.inUse)}}));
}

Outcome appendShown(Writer& writer, const IdBytes& reading, const Shown& shown)
{
    const Judgement& judgement = shown.judgement;
    Columns columns{{"reading", valueOf(reading)},
                    {"method", valueOf(shown.methodVersion)},
                    kindColumn("verdict", judgement.verdict),
                    kindColumn("reason", judgement.reason),
                    kindColumn("direction", judgement.direction),
                    {"tail", valueOf(judgement.tail)},
                    kindColumn("witness", judgement.witness.witness),
                    {"miss", valueOf(judgement.witness.miss)}};
    if (const std::optional<Band>& band = judgement.band) {
        const ColumnValue ofBand[] = {
            {"inner_lower", valueOf(band->inner.lower)}, {"inner_upper", valueOf(band->inner.upper)},
            {"outer_lower", valueOf(band->outer.lower)}, {"outer_upper", valueOf(band->outer.upper)},
            {"median", valueOf(band->median)},           {"scatter", valueOf(band->scatter)},
            {"readings", valueOf(band->readings)},       {"at_cap", valueOf(band->scatterAtCap)}};
        columns.insert(columns.end(), std::begin(ofBand), std::end(ofBand));
    }
    return writer.insert("shown", columns);
}

Result<IdBytes> appendReading(Writer& writer, const Reading& reading, const std::optional<Shown>& shown)
{
    const Result<IdBytes> id = writer.fact("reading", reading.stamp,
                                           {{"coupling", valueOf(reading.coupling)},
                                            {"fitting", valueOf(reading.fitting)},
                                            {"record", valueOf(reading.record)},
                                            {"enters_um", valueOf(reading.interval.enters)},
                                            {"refuses_um", valueOf(reading.interval.refuses)},
                                            kindColumn("technique", reading.technique),
                                            {"gauge", valueOf(reading.gauge)},
                                            kindColumn("state", reading.state),
                                            kindColumn("purpose", reading.purpose),
                                            kindColumn("turn", reading.turn),
                                            {"person", valueOf(reading.person)},
                                            {"measured_at", valueOf(reading.when.utcSeconds)},
                                            {"measured_offset", valueOf(reading.when.offsetSeconds)},
                                            {"note", valueOf(reading.note)},
                                            {"corrects", valueOf(reading.corrects)}});
    if (id && shown)
        if (const Outcome kept = appendShown(writer, id.value(), *shown); !kept)
            return kept.problem();
    return id;
}

Result<IdBytes> appendBaseline(Writer& writer, const FrozenBaseline& baseline)
{
    const Result<IdBytes> id = writer.fact("baseline", baseline.stamp,
                                           {{"fitting", valueOf(baseline.fitting)},
                                            {"first", valueOf(baseline.first)},
                                            {"second", valueOf(baseline.second)}});
    if (!id)
        return id;
    for (const ReadingId& reading : baseline.readings) {
        const Outcome added = writer.insert(
            "baseline_reading", {{"baseline", valueOf(id.value())}, {"reading", valueOf(reading)}});
        if (!added)
            return added.problem();
    }
    return id;
}

} // namespace

bool Records::isOpenElsewhere() const
{
    return m_file.isOpenElsewhere();
}

Outcome Records::together(const std::function<Outcome()>& work)
{
    Transaction transaction{m_file.connection()};
    if (!transaction.begun())
        return transaction.begun();
    if (const Outcome done = work(); !done)
        return done;
    return transaction.commit();
}

Result<AirframeId> Records::add(const Airframe& airframe)
{
    return keep<AirframeId>(writer(), airframe, [&](Writer& writer) {
        return subjectOf(writer.version("airframe", airframe.id.bytes, airframe.stamp,
                                        {{"registration", valueOf(airframe.registration)},
                                         {"type", valueOf(airframe.type)},
                                         {"serial", valueOf(airframe.serial)},
                                         {"jurisdiction", valueOf(airframe.jurisdiction)},
                                         {"manual_refs", valueOf(airframe.manualReferences)},
                                         {"annual_due", valueOf(airframe.annualDue)},
                                         {"call_name", valueOf(airframe.callName)},
                                         {"call_phone", valueOf(airframe.callPhone)},
                                         {"riggings_before", valueOf(airframe.riggingsBefore)}}));
    });
}

Result<PersonId> Records::add(const Person& person)
{
    return keep<PersonId>(writer(), person, [&](Writer& writer) {
        return subjectOf(writer.version("person", person.id.bytes, person.stamp,
                                        {{"name", valueOf(person.name)},
                                         {"role", valueOf(person.role)},
                                         {"phone", valueOf(person.phone)}}));
    });
}

Result<GaugeId> Records::add(const Gauge& gauge)
{
    return keep<GaugeId>(writer(), gauge, [&](Writer& writer) { return appendGauge(writer, gauge); });
}

Result<FactId> Records::add(const GaugeCheck& check)
{
    return keep<FactId>(writer(), check, [&](Writer& writer) {
        return writer.fact("gauge_check", check.stamp,
                           {{"gauge", valueOf(check.gauge)},
                            {"day", valueOf(check.day)},
                            {"how", valueOf(check.how)},
                            {"found", valueOf(check.found)},
                            {"quarantine_from", valueOf(check.quarantineFrom)}});
    });
}

Result<CouplingId> Records::add(const Coupling& coupling)
{
    return keep<CouplingId>(writer(), coupling,
                            [&](Writer& writer) { return appendCoupling(writer, coupling); });
}

Result<FittingId> Records::add(const Fitting& fitting)
{
    return keep<FittingId>(writer(), fitting, [&](Writer& writer) {
        return writer.fact("fitting", fitting.stamp,
                           {{"coupling", valueOf(fitting.coupling)},
                            {"begins", valueOf(fitting.begins)},
                            {"reason", valueOf(fitting.reason)}});
    });
}

Result<EventId> Records::add(const Event& event)
{
    return keep<EventId>(writer(), event, [&](Writer& writer) {
        return writer.fact("event", event.stamp,
                           {{"airframe", valueOf(event.airframe)},
                            {"coupling", valueOf(event.coupling)},
                            kindColumn("kind", event.kind),
                            {"day", valueOf(event.day)},
                            {"note", valueOf(event.note)}});
    });
}

Result<RecordId> Records::add(const RiggingRecord& record)
{
    return keep<RecordId>(writer(), record, [&](Writer& writer) {
        return writer.fact("rigging_record", record.stamp,
                           {{"airframe", valueOf(record.airframe)},
                            kindColumn("origin", record.origin),
                            {"leader", valueOf(record.leader)},
                            {"begins_at", valueOf(record.begins.utcSeconds)},
                            {"begins_offset", valueOf(record.begins.offsetSeconds)}});
    });
}

Result<CheckId> Records::add(const Check& check)
{
    return keep<CheckId>(writer(), check, [&](Writer& writer) {
        return writer.fact("answer", check.stamp,
                           {{"record", valueOf(check.record)},
                            {"coupling", valueOf(check.coupling)},
                            kindColumn("kind", check.kind),
                            kindColumn("answer", check.answer),
                            kindColumn("turn", check.turn),
                            {"person", valueOf(check.person)},
                            {"answered_at", valueOf(check.when.utcSeconds)},
                            {"answered_offset", valueOf(check.when.offsetSeconds)}});
    });
}

Result<ReadingId> Records::add(const Reading& reading, const std::optional<Shown>& shown)
{
    return keep<ReadingId>(writer(), reading,
                           [&](Writer& writer) { return appendReading(writer, reading, shown); });
}

Result<FactId> Records::add(const Exclusion& exclusion)
{
    return keep<FactId>(writer(), exclusion, [&](Writer& writer) {
        return writer.fact("exclusion", exclusion.stamp,
                           {{"reading", valueOf(exclusion.reading)}, {"reason", valueOf(exclusion.reason)}});
    });
}

Result<BaselineId> Records::add(const FrozenBaseline& baseline)
{
    return keep<BaselineId>(writer(), baseline,
                            [&](Writer& writer) { return appendBaseline(writer, baseline); });
}

Result<FactId> Records::add(const Interruption& interruption)
{
    return keep<FactId>(writer(), interruption, [&](Writer& writer) {
        return writer.fact("interruption", interruption.stamp,
                           {{"record", valueOf(interruption.record)},
                            {"coupling", valueOf(interruption.coupling)},
                            kindColumn("turn", interruption.turn),
                            kindColumn("reason", interruption.reason)});
    });
}

Result<FactId> Records::add(const RecordClose& close)
{
    return keep<FactId>(writer(), close, [&](Writer& writer) {
        return writer.fact("closing", close.stamp,
                           {{"record", valueOf(close.record)},
                            kindColumn("closing", close.closing),
                            {"first", valueOf(close.first)},
                            {"second", valueOf(close.second)},
                            {"note", valueOf(close.note)}});
    });
}

Result<SurfaceId> Records::add(const Surface& surface)
{
    const auto part = [](const std::optional<ManualDeflection>& given, auto member) {
        return given ? valueOf((*given.*member).thousandths) : QVariant{};
    };
    return keep<SurfaceId>(writer(), surface, [&](Writer& writer) {
        return subjectOf(writer.version(
            "surface", surface.id.bytes, surface.stamp,
            {{"airframe", valueOf(surface.airframe)},
             {"name", valueOf(surface.name)},
             kindColumn("kind", surface.kind),
             kindColumn("side", surface.side),
             {"check_order", valueOf(surface.order)},
             {"sense_call", valueOf(surface.senseCall)},
             kindColumn("unit", surface.unit),
             {"measured_at_um", valueOf(surface.measuredAt)},
             {"up_nominal", part(surface.up, &ManualDeflection::nominal)},
             {"up_tolerance", part(surface.up, &ManualDeflection::tolerance)},
             {"down_nominal", part(surface.down, &ManualDeflection::nominal)},
             {"down_tolerance", part(surface.down, &ManualDeflection::tolerance)},
             {"most_play", surface.mostPlay ? valueOf(surface.mostPlay->thousandths) : QVariant{}},
             {"manual_reference", valueOf(surface.manualReference)},
             {"in_use", valueOf(surface.inUse)}}));
    });
}

Result<FactId> Records::add(const SurfaceCheck& check)
{
    return keep<FactId>(writer(), check, [&](Writer& writer) {
        return writer.fact("surface_answer", check.stamp,
                           {{"record", valueOf(check.record)},
                            {"surface", valueOf(check.surface)},
                            kindColumn("kind", check.kind),
                            kindColumn("answer", check.answer),
                            {"person", valueOf(check.person)},
                            {"cockpit", valueOf(check.cockpit)}});
    });
}

Result<FactId> Records::add(const SurfaceMeasure& measure)
{
    return keep<FactId>(writer(), measure, [&](Writer& writer) {
        return writer.fact("surface_measure", measure.stamp,
                           {{"record", valueOf(measure.record)},
                            {"surface", valueOf(measure.surface)},
                            kindColumn("kind", measure.kind),
                            kindColumn("unit", measure.unit),
                            {"value", valueOf(measure.value.thousandths)},
                            {"measured_at_um", valueOf(measure.measuredAt)},
                            {"person", valueOf(measure.person)}});
    });
}

Result<FactId> Records::add(const RecordTick& tick)
{
    return keep<FactId>(writer(), tick, [&](Writer& writer) {
        return writer.fact("tick", tick.stamp,
                           {{"record", valueOf(tick.record)},
                            kindColumn("kind", tick.kind),
                            {"person", valueOf(tick.person)}});
    });
}

Result<QuestionId> Records::add(const Question& question)
{
    return keep<QuestionId>(writer(), question, [&](Writer& writer) {
        return writer.fact("question", question.stamp,
                           {{"airframe", valueOf(question.airframe)},
                            kindColumn("kind", question.kind),
                            {"record", valueOf(question.record)},
                            {"coupling", valueOf(question.coupling)},
                            {"surface", valueOf(question.surface)},
                            {"reading", valueOf(question.reading)},
                            {"gauge", valueOf(question.gauge)},
                            kindColumn("check_kind", question.check),
                            kindColumn("surface_check", question.surfaceCheck)});
    });
}

Result<FactId> Records::add(const Resolution& resolution)
{
    return keep<FactId>(writer(), resolution, [&](Writer& writer) {
        return writer.fact("resolution", resolution.stamp,
                           {{"question", valueOf(resolution.question)},
                            {"person", valueOf(resolution.person)},
                            {"found", valueOf(resolution.found)},
                            {"done", valueOf(resolution.done)}});
    });
}

} // namespace rig
