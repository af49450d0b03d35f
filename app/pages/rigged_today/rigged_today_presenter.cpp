#include "app/pages/rigged_today/rigged_today_presenter.h"

#include "core/review/record_summary.h"
#include "core/store/ask.h"
#include "core/store/facts_book.h"

#include <algorithm>
#include <map>

namespace rig {

namespace {

constexpr std::size_t kRecentReadings = 12;
// A set is checked every month of the season (common practice, no published source).
constexpr std::chrono::days kDaysBetweenGaugeChecks{31};

// The newest record that is not closed.
const RiggingRecord* openRecordIn(const AirframeFacts& facts)
{
    const RiggingRecord* open = nullptr;
    for (const RiggingRecord& record : facts.riggingRecords) {
        if (record.origin == RecordOrigin::ImportedTable)
            continue;
        const bool closed = std::ranges::any_of(
            facts.closings, [&record](const RecordClose& close) { return close.record == record.id; });
        if (!closed && (!open || open->id < record.id))
            open = &record;
    }
    return open;
}

std::optional<LastClose> lastCloseIn(const AirframeFacts& facts)
{
    const auto last = std::ranges::max_element(facts.closings, {}, &RecordClose::id);
    if (last == facts.closings.end())
        return std::nullopt;
    return LastClose{last->stamp.when, last->closing,
                     last->first ? facts.nameOf(*last->first) : std::string{},
                     last->second ? facts.nameOf(*last->second) : std::string{}};
}

std::set<PersonId> firstPersonsIn(const RecordContent& content, CouplingId coupling)
{
    std::set<PersonId> persons;
    for (const Check& check : content.checks)
        if (check.coupling == coupling && check.turn == Turn::First)
            persons.insert(check.person);
    for (const Reading& reading : content.readings)
        if (reading.coupling == coupling && reading.turn == Turn::First)
            persons.insert(reading.person);
    return persons;
}

Question questionAbout(const CouplingSheet& sheet, const Reading& reading, QuestionKind kind)
{
    Question question;
    question.airframe = sheet.coupling.airframe;
    question.kind = kind;
    question.record = reading.record;
    question.coupling = sheet.coupling.id;
    question.reading = reading.id;
    question.stamp = reading.stamp;
    return question;
}

// A rigging was closed, and no later event says that it was taken apart.
bool mayStandRigged(const AirframeFacts& facts)
{
    const auto last = std::ranges::max_element(facts.closings, {}, &RecordClose::id);
    if (last == facts.closings.end() || last->closing == Closing::Abandoned)
        return false;
    return std::ranges::none_of(facts.events, [&last](const Event& event) {
        return event.kind == EventKind::Derigged && event.day >= last->stamp.when.localDay();
    });
}

// The last readings of the coupling before this record, as a small trend.
TrendSeries recentSeries(const KnownAirframe& known, CouplingId coupling, RecordId record)
{
    const CouplingHistory& history = known.history(coupling);
    TrendSeries series;
    for (const FittingHistory& fitting : history.fittings)
        series.fittings.push_back({noonOf(fitting.fitting.begins), 0, fitting.baseline.band(), {}});
    for (const KeptReading* kept : known.lastLocked(coupling, kRecentReadings, record)) {
        TrendReading one;
        one.interval = kept->reading.interval;
        one.when = kept->reading.when;
        one.rigging = static_cast<double>(series.readings.size());
        one.verdict = judgeIn(history, kept->reading).verdict;
        series.readings.push_back(one);
    }
    return series;
}

} // namespace

RiggedTodayPresenter::RiggedTodayPresenter(Records& records, const Clock& clock)
    : m_records{records}, m_clock{clock}
{
}

Result<RiggedTodayView> RiggedTodayPresenter::view(AirframeId airframe) const
{
    const auto known = m_records.book().airframe(airframe);
    if (!known)
        return known.problem();
    const AirframeFacts& facts = known.value()->facts();
    RiggedTodayView view;
    view.airframe = facts.airframe;
    view.persons = facts.persons;
    view.gauges = facts.gaugesInUse();
    for (const Gauge& gauge : view.gauges)
        if (const auto day = facts.lastGoodCheck(gauge.id))
            view.goodChecks[gauge.id] = *day;
    view.couplings = facts.couplingsInUse();
    view.surfaces = facts.surfacesInUse();
    view.lastClose = lastCloseIn(facts);
    view.hasClosedRecord = lastClosedRecord(facts).has_value();
    view.mayStandRigged = mayStandRigged(facts);
    const RiggingRecord* open = openRecordIn(facts);
    if (!open)
        return view;

    const auto read = m_records.book().content(open->id);
    if (!read)
        return read.problem();
    const RecordContent& content = *read.value();
    view.record = RecordHeader{open->id, open->leader, open->begins,
                               open->begins.localDay() != m_clock.now().localDay()};
    Histories histories;
    for (const Coupling& coupling : view.couplings)
        histories.emplace(coupling.id, known.value()->history(coupling.id));
    view.sharedShift = sharedShiftIn(content, histories);
    view.isFirstOfSeason = isFirstOfSeason(*open, facts.riggingRecords, facts.closings);
    const RecordScope scope{view.couplings, view.surfaces, view.isFirstOfSeason};
    view.review = reviewOf(content, scope, [&histories](const Reading& reading) {
        return judgeIn(histories.at(reading.coupling), reading);
    });
    return view;
}

Result<CouplingSheet> RiggedTodayPresenter::sheet(const RiggedTodayView& view, CouplingId coupling,
                                                  Turn turn) const
{
    const auto asked = m_records.book().airframe(view.airframe.id);
    if (!asked)
        return asked.problem();
    const KnownAirframe& known = *asked.value();
    const auto read = m_records.book().content(view.record->id);
    if (!read)
        return read.problem();
    const RecordContent& content = *read.value();
    const auto found = std::ranges::find(view.couplings, coupling, &Coupling::id);
    if (found == view.couplings.end())
        return Problem{ProblemKind::NotFound, textOf(coupling.bytes)};

    CouplingSheet sheet;
    sheet.coupling = *found;
    sheet.turn = turn;
    sheet.flow = flowOf(content, coupling, turn);
    sheet.firstPersons = firstPersonsIn(content, coupling);
    sheet.otherSide = otherSideOf(sheet.coupling, view.couplings);
    if (sheet.otherSide)
        sheet.otherSidePersons = firstPersonsIn(content, sheet.otherSide->id);
    sheet.history = known.history(coupling);
    sheet.lastTwelve = recentSeries(known, coupling, view.record->id);
    if (const FittingHistory* fitting = sheet.history.on(m_clock.now().localDay()))
        sheet.band = fitting->baseline.band();
    for (const Reading& reading : sheet.flow.readings)
        sheet.readings.push_back({reading, judgeIn(sheet.history, reading), known.isSuperseded(reading.id)});
    return sheet;
}

void RiggedTodayPresenter::useGauge(CouplingSheet& sheet, const RiggedTodayView& view,
                                    std::optional<GaugeId> chosen) const
{
    sheet.gauge.reset();
    if (view.gauges.size() == 1)
        sheet.gauge = view.gauges.front();
    const auto found =
        std::ranges::find_if(view.gauges, [&](const Gauge& gauge) { return gauge.id == chosen; });
    if (found != view.gauges.end())
        sheet.gauge = *found;
    sheet.gaugeChecked.reset();
    if (!sheet.gauge)
        return;
    if (const auto check = view.goodChecks.find(sheet.gauge->id); check != view.goodChecks.end())
        sheet.gaugeChecked = check->second;
    sheet.isGaugeOverdue =
        sheet.gaugeChecked && m_clock.now().localDay() - *sheet.gaugeChecked > kDaysBetweenGaugeChecks;
}

Reading RiggedTodayPresenter::readingFrom(const CouplingSheet& sheet, const GaugeReading& taken) const
{
    Reading reading;
    reading.coupling = sheet.coupling.id;
    reading.interval = taken.interval;
    reading.technique = taken.technique;
    reading.gauge = sheet.gauge->id;
    reading.purpose = Purpose::Rigging;
    reading.turn = sheet.turn;
    reading.person = *sheet.person;
    reading.when = m_clock.now();
    reading.stamp = {sheet.person, reading.when};
    if (const FittingHistory* fitting = sheet.history.on(reading.when.localDay()))
        reading.fitting = fitting->fitting.id;
    return reading;
}

Judgement RiggedTodayPresenter::preview(const CouplingSheet& sheet, const GaugeReading& taken) const
{
    return judgeIn(sheet.history, readingFrom(sheet, taken));
}

Result<RecordId> RiggedTodayPresenter::begin(const RiggedTodayView& view, PersonId leader,
                                             RecordOrigin origin)
{
    const Moment now = m_clock.now();
    RecordId begun;
    const Outcome done = m_records.together([&]() -> Outcome {
        if (view.record) {
            RecordClose abandoned;
            abandoned.record = view.record->id;
            abandoned.closing = Closing::Abandoned;
            abandoned.stamp = {leader, now};
            if (const auto closed = m_records.add(abandoned); !closed)
                return closed.problem();
        }
        RiggingRecord record;
        record.airframe = view.airframe.id;
        record.origin = origin;
        record.leader = leader;
        record.begins = now;
        record.stamp = {leader, now};
        const auto added = m_records.add(record);
        if (!added)
            return added.problem();
        begun = added.value();
        return Done{};
    });
    if (!done)
        return done.problem();
    return begun;
}

Outcome RiggedTodayPresenter::noteTakenApart(const RiggedTodayView& view)
{
    Event event;
    event.airframe = view.airframe.id;
    event.kind = EventKind::Derigged;
    event.day = m_clock.now().localDay();
    const auto added = m_records.add(event);
    return added ? Outcome{Done{}} : Outcome{added.problem()};
}

Outcome RiggedTodayPresenter::tick(RecordId record, TickKind kind, PersonId person)
{
    RecordTick tick;
    tick.record = record;
    tick.kind = kind;
    tick.person = person;
    tick.stamp.by = person;
    const auto added = m_records.add(tick);
    return added ? Outcome{Done{}} : Outcome{added.problem()};
}

Outcome RiggedTodayPresenter::answer(RecordId record, const CouplingSheet& sheet, CheckKind kind,
                                     Answer answer)
{
    Check check;
    check.record = record;
    check.coupling = sheet.coupling.id;
    check.kind = kind;
    check.answer = answer;
    check.turn = sheet.turn;
    check.person = *sheet.person;
    check.when = m_clock.now();
    check.stamp = {sheet.person, check.when};
    return m_records.together([&]() -> Outcome {
        if (const auto added = m_records.add(check); !added)
            return added.problem();
        const auto question = questionFrom(check, sheet.coupling.airframe);
        return question ? ask(m_records, *question) : Outcome{Done{}};
    });
}

Result<ReadingNews> RiggedTodayPresenter::keep(RecordId record, const CouplingSheet& sheet,
                                               const GaugeReading& taken, const Judgement& shown,
                                               const std::string& correctionReason)
{
    Reading reading = readingFrom(sheet, taken);
    reading.record = record;
    if (!correctionReason.empty() && !sheet.readings.empty()) {
        reading.corrects = sheet.readings.back().reading.id;
        reading.note = correctionReason;
    }
    ReadingNews news;
    const Outcome kept = m_records.together([&]() -> Outcome {
        const auto added = m_records.add(reading, Shown{shown, kMethodVersion});
        if (!added)
            return added.problem();
        reading.id = added.value();
        if (shown.verdict == Verdict::Outside)
            if (const Outcome asked =
                    ask(m_records, questionAbout(sheet, reading, QuestionKind::OutsideReading));
                !asked)
                return asked;
        // A first reading that lies where it belongs says nothing about anybody else: no need to read the
        // file.
        if (sheet.turn == Turn::First && !liesOff(shown.verdict))
            return Done{};
        auto compared = compare(sheet, reading);
        if (!compared)
            return compared.problem();
        news = std::move(compared).value();
        return Done{};
    });
    if (!kept)
        return kept.problem();
    return news;
}

Result<ReadingNews> RiggedTodayPresenter::compare(const CouplingSheet& sheet, const Reading& reading)
{
    const auto known = m_records.book().airframe(sheet.coupling.airframe);
    if (!known)
        return known.problem();
    const auto read = m_records.book().content(*reading.record);
    if (!read)
        return read.problem();
    const RecordContent& content = *read.value();
    std::vector<Reading> all;
    for (const KeptReading& kept : known.value()->facts().readings)
        if (kept.reading.record != reading.record)
            all.push_back(kept.reading);
    ReadingNews news;
    news.spread = personsSpread(all);
    if (sheet.turn == Turn::Second)
        news.pair = pairIn(content, sheet.coupling.id, news.spread);
    if (news.pair && news.pair->verdict == numbers::PairVerdict::Disagree)
        if (const Outcome asked =
                ask(m_records, questionAbout(sheet, reading, QuestionKind::ReadingsDisagree));
            !asked)
            return asked.problem();
    const auto swapped = isSwapSuspected(sheet, reading, *known.value(), content);
    if (!swapped)
        return swapped.problem();
    news.looksSwapped = swapped.value();
    if (news.looksSwapped)
        if (const Outcome asked = ask(m_records, questionAbout(sheet, reading, QuestionKind::SidesSwapped));
            !asked)
            return asked.problem();
    return news;
}

Result<bool> RiggedTodayPresenter::isSwapSuspected(const CouplingSheet& sheet, const Reading& reading,
                                                   const KnownAirframe& known,
                                                   const RecordContent& content) const
{
    if (!sheet.otherSide)
        return false;
    const std::vector<Reading> others = standing(flowOf(content, sheet.otherSide->id, sheet.turn).readings);
    if (others.empty())
        return false;
    return looksSwapped(reading, sheet.history, others.back(), known.history(sheet.otherSide->id));
}

Outcome RiggedTodayPresenter::interrupt(RecordId record, CouplingId coupling, Turn turn,
                                        InterruptionReason reason)
{
    Interruption interruption;
    interruption.record = record;
    interruption.coupling = coupling;
    interruption.turn = turn;
    interruption.reason = reason;
    interruption.stamp.when = m_clock.now();
    const auto added = m_records.add(interruption);
    if (!added)
        return added.problem();
    return Done{};
}

Outcome RiggedTodayPresenter::close(const RiggedTodayView& view, PersonId first, PersonId second,
                                    const std::string& note, std::span<const TickKind> counted)
{
    RecordClose close;
    close.record = view.record->id;
    close.closing = view.review.mayCloseComplete() ? Closing::Complete : Closing::LeftOpen;
    close.first = first;
    close.second = second;
    close.note = note;
    close.stamp = {first, m_clock.now()};
    return m_records.together([&]() -> Outcome {
        for (const TickKind kind : counted)
            if (const Outcome ticked = tick(close.record, kind, first); !ticked)
                return ticked;
        const auto added = m_records.add(close);
        return added ? Outcome{Done{}} : Outcome{added.problem()};
    });
}

Outcome RiggedTodayPresenter::resume(AirframeId airframe)
{
    const auto open = m_records.openRecord(airframe);
    if (!open)
        return open.problem();
    if (!open.value())
        return Done{};
    const auto content = m_records.content(*open.value());
    if (!content)
        return content.problem();
    const auto couplings = m_records.couplings(airframe);
    if (!couplings)
        return couplings.problem();
    for (const Coupling& coupling : couplings.value()) {
        for (const Turn turn : {Turn::First, Turn::Second}) {
            const CouplingFlow flow = flowOf(content.value(), coupling.id, turn);
            if (!flow.begun || flow.isDone())
                continue;
            const Outcome noted =
                interrupt(*open.value(), coupling.id, turn, InterruptionReason::ProgramClosed);
            if (!noted)
                return noted;
        }
    }
    return Done{};
}

} // namespace rig
