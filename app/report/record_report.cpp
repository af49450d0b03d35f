#include "app/report/record_report.h"

#include "app/blocks/cells.h"
#include "app/blocks/laid_picture.h"
#include "app/pictures/gap_strip.h"
#include "app/report/pdf_file.h"
#include "app/wording/formats.h"
#include "app/wording/record_words.h"
#include "app/wording/report_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/standing_words.h"
#include "app/wording/surface_words.h"
#include "app/wording/verdict_words.h"
#include "core/day_entry.h"

#include <algorithm>

namespace rig {

namespace {

QString airframeOf(const RecordSummary& summary)
{
    return ReportWords::airframe(textOf(summary.airframe.registration), textOf(summary.airframe.type));
}

QString titleOf(const RecordSummary& summary)
{
    return RecordWords::title(Formats{}.day(summary.record.begins.localDay()));
}

class RecordBlocks
{
public:
    explicit RecordBlocks(const RecordSummary& summary) : m_summary{summary} {}

    std::vector<Block> make()
    {
        addTop();
        addNotDone();
        addOverview();
        if (!m_summary.couplings.empty())
            add(HeadingBlock{RecordWords::couplings(), 2});
        for (const SummaryCoupling& coupling : m_summary.couplings)
            addCoupling(coupling);
        addControlCheck();
        addTicks();
        addOtherQuestions();
        return std::move(m_blocks);
    }

private:
    void add(Block block) { m_blocks.push_back(std::move(block)); }
    void addText(const QString& text, Role role = Role::Ink) { add(ParagraphBlock{text, role, false}); }

    // The hour alone on the day of the record, day and hour otherwise.
    QString whenOf(const Moment& when) const
    {
        return when.localDay() == m_summary.record.begins.localDay() ? m_formats.time(when)
                                                                     : m_formats.moment(when);
    }

    void addTop()
    {
        add(HeadingBlock{titleOf(m_summary), 1});
        add(ParagraphBlock{RecordWords::airframe(airframeOf(m_summary), textOf(m_summary.airframe.serial)),
                           Role::Ink, true});
        addText(RecordWords::begun(m_formats.moment(m_summary.record.begins), textOf(m_summary.leader)));
        if (m_summary.record.origin == RecordOrigin::Recheck)
            addText(RecordWords::recheck());
        if (const auto& close = m_summary.close) {
            addText(RecordWords::closed(RiggedWords::closing(close->closing),
                                        m_formats.moment(close->stamp.when), textOf(m_summary.first),
                                        textOf(m_summary.second)));
            if (!close->note.empty())
                addText(RecordWords::note(textOf(close->note)));
        } else {
            addText(RecordWords::notClosed());
        }
        addText(RecordWords::noLog(), Role::InkSoft);
    }

    void addNotDone()
    {
        add(HeadingBlock{RecordWords::notDone(), 2});
        if (m_summary.notDone.empty())
            addText(RecordWords::nothingNotDone());
        for (const OpenItem& item : m_summary.notDone)
            addText(RecordWords::item(RiggedWords::openItem(item, textOf(item.name))));
    }

    static CellText marked(const QString& text, Says says)
    {
        CellText cell = strongly(text, textRoleOf(says));
        cell.mark = says;
        return cell;
    }

    // Evidence beside what is judged today: only where it was another.
    static void addShownThen(const SummaryReading& reading, Cell& cell)
    {
        if (!reading.shown)
            cell.push_back(softly(RecordWords::nothingShown()));
        else if (reading.shown->judgement.verdict != reading.judgement.verdict)
            cell.push_back(
                softly(RecordWords::shownThen(VerdictWords::shortWord(reading.shown->judgement.verdict))));
    }

    Cell standingCell(const SummaryCoupling& coupling) const
    {
        const CouplingStanding& standing = coupling.standing;
        if (standing.says == Says::NotRead)
            return {softly(RecordWords::noReading())};
        Cell cell{marked(StandingWords::inFull(standing), standing.says)};
        const SummaryReading* last = coupling.last();
        if (standing.reading && (!last || standing.reading->id != last->reading.id))
            cell.push_back(softly(m_formats.interval(standing.reading->interval)));
        if (last)
            addShownThen(*last, cell);
        return cell;
    }

    // Those who looked or read as second person, each once.
    static QString secondsOf(const SummaryCoupling& coupling)
    {
        QStringList names;
        for (const SummaryAnswer& answer : coupling.answers)
            if (answer.turn == Turn::Second && answer.standing == AnswerStanding::Counts)
                names << textOf(answer.person);
        names.removeDuplicates();
        return names.join(QStringLiteral(", "));
    }

