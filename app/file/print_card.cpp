#include "app/file/open_file.h"
#include "app/file/verbs.h"
#include "app/report/airframe_card.h"
#include "app/wording/file_words.h"
#include "app/wording/report_words.h"

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
    const auto facts = factsNamed(open, wanted.file, wanted.airframe);
    if (!facts)
        return kCouldNot;
    const CardSource source{facts->airframe, facts->couplingsInUse()};
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
