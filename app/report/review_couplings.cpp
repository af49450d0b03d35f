#include "app/blocks/cells.h"
#include "app/pictures/gap_strip.h"
#include "app/pictures/trend.h"
#include "app/report/review_trend.h"
#include "app/wording/cause_words.h"
#include "app/wording/coupling_words.h"
#include "app/wording/joint_play_words.h"
#include "app/wording/review_report_words.h"
#include "app/wording/trends_page_words.h"
#include "app/wording/witness_words.h"
#include "core/rigging/counts_as.h"

#include <algorithm>

namespace rig::engineer {

namespace {

constexpr double kStripHigh = 78;
constexpr double kTrendHigh = 206;
constexpr double kPartLaneHigh = 70;       // more, where one was found part-seated at a rigging
constexpr std::size_t kNearEdgeShown = 40; // rows; the rest stands in the tables

class Section
{
public:
    Section(const Source& source, const CouplingReview& one, Blocks& blocks)
        : m_source{source}, m_one{one}, m_blocks{blocks}
    {
    }

    void add()
    {
        addHeading(m_blocks, textOf(m_one.coupling.name), 3);
        if (const QString placed = ReviewReportWords::placed(m_one.coupling); !placed.isEmpty())
            addIntro(m_blocks, placed);
        addStrip();
        addTrend();
        m_facts.columns = {{{}, 1.3}, {{}, 8}};
        m_facts.continued = textOf(m_one.coupling.name);
        addSigns();
        if (hasGap(m_one.coupling)) {
            addBand();
            addReadings();
            addMovement();
            addPartSeated();
        } else {
            addWithoutGap();
        }
        addPlay();
        addEventsHere();
        addCauses();
        m_blocks.emplace_back(std::move(m_facts));
        addListed();
    }

private:
    void addFact(const QString& what, const QStringList& sentences)
    {
        if (!sentences.isEmpty())
            m_facts.rows.push_back({{softly(what)}, {said(sentences.join(QLatin1Char(' ')))}});
    }

    // What it has instead; and what was read of it while it was another kind of coupling.
    void addWithoutGap()
    {
        addFact(ReviewReportWords::band(),
                {TrendsPageWords::kindWithoutGap(CouplingWords::kindName(m_one.coupling.kind))});
        if (m_one.fitting)
            addFact(ReviewReportWords::fitting(),
                    {TrendsPageWords::fitting(m_one.fittingNumber, m_one.fitting->begins,
                                              CouplingWords::whyFitted(*m_one.fitting))});
        if (m_one.counts.all() > 0)
            addFact(ReviewReportWords::inThePeriod(), {ReviewReportWords::verdicts(m_one.counts)});
    }

    void addPlay()
    {
        const JointPlayWords words{m_source.facts};
        QStringList plays;
        for (const JointPlay& play : m_source.review.jointPlays)
            if (play.coupling == m_one.coupling.id)
                plays << words.sentence(play);
        if (!plays.isEmpty())
            plays << JointPlayWords::manualHasTheLimit();
        addFact(JointPlayWords::heading(), plays);
    }

    void addPartSeated()
    {
        QStringList sentences{WitnessWords::shown(m_one.witness), WitnessWords::level(m_one.witness),
                              WitnessWords::bound(m_one.witness)};
        sentences.removeAll(QString{});
        addFact(ReviewReportWords::partSeated(), sentences);
    }

    void addStrip()
    {
        if (!m_one.band && !m_one.standing.reading)
            return;
        GapStripView view;
        view.band = m_one.band;
        view.partSeated = m_one.partSeated;
        if (m_one.standing.reading)
            view.reading = m_one.standing.reading->interval;
        view.verdict = m_one.standing.verdict();
        PictureBlock block;
        block.height = kStripHigh;
        block.lay = [view](QSizeF size, const FontSizes& fonts) {
            return laidPicture(layoutGapStrip(view, size, fonts));
        };
        m_blocks.emplace_back(std::move(block));
    }

    void addTrend()
    {
        TrendSeries series = trendOf(m_source, m_one);
        if (series.readings.empty())
            return;
        PictureBlock block;
        const bool hasPart = std::ranges::any_of(
            series.readings, [](const TrendReading& one) { return one.state == SeatState::PartSeated; });
        block.height = hasPart ? kTrendHigh + kPartLaneHigh : kTrendHigh;
        block.lay = [series = std::move(series)](QSizeF size, const FontSizes& fonts) {
            return laidPicture(layoutTrend(series, {}, size, fonts));
        };
        m_blocks.emplace_back(std::move(block));
    }

