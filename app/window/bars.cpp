#include "app/window/bars.h"

#include "app/window/copy_bar.h"
#include "app/window/draft_bar.h"
#include "app/window/problem_banner.h"
#include "app/window/question_bar.h"
#include "app/wording/chain_words.h"
#include "app/wording/conflict_words.h"
#include "core/store/records.h"
#include "core/store/store_file.h"

#include <QVBoxLayout>

namespace rig {

Bars::Bars(QWidget* parent) : QWidget{parent}
{
    m_problems = new ProblemBanner;
    m_drafts = new DraftBar;
    m_faults = aside(Beside::Faults, new AsideBar{"faultsBar",
                                                  MarkedBar::Tone::Problem,
                                                  "showFaults",
                                                  {ChainWords::show(), ChainWords::showHint(),
                                                   ChainWords::leave(), ChainWords::leaveHint()}});
    m_faults->mark(shapeOf(Verdict::Outside), shapeRoleOf(Verdict::Outside));
    m_copy = new CopyBar;
    m_questions = new QuestionBar;
    aside(Beside::Questions, m_questions);
    m_conflicts =
        aside(Beside::Conflicts, new AsideBar{"conflictsBar",
                                              MarkedBar::Tone::Caution,
                                              "showConflicts",
                                              {ConflictWords::show(), ConflictWords::showHint(),
                                               ConflictWords::leave(), ConflictWords::leaveHint()}});
    m_conflicts->mark(MarkShape::HalfDisc, Role::InkSoft);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    for (QWidget* bar :
         std::initializer_list<QWidget*>{m_problems, m_drafts, m_faults, m_copy, m_questions, m_conflicts})
        column->addWidget(bar);
}

AsideBar* Bars::aside(Beside page, AsideBar* bar)
{
    connect(bar, &AsideBar::showAsked, this, [this, page] { emit showAsked(page); });
    connect(bar, &AsideBar::leaveAsked, this, &Bars::leaveAsked);
    return bar;
}

void Bars::readFaults(const StoreFile& file)
{
    const auto found = file.chainFound();
    const bool areFaults = found && found->faults > 0;
    const Verdict marked = areFaults ? Verdict::Outside : Verdict::CannotTell;
    m_faults->mark(shapeOf(marked), shapeRoleOf(marked));
    m_faults->setTone(areFaults ? MarkedBar::Tone::Problem : MarkedBar::Tone::Caution);
    m_faults->say(found ? ChainWords::barOf(*found) : QString{});
}

Outcome Bars::readConflicts(Records& records)
{
    const auto open = records.openConflicts();
    if (!open)
        return open.problem();
    const bool isTold = !open.value().empty() || m_conflicts->isOnPage();
    m_conflicts->say(isTold ? ConflictWords::bar(open.value()) : QString{});
    return Done{};
}

bool Bars::isConflictsTold() const
{
    return !m_conflicts->isHidden();
}

void Bars::setOnPage(std::optional<Beside> page)
{
    m_questions->setOnPage(page == Beside::Questions);
    m_faults->setOnPage(page == Beside::Faults);
    m_conflicts->setOnPage(page == Beside::Conflicts);
}

void Bars::hideOfFile()
{
    m_faults->hide();
    m_copy->hide();
    m_conflicts->hide();
}

void Bars::setLook(const Look& look)
{
    for (MarkedBar* bar :
         std::initializer_list<MarkedBar*>{m_drafts, m_faults, m_copy, m_questions, m_conflicts})
        bar->setLook(look);
}

} // namespace rig
