#include "app/pages/rigged_today/rigged_today_presenter.h"

#include "app/wording/review_words.h"
#include "app/wording/rigged_words.h"
#include "core/airframe/name_in.h"
#include "core/airframe/saved_before.h"
#include "core/review/airframe_review.h"
#include "core/review/last_rigging.h"
#include "core/review/not_seen.h"
#include "core/review/review_period.h"
#include "core/review/slips.h"
#include "core/review/whole_check.h"
#include "core/rigging/time_known.h"
#include "core/store/airframe_facts.h"
#include "core/store/facts_book.h"

#include <algorithm>

namespace rig {

namespace {

constexpr std::size_t kRecentReadings = 12;
// A set is checked every month of the season (common practice, no published source).
constexpr std::chrono::days kDaysBetweenGaugeChecks{31};

LastClose lastCloseOf(const EndedRigging& last, const AirframeFacts& facts)
{
    const RecordClose& close = *last.close;
    return LastClose{last.when(), close.closing, close.first ? facts.nameOf(*close.first) : std::string{},
                     close.second ? facts.nameOf(*close.second) : std::string{}};
}

// The last rigging was closed, and no later event says that it was taken apart.
bool mayStandRigged(const EndedRigging& last, const AirframeFacts& facts)
{
    return !last.isAbandoned() && std::ranges::none_of(facts.events, [&last](const Event& event) {
        return event.kind == EventKind::Derigged && event.day >= last.when().localDay();
    });
}

// What is told and asked before a rigging is begun.
void addStart(RiggedTodayView& view, const AirframeFacts& facts)
{
    view.notes = notesUnread(facts);
    const auto last = lastEnded(facts, Ended::OrLeftBehind);
    if (!last)
        return;
    view.lastClose = lastCloseOf(*last, facts);
    view.hasClosedRecord = std::ranges::any_of(
        facts.closings, [](Closing one) { return one != Closing::Abandoned; }, &RecordClose::closing);
    // Of a joint that was cleaned, greased or set up since, nobody can say that it stood as it was.
    view.mayStandRigged = mayStandRigged(*last, facts) && view.wholeChecks.empty();
}

// The airframe and what is asked of it on that day, at that rigging or at the next one.
RiggedTodayView partsIn(const AirframeFacts& facts, const RiggingRecord* open, Day day)
{
    RiggedTodayView view;
    view.airframe = facts.airframe;
    view.persons = facts.persons;
    view.gauges = facts.gaugesInUse();
    for (const Gauge& gauge : view.gauges)
        if (const auto good = facts.lastGoodCheck(gauge.id, day))
            view.goodChecks[gauge.id] = *good;
    view.couplings = facts.couplingsInUse();
    view.surfaces = facts.surfacesInUse();
    const WholeChecks wholeChecks{facts, open};
    for (const Coupling& coupling : view.couplings)
        if (const auto event = wholeChecks.askedOf(coupling.id))
            view.wholeChecks.emplace(coupling.id, *event);
    return view;
}

RiggedTodayView viewWithoutRecord(const AirframeFacts& facts, Day today)
{
    RiggedTodayView view = partsIn(facts, nullptr, today);
    addStart(view, facts);
    return view;
}

CouplingStandings standingsAt(const AirframeFacts& facts, Day today)
{
    const ReviewPeriod period = reviewPeriods(facts, today).front();
    return {facts, period.from, period.to};
}

// Without how they move: that is told where there is time to look back.
std::map<CouplingId, CouplingStanding>
standingsIn(const KnownAirframe& known, std::span<const Coupling> couplings, const CouplingStandings& all)
{
    std::map<CouplingId, CouplingStanding> standings;
    for (const Coupling& coupling : couplings)
        standings.emplace(coupling.id, all.standingOf(coupling, known.history(coupling.id)));
    return standings;
}

// The gravest of what is told of how it moves; else the early sign, which tells no more than that something
// may.
QString movementTold(const CouplingReview& coupling)
{
    for (const Sign sign : {Sign::Drift, Sign::Step, Sign::StepOrDrift, Sign::ScatterGrew})
        if (coupling.has(sign))
            return RiggedWords::movement(ReviewWords::sign(sign, coupling));
    const DriftFlag* flag = coupling.movement ? coupling.movement->raised() : nullptr;
    return flag ? ReviewWords::earlySign(*flag) : QString{};
}

// Out of the band with a reason; of a frozen one it stays.
bool isLeftOut(const Reading& reading, const AirframeFacts& facts, const CouplingHistory& history)
{
    const FittingHistory* fitting = history.find(reading.fitting);
    return !(fitting && fitting->admitted.contains(reading.id)) &&
           std::ranges::find(facts.exclusions, reading.id, &Exclusion::reading) != facts.exclusions.end();
}

// The last readings of the coupling before this record, as a small trend. Of one from paper those that were
// measured before it, whatever was read since.
std::vector<const KeptReading*> readBefore(const KnownAirframe& known, CouplingId coupling,
                                           const RecordHeader& record)
{
    const CouplingHistory& history = known.history(coupling);
    auto read = known.lastLocked(coupling, kRecentReadings + known.facts().exclusions.size(), record.id,
                                 record.enteredBy ? std::optional{record.begins} : std::nullopt);
    std::erase_if(read,
                  [&](const KeptReading* one) { return isLeftOut(one->reading, known.facts(), history); });
    if (read.size() > kRecentReadings)
        read.erase(read.begin(), read.end() - kRecentReadings);
    return read;
}

// Of a record from paper none where its day lies before the fitting: how the joint was fitted then is not
// known.
std::optional<Band> bandFor(const FittingHistory& fitting, const RecordHeader& record)
{
    const bool isBefore = record.enteredBy && record.begins.localDay() < fitting.fitting.begins;
    return isBefore ? std::nullopt : fitting.baseline.band();
}

TrendSeries recentSeries(const KnownAirframe& known, CouplingId coupling, const RecordHeader& record)
{
    const CouplingHistory& history = known.history(coupling);
    TrendSeries series;
    for (const FittingHistory& fitting : history.fittings)
        series.fittings.push_back({noonOf(fitting.fitting.begins), 0, bandFor(fitting, record), {}});
    for (const KeptReading* kept : readBefore(known, coupling, record)) {
        TrendReading one;
        one.interval = kept->reading.interval;
        one.when = kept->reading.when;
        one.isTimeKnown = isTimeKnown(kept->reading);
        one.rigging = static_cast<double>(series.readings.size());
        one.verdict = judgeIn(history, kept->reading).verdict;
        series.readings.push_back(one);
    }
    return series;
}

std::optional<SlipThatStops> slipAt(const KnownAirframe& known, CouplingId coupling)
{
    const AirframeFacts& facts = known.facts();
    const auto slip =
        slipThatStops(facts.questions, coupling, facts.readingsOf(coupling), facts.exclusions,
                      [&known](const Reading& one) { return judgeIn(known.history(one.coupling), one); });
    if (!slip)
        return std::nullopt;
    return SlipThatStops{*slip, slip->stamp.by ? facts.nameOf(*slip->stamp.by) : std::string{}};
}

// The day that stopped it, where it was at no rigging but earlier ones.
std::optional<Day> stoppedSince(const std::vector<QuestionStory>& questions, CouplingId coupling,
                                const JointStop& stop, RecordId record)
{
    std::optional<Day> since;
    for (const QuestionStory& story : questions) {
        const Question& question = story.question;
        const bool isOfIt =
            stop.surface ? question.surface == stop.surface->surface : question.coupling == coupling;
        if (!question.isStop() || !story.isOpen() || !isOfIt)
            continue;
        if (question.record == record)
            return std::nullopt;
        since = since ? std::min(*since, question.day()) : question.day();
    }
    return since;
}

// What the session is worked against. What stopped a joint in an earlier record stops it in this one.
RecordNow recordNowIn(const RiggedTodayView& view, const RecordContent& content, const AirframeFacts& facts)
{
    std::vector<PersonId> persons;
    for (const Person& person : view.persons)
        persons.push_back(person.id);
    RecordNow now = recordNowOf(content, view.couplings, persons);
    for (CouplingNow& one : now.couplings)
        if (const auto coupling = std::ranges::find(view.couplings, one.id, &Coupling::id);
            coupling != view.couplings.end())
            one.stop = stopAmong(facts.questions, *coupling, facts.surfaces);
    for (const SurfaceProgress& one : view.review.surfaces) {
        const auto surface = std::ranges::find(view.surfaces, one.id, &Surface::id);
        SurfaceNow there{one.id, one.next && !one.stop, !one.answers.empty()};
        if (surface != view.surfaces.end()) {
            there.expected = expectedOf(*surface);
            there.stoppedJoint = stoppedJointFor(surface->kind, view.couplings, now);
        }
        there.isWaiting = there.isWaiting && !there.stoppedJoint;
        now.surfaces.push_back(there);
    }
    now.isControlCheckDone = view.review.surfacesDone() == std::ssize(view.review.surfaces);
    return now;
}

} // namespace

RiggedTodayPresenter::RiggedTodayPresenter(const Records& records, const Clock& clock)
    : m_records{records}, m_clock{clock}
{
}

Result<RiggedTodayView> RiggedTodayPresenter::view(AirframeId airframe) const
{
    const auto writes = m_records.book().writesElsewhere();
    const auto rest = m_records.book().withoutReadings(airframe);
    if (!rest)
        return rest.problem();
    RiggedTodayView view;
    if (openRecordIn(*rest.value())) {
        auto made = viewOfRecord(airframe);
        if (!made)
            return made;
        view = std::move(made).value();
    } else {
        view = viewWithoutRecord(*rest.value(), m_clock.now().localDay());
    }
    view.writesElsewhere = writes ? writes.value() : 0;
    return view;
}

Result<RiggedTodayPresenter::PaperFinding> RiggedTodayPresenter::paperFinding(AirframeId airframe,
                                                                              Moment begins) const
{
    const auto rest = m_records.book().withoutReadings(airframe);
    if (!rest)
        return rest.problem();
    const PaperMoment found = paperMomentOf(*rest.value(), begins, m_clock.now());
    PaperFinding finding{found.finding, found.first, {}, {}};
    if (found.other) {
        finding.other = *found.other;
        finding.otherLeader = rest.value()->nameOf(found.other->leader);
    }
    return finding;
}

bool RiggedTodayPresenter::hasMovedOn(const RiggedTodayView& view) const
{
    const auto writes = m_records.book().writesElsewhere();
    return writes && writes.value() != view.writesElsewhere;
}

Day RiggedTodayPresenter::dayOfRigging(const AirframeFacts& facts) const
{
    const RiggingRecord* open = openRecordIn(facts);
    return open && open->isFromPaper() ? open->begins.localDay() : m_clock.now().localDay();
}

Result<RiggedTodayView> RiggedTodayPresenter::viewOfRecord(AirframeId airframe) const
{
    const auto known = m_records.book().airframe(airframe);
    if (!known)
        return known.problem();
    const AirframeFacts& facts = known.value()->facts();
    const Day today = m_clock.now().localDay();
    const RiggingRecord* open = openRecordIn(facts);
    if (!open)
        return viewWithoutRecord(facts, today); // closed by another window meanwhile
    const bool isFromAnotherDay = !open->isFromPaper() && open->begins.localDay() != today;
    // Nobody goes on with one from another day: the next one is asked then.
    RiggedTodayView view =
        isFromAnotherDay ? viewWithoutRecord(facts, today) : partsIn(facts, open, open->begins.localDay());
    const auto read = m_records.book().content(open->id);
    if (!read)
        return read.problem();
    const RecordContent& content = *read.value();
    view.record = RecordHeader{open->id,        open->leader,
                               open->begins,    isFromAnotherDay,
                               open->enteredBy, open->isFromPaper() && open->begins.localDay() != today};
    view.standings =
        open->isFromPaper()
            ? standingsIn(*known.value(), view.couplings, CouplingStandings{content, facts.surfaces})
            : standingsIn(*known.value(), view.couplings, standingsAt(facts, today));
    view.sharedShift = sharedShiftIn(content, *known.value(), view.couplings);
    view.stood = stoodBefore(*open, facts.riggingRecords, facts.closings);
    view.isFirstOfSeason = view.stood.isFirstOfSeason();
    view.isSeasonNotKnown = !view.stood.since && facts.airframe.riggingsBefore > 0;
    const RecordScope scope{view.couplings, view.surfaces, view.isFirstOfSeason};
    view.review = reviewOf(content, scope, [&known](const Reading& reading) {
        return judgeIn(known.value()->history(reading.coupling), reading);
    });
    if (!view.record->fromAnotherDay && !view.couplings.empty())
        view.now = recordNowIn(view, content, facts);
    return view;
}

Result<MovementsTold> RiggedTodayPresenter::movements(AirframeId airframe) const
{
    const auto known = m_records.book().airframe(airframe);
    if (!known)
        return known.problem();
    const AirframeFacts& facts = known.value()->facts();
    const ReviewPeriod period = reviewPeriods(facts, dayOfRigging(facts)).front();
    MovementsTold told;
    for (const CouplingReview& one : known.value()->review(period).couplings)
        if (const QString sentence = movementTold(one); !sentence.isEmpty())
            told.emplace(one.coupling.id, sentence);
    return told;
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
    const Day day = view.record->momentOf(m_clock.now()).localDay();
    sheet.isGaugeOverdue = sheet.gaugeChecked && day - *sheet.gaugeChecked > kDaysBetweenGaugeChecks;
}

Result<PersonStandings> RiggedTodayPresenter::people(AirframeId airframe) const
{
    const auto rest = m_records.book().withoutReadings(airframe);
    if (!rest)
        return rest.problem();
    return personStandingsOn(m_records, *rest.value(), dayOfRigging(*rest.value()));
}

Result<PersonStandings> RiggedTodayPresenter::peopleOn(AirframeId airframe, Day day) const
{
    const auto rest = m_records.book().withoutReadings(airframe);
    if (!rest)
        return rest.problem();
    return personStandingsOn(m_records, *rest.value(), day);
}

Outcome RiggedTodayPresenter::addPhotos(CouplingSheet& sheet, const RiggedTodayView& view,
                                        const AirframeFacts& facts) const
{
    const auto learning = m_records.book().learning(view.airframe.id);
    if (!learning)
        return learning.problem();
    const auto isOfBoth = [&sheet](const std::optional<CouplingId>& one) {
        return sheet.otherSide && (one == sheet.coupling.id || one == sheet.otherSide->id);
    };
    sheet.isSwapAsked = std::ranges::any_of(facts.questions, [&](const QuestionStory& story) {
        return story.isOpen() && story.question.kind == QuestionKind::SidesSwapped &&
               isOfBoth(story.question.coupling);
    });
    std::vector<const Coupling*> couplings{&sheet.coupling};
    if (sheet.isSwapAsked)
        couplings.insert(sheet.coupling.side == Side::Left ? couplings.end() : couplings.begin(),
                         &*sheet.otherSide);
    for (const Coupling* one : couplings)
        if (const Photo* photo = learning.value()->photo(one->id, PhotoOf::Locked))
            sheet.photos.push_back({*photo, one->name, nameIn(view.persons, photo->person)});
    return Done{};
}

Result<CouplingSheet> RiggedTodayPresenter::sheet(const RiggedTodayView& view,
                                                  const RiggingSession& session) const
{
    const CouplingId coupling = session.place.coupling;
    const auto found = std::ranges::find(view.couplings, coupling, &Coupling::id);
    const CouplingNow* now = view.now ? view.now->find(coupling) : nullptr;
    if (found == view.couplings.end() || !now)
        return Problem{ProblemKind::NotFound, textOf(coupling.bytes)};
    const auto asked = m_records.book().airframe(view.airframe.id);
    if (!asked)
        return asked.problem();
    const KnownAirframe& known = *asked.value();

    CouplingSheet sheet;
    sheet.coupling = *found;
    sheet.turn = session.turn;
    sheet.flow = now->flow(session.turn);
    sheet.stop = now->stop;
    if (sheet.stop)
        sheet.stoppedSince = stoppedSince(known.facts().questions, coupling, *sheet.stop, view.record->id);
    if (sheet.stop && sheet.stop->surface)
        sheet.stopSurface = nameIn(known.facts().surfaces, sheet.stop->surface->surface);
    if (sheet.stop && sheet.stop->isOutside())
        sheet.slip = slipAt(known, coupling);
    sheet.person = personAt(session, *view.now);
    sheet.isBegunElsewhere = isBegunElsewhere(session, *view.now);
    sheet.wanted = session.wanted;
    sheet.isMeasuringOpen = isMeasuringOpen(session, sheet.flow, sheet.stop);
    sheet.notSeen = notSeenAmong(known.facts().questions, view.record->id, coupling);
    for (const Person& person : view.persons)
        if (const auto why = now->whyNotSecond(person.id))
            sheet.notSecond.emplace(person.id, *why);
    sheet.isNobodyApart = now->isNobodyApart;
    const bool isAnythingFound = now->first.begun || now->first.last;
    sheet.isHidden = session.turn == Turn::Second && isAnythingFound && now->isHiddenFromSecond();
    sheet.hasConnectedIt = sheet.person && now->isConnectedBy(*sheet.person);
    sheet.otherSide = otherSideOf(sheet.coupling, view.couplings);
    if (const CouplingNow* other = sheet.otherSide ? view.now->find(sheet.otherSide->id) : nullptr)
        sheet.otherSidePersons = other->firstPersons;
    useGauge(sheet, view, session.gauge);
    if (const Outcome photos = addPhotos(sheet, view, known.facts()); !photos)
        return photos.problem();
    sheet.history = known.history(coupling);
    sheet.lastTwelve = recentSeries(known, coupling, *view.record);
    if (const FittingHistory* fitting = sheet.history.on(view.record->momentOf(m_clock.now()).localDay())) {
        sheet.band = bandFor(*fitting, *view.record);
        sheet.fitting = fitting->fitting.id;
    }
    // Of this record, and of whoever works in this turn: the other person's is not told.
    for (const JointPlay& play : known.facts().jointPlays)
        if (play.coupling == coupling && play.record == view.record->id && sheet.person == play.person)
            sheet.plays.push_back(play);
    for (const Reading& reading : sheet.flow.readings)
        sheet.readings.push_back({reading, withoutSight(judgeIn(sheet.history, reading), sheet.notSeen)});
    return sheet;
}

} // namespace rig
