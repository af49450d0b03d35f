#pragma once

#include "app/pages/setup/form.h"

class QLabel;

namespace rig {

// Everything that is asked of one coupling.
class CouplingForm : public Form
{
    Q_OBJECT

public:
    explicit CouplingForm(QWidget* parent = nullptr);

    CouplingEntry entry() const;
    void setEntry(const CouplingEntry& entry);

private:
    void explainLayout();

    QLineEdit* m_name = nullptr;
    QLineEdit* m_circuit = nullptr;
    QComboBox* m_side = nullptr;
    QComboBox* m_place = nullptr;
    QLineEdit* m_access = nullptr;
    QLineEdit* m_leafPlace = nullptr;
    QComboBox* m_layout = nullptr;
    QComboBox* m_securing = nullptr;
    QLineEdit* m_note = nullptr;
};

} // namespace rig
