#include "app/widgets/question_tile.h"

#include "app/wording/rigged_words.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <vector>

namespace rig {

namespace {

// In the order of the buttons.
std::vector<Answer> answersOf(AnswerChoice choice)
{
    switch (choice) {
    case AnswerChoice::YesNo:
        return {Answer::Yes, Answer::No};
    case AnswerChoice::OrCannotSee:
        return {Answer::Yes, Answer::No, Answer::CannotSee};
    case AnswerChoice::OrFelt:
        break;
    }
    return {Answer::Yes, Answer::Felt, Answer::No, Answer::CannotSee};
}

} // namespace

QuestionTile::QuestionTile(const QString& title, const QString& hint, AnswerChoice choice, QWidget* parent)
    : AskedFrame{parent}, m_title{title}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(12, 8, 12, 10);
    layout->setSpacing(4);
    m_heading = new QLabel{title};
    m_heading->setTextFormat(Qt::PlainText);
    m_heading->setProperty("kind", "label");
    m_heading->setWordWrap(true);
    m_hint = new QLabel{hint};
    m_hint->setTextFormat(Qt::PlainText);
    m_hint->setProperty("kind", "soft");
    m_hint->setWordWrap(true);
    m_hint->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred); // the buttons say how wide a tile is
    layout->addWidget(m_heading);
    layout->addWidget(m_hint, 1);
    auto* answers = new QGridLayout;
    answers->setSpacing(6);
    const std::vector<Answer> all = answersOf(choice);
    const int inARow = choice == AnswerChoice::OrFelt ? 2 : static_cast<int>(all.size());
    for (int i = 0; i < static_cast<int>(all.size()); ++i)
        answers->addWidget(addButton(all[static_cast<std::size_t>(i)]), i / inARow, i % inARow);
    layout->addLayout(answers);
}

QPushButton* QuestionTile::addButton(Answer answer)
{
    auto* button = new QPushButton{RiggedWords::answerWithKey(answer)};
    button->setProperty("kind", "answer");
    button->setProperty("doubt", !countsAsYes(answer));
    button->setCheckable(true);
    button->setAccessibleName(RiggedWords::answerTo(m_title, answer));
    connect(button, &QPushButton::clicked, this, [this, answer] { emit answered(answer); });
    m_buttons[static_cast<std::size_t>(answer)] = button;
    return button;
}

void QuestionTile::setTitle(const QString& title)
{
    if (m_title == title)
        return;
    m_title = title;
    m_heading->setText(title);
    for (std::size_t one = 0; one < m_buttons.size(); ++one)
        if (m_buttons[one])
            m_buttons[one]->setAccessibleName(RiggedWords::answerTo(title, static_cast<Answer>(one)));
}

void QuestionTile::setHint(const QString& hint)
{
    m_hint->setText(hint);
}

void QuestionTile::setAnswer(std::optional<Answer> answer)
{
    for (std::size_t one = 0; one < m_buttons.size(); ++one)
        if (m_buttons[one])
            m_buttons[one]->setChecked(answer == static_cast<Answer>(one));
}

void QuestionTile::setState(bool asked, bool open)
{
    setAsked(asked);
    for (QPushButton* button : m_buttons)
        if (button)
            button->setEnabled(open);
}

void QuestionTile::focusFirst()
{
    m_buttons.front()->setFocus();
}

} // namespace rig
