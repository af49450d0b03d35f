#include "app/widgets/leaf_row.h"

#include "app/widgets/figure_label.h"
#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/entry_words.h"

#include <QFontMetrics>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr std::size_t kMostLeaves = 12; // more are no longer big
constexpr int kSpacing = 6;
constexpr int kLeafPadding = 2 * (4 + 1) + 4; // sides and border in the style sheet, and some air

bool isSameSet(const GaugeSet& one, const GaugeSet& other)
{
    return one.kind() == other.kind() && one.sizes() == other.sizes() &&
           one.resolution() == other.resolution();
}

bool isPlain(const QKeyEvent& event)
{
    return !(event.modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier));
}

bool isWritten(const QKeyEvent& event)
{
    return event.text().size() == 1 && event.text().front().isPrint();
}

QPushButton* leafButton(const char* name)
{
    auto* button = new QPushButton;
    button->setObjectName(QLatin1String(name));
    button->setProperty("kind", "leaf");
    button->setAutoDefault(false);
    return button;
}

} // namespace

LeafRow::LeafRow(QWidget* parent) : QWidget{parent}
{
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    m_leaves = new QWidget;
    m_leaves->setLayout(buildLeaves());
    column->addWidget(m_leaves);
    column->addLayout(buildEnds());
    fitArrows();
    showLeaves();
    showTyped();
}

QHBoxLayout* LeafRow::buildLeaves()
{
    auto* row = new QHBoxLayout;
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(kSpacing);
    m_thinner = leafButton("leafThinner");
    m_thinner->setText(EntryWords::thinnerArrow());
    m_thinner->setAccessibleName(EntryWords::thinner());
    m_thinner->setToolTip(EntryWords::thinner());
    m_thicker = leafButton("leafThicker");
    m_thicker->setText(EntryWords::thickerArrow());
    m_thicker->setAccessibleName(EntryWords::thicker());
    m_thicker->setToolTip(EntryWords::thicker());
    connect(m_thinner, &QPushButton::clicked, this, [this] { page(-1); });
    connect(m_thicker, &QPushButton::clicked, this, [this] { page(+1); });
    row->addWidget(m_thinner);
    for (std::size_t i = 0; i < kMostLeaves; ++i) {
        QPushButton* button = leafButton("leaf");
        button->setCheckable(true);
        button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Minimum);
        connect(button, &QPushButton::clicked, this, [this, i] { pressLeaf(i); });
        m_buttons.push_back(button);
        row->addWidget(button, 1);
    }
    row->addWidget(m_thicker);
    return row;
}

QBoxLayout* LeafRow::buildEnds()
{
    auto* buttons = new WrapLayout{kSpacing, false};
    for (QPushButton** end : {&m_none, &m_loose}) {
        *end = new QPushButton;
        (*end)->setProperty("kind", "choice");
        (*end)->setCheckable(true);
        (*end)->setAutoDefault(false);
        buttons->addWidget(*end);
    }
    m_none->setText(EntryWords::nothingEnters(m_gauge.kind())); // also while no set is chosen
    m_loose->setText(EntryWords::allEnter(m_gauge.kind()));
    m_none->setObjectName("noLeafEnters");
    m_loose->setObjectName("thickestLoose");
    connect(m_none, &QPushButton::clicked, this, [this] { pressEnd(false); });
    connect(m_loose, &QPushButton::clicked, this, [this] { pressEnd(true); });

    m_figure = new FigureLabel{EntryWords::typedName()};
    m_figure->setObjectName("typedFigure");
    m_figure->setProperty("kind", "section");
    m_meaning = new QLabel;
    m_meaning->setTextFormat(Qt::PlainText);
    m_meaning->setObjectName("typedMeaning");
    m_meaning->setProperty("kind", "soft");
    m_meaning->setWordWrap(true);
    m_meaning->setTextFormat(Qt::PlainText);
    auto* typed = new QHBoxLayout;
    typed->setSpacing(kSpacing);
    typed->addWidget(m_figure);
    typed->addWidget(m_meaning, 1);

    m_ends = new QBoxLayout{QBoxLayout::LeftToRight};
    m_ends->setSpacing(kSpacing);
    m_ends->addLayout(buttons, 1);
    m_ends->addLayout(typed, 1);
    return m_ends;
}

