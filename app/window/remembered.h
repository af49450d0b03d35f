#pragma once

#include "app/pages/learn/learn_page.h"
#include "core/airframe/airframe.h"

#include <QString>

#include <optional>
#include <span>

namespace rig {

// What is remembered of a file from one start to the next, for this user on this machine.

// Where something of the file is kept among the settings.
QString settingOf(const QString& what, const QString& path);

// The airframe that was looked at last; the first one where that is not known any more.
std::optional<AirframeId> lastAirframeIn(const QString& path, std::span<const Airframe> airframes);
void rememberAirframe(const QString& path, AirframeId airframe);

// Who was chosen as the learner of an airframe.
LearnerMemory rememberedLearners();

} // namespace rig
