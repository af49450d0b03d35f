#include "app/wording/question_words.h"

namespace rig {

QString QuestionWords::asked(QuestionKind kind, const QString& place)
{
    switch (kind) {
    case QuestionKind::OutsideReading:
        return tr("%1, outside its band").arg(place);
    case QuestionKind::AnsweredNo:
        return tr("%1, answered “no”").arg(place);
    case QuestionKind::CannotSee:
        return tr("%1, could not be seen").arg(place);
    case QuestionKind::ReadingsDisagree:
        return tr("%1, two readings disagree").arg(place);
    case QuestionKind::SidesSwapped:
        return tr("%1, left and right look swapped").arg(place);
    case QuestionKind::SurfaceDoubt:
        return tr("%1, wrong or not seen in the control check").arg(place);
    case QuestionKind::BandInDoubt:
        return tr("%1, its band is in doubt").arg(place);
    case QuestionKind::ShownPartSeated:
        return tr("%1, shown part-seated on purpose").arg(place);
    case QuestionKind::Asked:
        return tr("%1, a question in words").arg(place);
    case QuestionKind::GaugeQuarantined:
        break;
    }
    return tr("Gauge %1, readings in doubt").arg(place);
}

QString QuestionWords::asked(const Question& question, const QString& place)
{
    if (question.isWrongMovement())
        return question.surfaceSeen == Movement::Nothing
                   ? tr("%1, did not move in the control check").arg(place)
                   : tr("%1, moved the wrong way in the control check").arg(place);
    if (question.kind != QuestionKind::SurfaceDoubt || !question.surfaceAnswer)
        return asked(question.kind, place);
    return question.isStop() ? tr("%1, answered “no” in the control check").arg(place)
                             : tr("%1, not seen in the control check").arg(place);
}

QString QuestionWords::leftUndone()
{
    return tr(
        "What was found or done is typed at a question and not saved. It is lost when this file is left "
        "now.");
}

QString QuestionWords::askedSince(const QString& asked, const QString& day)
{
    return tr("%1 since %2").arg(asked, day);
}

QStringList QuestionWords::barSentences(const QString& registration, const QStringList& asked,
                                        const QString& firstInShort)
{
    const int count = static_cast<int>(asked.size());
    const auto naming = [&](const QString& names, int named) {
        return named < count
                   ? tr("%n open question(s) on %1: %2; and %3 more.", "which, how many others", count)
                         .arg(registration, names)
                         .arg(count - named)
                   : tr("%n open question(s) on %1: %2.", "which", count).arg(registration, names);
    };
    QStringList sentences;
    for (int named = count; named > 0; --named)
        sentences << naming(asked.mid(0, named).join(tr("; ", "between questions")), named);
    sentences << naming(firstInShort, 1)
              << tr("%n open question(s) on %1.", nullptr, count).arg(registration);
    return sentences;
}

QString QuestionWords::show() { return tr("Show the questions"); }
QString QuestionWords::showWithKey() { return tr("Show the questions (Ctrl+6)"); }
QString QuestionWords::leave() { return tr("Back  (Esc)"); }
QString QuestionWords::leaveHint() { return tr("Back to the page before (Esc)"); }

QString QuestionWords::title() { return tr("Questions"); }

QString QuestionWords::openAndClosed(int open, int closed)
{
    return tr("%1 open, %2 closed").arg(open).arg(closed);
}

QString QuestionWords::none()
{
    return tr("No question was ever asked on this airframe. An outside reading, a “no”, a “cannot see”, two "
              "readings that disagree or a gauge in doubt open one.");
}

QString QuestionWords::noAirframe()
{
    return tr("This file knows no airframe yet. Begin in Set up (Ctrl+5).");
}

QString QuestionWords::listKeys() { return tr("Up, Down: another question. Enter: close it. Esc: back."); }

QString QuestionWords::withDetail(const QString& state, const QString& detail)
{
    return tr("%1 · %2", "open or closed, about what").arg(state, detail);
}

QString QuestionWords::openSince(const QString& day) { return tr("open since %1").arg(day); }

QString QuestionWords::closedOn(const QString& day, const QString& person)
{
    return tr("closed %1 by %2").arg(day, person);
}

QString QuestionWords::answered(const QString& step, Answer answer)
{
    switch (answer) {
    case Answer::Yes:
        return tr("%1: answered “yes”.").arg(step);
    case Answer::No:
        return tr("%1: answered “no”.").arg(step);
    case Answer::Felt:
        return tr("%1: answered “felt, not seen”.").arg(step);
    case Answer::CannotSee:
        break;
    }
    return tr("%1: answered “cannot see”.").arg(step);
}

QString QuestionWords::outside(const QString& interval, const QString& person)
{
    return tr("%1, read by %2, lay outside this coupling's band.").arg(interval, person);
}

QString QuestionWords::withText(const QString& asked, const QString& text)
{
    return tr("%1: “%2”", "somebody asks since a day: what").arg(asked, text);
}

QString QuestionWords::text(const QString& text) { return tr("“%1”", "what somebody asks").arg(text); }

QString QuestionWords::reading(const QString& interval, const QString& person)
{
    return tr("%1, read by %2.").arg(interval, person);
}

QString QuestionWords::inspected(const QString& first, const QString& second, const QString& moment)
{
    return tr("%1 and %2 have gone through the whole joint since, %3.", "two persons, moment")
        .arg(first, second, moment);
}

QString QuestionWords::notInspected()
{
    return tr("It was shown part-seated in Set up, and nobody has gone through the whole joint since.");
}

QString QuestionWords::inspectFirst(const QString& coupling)
{
    return tr("%1 was part-seated on purpose in Set up. Connect it, then do the whole check in Rigged today "
              "(Ctrl+1): look, reading, pull, securing, second person. After that a person entitled to "
              "decide closes "
              "this.")
        .arg(coupling);
}

QString QuestionWords::disagree()
{
    return tr("The two persons' readings differ by more than measuring explains. Both stand.");
}

QString QuestionWords::swapped()
{
    return tr("The left reading fits the right coupling's band and not its own, and the other way round.");
}

QString QuestionWords::inDoubt(int readings, const QString& gauge, const QString& day)
{
    return tr("%n reading(s) taken with %1 from %2 on cannot be judged by it.", nullptr, readings)
        .arg(gauge, day);
}

QString QuestionWords::statedBy(const QString& person, const QString& moment)
{
    return person.isEmpty() ? tr("Asked on %1; nobody was named.").arg(moment)
                            : tr("Stated by %1 on %2.").arg(person, moment);
}

QString QuestionWords::statedOnPaper(const QString& person, const QString& day, const QString& typed)
{
    return person.isEmpty()
               ? tr("It stands on the paper of %1, typed in on %2; nobody was named.").arg(day, typed)
               : tr("Stated by %1 on the paper of %2, typed in on %3.").arg(person, day, typed);
}

QString QuestionWords::inRecord(const QString& moment, bool isOpen)
{
    return isOpen ? tr("In the rigging record begun %1, which is still open.").arg(moment)
                  : tr("In the rigging record begun %1.").arg(moment);
}

QString QuestionWords::closedBy(const QString& person, const QString& moment, const QString& enteredBy)
{
    return enteredBy.isEmpty() || enteredBy == person
               ? tr("Closed on %2: decided by %1.").arg(person, moment)
               : tr("Closed on %2: decided by %1, entered by %3.").arg(person, moment, enteredBy);
}

QString QuestionWords::closedOnPaper(const QString& person, const QString& moment, const QString& typed,
                                     const QString& copiedBy)
{
    return copiedBy.isEmpty()
               ? tr("Closed by %1 on the paper of %2, typed in on %3.").arg(person, moment, typed)
               : tr("Closed by %1 on the paper of %2, copied on %3 by %4.")
                     .arg(person, moment, typed, copiedBy);
}

QString QuestionWords::ownFinding(const QString& person)
{
    return tr("%1 had found this too: nobody else decided what it was.").arg(person);
}

QString QuestionWords::foundLabel() { return tr("What was found"); }
QString QuestionWords::doneLabel() { return tr("What was done"); }

QString QuestionWords::called(const QString& check, const QString& movement)
{
    return tr("“%1”: what was called was “%2”, which is not what was expected.", "check, movement")
        .arg(check, movement);
}

QString QuestionWords::call(const QString& name, const QString& phone)
{
    if (name.isEmpty() && phone.isEmpty())
        return tr("Stop, leave it as it is, and call a person entitled to decide. Whom to call is not set up "
                  "yet: name the person in Set up (Ctrl+5).");
    if (name.isEmpty() || phone.isEmpty())
        return tr("Stop, leave it as it is, call %1.").arg(name + phone);
    return tr("Stop, leave it as it is, call %1 (%2).", "name, telephone").arg(name, phone);
}

QString QuestionWords::onlyWhenFound()
{
    return tr("Only when the cause is found: disconnect, clean, connect, look, pull, read.");
}

QString QuestionWords::onlyEntitled() { return tr("Only a person entitled to decide closes a question."); }
QString QuestionWords::neverByItself() { return tr("A later reading inside the band never closes it."); }

QString QuestionWords::willStartAgain(const QString& coupling)
{
    return tr("Once it is closed, %1 starts at the look in the record that is open, for both persons: "
              "somebody "
              "has been at it.")
        .arg(coupling);
}

QString QuestionWords::willTryAgain(const QString& surface)
{
    return tr("After closing it, answer the control check of %1 again: what was answered “no” or could not "
              "be "
              "seen, and after a “no” all of it. Where it moved otherwise than expected, every joint of its "
              "circuit starts at the look again, for both persons.")
        .arg(surface);
}

QString QuestionWords::gaugeStaysInDoubt()
{
    return tr("Closing it does not lift the doubt from the gauge: only a later check that finds it usable "
              "does, in Set up (Ctrl+5).");
}

QString QuestionWords::closedNow() { return tr("The question is closed."); }

QString QuestionWords::startedAgain(const QString& coupling)
{
    return tr("The question is closed. %1 starts at the look in Rigged today (Ctrl+1).").arg(coupling);
}

QString QuestionWords::tryAgain(const QString& surface)
{
    return tr("The question is closed. Answer the control check of %1 again in Rigged today (Ctrl+1).")
        .arg(surface);
}

QString QuestionWords::closeThis() { return tr("Close this question …  (Enter)"); }
QString QuestionWords::decidedBy() { return tr("&Who decided"); }
QString QuestionWords::choosePerson() { return tr("Choose a person"); }

QString QuestionWords::notInList()
{
    return tr("Not in the list? Add the person in Set up (Ctrl+5). What you typed stays.");
}

QString QuestionWords::found() { return tr("What was &found"); }
QString QuestionWords::foundHint() { return tr("Sleeve not at its stop, grit under the plunger …"); }
QString QuestionWords::done() { return tr("What was &done"); }
QString QuestionWords::doneHint()
{
    return tr("Cleaned, connected, looked at, pulled, read; nothing, and why …");
}
QString QuestionWords::enteredBy() { return tr("&Entered by, when it is somebody else"); }
QString QuestionWords::nobodyNamed() { return tr("Nobody named"); }
QString QuestionWords::save() { return tr("&Close the question  (Ctrl+Enter)"); }
QString QuestionWords::putAside() { return tr("Not now  (Esc)"); }
QString QuestionWords::typedStays() { return tr("What you typed stays here until this file is shut."); }
QString QuestionWords::personMissing() { return tr("Choose who decided. Nobody is filled in for you."); }
QString QuestionWords::foundMissing() { return tr("Say what was found, also when nothing was."); }
QString QuestionWords::doneMissing() { return tr("Say what was done, also when nothing was, and why."); }
QString QuestionWords::notClosed() { return tr("Not closed. What you typed is still here."); }

QString QuestionWords::alreadyClosed()
{
    return tr(
        "Somebody has closed this question meanwhile, so nothing was kept. What you typed is still here.");
}

} // namespace rig
