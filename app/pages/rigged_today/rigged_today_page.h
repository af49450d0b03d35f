#pragma once

#include "app/pages/page.h"
#include "app/pages/rigged_today/held_key.h"
#include "app/pages/rigged_today/rigged_today_presenter.h"
#include "app/pages/rigged_today/rigging_writer.h"

#include <optional>
#include <set>

class QCheckBox;
class QLabel;
class QStackedWidget;
class QTimer;

namespace rig {

class ClosePanel;
class ConnectedPanel;
class ControlCheckPanel;
class CouplingPanel;
class PaperStart;
class Prompts;
class RecordList;
class SeasonPanel;
class StartPanel;
class SummaryPanel;
struct PaperHead;

// The rigging record of today: start, one coupling after another, second inspection, close. What it shows
// follows from two values, the facts as they were read last and the session; what is pressed becomes a new
// session and facts.
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
    void catchUp() override;
    QString leftUndone() const override;
    // A rigging that stands on paper is to be typed in; where one is being recorded that is said instead.
    void enterFromPaper();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void buildPanels(Records& records);
    QWidget* makeBanner();
    void connectPanels();
    void connectCoupling();

    // Whatever is pressed goes through here: the reading pressed before it is saved first, then `move` says
    // what the session becomes and which facts are written. `pressed` is what the user pressed.
    template <typename Move, typename... Pressed> void perform(const Move& move, const Pressed&... pressed);
    template <typename Move> auto performs(const Move& move);
    bool take(SessionStep step);
    // Saves the reading that was pressed, where it was pressed. False when that could not be done: then what
    // is pressed next is refused.
    bool settle();
    // The same, and false too where the screen was out of date: then it is shown anew.
    bool mayPress();
    bool isBackFromABreak();

    bool read();    // the facts; false where they cannot be read
    void refresh(); // reads the facts, then shows
    void display(); // what follows from facts and session
    void showCoupling();
    void tellMovement();
    void lookBack();
    QWidget* panelNow() const;

    // False where nothing was begun here.
    bool begin(PersonId leader, RecordOrigin origin, std::optional<int> celsius,
               const std::optional<FromPaper>& paper);
    void beginFromPaper(const PaperHead& head);
    void leavePaper();
    void showBanner(bool isShown);
    // When what is pressed was done: now or, from paper, when the paper says.
    Moment momentNow() const;
    void takenApart(PersonId statedBy);
    void noteRead(PersonId person);
    void tick(TickKind kind);
    void pressReading(const GaugeReading& taken);
    void askCorrection();
    void askStrike();
    void escape();
    void step(int by);
    void close(PersonId first, PersonId second, const QString& note, const std::vector<TickKind>& counted);
    void showLastRecord();
    void showSummary(const Outcome& shown);
    void leaveSummary();
    bool report(const Outcome& outcome);
    void report(const Problem& problem);

    RiggedTodayPresenter m_presenter;
    RiggingWriter m_writer;
    const Clock& m_clock;
    Prompts& m_prompts;
    std::optional<AirframeId> m_airframe;
    std::set<AirframeId> m_resumed;       // airframes whose half-done couplings were sent back to the look
    RiggedTodayView m_view;               // the facts
    RiggingSession m_session;             // the state
    std::optional<CouplingSheet> m_sheet; // of the coupling at hand, made from both
    std::optional<Judgement>
        m_painted;    // the verdict on the screen of the reading that the session has pressed
    QString m_notice; // news of what was done last
    std::optional<Moment> m_lastPress;
    HeldKey m_heldKey;
    MovementsTold m_movements; // as they stood when the work on m_movementsOf began here
    std::optional<RecordId> m_movementsOf;

    RecordList* m_list = nullptr;
    QStackedWidget* m_stack = nullptr;
    QWidget* m_banner = nullptr; // of a record from paper
    QLabel* m_bannerText = nullptr;
    QLabel* m_news = nullptr; // m_notice, where no panel tells it itself
    QCheckBox* m_secondTypes = nullptr;
    StartPanel* m_start = nullptr;
    PaperStart* m_paper = nullptr;
    SeasonPanel* m_season = nullptr;
    ConnectedPanel* m_connected = nullptr;
    CouplingPanel* m_coupling = nullptr;
    ControlCheckPanel* m_control = nullptr;
    ClosePanel* m_close = nullptr;
    SummaryPanel* m_summary = nullptr;
    QTimer* m_saving = nullptr;
    QTimer* m_lookingBack = nullptr;
    QTimer* m_idle = nullptr;
};

} // namespace rig