    void addSigns()
    {
        QStringList signs = ReviewWords::signs(m_one);
        if (signs.isEmpty())
            signs << (hasGap(m_one.coupling) ? ReviewReportWords::nothingStandsOut(m_one.counts.all())
                                             : ReviewReportWords::noOpenQuestion());
        Cell cell;
        for (const QString& sign : signs)
            cell.push_back(m_one.signs.empty() ? softly(sign) : strongly(sign));
        m_facts.rows.push_back({{softly(ReviewReportWords::standsOutHere())}, cell});
        QStringList open;
        for (const QuestionStory& story : m_one.openQuestions)
            open << m_source.words.question(story);
        addFact(ReviewReportWords::openHere(), open);
    }

    // The days of the readings that make the band.
    TrendsPageWords::BandSource bandSource() const
    {
        TrendsPageWords::BandSource from;
        from.confirmedReadings = m_one.baselineReadings;
        from.isFrozen = m_one.isFrozen;
        for (const JudgedReading& one : m_source.judged) {
            if (!one.ofBaseline || one.reading.fitting != m_one.fitting->id)
                continue;
            from.lastDay = one.reading.when.localDay();
            from.firstDay = from.firstDay ? from.firstDay : from.lastDay;
        }
        return from;
    }

    void addBand()
    {
        if (!m_one.fitting) {
            addFact(ReviewReportWords::fitting(), {TrendsPageWords::noFitting()});
            return;
        }
        addFact(ReviewReportWords::fitting(),
                {TrendsPageWords::fitting(m_one.fittingNumber, m_one.fitting->begins,
                                          CouplingWords::whyFitted(*m_one.fitting)),
                 ReviewReportWords::riggingsSince(
                     m_source.numbers.within(m_one.fitting->begins, m_source.review.period.to))});
        QStringList band;
        if (m_one.band)
            band << TrendsPageWords::band(*m_one.band, bandSource()) << ReviewReportWords::edges(*m_one.band)
                 << frozen();
        else
            band << TrendsPageWords::noBandYet(m_one.baselineReadings, kReadingsForBand);
        if (m_one.bandWithDoubted)
            band << ReviewReportWords::withDoubted(*m_one.bandWithDoubted);
        addFact(ReviewReportWords::band(), band);
        if (m_one.firstBand)
            addFact(ReviewReportWords::firstBand(), {ReviewReportWords::firstBandWas(*m_one.firstBand)});
    }

    QString frozen() const
    {
        for (const FrozenBaseline& one : m_source.facts.frozenBaselines)
            if (one.fitting == m_one.fitting->id && m_one.isFrozen)
                return ReviewReportWords::frozenBy(one.stamp.when.localDay(), nameOf(m_source, one.first),
                                                   nameOf(m_source, one.second));
        return ReviewReportWords::notFrozen();
    }

    void addReadings()
    {
        QStringList readings{ReviewReportWords::verdicts(m_one.counts)};
        if (m_one.inDoubt > 0)
            readings << ReviewReportWords::inDoubt(m_one.inDoubt);
        if (m_one.riggingsMissed > 0)
            readings << ReviewReportWords::missed(m_one.riggingsMissed);
        addFact(ReviewReportWords::inThePeriod(), readings);
    }

    void addMovement()
    {
        if (!m_one.movement)
            return;
        if (!m_one.band) {
            addFact(ReviewReportWords::driftHead(), {ReviewReportWords::noBandNoMovement()});
            return;
        }
        const FittingMovement& moved = *m_one.movement;
        QStringList drift;
        drift << (moved.line ? ReviewWords::driftSentence(m_one)
                             : ReviewReportWords::noDrift(ReviewWords::whyNoDrift(m_one)));
        if (moved.drift)
            drift << ReviewReportWords::flag(*moved.drift, moved.readings[moved.drift->onset].rigging,
                                             moved.readings[moved.drift->signal].rigging);
        else if (moved.chart)
            drift << (moved.sharedOnly ? ReviewReportWords::sharedOnly() : ReviewReportWords::noFlag());
        addFact(ReviewReportWords::driftHead(), drift);
        if (moved.forecast)
            addFact(ReviewReportWords::byTheAnnual(),
                    {ReviewWords::forecastSentence(m_one), ReviewReportWords::restsOn(*moved.forecast)});
        else
            addFact(ReviewReportWords::byTheAnnual(),
                    {ReviewReportWords::noForecast(ReviewWords::whyNoChance(m_one, m_source.review.period))});
        addFact(ReviewReportWords::scatterHead(), {moved.scatter ? ReviewWords::scatterSentence(m_one)
                                                                 : ReviewReportWords::tooFewForScatter()});
        const QString step = ReviewWords::stepSentence(m_one);
        addFact(ReviewReportWords::stepHead(), {step.isEmpty() ? ReviewReportWords::noStep() : step});
    }

