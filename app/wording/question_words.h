#pragma once

#include "core/rigging/question.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace rig {

// Sentences about questions: the line below the top bar, and the page that tells and closes them. None of
// them says that anything is in order.
class QuestionWords
{
    Q_DECLARE_TR_FUNCTIONS(QuestionWords)

public:
    // What is asked, in few words, as a title and in the middle of a sentence.
    static QString asked(QuestionKind kind, const QString& place);
    static QString askedSince(const QString& asked, const QString& day)
    {
        return tr("%1 since %2").arg(asked, day);
    }
    static QString count(int open) { return tr("%n open question(s)", nullptr, open); }

    // The line below the top bar: the longest first, each shorter one naming fewer questions.
    static QStringList barSentences(const QString& registration, const QStringList& asked,
                                    const QString& firstInShort);
    // While a second person works without seeing the first result.
    static QString barWhileBlind(const QString& registration, int open);
    static QString show() { return tr("Show the questions"); }
    static QString showWithKey() { return tr("Show the questions (Ctrl+6)"); }
    static QString leave() { return tr("Back  (Esc)"); }
    static QString leaveHint() { return tr("Back to the page before (Esc)"); }

    // The list
    static QString title() { return tr("Questions"); }
    static QString openAndClosed(int open, int closed);
    static QString none();
    static QString noAirframe() { return tr("This file knows no airframe yet. Begin in Set up (Ctrl+5)."); }
    static QString listKeys() { return tr("Up, Down: another question. Enter: close it. Esc: back."); }
    static QString withDetail(const QString& state, const QString& detail)
    {
        return tr("%1 · %2", "open or closed, about what").arg(state, detail);
    }
    static QString openSince(const QString& day) { return tr("open since %1").arg(day); }
    static QString closedOn(const QString& day, const QString& person);

    // One question
    static QString answered(const QString& step, Answer answer);
    static QString step(CheckKind kind);
    static QString step(SurfaceCheckKind kind);
    static QString outside(const QString& interval, const QString& person);
    static QString reading(const QString& interval, const QString& person);
    static QString disagree();
    static QString swapped();
    static QString inDoubt(int readings, const QString& gauge, const QString& day);
    static QString statedBy(const QString& person, const QString& moment);
    static QString inRecord(const QString& moment, bool isOpen);
    static QString closedBy(const QString& person, const QString& moment, const QString& enteredBy);
    static QString foundLabel() { return tr("What was found"); }
    static QString doneLabel() { return tr("What was done"); }
    static QString call(const QString& name, const QString& phone);
    static QString onlyEntitled();
    static QString neverByItself();
    // What closing it brings along, said before the button and after.
    static QString willStartAgain(const QString& coupling);
    static QString willTryAgain(const QString& surface);
    static QString gaugeStaysInDoubt();
    static QString closedNow() { return tr("The question is closed."); }
    static QString startedAgain(const QString& coupling);
    static QString tryAgain(const QString& surface);

    // The form
    static QString closeThis() { return tr("Close this question …  (Enter)"); }
    static QString decidedBy() { return tr("&Who decided"); }
    static QString choosePerson() { return tr("Choose a person"); }
    static QString notInList();
    static QString found() { return tr("What was &found"); }
    static QString foundHint() { return tr("Sleeve not at its stop, grit under the plunger …"); }
    static QString done() { return tr("What was &done"); }
    static QString doneHint() { return tr("Cleaned and connected anew; nothing, and why …"); }
    static QString enteredBy() { return tr("&Entered by, when it is somebody else"); }
    static QString nobodyNamed() { return tr("Nobody named"); }
    static QString save() { return tr("&Close the question  (Ctrl+Enter)"); }
    static QString putAside() { return tr("Not now  (Esc)"); }
    static QString typedStays() { return tr("What you typed stays here until this file is shut."); }
    static QString personMissing();
    static QString foundMissing() { return tr("Say what was found, also when nothing was."); }
    static QString doneMissing() { return tr("Say what was done, also when nothing was, and why."); }
    static QString notClosed() { return tr("Not closed. What you typed is still here."); }
    static QString alreadyClosed();

private:
    static QString openOn(const QString& registration, int open);
};

} // namespace rig
