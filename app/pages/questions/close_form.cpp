#include "app/pages/questions/close_form.h"

#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/question_words.h"

#include <QPlainTextEdit>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace rig {

namespace {

QString lackSentence(CloseLack lack)
{
    switch (lack) {
    case CloseLack::Person:
        return QuestionWords::personMissing();
    case CloseLack::Found:
        return QuestionWords::foundMissing();
    case CloseLack::Done:
        return QuestionWords::doneMissing();
    case CloseLack::Inspection:
        return QuestionWords::notInspected();
    case CloseLack::AlreadyClosed:
        break;
    }
    return QuestionWords::alreadyClosed();
}

void fillPersons(ChoiceBox* box, const QString& prompt, const std::vector<Person>& persons)
{
    const auto before = box->chosen<PersonId>();
    box->begin(prompt);
    for (const Person& person : persons)
        box->add(QString::fromStdString(person.name), person.id);
    box->choose(before);
}

} // namespace

CloseForm::CloseForm(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    const auto add = [layout](QWidget* editor, const QString& label, const QString& hint, const char* name) {
        const FormField field = formField(editor, editor, name, hint);
        field.name(label);
        layout->addWidget(field.around);
        return field;
    };
    m_decidedBy = new ChoiceBox{QuestionWords::decidedBy()};
    m_decidedField = add(m_decidedBy, QuestionWords::decidedBy(), QuestionWords::notInList(), "decidedBy");
    m_own = labelOf({}, "caution", "ownFinding");
    layout->addWidget(m_own);
    m_own->hide();
    connect(m_decidedBy, &QComboBox::currentIndexChanged, this, &CloseForm::sayWhetherOwn);
    m_found = shortText();
    m_foundField = add(m_found, QuestionWords::found(), QuestionWords::foundHint(), "questionFound");
    m_done = shortText();
    m_doneField = add(m_done, QuestionWords::done(), QuestionWords::doneHint(), "questionDone");
    m_enteredBy = new ChoiceBox{QuestionWords::enteredBy()};
    add(m_enteredBy, QuestionWords::enteredBy(), {}, "enteredBy");
    m_status = labelOf({}, "problem", "closeStatus");
    m_status->hide();
    layout->addWidget(m_status);
    addButtons(layout);
}

void CloseForm::addButtons(QVBoxLayout* layout)
{
    auto* save = buttonOf(QuestionWords::save(), "saveClosing", "primary");
    auto* aside = buttonOf(QuestionWords::putAside(), "putAside");
    save->setAutoDefault(true); // Enter presses it
    aside->setAutoDefault(true);
    auto* buttons = new WrapLayout{8, false};
    buttons->addWidget(save);
    buttons->addWidget(aside);
    layout->addLayout(buttons);
    layout->addWidget(labelOf(QuestionWords::typedStays(), "soft"));
    connect(save, &QPushButton::clicked, this, &CloseForm::saveAsked);
    connect(aside, &QPushButton::clicked, this, &CloseForm::putAsideAsked);
}

void CloseForm::setPersons(const std::vector<Person>& persons)
{
    fillPersons(m_decidedBy, QuestionWords::choosePerson(), persons);
    fillPersons(m_enteredBy, QuestionWords::nobodyNamed(), persons);
}

void CloseForm::setFoundBy(std::optional<PersonId> person)
{
    m_foundBy = person;
    sayWhetherOwn();
}

void CloseForm::sayWhetherOwn()
{
    const auto person = m_decidedBy->chosen<PersonId>();
    sayIn(m_own,
          person && person == m_foundBy ? QuestionWords::ownFinding(m_decidedBy->currentText()) : QString{});
}

void CloseForm::setEntry(const CloseEntry& entry)
{
    m_decidedBy->choose(entry.decidedBy);
    m_enteredBy->choose(entry.enteredBy);
    for (const auto& [field, words] : {std::pair{m_found, &entry.found}, std::pair{m_done, &entry.done}}) {
        field->setPlainText(QString::fromStdString(*words));
        field->document()->setModified(!words->empty()); // typed before, and still not saved
    }
    showLacks({});
}

CloseEntry CloseForm::entry() const
{
    return {m_decidedBy->chosen<PersonId>(), m_enteredBy->chosen<PersonId>(),
            m_found->toPlainText().trimmed().toStdString(), m_done->toPlainText().trimmed().toStdString()};
}

void CloseForm::showLacks(const std::vector<CloseLack>& lacks)
{
    const auto sentence = [&lacks](CloseLack lack) {
        return std::ranges::find(lacks, lack) == lacks.end() ? QString{} : lackSentence(lack);
    };
    sayIn(m_decidedField.problem, sentence(CloseLack::Person));
    sayIn(m_foundField.problem, sentence(CloseLack::Found));
    sayIn(m_doneField.problem, sentence(CloseLack::Done));
    if (lacks.empty())
        return sayIn(m_status, {});
    const QString already = sentence(CloseLack::AlreadyClosed) + sentence(CloseLack::Inspection);
    sayIn(m_status, already.isEmpty() ? QuestionWords::notClosed() : already);
    focusFirstLack({&m_decidedField, &m_foundField, &m_doneField});
}

void CloseForm::focusFirst()
{
    m_decidedBy->setFocus();
}

void CloseForm::keyPressEvent(QKeyEvent* event)
{
    if (isEnter(*event) && event->modifiers().testFlag(Qt::ControlModifier))
        emit saveAsked();
    else if (event->key() == Qt::Key_Escape)
        emit putAsideAsked();
    else
        QWidget::keyPressEvent(event);
}

} // namespace rig
