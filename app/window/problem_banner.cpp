#include "app/window/problem_banner.h"

#include "app/widgets/announcer.h"
#include "app/widgets/parts.h"
#include "app/window/button_key.h"
#include "app/wording/copy_words.h"
#include "app/wording/window_words.h"

#include <QHBoxLayout>

namespace rig {

ProblemBanner::ProblemBanner(QWidget* parent) : QFrame{parent}
{
    setProperty("banner", true);
    setObjectName("problemBanner");
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(20, 8, 16, 8);
    m_text = labelOf({}, "problem", "problemText");
    m_salvage = buttonOf(CopyWords::salvage(), "salvage");
    m_salvage->setToolTip(CopyWords::salvageHint());
    pressOnControl(Qt::Key_R, m_salvage);
    m_salvage->setAutoDefault(true);
    m_salvage->hide();
    connect(m_salvage, &QPushButton::clicked, this, &ProblemBanner::salvageAsked);
    auto* dismiss = new QPushButton{WindowWords::dismiss()};
    connect(dismiss, &QPushButton::clicked, this, &QFrame::hide);
    layout->addWidget(m_text, 1);
    layout->addWidget(m_salvage);
    layout->addWidget(dismiss);
    hide();
}

void ProblemBanner::say(const QString& sentence)
{
    sayOfFile(sentence, false);
}

void ProblemBanner::sayOfFile(const QString& sentence, bool mayBeSalvaged)
{
    m_text->setText(sentence);
    announceAnew(*m_text, sentence);
    m_salvage->setVisible(mayBeSalvaged);
    show();
    if (mayBeSalvaged)
        m_salvage->setFocus();
}

} // namespace rig
