#pragma once

#include "core/rigging/record_content.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// What a rigging record says when it is read afterwards, on the screen and on paper.
class RecordWords
{
    Q_DECLARE_TR_FUNCTIONS(RecordWords)

public:
    static QString title(const QString& day);
    static QString airframe(const QString& airframe, const QString& serial);
    static QString begun(const QString& when, const QString& leader);
    static QString recheck();
    static QString closed(const QString& how, const QString& when, const QString& first,
                          const QString& second);
    static QString notClosed();
    static QString temperature(int celsius);
    static QString note(const QString& note);
    // `readAt` is empty where nobody has noted it as read.
    static QString noteMet(const QString& note, const QString& readBy, const QString& readAt);
    static QString noLog();

    static QString notDone();
    static QString nothingNotDone();
    static QString item(const QString& item);

    // Couplings
    static QString overview();
    static QString couplings();
    static QString coupling();
    static QString readingThatStands();
    static QString stands();
    static QString verdict();
    static QString second();
    static QString first();
    static QString noReading();
    static QString noGap();
    static QString noGapHere(const QString& coupling);
    static QString nobody();
    static QString nothingHere();
    static QString step();
    static QString check(CheckKind kind);
    static QString notAskedOfSecond();
    static QString notAsked();
    static QString answer(const QString& answer, const QString& person, const QString& when);
    static QString beforeInterruption(const QString& answer);
    static QString answeredAgain(const QString& answer);
    static QString beforeHand(const QString& answer, const QString& coupling);

    // Readings
    static QString when();
    static QString who();
    static QString with();
    static QString reading();
    static QString asFirst(const QString& person);
    static QString asSecond(const QString& person);
    // Another reading takes its place.
    static QString struckThrough(const QString& by, const QString& when, const QString& reason);
    static QString struck(const QString& by, const QString& when, const QString& reason);
    static QString found(SeatState as); // where it is not locked
    static QString correction();
    static QString band(const QString& band, int readings);
    static QString noBand();
    static QString shownThen(const QString& verdict);
    static QString nothingShown();
    static QString thisRecordAlone(const QString& standing);
    static QString readingCaution();
    static QString interrupted(Turn turn, const QString& when, InterruptionReason reason);
    static QString changedOnPaper(Turn turn);

    // Questions
    static QString otherQuestions();
    static QString question();
    static QString asked();
    static QString outcome();
    static QString question(QuestionKind kind);
    static QString question(const Question& question); // of a surface what it was, where that is known
    static QString stillOpen();
    static QString found(const QString& found);
    static QString done(const QString& done);
    static QString decided(const QString& by, const QString& when);

    // Control check
    static QString controlCheck();
    static QString controlCaution();
    static QString noSurfaces();
    static QString notChecked();
    static QString calledAloud(const QString& call);
    static QString expected(const QString& call);
    static QString called(const QString& command);
    static QString seen(const QString& what, const QString& expected);
    static QString tried();
    static QString answerHead();
    static QString atSurface();
    static QString inCockpit();
    static QString check(SurfaceCheckKind kind);
    static QString measured();
    static QString figure();
    static QString fromManual();
    static QString measure(MeasureKind kind);
    static QString atDistance(const QString& figure, const QString& mm);
    static QString nominal(const QString& nominal, const QString& tolerance, const QString& page);
    static QString atMost(const QString& figure, const QString& page);
    static QString noFigure();

    // Season list and counts
    static QString lists();
    static QString counts();
    static QString stated();
    static QString tick(TickKind kind);
    static QString notStated();

    // On paper
    static QString byHand();
    static QString leaderSigns(const QString& name);
    static QString secondSigns(const QString& name);
    static QString findings();
    static QString fileName(const QString& registration, const QString& day);
};

} // namespace rig
