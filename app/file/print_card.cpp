#include "app/file/open_file.h"
#include "app/file/verbs.h"
#include "app/report/airframe_card.h"
#include "app/wording/file_words.h"
#include "app/wording/report_words.h"
#include "core/review/taught_joint.h"

#include <QCoreApplication>
#include <QFileInfo>

namespace rig::file {

int printCard(const CardWanted& wanted)
{
    if (QFileInfo::exists(wanted.out))
        return couldNot(Problem{ProblemKind::FileExists, {}}, wanted.out);
    OpenFile open;
    if (const Outcome opened = open.open(wanted.file); !opened)
        return couldNot(opened.problem(), wanted.file);
    auto facts = factsNamed(open, wanted.file, wanted.airframe);
    if (!facts)
        return kCouldNot;
    const KnownAirframe known{std::move(*facts)};
    const CardSource source{known.facts().airframe, known.facts().couplingsInUse(),
                            drawnLayoutsOf(known, open.clock.now().localDay())};
    if (source.couplings.empty())
        return couldNot(FileWords::nothingOnCard(wanted.airframe));
    const Printing printing{Paper::A5, open.clock.now().localDay(),
                            ReportWords::program(QCoreApplication::applicationVersion())};
    if (!writeCard(wanted.out, source, printing))
        return couldNot(ReportWords::cannotWrite(wanted.out));
    say(ReportWords::written(wanted.out));
    return kDone;
}

} // namespace rig::file
