#pragma once

#include "core/review/coupling_standing.h"

#include <QCoreApplication>
#include <QString>

#include <optional>

namespace rig {

// How a coupling stands, in the same words on every page, list, table and paper. Inside says no more than
// that.
class StandingWords
{
    Q_DECLARE_TR_FUNCTIONS(StandingWords)

public:
    static QString word(const CouplingStanding& standing);   // "outside", for lists
    static QString inFull(const CouplingStanding& standing); // "Outside the band, and nobody has resolved it"
    static QString
    withReading(const CouplingStanding& standing); // "outside: 0.80–0.85 mm", "moved; last read: …"
    // Beside how the coupling stands: what its latest reading says by itself.
    static QString thisReading(Verdict verdict, const QString& explanation);
    static QString whereFacts(); // on the screen, beside facts in doubt
    static QString notSeen(CheckKind kind);
    static QString asFound(const GapInterval& reading); // beside the word that it was found part-seated
    // "could not be seen"; `surface` is the one in doubt, named where it is not the joint's own.
    static QString asked(QuestionKind kind, const std::optional<DoubtedSurface>& surface);
    // "Left aileron moved the wrong way"
    static QString asked(const std::string& surface, const Question& about);

private:
    static QString byItself(const CouplingStanding& standing); // in full, without what it rests on
    static QString surfaceAsked(const std::optional<DoubtedSurface>& surface);
    // The same in full, with what another surface has to do with the joint.
    static QString askedInFull(const CouplingStanding& standing);
};

} // namespace rig
