#include "app/wording/statement_words.h"

namespace rig {

QString StatementWords::keyFinding() { return tr("F", "key for note a finding"); }
QString StatementWords::keyAsk() { return tr("Q", "key for ask a question"); }
QString StatementWords::noteAFinding() { return tr("Note a finding (%1)").arg(keyFinding()); }
QString StatementWords::ask() { return tr("Ask (%1)").arg(keyAsk()); }

QString StatementWords::findingTitle() { return tr("Note a finding"); }

QString StatementWords::findingAbout()
{
    return tr(
        "What somebody found at the airframe and did there. It stays in the file with their name; a later "
        "finding stands beside it. It closes no question and changes no band.");
}

QString StatementWords::askTitle() { return tr("Ask"); }

QString StatementWords::askAbout()
{
    return tr("It stays open, and every page says that a question is open, until a named person says what "
              "was found "
              "and done.");
}

QString StatementWords::where() { return tr("Wh&ere"); }
QString StatementWords::wholeAirframe() { return tr("The whole airframe"); }
QString StatementWords::day() { return tr("&Day it was found"); }
QString StatementWords::finder() { return tr("&Who found it"); }
QString StatementWords::asker() { return tr("&Who asks"); }
QString StatementWords::choosePerson() { return tr("Choose a name"); }
QString StatementWords::notInList() { return tr("Not in the list? Set up, People, adds a name."); }
QString StatementWords::found() { return tr("What was &found"); }
QString StatementWords::done() { return tr("What was do&ne"); }
QString StatementWords::doneHint() { return tr("Where nothing was done, say so."); }
QString StatementWords::question() { return tr("What is to be &found out"); }

QString StatementWords::about(const QString& what) { return tr("About: %1", "a reading").arg(what); }

QString StatementWords::aboutReading(const QString& interval, const QString& day)
{
    return tr("About the reading %1 of %2.", "interval, day").arg(interval, day);
}

QString StatementWords::keep() { return tr("Keep the finding (Ctrl+Enter)"); }
QString StatementWords::keepQuestion() { return tr("Open the question (Ctrl+Enter)"); }
QString StatementWords::putAside() { return tr("Back (Esc)"); }
QString StatementWords::typedStays() { return tr("What is typed stays here while you look around."); }

QString StatementWords::finderMissing() { return tr("Choose who found it: a finding has a name."); }
QString StatementWords::askerMissing() { return tr("Choose who asks: a question has a name."); }
QString StatementWords::dayAhead() { return tr("This day lies ahead. Type today or an earlier day."); }
QString StatementWords::foundMissing() { return tr("Say what was found."); }
QString StatementWords::doneMissing() { return tr("Say what was done; where nothing was, write that."); }
QString StatementWords::questionMissing() { return tr("Say what is to be found out."); }
QString StatementWords::notKept() { return tr("Not kept yet. What is lacking stands beside its field."); }

QString StatementWords::findingKept(const QString& person, const QString& place, const QString& day)
{
    if (place.isEmpty())
        return tr("Kept: what %1 found on the airframe on %2.", "person, day").arg(person, day);
    return tr("Kept: what %1 found on %2, %3.", "person, coupling, day").arg(person, place, day);
}

QString StatementWords::questionKept(const QString& person, const QString& place)
{
    if (place.isEmpty())
        return tr("Open now: what %1 asks about the whole airframe. Ctrl+6 shows it.").arg(person);
    return tr("Open now: what %1 asks about %2. Ctrl+6 shows it.", "person, coupling").arg(person, place);
}

QString StatementWords::leftUndone()
{
    return tr("A finding or a question is typed and not kept. It is lost when this file is left now.");
}

} // namespace rig
