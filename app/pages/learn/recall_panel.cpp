#include "app/pages/learn/recall_panel.h"

#include "app/pages/learn/lesson_card.h"
#include "app/widgets/parts.h"
#include "app/wording/control_words.h"
#include "app/wording/learn_words.h"
#include "app/wording/practice_words.h"
#include "core/airframe/name_in.h"

#include <QKeyEvent>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

QString RecallPanel::askedOf(const RecallView& view, const RecallTask& task)
{
    switch (task.of) {
    case RecallOf::Call: {
        const auto surface = std::ranges::find(view.surfaces, *task.surface, &Surface::id);
        return PracticeWords::askCall(QString::fromStdString(surface->name),
                                      ControlWords::command(surface->kind, task.call));
    }
    case RecallOf::Order:
        return PracticeWords::askOrder(QString::fromStdString(nameIn(view.couplings, *task.coupling)));
    case RecallOf::WhomToCall:
        return PracticeWords::askWhom();
    case RecallOf::WhenToStop:
        break;
    }
    return PracticeWords::askStop(task.stopCase);
}

QString RecallPanel::choiceOf(const RecallView& view, const RecallChoice& choice)
{
    if (const auto* movement = std::get_if<Movement>(&choice))
        return ControlWords::movement(*movement);
    if (const auto* coupling = std::get_if<CouplingId>(&choice))
        return QString::fromStdString(nameIn(view.couplings, *coupling));
    if (const auto* act = std::get_if<StopAct>(&choice))
        return PracticeWords::act(*act);
    return QString::fromStdString(std::get<std::string>(choice));
}

RecallPanel::RecallPanel(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    m_stack = new QStackedWidget;
    auto* start = new QWidget;
    auto* inner = new QVBoxLayout{start};
    inner->setContentsMargins(0, 0, 0, 0);
    inner->setSpacing(10);
    inner->addWidget(labelOf(PracticeWords::recallTitle(), "title"));
    m_done = labelOf({}, "strong", "recallDone");
    m_what = labelOf({}, "body", "recallWhat");
    m_begin = buttonOf(PracticeWords::beginRecall(), "beginRecall", "primary");
    inner->addWidget(m_done);
    inner->addWidget(m_what);
    inner->addWidget(m_begin, 0, Qt::AlignLeft);
    inner->addWidget(labelOf(PracticeWords::keys(), "soft"));
    inner->addStretch(1);
    m_stack->addWidget(start);
    m_card = new LessonCard{nullptr};
    m_stack->addWidget(m_card);
    layout->addWidget(m_stack);
    m_tally = labelOf({}, "label", "recallTally");
    layout->addWidget(m_tally);
    layout->addWidget(labelOf(LearnWords::grantsNothing(), "soft"));
    layout->addStretch(1);
    connect(m_begin, &QPushButton::clicked, this, &RecallPanel::beginAsked);
    connect(m_card, &LessonCard::answered, this, [this](int choice, bool sure) {
        if (m_view.task())
            emit answered(m_view, static_cast<std::size_t>(choice), sure);
    });
    connect(m_card, &LessonCard::nextAsked, this, [this] {
        m_isTelling = false;
        emit nextAsked();
    });
}

void RecallPanel::setLook(const Look& look)
{
    m_card->setLook(look);
}

void RecallPanel::forget()
{
    m_isTelling = false;
    m_view = {};
    m_asked = {};
}

void RecallPanel::display(const RecallView& view)
{
    sayIn(m_tally, view.asked > 0 ? PracticeWords::tally(view.right, view.asked) : QString{});
    if (m_isTelling)
        return;
    m_view = view;
    if (!view.task())
        return showStart();
    const std::pair asks{view.round->id, view.ofRound.size()};
    if (m_asked != asks || m_stack->currentIndex() == 0)
        showQuestion();
    m_asked = asks;
}

void RecallPanel::showStart()
{
    const auto right = std::ranges::count_if(m_view.ofRound, [](const auto& one) { return isRight(one); });
    sayIn(m_done, m_view.ofRound.empty() ? QString{}
                                         : PracticeWords::roundDone(static_cast<int>(right),
                                                                    static_cast<int>(m_view.ofRound.size())));
    m_what->setText(m_view.canBeAsked ? PracticeWords::recallWhat() : PracticeWords::nothingToRecall());
    m_begin->setVisible(m_view.canBeAsked);
    const bool isOwn = holdsFocus(*this);
    m_stack->setCurrentIndex(0);
    if (isOwn)
        m_begin->setFocus();
}

void RecallPanel::showQuestion()
{
    const RecallTask& task = *m_view.task();
    LessonAsk ask;
    ask.count = PracticeWords::question(static_cast<int>(m_view.ofRound.size()) + 1,
                                        static_cast<int>(m_view.tasks.size()));
    ask.question = askedOf(m_view, task);
    for (const RecallChoice& choice : task.choices)
        ask.choices.push_back(choiceOf(m_view, choice));
    const bool isOwn = holdsFocus(*this);
    m_stack->setCurrentIndex(1);
    m_card->ask(ask, isOwn);
}

void RecallPanel::showAnswered(std::size_t choice, bool sure)
{
    const RecallTask& task = *m_view.task();
    m_isTelling = true;
    LessonTold told;
    const bool isRight = choice == task.right;
    told.shape = isRight ? MarkShape::Done : MarkShape::Triangle;
    told.role = isRight ? Role::Inside : Role::NearEdge;
    told.word = !isRight ? PracticeWords::wrong()
                : sure   ? PracticeWords::right()
                         : PracticeWords::rightNotSure();
    told.truth = PracticeWords::expected(choiceOf(m_view, task.choices[task.right]));
    if (task.of == RecallOf::WhenToStop)
        told.reason = PracticeWords::whyAct(task.stopCase);
    m_card->tell(told);
}

bool RecallPanel::takeKey(QKeyEvent* event)
{
    if (m_stack->currentIndex() == 1)
        return m_card->takeKey(event);
    return m_begin->isVisibleTo(this) && isKey(*event, PracticeWords::keyBegin()) ? (m_begin->click(), true)
                                                                                  : false;
}

} // namespace rig
