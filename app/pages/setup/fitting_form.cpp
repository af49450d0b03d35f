#include "app/pages/setup/fitting_form.h"

#include "app/pages/setup/day_edit.h"
#include "app/wording/coupling_words.h"
#include "app/wording/setup_words.h"

#include <QLineEdit>

namespace rig {

FittingForm::FittingForm(QWidget* parent) : Form{CouplingWords::startFitting(), true, parent}
{
    setExplanation(CouplingWords::fittingMeaning(), "caution");
    m_day = addDay({"fittingDay", CouplingWords::fittingDay(), SetUpWords::dayHint(), Field::FittingDay});
    m_reason = addLine({"fittingReason", CouplingWords::fittingReason(), CouplingWords::fittingReasonHint(),
                        Field::FittingReason},
                       Width::Whole);
}

FittingEntry FittingForm::entry() const
{
    return {m_day->text(), m_reason->text()};
}

void FittingForm::setEntry(const FittingEntry& entry)
{
    m_day->setText(entry.day);
    m_reason->setText(entry.reason);
}

} // namespace rig
