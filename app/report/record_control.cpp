#include "app/report/record_parts.h"
#include "app/wording/control_words.h"
#include "app/wording/record_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/surface_words.h"

#include <algorithm>

namespace rig::record {

namespace {

class SurfaceSections
{
public:
    explicit SurfaceSections(Sheet& sheet) : m_sheet{sheet} {}

    void make()
    {
        m_sheet.add(HeadingBlock{RecordWords::controlCheck(), 2});
        m_sheet.add(ParagraphBlock{RecordWords::controlCaution(), Role::Ink, false, true});
        if (m_sheet.summary().surfaces.empty())
            m_sheet.addText(RecordWords::noSurfaces(), Role::InkSoft);
        for (const SummarySurface& surface : m_sheet.summary().surfaces)
            addSurface(surface);
    }

private:
    void addSurface(const SummarySurface& surface)
    {
        m_sheet.add(HeadingBlock{printedName(surface.surface.name), 3});
        const QString call = SurfaceWords::call(surface.surface);
        m_sheet.add(
            ParagraphBlock{isPlain(surface) ? RecordWords::calledAloud(call) : RecordWords::expected(call),
                           Role::InkSoft, false, true});
        if (surface.answers.empty() && surface.measures.empty())
            m_sheet.addText(RecordWords::notChecked());
        else
            addSurfaceAnswers(surface);
        addMeasures(surface);
        m_sheet.addQuestions(
            [&surface](const Question& question) { return question.surface == surface.surface.id; });
    }

    // The sense was answered with a plain yes or no, and what it did was not asked.
    static bool isPlain(const SummarySurface& surface)
    {
        const auto isThere = [&surface](const auto& isWanted) {
            return std::ranges::any_of(surface.answers, [&isWanted](const SummarySurfaceAnswer& one) {
                return isWanted(one.check.kind);
            });
        };
        return isThere([](SurfaceCheckKind kind) { return kind == SurfaceCheckKind::Sense; }) &&
               !isThere([](SurfaceCheckKind kind) { return isCall(kind); });
    }

    static std::vector<SurfaceCheckKind> rowsOf(const SummarySurface& surface)
    {
        std::vector<SurfaceCheckKind> rows = checksOf(surface.surface);
        const bool plain = isPlain(surface);
        if (plain)
            std::erase_if(rows, isCall);
        // Answered before anybody wrote, or took away, what is called of it.
        const bool isAnswered = std::ranges::any_of(surface.answers, [](const SummarySurfaceAnswer& one) {
            return one.check.kind == SurfaceCheckKind::Sense;
        });
        if (isAnswered && std::ranges::find(rows, SurfaceCheckKind::Sense) == rows.end())
            rows.insert(std::ranges::find(rows, SurfaceCheckKind::FullTravel), SurfaceCheckKind::Sense);
        return rows;
    }

    static QString triedText(const Surface& surface, SurfaceCheckKind kind)
    {
        return isCall(kind) ? RecordWords::called(ControlWords::command(surface.kind, kind))
                            : RecordWords::check(kind);
    }

    static QString answerText(const Surface& surface, const SurfaceCheck& check)
    {
        if (!check.seen)
            return RiggedWords::answer(check.answer);
        const auto expected = expectedOf(surface).of(check.kind);
        return RecordWords::seen(ControlWords::movement(*check.seen),
                                 expected ? ControlWords::movement(*expected) : QString{});
    }

    void addSurfaceAnswers(const SummarySurface& surface)
    {
        TableBlock table;
        table.columns = {{RecordWords::tried(), 3},
                         {RecordWords::answerHead(), 2},
                         {RecordWords::atSurface(), 1.6},
                         {RecordWords::inCockpit(), 1.6},
                         {RecordWords::when(), 1}};
        for (const SurfaceCheckKind kind : rowsOf(surface)) {
            const QString tried = triedText(surface.surface, kind);
            bool isAnswered = false;
            for (const SummarySurfaceAnswer& one : surface.answers) {
                if (one.check.kind != kind)
                    continue;
                isAnswered = true;
                const QString answer = answerText(surface.surface, one.check);
                CellText cell = one.isLast() ? said(answer)
                                : one.hand.empty()
                                    ? softly(RecordWords::answeredAgain(answer))
                                    : softly(RecordWords::beforeHand(answer, printedName(one.hand)));
                cell.strong = one.isLast() && !countsAsYes(one.check.answer);
                table.rows.push_back({{said(tried)},
                                      {cell},
                                      {said(printedName(one.person))},
                                      {said(printedName(one.cockpit))},
                                      {said(m_sheet.whenOf(one.check.stamp.when))}});
            }
            if (!isAnswered)
                table.rows.push_back({{said(tried)}, {softly(RecordWords::notAsked())}, {}, {}, {}});
        }
        m_sheet.add(std::move(table));
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
                figure = RecordWords::atDistance(figure, m_sheet.formats().gap(*one.measure.measuredAt));
            table.rows.push_back({{said(RecordWords::measure(one.measure.kind))},
                                  {said(figure)},
                                  {said(manualOf(surface.surface, one.measure.kind))},
                                  {said(printedName(one.person))},
                                  {said(m_sheet.whenOf(one.measure.stamp.when))}});
        }
        m_sheet.add(std::move(table));
    }

    Sheet& m_sheet;
};

} // namespace

void addControlCheck(Sheet& sheet)
{
    SurfaceSections{sheet}.make();
}

} // namespace rig::record
