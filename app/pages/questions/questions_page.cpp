#include "app/pages/questions/questions_page.h"

#include "app/pages/questions/question_panel.h"
#include "app/pages/questions/question_row_text.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/widgets/row_list.h"
#include "app/wording/problem_words.h"
#include "app/wording/question_words.h"
#include "app/wording/review_words.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>
#include <utility>

namespace rig {

QuestionsPage::QuestionsPage(Records& records, QWidget* parent) : AsidePage{parent}, m_presenter{records}
{
    setObjectName("questions");
    setAccessibleName(QuestionWords::title());
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(14, 14, 14, 14);
    layout->setSpacing(14);
    m_card = makeList();
    layout->addWidget(m_card);
    auto* card = new QFrame;
    card->setProperty("card", true);
    auto* inner = new QVBoxLayout{card};
    inner->setContentsMargins(1, 1, 1, 1);
    m_stack = new QStackedWidget;
    m_panel = new QuestionPanel;
    m_stack->addWidget(new FlowScroll{m_panel});
    m_message = labelOf({}, "body", "questionsMessage");
    m_message->setAlignment(Qt::AlignCenter);
    m_message->setMargin(24);
    m_stack->addWidget(m_message);
    inner->addWidget(m_stack);
    layout->addWidget(card, 1);
    connect(m_panel, &QuestionPanel::closeAsked, this, &QuestionsPage::close);
    connect(m_panel, &QuestionPanel::formPutAside, m_rows, &RowList::focusChosen);
    setLook({});
    showMessage(QuestionWords::noAirframe());
}

QWidget* QuestionsPage::makeList()
{
    auto* card = new QFrame;
    card->setProperty("card", true);
    auto* outer = new QVBoxLayout{card};
    outer->setContentsMargins(10, 14, 10, 12);
    outer->setSpacing(6);
    m_count = labelOf({}, "section", "questionsCount");
    m_closed = labelOf({}, "caution", "closedToSecond");
    m_rows = new RowList{"question", QuestionWords::title()};
    m_rows->setWraps();
    auto* inside = new QWidget;
    auto* rows = new QVBoxLayout{inside};
    rows->setContentsMargins(0, 4, 0, 0);
    rows->addWidget(m_closed);
    rows->addWidget(m_rows);
    rows->addWidget(labelOf(QuestionWords::listKeys(), "soft"));
    rows->addStretch(1);
    outer->addWidget(labelOf(QuestionWords::title(), "label"));
    outer->addWidget(m_count);
    outer->addWidget(new FlowScroll{inside}, 1);
    connect(m_rows, &RowList::rowChosen, this, &QuestionsPage::choose);
    connect(m_rows, &RowList::rowOpened, this, [this] { m_panel->openForm(); });
    return card;
}

void QuestionsPage::setLook(const Look& look)
{
    m_scale = look.fonts.scale;
    fitList();
    m_rows->setLook(look);
    m_panel->setLook(look);
}

// At large text in a small window the list gives way: what is asked is read beside it.
void QuestionsPage::fitList()
{
    constexpr double kListWidth = 340;
    constexpr double kWidestShare = 0.36;
    const double wanted = kListWidth * std::min(m_scale, 1.4);
    m_card->setFixedWidth(static_cast<int>(std::lround(std::min(wanted, kWidestShare * width()))));
}

void QuestionsPage::resizeEvent(QResizeEvent* event)
{
    Page::resizeEvent(event);
    fitList();
}

void QuestionsPage::showAirframe(std::optional<AirframeId> airframe)
{
    // Whoever comes to the page anew comes to what is open.
    const QuestionRow* last = m_chosen ? m_view.find(*m_chosen) : nullptr;
    if (m_airframe != airframe || (last && !last->story.isOpen()))
        m_chosen.reset();
    m_airframe = airframe;
    m_panel->showResult({});
    refresh();
    chooseAtHand();
}

QString QuestionsPage::leftUndone() const
{
    return m_panel->hasTyped() ? QuestionWords::leftUndone() : QString{};
}

std::vector<TypedAside> QuestionsPage::typedAside() const
{
    return m_panel->typedAside();
}

// A stop names its question: that one is closed, and no other.
void QuestionsPage::chooseAtHand()
{
    const AtHand what = std::exchange(m_comesFor, {});
    const auto isAbout = [&what](const QuestionRow& row) {
        const Question& one = row.story.question;
        return row.story.isOpen() && ((what.surface && one.surface == what.surface) ||
                                      (what.coupling && one.coupling == what.coupling));
    };
    const auto found = std::ranges::find_if(m_view.rows, isAbout);
    if (found == m_view.rows.end())
        return;
    m_chosen = found->story.question.id;
    display();
}

void QuestionsPage::refresh()
{
    m_view = {};
    if (!m_airframe)
        return showMessage(QuestionWords::noAirframe());
    auto view = m_presenter.view(*m_airframe);
    if (!view) {
        const QString sentence = ProblemWords::sentence(view.problem(), {});
        showMessage(sentence);
        emit problemArose(sentence);
        return;
    }
    m_view = std::move(view).value();
    display();
}

void QuestionsPage::display()
{
    const QString closed = ReviewWords::closedToSecond(m_view.closedToSecond);
    if (m_view.rows.empty())
        return showMessage(closed.isEmpty() ? QuestionWords::none() : closed);
    sayIn(m_closed, closed);
    std::vector<RowText> rows;
    for (const QuestionRow& row : m_view.rows)
        rows.push_back({shapeOf(row), shapeRoleOf(row), titleOf(row), detailOf(row)});
    const int open = m_view.openCount;
    m_count->setText(QuestionWords::openAndClosed(open, static_cast<int>(m_view.rows.size()) - open));
    m_rows->display(rows);
    const auto chosen = std::ranges::find_if(
        m_view.rows, [this](const QuestionRow& row) { return m_chosen == row.story.question.id; });
    m_rows->choose(chosen == m_view.rows.end() ? 0 : static_cast<int>(chosen - m_view.rows.begin()));
    m_card->show();
    m_stack->setCurrentIndex(0);
    choose(m_rows->chosen());
    if (window()->focusWidget() == this) // it came to the page before there was a list
        m_rows->focusChosen();
}

void QuestionsPage::choose(int row)
{
    const QuestionRow& chosen = m_view.rows[static_cast<std::size_t>(row)];
    m_chosen = chosen.story.question.id;
    m_panel->display(m_view, chosen);
}

void QuestionsPage::close(QuestionId question, const CloseEntry& entry)
{
    const QuestionRow* row = m_view.find(question);
    if (!row)
        return;
    const auto closed = m_presenter.close(*m_airframe, question, entry);
    if (!closed) {
        emit problemArose(ProblemWords::sentence(closed.problem(), {}));
        return;
    }
    m_panel->showLacks(closed.value().lacks);
    if (!closed.value().isClosed())
        return;
    const QString result = resultOf(*row, closed.value());
    refresh();
    m_panel->forgetTyped(question);
    m_panel->showResult(result);
    m_rows->focusChosen();
    emit factsChanged();
}

void QuestionsPage::showMessage(const QString& sentence)
{
    m_card->hide();
    m_message->setText(sentence);
    m_stack->setCurrentWidget(m_message);
}

void QuestionsPage::focusInEvent(QFocusEvent* event)
{
    AsidePage::focusInEvent(event);
    m_rows->focusChosen();
}

} // namespace rig
