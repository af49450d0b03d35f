#include "app/pages/learn/practice_panel.h"

#include "app/pages/learn/lesson_card.h"
#include "app/pages/learn/lesson_pictures.h"
#include "app/widgets/parts.h"
#include "app/widgets/picture_widget.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/learn_words.h"
#include "app/wording/practice_words.h"

#include <QKeyEvent>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace rig {

namespace {

constexpr std::array kCalls{SeatingCall::Locked, SeatingCall::NotLocked, SeatingCall::CannotTell};

QString nameOf(const Coupling* coupling)
{
    return coupling ? QString::fromStdString(coupling->name) : QString{};
}

QString missedWord(JointState state)
{
    if (state == JointState::PartSeated)
        return PracticeWords::missedPartSeated();
    return state == JointState::NotSecured ? PracticeWords::missedNotSecured() : PracticeWords::missedEmpty();
}

LessonTold toldOfAnswer(const SeatingAnswer& answer)
{
    LessonTold told;
    told.truth = PracticeWords::stateWas(answer.shown);
    told.reason = PracticeWords::reason(answer);
    if (isRight(answer)) {
        told.word = answer.sure ? PracticeWords::right() : PracticeWords::rightNotSure();
        told.shape = MarkShape::Done;
        told.role = Role::Inside;
        return told;
    }
    const bool isMiss = isMissed(answer);
    told.shape = isMiss ? MarkShape::Diamond : MarkShape::Triangle;
    told.role = isMiss ? Role::Outside : Role::NearEdge;
    told.word = isMiss ? missedWord(answer.shown) : PracticeWords::wrong();
    if (answer.sure)
        told.reason += QLatin1Char('\n') + PracticeWords::sureButWrong();
    return told;
}

} // namespace

PracticePanel::PracticePanel(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    m_stack = new QStackedWidget;
    m_stack->addWidget(makeStart());
    m_picture = new PictureWidget;
    m_picture->setObjectName("practicePicture");
    m_card = new LessonCard{m_picture};
    m_stack->addWidget(m_card);
    layout->addWidget(m_stack);
    auto* so = new WrapLayout{18, false};
    m_tally = labelOf({}, "label", "practiceTally");
    m_partSeated = labelOf({}, "label", "practicePartSeated");
    m_notSecured = labelOf({}, "label", "practiceNotSecured");
    m_empty = labelOf({}, "label", "practiceEmpty");
    for (QLabel* label : {m_tally, m_partSeated, m_notSecured, m_empty}) {
        label->setWordWrap(false);
        so->addWidget(label);
    }
    layout->addLayout(so);
    layout->addWidget(labelOf(LearnWords::grantsNothing(), "soft"));
    layout->addStretch(1);
    connect(m_card, &LessonCard::answered, this, [this](int choice, bool sure) {
        if (m_view.task)
            emit answered(m_view, kCalls[static_cast<std::size_t>(choice)], sure);
    });
    connect(m_card, &LessonCard::nextAsked, this, [this] {
        m_isTelling = false;
        emit nextAsked();
    });
}

QWidget* PracticePanel::makeStart()
{
    auto* start = new QWidget;
    auto* layout = new QVBoxLayout{start};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    layout->addWidget(labelOf(PracticeWords::title(), "title"));
    m_done = labelOf({}, "strong", "practiceDone");
    layout->addWidget(m_done);
    m_what = labelOf({}, "body", "practiceWhat");
    layout->addWidget(m_what);
    m_refresh = labelOf(PracticeWords::refreshDue(), "caution", "practiceRefresh");
    layout->addWidget(m_refresh);
    auto* buttons = new WrapLayout{10, false};
    m_one = buttonOf({}, "practiseOne", "primary");
    m_all = buttonOf(PracticeWords::practiseAll(), "practiseAll");
    buttons->addWidget(m_one);
    buttons->addWidget(m_all);
    layout->addLayout(buttons);
    layout->addWidget(labelOf(PracticeWords::keys(), "soft"));
    connect(m_one, &QPushButton::clicked, this, [this] { emit beginAsked(m_chosen); });
    connect(m_all, &QPushButton::clicked, this, [this] { emit beginAsked(std::nullopt); });
    return start;
}

