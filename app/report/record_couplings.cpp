#include "app/blocks/laid_picture.h"
#include "app/pictures/gap_strip.h"
#include "app/pictures/marks.h"
#include "app/report/record_parts.h"
#include "app/wording/connected_words.h"
#include "app/wording/joint_play_words.h"
#include "app/wording/paper_words.h"
#include "app/wording/record_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/standing_words.h"
#include "app/wording/verdict_words.h"
#include "core/rigging/joint_asks.h"

#include <algorithm>

namespace rig::record {

namespace {

class CouplingSections
{
public:
    explicit CouplingSections(Sheet& sheet) : m_sheet{sheet} {}

    void make()
    {
        addOverview();
        if (!m_sheet.summary().couplings.empty())
            m_sheet.add(HeadingBlock{RecordWords::couplings(), 2});
        for (const SummaryCoupling& coupling : m_sheet.summary().couplings)
            addCoupling(coupling);
    }

private:
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

    // What is unresolved today goes before what the record says by itself.
    static Cell standingNow(const SummaryCoupling& coupling)
    {
        const QString own = StandingWords::inFull(coupling.standing);
        if (!coupling.now)
            return {marked(own, coupling.standing.says)};
        return {marked(StandingWords::inFull(*coupling.now), coupling.now->says),
                softly(RecordWords::thisRecordAlone(own))};
    }

    Cell standingCell(const SummaryCoupling& coupling) const
    {
        const CouplingStanding& standing = coupling.standing;
        const bool isRead = standing.says != Says::NotRead && standing.says != Says::NoGap;
        if (!isRead && !coupling.now)
            return {softly(standing.says == Says::NotRead ? RecordWords::noReading() : RecordWords::noGap())};
        Cell cell = standingNow(coupling);
        if (!isRead)
            return cell;
        const SummaryReading* last = coupling.last();
        if (standing.reading && (!last || standing.reading->id != last->reading.id))
            cell.push_back(softly(m_sheet.formats().interval(standing.reading->interval)));
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
                names << (answer.copiedBy.empty()
                              ? printedName(answer.person)
                              : PaperWords::copied(printedName(answer.person), printedName(answer.copiedBy)));
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
        for (const SummaryCoupling& coupling : m_sheet.summary().couplings) {
            const SummaryReading* last = coupling.last();
            const QString seconds = secondsOf(coupling);
            const Cell reading{last ? said(m_sheet.formats().interval(last->reading.interval))
                               : hasGap(coupling.coupling) ? softly(RecordWords::noReading())
                                                           : softly(RecordWords::noGap())};
            table.rows.push_back({{said(printedName(coupling.coupling.name))},
                                  reading,
                                  standingCell(coupling),
                                  {seconds.isEmpty() ? softly(RecordWords::nobody()) : said(seconds)}});
        }
        if (table.rows.empty())
            return;
        m_sheet.add(HeadingBlock{RecordWords::overview(), 2});
        m_sheet.addText(RecordWords::readingCaution());
        m_sheet.add(std::move(table));
    }

