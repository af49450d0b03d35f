#include "core/store/fact_rows.h"

namespace rig {

namespace {

std::optional<Band> bandFrom(Row& row)
{
    if (row.skipNull())
        return std::nullopt;
    Band band;
    band.inner.lower = row.number();
    band.inner.upper = row.number();
    band.outer.lower = row.number();
    band.outer.upper = row.number();
    band.median = row.number();
    band.scatter = row.number();
    band.readings = row.count();
    band.scatterAtCap = row.flag();
    return band;
}

std::optional<Deflection> deflectionFrom(Row& row)
{
    if (row.skipNull())
        return std::nullopt;
    return Deflection{static_cast<std::int32_t>(row.integer())};
}

std::optional<ManualDeflection> manualFrom(Row& row)
{
    const auto nominal = deflectionFrom(row);
    const auto tolerance = deflectionFrom(row);
    if (!nominal || !tolerance)
        return std::nullopt;
    return ManualDeflection{*nominal, *tolerance};
}

} // namespace

Airframe airframeFrom(Row& row)
{
    Airframe airframe;
    airframe.id = row.id<AirframeId>();
    airframe.stamp = row.stamp();
    airframe.registration = row.text();
    airframe.type = row.text();
    airframe.serial = row.text();
    airframe.jurisdiction = row.text();
    airframe.manualReferences = row.text();
    airframe.annualDue = row.maybeDay();
    airframe.callName = row.text();
    airframe.callPhone = row.text();
    airframe.riggingsBefore = row.count();
    return airframe;
}

Person personFrom(Row& row)
{
    Person person;
    person.id = row.id<PersonId>();
    person.stamp = row.stamp();
    person.name = row.text();
    person.role = row.text();
    person.phone = row.text();
    return person;
}

GaugeCheck gaugeCheckFrom(Row& row)
{
    GaugeCheck check;
    check.id = row.id<FactId>();
    check.stamp = row.stamp();
    check.gauge = row.id<GaugeId>();
    check.day = row.day();
    check.how = row.text();
    check.found = row.text();
    check.quarantineFrom = row.maybeDay();
    return check;
}

Coupling couplingFrom(Row& row)
{
    Coupling coupling;
    coupling.id = row.id<CouplingId>();
    coupling.stamp = row.stamp();
    coupling.airframe = row.id<AirframeId>();
    coupling.name = row.text();
    coupling.circuit = row.text();
    coupling.side = row.kind<Side>();
    const std::optional<double> x = row.maybeNumber();
    const std::optional<double> y = row.maybeNumber();
    if (x && y)
        coupling.place = PlanPlace{*x, *y};
    coupling.access = row.text();
    coupling.leafPlace = row.text();
    coupling.layout = row.kind<Layout>();
    coupling.securing = row.kind<Securing>();
    coupling.riggingOrder = row.count();
    coupling.note = row.text();
    coupling.inUse = row.flag();
    return coupling;
}

Fitting fittingFrom(Row& row)
{
    Fitting fitting;
    fitting.id = row.id<FittingId>();
    fitting.stamp = row.stamp();
    fitting.coupling = row.id<CouplingId>();
    fitting.begins = row.day();
    fitting.reason = row.text();
    return fitting;
}

Event eventFrom(Row& row)
{
    Event event;
    event.id = row.id<EventId>();
    event.stamp = row.stamp();
    event.airframe = row.id<AirframeId>();
    event.coupling = row.maybeId<CouplingId>();
    event.kind = row.kind<EventKind>();
    event.day = row.day();
    event.note = row.text();
    return event;
}

RiggingRecord recordFrom(Row& row)
{
    RiggingRecord record;
    record.id = row.id<RecordId>();
    record.stamp = row.stamp();
    record.airframe = row.id<AirframeId>();
    record.origin = row.kind<RecordOrigin>();
    record.leader = row.id<PersonId>();
    record.begins = row.moment();
    return record;
}

Check checkFrom(Row& row)
{
    Check check;
    check.id = row.id<CheckId>();
    check.stamp = row.stamp();
    check.record = row.id<RecordId>();
    check.coupling = row.id<CouplingId>();
    check.kind = row.kind<CheckKind>();
    check.answer = row.kind<Answer>();
    check.turn = row.kind<Turn>();
    check.person = row.id<PersonId>();
    check.when = row.moment();
    return check;
}

Interruption interruptionFrom(Row& row)
{
    Interruption interruption;
    interruption.id = row.id<FactId>();
    interruption.stamp = row.stamp();
    interruption.record = row.id<RecordId>();
    interruption.coupling = row.id<CouplingId>();
    interruption.turn = row.kind<Turn>();
    interruption.reason = row.kind<InterruptionReason>();
    return interruption;
}

RecordClose closingFrom(Row& row)
{
    RecordClose close;
    close.id = row.id<FactId>();
    close.stamp = row.stamp();
    close.record = row.id<RecordId>();
    close.closing = row.kind<Closing>();
    close.first = row.maybeId<PersonId>();
    close.second = row.maybeId<PersonId>();
    close.note = row.text();
    return close;
}

Exclusion exclusionFrom(Row& row)
{
    Exclusion exclusion;
    exclusion.id = row.id<FactId>();
    exclusion.stamp = row.stamp();
    exclusion.reading = row.id<ReadingId>();
    exclusion.reason = row.text();
    return exclusion;
}

FrozenBaseline baselineFrom(Row& row)
{
    FrozenBaseline baseline;
    baseline.id = row.id<BaselineId>();
    baseline.stamp = row.stamp();
    baseline.fitting = row.id<FittingId>();
    baseline.first = row.id<PersonId>();
    baseline.second = row.id<PersonId>();
    return baseline;
}

Reading readingFrom(Row& row)
{
    Reading reading;
    reading.id = row.id<ReadingId>();
    reading.stamp = row.stamp();
    reading.coupling = row.id<CouplingId>();
    reading.fitting = row.id<FittingId>();
    reading.record = row.maybeId<RecordId>();
    reading.interval.enters = row.gap();
    reading.interval.refuses = row.maybeGap();
    reading.technique = row.kind<Technique>();
    reading.gauge = row.maybeId<GaugeId>();
    reading.state = row.kind<SeatState>();
    reading.purpose = row.kind<Purpose>();
    reading.turn = row.kind<Turn>();
    reading.person = row.id<PersonId>();
    reading.when = row.moment();
    reading.note = row.text();
    reading.corrects = row.maybeId<ReadingId>();
    return reading;
}

KeptReading keptReadingFrom(Row& row)
{
    KeptReading kept;
    kept.reading = readingFrom(row);
    if (row.skipNull())
        return kept; // nothing was shown
    Shown shown;
    shown.methodVersion = row.count();
    shown.judgement.verdict = row.kind<Verdict>();
    shown.judgement.reason = row.kind<Reason>();
    shown.judgement.direction = row.kind<Direction>();
    shown.judgement.tail = row.number();
    shown.judgement.witness.witness = row.kind<Witness>();
    shown.judgement.witness.miss = row.maybeNumber();
    shown.judgement.band = bandFrom(row);
    kept.shown = shown;
    return kept;
}

Surface surfaceFrom(Row& row)
{
    Surface surface;
    surface.id = row.id<SurfaceId>();
    surface.stamp = row.stamp();
    surface.airframe = row.id<AirframeId>();
    surface.name = row.text();
    surface.kind = row.kind<SurfaceKind>();
    surface.side = row.kind<Side>();
    surface.order = row.count();
    surface.senseCall = row.text();
    surface.unit = row.kind<DeflectionUnit>();
    surface.measuredAt = row.maybeGap();
    surface.up = manualFrom(row);
    surface.down = manualFrom(row);
    surface.mostPlay = deflectionFrom(row);
    surface.manualReference = row.text();
    surface.inUse = row.flag();
    return surface;
}

SurfaceCheck surfaceCheckFrom(Row& row)
{
    SurfaceCheck check;
    check.id = row.id<FactId>();
    check.stamp = row.stamp();
    check.record = row.id<RecordId>();
    check.surface = row.id<SurfaceId>();
    check.kind = row.kind<SurfaceCheckKind>();
    check.answer = row.kind<Answer>();
    check.person = row.id<PersonId>();
    check.cockpit = row.id<PersonId>();
    return check;
}

SurfaceMeasure surfaceMeasureFrom(Row& row)
{
    SurfaceMeasure measure;
    measure.id = row.id<FactId>();
    measure.stamp = row.stamp();
    measure.record = row.id<RecordId>();
    measure.surface = row.id<SurfaceId>();
    measure.kind = row.kind<MeasureKind>();
    measure.unit = row.kind<DeflectionUnit>();
    measure.value = Deflection{static_cast<std::int32_t>(row.integer())};
    measure.measuredAt = row.maybeGap();
    measure.person = row.id<PersonId>();
    return measure;
}

RecordTick tickFrom(Row& row)
{
    RecordTick tick;
    tick.id = row.id<FactId>();
    tick.stamp = row.stamp();
    tick.record = row.id<RecordId>();
    tick.kind = row.kind<TickKind>();
    tick.person = row.id<PersonId>();
    return tick;
}

QuestionStory questionStoryFrom(Row& row)
{
    QuestionStory story;
    Question& question = story.question;
    question.id = row.id<QuestionId>();
    question.stamp = row.stamp();
    question.airframe = row.id<AirframeId>();
    question.kind = row.kind<QuestionKind>();
    question.record = row.maybeId<RecordId>();
    question.coupling = row.maybeId<CouplingId>();
    question.surface = row.maybeId<SurfaceId>();
    question.reading = row.maybeId<ReadingId>();
    question.gauge = row.maybeId<GaugeId>();
    question.check = row.maybeKind<CheckKind>();
    question.surfaceCheck = row.maybeKind<SurfaceCheckKind>();
    if (row.skipNull())
        return story; // still open
    Resolution resolution;
    resolution.id = row.id<FactId>();
    resolution.stamp = row.stamp();
    resolution.question = question.id;
    resolution.person = row.id<PersonId>();
    resolution.found = row.text();
    resolution.done = row.text();
    story.resolution = resolution;
    return story;
}

} // namespace rig
