#pragma once

#include "app/pages/rigged_today/rigged_today_view.h"
#include "app/theme/theme.h"

#include <QStackedWidget>

class QKeyEvent;

namespace rig {

class Clock;
class ClosePanel;
class ConnectedPanel;
class ControlCheckPanel;
class CouplingPanel;
class PaperStart;
class Prompts;
class Records;
class SeasonPanel;
class StartPanel;
class SummaryPanel;

// The panels of Rigged today one over the other: which of them is seen follows from the facts and the
// session.
class RiggedPanels : public QStackedWidget
{
    Q_OBJECT

public:
    // All three outlive it.
    RiggedPanels(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent = nullptr);

    void setLook(const Look& look);
    // The panel that follows shows what is on it; a coupling's is shown by its sheet. Without an airframe:
    // that there is none.
    void display(const RiggedTodayView& view, const RiggingSession& session, bool hasAirframe);
    void bringUp(); // the panel that was displayed last
    // A key pressed anywhere on the page. False when it means nothing on the panel of now.
    bool takeKey(QKeyEvent* event);
    void moveByAPage(int by);

    bool isNow(const QWidget* panel) const { return panel == m_now; }
    bool isSteppedThrough() const; // one place after the other, by the page keys
    StartPanel* start() const { return m_start; }
    PaperStart* paper() const { return m_paper; }
    SeasonPanel* season() const { return m_season; }
    ConnectedPanel* connected() const { return m_connected; }
    CouplingPanel* coupling() const { return m_coupling; }
    ControlCheckPanel* control() const { return m_control; }
    ClosePanel* close() const { return m_close; }
    SummaryPanel* summary() const { return m_summary; }

private:
    QWidget* panelFor(const RiggedTodayView& view, RecordPlace::Kind place, bool hasAirframe) const;

    QWidget* m_now = nullptr;
    StartPanel* m_start = nullptr;
    PaperStart* m_paper = nullptr;
    SeasonPanel* m_season = nullptr;
    ConnectedPanel* m_connected = nullptr;
    CouplingPanel* m_coupling = nullptr;
    ControlCheckPanel* m_control = nullptr;
    ClosePanel* m_close = nullptr;
    SummaryPanel* m_summary = nullptr;
};

} // namespace rig
