#include "app/pages/questions/close_form.h"

#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/question_words.h"

#include <QPlainTextEdit>
#include <QVBoxLayout>

#include <algorithm>

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
    m_decidedBy = new ChoiceBox{QuestionWords::decidedBy()};
    add(layout, m_decidedBy, QuestionWords::decidedBy(), QuestionWords::notInList(), "decidedBy");
    m_found = addText(layout, QuestionWords::found(), QuestionWords::foundHint(), "questionFound");
    m_done = addText(layout, QuestionWords::done(), QuestionWords::doneHint(), "questionDone");
    m_enteredBy = new ChoiceBox{QuestionWords::enteredBy()};
    add(layout, m_enteredBy, QuestionWords::enteredBy(), {}, "enteredBy");
    m_status = labelOf({}, "problem", "closeStatus");
    m_status->hide();
    layout->addWidget(m_status);
    addButtons(layout);
}

void CloseForm::add(QVBoxLayout* layout, QWidget* editor, const QString& label, const QString& hint,
                    const char* name)
{
    QLabel* above = labelOf(label, "label");
    above->setBuddy(editor);
    editor->setObjectName(QLatin1String(name));
    editor->setAccessibleName(withoutMnemonic(label));
    editor->setAccessibleDescription(hint);
    QLabel* problem = labelOf({}, "problem");
    problem->setObjectName(QLatin1String(name) + QLatin1String("Problem"));
    problem->hide();
    layout->addWidget(above);
    layout->addWidget(editor);
    if (!hint.isEmpty())
        layout->addWidget(labelOf(hint, "soft"));
    layout->addWidget(problem);
    layout->addSpacing(8);
    m_problems[editor] = problem;
}

QPlainTextEdit* CloseForm::addText(QVBoxLayout* layout, const QString& label, const QString& hint,
                                   const char* name)
{
    constexpr int kLines = 2;
    auto* edit = new QPlainTextEdit;
    edit->setTabChangesFocus(true);
    edit->setFixedHeight(kLines * edit->fontMetrics().lineSpacing() + 28);
    add(layout, edit, label, hint, name);
    return edit;
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

void CloseForm::setEntry(const CloseEntry& entry)
{
    m_decidedBy->choose(entry.decidedBy);
    m_enteredBy->choose(entry.enteredBy);
    m_found->setPlainText(QString::fromStdString(entry.found));
    m_done->setPlainText(QString::fromStdString(entry.done));
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
    sayIn(m_problems.at(m_decidedBy), sentence(CloseLack::Person));
    sayIn(m_problems.at(m_found), sentence(CloseLack::Found));
    sayIn(m_problems.at(m_done), sentence(CloseLack::Done));
    if (lacks.empty())
        return sayIn(m_status, {});
    const QString already = sentence(CloseLack::AlreadyClosed) + sentence(CloseLack::Inspection);
    sayIn(m_status, already.isEmpty() ? QuestionWords::notClosed() : already);
    for (QWidget* editor : std::initializer_list<QWidget*>{m_decidedBy, m_found, m_done}) {
        if (m_problems.at(editor)->text().isEmpty())
            continue;
        editor->setFocus();
        break;
    }
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
