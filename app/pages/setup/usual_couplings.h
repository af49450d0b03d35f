#pragma once

#include "app/pages/setup/form.h"
#include "app/pages/setup/setup_presenter.h"

class QCheckBox;

namespace rig {

// The usual couplings to tick.
class UsualCouplingsForm : public Form
{
    Q_OBJECT

public:
    explicit UsualCouplingsForm(QWidget* parent = nullptr);

    // Nothing is ticked; what the airframe has already cannot be.
    void begin(const std::vector<CouplingRow>& known);
    std::vector<UsualCoupling> ticked() const;

private:
    std::array<QCheckBox*, kUsualCouplings.size()> m_boxes{};
};

} // namespace rig