    void addCoupling(const SummaryCoupling& coupling)
    {
        m_sheet.add(HeadingBlock{printedName(coupling.coupling.name), 3});
        if (coupling.answers.empty() && coupling.readings.empty()) {
            m_sheet.addText(RecordWords::nothingHere(), Role::InkSoft);
        } else {
            addStrip(coupling);
            addReadings(coupling);
            if (!hasGap(coupling.coupling))
                m_sheet.addText(RecordWords::noGapHere(printedName(coupling.coupling.name)), Role::InkSoft);
            addAnswers(coupling);
        }
        for (const SummaryPlay& one : coupling.plays)
            m_sheet.addText(JointPlayWords::sentence(one.play, printedName(one.person)) + QLatin1Char(' ') +
                            JointPlayWords::manualHasTheLimit());
        if (coupling.wholeCheck)
            m_sheet.addText(RiggedWords::wholeCheckHere(coupling.wholeCheck->kind,
                                                        m_sheet.formats().day(coupling.wholeCheck->day)));
        for (const std::string& name : coupling.secondsWhoConnected)
            m_sheet.add(ParagraphBlock{ConnectedWords::secondConnectedIt(textOf(name)), Role::Ink, true});
        for (const Interruption& one : coupling.interruptions)
            m_sheet.addText(
                m_sheet.summary().record.isFromPaper() && one.reason == InterruptionReason::PersonChanged
                    ? RecordWords::changedOnPaper(one.turn)
                    : RecordWords::interrupted(one.turn, m_sheet.whenOf(one.stamp.when), one.reason));
        m_sheet.addQuestions(
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
        m_sheet.add(std::move(block));
    }

    QString struckText(const SummaryCorrection& one) const
    {
        const QString by = printedName(one.by);
        const QString when = m_sheet.whenOf(one.when);
        return one.isStruck ? RecordWords::struck(by, when, textOf(one.reason))
                            : RecordWords::struckThrough(by, when, textOf(one.reason));
    }

    Cell readingCell(const SummaryReading& one) const
    {
        CellText interval = said(
            RiggedWords::interval(m_sheet.formats().interval(one.reading.interval), one.reading.technique));
        interval.struck = one.replaced.has_value();
        Cell cell{interval};
        if (one.reading.state != SeatState::Locked) {
            cell.push_back(said(RecordWords::found(one.reading.state)));
            cell.back().strong = true;
        }
        if (one.isCorrection)
            cell.push_back(softly(RecordWords::correction()));
        if (one.replaced)
            cell.push_back(said(struckText(*one.replaced)));
        return cell;
    }

    Cell verdictCell(const SummaryReading& one) const
    {
        Cell cell;
        if (one.reading.state == SeatState::Locked) {
            const Verdict verdict = one.judgement.verdict;
            cell.push_back(marked(VerdictWords::word(verdict), saysOf(verdict)));
            const auto& band = one.judgement.band;
            cell.push_back(softly(band
                                      ? RecordWords::band(m_sheet.formats().band(band->inner), band->readings)
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
            QString who = one.reading.turn == Turn::First ? RecordWords::asFirst(printedName(one.person))
                                                          : RecordWords::asSecond(printedName(one.person));
            if (!one.copiedBy.empty())
                who = PaperWords::copied(who, printedName(one.copiedBy));
            table.rows.push_back({{said(m_sheet.whenRead(one.reading))},
                                  {said(who)},
                                  {said(printedName(one.gauge))},
                                  readingCell(one),
                                  verdictCell(one)});
        }
        m_sheet.add(std::move(table));
    }

    Cell answersTo(const SummaryCoupling& coupling, CheckKind kind, Turn turn) const
    {
        Cell cell;
        for (const SummaryAnswer& one : coupling.answers) {
            if (one.kind != kind || one.turn != turn)
                continue;
            QString answer = RecordWords::answer(RiggedWords::answer(one.answer), printedName(one.person),
                                                 m_sheet.whenOf(one.when));
            if (!one.copiedBy.empty())
                answer = PaperWords::copied(answer, printedName(one.copiedBy));
            if (one.standing == AnswerStanding::Counts) {
                cell.push_back(said(answer));
                cell.back().strong = !countsAsYes(one.answer);
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
        const JointAsks asks = asksOf(coupling.coupling);
        const auto isAnswered = [&coupling](CheckKind kind) {
            return std::ranges::find(coupling.answers, kind, &SummaryAnswer::kind) != coupling.answers.end();
        };
        for (const CheckKind kind : kCheckKinds)
            if (asks.has(kind, Turn::First) || isAnswered(kind))
                table.rows.push_back({{said(RecordWords::check(kind))},
                                      answersTo(coupling, kind, Turn::First),
                                      answersTo(coupling, kind, Turn::Second)});
        m_sheet.add(std::move(table));
    }

    Sheet& m_sheet;
};

} // namespace

void addCouplings(Sheet& sheet)
{
    CouplingSections{sheet}.make();
}

} // namespace rig::record
