#include "app/pages/rigged_today/stop_card.h"

#include "app/widgets/announcer.h"
#include "app/widgets/mark_widget.h"
#include "app/widgets/parts.h"
#include "app/wording/control_words.h"

#include <QGridLayout>

namespace rig {

StopCard::StopCard(QWidget* parent) : QFrame{parent}
{
    setObjectName("stopCard");
    setProperty("verdict", "outside");
    auto* layout = new QGridLayout{this};
    layout->setContentsMargins(16, 10, 16, 10);
    layout->setHorizontalSpacing(14);
    layout->setVerticalSpacing(2);
    m_mark = new MarkWidget;
    m_mark->show(Verdict::Outside);
    QLabel* word = labelOf(ControlWords::stop(), "verdict");
    m_why = labelOf({}, "body", "stopWhy");
    m_call = labelOf({}, "section", "stopCall");
    m_todo = labelOf({}, "body", "stopTodo");
    for (QLabel* label : {word, m_why, m_call, m_todo})
        label->setProperty("verdict", "outside");
    layout->addWidget(m_mark, 0, 0, 2, 1, Qt::AlignTop);
    layout->addWidget(word, 0, 1);
    layout->addWidget(m_why, 1, 1);
    layout->addWidget(m_call, 2, 1);
    layout->addWidget(m_todo, 3, 1);
    layout->setColumnStretch(1, 1);
}

void StopCard::setLook(const Look& look)
{
    m_mark->setLook(look);
}

void StopCard::say(const QString& why, const StopAdvice& advice)
{
    m_why->setText(why);
    m_call->setText(advice.first);
    sayIn(m_todo, advice.then);
    setAccessibleName(ControlWords::stop());
    setAccessibleDescription(QStringList{why, advice.first, advice.then}.join(QLatin1Char(' ')).trimmed());
    announce(*this, ControlWords::stop() + QStringLiteral(". ") + accessibleDescription());
}

// Whoever comes back to it meets it again.
void StopCard::hideEvent(QHideEvent* event)
{
    QFrame::hideEvent(event);
    announce(*this, {});
}

} // namespace rig
