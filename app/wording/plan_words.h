#pragma once

#include "core/airframe/coupling.h"

#include <QCoreApplication>
#include <QString>

#include <vector>

namespace rig {

// Words on and about the plan of an airframe.
class PlanWords
{
    Q_DECLARE_TR_FUNCTIONS(PlanWords)

public:
    // One coupling as it is told.
    struct Told
    {
        QString name;
        QString word;
        Side side = Side::None;
        bool bySelf = false;
        bool inUse = true;
        int order = 0;
        bool chosen = false;
    };

    static QString leftLetter();
    static QString rightLetter();
    static QString number(int order);
    static QString coupling(const Told& told); // one, as a part of a sentence
    static QString plan(const std::vector<Told>& all);
    static QString name();
    static QString keysToChoose();
    static QString keysToMove();
};

} // namespace rig
