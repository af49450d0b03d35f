#include "core/exchange/table_columns.h"

#include "core/day_entry.h"
#include "core/exchange/field_text.h"

namespace rig {

const std::vector<std::string>& couplingColumns()
{
    static const std::vector<std::string> kColumns = {
        "airframe",  "coupling", "circuit",    "side",           "access",        "seen_from", "mirror_from",
        "plan_x",    "plan_y",   "leaf_place", "layout",         "kind",          "gap",       "to_pull",
        "to_secure", "in_use",   "note",       "fitting_begins", "fitting_reason"};
    return kColumns;
}

const std::vector<std::string>& personColumns()
{
    static const std::vector<std::string> kColumns = {"name", "role", "phone"};
    return kColumns;
}

const std::vector<std::string>& gaugeColumns()
{
    static const std::vector<std::string> kColumns = {"name",
                                                      "kind",
                                                      "sizes_mm",
                                                      "resolution_mm",
                                                      "tolerance_mm",
                                                      "in_use",
                                                      "note",
                                                      "check_date",
                                                      "check_how",
                                                      "check_found",
                                                      "quarantine_from",
                                                      "known_mm",
                                                      "known_enters_mm",
                                                      "known_refuses_mm"};
    return kColumns;
}

const std::vector<std::string>& eventColumns()
{
    static const std::vector<std::string> kColumns = {"airframe", "coupling", "date", "kind",
                                                      "note",     "person",   "done"};
    return kColumns;
}

const std::vector<std::string>& jointPlayColumns()
{
    static const std::vector<std::string> kColumns = {"airframe", "coupling",  "date",      "along",
                                                      "along_mm", "across",    "across_mm", "person",
                                                      "note",     "from_paper"};
    return kColumns;
}

Fields columnsOf(const std::string& registration, const Coupling& coupling)
{
    constexpr int kPlanDecimals = 4;
    const CouplingParts parts = partsOf(coupling);
    const auto& place = coupling.place;
    return {registration,
            coupling.name,
            circuitText(coupling),
            text(coupling.side),
            coupling.access,
            text(coupling.seenFrom),
            text(coupling.mirrorFrom),
            place ? decimal(place->x, kPlanDecimals) : std::string{},
            place ? decimal(place->y, kPlanDecimals) : std::string{},
            coupling.leafPlace,
            text(coupling.layout),
            text(coupling.kind),
            yesNo(parts.gap),
            yesNo(parts.pull),
            yesNo(parts.securing),
            yesNo(coupling.inUse),
            coupling.note};
}

Fields columnsOf(const Fitting& fitting)
{
    return {dayText(fitting.begins), reasonText(fitting)};
}

Fields columnsOf(const Person& person)
{
    return {person.name, person.role, person.phone};
}

Fields columnsOf(const Gauge& gauge)
{
    std::string sizes;
    for (const Gap size : gauge.set.sizes())
        sizes += (sizes.empty() ? "" : "; ") + millimetres(size);
    const bool taper = gauge.set.kind() == GaugeKind::Taper;
    return {gauge.name,
            text(gauge.set.kind()),
            sizes,
            taper ? millimetres(gauge.set.resolution()) : std::string{},
            millimetresOrNothing(gauge.tolerance),
            yesNo(gauge.inUse),
            gauge.note};
}

Fields columnsOf(const GaugeCheck& check)
{
    Fields fields{dayText(check.day), check.how, check.found, dayOrNothing(check.quarantineFrom)};
    fields.resize(7);
    if (check.known) {
        fields[4] = millimetres(check.known->width);
        fields[5] = millimetres(check.known->read.enters);
        fields[6] = millimetresOrNothing(check.known->read.refuses);
    }
    return fields;
}

} // namespace rig