void LeafRow::setGauge(const GaugeSet& gauge, std::optional<Gap> centre)
{
    if (isSameSet(m_gauge, gauge) && m_centre == centre)
        return;
    m_gauge = gauge;
    m_centre = centre;
    m_steps = gauge.steps();
    measureLeaves();
    m_none->setText(EntryWords::nothingEnters(gauge.kind()));
    m_loose->setText(EntryWords::allEnter(gauge.kind()));
    clearTyped();
    const auto& sizes = m_gauge.sizes();
    if (centre)
        centreOn(*centre);
    else if (!sizes.empty())
        centreOn(sizes[sizes.size() / 2]);
    showLeaves();
    markChosen();
}

void LeafRow::setChosen(std::optional<GaugeReading> chosen)
{
    m_chosen = chosen;
    const bool atLeaf = chosen && chosen->technique != Technique::NoLeafEnters &&
                        chosen->technique != Technique::ThickestLoose;
    const auto at = std::ranges::find(m_steps, atLeaf ? chosen->interval.enters : Gap{}, &GaugeStep::size);
    if (atLeaf && at != m_steps.end()) {
        const auto index = static_cast<std::size_t>(at - m_steps.begin());
        if (index < m_first || index >= m_first + m_count) {
            centreOn(at->size);
            showLeaves();
        }
    }
    markChosen();
}

void LeafRow::setLook(const Look& look)
{
    m_fonts = look.fonts;
    measureLeaves();
    fitArrows();
    if (m_centre)
        centreOn(*m_centre);
    showLeaves();
}

int LeafRow::widthOfEnds() const
{
    return m_none->sizeHint().width() + m_loose->sizeHint().width() + 2 * kSpacing;
}

QSize LeafRow::minimumSizeHint() const
{
    // Two arrows and two leaves.
    const int leaves = 2 * (m_thinner->minimumWidth() + widestFrom(0, m_steps.size()) + 2 * kSpacing);
    const int ends = std::max(m_none->sizeHint().width(), m_loose->sizeHint().width());
    return {std::max(leaves, ends), QWidget::minimumSizeHint().height()};
}

// A width of their own, so that the room for leaves is known before any style is.
void LeafRow::fitArrows()
{
    const QFontMetrics metrics{fontOf(17 * m_fonts.scale, Weight::SemiBold)};
    for (QPushButton* arrow : {m_thinner, m_thicker})
        arrow->setFixedWidth(metrics.horizontalAdvance(QStringLiteral("00")) + kLeafPadding);
}

// A block has one thing to press between its two ends.
QString LeafRow::textOf(const GaugeStep& step) const
{
    const bool isBlock = m_gauge.kind() == GaugeKind::GoNoGo && m_gauge.sizes().size() > 1;
    return isBlock ? EntryWords::goNoGo(m_gauge.sizes().front(), m_gauge.sizes().back())
                   : EntryWords::leaf(step);
}

void LeafRow::measureLeaves()
{
    const QFontMetrics metrics{fontOf(17 * m_fonts.scale, Weight::SemiBold)}; // the style sheet's
    m_widths.clear();
    for (const GaugeStep& step : m_steps)
        m_widths.push_back(metrics.size(0, textOf(step)).width());
}

// Pixels that each button needs when these steps are shown.
int LeafRow::widestFrom(std::size_t first, std::size_t count) const
{
    const std::size_t end = std::min(first + count, m_widths.size());
    int widest = 0;
    for (std::size_t i = first; i < end; ++i)
        widest = std::max(widest, m_widths[i]);
    return widest + kLeafPadding;
}

std::size_t LeafRow::countThatFits(std::size_t first) const
{
    const int arrows = 2 * (m_thinner->minimumWidth() + kSpacing);
    const int room = width() - arrows + kSpacing;
    std::size_t count = std::min(kMostLeaves, m_steps.size());
    while (count > 1 && static_cast<int>(count) * (widestFrom(first, count) + kSpacing) > room)
        --count;
    return count;
}

