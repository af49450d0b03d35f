#include "app/pages/rigged_today/season_panel.h"

#include "app/widgets/parts.h"
#include "app/widgets/wrapped.h"
#include "app/wording/formats.h"
#include "app/wording/rigged_words.h"

#include <QCheckBox>
#include <QKeyEvent>
#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

SeasonPanel::SeasonPanel(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(28, 24, 28, 24);
    layout->setSpacing(12);
    m_title = labelOf({}, "title", "seasonTitle");
    layout->addWidget(m_title);
    m_stood = labelOf({}, "section", "seasonStood");
    layout->addWidget(m_stood);
    m_why = labelOf({}, "body", "seasonWhy");
    layout->addWidget(m_why);
    for (const TickKind kind : seasonTicks()) {
        auto* box = new WrapCheck{RiggedWords::tick(kind)};
        box->setObjectName(QStringLiteral("season%1").arg(static_cast<int>(kind)));
        connect(box, &QCheckBox::toggled, this, [this, kind](bool isOn) {
            if (isOn)
                emit ticked(kind);
        });
        layout->addWidget(box);
        m_boxes.emplace(kind, box);
    }
    m_next = buttonOf(RiggedWords::seasonNext(), "seasonNext", "primary");
    m_next->setAutoDefault(true);
    connect(m_next, &QPushButton::clicked, this, &SeasonPanel::nextAsked);
    layout->addWidget(m_next, 0, Qt::AlignLeft);
    layout->addStretch(1);
}

void SeasonPanel::display(const RiggedTodayView& view)
{
    const StoodBefore& stood = view.stood;
    sayIn(m_stood, stood.isAfterLayoff()
                       ? RiggedWords::afterLayoff(stood.weeks(), Formats{}.day(*stood.since))
                       : QString{});
    m_title->setText(RiggedWords::seasonTitle(view.isSeasonNotKnown));
    m_why->setText(view.isSeasonNotKnown ? RiggedWords::seasonNotKnown(view.airframe.riggingsBefore)
                                         : RiggedWords::seasonSentence(stood.isFirstOfYear));
    for (const auto& [kind, box] : m_boxes) {
        const auto& open = view.review.seasonList;
        const bool isOpen = std::ranges::find(open, kind) != open.end();
        const QSignalBlocker silent{box};
        box->setChecked(!isOpen);
        box->setEnabled(isOpen);
    }
}

bool SeasonPanel::takeKey(QKeyEvent* event)
{
    if (!isEnter(*event))
        return false;
    m_next->click();
    return true;
}

} // namespace rig
