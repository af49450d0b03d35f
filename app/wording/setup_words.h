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
    static QString heading();
    static QString airframePart();
    static QString couplingsPart();
    static QString gaugesPart();
    static QString peoplePart();
    static QString eventsPart();
    static QString baselinePart();
    static QString demonstrationPart();
    static QString partKeys();
    static QString progress(int done, int of);
    static QString allDone();
    static QString done(const QString& count);
    static QString notYet();
    static QString notYetBut(const QString& count);
    static QString typedNotSaved(const QString& state);
    static QString couplings(int count);
    static QString gauges(int count);
    static QString leafSets(int count);
    static QString people(int count);
    static QString events(int count);
    static QString bands(int with, int of);
    static QString shown(int with, int of);
    static QString statedBy();
    static QString nobodyNamed();
    static QString statedByHint();

    // The guided way
    static QString whyAirframe();
    static QString whyCouplings();
    static QString whyGauges();
    static QString whyPeople();
    static QString whyEvents();
    static QString nextCouplings();
    static QString nextGauges();
    static QString nextPeople();
    static QString nextBaseline();
    static QString lacksAirframe();
    static QString lacksCouplings();
    static QString lacksGauges();
    static QString lacksPeople(int there);
    static QString withEnter(const QString& next);
    static QString airframeFirst();
    static QString toAirframe();

    // Shared by the forms
    static QString save();
    static QString saveWithKey();
    static QString closeForm();
    static QString edit();
    static QString needed();
    static QString notSavedYet();
    // What is asked before the file is left.
    static QString leftUndone(const QString& parts);
    static QString savedAt(const QString& time);
    static QString tooLong(int most); // characters
    static QString invisible();
    static QString notSaved();
    static QString calendar();
    static QString calendarFor(const QString& field);
    static QString today();
    static QString dayToCome();

    // Airframe
    static QString furtherAirframeTitle();
    static QString registration();
    static QString type();
    static QString serial();
    static QString jurisdiction();
    static QString jurisdictionHint();
    static QString manualReferences();
    static QString manualReferencesHint();
    static QString annualDue();
    static QString callName();
    static QString callNameHint();
    static QString callPhone();
    static QString riggingsBefore();
    static QString riggingsBeforeHint();
    static QString furtherAirframe();
    static QString backToAirframe(const QString& registration);
    static QString registrationMissing();
    static QString registrationTaken(const QString& registration);
    static QString notACount();

    // People
    static QString peopleTitle();
    static QString newPerson();
    static QString newPersonTitle();
    static QString changePersonTitle(const QString& name);
    static QString personName();
    static QString role();
    static QString roleHint();
    static QString phone();
    static QString nameMissing();
    static QString nameTaken(const QString& name);
    static QString noPeople();
    static QString personDetail(const QString& role, const QString& phone);

    // Events
    static QString eventsTitle();
    static QString newEvent();
    static QString newEventTitle();
    static QString eventKind();
    static QString eventDay();
    static QString eventWhere();
    static QString eventNote();
    static QString eventNoteHint();
    static QString wholeAirframe();
    static QString kind(EventKind kind);
    static QString noteMissing();
    static QString whoTookApartMissing();
    static QString startFittingToo();
    static QString noEventsYet();
    static QString eventStays();
    static QString eventLine(const QString& day, const QString& kind, const QString& where);
};

} // namespace rig
