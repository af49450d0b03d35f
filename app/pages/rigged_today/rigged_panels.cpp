#include "app/pages/rigged_today/rigged_panels.h"

#include "app/pages/prompts.h"
#include "app/pages/rigged_today/close_panel.h"
#include "app/pages/rigged_today/connected_panel.h"
#include "app/pages/rigged_today/control_check_panel.h"
#include "app/pages/rigged_today/coupling_panel.h"
#include "app/pages/rigged_today/paper_start.h"
#include "app/pages/rigged_today/rigging_notices.h"
#include "app/pages/rigged_today/season_panel.h"
#include "app/pages/rigged_today/start_panel.h"
#include "app/pages/rigged_today/summary_panel.h"
#include "app/widgets/flow_scroll.h"

#include <QKeyEvent>
#include <QScrollArea>
#include <QScrollBar>

namespace rig {

RiggedPanels::RiggedPanels(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent)
    : QStackedWidget{parent}
{
    m_start = new StartPanel;
    m_paper = new PaperStart;
    m_coupling = new CouplingPanel;
    m_close = new ClosePanel;
    m_control = new ControlCheckPanel{records, clock};
    m_season = new SeasonPanel;
    m_connected = new ConnectedPanel;
    m_summary = new SummaryPanel{records, clock, prompts};
    for (QWidget* panel : std::initializer_list<QWidget*>{m_start, m_paper, m_close, m_season})
        addWidget(new FlowScroll{panel});
    for (QWidget* panel : std::initializer_list<QWidget*>{m_coupling, m_control, m_connected, m_summary})
        addWidget(panel); // scrolls by itself, above a row of buttons that stays
    m_now = m_start;
}

void RiggedPanels::setLook(const Look& look)
{
    m_start->setLook(look);
    m_paper->setLook(look);
    m_close->setLook(look);
    m_coupling->setLook(look);
    m_control->setLook(look);
    m_summary->setLook(look);
}

QWidget* RiggedPanels::panelFor(const RiggedTodayView& view, RecordPlace::Kind place, bool hasAirframe) const
{
    if (!hasAirframe)
        return m_start;
    if (place == RecordPlace::Kind::Summary)
        return m_summary;
    if (!view.now)
        return place == RecordPlace::Kind::Paper ? static_cast<QWidget*>(m_paper) : m_start;
    switch (place) {
    case RecordPlace::Kind::Season:
        return m_season;
    case RecordPlace::Kind::Connected:
        return m_connected;
    case RecordPlace::Kind::ControlCheck:
        return m_control;
    case RecordPlace::Kind::Close:
        return m_close;
    case RecordPlace::Kind::Coupling:
    case RecordPlace::Kind::SecondInspection:
    case RecordPlace::Kind::Summary:
    case RecordPlace::Kind::Paper:
        break;
    }
    return m_coupling;
}

void RiggedPanels::display(const RiggedTodayView& view, const RiggingSession& session, bool hasAirframe)
{
    m_now = panelFor(view, session.place.kind, hasAirframe);
    const auto onward = [&] { return onwardText(onwardFrom(session, *view.now)); };
    if (m_now == m_control)
        m_control->display(view, session, onward());
    else if (m_now == m_close)
        m_close->display(view, session);
    else if (m_now == m_season)
        m_season->display(view);
    else if (m_now == m_connected)
        m_connected->display(view, session, onward());
    else if (m_now == m_paper)
        m_paper->display(view);
    else if (m_now == m_start && hasAirframe)
        m_start->display(view);
    else if (m_now == m_start)
        m_start->displayNothing();
}

void RiggedPanels::bringUp()
{
    for (int i = 0; i < count(); ++i)
        if (widget(i) == m_now || widget(i)->isAncestorOf(m_now))
            setCurrentIndex(i);
}

bool RiggedPanels::takeKey(QKeyEvent* event)
{
    return (m_now == m_coupling && m_coupling->takeKey(event)) ||
           (m_now == m_control && m_control->takeKey(event)) ||
           (m_now == m_season && m_season->takeKey(event)) ||
           (m_now == m_connected && m_connected->takeKey(event)) ||
           (m_now == m_start && m_start->takeKey(event)) || (m_now == m_paper && m_paper->takeKey(event)) ||
           (m_now == m_summary && m_summary->takeKey(event));
}

bool RiggedPanels::isSteppedThrough() const
{
    return m_now == m_coupling || m_now == m_control || m_now == m_connected;
}

// A long panel moves by a page where the page keys have nothing else to do.
void RiggedPanels::moveByAPage(int by)
{
    auto* area = qobject_cast<QScrollArea*>(currentWidget());
    if (!area)
        area = currentWidget()->findChild<QScrollArea*>();
    if (area)
        area->verticalScrollBar()->triggerAction(by > 0 ? QAbstractSlider::SliderPageStepAdd
                                                        : QAbstractSlider::SliderPageStepSub);
}

} // namespace rig
