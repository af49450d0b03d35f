#include "app/pages/statement_form.h"

#include "app/pages/day_edit.h"
#include "app/pages/page.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/day_words.h"
#include "app/wording/statement_words.h"

#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace rig {

StatementForm::StatementForm(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(20, 14, 20, 14);
    layout->setSpacing(4);
    m_title = labelOf({}, "title", "statementTitle");
    m_about = labelOf({}, "soft", "statementAbout");
    m_reading = labelOf({}, "body", "statementReading");
    for (QLabel* one : {m_title, m_about, m_reading})
        layout->addWidget(one);
    layout->addSpacing(8);
    m_where = new ChoiceBox{{}};
    m_whereField = formField(m_where, m_where, "statementWhere", {});
    m_day = new DayEdit;
    m_dayField = formField(m_day, m_day->line(), "statementDay", DayWords::hint());
    m_person = new ChoiceBox{{}};
    m_personField = formField(m_person, m_person, "statementPerson", StatementWords::notInList());
    m_said = shortText();
    m_saidField = formField(m_said, m_said, "statementSaid", {});
    m_done = shortText();
    m_doneField = formField(m_done, m_done, "statementDone", StatementWords::doneHint());
    for (const FormField* field : {&m_whereField, &m_dayField, &m_personField, &m_saidField, &m_doneField})
        layout->addWidget(field->around);
    m_status = labelOf({}, "problem", "statementStatus");
    m_status->hide();
    layout->addWidget(m_status);
    addButtons(layout);
    layout->addStretch(1);
    // The reading is one of the coupling that was in view.
    connect(m_where, &QComboBox::activated, this,
            [this] { m_reading->setVisible(!m_reading->text().isEmpty() && entry().reading); });
    connect(m_where, &QComboBox::currentTextChanged, this,
            [this](const QString& where) { setProperty(kIsAbout, where); });
}

void StatementForm::addButtons(QVBoxLayout* layout)
{
    m_keep = buttonOf({}, "keepStatement", "primary");
    auto* aside = buttonOf(StatementWords::putAside(), "putStatementAside");
    m_keep->setAutoDefault(true); // Enter presses it
    aside->setAutoDefault(true);
    auto* buttons = new WrapLayout{8, false};
    buttons->addWidget(m_keep);
    buttons->addWidget(aside);
    layout->addLayout(buttons);
    layout->addWidget(labelOf(StatementWords::typedStays(), "soft"));
    connect(m_keep, &QPushButton::clicked, this, &StatementForm::keepAsked);
    connect(aside, &QPushButton::clicked, this, &StatementForm::putAsideAsked);
}

void StatementForm::setChoices(const StatementChoices& choices)
{
    const auto where = m_where->chosen<CouplingId>();
    m_where->fill(StatementWords::wholeAirframe(), choices.couplings);
    m_where->choose(where);
    const auto person = m_person->chosen<PersonId>();
    m_person->fill(StatementWords::choosePerson(), choices.persons);
    m_person->choose(person);
}

void StatementForm::setEntry(const StatementEntry& entry, const QString& about)
{
    m_entry = entry;
    const bool isFinding = entry.kind == StatementKind::Finding;
    m_title->setText(isFinding ? StatementWords::findingTitle() : StatementWords::askTitle());
    m_about->setText(isFinding ? StatementWords::findingAbout() : StatementWords::askAbout());
    sayIn(m_reading, isFinding ? QString{} : about);
    m_whereField.name(StatementWords::where());
    m_dayField.name(StatementWords::day());
    m_day->setCalendarName(withoutMnemonic(StatementWords::day()));
    m_personField.name(isFinding ? StatementWords::finder() : StatementWords::asker());
    m_saidField.name(isFinding ? StatementWords::found() : StatementWords::question());
    m_doneField.name(StatementWords::done());
    m_dayField.around->setVisible(isFinding);
    m_doneField.around->setVisible(isFinding);
    m_keep->setText(isFinding ? StatementWords::keep() : StatementWords::keepQuestion());
    setTyped(entry);
}

void StatementForm::setTyped(const StatementEntry& entry)
{
    m_where->choose(entry.coupling);
    m_day->setText(entry.day);
    m_person->choose(entry.person);
    m_said->setPlainText(entry.said);
    m_done->setPlainText(entry.done);
    m_reading->setVisible(!m_reading->text().isEmpty() && entry.reading);
    showLacks({});
}

StatementEntry StatementForm::entry() const
{
    StatementEntry typed = m_entry;
    typed.coupling = m_where->chosen<CouplingId>();
    if (typed.coupling != m_entry.coupling)
        typed.reading.reset();
    typed.day = m_day->text();
    typed.person = m_person->chosen<PersonId>();
    typed.said = m_said->toPlainText();
    typed.done = m_done->toPlainText();
    return typed;
}

QString StatementForm::sentenceOf(StatementLack lack) const
{
    const bool isFinding = m_entry.kind == StatementKind::Finding;
    switch (lack) {
    case StatementLack::Person:
        return isFinding ? StatementWords::finderMissing() : StatementWords::askerMissing();
    case StatementLack::DayUnread:
        return DayWords::missing();
    case StatementLack::DayAhead:
        return StatementWords::dayAhead();
    case StatementLack::Said:
        return isFinding ? StatementWords::foundMissing() : StatementWords::questionMissing();
    case StatementLack::Done:
        break;
    }
    return StatementWords::doneMissing();
}

const FormField& StatementForm::fieldOf(StatementLack lack) const
{
    switch (lack) {
    case StatementLack::Person:
        return m_personField;
    case StatementLack::DayUnread:
    case StatementLack::DayAhead:
        return m_dayField;
    case StatementLack::Said:
        return m_saidField;
    case StatementLack::Done:
        break;
    }
    return m_doneField;
}

void StatementForm::showLacks(const std::vector<StatementLack>& lacks)
{
    for (const FormField* field : {&m_dayField, &m_personField, &m_saidField, &m_doneField})
        sayIn(field->problem, {});
    for (const StatementLack lack : lacks)
        sayIn(fieldOf(lack).problem, sentenceOf(lack));
    sayIn(m_status, lacks.empty() ? QString{} : StatementWords::notKept());
    focusFirstLack({&m_dayField, &m_personField, &m_saidField, &m_doneField});
}

// Where and when are filled in from what was in view.
void StatementForm::focusFirst()
{
    m_person->setFocus();
}

void StatementForm::keyPressEvent(QKeyEvent* event)
{
    if (isEnter(*event) && event->modifiers().testFlag(Qt::ControlModifier))
        emit keepAsked();
    else if (event->key() == Qt::Key_Escape)
        emit putAsideAsked();
    else if (event->key() == Qt::Key_PageUp || event->key() == Qt::Key_PageDown)
        QWidget::keyPressEvent(event);
    else
        event->accept(); // no letter of it is one of the page's
}

} // namespace rig
