#pragma once

#include "core/demo/language.h"
#include "core/result.h"

#include <QString>
#include <QTemporaryDir>

#include <memory>

namespace rig {

// A copy of the demonstration, told in one language, in a folder of its own among the temporary ones, so that
// it can never meet a file of the user's. It goes away with this; what a killed program left a day ago or
// before goes with the next one.
class DemoCopy
{
public:
    // FolderReadOnly or DiskFull where it cannot be made.
    static Result<std::unique_ptr<DemoCopy>> make(demo::Language language);

    QString file() const { return m_folder.filePath(QStringLiteral("demo.rigband")); }

private:
    DemoCopy();
    Outcome fill(demo::Language language) const;

    QTemporaryDir m_folder;
};

// Removes from `temporary` the folders of demonstrations that are a day old and of a process that is no more.
void removeOldDemos(const QString& temporary);

} // namespace rig
