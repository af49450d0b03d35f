#include "app/pages/setup/baseline_day_presenter.h"

#include "app/pages/setup/things_kept.h"
#include "core/store/ask.h"

namespace rig {

namespace {

// What was pressed, of the coupling and the fitting that the sheet shows.
Reading readingFrom(const ReadingSheet& sheet, PersonId person, GaugeId gauge, const GaugeReading& taken,
                    Moment now)
{
    Reading reading;
    reading.coupling = sheet.coupling.id;
    reading.fitting = sheet.fitting->id;
    reading.interval = taken.interval;
    reading.technique = taken.technique;
    reading.gauge = gauge;
    reading.person = person;
    reading.when = now;
    reading.stamp = {person, now};
    return reading;
}

void makeCorrection(Reading& reading, const ReadingSheet& sheet, ReadingId wrong, const std::string& note)
{
    reading.corrects = wrong;
    reading.note = note;
    for (const BaselineReadingRow& row : sheet.readings)
        if (row.reading.id == wrong) { // who was there stays; who corrects it states it
            reading.person = row.reading.person;
            reading.second = row.reading.second;
        }
}

template <typename IdType> Outcome doneWith(const Result<IdType>& added)
{
    return added ? Outcome{Done{}} : Outcome{added.problem()};
}

} // namespace

Result<BaselineDayView> BaselineDayPresenter::view(AirframeId airframe) const
{
    const auto known = m_desk.known(airframe);
    if (!known)
        return known.problem();
    return baselineDayOf(*known.value(), m_desk.today());
}

// What `make` makes of the airframe and of one of its couplings.
template <typename Sheet, typename Make>
Result<Sheet> BaselineDayPresenter::sheetOf(AirframeId airframe, CouplingId coupling, Make make) const
{
    const auto known = m_desk.known(airframe);
    if (!known)
        return known.problem();
    const Coupling* found = findIn(known.value()->facts().couplings, coupling);
    if (!found || !hasGap(*found))
        return Problem{ProblemKind::NotFound, textOf(coupling.bytes)};
    return make(*known.value(), *found);
}

Result<BaselineSheet> BaselineDayPresenter::sheet(AirframeId airframe, CouplingId coupling) const
{
    return sheetOf<BaselineSheet>(airframe, coupling, [this](const KnownAirframe& known, const Coupling& of) {
        return baselineSheetOf(known, of, m_desk.today());
    });
}

Result<DemonstrationSheet> BaselineDayPresenter::demonstration(AirframeId airframe, CouplingId coupling,
                                                               std::optional<GaugeId> gauge) const
{
    return sheetOf<DemonstrationSheet>(airframe, coupling,
                                       [this, gauge](const KnownAirframe& known, const Coupling& of) {
                                           return demonstrationSheetOf(known, of, gauge, m_desk.today());
                                       });
}

Result<ReadingId> BaselineDayPresenter::keep(const BaselineSheet& sheet, PersonId person, GaugeId gauge,
                                             const GaugeReading& taken,
                                             const std::optional<Correction>& correction)
{
    Reading reading = readingFrom(sheet, person, gauge, taken, m_desk.now());
    reading.purpose = Purpose::Baseline;
    if (correction)
        makeCorrection(reading, sheet, correction->of, correction->reason);
    return m_desk.records().add(reading, std::nullopt);
}

Result<ReadingId> BaselineDayPresenter::keep(const DemonstrationSheet& sheet, PersonId person, GaugeId gauge,
                                             const GaugeReading& taken, PersonId second,
                                             const std::optional<Correction>& correction)
{
    Reading reading = readingFrom(sheet, person, gauge, taken, m_desk.now());
    reading.state = SeatState::PartSeated;
    reading.purpose = Purpose::Demonstration;
    reading.second = second;
    if (correction) {
        makeCorrection(reading, sheet, correction->of, correction->reason);
        return m_desk.records().add(reading, std::nullopt); // on paper: the joint was not touched for it
    }
    Question question;
    question.airframe = sheet.coupling.airframe;
    question.kind = QuestionKind::ShownPartSeated;
    question.coupling = sheet.coupling.id;
    question.stamp = reading.stamp;
    Result<ReadingId> kept = ReadingId{};
    const Outcome done = m_desk.records().together([&]() -> Outcome {
        kept = m_desk.records().add(reading, std::nullopt);
        return kept ? ask(m_desk.records(), question) : Outcome{kept.problem()};
    });
    if (!done)
        return done.problem();
    return kept;
}

Outcome BaselineDayPresenter::exclude(ReadingId reading, PersonId by, const std::string& reason)
{
    Exclusion exclusion;
    exclusion.reading = reading;
    exclusion.reason = reason;
    exclusion.stamp = {by, m_desk.now()};
    return doneWith(m_desk.records().add(exclusion));
}

Outcome BaselineDayPresenter::freeze(const BaselineSheet& sheet, PersonId first, PersonId second)
{
    FrozenBaseline baseline;
    baseline.fitting = sheet.fitting->id;
    for (const BaselineReadingRow& row : sheet.readings)
        if (row.admitted)
            baseline.readings.push_back(row.reading.id);
    baseline.first = first;
    baseline.second = second;
    baseline.stamp = {first, m_desk.now()};
    return doneWith(m_desk.records().add(baseline));
}

} // namespace rig
