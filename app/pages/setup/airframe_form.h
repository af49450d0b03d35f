#pragma once

#include "app/pages/setup/form.h"

namespace rig {

class AirframeForm : public Form
{
    Q_OBJECT

public:
    explicit AirframeForm(QWidget* parent = nullptr);

    AirframeEntry entry() const;
    void setEntry(const AirframeEntry& entry);

private:
    QLineEdit* m_registration = nullptr;
    QLineEdit* m_type = nullptr;
    QLineEdit* m_serial = nullptr;
    QLineEdit* m_riggings = nullptr;
    QLineEdit* m_callName = nullptr;
    QLineEdit* m_callPhone = nullptr;
    DayEdit* m_annual = nullptr;
    QLineEdit* m_jurisdiction = nullptr;
    QPlainTextEdit* m_manuals = nullptr;
};

} // namespace rig
