#include "app/pages/setup/part_presenters.h"
#include "app/report/sheet_report.h"
#include "app/wording/report_words.h"
#include "core/store/airframe_facts.h"

#include <QCoreApplication>

namespace rig {

Result<PaperSheet> PaperPresenter::sheet(AirframeId airframe, std::optional<GaugeId> gauge) const
{
    const auto known = desk().known(airframe);
    if (!known)
        return known.problem();
    const auto people = personStandingsOn(records(), known.value()->facts(), desk().today());
    if (!people)
        return people.problem();
    return paperSheetOf(*known.value(), gauge, desk().today(), people.value());
}

Outcome PaperPresenter::save(const PaperSheet& sheet, const QString& path, Paper paper) const
{
    return writeSheet(path, sheet,
                      {paper, desk().today(), ReportWords::program(QCoreApplication::applicationVersion())});
}

} // namespace rig
