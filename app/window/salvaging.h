#pragma once

#include "core/result.h"

#include <QString>

#include <optional>

class QWidget;

namespace rig {

class Clock;
class Prompts;

// Where a new file is to stand, with the ending of ours; empty when the user turned away.
QString askNewRigband(QWidget* parent, Prompts& prompts);

// All of a file in a new one, see copyIntoNew(), while the window goes on. Empty: somebody stopped it, and
// nothing is there.
std::optional<Outcome> copyIntoNewBehind(QWidget& window, const QString& from, const QString& into);

// Asks for a name, reads what can be read of a damaged file into a new one there and tells what came and what
// did not. The new file; empty when there is none. The damaged one is only read.
QString salvageIntoNew(QWidget* parent, const QString& damaged, Prompts& prompts, const Clock& clock);

} // namespace rig
