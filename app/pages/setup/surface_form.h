#pragma once

#include "app/pages/setup/form.h"

namespace rig {

// Everything that is asked of one surface. Figures are typed as the manual gives them.
class SurfaceForm : public Form
{
    Q_OBJECT

public:
    explicit SurfaceForm(QWidget* parent = nullptr);

    SurfaceEntry entry() const;
    void setEntry(const SurfaceEntry& entry);

private:
    void showUsualCall();

    QLineEdit* m_name = nullptr;
    QComboBox* m_kind = nullptr;
    QComboBox* m_side = nullptr;
    QLineEdit* m_senseCall = nullptr;
    QLineEdit* m_reference = nullptr;
    QComboBox* m_unit = nullptr;
    QLineEdit* m_measuredAt = nullptr;
    QLineEdit* m_upNominal = nullptr;
    QLineEdit* m_upTolerance = nullptr;
    QLineEdit* m_downNominal = nullptr;
    QLineEdit* m_downTolerance = nullptr;
    QLineEdit* m_mostPlay = nullptr;
};

} // namespace rig
