#include "app/pages/questions/question_panel.h"

#include "app/pages/questions/close_form.h"
#include "app/pages/questions/question_row_text.h"
#include "app/widgets/mark_widget.h"
#include "app/widgets/parts.h"
#include "app/wording/question_words.h"
#include "app/wording/stop_words.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

bool hasWords(const CloseEntry& entry)
{
    return !entry.found.empty() || !entry.done.empty();
}

} // namespace

QuestionPanel::QuestionPanel(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(28, 20, 28, 20);
    layout->setSpacing(10);
    buildStory(layout);
    buildClosing(layout);
    layout->addStretch(1);
}

void QuestionPanel::buildStory(QVBoxLayout* layout)
{
    auto* top = new QHBoxLayout;
    top->setSpacing(12);
    m_mark = new MarkWidget;
    m_title = labelOf({}, "title", "questionTitle");
    top->addWidget(m_mark, 0, Qt::AlignTop);
    top->addWidget(m_title, 1);
    layout->addLayout(top);
    m_result = labelOf({}, "section", "closeResult");
    m_state = labelOf({}, "label", "questionState");
    m_story = labelOf({}, "body", "questionStory");
    m_foundLabel = labelOf(QuestionWords::foundLabel(), "label");
    m_found = labelOf({}, "body", "storyFound");
    m_doneLabel = labelOf(QuestionWords::doneLabel(), "label");
    m_done = labelOf({}, "body", "storyDone");
    for (QLabel* one : {m_result, m_state, m_story, m_foundLabel, m_found, m_doneLabel, m_done})
        layout->addWidget(one);
    m_result->hide();
}

void QuestionPanel::buildClosing(QVBoxLayout* layout)
{
    m_callCard = new QFrame;
    m_callCard->setProperty("verdict", "outside");
    auto* card = new QVBoxLayout{m_callCard};
    card->setContentsMargins(14, 10, 14, 10);
    m_call = labelOf({}, "body", "questionCall");
    card->addWidget(m_call);
    layout->addWidget(m_callCard);
    m_consequence = labelOf({}, "caution", "questionConsequence");
    layout->addWidget(m_consequence);
    m_close = buttonOf(QuestionWords::closeThis(), "openCloseForm");
    m_close->setAutoDefault(true);
    layout->addWidget(m_close, 0, Qt::AlignLeft);
    m_form = new CloseForm;
    layout->addWidget(m_form);
    m_form->hide();
    connect(m_close, &QPushButton::clicked, this, &QuestionPanel::openForm);
    connect(m_form, &CloseForm::saveAsked, this, [this] { emit closeAsked(m_question, m_form->entry()); });
    connect(m_form, &CloseForm::putAsideAsked, this, [this] {
        keepTyped();
        showForm(false);
        emit formPutAside();
    });
}

void QuestionPanel::display(const QuestionsView& view, const QuestionRow& row)
{
    const bool isAnother = row.story.question.id != m_question;
    const bool isOpen = row.story.isOpen();
    if (isAnother) {
        keepTyped();
        showResult({});
    }
    m_question = row.story.question.id;
    m_mark->show(shapeOf(row), shapeRoleOf(row));
    m_title->setText(titleOf(row));
    m_state->setText(stateOf(row));
    m_story->setText(storyOf(row).join(QLatin1Char('\n')));
    const auto& resolution = row.story.resolution;
    sayIn(m_found, resolution ? QString::fromStdString(resolution->found) : QString{});
    sayIn(m_done, resolution ? QString::fromStdString(resolution->done) : QString{});
    const bool isDecided = resolution && !resolution->answered;
    m_foundLabel->setVisible(isDecided);
    m_doneLabel->setVisible(isDecided);
    m_callCard->setVisible(isOpen);
    const QString callName = QString::fromStdString(view.airframe.callName);
    const QString callPhone = QString::fromStdString(view.airframe.callPhone);
    // What came up on the day of a paper is long over, or stops the glider today as well.
    m_call->setText(QStringList{row.story.question.onPaper ? StopWords::unlessResolved(callName, callPhone)
                                                           : QuestionWords::call(callName, callPhone),
                                QuestionWords::onlyWhenFound(), QuestionWords::onlyEntitled(),
                                QuestionWords::neverByItself()}
                        .join(QLatin1Char(' ')));
    sayIn(m_consequence, consequenceOf(row));
    m_form->setPersons(view.persons);
    m_form->setFoundBy(row.foundBy);
    if (isAnother || !isOpen)
        showForm(false);
    m_close->setVisible(isOpen && !m_isFormOpen);
}

void QuestionPanel::setLook(const Look& look)
{
    // As in Set up: a longer line is tiring to read.
    constexpr double kWidest = 960;
    setMaximumWidth(static_cast<int>(std::lround(kWidest * look.fonts.scale)));
    m_mark->setLook(look);
}

void QuestionPanel::openForm()
{
    if (m_close->isHidden() && !m_isFormOpen)
        return;
    if (!m_isFormOpen)
        takeForm();
    showForm(true);
    m_form->focusFirst();
}

void QuestionPanel::takeForm()
{
    const auto typed = m_typed.find(m_question);
    m_form->setEntry(typed == m_typed.end() ? CloseEntry{} : typed->second.entry);
    m_form->setProperty(kIsAbout, m_title->text());
    m_inForm = m_question;
}

void QuestionPanel::showForm(bool shown)
{
    m_isFormOpen = shown;
    m_form->setVisible(shown);
    m_close->setVisible(!shown);
}

void QuestionPanel::keepTyped()
{
    if (m_isFormOpen)
        m_typed[m_question] = {m_form->entry(), m_form->property(kIsAbout).toString()};
}

void QuestionPanel::forgetTyped(QuestionId question)
{
    m_typed.erase(question);
    if (m_inForm != question)
        return;
    m_inForm.reset();
    m_form->setEntry({});
}

bool QuestionPanel::hasTyped() const
{
    return (m_isFormOpen && hasWords(m_form->entry())) ||
           std::ranges::any_of(m_typed, [](const auto& one) { return hasWords(one.second.entry); });
}

std::vector<TypedAside> QuestionPanel::typedAside() const
{
    std::vector<TypedAside> aside;
    for (const auto& [question, typed] : m_typed) {
        if (question == m_inForm || !hasWords(typed.entry))
            continue;
        aside.push_back({typed.about, QuestionWords::found(), QString::fromStdString(typed.entry.found)});
        aside.push_back({typed.about, QuestionWords::done(), QString::fromStdString(typed.entry.done)});
    }
    return aside;
}

void QuestionPanel::showLacks(const std::vector<CloseLack>& lacks)
{
    m_form->showLacks(lacks);
}

void QuestionPanel::showResult(const QString& sentence)
{
    sayIn(m_result, sentence);
}

} // namespace rig
