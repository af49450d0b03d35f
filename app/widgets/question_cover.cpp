#include "app/widgets/question_cover.h"

#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/prompt_words.h"

#include <QApplication>
#include <QFrame>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <array>
#include <utility>

namespace rig {

namespace {

constexpr int kCardLetters = 70; // wide
constexpr int kMostOffered = 9;  // one figure each
constexpr int kAroundCard = 24;  // pixels that it leaves free at the least
constexpr float kShade = 0.8F;   // how much of what waits beneath is covered

// Two letters that differ: more than a figure, and more than one key pressed several times.
bool isInWords(const QString& text)
{
    QChar first;
    for (const QChar one : text.toLower()) {
        if (!one.isLetter())
            continue;
        if (!first.isNull() && one != first)
            return true;
        first = one;
    }
    return false;
}

} // namespace

QuestionCover::QuestionCover(QWidget& asker, const QuestionText& text,
                             std::function<void(const QString&)> taken)
    : QWidget{asker.window()}, m_asker{&asker}, m_before{asker.window()->focusWidget()},
      m_taken{std::move(taken)}, m_card{new QFrame{this}}
{
    setObjectName("questionCover");
    setAccessibleName(text.title);
    setAccessibleDescription(text.question);
    m_card->setObjectName("questionCard");
    m_card->setProperty("card", true);
    auto* column = new QVBoxLayout{m_card};
    column->setContentsMargins(24, 20, 24, 20);
    column->setSpacing(14);
    addWords(column, text);
    addOffered(column, text.offered);
    addButtons(column, text);
    m_card->installEventFilter(this);
    m_line->installEventFilter(this);
    asker.window()->installEventFilter(this);
    connect(&asker, &QObject::destroyed, this, &QuestionCover::end);
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { keepFocus(now); });
    setGeometry(asker.window()->rect());
    show();
    raise();
    place();
    m_line->setFocus();
}

const QuestionCover* QuestionCover::standingOn(const QWidget& window)
{
    const auto covers = window.findChildren<const QuestionCover*>(QString{}, Qt::FindDirectChildrenOnly);
    const auto found = std::ranges::find_if(covers, [](const QuestionCover* one) { return !one->m_isOver; });
    return found == covers.end() ? nullptr : *found;
}

bool QuestionCover::hasTyped() const
{
    return !m_line->text().trimmed().isEmpty();
}

void QuestionCover::addWords(QVBoxLayout* column, const QuestionText& text)
{
    column->addWidget(labelOf(text.title, "section", "promptTitle"));
    column->addWidget(labelOf(text.question, "body", "promptText"));
    m_line = new QLineEdit;
    m_line->setObjectName("promptLine");
    m_line->setAccessibleName(text.question);
    column->addWidget(m_line);
    m_refused = labelOf({}, "problem", "promptRefused");
    m_refused->hide();
    column->addWidget(m_refused);
    connect(m_line, &QLineEdit::textEdited, this, [this] { sayIn(m_refused, {}); });
}

// Beside the line: each has a key that is none of the line's.
void QuestionCover::addOffered(QVBoxLayout* column, const QStringList& offered)
{
    m_offered = offered.mid(0, kMostOffered);
    if (m_offered.isEmpty())
        return;
    auto* row = new WrapLayout{8, false};
    for (int i = 0; i < m_offered.size(); ++i) {
        auto* one = buttonOf(PromptWords::offered(m_offered[i], i + 1), "promptOffer");
        one->setObjectName(QStringLiteral("promptOffer%1").arg(i + 1));
        connect(one, &QPushButton::clicked, this, [this, i] { takeOffered(i); });
        one->setFocusPolicy(
            Qt::NoFocus); // Tab goes from the line to its answer; these have keys of their own
        row->addWidget(one);
    }
    column->addLayout(row);
}

void QuestionCover::addButtons(QVBoxLayout* column, const QuestionText& text)
{
    m_take = buttonOf(text.take, "promptTake", "primary");
    m_take->setEnabled(false);
    m_leave = buttonOf(text.leave, "promptLeave");
    connect(m_take, &QPushButton::clicked, this, &QuestionCover::take);
    connect(m_leave, &QPushButton::clicked, this, &QuestionCover::end);
    connect(m_line, &QLineEdit::textChanged, m_take,
            [this](const QString& typed) { m_take->setEnabled(isInWords(typed)); });
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addStretch(1);
    row->addWidget(m_take);
    row->addWidget(m_leave);
    column->addLayout(row);
}