void LeafRow::centreOn(Gap gap)
{
    const auto above = std::ranges::upper_bound(m_steps, gap, {}, &GaugeStep::size);
    const auto index = static_cast<std::size_t>(above - m_steps.begin());
    m_first = 0; // count first as if from the left, then settle
    for (int round = 0; round < 2; ++round) {
        const std::size_t half = (countThatFits(m_first) + 1) / 2;
        m_first = index > half ? index - half : 0;
    }
}

void LeafRow::page(int direction)
{
    const std::size_t by = std::max<std::size_t>(1, m_count > 1 ? m_count - 1 : 1); // one leaf stays in sight
    if (direction < 0)
        m_first = m_first > by ? m_first - by : 0;
    else
        m_first += by;
    showLeaves();
}

void LeafRow::showLeaves()
{
    const bool taper = m_gauge.kind() == GaugeKind::Taper;
    m_leaves->setVisible(!taper);
    for (QPushButton* arrow : {m_thinner, m_thicker})
        arrow->setVisible(!m_steps.empty()); // between them lies nothing to page through
    m_none->setVisible(!taper);
    m_loose->setVisible(!taper);
    m_first = std::min(m_first, m_steps.empty() ? 0 : m_steps.size() - 1);
    m_count = countThatFits(m_first);
    // The last leaf stands at the right end: no page is half empty.
    while (m_first > 0 && m_first + m_count >= m_steps.size() &&
           m_steps.size() - (m_first - 1) <= countThatFits(m_first - 1))
        m_count = countThatFits(--m_first);
    m_count = std::min(m_count, m_steps.size() - m_first);
    for (std::size_t i = 0; i < m_buttons.size(); ++i) {
        m_buttons[i]->setVisible(i < m_count);
        if (i >= m_count)
            continue;
        const GaugeStep& step = m_steps[m_first + i];
        if (m_buttons[i]->property("stacked").toBool() != step.isStacked()) {
            m_buttons[i]->setProperty("stacked", step.isStacked()); // two lines in the height of one
            m_buttons[i]->style()->unpolish(m_buttons[i]);
            m_buttons[i]->style()->polish(m_buttons[i]);
        }
        m_buttons[i]->setText(textOf(step));
        m_buttons[i]->setAccessibleName(EntryWords::leafName(step));
    }
    m_thinner->setEnabled(m_first > 0);
    m_thicker->setEnabled(m_first + m_count < m_steps.size());
    m_none->setEnabled(!m_steps.empty());
    m_loose->setEnabled(!m_steps.empty());
    m_leaves->layout()->activate(); // buttons that came or went change the others' width at once
    markChosen();
}

void LeafRow::markChosen()
{
    const bool none = m_chosen && m_chosen->technique == Technique::NoLeafEnters;
    const bool loose = m_chosen && m_chosen->technique == Technique::ThickestLoose;
    for (std::size_t i = 0; i < m_count; ++i)
        m_buttons[i]->setChecked(m_chosen && !none && !loose &&
                                 m_steps[m_first + i].size == m_chosen->interval.enters);
    m_none->setChecked(none);
    m_loose->setChecked(loose);
}

void LeafRow::pressLeaf(std::size_t shown)
{
    clearTyped();
    const Gap size = m_steps[m_first + shown].size;
    markChosen(); // the page says what is chosen, not the press
    offer(outcomeOf(size), size);
}

void LeafRow::pressEnd(bool loose)
{
    clearTyped();
    markChosen();
    offer(loose ? m_gauge.thickestLoose() : m_gauge.noLeafEnters(), Gap{});
}

void LeafRow::offer(const GaugeOutcome& outcome, Gap asked)
{
    if (const GaugeReading* reading = std::get_if<GaugeReading>(&outcome))
        emit readingChosen(*reading);
    else
        emit entryRefused(EntryWords::refusal(std::get<GaugeRefusal>(outcome), asked));
}

