#pragma once

#include "app/pages/page.h"
#include "app/pages/rigged_today/record_list.h"
#include "app/pages/rigged_today/rigged_today_presenter.h"

#include <map>
#include <optional>
#include <set>

class QStackedWidget;
class QTimer;

namespace rig {

class ClosePanel;
class ControlCheckPanel;
class CouplingPanel;
class Prompts;
class SeasonPanel;
class StartPanel;
class SummaryPanel;

// The rigging record of today: start, one coupling after another, second inspection, close.
class RiggedTodayPage : public Page
{
    Q_OBJECT

public:
    // All three outlive it.
    RiggedTodayPage(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent = nullptr);

    void showAirframe(std::optional<AirframeId> airframe) override;
    void setLook(const Look& look) override;
    void leave() override;
    bool isBlind() const override;

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void connectPanels();
    void refresh();
    void showPlace(const RecordPlace& place);
    void showCurrent();
    void showCoupling();
    void begin(PersonId leader, RecordOrigin origin);
    void answer(CheckKind kind, Answer answer);
    void chooseReading(const GaugeReading& reading);
    // Saves the reading that was pressed, where it was pressed. False when that could not be done: then what
    // is pressed next is refused.
    bool settle();
    QString newsOf(const ReadingNews& news, const CouplingSheet& sheet) const;
    QString otherHandsHint() const;
    void choosePerson(PersonId person);
    void askCorrection();
    void next();
    void step(int by);
    void changeTurn(Turn turn);
    void beginSecondInspection();
    bool hasControlCheckToDo() const;
    void afterControlCheck();
    void interrupt(InterruptionReason reason);
    void close(PersonId first, PersonId second, const QString& note, const std::vector<TickKind>& counted);
    void tick(TickKind kind);
    void takenApart();
    void showSummary();
    void leaveSummary();
    bool report(const Outcome& outcome);
    void report(const Problem& problem);
    std::optional<CouplingId> nextWaiting() const;
    QString nextText() const;
    bool isHalfDone() const;

    // A reading with everything that was on the screen when it was pressed.
    struct PressedReading
    {
        RecordId record;
        CouplingSheet sheet;
        GaugeReading taken;
        Judgement judgement;
        std::string reason; // of a correction
    };

    RiggedTodayPresenter m_presenter;
    const Clock& m_clock;
    Prompts& m_prompts;
    std::optional<AirframeId> m_airframe;
    std::set<AirframeId> m_resumed; // airframes whose half-done couplings were sent back to the look
    RiggedTodayView m_view;
    std::optional<CouplingSheet> m_sheet;
    std::optional<PressedReading> m_pressed; // shown and not yet saved
    RecordPlace m_place;
    Turn m_turn = Turn::First;
    std::map<Turn, PersonId> m_persons;
    std::optional<GaugeId> m_gauge;
    ReadingWanted m_wanted = ReadingWanted::None;
    std::string m_correctionReason;
    QString m_notice;

    RecordList* m_list = nullptr;
    QStackedWidget* m_stack = nullptr;
    StartPanel* m_start = nullptr;
    SeasonPanel* m_season = nullptr;
    CouplingPanel* m_coupling = nullptr;
    ControlCheckPanel* m_control = nullptr;
    ClosePanel* m_close = nullptr;
    SummaryPanel* m_summary = nullptr;
    QTimer* m_idle = nullptr;
};

} // namespace rig
