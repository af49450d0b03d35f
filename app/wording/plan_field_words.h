#pragma once

#include "core/airframe/access.h"
#include "core/airframe/airframe.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// Sentences about how an airframe is drawn from above, and from where its couplings are seen.
class PlanFieldWords
{
    Q_DECLARE_TR_FUNCTIONS(PlanFieldWords)

public:
    static QString span();
    static QString spanHint();
    static QString notASpan(const QString& typed);
    static QString tail();
    static QString tailName(TailForm tail);
    static QString wingPanels();
    static QString wingPanelsHint();
    static QString notPanels();

    static QString seenFrom();
    static QString mirrorFrom();
    static QString mirrorHint();
    static QString sideName(AccessSide side);

    static QString across();
    static QString acrossHint();
    static QString along();
    static QString alongHint();
    static QString notAcross();
    static QString notAlong();
    static QString bothOrNeither();
};

} // namespace rig
