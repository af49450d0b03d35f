#pragma once

#include "core/clock.h"
#include "core/review/chain_state.h"

#include <QCoreApplication>
#include <QString>

#include <cstdint>
#include <optional>

namespace rig {

// What is said of the copies beside a file, and of what is read out of a damaged one.
class CopyWords
{
    Q_DECLARE_TR_FUNCTIONS(CopyWords)

public:
    static QString salvage(); // on the button beside what a file was refused for
    static QString salvageHint();
    static QString salvageNothingLeftOut();

    static QString menu();
    static QString openOneFirst();
    static QString heading();
    static QString count(int copies);
    static QString listKeys();
    static QString copyOf(Day day, std::uintmax_t bytes); // a row, and above what is said of it
    static QString holds(const FileEnd& end);
    static QString inList(const QString& file, const FileEnd& end);
    static QString whatEndIs();
    // Whether all that the copy holds is still in the file that is open.
    static QString place(const FileEnd& end, const std::optional<PrintPlace>& place, bool isFileChanged);
    static QString look();
    static QString lookHint();
    static QString bringBack();
    static QString bringBackHint();
    static QString broughtBack(const QString& file);

    static QString onlyLookedAt(const QString& file, Day day); // on every page of a copy
    static QString backToFile();
    static QString backToFileHint();
};

} // namespace rig
