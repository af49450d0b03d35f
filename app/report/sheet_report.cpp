#include "app/report/sheet_report.h"

#include "app/blocks/cells.h"
#include "app/report/pdf_file.h"
#include "app/report/plan_block.h"
#include "app/wording/entry_words.h"
#include "app/wording/paper_words.h"
#include "app/wording/record_words.h"
#include "app/wording/report_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/sign_off_words.h"
#include "core/review/record_review.h"
#include "core/rigging/control_check.h"
#include "core/rigging/joint_asks.h"

namespace rig {

namespace {

// 1/96 inch.
constexpr double kName = 150;
constexpr double kShort = 80;
constexpr double kFigure = 50;
constexpr double kNotes = 120;
constexpr double kSheetPlanHigh[] = {200, 150, 110}; // the highest that fits

FormItem box(const QString& text)
{
    return {text, 0};
}

// Which answers the program takes: what is looked at may be felt, and a pull is seen by whoever pulls.
std::vector<FormItem> answersTo(CheckKind kind)
{
    std::vector<Answer> answers{Answer::Yes};
    if (isLook(kind))
        answers.push_back(Answer::Felt);
    answers.push_back(Answer::No);
    if (kind != CheckKind::Pull)
        answers.push_back(Answer::CannotSee);
    std::vector<FormItem> boxes;
    for (const Answer answer : answers)
        boxes.push_back(box(RiggedWords::answer(answer)));
    return boxes;
}

class SheetSections
{
public:
    SheetSections(const PaperSheet& sheet, const SheetPlan& plan) : m_sheet{sheet}, m_plan{plan} {}

    std::vector<Block> make()
    {
        addTop();
        addPlan(SheetPlan::At::AfterTop);
        addSeason();
        addPerson(Turn::First);
        addPerson(Turn::Second);
        addControlCheck();
        addEnd();
        return std::move(m_blocks);
    }

private:
    void addText(const QString& text, bool strong = false)
    {
        m_blocks.push_back(ParagraphBlock{text, Role::Ink, strong, false});
    }

    void addForm(const QString& about, std::vector<FormItem> items)
    {
        m_blocks.push_back(FormBlock{about, std::move(items), true});
    }

    void addTop()
    {
        m_blocks.push_back(HeadingBlock{PaperWords::title(), 1});
        addText(RecordWords::airframe(ReportWords::airframe(printedName(m_sheet.airframe.registration),
                                                            printedName(m_sheet.airframe.type)),
                                      printedName(m_sheet.airframe.serial)),
                true);
        addText(
            PaperWords::stop(printedName(m_sheet.airframe.callName), printedName(m_sheet.airframe.callPhone)),
            true);
        addText(PaperWords::judgesNothing());
        addText(PaperWords::replacesNoManual());
        addForm(PaperWords::when(), {{PaperWords::day(), kShort}, {PaperWords::begunAt(), kFigure}});
        addForm(PaperWords::before(), {box(PaperWords::takenApart()), box(PaperWords::stoodRigged())});
        addForm(PaperWords::firstPerson(), {{{}, kName}});
        addForm(PaperWords::secondPerson(), {{{}, kName}});
        addPeople();
        addForm(PaperWords::connectedBy(),
                {{PaperWords::left(), kName}, {PaperWords::right(), kName}, {PaperWords::tail(), kName}});
        std::vector<FormItem> gauge;
        if (m_sheet.gauge)
            gauge.push_back(box(textOf(m_sheet.gauge->name)));
        gauge.push_back({m_sheet.gauge ? PaperWords::anotherGauge() : QString{}, kShort});
        addForm(PaperWords::gauge(), std::move(gauge));
        endGroup();
    }

    void addPeople()
    {
        QStringList said;
        for (const SheetPerson& one : m_sheet.people)
            said << SignOffWords::named(printedName(one.name), one.standing);
        if (!said.isEmpty())
            m_blocks.push_back(ParagraphBlock{SignOffWords::today(said), Role::InkSoft, false, true});
    }

    // What was just added is not held together with what follows.
    void endGroup()
    {
        if (auto* form = std::get_if<FormBlock>(&m_blocks.back()))
            form->staysWithNext = false;
    }

    void addPerson(Turn turn)
    {
        const bool isFirst = turn == Turn::First;
        m_blocks.push_back(HeadingBlock{isFirst ? RecordWords::first() : RecordWords::second(), 2, !isFirst});
        m_blocks.push_back(ParagraphBlock{isFirst ? PaperWords::firstHow() : PaperWords::secondHow(),
                                          Role::Ink, false, true});
        if (!isFirst) {
            addForm(PaperWords::secondPerson(), {{{}, kName}});
            endGroup();
        }
        if (isFirst)
            addPlan(SheetPlan::At::BeforeJoints);
        for (std::size_t i = 0; i < m_sheet.couplings.size(); ++i)
            addCoupling(static_cast<int>(i) + 1, m_sheet.couplings[i], turn);
        if (isFirst)
            addPlan(SheetPlan::At::AfterJoints);
    }

    void addPlan(SheetPlan::At here)
    {
        if (m_plan.at != here || m_plan.height <= 0)
            return;
        std::vector<Coupling> couplings;
        for (const SheetCoupling& one : m_sheet.couplings)
            couplings.push_back(one.coupling);
        m_blocks.push_back(planBlock(m_sheet.airframe, couplings, m_plan.height));
        m_blocks.push_back(ParagraphBlock{PaperWords::plan(), Role::InkSoft, false, false});
    }

