#include "app/report/review_figures.h"

#include "app/blocks/cells.h"
#include "app/pictures/marks.h"
#include "app/wording/coupling_words.h"
#include "app/wording/review_report_words.h"
#include "app/wording/standing_words.h"
#include "app/wording/trends_page_words.h"
#include "app/wording/witness_words.h"

namespace rig::engineer {

namespace {

class Figures
{
public:
    Figures(const Source& source, const CouplingReview& one, bool isAtLength)
        : m_source{source}, m_one{one}, m_isAtLength{isAtLength}
    {
    }

    FactRows make()
    {
        addStanding();
        if (!hasGap(m_one.coupling)) {
            add(ReviewReportWords::band(),
                {TrendsPageWords::kindWithoutGap(CouplingWords::kindName(m_one.coupling.kind))});
            addFitting();
            if (m_one.counts.all() > 0)
                add(ReviewReportWords::inThePeriod(), {ReviewReportWords::verdicts(m_one.counts)});
            return std::move(m_rows);
        }
        addFitting();
        addBand();
        addReadings();
        addMovement();
        addPartSeated();
        addNotes();
        return std::move(m_rows);
    }

private:
    void add(const QString& what, const QStringList& sentences)
    {
        if (!sentences.isEmpty())
            m_rows.push_back(factRow(what, sentences));
    }

    void addStanding()
    {
        CellText standing = strongly(StandingWords::withReading(m_one.standing));
        standing.mark = m_one.standing.says;
        Cell cell{standing};
        const QStringList signs = ReviewWords::signs(m_one);
        for (qsizetype i = 0; i < signs.size(); ++i)
            cell.push_back(i == 0 && ReviewWords::isGrave(m_one.signs.front()) ? strongly(signs[i])
                                                                               : said(signs[i]));
        if (signs.isEmpty())
            cell.push_back(softly(hasGap(m_one.coupling)
                                      ? ReviewReportWords::nothingStandsOut(m_one.counts.all())
                                      : ReviewReportWords::noOpenQuestion()));
        m_rows.push_back({{softly(ReviewReportWords::standsNow())}, cell});
    }

    void addFitting()
    {
        if (!m_one.fitting) {
            if (hasGap(m_one.coupling))
                add(ReviewReportWords::fitting(), {TrendsPageWords::noFitting()});
            return;
        }
        QStringList said{TrendsPageWords::fitting(m_one.fittingNumber, m_one.fitting->begins,
                                                  CouplingWords::whyFitted(*m_one.fitting))};
        if (hasGap(m_one.coupling))
            said << ReviewReportWords::riggingsSince(
                m_source.numbers.within(m_one.fitting->begins, m_source.review.period.to));
        add(ReviewReportWords::fitting(), said);
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
        if (!m_one.fitting)
            return;
        QStringList band;
        if (!m_one.band)
            band << TrendsPageWords::noBandYet(m_one.baselineReadings, kReadingsForBand);
        else if (m_isAtLength)
            band << TrendsPageWords::band(*m_one.band, bandSource()) << ReviewReportWords::edges(*m_one.band)
                 << frozen();
        else
            band << ReviewReportWords::bandInShort(*m_one.band, m_one.isFrozen);
        if (m_one.bandWithDoubted)
            band << ReviewReportWords::withDoubted(*m_one.bandWithDoubted);
        add(ReviewReportWords::band(), band);
        if (m_one.firstBand && m_isAtLength)
            add(ReviewReportWords::firstBand(), {ReviewReportWords::firstBandWas(*m_one.firstBand)});
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
        std::vector<OutsideStory> standing;
        std::ranges::copy_if(m_one.outside, std::back_inserter(standing), &OutsideStory::isStanding);
        if (const QString together = ReviewWords::outsideTogether(standing); !together.isEmpty())
            readings << ReviewReportWords::ofThoseOutside(together);
        if (m_one.inDoubt > 0)
            readings << ReviewReportWords::inDoubt(m_one.inDoubt);
        if (m_one.riggingsMissed > 0)
            readings << ReviewReportWords::missed(m_one.riggingsMissed);
        add(ReviewReportWords::inThePeriod(), readings);
    }

    void addMovement()
    {
        if (!m_one.movement)
            return;
        if (!m_one.band)
            return add(ReviewReportWords::driftHead(), {ReviewReportWords::noBandNoMovement()});
        addMoved(*m_one.movement);
        addScatter(*m_one.movement);
        addAnnual(*m_one.movement);
    }

    void addMoved(const FittingMovement& moved)
    {
        const QString told = ReviewWords::movementSentence(m_one);
        QStringList sentences{!told.isEmpty() ? told
                              : moved.path    ? ReviewReportWords::noMovementShown()
                                              : ReviewReportWords::noDrift(ReviewWords::whyNoMovement(m_one)),
                              ReviewWords::excursionSentence(m_one)};
        if (moved.flag)
            sentences << ReviewReportWords::flag(*moved.flag, moved.readings[moved.flag->signal].rigging);
        else if (moved.chart && m_isAtLength)
            sentences << ReviewReportWords::noFlag();
        sentences.removeAll(QString{});
        add(ReviewReportWords::driftHead(), sentences);
    }

    void addScatter(const FittingMovement& moved)
    {
        const bool hasChanged = m_one.has(Sign::ScatterGrew) || m_one.has(Sign::ScatterShrank);
        add(ReviewReportWords::scatterHead(),
            {!moved.scatter ? ReviewReportWords::tooFewForScatter()
             : hasChanged   ? ReviewWords::scatterSentence(m_one)
                            : ReviewReportWords::scatterInShort(ReviewWords::scatter(m_one))});
    }

    void addAnnual(const FittingMovement& moved)
    {
        QStringList annual;
        if (!moved.forecast)
            annual << ReviewReportWords::noForecast(ReviewWords::whyNoChance(m_one, m_source.review.period));
        else if (moved.told())
            annual << ReviewWords::forecastSentence(m_one) << ReviewReportWords::restsOn(*moved.forecast);
        else
            annual << ReviewReportWords::chanceInShort(ReviewWords::chance(m_one));
        add(ReviewReportWords::byTheAnnual(), annual);
    }

    void addPartSeated()
    {
        QStringList sentences{WitnessWords::shown(m_one.witness)};
        if (m_isAtLength)
            sentences << WitnessWords::level(m_one.witness) << WitnessWords::bound(m_one.witness);
        sentences.removeAll(QString{});
        add(ReviewReportWords::partSeated(), sentences);
    }

    // With the reading that the standing tells. What is noted of its gauge stands with the gauges.
    void addNotes()
    {
        if (m_one.standing.reading)
            add(ReviewReportWords::note(), noteOf(*m_one.standing.reading));
    }

    const Source& m_source;
    const CouplingReview& m_one;
    bool m_isAtLength;
    FactRows m_rows;
};

} // namespace

FactRows figuresOf(const Source& source, const CouplingReview& one)
{
    return Figures{source, one, false}.make();
}

FactRows figuresAtLength(const Source& source, const CouplingReview& one)
{
    return Figures{source, one, true}.make();
}

std::vector<Cell> factRow(const QString& what, const QStringList& sentences)
{
    return {{softly(what)}, {said(sentences.join(QLatin1Char(' ')))}};
}

} // namespace rig::engineer
