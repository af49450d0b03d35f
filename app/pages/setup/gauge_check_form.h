#pragma once

#include "app/pages/setup/entry_form.h"

class QLabel;
class QRadioButton;

namespace rig {

// A check of one gauge: found usable, or in doubt from a day on.
class GaugeCheckForm : public EntryForm<GaugeCheckEntry>
{
public:
    GaugeCheckForm();

    // Whether the gauge is in doubt, from which day on, or the day of the check was changed.
    void onDoubtEdited(std::function<void()> told) { m_told = std::move(told); }
    // The day from which on, with the reason. What the user typed in its place stays.
    void proposeDay(const QString& day, const QString& why);
    void showEffect(const QStringList& sentences);

private:
    QWidget* makeOutcome();
    QWidget* makeEffect();
    void showDoubt();

    std::function<void()> m_told;
    QRadioButton* m_usable = nullptr;
    QRadioButton* m_doubted = nullptr;
    DayEdit* m_from = nullptr;
    bool m_dayGiven = false; // by the user
    QWidget* m_effect = nullptr;
    QLabel* m_effectText = nullptr;
};

} // namespace rig
