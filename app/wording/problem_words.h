#pragma once

#include "core/result.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// What went wrong outside the program: one sentence that says what is wrong, one that says what to do.
class ProblemWords
{
    Q_DECLARE_TR_FUNCTIONS(ProblemWords)

public:
    // `fileName` as the user knows it. `problem.detail` is technical and stays in the log.
    static QString sentence(const Problem& problem, const QString& fileName);
};

} // namespace rig
