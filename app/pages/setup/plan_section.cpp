#include "app/pages/setup/plan_section.h"

#include "app/blocks/cells.h"
#include "app/widgets/plan_widget.h"
#include "app/wording/plan_words.h"

#include <QLabel>
#include <QVBoxLayout>

namespace rig {

PlanSection::PlanSection(QWidget* parent) : QWidget{parent}, m_plan{new PlanWidget}, m_keys{new QLabel}
{
    setObjectName("planSection");
    m_plan->setObjectName("planOfPlaces");
    m_plan->setEditing(true);
    m_keys->setText(PlanWords::keysToMove());
    m_keys->setWordWrap(true);
    m_keys->setProperty("kind", "soft");
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_plan, 1);
    layout->addWidget(m_keys);
    connect(m_plan, &PlanWidget::couplingChosen, this, &PlanSection::pressed);
    connect(m_plan, &PlanWidget::placeMoved, this, [this](int index, const PlanPlace& place) {
        emit placeMoved(m_couplings[static_cast<std::size_t>(index)], place);
    });
}

void PlanSection::setLook(const Look& look)
{
    m_plan->setLook(look);
}

void PlanSection::display(const Airframe& airframe, const std::vector<Coupling>& couplings, CouplingId moved)
{
    PlanView view;
    view.glider = gliderOf(airframe);
    m_couplings.clear();
    m_moved.reset();
    for (const Coupling& coupling : couplings) {
        if (coupling.id == moved)
            m_moved = m_couplings.size();
        m_couplings.push_back(coupling.id);
        view.items.push_back(planItemOf(coupling, textOf(coupling.name)));
    }
    view.chosen = m_moved;
    m_plan->setView(view);
}

void PlanSection::setPlace(const std::optional<PlanPlace>& place)
{
    if (!m_moved)
        return;
    PlanView view = m_plan->view();
    view.items[*m_moved].place = place;
    m_plan->setView(view);
}

void PlanSection::pressed(int index)
{
    const auto at = static_cast<std::size_t>(index);
    if (m_moved == at)
        return;
    PlanView view = m_plan->view();
    view.chosen = m_moved;
    m_plan->setView(view);
    emit otherPressed(m_couplings[at]);
}

} // namespace rig
