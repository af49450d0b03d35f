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
    setAccessibleName(ChainWords::heading());
    setAccessibleName(ChainWords::faultsHeading());
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
    m_scroll->setAccessibleName(ChainWords::faultsHeading());
    inner->addWidget(m_scroll);
    layout->addWidget(card);
}

void FaultsPage::display(const ChainState& state)
{
    std::vector<Block> blocks{HeadingBlock{ChainWords::faultsHeading(), 1},
                              ParagraphBlock{ChainWords::faults(state.faults), Role::Ink, true},
                              ParagraphBlock{ChainWords::faultsAdvice()},
                              ParagraphBlock{ChainWords::copiesKey()}};
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
