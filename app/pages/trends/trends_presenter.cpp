#include "app/pages/trends/trends_presenter.h"

#include "app/report/movement_series.h"
#include "app/wording/doubt_words.h"
#include "app/wording/review_words.h"
#include "app/wording/trends_page_words.h"
#include "core/review/coupling_history.h"
#include "core/review/judging.h"
#include "core/review/record_review.h"
#include "core/review/rigging_numbers.h"
#include "core/store/airframe_facts.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace rig {

namespace {

// Works out one coupling from the facts of its airframe.
class CouplingTrendMaker
{
public:
    CouplingTrendMaker(const AirframeFacts& facts, const RiggingNumbers& numbers, const Coupling& coupling,
                       std::vector<Reading> readings);

    CouplingTrend make(Day today);

private:
    void addReadings();
    Moment beginOf(const Fitting& fitting) const;
    void addFittings();
    void addEvents();
    void placeBetweenRiggings();
    void fillSeries();
    BandOrigin originOf(const FittingHistory& fitting) const;
    FittingCounts countsOf(FittingId fitting) const;
    std::optional<LatestVerdict> latest() const;

    const AirframeFacts& m_facts;
    const RiggingNumbers& m_numbers;
    std::vector<Reading> m_readings; // oldest first
    CouplingHistory m_history;
    CouplingTrend m_trend;
};

// What is said of a reading in doubt, for each gauge and day once.
class Doubts
{
public:
    explicit Doubts(const AirframeFacts& facts) : m_facts{facts} {}

    const QString& of(const Reading& reading)
    {
        const std::pair key{*reading.gauge, reading.when.localDay()};
        const auto known = m_said.find(key);
        return known != m_said.end() ? known->second : m_said.emplace(key, sentence(key)).first->second;
    }

private:
    QString sentence(const std::pair<GaugeId, Day>& key) const
    {
        const Gauge* gauge = m_facts.gauge(key.first);
        const GaugeCheck* bad = doubtOn(key.first, key.second, m_facts.gaugeChecks);
        return DoubtWords::reading(DoubtWords::gauge(gauge->set.kind(), QString::fromStdString(gauge->name)),
                                   *bad->quarantineFrom);
    }

