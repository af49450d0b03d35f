#include "app/pages/annual/annual_presenter.h"

#include "app/wording/annual_words.h"
#include "app/wording/joint_play_words.h"
#include "app/wording/review_words.h"
#include "app/wording/standing_words.h"
#include "core/clock.h"
#include "core/review/airframe_review.h"
#include "core/store/airframe_facts.h"
#include "core/store/facts_book.h"
#include "core/store/records.h"
#include "core/views/movement_maker.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>

namespace rig {

namespace {

constexpr std::size_t kMostHeadlines = 3;

class AnnualMaker
{
public:
    AnnualMaker(const AirframeFacts& facts, const AirframeReview& review)
        : m_facts{facts}, m_review{review}, m_words{facts}
    {
    }

    AnnualView make()
    {
        m_view.title = ReviewWords::title(m_review.period);
        m_view.counted = ReviewWords::counted(m_review);
        if (const QString closed = ReviewWords::closedToSecond(m_review.closedToSecond); !closed.isEmpty())
            m_view.counted += QLatin1Char(' ') + closed;
        m_view.neverSeen = ReviewWords::neverSeen(m_review);
        for (const CouplingReview& one : m_review.couplings)
            m_view.rows.push_back(rowOf(one));
        addHeadlines();
        addShifts();
        addOffsets();
        addOutside();
        addQuestions();
        for (const GaugeReview& one : m_review.gauges)
            m_view.gaugeStories.push_back(storyOf(one));
        addChanges();
        for (const QString& sentence : ReviewWords::tooFew(m_review))
            m_view.tooFew.push_back({{}, sentence, {}, {}, {}});
        m_view.riggings = ReviewWords::riggings(m_review);
        return std::move(m_view);
    }

private:
    AnnualRow rowOf(const CouplingReview& one) const
    {
        AnnualRow row;
        row.coupling = one.coupling.id;
        row.name = QString::fromStdString(one.coupling.name);
        row.says = one.standing.says;
        row.saysInWords = StandingWords::withReading(one.standing);
        row.bar.band = one.band;
        if (one.standing.reading)
            row.bar.reading = one.standing.reading->interval;
        row.bar.verdict = one.standing.verdict();
        row.bar.hasGap = hasGap(one.coupling);
        if (!row.bar.hasGap)
            row.noBand = ReviewWords::noGap();
        else if (!one.band)
            row.noBand = ReviewWords::noBand(one);
        addFigures(one, row);
        row.openQuestions = static_cast<int>(one.openQuestions.size());
        row.signs = ReviewWords::signs(one);
        row.signsShown = m_view.neverSeen.isEmpty() ? row.signs : ReviewWords::signsWithMark(one);
        row.isGrave = !one.signs.empty() && ReviewWords::isGrave(one.signs.front());
        return row;
    }

    void addFigures(const CouplingReview& one, AnnualRow& row) const
    {
        const FittingMovement* movement = one.movement ? &*one.movement : nullptr;
        row.moved.figure = ReviewWords::movementFigure(one);
        row.moved.instead = ReviewWords::whyNoMovement(one);
        row.excursion.figure = ReviewWords::excursion(one);
        row.excursion.instead = ReviewWords::whyNoFigure(one);
        if (!row.excursion.figure.isEmpty())
            row.excursion.sortedBy = std::abs(*movement->excursion);
        if (!row.moved.figure.isEmpty()) {
            row.moved.beside = ReviewWords::movementInterval(one);
            row.moved.sortedBy = row.excursion.sortedBy;
            row.moved.standsOut = ReviewWords::isMoving(one);
            row.excursion.standsOut = row.moved.standsOut;
        }
        row.scatter.figure = ReviewWords::scatterNow(one);
        row.scatter.instead = ReviewWords::whyNoFigure(one);
        if (!row.scatter.figure.isEmpty()) {
            row.scatter.beside = ReviewWords::scatterBefore(one);
            row.scatter.sortedBy = one.movement->scatter->now;
            row.scatter.standsOut = one.has(Sign::ScatterGrew);
        }
        row.chance.figure = ReviewWords::chance(one);
        row.chance.instead = ReviewWords::whyNoChance(one, m_review.period);
        if (!row.chance.figure.isEmpty()) {
            row.chance.sortedBy = one.movement->forecast->chanceOutside;
            row.chance.standsOut = row.moved.standsOut;
        }
    }

    void addHeadlines()
    {
        for (const CouplingReview& one : m_review.couplings) {
            if (one.signs.empty() || !ReviewWords::isGrave(one.signs.front()))
                continue;
            if (m_view.headlines.size() == kMostHeadlines) {
                ++m_view.moreHeadlines;
                continue;
            }
            m_view.headlines.push_back({one.coupling.id, shapeOf(one.standing.says),
                                        shapeRoleOf(one.standing.says), ReviewWords::gravest(one),
                                        figuresOf(one)});
        }
        if (m_view.headlines.empty())
            m_view.nothingGrave = ReviewWords::nothingGrave(m_review);
    }

