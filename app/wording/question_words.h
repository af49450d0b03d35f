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
    // Of a surface what it was, where that is known.
    static QString asked(const Question& question, const QString& place);
    static QString withText(const QString& asked, const QString& text);
    static QString text(const QString& text);
    static QString askedSince(const QString& asked, const QString& day);

    // The line below the top bar: the longest first, each shorter one naming fewer questions.
    static QStringList barSentences(const QString& registration, const QStringList& asked,
                                    const QString& firstInShort);
    static QString show();
    static QString showWithKey();
    static QString leave();
    static QString leaveHint();

    // The list
    static QString title();
    // Asked before what is typed at a question is left.
    static QString leftUndone();
    static QString openAndClosed(int open, int closed);
    static QString none();
    static QString noAirframe();
    static QString listKeys();
    static QString withDetail(const QString& state, const QString& detail);
    static QString openSince(const QString& day);
    static QString closedOn(const QString& day, const QString& person);

    // One question
    static QString answered(const QString& step, Answer answer);
    static QString outside(const QString& interval, const QString& person);
    static QString reading(const QString& interval, const QString& person);
    static QString inspected(const QString& first, const QString& second, const QString& moment);
    static QString notInspected();
    static QString inspectFirst(const QString& coupling);
    static QString disagree();
    static QString swapped();
    static QString inDoubt(int readings, const QString& gauge, const QString& day);
    static QString statedBy(const QString& person, const QString& moment);
    // The days of the rigging and of the typing.
    static QString statedOnPaper(const QString& person, const QString& day, const QString& typed);
    static QString inRecord(const QString& moment, bool isOpen);
    static QString closedBy(const QString& person, const QString& moment, const QString& enteredBy);
    // `copiedBy` is empty where that person typed it in themself.
    static QString closedOnPaper(const QString& person, const QString& moment, const QString& typed,
                                 const QString& copiedBy);
    // Where it was decided, or is about to be, by whoever had found it.
    static QString ownFinding(const QString& person);
    static QString foundLabel();
    static QString doneLabel();
    static QString called(const QString& check, const QString& movement);
    static QString call(const QString& name, const QString& phone);
    // What may be done to the joint, and when; everywhere the same order.
    static QString onlyWhenFound();
    static QString onlyEntitled();
    static QString neverByItself();
    // What closing it brings along, said before the button and after.
    static QString willStartAgain(const QString& coupling);
    static QString willTryAgain(const QString& surface);
    static QString gaugeStaysInDoubt();
    static QString closedNow();
    static QString startedAgain(const QString& coupling);
    static QString tryAgain(const QString& surface);

    // The form
    static QString closeThis();
    static QString decidedBy();
    static QString choosePerson();
    static QString notInList();
    static QString found();
    static QString foundHint();
    static QString done();
    static QString doneHint();
    static QString enteredBy();
    static QString nobodyNamed();
    static QString save();
    static QString putAside();
    static QString typedStays();
    static QString personMissing();
    static QString foundMissing();
    static QString doneMissing();
    static QString notClosed();
    static QString alreadyClosed();
};

} // namespace rig