    const AirframeFacts& m_facts;
    std::map<std::pair<GaugeId, Day>, QString> m_said;
};

QString ownNote(const TrendsReading& one, Doubts& doubts)
{
    const QString note = QString::fromStdString(one.reading.note);
    if (!one.inDoubt)
        return note;
    const QString& doubt = doubts.of(one.reading);
    return note.isEmpty() ? doubt : DoubtWords::readingWithNote(note, doubt);
}

std::string noteOf(const TrendsReading& one, Doubts& doubts)
{
    const QString note = ownNote(one, doubts);
    if (one.superseded)
        return TrendsPageWords::superseded(note, QString::fromStdString(one.supersededReason)).toStdString();
    if (one.excluded)
        return TrendsPageWords::leftOut(note, QString::fromStdString(one.excludedReason)).toStdString();
    return note.toStdString();
}

std::vector<Reading> oldestFirst(std::vector<Reading> readings)
{
    std::ranges::sort(readings, [](const Reading& a, const Reading& b) {
        return std::tie(a.when.utcSeconds, a.id) < std::tie(b.when.utcSeconds, b.id);
    });
    return readings;
}

CouplingTrendMaker::CouplingTrendMaker(const AirframeFacts& facts, const RiggingNumbers& numbers,
                                       const Coupling& coupling, std::vector<Reading> readings)
    : m_facts{facts}, m_numbers{numbers}, m_readings{oldestFirst(std::move(readings))},
      m_history{historyOf(coupling.id, facts.fittings, m_readings, facts.exclusions, facts.frozenBaselines,
                          facts.gauges, facts.gaugeChecks)}
{
    m_trend.coupling = coupling;
    m_trend.series.coupling = coupling.id;
    m_trend.series.name = coupling.name;
    if (facts.airframe.annualDue)
        m_trend.series.annualDue = noonOf(*facts.airframe.annualDue);
}

CouplingTrend CouplingTrendMaker::make(Day today)
{
    addReadings();
    addFittings();
    addEvents();
    placeBetweenRiggings();
    fillSeries();
    if (const FittingHistory* holding = m_history.on(today)) {
        m_trend.origin = originOf(*holding);
        m_trend.counts = countsOf(holding->fitting.id);
    }
    m_trend.latest = latest();
    return std::move(m_trend);
}

void CouplingTrendMaker::addReadings()
{
    std::map<ReadingId, std::string> supersededBy;
    for (const Reading& reading : m_readings)
        if (reading.corrects)
            supersededBy.emplace(*reading.corrects, reading.note);
    std::map<ReadingId, std::string> excluded;
    for (const Exclusion& exclusion : m_facts.exclusions)
        excluded.emplace(exclusion.reading, exclusion.reason);

    Judging judging{m_history};
    Doubts doubts{m_facts};
    for (const Reading& reading : m_readings) {
        TrendsReading one;
        one.reading = reading;
        one.riggingNumber = m_numbers.of(reading);
        one.judgement = judging.of(reading);
        one.person = m_facts.nameOf(reading.person);
        if (const Gauge* gauge = reading.gauge ? m_facts.gauge(*reading.gauge) : nullptr)
            one.gauge = gauge->name;
        const FittingHistory* fitting = m_history.find(reading.fitting);
        one.inDoubt = judging.isInDoubt(reading);
        one.ofBaseline = fitting && fitting->admitted.contains(reading.id) && !one.inDoubt;
        if (const auto found = supersededBy.find(reading.id); found != supersededBy.end()) {
            one.superseded = true;
            one.supersededReason = found->second;
        }
        if (const auto found = excluded.find(reading.id); found != excluded.end() && !one.ofBaseline) {
            one.excluded = true;
            one.excludedReason = found->second;
        }
        one.note = noteOf(one, doubts);
        m_trend.readings.push_back(std::move(one));
    }
}

// The first second of its day where it was read: whatever was read on that day came after it.
Moment CouplingTrendMaker::beginOf(const Fitting& fitting) const
{
    const auto first = std::ranges::find(m_readings, fitting.id, &Reading::fitting);
    const std::int32_t offset = first == m_readings.end() ? 0 : first->when.offsetSeconds;
    return {wallSeconds(fitting.begins) - offset, offset};
}

void CouplingTrendMaker::addFittings()
{
    for (const FittingHistory& fitting : m_history.fittings)
        m_trend.series.fittings.push_back(
            {beginOf(fitting.fitting), 0, fitting.baseline.band(), fitting.fitting.reason});
}

void CouplingTrendMaker::addEvents()
{
    for (const Event& event : m_facts.events)
        if (!event.coupling || *event.coupling == m_trend.coupling.id)
            m_trend.series.events.push_back(
                {noonOf(event.day), 0,
                 TrendsPageWords::event(event.kind, QString::fromStdString(event.note)).toStdString(),
                 event.kind == EventKind::Annual});
    std::ranges::stable_sort(m_trend.series.events, {}, &TrendEvent::when);
}

// What has no rigging number of its own stands between the numbers: fittings first on their day, then what
// was done, then what was read.
void CouplingTrendMaker::placeBetweenRiggings()
{
    std::vector<std::pair<std::int64_t, double*>> places;
    for (TrendFitting& fitting : m_trend.series.fittings)
        places.emplace_back(wallSeconds(fitting.begins.localDay()), &fitting.rigging);
    for (TrendEvent& event : m_trend.series.events)
        places.emplace_back(wallSeconds(event.when.localDay()), &event.rigging);
    for (TrendsReading& one : m_trend.readings) {
        if (one.riggingNumber)
            one.rigging = *one.riggingNumber;
        else
            places.emplace_back(wallSeconds(one.reading.when), &one.rigging);
    }
    std::ranges::stable_sort(places, {}, [](const auto& place) { return place.first; });
    std::vector<std::int64_t> times;
    for (const auto& place : places)
        times.push_back(place.first);
    const std::vector<double> between = m_numbers.between(times);
    for (std::size_t i = 0; i < places.size(); ++i)
        *places[i].second = between[i];
}

void CouplingTrendMaker::fillSeries()
{
    for (const TrendsReading& one : m_trend.readings) {
        TrendReading drawn;
        drawn.interval = one.reading.interval;
        drawn.when = one.reading.when;
        drawn.rigging = one.rigging;
        drawn.verdict = one.judgement.verdict;
        drawn.state = one.reading.state;
        drawn.ofBaseline = one.ofBaseline;
        drawn.setAside = one.isSetAside();
        drawn.inDoubt = one.inDoubt;
        drawn.person = one.person;
        drawn.gauge = one.gauge;
        drawn.note = one.note;
        m_trend.series.readings.push_back(std::move(drawn));
    }
}

BandOrigin CouplingTrendMaker::originOf(const FittingHistory& fitting) const
{
    BandOrigin origin;
    origin.band = fitting.baseline.band();
    origin.confirmedReadings = fitting.baseline.readings();
    origin.status = fitting.baseline.status();
    origin.isFrozen = fitting.isFrozen;
    origin.doubted = m_history.doubtedVersionOf(fitting);
    const auto place = std::ranges::find(m_history.fittings, fitting.fitting.id,
                                         [](const FittingHistory& one) { return one.fitting.id; });
    origin.fittingNumber = static_cast<int>(place - m_history.fittings.begin()) + 1;
    origin.fittingBegins = fitting.fitting.begins;
    origin.fittingReason = fitting.fitting.reason;
    for (const Reading& reading : m_readings) { // oldest first
        if (!fitting.admitted.contains(reading.id) || fitting.inDoubt.contains(reading.id))
            continue;
        const Day day = reading.when.localDay();
        origin.firstDay = origin.firstDay ? origin.firstDay : day;
        origin.lastDay = day;
    }
    return origin;
}

FittingCounts CouplingTrendMaker::countsOf(FittingId fitting) const
{
    FittingCounts counts;
    for (const TrendsReading& one : m_trend.readings) {
        if (one.reading.fitting != fitting)
            continue;
        if (!one.isJudged()) {
            counts.partSeatedAtRigging += one.reading.purpose == Purpose::Rigging && !one.superseded ? 1 : 0;
            continue;
        }
        const Verdict verdict = one.judgement.verdict;
        if (one.isSetAside())
            counts.outsideSetAside += verdict == Verdict::Outside ? 1 : 0;
        if (one.isSetAside() || one.ofBaseline)
            continue;
        ++counts.judged;
        switch (verdict) {
        case Verdict::NoBandYet:
            ++counts.noBand;
            break;
        case Verdict::Outside:
            ++counts.outside;
            break;
        case Verdict::CannotTell:
            ++counts.cannotTell;
            break;
        case Verdict::NearEdge:
            ++counts.nearEdge;
            break;
        case Verdict::Inside:
            ++counts.inside;
            break;
        }
    }
    return counts;
}

// Measuring again adds a reading and takes none away, so the last rigging speaks by its gravest one.
std::optional<LatestVerdict> CouplingTrendMaker::latest() const
{
    const auto counts = [](const TrendsReading& one) {
        const bool shown =
            one.reading.state == SeatState::PartSeated && one.reading.purpose != Purpose::Rigging;
        return !one.isSetAside() && !shown;
    };
    const auto& all = m_trend.readings;
    const auto last = std::find_if(all.rbegin(), all.rend(), counts);
    if (last == all.rend())
        return std::nullopt;
    LatestVerdict latest;
    latest.reading = static_cast<std::size_t>(all.rend() - last) - 1;
    latest.verdict = last->judgement.verdict;
    latest.partSeated = !last->isJudged();
    if (!last->riggingNumber || latest.partSeated)
        return latest;
    for (std::size_t i = latest.reading; i-- > 0 && all[i].rigging == last->rigging;) {
        if (!counts(all[i]) || !all[i].isJudged())
            continue;
        ++latest.among;
        if (graver(latest.verdict, all[i].judgement.verdict) != latest.verdict) {
            latest.verdict = all[i].judgement.verdict;
            latest.reading = i;
        }
    }
    return latest;
}

} // namespace

