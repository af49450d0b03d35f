#pragma once

#include "app/pages/setup/entry_form.h"

class QCheckBox;

namespace rig {

class StepLine;

// Everything that is asked of one coupling.
class CouplingForm : public EntryForm<CouplingEntry>
{
public:
    CouplingForm();

private:
    // What a kind does not say by itself: ticked or not, it is kept while another kind is looked at.
    QCheckBox* part(const char* name, const QString& text, bool CouplingParts::*member);
    // Where it stands on the plan: a rough choice, and the numbers that it fills. A drawn plan belongs here
    // too, and fills the same numbers.
    void addPlace();
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
};

} // namespace rig
