#include "app/wording/report_words.h"

#include "app/wording/formats.h"

namespace rig {

QString ReportWords::printed(Day day, const QString& program)
{
    return tr("Printed %1 · %2", "day, program and version").arg(Formats{}.day(day), program);
}

QString ReportWords::caution()
{
    return tr("Owner's measurements for assessment by a person entitled to decide. Not an aircraft record, "
              "inspection, release or statement of airworthiness. Manuals and directives prevail.");
}

QString ReportWords::cannotWrite(const QString& path)
{
    return tr("%1 cannot be written, so nothing was written. Look whether its folder is there and may be "
              "written to and the disk has room, then try again.")
        .arg(path);
}

} // namespace rig
