#pragma once

#include "app/pages/setup/form.h"

namespace rig {

// One leaf set, pin set or taper gauge.
class GaugeForm : public Form
{
    Q_OBJECT

public:
    explicit GaugeForm(QWidget* parent = nullptr);

    GaugeEntry entry() const;
    void setEntry(const GaugeEntry& entry);

private:
    void showKind();
    void echoSizes();

    QLineEdit* m_name = nullptr;
    QComboBox* m_kind = nullptr;
    QLineEdit* m_sizes = nullptr;
    QLineEdit* m_resolution = nullptr;
    QLineEdit* m_tolerance = nullptr;
    QLineEdit* m_note = nullptr;
};

} // namespace rig
