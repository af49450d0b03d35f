#pragma once

#include <QCoreApplication>
#include <QString>

namespace rig {

// Sentences of the window around the pages.
class WindowWords
{
    Q_DECLARE_TR_FUNCTIONS(WindowWords)

public:
    static QString programName();
    static QString riggedToday();
    static QString trends();
    static QString beforeTheAnnual();
    static QString knowThisAirframe();
    static QString setUp();
    // On the bar, where the room is short.
    static QString riggedShort();
    static QString annualShort();
    static QString knowShort();
    static QString momentWithKey(const QString& moment, int number);
    static QString noAirframe();
    static QString chooseAirframe();
    static QString airframeChoice(const QString& registration, const QString& type);
    static QString openRecordMark(const QString& choice);
    static QString openQuestionsMark(const QString& choice, int open);
    static QString title(const QString& registration, const QString& file);
    static QString demoTitle();
    static QString readOnlyNote(const QString& file);
    static QString otherHangs(const QString& file);
    static QString noCopyToday(const QString& file);

    static QString fileMenu();
    static QString newFile();
    static QString openFile();
    static QString openDemo();
    static QString largerText();
    static QString smallerText();
    static QString colours(); // the menu of the three, and what goes round them
    static QString lightColours();
    static QString darkColours();
    static QString sunColours();
    static QString nextColours();
    static QString keys();
    static QString quit();
    static QString closeTitle();
    static QString closeAllTheSame();
    static QString dismiss();
    static QString fileFilter();

    static QString welcomeTitle();
    static QString welcomeSentence();
    static QString welcomeLast(const QString& file);
    static QString welcomeFolder(const QString& folder);
    static QString welcomeNew();
    static QString welcomeOpen();
    static QString welcomeDemo();
    static QString welcomeCaution();

    static QString commandLine();
    static QString commandFile();
    static QString commandDemo();
    static QString commandDark();
    static QString commandSun();
    static QString commandText();
    static QString commandUnknown(const QString& option);
    static QString commandNoValue();
    static QString commandNoSize(const QString& typed);
    static QString commandOneFile();

    static QString keysText();

private:
    static QString keysEverywhere();
    static QString keysOfRiggedToday(); // as they are bound
    static QString keysOfOtherPages();
    static QString keysOfLearning();
};

} // namespace rig
