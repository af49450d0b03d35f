#include "app/file/open_file.h"
#include "app/file/terminal_progress.h"
#include "app/file/verbs.h"
#include "app/report/airframe_card.h"
#include "app/wording/file_words.h"
#include "app/wording/report_words.h"
#include "core/review/taught_joint.h"

#include <QCoreApplication>

namespace rig::file {

int printCard(const CardWanted& wanted)
{
    if (!isFree(wanted.out))
        return kCouldNot;
    TerminalProgress progress;
    OpenFile open;
    auto facts = factsNamed(open, wanted.file, wanted.airframe, progress);
    if (!facts)
        return kCouldNot;
    const KnownAirframe known{std::move(*facts)};
    const CardSource source{known.facts().airframe, known.facts().couplingsInUse(),
                            drawnLayoutsOf(known, open.clock.now().localDay())};
    if (source.couplings.empty())
        return couldNot(progress, FileWords::nothingOnCard(wanted.airframe));
    if (isGivenUp(progress))
        return kCouldNot;
    const Printing printing{Paper::A5, open.clock.now().localDay(),
                            ReportWords::program(QCoreApplication::applicationVersion())};
    if (!writeCard(wanted.out, source, printing))
        return couldNot(ReportWords::cannotWrite(wanted.out));
    say(ReportWords::written(wanted.out));
    return endAfterPrint(open, FileWords::standsInCheck());
}

} // namespace rig::file
