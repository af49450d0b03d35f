#include "app/window/faults_bar.h"

#include "app/pictures/marks.h"
#include "app/widgets/mark_widget.h"
#include "app/widgets/parts.h"
#include "app/wording/chain_words.h"

#include <QHBoxLayout>

namespace rig {

FaultsBar::FaultsBar(QWidget* parent) : QFrame{parent}
{
    setProperty("banner", true);
    setObjectName("faultsBar");
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(20, 4, 16, 4);
    layout->setSpacing(10);
    m_mark = new MarkWidget;
    m_mark->show(shapeOf(Verdict::Outside), shapeRoleOf(Verdict::Outside));
    m_text = labelOf({}, "problem", "faultsText");
    m_text->setWordWrap(true);
    m_show = buttonOf(ChainWords::show(), "showFaults");
    m_show->setAutoDefault(true);
    layout->addWidget(m_mark);
    layout->addWidget(m_text, 1);
    layout->addWidget(m_show);
    connect(m_show, &QPushButton::clicked, this, [this] {
        if (m_onPage)
            emit leaveAsked();
        else
            emit showAsked();
    });
    setOnPage(false);
    hide();
}

void FaultsBar::display(const std::optional<ChainState>& state)
{
    const bool hasFaults = state && state->faults > 0;
    setVisible(hasFaults);
    if (!hasFaults)
        return;
    m_text->setText(ChainWords::faults(state->faults));
    setAccessibleName(m_text->text());
}

void FaultsBar::setLook(const Look& look)
{
    m_mark->setLook(look);
}

void FaultsBar::setOnPage(bool onPage)
{
    m_onPage = onPage;
    m_show->setText(onPage ? ChainWords::leave() : ChainWords::show());
    m_show->setToolTip(onPage ? ChainWords::leaveHint() : ChainWords::showHint());
}

} // namespace rig
