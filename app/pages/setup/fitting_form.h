#pragma once

#include "app/pages/setup/form.h"

namespace rig {

// A new fitting of one coupling; says that it ends the old baseline.
class FittingForm : public Form
{
    Q_OBJECT

public:
    explicit FittingForm(QWidget* parent = nullptr);

    FittingEntry entry() const;
    void setEntry(const FittingEntry& entry);

private:
    DayEdit* m_day = nullptr;
    QLineEdit* m_reason = nullptr;
};

} // namespace rig
