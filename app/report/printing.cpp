#include "app/report/printing.h"

#include "app/wording/chain_words.h"
#include "app/wording/report_words.h"

namespace rig {

QString printedLine(const Printing& printing)
{
    const QString printed = ReportWords::printed(printing.day, printing.program);
    return printing.file ? ReportWords::printedFrom(printed, ChainWords::file(printing.file->end)) : printed;
}

} // namespace rig
