#include "app/blocks/cells.h"
#include "app/pictures/gap_strip.h"
#include "app/pictures/trend.h"
#include "app/report/plan_block.h"
#include "app/report/review_figures.h"
#include "app/report/review_trend.h"
#include "app/wording/cause_words.h"
#include "app/wording/joint_play_words.h"
#include "app/wording/review_report_words.h"
#include "app/wording/standing_words.h"

#include <algorithm>
#include <iterator>

namespace rig::engineer {

namespace {

// 1/96 inch.
constexpr double kStripHigh = 88;
constexpr double kTrendHigh = 206;
constexpr double kSmallTrendHigh = 158;
constexpr double kPartLaneHigh = 50; // more, where one was found part-seated at a rigging
constexpr double kStripShare = 0.6;
constexpr double kReviewPlanHigh = 170;
constexpr double kReviewPlanShare = 0.6;
constexpr double kBesideLabels = 2.4;   // of labels beside a picture, where texts have 8
constexpr std::size_t kBesideStrip = 2; // rows
constexpr double kLongLine = 500;
constexpr double kShortLine = 150;
constexpr double kInitials = 52;

class Section
{
public:
    Section(const Source& source, std::size_t index, Writing& out)
        : m_source{source}, m_one{source.review.couplings[index]}, m_place{placeOfCoupling(index)}, m_out{out}
    {
    }

    void add()
    {
        m_out.blocks.emplace_back(HeadingBlock{printedName(m_one.coupling.name), 3, false,
                                               ReviewReportWords::placed(m_one.coupling), true, m_place});
        const bool isLong = !m_one.signs.empty() && ReviewWords::isGrave(m_one.signs.front());
        if (isLong)
            addAtLength();
        else
            addInShort();
        addForm(isLong);
    }

private:
    // The figures that stand beside the strip are the first ones.
    void addAtLength()
    {
        FactRows rows = figuresAtLength(m_source, m_one);
        std::ranges::move(toldHere(), std::back_inserter(rows));
        if (hasStrip()) {
            const auto some = static_cast<std::ptrdiff_t>(std::min(kBesideStrip, rows.size()));
            FactRows first{std::make_move_iterator(rows.begin()),
                           std::make_move_iterator(rows.begin() + some)};
            rows.erase(rows.begin(), rows.begin() + some);
            TableBlock figures = factsOf(std::move(first));
            figures.columns.front().share = kBesideLabels;
            m_out.blocks.emplace_back(BesideBlock{stripPicture(), std::move(figures), kStripShare});
        }
        if (TrendSeries series = trendOf(m_source, m_one); !series.readings.empty())
            m_out.blocks.emplace_back(pictureOf(std::move(series), kTrendHigh));
        TableBlock facts = factsOf(std::move(rows));
        facts.continued = printedName(m_one.coupling.name);
        m_out.blocks.emplace_back(std::move(facts));
    }

    void addInShort()
    {
        TableBlock figures = factsOf(figuresOf(m_source, m_one));
        if (TrendSeries series = trendOf(m_source, m_one); !series.readings.empty()) {
            figures.columns.front().share = kBesideLabels;
            m_out.blocks.emplace_back(
                BesideBlock{pictureOf(std::move(series), kSmallTrendHigh), std::move(figures)});
        } else {
            m_out.blocks.emplace_back(std::move(figures));
        }
        if (TableBlock told = factsOf(toldHere()); !told.rows.empty())
            m_out.blocks.emplace_back(std::move(told));
    }

    static TableBlock factsOf(FactRows rows)
    {
        TableBlock table;
        table.columns = {{{}, 1.3}, {{}, 8}};
        table.rows = std::move(rows);
        table.isTight = true;
        return table;
    }

    // What whoever looks at the joint writes by hand.
    void addForm(bool isLong)
    {
        const double line = isLong ? kLongLine : kShortLine;
        m_out.blocks.emplace_back(FormBlock{{},
                                            {{ReviewReportWords::looked(), 0},
                                             {ReviewReportWords::foundByHand(), line},
                                             {ReviewReportWords::doneByHand(), line},
                                             {ReviewReportWords::initials(), kInitials}}});
    }

