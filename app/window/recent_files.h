#pragma once

#include <QStringList>

namespace rig {

// The files that this user opened last, the newest first, with their whole paths; six at most. They stand
// with the user's settings and say nothing of what a file holds.
QStringList recentFiles();
void rememberRecent(const QString& path);
void forgetRecent(const QString& path);

} // namespace rig
