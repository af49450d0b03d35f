#include "app/pages/setup/setup_page.h"

#include "app/pages/setup/airframe_panel.h"
#include "app/pages/setup/baseline_panel.h"
#include "app/pages/setup/demonstration_panel.h"
#include "app/pages/setup/panel_parts.h"
#include "app/pages/setup/part_list.h"
#include "app/pages/setup/part_panels.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/wording/problem_words.h"
#include "app/wording/sentence_parts.h"
#include "app/wording/setup_words.h"
#include "app/wording/window_words.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollBar>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace rig {

namespace {

constexpr std::size_t at(SetUpPart part)
{
    return static_cast<std::size_t>(part);
}

bool needsAirframe(SetUpPart part)
{
    return part != SetUpPart::Airframe && part != SetUpPart::Gauges && part != SetUpPart::People;
}

// What the guided way waits for at a part, and where it goes on.
QString lackingAt(SetUpPart part, const SetUpView& view)
{
    switch (part) {
    case SetUpPart::Airframe:
        return SetUpWords::lacksAirframe();
    case SetUpPart::Couplings:
        return SetUpWords::lacksCouplings();
    case SetUpPart::Gauges:
        return SetUpWords::lacksGauges();
    case SetUpPart::People:
        return SetUpWords::lacksPeople(static_cast<int>(view.persons.size()));
    case SetUpPart::Surfaces:
    case SetUpPart::Events:
    case SetUpPart::BaselineDay:
    case SetUpPart::Demonstration:
    case SetUpPart::Paper:
        break;
    }
    return {};
}

QString nextFrom(SetUpPart part)
{
    switch (part) {
    case SetUpPart::Airframe:
        return SetUpWords::nextCouplings();
    case SetUpPart::Couplings:
        return SetUpWords::nextGauges();
    case SetUpPart::Gauges:
        return SetUpWords::nextPeople();
    case SetUpPart::People:
    case SetUpPart::Surfaces:
    case SetUpPart::Events:
    case SetUpPart::BaselineDay:
    case SetUpPart::Demonstration:
    case SetUpPart::Paper:
        break;
    }
    return SetUpWords::nextBaseline();
}

} // namespace

SetUpPage::SetUpPage(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent)
    : Page{parent}, m_presenter{records, clock}
{
    setObjectName("setUp");
    setAccessibleName(WindowWords::setUp());
    setFocusPolicy(Qt::ClickFocus); // hands it on: by Tab that would pass over what stands before
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(14, 14, 14, 14);
    layout->setSpacing(14);
    m_list = new PartList;
    layout->addWidget(m_list);
    auto* card = new QFrame;
    card->setProperty("card", true);
    auto* inner = new QVBoxLayout{card};
    inner->setContentsMargins(1, 1, 1, 1);
    inner->setSpacing(0);
    m_stack = new QStackedWidget;
    inner->addWidget(m_stack, 1);
    inner->addWidget(makeWay());
    layout->addWidget(card, 1);
    makePanels(records, clock, prompts);
    m_noAirframe = makeNoAirframe();
    m_stack->addWidget(m_noAirframe);
    connect(m_list, &PartList::partChosen, this, &SetUpPage::showPart);
    connect(m_list, &PartList::partOpened, this, &SetUpPage::goTo);
    connect(m_list, &PartList::statedByChosen, this,
            [this] { m_presenter.desk.setStatedBy(m_list->statedBy()); });
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { followFocus(now); });
    addKeys();
}

SetUpPage::~SetUpPage()
{
    // Focus still moves while the parts go away.
    disconnect(qApp, nullptr, this, nullptr);
}