    void addOverview()
    {
        TableBlock table;
        table.columns = {{RecordWords::coupling(), 3},
                         {RecordWords::readingThatStands(), 2.4},
                         {RecordWords::stands(), 2.6},
                         {RecordWords::second(), 2}};
        for (const SummaryCoupling& coupling : m_summary.couplings) {
            const SummaryReading* last = coupling.last();
            const QString seconds = secondsOf(coupling);
            const Cell reading{last ? said(m_formats.interval(last->reading.interval))
                                    : softly(RecordWords::noReading())};
            table.rows.push_back({{said(textOf(coupling.coupling.name))},
                                  reading,
                                  standingCell(coupling),
                                  {seconds.isEmpty() ? softly(RecordWords::nobody()) : said(seconds)}});
        }
        if (table.rows.empty())
            return;
        add(HeadingBlock{RecordWords::overview(), 2});
        addText(RecordWords::readingCaution());
        add(std::move(table));
    }

    void addCoupling(const SummaryCoupling& coupling)
    {
        add(HeadingBlock{textOf(coupling.coupling.name), 3});
        if (coupling.answers.empty() && coupling.readings.empty()) {
            addText(RecordWords::nothingHere(), Role::InkSoft);
        } else {
            addStrip(coupling);
            addReadings(coupling);
            addAnswers(coupling);
        }
        for (const Interruption& one : coupling.interruptions)
            addText(RecordWords::interrupted(one.turn, whenOf(one.stamp.when), one.reason));
        addQuestions(
            [&coupling](const Question& question) { return question.coupling == coupling.coupling.id; });
    }

    void addStrip(const SummaryCoupling& coupling)
    {
        const auto& said = coupling.standing.reading;
        if (!said || !coupling.standing.judgement)
            return;
        GapStripView view;
        view.reading = said->interval;
        view.band = coupling.standing.judgement->band;
        view.verdict = coupling.standing.verdict();
        view.partSeated = coupling.partSeated;
        for (const SummaryReading& other : coupling.readings)
            if (other.reading.id != said->id && !other.replaced && other.reading.state == SeatState::Locked)
                view.earlier.push_back(other.reading.interval);
        PictureBlock block;
        block.lay = [view](QSizeF size, const FontSizes& fonts) {
            return laidPicture(layoutGapStrip(view, size, fonts));
        };
        add(std::move(block));
    }

    Cell readingCell(const SummaryReading& one) const
    {
        CellText interval =
            said(RiggedWords::interval(m_formats.interval(one.reading.interval), one.reading.technique));
        interval.struck = one.replaced.has_value();
        Cell cell{interval};
        if (one.reading.state == SeatState::PartSeated) {
            cell.push_back(said(RecordWords::partSeated()));
            cell.back().strong = true;
        }
        if (one.isCorrection)
            cell.push_back(softly(RecordWords::correction()));
        if (one.replaced)
            cell.push_back(said(RecordWords::struck(textOf(one.replaced->by), whenOf(one.replaced->when),
                                                    textOf(one.replaced->reason))));
        return cell;
    }

    Cell verdictCell(const SummaryReading& one) const
    {
        Cell cell;
        if (one.reading.state == SeatState::Locked) {
            const Verdict verdict = one.judgement.verdict;
            cell.push_back(marked(VerdictWords::word(verdict), saysOf(verdict)));
            const auto& band = one.judgement.band;
            cell.push_back(softly(band ? RecordWords::band(m_formats.band(band->inner), band->readings)
                                       : RecordWords::noBand()));
        }
        addShownThen(one, cell);
        return cell;
    }

    void addReadings(const SummaryCoupling& coupling)
    {
        if (coupling.readings.empty())
            return;
        TableBlock table;
        table.columns = {{RecordWords::when(), 1.1},
                         {RecordWords::who(), 2.4},
                         {RecordWords::with(), 0.7},
                         {RecordWords::reading(), 2.6},
                         {RecordWords::verdict(), 3.1}};
        for (const SummaryReading& one : coupling.readings) {
            const QString who = one.reading.turn == Turn::First ? RecordWords::asFirst(textOf(one.person))
                                                                : RecordWords::asSecond(textOf(one.person));
            table.rows.push_back({{said(whenOf(one.reading.when))},
                                  {said(who)},
                                  {said(textOf(one.gauge))},
                                  readingCell(one),
                                  verdictCell(one)});
        }
        add(std::move(table));
    }

    Cell answersTo(const SummaryCoupling& coupling, CheckKind kind, Turn turn) const
    {
        Cell cell;
        for (const SummaryAnswer& one : coupling.answers) {
            if (one.kind != kind || one.turn != turn)
                continue;
            const QString answer =
                RecordWords::answer(RiggedWords::answer(one.answer), textOf(one.person), whenOf(one.when));
            if (one.standing == AnswerStanding::Counts) {
                cell.push_back(said(answer));
                cell.back().strong = one.answer != Answer::Yes;
            } else {
                cell.push_back(softly(one.standing == AnswerStanding::AnsweredAgain
                                          ? RecordWords::answeredAgain(answer)
                                          : RecordWords::beforeInterruption(answer)));
            }
        }
        if (cell.empty())
            cell.push_back(softly(kind == CheckKind::Secured && turn == Turn::Second
                                      ? RecordWords::notAskedOfSecond()
                                      : RecordWords::notAsked()));
        return cell;
    }

