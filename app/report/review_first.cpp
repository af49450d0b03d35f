#include "app/blocks/cells.h"
#include "app/pictures/marks.h"
#include "app/report/review_parts.h"
#include "app/wording/chain_words.h"
#include "app/wording/conflict_words.h"
#include "app/wording/record_words.h"
#include "app/wording/review_report_words.h"
#include "app/wording/standing_words.h"
#include "core/review/answers_review.h"

#include <algorithm>
#include <map>

namespace rig::engineer {

namespace {

// Answers of one kind at one place.
struct Answered
{
    int times = 0;
    Day last;
    QStringList checks; // each once

    void add(const QString& check, Day day)
    {
        last = times == 0 ? day : std::max(last, day);
        ++times;
        if (!checks.contains(check))
            checks << check;
    }
};

// What the answers of the period ask to be looked at.
struct Matters
{
    std::map<SurfaceId, Answered> reversed;
    std::map<SurfaceId, Answered> surfacesNotSeen;
    std::map<CouplingId, Answered> jointsNotSeen;
};

Matters mattersIn(const Source& source)
{
    Matters all;
    for (const RecordContent& content : contentsAtTheClose(source.facts, source.review.period)) {
        const Day day = content.record.begins.localDay();
        for (const Check& check : content.checks)
            if (check.answer == Answer::CannotSee)
                all.jointsNotSeen[check.coupling].add(RecordWords::check(check.kind), day);
        for (const SurfaceCheck& check : content.surfaceChecks) {
            if (check.answer == Answer::CannotSee)
                all.surfacesNotSeen[check.surface].add(RecordWords::check(check.kind), day);
            if (check.answer == Answer::No && isOfSense(check.kind))
                all.reversed[check.surface].add(RecordWords::check(check.kind), day);
        }
    }
    return all;
}

// Each row is one thing to look at, to be ticked off, with the page on which its details stand.
class FirstList
{
public:
    explicit FirstList(const Source& source) : m_source{source}, m_matters{mattersIn(source)} {}

    // Something beside the couplings' own signs asks to be looked at.
    bool hasMatters() const { return m_hasMatters; }

    TableBlock make()
    {
        m_table.columns = {{ReviewReportWords::couplingOrMatter(), 2.1},
                           {ReviewReportWords::standsNow(), 3},
                           {ReviewReportWords::what(), 4},
                           {ReviewReportWords::page(), 0.65}};
        addSurfaces(m_matters.reversed, &ReviewReportWords::reversed);
        addOpenElsewhere();
        addUndecided();
        addCouplings(true);
        addJointsNotSeen();
        addSurfaces(m_matters.surfacesNotSeen, &ReviewReportWords::cannotSee);
        addGauges();
        addShared();
        addCouplings(false);
        dropEmptyColumns(m_table);
        return std::move(m_table);
    }

private:
    void addMatter(const QString& name, const QString& what, int place)
    {
        m_hasMatters = true;
        m_table.rows.push_back({{toTick(strongly(name))}, {}, {said(what)}, {pageOf(place)}});
    }

    // What is left out of the report stands in the tables beside it.
    int placeOfAnswers(Part part) const
    {
        return m_source.withAppendix ? placeOf(part) : placeOf(Part::Rest);
    }

    using Words = QString (*)(int times, Day last, const QStringList& checks);

    void addSurfaces(const std::map<SurfaceId, Answered>& answered, Words words)
    {
        for (const Surface& surface : m_source.facts.surfaces)
            if (const auto found = answered.find(surface.id); found != answered.end())
                addMatter(printedName(surface.name), sentence(found->second, words),
                          placeOfAnswers(Part::ControlChecks));
    }

    void addJointsNotSeen()
    {
        for (const Coupling& coupling : m_source.facts.couplings)
            if (const auto found = m_matters.jointsNotSeen.find(coupling.id);
                found != m_matters.jointsNotSeen.end())
                addMatter(printedName(coupling.name), sentence(found->second, &ReviewReportWords::cannotSee),
                          placeOfAnswers(Part::Looks));
    }