void PracticePanel::setLook(const Look& look)
{
    m_card->setLook(look);
    m_picture->setLook(look);
}

void PracticePanel::forget()
{
    m_isTelling = false;
    m_view = {};
    m_asked = {};
}

void PracticePanel::display(const PracticeView& view, std::optional<CouplingId> chosen)
{
    m_view = view;
    m_chosen = chosen && view.find(*chosen) ? chosen : std::nullopt;
    for (QLabel* label : {m_tally, m_partSeated, m_notSecured, m_empty})
        label->setVisible(view.tally.asked > 0);
    m_tally->setText(PracticeWords::tally(view.tally.right, view.tally.asked));
    m_partSeated->setText(PracticeWords::missedPartSeated(view.tally.missedPartSeated));
    m_notSecured->setText(PracticeWords::missedNotSecured(view.tally.missedNotSecured));
    m_empty->setText(PracticeWords::missedEmpty(view.tally.missedEmpty));
    if (m_isTelling)
        return;
    if (!view.task)
        return showStart();
    const std::pair asks{view.round->id, view.ofRound.size()};
    if (m_asked != asks || m_stack->currentIndex() == 0)
        showQuestion();
    m_asked = asks;
}

void PracticePanel::showStart()
{
    const bool isThere = !m_view.couplings.empty();
    const bool isDone = m_view.round && !m_view.ofRound.empty();
    const auto right = std::ranges::count_if(m_view.ofRound, [](const auto& one) { return isRight(one); });
    sayIn(m_done,
          isDone ? PracticeWords::roundDone(static_cast<int>(right), static_cast<int>(m_view.ofRound.size()))
                 : QString{});
    m_what->setText(isThere ? PracticeWords::what() : PracticeWords::noneToPractise());
    m_refresh->setVisible(isThere && m_view.refreshIsDue);
    m_one->setVisible(m_chosen.has_value());
    if (m_chosen)
        m_one->setText(PracticeWords::practiseOne(nameOf(m_view.find(*m_chosen))));
    m_all->setVisible(isThere);
    const bool isOwn = holdsFocus(*this);
    m_stack->setCurrentIndex(0);
    if (isOwn)
        (m_chosen ? m_one : m_all)->setFocus();
}

void PracticePanel::showQuestion()
{
    const SeatingTask& task = *m_view.task;
    m_askedOf = task.coupling;
    const Coupling& coupling = *m_view.find(task.coupling);
    m_picture->setPicture(seenOf(coupling, m_view.joints.at(coupling.id), task),
                          PracticeWords::ask(nameOf(&coupling)));
    LessonAsk ask;
    ask.count = PracticeWords::question(static_cast<int>(m_view.ofRound.size()) + 1, m_view.round->asks);
    ask.question = PracticeWords::ask(nameOf(&coupling));
    ask.situation = PracticeWords::lookedWith(task.view, coupling.seenFrom).join(QLatin1Char(' '));
    for (const SeatingCall call : kCalls)
        ask.choices.push_back(PracticeWords::call(call));
    const bool isOwn = holdsFocus(*this);
    m_stack->setCurrentIndex(1);
    m_card->ask(ask, isOwn);
}

void PracticePanel::showAnswered(const SeatingAnswer& answer)
{
    m_isTelling = true;
    m_picture->setPicture(cutOpenOf(m_view.joints.at(answer.coupling), answer),
                          PracticeWords::stateWas(answer.shown));
    m_card->tell(toldOfAnswer(answer));
}

std::optional<CouplingId> PracticePanel::asked() const
{
    return m_stack->currentIndex() == 1 ? m_askedOf : std::nullopt;
}

bool PracticePanel::takeKey(QKeyEvent* event)
{
    if (m_stack->currentIndex() == 1)
        return m_card->takeKey(event);
    if (m_one->isVisibleTo(this) && isKey(*event, PracticeWords::keyOne()))
        return m_one->click(), true;
    if (m_all->isVisibleTo(this) && isKey(*event, PracticeWords::keyAll()))
        return m_all->click(), true;
    return false;
}

} // namespace rig
