#pragma once

#include "app/pages/setup/entry_form.h"
#include "app/theme/theme.h"

class QCheckBox;

namespace rig {

class PlanSection;
class StepLine;

// Everything that is asked of one coupling.
class CouplingForm : public EntryForm<CouplingEntry>
{
public:
    CouplingForm();

    // The plan with all couplings; `moved`, null for one that is not saved yet, stands where the form says.
    void showOnPlan(const Airframe& airframe, std::vector<Coupling> couplings, CouplingId moved);
    void setLook(const Look& look);

private:
    // What a kind does not say by itself: ticked or not, it is kept while another kind is looked at.
    QCheckBox* part(const char* name, const QString& text, bool CouplingParts::*member);
    // Where it stands on the plan: a rough choice and a drawn plan, and the numbers that both fill.
    void addPlace();
    void fillPlace(const std::optional<PlanPlace>& place);
    std::optional<PlanPlace> typedPlace() const;
    StepLine* number(const FieldText& text, QString CouplingEntry::*member, int least, int most);
    void explainLayout();
    // Layout and leaf are of a ball joint, and of whatever else has a gap.
    void explainKind();

    QComboBox* m_kind = nullptr;
    QCheckBox* m_pull = nullptr;
    QCheckBox* m_securing = nullptr;
    QCheckBox* m_gap = nullptr;
    QComboBox* m_layout = nullptr;
    QLineEdit* m_leafPlace = nullptr;
    StepLine* m_across = nullptr;
    StepLine* m_along = nullptr;
    PlanSection* m_plan = nullptr;
};

} // namespace rig