    QString figuresOf(const CouplingReview& one) const
    {
        const QString figures = m_words.gravestFigures(one);
        return one.standing.factsInDoubt ? figures + QLatin1Char(' ') + StandingWords::whereFacts() : figures;
    }

    void addShifts()
    {
        m_view.shifts = shiftDaysOf(m_review.shifts, m_words.shiftCauses());
        for (const SharedShiftStory& story : m_review.sharedShifts)
            m_view.shiftSentences << m_words.shift(story);
        if (m_view.shiftSentences.isEmpty())
            m_view.shiftSentences << ReviewWords::noShift(m_review);
    }

    void addOffsets()
    {
        const MeasurerOffsets& all = m_review.measurers;
        for (const auto& one : all.persons)
            m_view.persons.push_back(
                offsetRowOf(one, m_facts.nameOf(one.who), ReviewWords::noOffset(one, all.personsState)));
        for (const auto& one : all.gauges)
            if (const Gauge* gauge = m_facts.gauge(one.who))
                m_view.gauges.push_back(offsetRowOf(one, m_words.gauge(*gauge).toStdString(),
                                                    ReviewWords::noOffset(one, all.gaugesState)));
        m_view.personSentences = m_words.personOffsets(m_review.measurers);
        m_view.gaugeSentences = m_words.gaugeOffsets(m_review.measurers);
    }

    void addOutside()
    {
        struct Told
        {
            const CouplingReview& coupling;
            const OutsideRun& run;

            const OutsideStory& first() const { return coupling.outside[run.first]; }
            // In its own scatters, so that couplings compare.
            double distance() const { return run.farthest / (coupling.band ? coupling.band->scatter : 1); }
        };
        std::vector<Told> all;
        for (const CouplingReview& one : m_review.couplings)
            for (const OutsideRun& run : one.runs)
                all.push_back({one, run});
        std::vector<std::size_t> order(all.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::ranges::stable_sort(order, {}, [&all](std::size_t i) {
            const OutsideStory& first = all[i].first();
            return std::tuple{!first.isOpen(), first.by != OutsideBy::Nothing, -all[i].distance()};
        });
        for (const std::size_t i : order) {
            const Reading& reading = all[i].first().reading;
            m_view.outside.push_back({m_words.outsideTitle(all[i].coupling, all[i].run),
                                      m_words.outside(all[i].coupling, all[i].run).join(' '),
                                      MarkShape::Diamond, Role::Outside,
                                      all[i].first().isOpen() ? AnnualWords::stillOpen() : QString{},
                                      reading.coupling, reading.id, reading.when.localDay()});
        }
    }

    void addQuestions()
    {
        for (const QuestionStory& story : m_review.questions) {
            if (!story.isOpenAfter(m_review.period.to))
                continue;
            m_view.questions.push_back({m_words.question(story), m_words.resolution(story),
                                        shapeOf(story.question), shapeRoleOf(story.question),
                                        AnnualWords::stillOpen(), story.question.coupling,
                                        story.question.reading});
        }
    }

    AnnualStory storyOf(const GaugeReview& one) const
    {
        AnnualStory story{m_words.gauge(one.gauge), m_words.gaugeStory(one).join(' '), {}, {}, {}};
        if (one.isQuarantined || one.inDoubt > 0) {
            story.shape = MarkShape::HalfDisc;
            story.role = Role::Unknown;
            story.state = AnnualWords::inDoubt();
        }
        return story;
    }

    void addChanges()
    {
        std::vector<std::pair<Day, QString>> changes;
        for (const FittingChange& one : m_review.fittings)
            changes.emplace_back(one.fitting.begins, m_words.fitting(one));
        for (const Event& one : m_review.events)
            changes.emplace_back(one.day, m_words.event(one));
        for (const JointPlay& one : m_review.jointPlays)
            changes.emplace_back(one.day, JointPlayWords{m_facts}.withCoupling(one));
        std::ranges::stable_sort(changes, std::ranges::greater{}, &std::pair<Day, QString>::first);
        for (auto& [day, sentence] : changes)
            m_view.changes.push_back({{}, std::move(sentence), {}, {}, {}});
    }

    const AirframeFacts& m_facts;
    const AirframeReview& m_review;
    ReviewWords m_words;
    AnnualView m_view;
};

} // namespace

Result<AirframeFacts> AnnualPresenter::facts(AirframeId airframe) const
{
    const auto known = m_records.book().toldOpenly(airframe, m_clock.now().localDay());
    if (!known)
        return known.problem();
    return known.value()->facts();
}

Result<AnnualView> AnnualPresenter::view(AirframeId airframe, const std::optional<PeriodOffer>& chosen) const
{
    const Day today = m_clock.now().localDay();
    const auto known = m_records.book().toldOpenly(airframe, today);
    if (!known)
        return known.problem();
    const AirframeFacts& facts = known.value()->facts();
    std::vector<PeriodOffer> offers = offeredPeriods(facts, today);
    const PeriodOffer told = chosenAmong(offers, chosen, facts);
    AnnualView view = AnnualMaker{facts, known.value()->review(told.period)}.make();
    view.offers = std::move(offers);
    view.chosen = told;
    return view;
}

} // namespace rig
