#pragma once

#include "core/review/airframe_review.h"

#include <QCoreApplication>
#include <QString>

#include <vector>

namespace rig {

// What is seen together with such readings elsewhere, where to look, and who. The readings cannot tell which
// of the causes it is, and the sentences say so.
struct CauseText
{
    QString pattern; // what the readings do
    QString causes;  // what such readings are seen with
    QString lookAt;
    QString who;
};

// The cause table of the trade (common practice and geometry; docs/terms.md), by what the readings do and,
// for a slow movement, by the coupling's layout.
class CauseWords
{
    Q_DECLARE_TR_FUNCTIONS(CauseWords)

public:
    // Gravest first; empty when nothing moves.
    static std::vector<CauseText> of(const CouplingReview& coupling, const AirframeReview& review);
    static QString cannotTellWhich();
    // What all couplings moved together asks for; the grease is named as what leaves a plunger short, never
    // as what explains a reading away.
    static QString whenTogether();
    static QString stiffGrease();
    // One run of sentences.
    static QString sentence(const CauseText& cause);

private:
    static CauseText together(const DayShift& day);
    static CauseText slow(const CouplingReview& coupling);
    static QString wear(Layout layout, bool grows);
    static CauseText scatterGrew();
    static CauseText scatterShrank();
    static CauseText step(bool besideEvent);
    static QString outsideAndLast(const CouplingReview& coupling);
    static QString lastLiesElsewhere(Verdict last, int outside);
    static CauseText jump(const CouplingReview& coupling);
    static CauseText foundAt(SeatState state);
    static CauseText bothSides();
};

} // namespace rig