void SetUpPage::makePanels(Records& records, const Clock& clock, Prompts& prompts)
{
    auto* airframe = new AirframePanel{m_presenter};
    connectPanel(airframe, SetUpPart::Airframe);
    connect(airframe, &AirframePanel::airframeAdded, this, &SetUpPage::takeUpAirframe);
    connect(airframe, &SetUpPanel::changed, this, &Page::airframesChanged);
    connectPanel(makeCouplingsPanel(m_presenter, prompts), SetUpPart::Couplings);
    connectPanel(makeSurfacesPanel(m_presenter, prompts), SetUpPart::Surfaces);
    connectPanel(makeGaugesPanel(m_presenter), SetUpPart::Gauges);
    connectPanel(makePeoplePanel(m_presenter), SetUpPart::People);
    connectPanel(makeEventsPanel(m_presenter), SetUpPart::Events);
    connectPanel(makePaperPanel(m_presenter, prompts), SetUpPart::Paper);
    connectBench(new BaselinePanel{records, clock, prompts}, SetUpPart::BaselineDay);
    connectBench(new DemonstrationPanel{records, clock, prompts}, SetUpPart::Demonstration);
}

void SetUpPage::connectBench(ReadingBench* bench, SetUpPart part)
{
    m_benches[at(part)] = bench;
    bench->setProperty(kIsAbout, titleOf(part));
    add(part, bench);
    connect(bench, &ReadingBench::problemArose, this, &Page::problemArose);
    connect(bench, &ReadingBench::changed, this, &SetUpPage::refresh);
}

void SetUpPage::connectPanel(SetUpPanel* panel, SetUpPart part)
{
    m_panels[at(part)] = panel;
    panel->setProperty(kIsAbout, titleOf(part));
    add(part, panel);
    connect(panel, &SetUpPanel::problemArose, this, &Page::problemArose);
    connect(panel, &SetUpPanel::changed, this, [this, part] { afterChange(part); });
    connect(panel, &SetUpPanel::paperEntryAsked, this, &SetUpPage::paperEntryAsked);
}

void SetUpPage::add(SetUpPart part, QWidget* panel)
{
    auto* area = new FlowScroll{panel};
    m_areas[at(part)] = area;
    m_stack->addWidget(area);
}

QWidget* SetUpPage::makeNoAirframe()
{
    auto* widget = new QWidget;
    auto* layout = new QVBoxLayout{widget};
    layout->setContentsMargins(28, 20, 28, 20);
    layout->setSpacing(12);
    QLabel* sentence = labelOf(SetUpWords::airframeFirst(), "", "airframeFirst");
    m_toAirframe = panelButton("toAirframe", SetUpWords::toAirframe());
    setPrimary(m_toAirframe, true);
    layout->addWidget(sentence);
    layout->addWidget(m_toAirframe, 0, Qt::AlignLeft);
    layout->addStretch(1);
    connect(m_toAirframe, &QPushButton::clicked, this, [this] { goTo(SetUpPart::Airframe); });
    return widget;
}

QFrame* SetUpPage::makeWay()
{
    m_way = new QFrame;
    auto* outer = new QVBoxLayout{m_way};
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(0);
    auto* rule = new QFrame;
    rule->setProperty("rule", true);
    outer->addWidget(rule);
    auto* layout = new QHBoxLayout;
    layout->setContentsMargins(28, 10, 16, 10);
    m_lacking = labelOf({}, "soft", "lacking");
    m_next = panelButton("next", {});
    m_next->setProperty("kind", "primary");
    layout->addWidget(m_lacking, 1);
    layout->addWidget(m_next);
    outer->addLayout(layout);
    connect(m_next, &QPushButton::clicked, this, [this] {
        if (const auto next = partAfter(m_part))
            goTo(*next);
    });
    return m_way;
}

void SetUpPage::addKeys()
{
    for (const SetUpPart part : kSetUpParts) {
        const auto key = static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(part));
        auto* shortcut = new QShortcut{QKeySequence{QKeyCombination{Qt::ALT, key}}, this};
        shortcut->setContext(Qt::WindowShortcut); // also from the top bar, while this page is shown
        connect(shortcut, &QShortcut::activated, this, [this, part] { goTo(part); });
    }
}

void SetUpPage::setLook(const Look& look)
{
    m_list->setLook(look);
    for (SetUpPanel* panel : m_panels)
        if (panel)
            panel->setLook(look);
    for (ReadingBench* bench : m_benches)
        if (bench)
            bench->setLook(look);
}

