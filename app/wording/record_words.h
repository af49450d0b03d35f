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
    static QString title(const QString& day) { return tr("Rigging record, %1").arg(day); }
    static QString airframe(const QString& airframe, const QString& serial);
    static QString begun(const QString& when, const QString& leader);
    static QString recheck();
    static QString closed(const QString& how, const QString& when, const QString& first,
                          const QString& second);
    static QString notClosed();
    static QString note(const QString& note) { return tr("Note: %1").arg(note); }
    static QString noLog();

    static QString notDone() { return tr("Not done, or open at the close"); }
    static QString nothingNotDone();
    static QString item(const QString& item) { return tr("•  %1", "one of a list").arg(item); }

    // Couplings
    static QString overview() { return tr("Couplings at a glance"); }
    static QString couplings() { return tr("Each coupling"); }
    static QString coupling() { return tr("Coupling"); }
    static QString readingThatStands() { return tr("Reading that stands"); }
    static QString shownThen() { return tr("Shown then"); }
    static QString second() { return tr("Second person"); }
    static QString first() { return tr("First person"); }
    static QString noReading() { return tr("not read"); }
    static QString nobody() { return tr("nobody"); }
    static QString nothingHere() { return tr("Nothing was answered or read here."); }
    static QString step() { return tr("Looked at or tried"); }
    static QString check(CheckKind kind);
    static QString notAskedOfSecond() { return tr("not asked"); }
    static QString notAsked() { return tr("not answered"); }
    static QString answer(const QString& answer, const QString& person, const QString& when)
    {
        return tr("%1: %2, %3", "answer: person, time").arg(answer, person, when);
    }
    static QString beforeInterruption(const QString& answer)
    {
        return tr("%1 (before an interruption)").arg(answer);
    }
    static QString answeredAgain(const QString& answer)
    {
        return tr("%1 (answered again later)").arg(answer);
    }

    // Readings
    static QString when() { return tr("When"); }
    static QString who() { return tr("Measured by"); }
    static QString with() { return tr("With"); }
    static QString reading() { return tr("Reading"); }
    static QString asFirst(const QString& person) { return tr("%1, first").arg(person); }
    static QString asSecond(const QString& person) { return tr("%1, second person").arg(person); }
    static QString struck(const QString& by, const QString& when, const QString& reason);
    static QString partSeated() { return tr("found part-seated"); }
    static QString correction() { return tr("takes the place of the one struck through"); }
    static QString bandThen(const QString& band, int readings);
    static QString noBandThen() { return tr("there was no band"); }
    static QString nothingShown() { return tr("nothing was shown"); }
    static QString readingCaution();
    static QString interrupted(Turn turn, const QString& when, InterruptionReason reason);

    // Questions
    static QString otherQuestions() { return tr("Other questions"); }
    static QString question() { return tr("Question"); }
    static QString asked() { return tr("Asked"); }
    static QString outcome() { return tr("Found and done"); }
    static QString question(QuestionKind kind);
    static QString stillOpen() { return tr("open"); }
    static QString found(const QString& found) { return tr("Found: %1").arg(found); }
    static QString done(const QString& done) { return tr("Done: %1").arg(done); }
    static QString decided(const QString& by, const QString& when)
    {
        return tr("Decided by %1, %2", "person, moment").arg(by, when);
    }

    // Control check
    static QString controlCheck() { return tr("Control check"); }
    static QString controlCaution() { return tr("A joint that is part-seated can pass this check."); }
    static QString noSurfaces() { return tr("No surfaces were set up, so no control check is recorded."); }
    static QString notChecked() { return tr("Not checked."); }
    static QString calledAloud(const QString& call) { return tr("Called aloud: %1").arg(call); }
    static QString tried() { return tr("Tried"); }
    static QString answerHead() { return tr("Answer"); }
    static QString atSurface() { return tr("At the surface"); }
    static QString inCockpit() { return tr("In the cockpit"); }
    static QString check(SurfaceCheckKind kind);
    static QString measured() { return tr("Measured"); }
    static QString figure() { return tr("Figure"); }
    static QString fromManual() { return tr("From the manual"); }
    static QString measure(MeasureKind kind);
    static QString atDistance(const QString& figure, const QString& mm)
    {
        return tr("%1, read %2 mm from the hinge").arg(figure, mm);
    }
    static QString nominal(const QString& nominal, const QString& tolerance, const QString& page);
    static QString atMost(const QString& figure, const QString& page);
    static QString noFigure() { return tr("no figure entered"); }

    // Season list and counts
    static QString lists() { return tr("Counts, and the list for the season's first rigging"); }
    static QString counts() { return tr("Counts"); }
    static QString stated() { return tr("Stated by"); }
    static QString tick(TickKind kind);
    static QString notStated() { return tr("not stated"); }

    // On paper
    static QString byHand() { return tr("Signed by hand"); }
    static QString leaderSigns(const QString& name);
    static QString secondSigns(const QString& name);
    static QString findings();
    static QString fileName(const QString& registration, const QString& day);
};

} // namespace rig