    void addAnswers(const SummaryCoupling& coupling)
    {
        TableBlock table;
        table.columns = {{RecordWords::step(), 2}, {RecordWords::first(), 3.5}, {RecordWords::second(), 3.5}};
        for (const CheckKind kind : {CheckKind::BallInSocket, CheckKind::PlungerHome, CheckKind::SleeveAtStop,
                                     CheckKind::Pull, CheckKind::Secured})
            table.rows.push_back({{said(RecordWords::check(kind))},
                                  answersTo(coupling, kind, Turn::First),
                                  answersTo(coupling, kind, Turn::Second)});
        add(std::move(table));
    }

    Cell outcomeCell(const SummaryQuestion& one) const
    {
        if (!one.resolution) {
            CellText open = said(RecordWords::stillOpen());
            open.strong = true;
            return {open};
        }
        return {said(RecordWords::found(textOf(one.resolution->found))),
                said(RecordWords::done(textOf(one.resolution->done))),
                softly(RecordWords::decided(textOf(one.resolvedBy), whenOf(one.resolution->stamp.when)))};
    }

    Cell questionCell(const SummaryQuestion& one) const
    {
        Cell cell{said(RecordWords::question(one.question.kind))};
        if (one.question.check)
            cell.push_back(softly(RecordWords::check(*one.question.check)));
        if (one.question.surfaceCheck)
            cell.push_back(softly(RecordWords::check(*one.question.surfaceCheck)));
        if (!one.question.coupling && !one.question.surface && !one.place.empty())
            cell.push_back(softly(textOf(one.place)));
        return cell;
    }

    template <typename Wanted> bool addQuestions(Wanted wanted)
    {
        TableBlock table;
        table.columns = {
            {RecordWords::question(), 3}, {RecordWords::asked(), 1.2}, {RecordWords::outcome(), 5}};
        for (const SummaryQuestion& one : m_summary.questions)
            if (wanted(one.question))
                table.rows.push_back(
                    {questionCell(one), {said(whenOf(one.question.stamp.when))}, outcomeCell(one)});
        if (table.rows.empty())
            return false;
        add(std::move(table));
        return true;
    }

    void addOtherQuestions()
    {
        const auto isElsewhere = [](const Question& question) {
            return !question.coupling && !question.surface;
        };
        const std::size_t at = m_blocks.size();
        if (addQuestions(isElsewhere))
            m_blocks.insert(m_blocks.begin() + static_cast<std::ptrdiff_t>(at),
                            HeadingBlock{RecordWords::otherQuestions(), 2});
    }

    void addControlCheck()
    {
        add(HeadingBlock{RecordWords::controlCheck(), 2});
        add(ParagraphBlock{RecordWords::controlCaution(), Role::Ink, false, true});
        if (m_summary.surfaces.empty())
            addText(RecordWords::noSurfaces(), Role::InkSoft);
        for (const SummarySurface& surface : m_summary.surfaces)
            addSurface(surface);
    }

    void addSurface(const SummarySurface& surface)
    {
        add(HeadingBlock{textOf(surface.surface.name), 3});
        add(ParagraphBlock{RecordWords::calledAloud(SurfaceWords::call(surface.surface)), Role::InkSoft,
                           false, true});
        if (surface.answers.empty() && surface.measures.empty())
            addText(RecordWords::notChecked());
        else
            addSurfaceAnswers(surface);
        addMeasures(surface);
        addQuestions([&surface](const Question& question) { return question.surface == surface.surface.id; });
    }

    void addSurfaceAnswers(const SummarySurface& surface)
    {
        TableBlock table;
        table.columns = {{RecordWords::tried(), 3},
                         {RecordWords::answerHead(), 2},
                         {RecordWords::atSurface(), 1.6},
                         {RecordWords::inCockpit(), 1.6},
                         {RecordWords::when(), 1}};
        for (const SurfaceCheckKind kind : checksOf(surface.surface.kind)) {
            bool isAnswered = false;
            for (const SummarySurfaceAnswer& one : surface.answers) {
                if (one.check.kind != kind)
                    continue;
                isAnswered = true;
                const QString answer = RiggedWords::answer(one.check.answer);
                CellText cell = one.counts ? said(answer) : softly(RecordWords::answeredAgain(answer));
                cell.strong = one.counts && one.check.answer != Answer::Yes;
                table.rows.push_back({{said(RecordWords::check(kind))},
                                      {cell},
                                      {said(textOf(one.person))},
                                      {said(textOf(one.cockpit))},
                                      {said(whenOf(one.check.stamp.when))}});
            }
            if (!isAnswered)
                table.rows.push_back(
                    {{said(RecordWords::check(kind))}, {softly(RecordWords::notAsked())}, {}, {}, {}});
        }
        add(std::move(table));
    }

