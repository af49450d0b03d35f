#include "app/pages/setup/airframe_form.h"

#include "app/pages/setup/day_edit.h"
#include "app/wording/setup_words.h"

#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSignalBlocker>

namespace rig {

AirframeForm::AirframeForm(QWidget* parent) : Form{SetUpWords::saveWithKey(), false, parent}
{
    m_registration =
        addLine({"registrationField", SetUpWords::registration(), SetUpWords::needed(), Field::Registration});
    m_type = addLine({"type", SetUpWords::type(), {}, {}});
    m_serial = addLine({"serial", SetUpWords::serial(), {}, {}});
    m_riggings = addLine({"riggingsBefore", SetUpWords::riggingsBefore(), SetUpWords::riggingsBeforeHint(),
                          Field::RiggingsBefore});
    m_callName = addLine({"callName", SetUpWords::callName(), SetUpWords::callNameHint(), {}});
    m_callPhone = addLine({"callPhone", SetUpWords::callPhone(), {}, {}});
    m_annual = addDay({"annualDue", SetUpWords::annualDue(), SetUpWords::dayHintOrEmpty(), Field::AnnualDue});
    m_jurisdiction =
        addLine({"jurisdiction", SetUpWords::jurisdiction(), SetUpWords::jurisdictionHint(), {}});
    m_manuals =
        addText({"manualReferences", SetUpWords::manualReferences(), SetUpWords::manualReferencesHint(), {}});
}

AirframeEntry AirframeForm::entry() const
{
    return {m_registration->text(), m_type->text(),           m_serial->text(),
            m_jurisdiction->text(), m_manuals->toPlainText(), m_annual->text(),
            m_callName->text(),     m_callPhone->text(),      m_riggings->text()};
}

void AirframeForm::setEntry(const AirframeEntry& entry)
{
    const QSignalBlocker quiet{m_manuals};
    m_registration->setText(entry.registration);
    m_type->setText(entry.type);
    m_serial->setText(entry.serial);
    m_jurisdiction->setText(entry.jurisdiction);
    m_manuals->setPlainText(entry.manualReferences);
    m_annual->setText(entry.annualDue);
    m_callName->setText(entry.callName);
    m_callPhone->setText(entry.callPhone);
    m_riggings->setText(entry.riggingsBefore);
}

} // namespace rig
