#include "app/window/faults_page.h"

#include "app/widgets/block_column.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/wording/chain_words.h"

#include <QFrame>
#include <QVBoxLayout>

namespace rig {

FaultsPage::FaultsPage(QWidget* parent) : AsidePage{parent}
{
    setObjectName("faults");
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(14, 14, 14, 14);
    auto* card = new QFrame;
    card->setProperty("card", true);
    auto* inner = new QVBoxLayout{card};
    inner->setContentsMargins(1, 1, 1, 1);
    auto* inside = new QWidget;
    auto* column = new QVBoxLayout{inside};
    column->setContentsMargins(20, 16, 20, 16);
    m_blocks = new BlockColumn;
    column->addWidget(m_blocks);
    column->addStretch(1);
    m_scroll = new FlowScroll{inside};
    inner->addWidget(m_scroll);
    layout->addWidget(card);
}

void FaultsPage::display(const ChainState& state)
{
    const bool areFaults = state.faults > 0;
    const QString heading = areFaults ? ChainWords::faultsHeading() : ChainWords::heading();
    setAccessibleName(heading);
    m_scroll->setAccessibleName(heading);
    std::vector<Block> blocks{HeadingBlock{heading, 1}};
    if (areFaults) {
        blocks.emplace_back(ParagraphBlock{ChainWords::faults(state.faults), Role::Ink, true});
        blocks.emplace_back(ParagraphBlock{ChainWords::faultsAdvice()});
    }
    if (state.takenOver > 0) {
        blocks.emplace_back(ParagraphBlock{ChainWords::takenOver(state.takenOver), Role::Ink, !areFaults});
        blocks.emplace_back(ParagraphBlock{ChainWords::takenOverAdvice()});
    }
    blocks.emplace_back(ParagraphBlock{ChainWords::copiesKey()});
    for (const QString& sentence : ChainWords::all(state))
        blocks.emplace_back(ParagraphBlock{sentence});
    for (const QString& sentence : ChainWords::replacedNames(state))
        blocks.emplace_back(ParagraphBlock{sentence});
    blocks.emplace_back(ParagraphBlock{ChainWords::file(state.end), Role::InkSoft});
    blocks.emplace_back(ParagraphBlock{ChainWords::whatItMeans(), Role::InkSoft});
    m_blocks->display(blocks);
}

void FaultsPage::setLook(const Look& look)
{
    m_blocks->setLook(look);
}

void FaultsPage::focusInEvent(QFocusEvent* event)
{
    AsidePage::focusInEvent(event);
    m_scroll->setFocus(Qt::OtherFocusReason); // the arrow keys scroll
}

} // namespace rig
