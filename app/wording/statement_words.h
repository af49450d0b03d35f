#pragma once

#include <QCoreApplication>
#include <QString>

namespace rig {

// What somebody states where they read: a finding, or a question of their own.
class StatementWords
{
    Q_DECLARE_TR_FUNCTIONS(StatementWords)

public:
    // One letter each, as shown on the buttons.
    static QString keyFinding();
    static QString keyAsk();
    static QString noteAFinding();
    static QString ask();

    static QString findingTitle();
    static QString findingAbout();
    static QString askTitle();
    static QString askAbout();

    // The fields; the letter after & jumps there
    static QString where();
    static QString wholeAirframe();
    static QString day();
    static QString finder();
    static QString asker();
    static QString choosePerson();
    static QString notInList();
    static QString found();
    static QString done();
    static QString doneHint();
    static QString question();
    static QString about(const QString& what);
    static QString aboutReading(const QString& interval, const QString& day);
    static QString keep();
    static QString keepQuestion();
    static QString putAside();
    static QString typedStays();

    // What is lacking
    static QString finderMissing();
    static QString askerMissing();
    static QString dayAhead();
    static QString foundMissing();
    static QString doneMissing();
    static QString questionMissing();
    static QString notKept();

    // Once it is in the file
    static QString findingKept(const QString& person, const QString& place, const QString& day);
    static QString questionKept(const QString& person, const QString& place);

    static QString leftUndone();
};

} // namespace rig