    static QString sentence(const Answered& answered, Words words)
    {
        return words(answered.times, answered.last, answered.checks);
    }

    void addOpenElsewhere()
    {
        for (const QuestionStory& story : m_source.review.questions)
            if (isOpenAtEnd(m_source, story) && !story.question.coupling)
                addMatter(ReviewReportWords::openQuestion(), m_source.words.question(story),
                          placeOf(Part::OpenQuestions));
    }

    void addUndecided()
    {
        if (const auto open = conflictsOf(m_source); !open.empty())
            addMatter(ConflictWords::headingOf(open), ConflictWords::bar(open), placeOf(Part::Conflicts));
    }

    void addGauges()
    {
        for (const GaugeReview& one : m_source.review.gauges)
            if (one.inDoubt > 0)
                addMatter(m_source.words.gauge(one.gauge), ReviewReportWords::inDoubt(one.inDoubt),
                          placeOf(Part::Gauges));
    }

    // The gauge or the person whose offset those days show; nobody's days are all couplings'.
    QString whoseDays(const SharedShiftStory& story) const
    {
        if (story.gauge)
            if (const Gauge* gauge = m_source.facts.gauge(*story.gauge))
                return m_source.words.gauge(*gauge);
        return story.person ? nameOf(m_source, story.person) : ReviewReportWords::allCouplings();
    }

    void addShared()
    {
        for (const SharedShiftStory& story : m_source.review.sharedShifts) {
            const int days = static_cast<int>(story.days.size());
            addMatter(whoseDays(story),
                      story.gauge || story.person ? ReviewReportWords::movedTogetherWith(days)
                                                  : ReviewReportWords::movedTogether(days),
                      placeOf(Part::Shared));
        }
    }

    void addCouplings(bool isGrave)
    {
        const std::vector<CouplingReview>& all = m_source.review.couplings;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const CouplingReview& one = all[i];
            if (isGrave != (!one.signs.empty() && ReviewWords::isGrave(one.signs.front())))
                continue;
            CellText standing = said(StandingWords::withReading(one.standing), textRoleOf(one.standing.says));
            standing.mark = one.standing.says;
            m_table.rows.push_back({{toTick(strongly(printedName(one.coupling.name)))},
                                    {std::move(standing)},
                                    {signs(one, isGrave)},
                                    {pageOf(placeOfCoupling(i))}});
        }
    }

    static CellText signs(const CouplingReview& one, bool isGrave)
    {
        const QString all = ReviewWords::signs(one).join(ReviewReportWords::betweenSigns());
        if (!all.isEmpty())
            return isGrave ? strongly(all) : said(all);
        return softly(hasGap(one.coupling) ? ReviewReportWords::nothingStandsOut(one.counts.all())
                                           : ReviewReportWords::noOpenQuestion());
    }

    const Source& m_source;
    Matters m_matters;
    bool m_hasMatters = false;
    TableBlock m_table;
};

} // namespace

void addFirst(const Source& source, Writing& out)
{
    addPart(out, ReviewReportWords::standsOut(), Part::First);
    const bool isGrave = std::ranges::any_of(source.review.couplings, [](const CouplingReview& one) {
        return !one.signs.empty() && ReviewWords::isGrave(one.signs.front());
    });
    FirstList list{source};
    TableBlock table = list.make();
    if (!isGrave && !list.hasMatters())
        addText(out, ReviewWords::nothingGrave(source.review));
    if (source.file && source.file->chain && source.file->chain->takenOver > 0)
        addText(out, ChainWords::takenOver(source.file->chain->takenOver));
    if (table.rows.empty())
        return;
    addIntro(out, ReviewReportWords::firstIntro());
    out.blocks.emplace_back(std::move(table));
}

} // namespace rig::engineer
