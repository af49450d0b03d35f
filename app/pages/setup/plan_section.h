#pragma once

#include "app/theme/theme.h"
#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"

#include <QWidget>

#include <vector>

class QLabel;

namespace rig {

class PlanWidget;

// The plan of an airframe beside the form of one coupling: that one is moved by hand or by keys, the others
// are shown and stay. What was moved is told, and saved by whoever has the form.
class PlanSection : public QWidget
{
    Q_OBJECT

public:
    explicit PlanSection(QWidget* parent = nullptr);

    void setLook(const Look& look);
    // All couplings with the one that is moved; one that is not saved yet stands among them without an id.
    void display(const Airframe& airframe, const std::vector<Coupling>& couplings, CouplingId moved);
    // As it was typed or chosen elsewhere; empty: where its circuit usually is. Not told back.
    void setPlace(const std::optional<PlanPlace>& place);

signals:
    void placeMoved(rig::CouplingId coupling, const rig::PlanPlace& place);
    void otherPressed(rig::CouplingId coupling); // one that is not moved here

private:
    void pressed(int index);

    PlanWidget* m_plan = nullptr;
    QLabel* m_keys = nullptr;
    std::vector<CouplingId> m_couplings; // in the order of the plan
    std::optional<std::size_t> m_moved;
};

} // namespace rig