void SetUpPage::showAirframe(std::optional<AirframeId> airframe)
{
    m_airframe = airframe;
    refresh();
    // Where there is something left to do, a newcomer is led to it.
    showPart(m_wasShown ? m_part : m_view.nextToDo().value_or(SetUpPart::Airframe));
    m_wasShown = true;
}

QString SetUpPage::leftUndone() const
{
    QStringList parts;
    for (const SetUpPart part : kSetUpParts)
        if ((m_panels[at(part)] && m_panels[at(part)]->hasTyped()) ||
            (m_benches[at(part)] && m_benches[at(part)]->hasTyped()))
            parts << titleOf(part);
    return parts.isEmpty() ? QString{} : SetUpWords::leftUndone(SentenceParts::list(parts));
}

void SetUpPage::refresh()
{
    auto view = m_presenter.view(m_airframe);
    if (!view) {
        emit problemArose(ProblemWords::sentence(view.problem(), {}));
        return;
    }
    m_view = std::move(view).value();
    for (SetUpPanel* panel : m_panels)
        if (panel)
            panel->display(m_view);
    showCurrent();
}

void SetUpPage::showCurrent()
{
    std::set<SetUpPart> unsaved;
    for (const SetUpPart part : kSetUpParts)
        if (m_panels[at(part)] && part != m_part && m_panels[at(part)]->hasUnsaved())
            unsaved.insert(part);
    m_list->display(m_view, m_part, unsaved);
    if (needsAirframe(m_part) && !m_airframe)
        m_stack->setCurrentWidget(m_noAirframe);
    else
        m_stack->setCurrentWidget(m_areas[at(m_part)]);
    showWay();
}

void SetUpPage::showWay()
{
    const auto next = partAfter(m_part);
    m_way->setVisible(next && m_view.nextToDo());
    if (!next)
        return;
    const bool open = m_view.isDone(m_part);
    m_lacking->setText(open ? QString{} : lackingAt(m_part, m_view));
    m_next->setEnabled(open);
    m_next->setText(m_next->hasFocus() ? SetUpWords::withEnter(nextFrom(m_part)) : nextFrom(m_part));
    m_next->setAccessibleDescription(m_lacking->text());
}

void SetUpPage::showPart(SetUpPart part)
{
    m_part = part;
    if (ReadingBench* bench = m_benches[at(part)])
        bench->showAirframe(m_airframe);
    showCurrent();
}

void SetUpPage::goTo(SetUpPart part)
{
    showPart(part);
    focusPart();
}

void SetUpPage::focusPart()
{
    if (m_stack->currentWidget() == m_noAirframe)
        m_toAirframe->setFocus();
    else if (SetUpPanel* panel = m_panels[at(m_part)])
        panel->focusFirst();
    else
        m_areas[at(m_part)]->widget()->setFocus();
}

void SetUpPage::afterChange(SetUpPart part)
{
    const bool wasDone = m_view.isDone(part);
    refresh();
    emit factsChanged();
    if (!wasDone && m_view.isDone(part) && m_way->isVisibleTo(this))
        m_next->setFocus();
}

void SetUpPage::takeUpAirframe(AirframeId airframe)
{
    m_airframe = airframe;
    afterChange(SetUpPart::Airframe);
    emit airframesChanged();
}

void SetUpPage::followFocus(QWidget* now)
{
    showWay(); // its button says Enter while Enter presses it
    FlowScroll* area = m_areas[at(m_part)];
    if (!now || !area->widget()->isAncestorOf(now))
        return;
    constexpr int kAround = 60; // its hint or its problem is below it
    const int bottom = now->mapTo(area->widget(), QPoint{0, now->height()}).y() + kAround;
    if (bottom <= area->viewport()->height())
        area->verticalScrollBar()->setValue(0); // the title and the reason stay in sight
    else
        area->ensureWidgetVisible(now, 0, kAround);
}

// The window gives the page the focus; the part knows where it belongs.
void SetUpPage::focusInEvent(QFocusEvent*)
{
    focusPart();
}

void SetUpPage::keyPressEvent(QKeyEvent* event)
{
    ReadingBench* bench = m_airframe ? m_benches[at(m_part)] : nullptr;
    if (!bench || !bench->takeKey(event))
        Page::keyPressEvent(event);
}

} // namespace rig
