#include "app/wording/setup_words.h"

namespace rig {

QString SetUpWords::heading() { return tr("Set up"); }
QString SetUpWords::airframePart() { return tr("Airframe"); }
QString SetUpWords::couplingsPart() { return tr("Couplings"); }
QString SetUpWords::gaugesPart() { return tr("Leaf sets and gauges"); }
QString SetUpWords::peoplePart() { return tr("People"); }
QString SetUpWords::eventsPart() { return tr("Events"); }
QString SetUpWords::baselinePart() { return tr("Baseline day"); }
QString SetUpWords::demonstrationPart() { return tr("Part-seated demonstration"); }
QString SetUpWords::partKeys() { return tr("Alt+1 to Alt+9: go to a part."); }
QString SetUpWords::progress(int done, int of) { return tr("%1 of %2 steps done").arg(done).arg(of); }
QString SetUpWords::allDone() { return tr("All steps done"); }
QString SetUpWords::done(const QString& count) { return tr("done · %1", "3 people").arg(count); }
QString SetUpWords::notYet() { return tr("not yet"); }
QString SetUpWords::notYetBut(const QString& count) { return tr("not yet · %1", "1 person").arg(count); }
QString SetUpWords::typedNotSaved(const QString& state) { return tr("typed, not saved · %1").arg(state); }

QString SetUpWords::couplings(int count)
{
    return count == 1 ? tr("1 coupling") : tr("%1 couplings").arg(count);
}

QString SetUpWords::gauges(int count) { return count == 1 ? tr("1 gauge") : tr("%1 gauges").arg(count); }

QString SetUpWords::leafSets(int count)
{
    return count == 1 ? tr("1 leaf set") : tr("%1 leaf sets").arg(count);
}

QString SetUpWords::people(int count) { return count == 1 ? tr("1 person") : tr("%1 people").arg(count); }
QString SetUpWords::events(int count) { return count == 1 ? tr("1 event") : tr("%1 events").arg(count); }
QString SetUpWords::bands(int with, int of) { return tr("%1 of %2 with a band").arg(with).arg(of); }
QString SetUpWords::shown(int with, int of) { return tr("shown on %1 of %2").arg(with).arg(of); }
QString SetUpWords::statedBy() { return tr("Entered by"); }
QString SetUpWords::nobodyNamed() { return tr("Nobody named"); }
QString SetUpWords::statedByHint() { return tr("The name that is kept with what you save here."); }

QString SetUpWords::whyAirframe()
{
    return tr(
        "The registration stands on every page, so that two gliders are never mixed up, and whoever meets a "
        "reading outside its band sees at once whom to call.");
}

QString SetUpWords::whyCouplings()
{
    return tr("Each coupling is read and judged for itself, against its own past. The list is in rigging "
              "order: the "
              "order in which you walk round the aircraft.");
}

QString SetUpWords::whyGauges()
{
    return tr("A reading lies between the leaf that enters and the next one that does not. So the program "
              "has to know "
              "which leaves there are, and when somebody last checked them.");
}

QString SetUpWords::whyPeople()
{
    return tr("Every look, pull and reading is stated by a person, and the second look by another one. Two "
              "people is "
              "the least.");
}

QString SetUpWords::whyEvents()
{
    return tr(
        "Cleaning, greasing and repairs shift readings. Noted here with their day, they stand beside the "
        "readings, and nobody has to guess later.");
}

QString SetUpWords::nextCouplings() { return tr("Next: couplings"); }
QString SetUpWords::nextGauges() { return tr("Next: leaf set"); }
QString SetUpWords::nextPeople() { return tr("Next: people"); }
QString SetUpWords::nextBaseline() { return tr("Next: baseline day"); }

QString SetUpWords::lacksAirframe()
{
    return tr("Save an airframe first. The other parts can be looked at any time.");
}

QString SetUpWords::lacksCouplings() { return tr("Add at least one coupling first."); }
QString SetUpWords::lacksGauges() { return tr("Add at least one leaf set or gauge first."); }

QString SetUpWords::lacksPeople(int there)
{
    return there == 0 ? tr("Add two people first.") : tr("Add a second person first.");
}

QString SetUpWords::withEnter(const QString& next) { return tr("%1  (Enter)", "Next: couplings").arg(next); }

QString SetUpWords::airframeFirst()
{
    return tr("This part belongs to an airframe, and the file knows none yet.");
}

QString SetUpWords::toAirframe() { return tr("Go to the airframe"); }

QString SetUpWords::save() { return tr("Save"); }
QString SetUpWords::saveWithKey() { return tr("Save  (Enter)"); }
QString SetUpWords::closeForm() { return tr("Close without saving  (Esc)"); }
QString SetUpWords::edit() { return tr("Change  (Enter)"); }
QString SetUpWords::needed() { return tr("Needed; all else may be filled in later."); }
QString SetUpWords::notSavedYet() { return tr("Typed, not saved yet."); }
QString SetUpWords::leftUndone(const QString& parts)
{
    return tr("Typed in Set up and not saved: %1. It is lost when this file is left now. To keep it, go back "
              "and "
              "save it.",
              "a part, or some of them")
        .arg(parts);
}
QString SetUpWords::savedAt(const QString& time) { return tr("Saved at %1.").arg(time); }
QString SetUpWords::notSaved() { return tr("Not saved. See the message beside the field."); }
QString SetUpWords::tooLong(int most)
{
    return tr("This is longer than %n characters. Shorten it.", nullptr, most);
}
QString SetUpWords::invisible()
{
    return tr(
        "A character in it is not seen, such as a mark for the direction of writing. Delete it all and type "
        "it anew.");
}
QString SetUpWords::calendar() { return tr("Calendar"); }
QString SetUpWords::calendarFor(const QString& field) { return tr("Calendar for: %1").arg(field); }
QString SetUpWords::today() { return tr("Today"); }

QString SetUpWords::dayToCome() { return tr("This day has not come yet. Type today or an earlier day."); }

QString SetUpWords::furtherAirframeTitle() { return tr("A further airframe"); }
QString SetUpWords::registration() { return tr("&Registration"); }
QString SetUpWords::type() { return tr("T&ype"); }
QString SetUpWords::serial() { return tr("Serial &number"); }
QString SetUpWords::jurisdiction() { return tr("&Jurisdiction"); }

QString SetUpWords::jurisdictionHint()
{
    return tr("Whose rules hold. The law differs and changes: ask your authority.");
}

QString SetUpWords::manualReferences() { return tr("&Manuals and directives"); }

QString SetUpWords::manualReferencesHint()
{
    return tr("With issue and date. They prevail over anything said here.");
}

QString SetUpWords::annualDue() { return tr("Next &annual due"); }
QString SetUpWords::callName() { return tr("&Whom to call"); }
QString SetUpWords::callNameHint() { return tr("Shown at once when a reading lies outside its band."); }
QString SetUpWords::callPhone() { return tr("&Phone"); }
QString SetUpWords::riggingsBefore() { return tr("Riggings &counted before this file"); }
QString SetUpWords::riggingsBeforeHint() { return tr("A whole number. 0 when nobody counted."); }
QString SetUpWords::furtherAirframe() { return tr("Add a further airframe"); }

QString SetUpWords::backToAirframe(const QString& registration)
{
    return tr("Back to %1  (Esc)").arg(registration);
}

QString SetUpWords::registrationMissing()
{
    return tr("Type the registration. It stands on every page and every print.");
}

QString SetUpWords::registrationTaken(const QString& registration)
{
    return tr("%1 is already in this file. Choose it by the registration at the top left (Ctrl+K), or type "
              "another.")
        .arg(registration);
}

QString SetUpWords::notACount() { return tr("Type a whole number, 0 or more."); }

QString SetUpWords::peopleTitle() { return tr("People"); }
QString SetUpWords::newPerson() { return tr("Add a person"); }
QString SetUpWords::newPersonTitle() { return tr("A new person"); }
QString SetUpWords::changePersonTitle(const QString& name) { return tr("Change: %1").arg(name); }
QString SetUpWords::personName() { return tr("&Name"); }
QString SetUpWords::role() { return tr("&Role"); }
QString SetUpWords::roleHint() { return tr("Owner, member, engineer: in your own words."); }
QString SetUpWords::phone() { return tr("&Phone"); }
QString SetUpWords::nameMissing() { return tr("Type a name."); }

QString SetUpWords::nameTaken(const QString& name)
{
    return tr("%1 is already in this file. Add an initial, so that the two are told apart.").arg(name);
}

QString SetUpWords::noPeople() { return tr("Nobody yet. A rigging record needs two people."); }

QString SetUpWords::personDetail(const QString& role, const QString& phone)
{
    if (role.isEmpty())
        return phone;
    return phone.isEmpty() ? role : tr("%1 · %2", "role, phone").arg(role, phone);
}

QString SetUpWords::eventsTitle() { return tr("Events"); }
QString SetUpWords::newEvent() { return tr("Note an event"); }
QString SetUpWords::newEventTitle() { return tr("A new event"); }
QString SetUpWords::eventKind() { return tr("&What was done"); }
QString SetUpWords::eventDay() { return tr("&Day"); }
QString SetUpWords::eventWhere() { return tr("Wh&ere"); }
QString SetUpWords::eventNote() { return tr("&Note"); }
QString SetUpWords::eventNoteHint() { return tr("By whom, which grade or part, what was found."); }
QString SetUpWords::wholeAirframe() { return tr("The whole airframe"); }

QString SetUpWords::kind(EventKind kind)
{
    switch (kind) {
    case EventKind::Cleaned:
        return tr("Cleaned");
    case EventKind::Greased:
        return tr("Greased");
    case EventKind::Refitted:
        return tr("Refitted or adjusted");
    case EventKind::PartChanged:
        return tr("Part changed");
    case EventKind::Annual:
        return tr("Annual");
    case EventKind::Derigged:
        return tr("Taken apart");
    case EventKind::Finding:
        return tr("Finding");
    case EventKind::Note:
        break;
    }
    return tr("Note");
}

QString SetUpWords::whoTookApartMissing()
{
    return tr("Choose your name first, at “%1”: the history says who took it apart.").arg(statedBy());
}

QString SetUpWords::noteMissing() { return tr("Say in a few words what there is to note."); }

QString SetUpWords::startFittingToo()
{
    return tr("A refit, an adjustment or a changed part ends the old baseline. Noting it here does not do "
              "that: start a "
              "new fitting of the coupling in Couplings (Alt+2) as well.");
}

QString SetUpWords::noEventsYet() { return tr("No event noted yet."); }

QString SetUpWords::eventStays()
{
    return tr("An event stays as it was saved. A slip is put right by a further note.");
}

QString SetUpWords::eventLine(const QString& day, const QString& kind, const QString& where)
{
    return tr("%1 · %2 · %3", "day, what was done, where").arg(day, kind, where);
}

} // namespace rig