bool LeafRow::takeKey(QKeyEvent* event)
{
    if (!isEnabled() || !isPlain(*event))
        return false;
    const bool begins = beginsFigure(*event);
    if (m_typed.isEmpty() && !begins)
        return false;
    if (isEnter(*event))
        return takeTyped(), true;
    if (event->key() == Qt::Key_Backspace)
        m_typed.takeBackLast();
    else if (begins || (isWritten(*event) && !m_typed.isRefused()))
        m_typed.add(event->text().front());
    else
        return false;
    return showTyped(), true;
}

bool LeafRow::beginsFigure(const QKeyEvent& event)
{
    return isPlain(event) && isWritten(event) && TypedFigure::begins(event.text().front());
}

bool LeafRow::clearFigure()
{
    const bool wasTyped = !m_typed.isEmpty();
    clearTyped();
    return wasTyped;
}

void LeafRow::takeTyped()
{
    const GapEntry entry = parseGap(m_typed.text().toStdString());
    if (const EntryProblem* problem = std::get_if<EntryProblem>(&entry)) {
        refuseTyped();
        emit entryRefused(EntryWords::refusal(*problem, m_typed.text()));
        return;
    }
    const Gap gap = std::get<Gap>(entry);
    const GaugeOutcome outcome = outcomeOf(gap);
    if (std::holds_alternative<GaugeReading>(outcome))
        clearTyped();
    else
        refuseTyped();
    offer(outcome, gap);
}

// It stays to be looked at, and what is wrong stands beside it, also where more could have followed.
void LeafRow::refuseTyped()
{
    m_typed.refuse();
    showTyped();
}

void LeafRow::clearTyped()
{
    m_typed.clear();
    showTyped();
}

void LeafRow::showTyped()
{
    m_figure->setVisible(!m_typed.isEmpty());
    m_figure->setFigure(EntryWords::typed(m_typed.text()), m_typed.text());
    m_meaning->setText(echoOfTyped());
    m_figure->setAccessibleDescription(m_meaning->text());
}

bool LeafRow::says(const QString& sentence) const
{
    return m_meaning->text() == sentence;
}

QString LeafRow::echoOfTyped() const
{
    if (m_typed.isEmpty())
        return m_gauge.kind() == GaugeKind::Taper ? EntryWords::typeValueHint() : EntryWords::typeHint();
    const GapEntry entry = parseGap(m_typed.text().toStdString());
    if (const EntryProblem* problem = std::get_if<EntryProblem>(&entry))
        return m_typed.isOnItsWay() && !m_typed.isRefused() ? QString{}
                                                            : EntryWords::refusal(*problem, m_typed.text());
    const Gap gap = std::get<Gap>(entry);
    if (gap == Gap{})
        return {}; // "0" and "0." are on their way to a figure
    const GaugeOutcome outcome = outcomeOf(gap);
    if (const GaugeReading* reading = std::get_if<GaugeReading>(&outcome))
        return EntryWords::enterTakes(*reading);
    return EntryWords::refusal(std::get<GaugeRefusal>(outcome), gap);
}

void LeafRow::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::EnabledChange && !isEnabled())
        clearTyped();
    QWidget::changeEvent(event);
}

void LeafRow::keyPressEvent(QKeyEvent* event)
{
    if (!takeKey(event))
        QWidget::keyPressEvent(event);
}

void LeafRow::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    // What is typed goes below the buttons where it would get less than a third of the row.
    const bool beside = widthOfEnds() * 3 < width() * 2;
    m_ends->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    if (m_centre && !m_chosen)
        centreOn(*m_centre);
    showLeaves();
}

void LeafRow::wheelEvent(QWheelEvent* event)
{
    const int turned = event->angleDelta().y() != 0 ? event->angleDelta().y() : event->angleDelta().x();
    const bool canTurn = turned > 0 ? m_thinner->isEnabled() : turned < 0 && m_thicker->isEnabled();
    if (!canTurn || m_gauge.kind() == GaugeKind::Taper)
        return event->ignore();
    page(turned > 0 ? -1 : +1);
    event->accept();
}

} // namespace rig
