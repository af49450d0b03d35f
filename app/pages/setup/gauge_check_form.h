#pragma once

#include "app/pages/setup/form.h"

class QLabel;
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
    // The day from which on, with the reason. What the user typed in its place stays.
    void proposeDay(const QString& day, const QString& why);
    void showEffect(const QStringList& sentences);

signals:
    // Whether the gauge is in doubt, from which day on, or the day of the check.
    void doubtEdited();

private:
    QWidget* makeEffect();
    void showDoubt();

    DayEdit* m_day = nullptr;
    QLineEdit* m_how = nullptr;
    QLineEdit* m_found = nullptr;
    QRadioButton* m_usable = nullptr;
    QRadioButton* m_doubted = nullptr;
    DayEdit* m_from = nullptr;
    bool m_dayGiven = false; // by the user
    QWidget* m_effect = nullptr;
    QLabel* m_effectText = nullptr;
};

} // namespace rig
