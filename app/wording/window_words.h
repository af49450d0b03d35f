#pragma once

#include <QCoreApplication>
#include <QString>

namespace rig {

// Sentences of the window around the pages.
class WindowWords
{
    Q_DECLARE_TR_FUNCTIONS(WindowWords)

public:
    static QString programName() { return QStringLiteral("Rigband"); }
    static QString riggedToday() { return tr("Rigged today"); }
    static QString trends() { return tr("Trends"); }
    static QString beforeTheAnnual() { return tr("Before the annual"); }
    static QString knowThisAirframe() { return tr("Know this airframe"); }
    static QString setUp() { return tr("Set up"); }
    static QString momentWithKey(const QString& moment, int number)
    {
        return tr("%1 (Ctrl+%2)").arg(moment).arg(number);
    }
    static QString noAirframe() { return tr("No airframe yet"); }
    static QString chooseAirframe() { return tr("Choose the airframe (Ctrl+K)"); }
    static QString airframeChoice(const QString& registration, const QString& type)
    {
        return type.isEmpty() ? registration : tr("%1   %2", "registration, type").arg(registration, type);
    }
    static QString openRecordMark(const QString& choice) { return tr("%1 · record open").arg(choice); }
    static QString openQuestionsMark(const QString& choice, int open)
    {
        return tr("%1 · %n open question(s)", nullptr, open).arg(choice);
    }
    static QString title(const QString& registration, const QString& file)
    {
        return registration.isEmpty() ? tr("%1 – Rigband").arg(file)
                                      : tr("%1 – %2 – Rigband").arg(registration, file);
    }
    static QString demoTitle() { return tr("demonstration copy, every figure invented"); }
    static QString readOnlyNote(const QString& file)
    {
        return tr("%1 can only be read: the file or its folder does not allow writing. Copy it to a folder "
                  "of your "
                  "own to enter readings.")
            .arg(file);
    }

    static QString fileMenu() { return tr("File"); }
    static QString newFile() { return tr("New file …"); }
    static QString openFile() { return tr("Open a file …"); }
    static QString openDemo() { return tr("Open a demonstration copy"); }
    static QString largerText() { return tr("Larger text"); }
    static QString smallerText() { return tr("Smaller text"); }
    static QString darkColours() { return tr("Dark colours"); }
    static QString keys() { return tr("Keys …"); }
    static QString quit() { return tr("Quit"); }
    static QString dismiss() { return tr("Close this message"); }
    static QString fileFilter() { return tr("Rigband files (*.rigband)"); }

    static QString welcomeTitle() { return tr("Rigband remembers each coupling’s locked gap"); }
    static QString welcomeSentence()
    {
        return tr("Readings by feeler leaf become each coupling’s own band. Every later reading is judged "
                  "against it: "
                  "one sign beside the look, the pull, the second person and the control check.");
    }
    static QString welcomeNew() { return tr("Begin a new file for my airframe"); }
    static QString welcomeOpen() { return tr("Open a file I have"); }
    static QString welcomeDemo() { return tr("Look at the demonstration first"); }
    static QString welcomeCaution()
    {
        return tr(
            "A band is a coupling’s own past, never a limit. Manuals, directives, local rules and persons "
            "entitled to decide prevail.");
    }

    static QString commandLine()
    {
        return tr("Remembers the locked gap of each control coupling and judges every reading against that "
                  "coupling's "
                  "own past.");
    }
    static QString commandFile() { return tr("The .rigband file to open."); }
    static QString commandDemo() { return tr("Open a fresh copy of the demonstration."); }
    static QString commandDark() { return tr("Dark colours."); }
    static QString commandText() { return tr("Text size in percent, 100 to 200."); }

    static QString knowLater()
    {
        return tr("Here a newcomer will learn this airframe: where each coupling is, how locked, part-seated "
                  "and empty "
                  "look on it, with practice rounds.");
    }
    static QString keysText()
    {
        return tr(
            "Everywhere\n"
            "Ctrl+1 to Ctrl+5: the five pages. Ctrl+6: the open questions.\n"
            "Ctrl+K: choose the airframe.\n"
            "Ctrl+N, Ctrl+O: new file, open a file. Ctrl+Q: quit.\n"
            "Ctrl++ and Ctrl+-: text size. F9: dark colours. F1: this list.\n"
            "\n"
            "Rigged today\n"
            "Y, N, C: yes, no, cannot see.\n"
            "Digits with point or comma, then Enter: a reading.\n"
            "M: measure again. W: wrong leaf. S: second person. Enter: next coupling.\n"
            "Page Up, Page Down: another coupling. Esc: interrupt.\n"
            "\n"
            "Trends\n"
            "Left, Right: move along. Plus, Minus: closer, wider. 0: everything.\n"
            "Up, Down: another reading. D, R: by date, by rigging. T: table.\n"
            "\n"
            "Before the annual\n"
            "Up, Down: another coupling. Enter: its trend. 1 to 7: sort by a column. 0: what stands out "
            "first.\n"
            "P: the period. M: what the columns mean. R: the report.\n"
            "\n"
            "Questions\n"
            "Up, Down: another question. Enter: close it. Ctrl+Enter: save. Esc: back.\n"
            "\n"
            "Set up\n"
            "Alt+1 to Alt+8: the parts.");
    }
};

} // namespace rig
