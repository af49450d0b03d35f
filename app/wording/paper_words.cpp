#include "app/wording/paper_words.h"

#include "app/wording/day_words.h"
#include "app/wording/entry_words.h"
#include "app/wording/formats.h"
#include "app/wording/sentence_parts.h"
#include "core/review/layoffs.h"

namespace rig {

QString PaperWords::title() { return tr("A rigging on paper"); }

QString PaperWords::fileName(const QString& registration)
{
    return tr("%1-sheet.pdf", "a file's name: registration").arg(SentenceParts::inFileName(registration));
}

QString PaperWords::stop(const QString& callName, const QString& callPhone)
{
    if (callName.isEmpty() && callPhone.isEmpty())
        return tr("A “no”, or a surface that does nothing or moves otherwise than expected, is a stop: stop, "
                  "leave everything as it is, and call the person entitled to decide.");
    if (callName.isEmpty() || callPhone.isEmpty())
        return tr("A “no”, or a surface that does nothing or moves otherwise than expected, is a stop: stop, "
                  "leave everything as it is, and call %1.")
            .arg(callName + callPhone);
    return tr("A “no”, or a surface that does nothing or moves otherwise than expected, is a stop: stop, "
              "leave everything as it is, and call %1, %2.",
              "name, telephone")
        .arg(callName, callPhone);
}

QString PaperWords::judgesNothing()
{
    return tr(
        "This sheet judges no reading. Until it is typed in, nobody knows whether a gap lies outside its "
        "band, so type it in before the flight. Where you cannot, that sign is missing: call before the "
        "flight. "
        "Outside is a stop as well: leave the joint as it is and call.");
}

QString PaperWords::replacesNoManual()
{
    return tr("It replaces no manual, no inspection and no entry in a log. Type it in with “Enter from "
              "paper”, under the day it was filled in and with both names.");
}

QString PaperWords::foot(const QString& callName, const QString& callPhone)
{
    return tr("%1 Not an aircraft record. Manuals and directives prevail.", "the sentence of the stop")
        .arg(stop(callName, callPhone));
}

QString PaperWords::when() { return tr("When"); }
QString PaperWords::day() { return tr("Day"); }
QString PaperWords::begunAt() { return tr("Begun at"); }
QString PaperWords::before() { return tr("Since the last rigging"); }
QString PaperWords::takenApart() { return tr("Taken apart"); }
QString PaperWords::stoodRigged() { return tr("Stood rigged"); }
QString PaperWords::firstPerson() { return tr("First person, who leads"); }
QString PaperWords::secondPerson() { return tr("Second person"); }
QString PaperWords::connectedBy() { return tr("Who connected the joints"); }
QString PaperWords::left() { return tr("Left"); }
QString PaperWords::right() { return tr("Right"); }
QString PaperWords::tail() { return tr("Tail and middle"); }
QString PaperWords::gauge() { return tr("Leaf set or gauge"); }
QString PaperWords::anotherGauge() { return tr("Another"); }

QString PaperWords::firstHow()
{
    return tr("One joint at a time: look, measure, pull, secure. Tick the thickest leaf that enters freely "
              "and whose next one refuses; write the two sizes where there is no box. No leaf goes in before "
              "the look is done.");
}

QString PaperWords::secondHow()
{
    return tr("Your own look and your own pull, by somebody who connected and measured none of these "
              "joints. Do not look at the first person’s pages. You may measure too; it is not asked.");
}

QString PaperWords::plan()
{
    return tr("From above, nose up. The numbers are those of the joints on this sheet.");
}

QString PaperWords::numbered(int number, const QString& coupling)
{
    return tr("%1  %2", "number, coupling").arg(number).arg(coupling);
}

QString PaperWords::gap(GaugeKind kind, Turn turn)
{
    const bool isFirst = turn == Turn::First;
    switch (kind) {
    case GaugeKind::Leaves:
        return isFirst ? tr("Thickest leaf that enters") : tr("Thickest leaf that enters, if you measure");
    case GaugeKind::Pins:
        return isFirst ? tr("Thickest pin that enters") : tr("Thickest pin that enters, if you measure");
    case GaugeKind::GoNoGo:
    case GaugeKind::Taper:
        break;
    }
    return isFirst ? tr("Gap in mm") : tr("Gap in mm, if you measure");
}

QString PaperWords::leaf(const GaugeStep& step)
{
    const Formats formats;
    if (!step.isStacked())
        return formats.gap(step.size);
    return tr("%1 + %2", "two leaves stacked")
        .arg(formats.gap(step.size - step.second), formats.gap(step.second));
}

QString PaperWords::enters() { return tr("Enters"); }
QString PaperWords::refuses() { return tr("Refuses"); }
QString PaperWords::valueRead() { return tr("Value read"); }

QString PaperWords::controlHow()
{
    return tr(
        "The control check comes last of all: whoever touches a joint afterwards does the check of its "
        "surfaces again. Whoever stands at the surface says aloud what it does, and that is written down; "
        "only then is it compared with the flight manual. A surface that does nothing, or moves otherwise "
        "than expected, is a stop for the whole glider.");
}

QString PaperWords::whoChecks() { return tr("Who checks"); }

QString PaperWords::noSurfaces()
{
    return tr("No surfaces are set up. Write under the notes what was moved and what it did.");
}

QString PaperWords::oneWay() { return tr("One way"); }
QString PaperWords::otherWay() { return tr("The other way"); }
QString PaperWords::moved() { return tr("Control moved"); }
QString PaperWords::itDoes() { return tr("Surface does"); }

QString PaperWords::part() { return tr("On paper"); }
QString PaperWords::partDetail() { return tr("a sheet, and typing it in"); }

QString PaperWords::why()
{
    return tr("For a rigging without the laptop: a sheet with everything that is asked, to be filled in at "
              "the glider and typed in afterwards. No band and no earlier reading stands on it, so that "
              "nobody writes what is expected.");
}

QString PaperWords::paper() { return tr("&Paper"); }
QString PaperWords::a4() { return tr("A4"); }
QString PaperWords::letter() { return tr("Letter"); }
QString PaperWords::a5() { return tr("A5"); }
QString PaperWords::chooseGauge() { return tr("&Leaf set or gauge"); }
QString PaperWords::noGauge() { return tr("None: sizes are written by hand"); }

QString PaperWords::gaugeHint()
{
    return tr("The sheet offers as many leaves of this set at every coupling, around where it reads and "
              "never with the expected one in a place that tells.");
}

QString PaperWords::save() { return tr("&Save the sheet as PDF …"); }
QString PaperWords::pdfFiles() { return tr("PDF files (*.pdf)"); }

QString PaperWords::keyEnter() { return tr("P", "key for enter from paper"); }
QString PaperWords::enter() { return tr("Enter from paper …  (%1)").arg(keyEnter()); }
QString PaperWords::enterInSetUp() { return tr("&Enter from paper …"); }

QString PaperWords::enterWhy()
{
    return tr("Types in a rigging that was written down by hand, under the day on which it was done.");
}

QString PaperWords::enterTitle() { return tr("Enter from paper"); }

QString PaperWords::enterSentence()
{
    return tr("The rigging is kept under the day and the names that stand on the sheet, marked as entered "
              "later, and judged as of that day. Type what was written, also where it was “no”.");
}

QString PaperWords::dayOnPaper() { return tr("&Day on the sheet"); }
QString PaperWords::timeOnPaper() { return tr("&Begun at"); }
QString PaperWords::timeHint() { return tr("09:30"); }
QString PaperWords::firstOnPaper() { return tr("&First person, who led"); }
QString PaperWords::secondOnPaper() { return tr("&Second person"); }
QString PaperWords::typist() { return tr("&Who types it in"); }
QString PaperWords::takenApartKey() { return tr("&Taken apart"); }
QString PaperWords::stoodRiggedKey() { return tr("Stood &rigged, gone through again"); }
QString PaperWords::beginToType() { return tr("Begin to type  (Enter)"); }
QString PaperWords::back() { return tr("Back  (Esc)"); }

QString PaperWords::dayMissing()
{
    return tr("Type the day that stands on the sheet, like %1.").arg(DayWords::example());
}

QString PaperWords::noTime(const QString& typed)
{
    return tr("“%1” is no time of day. Write it as 09:30.").arg(typed);
}

QString PaperWords::timeMissing()
{
    return tr(
        "Write when it began, as 09:30: what was done that day is put in order by it. Where the sheet does "
        "not say, ask who rigged, and note at the close that the time is from memory.");
}

QString PaperWords::dayToCome()
{
    return tr("That is still to come. Type the day and the time at which the rigging was done.");
}

QString PaperWords::beforeFirstFitting(const QString& day)
{
    return tr("Nothing is known of this airframe so early: its first fitting began on %1. Look at the day "
              "on the sheet.")
        .arg(day);
}

QString PaperWords::riggedThatDay(const QString& when, const QString& leader)
{
    return tr("A rigging of that day stands here already, begun %1 and led by %2. If this sheet is the same "
              "rigging, it is not typed in a second time.",
              "moment, person")
        .arg(when, leader);
}

QString PaperWords::isAnother() { return tr("This sheet is &another rigging of that day"); }
QString PaperWords::firstMissing() { return tr("Choose whose name stands as first person."); }
QString PaperWords::secondMissing() { return tr("Choose whose name stands as second person."); }
QString PaperWords::twoPeople() { return tr("First and second person are two people."); }
QString PaperWords::typistMissing() { return tr("Choose who types it in now."); }
QString PaperWords::beforeMissing() { return tr("Say whether it had been taken apart since the last one."); }

QString PaperWords::riggingIsOpen()
{
    return tr("A rigging is being recorded here. Close it first, then enter the one from paper.");
}

QString PaperWords::headIsNotKept()
{
    return tr(
        "The rigging from paper is not begun yet. If this file is left now, what was typed for the head of "
        "the sheet is lost. Begin the rigging first to keep it.");
}

QString PaperWords::isHalfTyped(const QString& day)
{
    return tr("The rigging of %1 is not typed in to its end. What is typed is kept, and the next start goes "
              "on with it.")
        .arg(day);
}

QString PaperWords::banner(const QString& day) { return tr("Entered from paper: %1").arg(day); }

QString PaperWords::bannerOwn(const QString& day)
{
    return tr("Entered from paper: %1. The second person types their own column.").arg(day);
}

QString PaperWords::bannerCopied(const QString& day, const QString& typist)
{
    return tr("Entered from paper: %1. The second person’s column is marked as copied by %2.", "day, person")
        .arg(day, typist);
}

QString PaperWords::keySecondTypes() { return tr("F8", "key for the second person types"); }

QString PaperWords::secondTypes()
{
    return tr("The second person types their own column  (%1)").arg(keySecondTypes());
}

QString PaperWords::enteredLater(const QString& by, const QString& when)
{
    return tr("Entered later from paper by %1, %2. What was done stands under the day on the paper.",
              "person, moment")
        .arg(by, when);
}

QString PaperWords::copied(const QString& what, const QString& by)
{
    return tr("%1, copied from paper by %2", "answer or person, person").arg(what, by);
}

QString PaperWords::done() { return tr("Done"); }
QString PaperWords::by() { return tr("by"); }
QString PaperWords::season()
{
    return tr("Before the first coupling, at the first rigging of a year or when nothing was rigged or "
              "rechecked for "
              "%n week(s)",
              nullptr, kLayoffWeeks);
}
QString PaperWords::notes() { return tr("Notes: interruptions, what was felt, what was read again:"); }

} // namespace rig
