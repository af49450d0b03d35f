#include "app/pages/learn/lesson_card.h"

#include "app/widgets/flow_scroll.h"
#include "app/widgets/mark_widget.h"
#include "app/widgets/parts.h"
#include "app/widgets/wrapped.h"
#include "app/wording/practice_words.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

LessonCard::LessonCard(QWidget* picture, QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    m_count = labelOf({}, "label", "lessonCount");
    m_question = labelOf({}, "section", "lessonQuestion");
    m_situation = labelOf({}, "body", "lessonSituation");
    for (QLabel* label : {m_count, m_question, m_situation})
        layout->addWidget(label);
    m_beside = new QHBoxLayout;
    m_beside->setSpacing(20);
    if (picture)
        m_beside->addWidget(picture, 3);
    auto* answers = new QVBoxLayout;
    answers->setSpacing(8);
    m_choices = new QVBoxLayout;
    m_choices->setSpacing(6);
    answers->addLayout(m_choices);
    m_howSure = labelOf(PracticeWords::howSure(), "label");
    answers->addWidget(m_howSure);
    auto* sure = new QHBoxLayout;
    m_sure = buttonOf(PracticeWords::sure(), "lessonSure", "answer");
    m_notSure = buttonOf(PracticeWords::notSure(), "lessonNotSure", "answer");
    sure->addWidget(m_sure);
    sure->addWidget(m_notSure);
    answers->addLayout(sure);
    m_told = new QWidget;
    auto* told = new QVBoxLayout{m_told};
    told->setContentsMargins(0, 0, 0, 0);
    told->setSpacing(6);
    auto* head = new QHBoxLayout;
    m_mark = new MarkWidget;
    m_word = labelOf({}, "section", "lessonWord");
    head->addWidget(m_mark, 0, Qt::AlignTop);
    head->addWidget(m_word, 1);
    told->addLayout(head);
    m_truth = labelOf({}, "strong", "lessonTruth");
    m_reason = labelOf({}, "body", "lessonReason");
    told->addWidget(m_truth);
    told->addWidget(m_reason);
    m_next = buttonOf(PracticeWords::next(), "lessonNext", "primary");
    told->addWidget(m_next, 0, Qt::AlignLeft);
    answers->addWidget(m_told);
    answers->addStretch(1);
    m_beside->addLayout(answers, 2);
    layout->addLayout(m_beside);
    connect(m_sure, &QPushButton::clicked, this, [this] { emit answered(*m_chosen, true); });
    connect(m_notSure, &QPushButton::clicked, this, [this] { emit answered(*m_chosen, false); });
    connect(m_next, &QPushButton::clicked, this, &LessonCard::nextAsked);
}

void LessonCard::setLook(const Look& look)
{
    m_look = look;
    m_mark->setLook(look);
    fit();
}

// In large text in a small window the answers stand below the picture.
void LessonCard::fit()
{
    constexpr double kWidthForBoth = 340;
    const bool isNarrow = width() < kWidthForBoth * m_look.fonts.scale;
    m_beside->setDirection(isNarrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

void LessonCard::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fit();
}

// From the question to its first answer.
bool LessonCard::focusNextPrevChild(bool next)
{
    if (!next || !hasFocus() || !m_isAsking || m_buttons.empty())
        return QWidget::focusNextPrevChild(next);
    m_buttons.front()->setFocus(Qt::TabFocusReason);
    return true;
}

WrapButton* LessonCard::button(std::size_t index)
{
    while (m_buttons.size() <= index) {
        const int number = static_cast<int>(m_buttons.size());
        auto* made = new WrapButton;
        made->setProperty("kind", "answer");
        made->setAutoDefault(false);
        made->setObjectName(QStringLiteral("lessonChoice%1").arg(number));
        made->setCheckable(true);
        connect(made, &QPushButton::clicked, this, [this, number] { choose(number); });
        m_choices->addWidget(made);
        m_buttons.push_back(made);
    }
    return m_buttons[index];
}

void LessonCard::ask(const LessonAsk& ask, bool takesFocus)
{
    m_isAsking = true;
    m_isSeen = false;
    update();
    m_chosen.reset();
    m_count->setText(ask.count);
    m_question->setText(ask.question);
    setAccessibleName(ask.question);
    sayIn(m_situation, ask.situation);
    for (std::size_t i = 0; i < std::max(ask.choices.size(), m_buttons.size()); ++i) {
        WrapButton* one = button(i);
        one->setVisible(i < ask.choices.size());
        one->setEnabled(true);
        if (i < ask.choices.size()) {
            one->setWords(PracticeWords::choice(ask.choices[i], static_cast<int>(i) + 1));
            one->setAccessibleName(ask.choices[i]);
        }
    }
    m_told->hide();
    m_howSure->show();
    m_sure->show();
    m_notSure->show();
    showSure();
    bringIntoView(m_count);
    if (takesFocus)
        setFocus(); // on none of the answers: a frame would look like one that is given
}

void LessonCard::choose(int choice)
{
    m_chosen = choice;
    showSure();
    m_sure->setFocus();
}

void LessonCard::showSure()
{
    for (std::size_t i = 0; i < m_buttons.size(); ++i)
        m_buttons[i]->setChecked(m_chosen == static_cast<int>(i));
    m_sure->setEnabled(m_chosen.has_value());
    m_notSure->setEnabled(m_chosen.has_value());
}

void LessonCard::tell(const LessonTold& told)
{
    m_isAsking = false;
    for (WrapButton* one : m_buttons)
        one->setEnabled(false);
    m_howSure->hide();
    m_sure->hide();
    m_notSure->hide();
    m_mark->show(told.shape, told.role);
    m_word->setText(told.word);
    sayIn(m_truth, told.truth);
    sayIn(m_reason, told.reason);
    m_told->show();
    m_next->setFocus();
    bringIntoView(m_told);
}

// In large text what is told may stand below what is seen.
void LessonCard::bringIntoView(QWidget* part)
{
    for (QWidget* around = parentWidget(); around; around = around->parentWidget())
        if (auto* scroll = dynamic_cast<FlowScroll*>(around))
            return scroll->bringIntoView(part);
}

void LessonCard::paintEvent(QPaintEvent*)
{
    m_isSeen = true;
}

bool LessonCard::takeKey(QKeyEvent* event)
{
    if (!m_isAsking)
        return isEnter(*event) && !event->isAutoRepeat() ? (emit nextAsked(), true) : false;
    if (event->isAutoRepeat() || !m_isSeen)
        return true;
    for (std::size_t i = 0; i < m_buttons.size(); ++i)
        if (m_buttons[i]->isVisibleTo(this) && isKey(*event, QString::number(i + 1)))
            return choose(static_cast<int>(i)), true;
    if (m_chosen && isKey(*event, PracticeWords::keySure()))
        return m_sure->click(), true;
    if (m_chosen && isKey(*event, PracticeWords::keyNotSure()))
        return m_notSure->click(), true;
    return false;
}

} // namespace rig