    bool hasStrip() const { return !m_one.partSeated.empty() && (m_one.band || m_one.standing.reading); }

    // Where part-seated was seen, beside the band.
    PictureBlock stripPicture() const
    {
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
        block.across = ReviewReportWords::stripAxis();
        return block;
    }

    static PictureBlock pictureOf(TrendSeries series, double height)
    {
        PictureBlock block;
        const bool hasPart = std::ranges::any_of(
            series.readings, [](const TrendReading& one) { return one.state == SeatState::PartSeated; });
        block.height = hasPart ? height + kPartLaneHigh : height;
        block.lay = [series = std::move(series)](QSizeF size, const FontSizes& fonts) {
            return laidPicture(layoutTrend(series, {}, size, fonts));
        };
        block.upwards = ReviewReportWords::gapAxis();
        block.across = ReviewReportWords::riggingAxis();
        return block;
    }

    // Beside the figures: what is open, what was done, what was felt, and where to look.
    FactRows toldHere() const
    {
        FactRows rows;
        const auto add = [&rows](const QString& what, const QStringList& sentences) {
            if (!sentences.isEmpty())
                rows.push_back(factRow(what, sentences));
        };
        QStringList open;
        for (const QuestionStory& story : m_one.openQuestions)
            open << m_source.words.question(story);
        add(ReviewReportWords::openHere(), open);
        add(JointPlayWords::heading(), plays());
        QStringList events;
        for (const Event& event : m_source.review.events)
            if (event.coupling == m_one.coupling.id)
                events << m_source.words.event(event);
        add(ReviewReportWords::doneSince(), events);
        Cell causes;
        for (const CauseText& cause : CauseWords::of(m_one, m_source.review))
            causes.push_back(said(CauseWords::sentence(cause)));
        if (!causes.empty()) {
            causes.push_back(softly(CauseWords::cannotTellWhich()));
            rows.push_back({{softly(ReviewReportWords::lookAt())}, causes});
        }
        return rows;
    }

    QStringList plays() const
    {
        const JointPlayWords words{m_source.facts};
        QStringList plays;
        for (const JointPlay& play : m_source.review.jointPlays)
            if (play.coupling == m_one.coupling.id)
                plays << words.sentence(play);
        if (!plays.isEmpty())
            plays << JointPlayWords::manualHasTheLimit();
        return plays;
    }

    const Source& m_source;
    const CouplingReview& m_one;
    int m_place;
    Writing& m_out;
};

// Where the couplings are and how each stands, with name and word beside its mark.
void addPlan(const Source& source, Writing& out)
{
    std::vector<Coupling> couplings;
    std::vector<PlanStanding> standings;
    TableBlock names;
    names.columns = {{{}, 1.25}, {{}, 1}};
    names.isTight = true;
    for (const CouplingReview& one : source.review.couplings) {
        couplings.push_back(one.coupling);
        standings.push_back({one.standing.says, StandingWords::word(one.standing)});
        CellText name = strongly(printedName(one.coupling.name));
        name.mark = one.standing.says;
        names.rows.push_back({{std::move(name)}, {softly(standings.back().word)}});
    }
    out.blocks.emplace_back(
        BesideBlock{planBlock(source.review.airframe, couplings, kReviewPlanHigh, standings),
                    std::move(names), kReviewPlanShare});
}

} // namespace

void addCouplings(const Source& source, Writing& out)
{
    if (source.review.couplings.empty())
        return;
    addPart(out, ReviewReportWords::eachCoupling(), Part::Couplings);
    addIntro(out, ReviewReportWords::eachIntro());
    if (source.withPlan)
        addPlan(source, out);
    for (std::size_t i = 0; i < source.review.couplings.size(); ++i)
        Section{source, i, out}.add();
}

} // namespace rig::engineer
