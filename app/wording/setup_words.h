#pragma once

#include "core/rigging/event.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// Sentences of Set up: the page, the airframe, people, events. Couplings and gauges have their own files.
class SetUpWords
{
    Q_DECLARE_TR_FUNCTIONS(SetUpWords)

public:
    // The parts at the left
    static QString heading() { return tr("Set up"); }
    static QString airframePart() { return tr("Airframe"); }
    static QString couplingsPart() { return tr("Couplings"); }
    static QString gaugesPart() { return tr("Leaf sets and gauges"); }
    static QString peoplePart() { return tr("People"); }
    static QString eventsPart() { return tr("Events"); }
    static QString baselinePart() { return tr("Baseline day"); }
    static QString demonstrationPart() { return tr("Part-seated demonstration"); }
    static QString partKeys() { return tr("Alt+1 to Alt+8: go to a part."); }
    static QString progress(int done, int of) { return tr("%1 of %2 steps done").arg(done).arg(of); }
    static QString allDone() { return tr("All steps done"); }
    static QString done(const QString& count) { return tr("done · %1", "3 people").arg(count); }
    static QString notYet() { return tr("not yet"); }
    static QString notYetBut(const QString& count) { return tr("not yet · %1", "1 person").arg(count); }
    static QString typedNotSaved(const QString& state) { return tr("typed, not saved · %1").arg(state); }
    static QString couplings(int count);
    static QString gauges(int count);
    static QString leafSets(int count);
    static QString people(int count);
    static QString events(int count);
    static QString noEvents() { return tr("none noted"); }
    static QString bands(int with, int of) { return tr("%1 of %2 with a band").arg(with).arg(of); }
    static QString shown(int with, int of) { return tr("shown on %1 of %2").arg(with).arg(of); }
    static QString neverShown() { return tr("never shown · if you wish"); }
    static QString statedBy() { return tr("Entered by"); }
    static QString nobodyNamed() { return tr("Nobody named"); }
    static QString statedByHint() { return tr("The name that is kept with what you save here."); }

    // The guided way
    static QString whyAirframe();
    static QString whyCouplings();
    static QString whyGauges();
    static QString whyPeople();
    static QString whyEvents();
    static QString nextCouplings() { return tr("Next: couplings"); }
    static QString nextGauges() { return tr("Next: leaf set"); }
    static QString nextPeople() { return tr("Next: people"); }
    static QString nextBaseline() { return tr("Next: baseline day"); }
    static QString lacksAirframe()
    {
        return tr("Save an airframe first. The other parts can be looked at any time.");
    }
    static QString lacksCouplings() { return tr("Add at least one coupling first."); }
    static QString lacksGauges() { return tr("Add at least one leaf set or gauge first."); }
    static QString lacksPeople(int there);
    static QString withEnter(const QString& next) { return tr("%1  (Enter)", "Next: couplings").arg(next); }
    static QString airframeFirst();
    static QString toAirframe() { return tr("Go to the airframe"); }

    // Shared by the forms
    static QString save() { return tr("Save"); }
    static QString saveWithKey() { return tr("Save  (Enter)"); }
    static QString closeForm() { return tr("Close without saving  (Esc)"); }
    static QString edit() { return tr("Change  (Enter)"); }
    static QString needed() { return tr("Needed; all else may be filled in later."); }
    static QString notSavedYet() { return tr("Typed, not saved yet."); }
    static QString savedAt(const QString& time) { return tr("Saved at %1.").arg(time); }
    static QString notSaved() { return tr("Not saved. What lacks is said beside its field."); }
    static QString dayHint() { return tr("Year-month-day, like 2026-05-02."); }
    static QString dayHintOrEmpty() { return tr("Year-month-day, like 2026-05-02. May stay empty."); }
    static QString calendar() { return tr("Calendar"); }
    static QString calendarFor(const QString& field) { return tr("Calendar for: %1").arg(field); }
    static QString today() { return tr("Today"); }
    static QString notADay(const QString& typed);
    static QString dayMissing() { return tr("Type the day, like 2026-05-02."); }
    static QString dayToCome() { return tr("This day has not come yet. Type today or an earlier day."); }

    // Airframe
    static QString airframeTitle() { return tr("The airframe"); }
    static QString furtherAirframeTitle() { return tr("A further airframe"); }
    static QString registration() { return tr("&Registration"); }
    static QString type() { return tr("T&ype"); }
    static QString serial() { return tr("Serial &number"); }
    static QString jurisdiction() { return tr("&Jurisdiction"); }
    static QString jurisdictionHint()
    {
        return tr("Whose rules hold. The law differs and changes: ask your authority.");
    }
    static QString manualReferences() { return tr("&Manuals and directives"); }
    static QString manualReferencesHint()
    {
        return tr("With issue and date. They prevail over anything said here.");
    }
    static QString annualDue() { return tr("Next &annual due"); }
    static QString callName() { return tr("&Whom to call"); }
    static QString callNameHint() { return tr("Shown at once when a reading lies outside its band."); }
    static QString callPhone() { return tr("&Phone"); }
    static QString riggingsBefore() { return tr("Riggings &counted before this file"); }
    static QString riggingsBeforeHint() { return tr("A whole number. 0 when nobody counted."); }
    static QString furtherAirframe() { return tr("Add a further airframe"); }
    static QString backToAirframe(const QString& registration)
    {
        return tr("Back to %1  (Esc)").arg(registration);
    }
    static QString registrationMissing()
    {
        return tr("Type the registration. It stands on every page and every print.");
    }
    static QString registrationTaken(const QString& registration);
    static QString notACount() { return tr("Type a whole number, 0 or more."); }

    // People
    static QString peopleTitle() { return tr("People"); }
    static QString newPerson() { return tr("Add a person"); }
    static QString newPersonTitle() { return tr("A new person"); }
    static QString changePersonTitle(const QString& name) { return tr("Change: %1").arg(name); }
    static QString personName() { return tr("&Name"); }
    static QString role() { return tr("&Role"); }
    static QString roleHint() { return tr("Owner, member, engineer: in your own words."); }
    static QString phone() { return tr("&Phone"); }
    static QString nameMissing() { return tr("Type a name."); }
    static QString nameTaken(const QString& name);
    static QString noPeople() { return tr("Nobody yet. A rigging record needs two people."); }
    static QString personDetail(const QString& role, const QString& phone);

    // Events
    static QString eventsTitle() { return tr("Events"); }
    static QString newEvent() { return tr("Note an event"); }
    static QString newEventTitle() { return tr("A new event"); }
    static QString eventKind() { return tr("&What was done"); }
    static QString eventDay() { return tr("&Day"); }
    static QString eventWhere() { return tr("Wh&ere"); }
    static QString eventNote() { return tr("&Note"); }
    static QString eventNoteHint() { return tr("By whom, which grade or part, what was found."); }
    static QString wholeAirframe() { return tr("The whole airframe"); }
    static QString kind(EventKind kind);
    static QString noteMissing() { return tr("Say in a few words what there is to note."); }
    static QString startFittingToo();
    static QString noEventsYet() { return tr("No event noted yet."); }
    static QString eventStays()
    {
        return tr("An event stays as it was saved. A slip is put right by a further note.");
    }
    static QString eventLine(const QString& day, const QString& kind, const QString& where);
};

} // namespace rig
