#include "app/wording/window_words.h"

#include "app/wording/connected_words.h"
#include "app/wording/control_words.h"
#include "app/wording/joint_play_words.h"
#include "app/wording/paper_words.h"
#include "app/wording/photo_words.h"
#include "app/wording/practice_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/summary_words.h"
#include "app/wording/verdict_words.h"

namespace rig {

QString WindowWords::programName() { return QStringLiteral("Rigband"); }
QString WindowWords::riggedToday() { return tr("Rigged today"); }
QString WindowWords::trends() { return tr("Trends"); }
QString WindowWords::beforeTheAnnual() { return tr("Before the annual"); }
QString WindowWords::knowThisAirframe() { return tr("Know this airframe"); }
QString WindowWords::setUp() { return tr("Set up"); }
QString WindowWords::riggedShort() { return tr("Rigged", "short, of: Rigged today"); }
QString WindowWords::annualShort() { return tr("Annual", "short, of: Before the annual"); }
QString WindowWords::knowShort() { return tr("Know", "short, of: Know this airframe"); }

QString WindowWords::momentWithKey(const QString& moment, int number)
{
    return tr("%1 (Ctrl+%2)").arg(moment).arg(number);
}

QString WindowWords::noAirframe() { return tr("No airframe yet"); }
QString WindowWords::chooseAirframe() { return tr("Choose the airframe (Ctrl+K)"); }

QString WindowWords::airframeChoice(const QString& registration, const QString& type)
{
    return type.isEmpty() ? registration : tr("%1   %2", "registration, type").arg(registration, type);
}

QString WindowWords::openRecordMark(const QString& choice) { return tr("%1 · record open").arg(choice); }

QString WindowWords::openQuestionsMark(const QString& choice, int open)
{
    return tr("%1 · %n open question(s)", nullptr, open).arg(choice);
}

QString WindowWords::title(const QString& registration, const QString& file)
{
    return registration.isEmpty() ? tr("%1 – Rigband").arg(file)
                                  : tr("%1 – %2 – Rigband").arg(registration, file);
}

QString WindowWords::demoTitle() { return tr("demonstration copy, every figure invented"); }

QString WindowWords::readOnlyNote(const QString& file)
{
    return tr("%1 can only be read: the file or its folder does not allow writing. Copy it to a "
              "folder of your own to enter readings.")
        .arg(file);
}

QString WindowWords::otherHangs(const QString& file)
{
    return tr("Another window that has %1 open does not answer, so it is opened here as well. What was "
              "typed there and not yet saved stands only there.")
        .arg(file);
}

QString WindowWords::noCopyToday(const QString& file)
{
    return tr("No copy of %1 could be kept beside it today. What you enter is saved all the same; copy "
              "the file to another place yourself.")
        .arg(file);
}

QString WindowWords::fileMenu() { return tr("File"); }
QString WindowWords::newFile() { return tr("New file …"); }
QString WindowWords::openFile() { return tr("Open a file …"); }
QString WindowWords::openDemo() { return tr("Open a demonstration copy"); }
QString WindowWords::largerText() { return tr("Larger text"); }
QString WindowWords::smallerText() { return tr("Smaller text"); }
QString WindowWords::colours() { return tr("Colours"); }
QString WindowWords::lightColours() { return tr("Light colours"); }
QString WindowWords::darkColours() { return tr("Dark colours"); }
QString WindowWords::sunColours() { return tr("Colours for sunlight"); }
QString WindowWords::nextColours() { return tr("The next colours"); }
QString WindowWords::keys() { return tr("Keys …"); }
QString WindowWords::quit() { return tr("Quit"); }
QString WindowWords::closeTitle() { return tr("Close Rigband"); }
QString WindowWords::closeAllTheSame() { return tr("Close Rigband all the same"); }
QString WindowWords::dismiss() { return tr("Close this message"); }
QString WindowWords::fileFilter() { return tr("Rigband files (*.rigband)"); }

QString WindowWords::welcomeTitle() { return tr("Rigband remembers each coupling’s locked gap"); }

QString WindowWords::welcomeSentence()
{
    return tr("Readings by feeler leaf become each coupling’s own band. Every later reading is judged "
              "against it: "
              "one sign beside the look, the pull, the second person and the control check.");
}

QString WindowWords::welcomeLast(const QString& file)
{
    return tr("Open %1", "file, the last one").arg(file);
}
QString WindowWords::welcomeFolder(const QString& folder) { return tr("Opened last, in %1").arg(folder); }
QString WindowWords::welcomeNew() { return tr("Begin a new file for my airframe"); }
QString WindowWords::welcomeOpen() { return tr("Open a file I have"); }
QString WindowWords::welcomeDemo() { return tr("Look at the demonstration first"); }

QString WindowWords::welcomeCaution()
{
    return tr("A band is a coupling’s own past, never a limit. Manuals, directives, local rules and persons "
              "entitled to decide prevail.");
}

QString WindowWords::commandLine()
{
    return tr("Remembers the locked gap of each control coupling and judges every reading against that "
              "coupling’s own past.\n"
              "\n"
              "Ends with 0 when its window was closed, with 2 when something on the command line is wrong.");
}

QString WindowWords::commandFile() { return tr("The .rigband file to open."); }
QString WindowWords::commandDemo() { return tr("Open a fresh copy of the demonstration."); }
QString WindowWords::commandDark() { return tr("Dark colours."); }
QString WindowWords::commandSun() { return tr("Colours for sunlight, also where --dark is given."); }
QString WindowWords::commandText() { return tr("Text size in percent, 100 to 200."); }

QString WindowWords::commandUnknown(const QString& option)
{
    return tr("There is no option “%1”. rigband --help lists those there are.").arg(option);
}

QString WindowWords::commandNoValue()
{
    return tr("An option lacks what belongs behind it, or has something behind it that it does not take. "
              "rigband --help tells how each is typed.");
}

QString WindowWords::commandNoSize(const QString& typed)
{
    return tr("“%1” is no text size. Type a whole number from 100 to 200 behind --text.").arg(typed);
}

QString WindowWords::commandOneFile()
{
    return tr("Name one file to open, or type --demo; not more than one of these.");
}

QString WindowWords::keysText()
{
    return QStringList{keysEverywhere(), keysOfRiggedToday(), keysOfOtherPages(), keysOfLearning()}.join(
        QStringLiteral("\n\n"));
}

QString WindowWords::keysEverywhere()
{
    return tr(
        "Everywhere\n"
        "Ctrl+1 to Ctrl+5: the five pages. Ctrl+6: the open questions.\n"
        "Ctrl+7: what was changed by hand. Ctrl+8: what two laptops say differently. Ctrl+I: take in another "
        "file.\n"
        "Ctrl+Y, Ctrl+D: copy or put away what was typed and not saved.\n"
        "Ctrl+9: the copies of this file. Ctrl+B: bring one back. Ctrl+W: from a copy back to the file.\n"
        "Ctrl+R: read what can be read of a damaged file into a new one.\n"
        "Ctrl+K: choose the airframe.\n"
        "Ctrl+N, Ctrl+O: new file, open a file. Ctrl+Q: quit.\n"
        "Ctrl+Shift+S: save a copy of the file. Ctrl+Shift+F: show its folder. Ctrl+F1: about Rigband.\n"
        "Ctrl++ and Ctrl+-: text size. F9: light, dark, sunlight colours. F1: this list. Shift+F1: the "
        "manual.");
}

QString WindowWords::keysOfRiggedToday()
{
    const auto keyed = [](const QString& sentence, const QStringList& keys) {
        QString told = sentence;
        for (const QString& key : keys)
            told = told.arg(key);
        return told;
    };
    return QStringList{
        tr("Rigged today"),
        keyed(
            tr("At the start: %1: the last record. %2: I have read the notes. %3: from paper. Enter: start."),
            {SummaryWords::keyLast(), RiggedWords::keyNoteRead(), PaperWords::keyEnter()}),
        keyed(tr("Who connected: digits: a name. %1: not known. Enter: next side."),
              {ConnectedWords::keyNotKnown()}),
        keyed(tr("%1: who looks and measures. %2: the leaf set or gauge. %3: the photo, large."),
              {RiggedWords::keyPerson(), RiggedWords::keyGauge(), PhotoWords::keyPhoto()}),
        keyed(tr("%1: yes. %2: no. %3: cannot see. %4: felt, not seen."),
              {RiggedWords::keyYes(), RiggedWords::keyNo(), RiggedWords::keyCannotSee(),
               RiggedWords::keyFelt()}),
        tr("Digits with point or comma, then Enter: a reading."),
        keyed(tr("%1: measure again. %2: wrong leaf. %3: strike a reading. %4: joint play. %5: the look. %6: "
                 "more about the verdict."),
              {RiggedWords::keyMeasureAgain(), RiggedWords::keyCorrect(), RiggedWords::keyStrike(),
               JointPlayWords::key(), RiggedWords::keyLook(), VerdictWords::keyMore()}),
        keyed(tr("%1: second person. %2: the second person types their own column. Enter: next, or what has "
                 "the "
                 "focus."),
              {RiggedWords::keySecondPerson(), PaperWords::keySecondTypes()}),
        keyed(tr("Control check: %1: who is at the surface. %2: who is in the cockpit. Arrows: which way it "
                 "moved. %3: it does nothing. %4, %5, %6: a figure."),
              {ControlWords::keyAtSurface(), ControlWords::keyInCockpit(), ControlWords::keyNothing(),
               ControlWords::keyPlay(), ControlWords::keyUp(), ControlWords::keyDown()}),
        tr("Where a reason is asked: Alt+1, Alt+2 …: an offered one."),
        tr("Page Up, Page Down: another coupling. Esc: interrupt."),
        keyed(tr("A closed record: %1: as PDF. %2: back."),
              {SummaryWords::keyPrint(), SummaryWords::keyBack()})}
        .join(QLatin1Char('\n'));
}

QString WindowWords::keysOfLearning()
{
    return QStringList{
        tr("Know this airframe"),
        tr("Alt+O: who learns. Alt and the underlined letter: a part. Up, Down: another coupling. On the "
           "plan arrows: the "
           "nearest one."),
        tr("The joint cut open: Left, Right, Page Up, Page Down: the ball. Home, End: caught, home."),
        tr("S: sleeve. P: pin. B: the ball away and back."),
        tr("Practice: %1: this coupling. %2: all. Calls and order: %3: begin.")
            .arg(PracticeWords::keyOne(), PracticeWords::keyAll(), PracticeWords::keyBegin()),
        tr("Digits: an answer. Then %1: sure. %2: not sure. Enter: next.")
            .arg(PracticeWords::keySure(), PracticeWords::keyNotSure()),
        tr("Measuring and study: digits with point or comma, then Enter: a reading. Alt+A, Alt+N: take one "
           "back."),
        tr("Study: Alt+I: I am the next and read. Alt+T: take the last reading back. Alt+G: leave it, go "
           "on.")}
        .join(QLatin1Char('\n'));
}

QString WindowWords::keysOfOtherPages()
{
    return tr("Trends\n"
              "Left, Right: move along. Plus, Minus: closer, wider. 0: everything.\n"
              "Up, Down: another reading. D, R: by date, by rigging. T: table.\n"
              "A: all couplings together. P: the period. Ctrl+C: copy the chosen rows.\n"
              "F: note a finding. Q: ask. Esc: back to today, or to Before the annual.\n"
              "\n"
              "Before the annual\n"
              "Up, Down: another coupling. Enter: its trend. 1 to 8: sort by a column. 0: what stands out "
              "first.\n"
              "S: what stands out. O: what lay outside its band. Enter there: it in Trends.\n"
              "P: the period. F: note a finding. Q: ask. M: what the columns mean. R: the report.\n"
              "In the report: S: save. A: the other paper. Esc: back.\n"
              "\n"
              "Questions\n"
              "Up, Down: another question. Enter: close it. Ctrl+Enter: save. Esc: back.\n"
              "\n"
              "Set up\n"
              "Alt+1 to Alt+9: the parts. Alt+Up, Alt+Down: move a row.\n"
              "Photos of a coupling: Ctrl+V: a picture that was copied.\n"
              "Baseline day: Y, N: an answer. W: wrong leaf. X: leave out. F: freeze.");
}

} // namespace rig
