#pragma once

#include "app/pages/setup/quarantine_outlook.h"

#include <QStringList>

namespace rig {

// Which day is proposed, why, and how much was read since.
QString sentenceOf(const DoubtProposal& proposal);
// What saving does, one sentence a line.
QStringList sentencesOf(const DoubtPreview& preview);

} // namespace rig
