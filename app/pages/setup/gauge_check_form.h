#pragma once

#include "app/pages/setup/form.h"

class QRadioButton;

namespace rig {

// A check of one gauge: found usable, or in doubt from a day on.
class GaugeCheckForm : public Form
{
    Q_OBJECT

public:
    explicit GaugeCheckForm(QWidget* parent = nullptr);

    GaugeCheckEntry entry() const;
    void setEntry(const GaugeCheckEntry& entry);

private:
    void showDoubt();

    DayEdit* m_day = nullptr;
    QLineEdit* m_how = nullptr;
    QLineEdit* m_found = nullptr;
    QRadioButton* m_usable = nullptr;
    QRadioButton* m_doubted = nullptr;
    DayEdit* m_from = nullptr;
};

} // namespace rig
