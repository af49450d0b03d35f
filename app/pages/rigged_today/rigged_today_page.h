#pragma once

#include "app/pages/page.h"
#include "app/pages/rigged_today/held_key.h"
#include "app/pages/rigged_today/look_photos.h"
#include "app/pages/rigged_today/rigging_work.h"

#include <functional>
#include <optional>

class QLabel;
class QShortcut;
class QTimer;

namespace rig {

class LookingBack;
class PaperBanner;
class Prompts;
class RecordList;
class RiggedPanels;
struct PaperHead;

// The rigging record of today: start, one coupling after another, second inspection, close. What it shows
// follows from the work; what is pressed is done there first.
class RiggedTodayPage : public Page
{
    Q_OBJECT

public:
    // All three outlive it.
    RiggedTodayPage(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent = nullptr);

    void showAirframe(std::optional<AirframeId> airframe) override;
    void setLook(const Look& look) override;
    void leave() override;
    void end() override;
    bool isBlind() const override;
    void catchUp() override;
    QString leftUndone() const override;
    QString lostWithTheLanguage() const override;
    // A rigging that stands on paper is to be typed in; where one is being recorded that is said instead.
    void enterFromPaper();
    // The joint or the surface that is worked at; of a stop what it is about.
    AtHand atHand() const;
    // The work for a page that takes it over from this one as it stands; before that page is shown.
    WorkInHand handOn();
    void goOnWith(const WorkInHand& work) { m_work.goOnWith(work); }

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build(Records& records, const Clock& clock);
    void makeTimers();
    QShortcut* onKey(Qt::Key key, const std::function<void()>& action);
    void connectKeys();
    void connectStart();
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
    void stayQuiet(); // a while longer, where nothing that is typed counts now
    // The same, and false too where the screen was out of date: then it is shown anew.
    bool mayPress();
    bool mayWorkHere();
    void showOthersWork();
    void goOnward();
    void answerHere(CheckKind kind, Answer given);
    void breakOff(InterruptionReason reason);

    void refresh(); // reads the facts, shows them, and says so to the window
    void display(); // what follows from the work
    void showCoupling();
    void lookBack();

    // False where nothing was begun here.
    bool begin(PersonId leader, RecordOrigin origin, std::optional<int> celsius,
               const std::optional<FromPaper>& paper);
    void beginFromPaper(const PaperHead& head);
    void leavePaper();
    void tick(TickKind kind);
    void pressReading(const GaugeReading& taken);
    void askTurn(Turn turn);
    void askCorrection();
    void askStrike();
    void escape();
    void step(int by);
    void close(const RecordCloseWanted& wanted);
    void showLastRecord();
    void showSummary(const Outcome& shown);
    void standAt(RecordPlace::Kind place);
    bool pressesMarked();
    bool report(const Outcome& outcome);
    void report(const Problem& problem);

    RiggingWork m_work;
    LookPhotos m_photos;
    Prompts& m_prompts;
    HeldKey m_heldKey;
    std::optional<CouplingSheet> m_sheet; // of the coupling that is shown
    RecordList* m_list = nullptr;
    PaperBanner* m_banner = nullptr;
    QLabel* m_news = nullptr; // of the work, where the panel does not tell it itself
    RiggedPanels* m_panels = nullptr;
    LookingBack* m_lookingBack = nullptr;
    QTimer* m_saving = nullptr;
    QTimer* m_idle = nullptr;
    QTimer* m_quiet = nullptr; // runs while what is typed goes nowhere, from each key anew
};

} // namespace rig