void QuestionCover::place()
{
    setGeometry(parentWidget()->rect());
    const int wanted = kCardLetters * m_line->fontMetrics().averageCharWidth();
    const int width =
        std::min(std::max(wanted, m_card->minimumSizeHint().width()), this->width() - 2 * kAroundCard);
    const int height = m_card->heightForWidth(width);
    m_card->setGeometry((this->width() - width) / 2, std::max(0, (this->height() - height) / 2), width,
                        height);
}

// What a page does meanwhile must not take the keys away from the line.
void QuestionCover::keepFocus(const QWidget* now)
{
    if (!m_isOver && now && now->window() == window() && !isAncestorOf(now))
        m_line->setFocus();
}

void QuestionCover::takeOffered(int index)
{
    const QString typed = m_line->text().trimmed();
    m_line->setText(isInWords(typed) ? PromptWords::offeredAnd(m_offered[index], typed) : m_offered[index]);
    take();
}

void QuestionCover::take()
{
    const QString text = m_line->text().trimmed();
    if (m_isOver || text.isEmpty())
        return;
    if (!isInWords(text))
        return refuse();
    const auto taken = std::move(m_taken);
    end();
    taken(text);
}

// What is typed next takes its place.
void QuestionCover::refuse()
{
    sayIn(m_refused, PromptWords::sayItInWords());
    m_line->setAccessibleDescription(m_refused->text());
    m_line->selectAll();
}

// Keys may wait behind the one that ended it: what had the focus has it back before they come.
void QuestionCover::end()
{
    if (std::exchange(m_isOver, true))
        return;
    if (m_asker) {
        const bool canHaveIt = m_before && m_before->isVisible() && m_before->isEnabled();
        (canHaveIt ? m_before : m_asker)->setFocus();
    }
    hide();
    deleteLater();
}

bool QuestionCover::event(QEvent* event)
{
    switch (event->type()) {
    case QEvent::ShortcutOverride: // no key of the window beneath
    case QEvent::MouseButtonPress:
    case QEvent::MouseButtonRelease:
    case QEvent::MouseButtonDblClick:
    case QEvent::MouseMove:
    case QEvent::Wheel:
    case QEvent::ContextMenu:
        event->accept();
        return true;
    default:
        return QWidget::event(event);
    }
}

bool QuestionCover::eventFilter(QObject* watched, QEvent* event)
{
    if (m_isOver)
        return false;
    if (watched == m_line && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const int index = key->key() - Qt::Key_1;
        if (key->modifiers() == Qt::AltModifier && index >= 0 && index < m_offered.size())
            return takeOffered(index), true;
    }
    if (watched == m_card && event->type() == QEvent::LayoutRequest)
        place();
    if (watched == parentWidget() && event->type() == QEvent::Resize)
        place();
    return false;
}

bool QuestionCover::focusNextPrevChild(bool next)
{
    if (m_isOver)
        return QWidget::focusNextPrevChild(next);
    const std::array<QWidget*, 3> ring{m_line, m_take, m_leave};
    const auto found = std::ranges::find(ring, window()->focusWidget());
    std::size_t at = found == ring.end() ? 0 : static_cast<std::size_t>(found - ring.begin());
    do
        at = (at + (next ? 1 : ring.size() - 1)) % ring.size();
    while (!ring[at]->isEnabled());
    ring[at]->setFocus(next ? Qt::TabFocusReason : Qt::BacktabFocusReason);
    return true;
}

// What the line and the buttons leave. Nothing goes on to the page.
void QuestionCover::keyPressEvent(QKeyEvent* event)
{
    event->accept();
    const bool enters = isEnter(*event);
    if (event->key() == Qt::Key_Escape || (enters && window()->focusWidget() == m_leave))
        end();
    else if (enters)
        take();
}

void QuestionCover::paintEvent(QPaintEvent*)
{
    QColor shade = QApplication::palette().color(QPalette::Window);
    shade.setAlphaF(kShade);
    QPainter{this}.fillRect(rect(), shade);
}

} // namespace rig
