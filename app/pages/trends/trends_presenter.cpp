#include "app/pages/trends/trends_presenter.h"

#include "app/wording/coupling_words.h"
#include "app/wording/demonstration_words.h"
#include "app/wording/doubt_words.h"
#include "app/wording/joint_play_words.h"
#include "app/wording/review_words.h"
#include "app/wording/trends_page_words.h"
#include "core/review/coupling_history.h"
#include "core/review/coupling_signs.h"
#include "core/review/rigging_numbers.h"
#include "core/rigging/counts_as.h"
#include "core/store/facts_book.h"
#include "core/store/records.h"
#include "core/views/movement_maker.h"
#include "core/views/trend_maker.h"

#include <algorithm>
#include <map>

namespace rig {

namespace {

// What is noted for a day still to come is shown too.
constexpr Day kLastDayOfAll = Day::max();

// Works out one coupling from the facts of its airframe.
class CouplingTrendMaker
{
public:
    // `shifts` of every rigging that the review knows; they outlive this object.
    CouplingTrendMaker(const KnownAirframe& known, const RiggingNumbers& numbers, const Coupling& coupling,
                       std::span<const DayShift> shifts);

    // The band's origin and the counts are those of the fitting that held on that day.
    CouplingTrend make(Day asOf);

private:
    void addReadings(const std::vector<JudgedReading>& judged);
    BandOrigin originOf(const FittingHistory& fitting) const;
    FittingCounts countsOf(FittingId fitting) const;

    const AirframeFacts& m_facts;
    const RiggingNumbers& m_numbers;
    const CouplingHistory& m_history;
    std::span<const DayShift> m_shifts;
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
    const QString note = DemonstrationWords::note(QString::fromStdString(one.reading.ownNote()),
                                                  QString::fromStdString(one.second));
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
    if (one.struck)
        return TrendsPageWords::struck(note, QString::fromStdString(one.struckReason)).toStdString();
    if (one.excluded)
        return TrendsPageWords::leftOut(note, QString::fromStdString(one.excludedReason)).toStdString();
    return note.toStdString();
}

CouplingTrendMaker::CouplingTrendMaker(const KnownAirframe& known, const RiggingNumbers& numbers,
                                       const Coupling& coupling, std::span<const DayShift> shifts)
    : m_facts{known.facts()}, m_numbers{numbers}, m_history{known.history(coupling.id)}, m_shifts{shifts}
{
    m_trend.coupling = coupling;
}

CouplingTrend CouplingTrendMaker::make(Day asOf)
{
    const std::vector<JudgedReading> judged = judgedReadingsOf(m_history, m_facts, m_numbers, kLastDayOfAll);
    m_trend.series = trendSeriesOf(m_trend.coupling, m_history, judged, m_facts, m_numbers, kLastDayOfAll);
    addReadings(judged);
    if (const FittingHistory* holding = m_history.on(asOf)) {
        m_trend.origin = originOf(*holding);
        m_trend.counts = countsOf(holding->fitting.id);
    }
    return std::move(m_trend);
}

void CouplingTrendMaker::addReadings(const std::vector<JudgedReading>& judged)
{
    Doubts doubts{m_facts};
    for (std::size_t i = 0; i < judged.size(); ++i) {
        const JudgedReading& from = judged[i];
        TrendReading& drawn = m_trend.series.readings[i];
        TrendsReading one;
        one.reading = from.reading;
        one.riggingNumber = from.rigging;
        one.rigging = drawn.rigging;
        one.judgement = from.judgement;
        one.person = m_facts.nameOf(from.reading.person);
        if (from.reading.second)
            one.second = m_facts.nameOf(*from.reading.second);
        if (const Gauge* gauge = from.reading.gauge ? m_facts.gauge(*from.reading.gauge) : nullptr)
            one.gauge = gauge->name;
        one.inDoubt = from.inDoubt;
        one.ofBaseline = from.ofBaseline;
        one.superseded = from.superseded;
        one.supersededReason = from.supersededReason;
        one.struck = from.struck;
        one.struckReason = from.struckReason;
        one.excluded = from.leftOut;
        one.excludedReason = from.leftOutReason;
        one.note = noteOf(one, doubts);
        drawn.person = one.person;
        drawn.gauge = one.gauge;
        drawn.note = one.note;
        m_trend.readings.push_back(std::move(one));
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
    origin.fittingReason = CouplingWords::whyFitted(fitting.fitting).toStdString();
    for (const TrendsReading& one : m_trend.readings) { // oldest first
        if (!fitting.admitted.contains(one.reading.id) || one.inDoubt)
            continue;
        const Day day = one.reading.when.localDay();
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
            int& found = one.reading.state == SeatState::NotSecured ? counts.notSecuredAtRigging
                                                                    : counts.partSeatedAtRigging;
            found += countsAs(one.reading.purpose).rigging && !one.isStruckThrough() ? 1 : 0;
            continue;
        }
        const Verdict verdict = one.judgement.verdict;
        if (one.isSetAside())
            counts.outsideSetAside += verdict == Verdict::Outside ? 1 : 0;
        if (one.isSetAside() || one.ofBaseline)
            continue;
        counts.add(verdict);
        const bool isTogether = wentWithAll(m_shifts, one.rigging, one.judgement.direction);
        counts.outsideTogether += verdict == Verdict::Outside && isTogether ? 1 : 0;
    }
    return counts;
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

Result<TrendsView> TrendsPresenter::view(AirframeId airframe, const std::optional<PeriodOffer>& chosen) const
{
    const Day today = m_clock.now().localDay();
    const auto known = m_records.book().toldOpenly(airframe, today);
    if (!known)
        return known.problem();
    const AirframeFacts& facts = known.value()->facts();
    TrendsView view;
    view.airframe = facts.airframe;
    view.offers = offeredPeriods(facts, today);
    view.chosen = chosenAmong(view.offers, chosen, facts);
    const ReviewPeriod& period = view.chosen.period;
    const RiggingNumbers numbers{facts};
    view.review = known.value()->review(period);
    for (const Coupling& coupling : facts.couplingsInUse())
        view.couplings.push_back(
            CouplingTrendMaker{*known.value(), numbers, coupling, view.review.readings.shifts}.make(
                period.to));
    view.closed = ReviewWords::closedToSecond(view.review.closedToSecond);
    for (CouplingTrend& trend : view.couplings)
        if (const CouplingReview* review = view.review.find(trend.coupling.id)) {
            trend.plays = JointPlayWords{facts}.latest(trend.coupling.id, view.review.period.to);
            trend.standing = review->standing;
            drawMovement(*review, view.review, trend.series);
        }
    const ReviewWords words{facts};
    view.aircraft = aircraftSeriesOf(airframe, view.review, words.shiftCauses());
    for (const SharedShiftStory& story : view.review.sharedShifts)
        view.sharedShifts << words.shift(story);
    if (view.sharedShifts.isEmpty())
        view.sharedShifts << ReviewWords::noShift(view.review);
    return view;
}

} // namespace rig
