#pragma once

#include "app/pages/rigged_today/rigged_today_presenter.h"
#include "app/pages/rigged_today/rigging_writer.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <set>
#include <vector>

namespace rig {

// A break longer than this sends the coupling back to the look (docs/terms.md, interrupted).
inline constexpr int kIdleMinutes = 20;

// What one page hands on to another that goes on in its place.
struct WorkInHand
{
    std::optional<AirframeId> airframe;
    RiggingSession session;
    std::optional<Moment> lastPress;
};

// The rigging at hand without a widget: the facts as they were read last, the session, and the news of what
// was done last. What is pressed becomes a new session and facts; what the screen shows follows from it.
class RiggingWork
{
public:
    // Both outlive it.
    RiggingWork(Records& records, const Clock& clock);

    const RiggedTodayPresenter& presenter() const { return m_presenter; }
    const RiggedTodayView& view() const { return m_view; }
    const RiggingSession& session() const { return m_session; }
    const QString& news() const { return m_news; } // of what was done last; empty: none
    std::optional<AirframeId> airframe() const { return m_airframe; }
    bool isOpen() const { return m_view.now.has_value(); } // a record can be worked on
    bool isFromPaper() const { return m_view.now && m_view.record->enteredBy; }
    // When what is pressed was done: now or, from paper, when the paper says.
    Moment momentNow() const;

    // Another airframe, and the session that goes with it.
    void turnTo(std::optional<AirframeId> airframe);
    // What was half done there when the program went down starts again from the look; once for each.
    Outcome resume();
    // What is half done here is another's afterwards.
    WorkInHand handOn();
    void goOnWith(const WorkInHand& work);
    Outcome read(); // the facts
    // How persons stand on this airframe; read with the facts of the next read().
    Outcome readPeople();
    // Reads both again, since another window has written.
    Outcome catchUp();
    // The joints that another window has worked at, where going on leads elsewhere by that than the screen
    // said before; each time they are told once.
    QStringList takeOthers();
    // Another window has written since they were read.
    bool hasMovedOn() const { return m_presenter.hasMovedOn(m_view); }
    void say(const QString& news) { m_news = news; }
    // A place that is no step of the work: a closed record, the head of a paper, or back to where one was.
    void standAt(RecordPlace::Kind place);

    // Writes the facts of the step and takes its session over; the facts are then to be read again.
    Outcome take(SessionStep step);
    SessionStep interrupted(InterruptionReason reason) const; // a record is open
    // The joint at hand is half done in another window, or was when that one went down.
    bool isBegunElsewhere() const;
    SessionStep begunAnew() const; // a record is open
    // Whether this press comes after a long break, to a coupling that is half done. A timer stands still
    // while the computer sleeps with its lid shut, the clock does not.
    bool isBackFromABreak();

    // The reading that is pressed where the sheet stands, with the verdict that is then on the screen. False
    // when measuring is not open there.
    bool press(const GaugeReading& taken, const CouplingSheet& sheet);
    const std::optional<Judgement>& painted() const { return m_painted; }
    void dropPressed(); // it could not be saved: it can be pressed again

    // Of a record that another window has begun meanwhile: that is gone on with, and said. False then.
    Result<bool> begin(PersonId leader, RecordOrigin origin, std::optional<int> celsius,
                       const std::optional<FromPaper>& paper);
    void chooseSecond(PersonId second); // as the head of the paper names them
    Outcome noteTakenApart(PersonId statedBy);
    Outcome noteRead(PersonId person);
    Outcome tick(TickKind kind);                    // a record is open
    Outcome close(const RecordCloseWanted& wanted); // likewise

private:
    void settleSession();
    QStringList workedAtSince(const RecordNow& before) const;
    bool isTurnedToSecond(const RiggingSession& next) const;
    QString breakNews(const RiggingSession& next) const;
    QStringList passedOver(const RiggingSession& next) const;

    RiggedTodayPresenter m_presenter;
    RiggingWriter m_writer;
    const Clock& m_clock;
    std::optional<AirframeId> m_airframe;
    std::set<AirframeId> m_resumed;
    RiggedTodayView m_view;
    RiggingSession m_session;
    std::optional<Judgement>
        m_painted; // the verdict on the screen of the reading that the session has pressed
    QString m_news;
    QStringList m_others; // joints, see takeOthers()
    std::optional<Moment> m_lastPress;
    PersonStandings m_people;
};

} // namespace rig
