#include "app/window/conflicts_bar.h"

#include "app/widgets/mark_widget.h"
#include "app/widgets/parts.h"
#include "app/wording/conflict_words.h"

#include <QHBoxLayout>

namespace rig {

ConflictsBar::ConflictsBar(QWidget* parent) : QFrame{parent}
{
    setProperty("questions", true);
    setObjectName("conflictsBar");
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(20, 4, 16, 4);
    layout->setSpacing(10);
    m_mark = new MarkWidget;
    m_mark->show(MarkShape::HalfDisc, Role::InkSoft);
    m_text = labelOf({}, "body", "conflictsBarText");
    m_show = buttonOf(ConflictWords::show(), "showConflicts");
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

void ConflictsBar::display(int open)
{
    m_text->setText(ConflictWords::bar(open));
    setAccessibleName(m_text->text());
    setVisible(open > 0 || m_onPage);
}

void ConflictsBar::setLook(const Look& look)
{
    m_mark->setLook(look);
}

void ConflictsBar::setOnPage(bool onPage)
{
    m_onPage = onPage;
    m_show->setText(onPage ? ConflictWords::leave() : ConflictWords::show());
    m_show->setToolTip(onPage ? ConflictWords::leaveHint() : ConflictWords::showHint());
}

} // namespace rig