    static QString manualOf(const Surface& surface, MeasureKind kind)
    {
        const QString page = textOf(surface.manualReference);
        const auto of = [&](const std::optional<ManualDeflection>& given) {
            return given ? RecordWords::nominal(SurfaceWords::figure(given->nominal, surface.unit),
                                                SurfaceWords::figure(given->tolerance, surface.unit), page)
                         : RecordWords::noFigure();
        };
        switch (kind) {
        case MeasureKind::Up:
            return of(surface.up);
        case MeasureKind::Down:
            return of(surface.down);
        case MeasureKind::FreePlay:
            break;
        }
        return surface.mostPlay
                   ? RecordWords::atMost(SurfaceWords::figure(*surface.mostPlay, surface.unit), page)
                   : RecordWords::noFigure();
    }

    void addMeasures(const SummarySurface& surface)
    {
        if (surface.measures.empty())
            return;
        TableBlock table;
        table.columns = {{RecordWords::figure(), 1.5},
                         {RecordWords::measured(), 2.5},
                         {RecordWords::fromManual(), 3},
                         {RecordWords::who(), 1.6},
                         {RecordWords::when(), 1}};
        for (const SummarySurfaceMeasure& one : surface.measures) {
            QString figure = SurfaceWords::figure(one.measure.value, one.measure.unit);
            if (one.measure.measuredAt)
                figure = RecordWords::atDistance(figure, m_formats.gap(*one.measure.measuredAt));
            table.rows.push_back({{said(RecordWords::measure(one.measure.kind))},
                                  {said(figure)},
                                  {said(manualOf(surface.surface, one.measure.kind))},
                                  {said(textOf(one.person))},
                                  {said(whenOf(one.measure.stamp.when))}});
        }
        add(std::move(table));
    }

    void addTicks()
    {
        std::vector<TickKind> kinds;
        if (m_summary.isFirstOfSeason)
            kinds.assign(seasonTicks().begin(), seasonTicks().end());
        kinds.push_back(TickKind::ToolsOut);
        kinds.push_back(TickKind::HatchesOn);
        add(HeadingBlock{m_summary.isFirstOfSeason ? RecordWords::lists() : RecordWords::counts(), 2});
        TableBlock table;
        table.columns = {{RecordWords::tried(), 5}, {RecordWords::stated(), 2}, {RecordWords::when(), 1.2}};
        for (const TickKind kind : kinds) {
            Cell who;
            Cell when;
            for (const SummaryTick& tick : m_summary.ticks) {
                if (tick.kind != kind)
                    continue;
                who.push_back(said(textOf(tick.person)));
                when.push_back(said(whenOf(tick.when)));
            }
            if (who.empty())
                who.push_back(softly(RecordWords::notStated()));
            table.rows.push_back({{said(RecordWords::tick(kind))}, who, when});
        }
        add(std::move(table));
    }

    const RecordSummary& m_summary;
    Formats m_formats;
    std::vector<Block> m_blocks;
};

} // namespace

std::vector<Block> recordBlocks(const RecordSummary& summary)
{
    return RecordBlocks{summary}.make();
}

std::vector<Block> printedRecordBlocks(const RecordSummary& summary)
{
    std::vector<Block> blocks = recordBlocks(summary);
    blocks.push_back(HeadingBlock{RecordWords::byHand(), 2});
    blocks.push_back(SignatureBlock{
        {RecordWords::leaderSigns(textOf(summary.first)), RecordWords::secondSigns(textOf(summary.second))}});
    blocks.push_back(BlankBlock{RecordWords::findings(), 190});
    return blocks;
}

PageFlow layoutRecord(const RecordSummary& summary, const Printing& printing)
{
    const PageFrame frame{airframeOf(summary), titleOf(summary), ReportWords::caution(),
                          ReportWords::printed(printing.day, printing.program)};
    return layoutPages(frame, printedRecordBlocks(summary), printing.paper);
}

Outcome writeRecord(const QString& path, const RecordSummary& summary, const Printing& printing)
{
    return writePdf(path, layoutRecord(summary, printing), titleOf(summary), printing.program);
}

QString recordFileName(const RecordSummary& summary)
{
    return RecordWords::fileName(textOf(summary.airframe.registration),
                                 QString::fromStdString(dayText(summary.record.begins.localDay())));
}

} // namespace rig