const CouplingTrend* TrendsView::find(std::optional<CouplingId> coupling) const
{
    const auto found = std::ranges::find_if(
        couplings, [&coupling](const CouplingTrend& one) { return coupling == one.coupling.id; });
    return found == couplings.end() ? nullptr : &*found;
}

TrendsPresenter::TrendsPresenter(const Records& records, const Clock& clock)
    : m_records{records}, m_clock{clock}
{
}

Result<TrendsView> TrendsPresenter::view(AirframeId airframe, const std::optional<ReviewPeriod>& period) const
{
    const auto known = factsOf(m_records, airframe);
    if (!known)
        return known.problem();
    const AirframeFacts& facts = known.value();
    std::map<CouplingId, std::vector<Reading>> readings;
    for (const KeptReading& kept : facts.readings)
        readings[kept.reading.coupling].push_back(kept.reading);

    TrendsView view;
    view.airframe = facts.airframe;
    const RiggingNumbers numbers{facts};
    const Day today = m_clock.now().localDay();
    for (const Coupling& coupling : facts.couplingsInUse())
        view.couplings.push_back(
            CouplingTrendMaker{facts, numbers, coupling, std::move(readings[coupling.id])}.make(today));
    view.review = airframeReviewOf(facts, period.value_or(reviewPeriods(facts, today).front()));
    for (CouplingTrend& trend : view.couplings)
        if (const CouplingReview* review = view.review.find(trend.coupling.id))
            drawMovement(*review, view.review, trend.series);
    view.aircraft = aircraftSeriesOf(facts, view.review);
    const ReviewWords words{facts};
    for (const SharedShiftStory& story : view.review.sharedShifts)
        view.sharedShifts << words.shift(story);
    if (view.sharedShifts.isEmpty())
        view.sharedShifts << ReviewWords::noShift(view.review);
    return view;
}

} // namespace rig
