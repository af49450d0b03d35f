#include "app/file/open_file.h"
#include "app/file/verbs.h"
#include "app/report/manual.h"
#include "app/wording/report_words.h"

#include <QCoreApplication>

namespace rig::file {

int printManual(const ManualWanted& wanted)
{
    if (!isFree(wanted.out))
        return kCouldNot;
    if (!writeManual(wanted.out, wanted.letter ? Paper::Letter : Paper::A4,
                     ReportWords::program(QCoreApplication::applicationVersion())))
        return couldNot(ReportWords::cannotWrite(wanted.out));
    say(ReportWords::written(wanted.out));
    return kDone;
}

} // namespace rig::file