    void addEventsHere()
    {
        QStringList events;
        for (const Event& event : m_source.review.events)
            if (event.coupling == m_one.coupling.id)
                events << m_source.words.event(event);
        addFact(ReviewReportWords::doneSince(), events);
    }

    void addCauses()
    {
        Cell cell;
        for (const CauseText& cause : CauseWords::of(m_one, m_source.review))
            cell.push_back(said(CauseWords::sentence(cause)));
        if (cell.empty())
            return;
        cell.push_back(softly(CauseWords::cannotTellWhich()));
        m_facts.rows.push_back({{softly(ReviewReportWords::lookAt())}, cell});
    }

    // Why a reading is told apart from the ordinary ones; empty for those.
    QString whyListed(const JudgedReading& one) const
    {
        if (one.superseded)
            return ReviewReportWords::superseded(textOf(one.supersededReason));
        if (one.struck)
            return ReviewReportWords::struck(textOf(one.struckReason));
        if (one.leftOut)
            return ReviewReportWords::leftOut(textOf(one.leftOutReason));
        return isLockedAtRigging(one.reading) && one.judgement.verdict == Verdict::NearEdge
                   ? ReviewReportWords::side(one.judgement.direction)
                   : QString{};
    }

    std::vector<Cell> listedRow(const JudgedReading& one, const QString& why) const
    {
        CellText interval = said(m_source.formats.interval(one.reading.interval));
        interval.struck = one.isStruckThrough();
        return {{said(m_source.formats.day(one.reading.when.localDay()))},
                {one.rigging ? said(m_source.formats.count(*one.rigging)) : CellText{}},
                {interval},
                {said(ReviewReportWords::with(nameOf(m_source, one.reading.person),
                                              nameOf(m_source, one.reading.gauge)))},
                {said(why)}};
    }

    void addListed()
    {
        std::vector<std::vector<Cell>> rows;
        for (const JudgedReading& one : m_source.judged) {
            if (one.reading.coupling != m_one.coupling.id ||
                !m_source.review.period.contains(one.reading.when.localDay()))
                continue;
            if (const QString why = whyListed(one); !why.isEmpty())
                rows.push_back(listedRow(one, why));
        }
        if (rows.empty())
            return;
        const std::size_t all = rows.size();
        if (all > kNearEdgeShown)
            rows.erase(rows.begin(), rows.end() - static_cast<std::ptrdiff_t>(kNearEdgeShown));
        m_blocks.emplace_back(ParagraphBlock{ReviewReportWords::nearEdge(), Role::Ink, true, true});
        if (all > rows.size())
            addIntro(m_blocks,
                     ReviewReportWords::nearEdgeShort(static_cast<int>(rows.size()), static_cast<int>(all)));
        TableBlock table;
        table.columns = {{ReviewReportWords::when(), 2.1},
                         {TrendsPageWords::riggingNumber(), 1.3},
                         {ReviewReportWords::reading(), 1.8},
                         {ReviewReportWords::measuredBy(), 2},
                         {ReviewReportWords::why(), 3.4}};
        table.rows = std::move(rows);
        m_blocks.emplace_back(std::move(table));
    }

    const Source& m_source;
    const CouplingReview& m_one;
    Blocks& m_blocks;
    TableBlock m_facts;
};

} // namespace

void addCouplings(const Source& source, Blocks& blocks)
{
    if (source.review.couplings.empty())
        return;
    addHeading(blocks, ReviewReportWords::eachCoupling());
    addIntro(blocks, ReviewReportWords::eachIntro());
    for (const CouplingReview& one : source.review.couplings)
        Section{source, one, blocks}.add();
}

} // namespace rig::engineer
