#include "app/wording/report_words.h"

#include "app/wording/formats.h"

namespace rig {

QString ReportWords::airframe(const QString& registration, const QString& type)
{
    return type.isEmpty() ? registration : tr("%1 · %2", "registration, type").arg(registration, type);
}

QString ReportWords::pageOf(int page, int pages) { return tr("Page %1 of %2").arg(page).arg(pages); }

QString ReportWords::printed(Day day, const QString& program)
{
    return tr("Printed %1 · %2", "day, program and version").arg(Formats{}.day(day), program);
}

QString ReportWords::printedFrom(const QString& printedLine, const QString& file)
{
    return tr("%1 · %2", "printed when and by what, from which file").arg(printedLine, file);
}

QString ReportWords::caution()
{
    return tr("Owner's measurements for assessment by a person entitled to decide. Not an aircraft record, "
              "inspection, release or statement of airworthiness. Manuals and directives prevail.");
}

QString ReportWords::program(const QString& version) { return tr("Rigband %1").arg(version); }
QString ReportWords::written(const QString& path) { return tr("Written: %1.").arg(path); }

QString ReportWords::cannotWrite(const QString& path)
{
    return tr("%1 cannot be written, so nothing was written. Look whether its folder is there and may be "
              "written to and the disk has room, then try again.")
        .arg(path);
}

} // namespace rig