    void addCoupling(int number, const SheetCoupling& one, Turn turn)
    {
        m_blocks.push_back(HeadingBlock{PaperWords::numbered(number, printedName(one.coupling.name)), 3});
        const JointAsks asks = asksOf(one.coupling);
        for (const CheckKind kind : kCheckKinds)
            if (isLook(kind) && asks.has(kind, turn))
                addForm(RecordWords::check(kind), answersTo(kind));
        if (asks.parts.gap)
            addGap(one, turn);
        for (const CheckKind kind : {CheckKind::Pull, CheckKind::Secured})
            if (asks.has(kind, turn))
                addForm(RecordWords::check(kind), answersTo(kind));
        endGroup();
    }

    void addGap(const SheetCoupling& one, Turn turn)
    {
        const GaugeKind kind = m_sheet.gauge ? m_sheet.gauge->set.kind() : GaugeKind::Leaves;
        std::vector<FormItem> items;
        for (const GaugeStep& step : one.leaves)
            items.push_back(box(PaperWords::leaf(step)));
        if (kind == GaugeKind::Taper) {
            items.push_back({PaperWords::valueRead(), kFigure});
        } else {
            items.push_back(box(EntryWords::nothingEnters(kind)));
            items.push_back(box(EntryWords::allEnter(kind)));
            items.push_back({PaperWords::enters(), kFigure});
            items.push_back({PaperWords::refuses(), kFigure});
        }
        addForm(PaperWords::gap(kind, turn), std::move(items));
    }

    void addControlCheck()
    {
        m_blocks.push_back(HeadingBlock{RecordWords::controlCheck(), 2});
        m_blocks.push_back(ParagraphBlock{RecordWords::controlCaution(), Role::Ink, false, true});
        m_blocks.push_back(ParagraphBlock{PaperWords::controlHow(), Role::Ink, false, true});
        addForm(PaperWords::whoChecks(),
                {{RecordWords::atSurface(), kName}, {RecordWords::inCockpit(), kName}});
        endGroup();
        for (const Surface& surface : m_sheet.surfaces) {
            m_blocks.push_back(HeadingBlock{printedName(surface.name), 3});
            for (const SurfaceCheckKind kind : checksOf(surface))
                addSurfaceCheck(kind);
            endGroup();
        }
        if (m_sheet.surfaces.empty())
            addText(PaperWords::noSurfaces());
    }

    // What the surface is expected to do is not printed, so that nobody writes it.
    void addSurfaceCheck(SurfaceCheckKind kind)
    {
        if (isCall(kind))
            return addForm(kind == SurfaceCheckKind::CalledOneWay ? PaperWords::oneWay()
                                                                  : PaperWords::otherWay(),
                           {{PaperWords::moved(), kShort}, {PaperWords::itDoes(), kShort}});
        addForm(RecordWords::check(kind),
                {box(RiggedWords::answer(Answer::Yes)), box(RiggedWords::answer(Answer::No)),
                 box(RiggedWords::answer(Answer::CannotSee))});
    }

    void addTicks(std::span<const TickKind> ticks)
    {
        for (const TickKind tick : ticks)
            addForm(RecordWords::tick(tick), {box(PaperWords::done()), {PaperWords::by(), kName}});
        endGroup();
    }

    // What stands on it takes joints apart: never after the control check.
    void addSeason()
    {
        m_blocks.push_back(HeadingBlock{PaperWords::season(), 3});
        addTicks(seasonTicks());
    }

    void addEnd()
    {
        constexpr std::array kCounts{TickKind::ToolsOut, TickKind::HatchesOn};
        m_blocks.push_back(HeadingBlock{RecordWords::counts(), 2});
        addTicks(kCounts);
        m_blocks.push_back(HeadingBlock{RecordWords::byHand(), 2});
        m_blocks.push_back(SignatureBlock{{RecordWords::leaderSigns({}), RecordWords::secondSigns({})}});
        m_blocks.push_back(BlankBlock{PaperWords::notes(), kNotes});
    }

    const PaperSheet& m_sheet;
    SheetPlan m_plan;
    std::vector<Block> m_blocks;
};

} // namespace

std::vector<Block> sheetBlocks(const PaperSheet& sheet, const SheetPlan& plan)
{
    return SheetSections{sheet, plan}.make();
}

PageFlow layoutSheet(const PaperSheet& sheet, const Printing& printing)
{
    const PageFrame frame{
        ReportWords::airframe(printedName(sheet.airframe.registration), printedName(sheet.airframe.type)),
        PaperWords::title(),
        PaperWords::foot(printedName(sheet.airframe.callName), printedName(sheet.airframe.callPhone)),
        ReportWords::printed(printing.day, printing.program)};
    PageFlow plain = layoutPages(frame, sheetBlocks(sheet), printing.paper);
    using enum SheetPlan::At;
    for (const double high : kSheetPlanHigh)
        for (const SheetPlan::At at : {BeforeJoints, AfterTop, AfterJoints}) {
            PageFlow withPlan = layoutPages(frame, sheetBlocks(sheet, {at, high}), printing.paper);
            if (withPlan.pages.size() <= plain.pages.size())
                return withPlan;
        }
    return plain;
}

Outcome writeSheet(const QString& path, const PaperSheet& sheet, const Printing& printing)
{
    return writePdf(path, layoutSheet(sheet, printing), PaperWords::title(), printing.program);
}

QString sheetFileName(const PaperSheet& sheet)
{
    return PaperWords::fileName(printedName(sheet.airframe.registration));
}

} // namespace rig
