#pragma once

#include <QString>

class QWidget;

namespace rig {

class Clock;
class Prompts;

// Where a new file is to stand, with the ending of ours; empty when the user turned away.
QString askNewRigband(QWidget* parent, Prompts& prompts);

// Asks for a name, reads what can be read of a damaged file into a new one there and tells what came and what
// did not. The new file; empty when there is none. The damaged one is only read.
QString salvageIntoNew(QWidget* parent, const QString& damaged, Prompts& prompts, const Clock& clock);

} // namespace rig
