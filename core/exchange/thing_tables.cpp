#include "core/exchange/thing_tables.h"

#include "core/exchange/table_columns.h"
#include "core/exchange/table_rows.h"
#include "core/measure/size_list.h"

#include <utility>
#include <variant>

namespace rig {

namespace {

template <typename Line>
TableOf<Line> linesOf(std::string_view bytes, const TableForm& form, void (*fill)(RowFields&, Line&))
{
    TableOf<Line> table;
    table.isRead = readTable(bytes, form, table.bad, [&](RowFields& fields) {
        Line line;
        line.line = fields.line();
        line.said = fields.fields(form.columns);
        fill(fields, line);
        line.isBad = fields.isBad();
        table.lines.push_back(std::move(line));
    });
    return table;
}

void readCircuit(RowFields& fields, Coupling& coupling)
{
    const std::string circuit = fields.field("circuit");
    coupling.circuit = kindFrom<Circuit>(lowered(circuit)).value_or(Circuit::Other);
    if (coupling.circuit == Circuit::Other)
        coupling.otherCircuit = fields.text("circuit");
}

// A kind that says by itself what there is takes no other word for it.
void readPart(RowFields& fields, const char* column, Coupling& coupling, bool CouplingParts::*part)
{
    const auto said = fields.yesOrNo(column);
    if (!said)
        return;
    CouplingParts wanted = coupling.parts;
    wanted.*part = *said;
    if (partsOf(coupling.kind, wanted).*part == *said)
        coupling.parts = wanted;
    else
        fields.refuse(RowProblem::PartsDoNotFit, fields.field(column), column, text(coupling.kind));
}

void readCoupling(RowFields& fields, CouplingLine& line)
{
    Coupling& coupling = line.coupling;
    line.airframe = fields.needed("airframe", RowProblem::NoAirframe);
    coupling.name = fields.needed("coupling", RowProblem::NoCoupling);
    readCircuit(fields, coupling);
    coupling.side = fields.kind<Side>("side").value_or(Side::None);
    coupling.access = fields.text("access");
    coupling.seenFrom = fields.kind<AccessSide>("seen_from").value_or(AccessSide::Unknown);
    coupling.mirrorFrom = fields.kind<AccessSide>("mirror_from").value_or(AccessSide::Unknown);
    coupling.place = fields.place("plan_x", "plan_y");
    coupling.leafPlace = fields.text("leaf_place");
    coupling.layout = fields.kind<Layout>("layout").value_or(Layout::Unknown);
    coupling.kind = fields.kind<CouplingKind>("kind").value_or(CouplingKind::Sleeve);
    readPart(fields, "gap", coupling, &CouplingParts::gap);
    readPart(fields, "to_pull", coupling, &CouplingParts::pull);
    readPart(fields, "to_secure", coupling, &CouplingParts::securing);
    coupling.inUse = fields.yesOrNo("in_use").value_or(true);
    coupling.note = fields.text("note");
    line.begins = fields.day("fitting_begins");
    line.reason = fields.text("fitting_reason");
}

void readPerson(RowFields& fields, PersonLine& line)
{
    line.person.name = fields.needed("name", RowProblem::NothingThere);
    line.person.role = fields.text("role");
    line.person.phone = fields.text("phone");
}

GaugeSet taperIn(RowFields& fields)
{
    const auto resolution = fields.length("resolution_mm");
    if (!fields.field("sizes_mm").empty())
        fields.refuse(RowProblem::SizesOfTaper, fields.field("sizes_mm"), "sizes_mm");
    if (fields.field("resolution_mm").empty())
        fields.refuse(RowProblem::NothingThere, {}, "resolution_mm");
    else if (resolution == Gap{})
        fields.refuse(RowProblem::ZeroLength, fields.field("resolution_mm"), "resolution_mm");
    return GaugeSet::taper(resolution.value_or(Gap{}));
}

GaugeSet setIn(RowFields& fields, GaugeKind kind)
{
    if (kind == GaugeKind::Taper)
        return taperIn(fields);
    if (const std::string resolution = fields.field("resolution_mm"); !resolution.empty())
        fields.refuse(RowProblem::ResolutionOfSizes, resolution, "resolution_mm", text(kind));
    const std::string typed = fields.field("sizes_mm");
    const SizeListEntry entry = parseSizeList(typed);
    if (const auto* refused = std::get_if<SizeListRefusal>(&entry)) {
        const bool isEmpty = refused->problem == SizeListProblem::Empty;
        fields.refuse(isEmpty ? RowProblem::NoSizes : RowProblem::NotSizes,
                      refused->piece.empty() ? typed : refused->piece, "sizes_mm");
        return {};
    }
    const auto& sizes = *std::get_if<std::vector<Gap>>(&entry);
    if (kind == GaugeKind::GoNoGo && sizes.size() != 2)
        fields.refuse(RowProblem::NotTwoSizes, typed, "sizes_mm");
    return GaugeSet{kind, sizes};
}

std::optional<KnownGapRead> knownGapIn(RowFields& fields)
{
    const std::string known = fields.field("known_mm");
    if (known.empty() && fields.field("known_enters_mm").empty() && fields.field("known_refuses_mm").empty())
        return std::nullopt;
    const auto width = fields.length("known_mm");
    if (known.empty())
        fields.refuse(RowProblem::KnownGapUnread, known, "known_mm");
    else if (width == Gap{})
        fields.refuse(RowProblem::ZeroLength, known, "known_mm");
    const auto read = fields.interval("known_enters_mm", "known_refuses_mm");
    if (!width || !read)
        return std::nullopt;
    return KnownGapRead{*width, *read};
}

std::optional<GaugeCheck> gaugeCheckIn(RowFields& fields)
{
    GaugeCheck check;
    const auto day = fields.day("check_date");
    check.how = fields.text("check_how");
    check.found = fields.text("check_found");
    check.quarantineFrom = fields.day("quarantine_from");
    check.known = knownGapIn(fields);
    for (const char* column : {"check_how", "check_found", "quarantine_from", "known_mm"})
        if (fields.field("check_date").empty() && !fields.field(column).empty()) {
            fields.refuse(RowProblem::CheckWithoutDay, fields.field(column), column);
            break;
        }
    if (!day)
        return std::nullopt;
    check.day = *day;
    if (check.quarantineFrom && *check.quarantineFrom > *day)
        fields.refuse(RowProblem::DoubtAfterCheck, fields.field("quarantine_from"), "quarantine_from");
    return check;
}

void readGauge(RowFields& fields, GaugeLine& line)
{
    Gauge& gauge = line.gauge;
    gauge.name = fields.needed("name", RowProblem::NothingThere);
    const auto kind = fields.kind<GaugeKind>("kind");
    if (kind || fields.field("kind").empty())
        gauge.set = setIn(fields, kind.value_or(GaugeKind::Leaves));
    gauge.tolerance = fields.length("tolerance_mm");
    gauge.inUse = fields.yesOrNo("in_use").value_or(true);
    gauge.note = fields.text("note");
    line.check = gaugeCheckIn(fields);
}

void readEvent(RowFields& fields, EventLine& line)
{
    Event& event = line.event;
    line.airframe = fields.needed("airframe", RowProblem::NoAirframe);
    line.coupling = fields.field("coupling");
    event.day = fields.neededDay("date").value_or(Day{});
    fields.needed("kind", RowProblem::NothingThere);
    event.kind = fields.kind<EventKind>("kind").value_or(EventKind::Note);
    event.note = fields.text("note");
    line.person = fields.field("person");
    event.done = fields.text("done");
    if (event.kind == EventKind::Finding) {
        fields.needed("note", RowProblem::NothingThere);
        fields.needed("person", RowProblem::NoPerson);
        fields.needed("done", RowProblem::NothingThere);
    } else if (!event.done.empty()) {
        fields.refuse(RowProblem::DoneWithoutFinding, event.done, "done", "kind");
    }
}

PlayFound playIn(RowFields& fields, const char* feltColumn, const char* measuredColumn)
{
    PlayFound found;
    found.felt = fields.kind<PlayFelt>(feltColumn).value_or(PlayFelt::NotTried);
    found.measured = fields.length(measuredColumn);
    if (found.measured == Gap{})
        fields.refuse(RowProblem::ZeroLength, fields.field(measuredColumn), measuredColumn);
    else if (found.measured && found.felt != PlayFelt::Felt)
        fields.refuse(RowProblem::MeasuredUnfelt, fields.field(measuredColumn), measuredColumn, feltColumn);
    return found;
}

void readJointPlay(RowFields& fields, JointPlayLine& line)
{
    JointPlay& play = line.play;
    line.airframe = fields.needed("airframe", RowProblem::NoAirframe);
    line.coupling = fields.needed("coupling", RowProblem::NoCoupling);
    play.day = fields.neededDay("date").value_or(Day{});
    play.along = playIn(fields, "along", "along_mm");
    play.across = playIn(fields, "across", "across_mm");
    if (!fields.isBad() && play.along.felt == PlayFelt::NotTried && play.across.felt == PlayFelt::NotTried)
        fields.refuse(RowProblem::NothingTried, fields.field("along"), "along");
    line.person = fields.needed("person", RowProblem::NoPerson);
    play.note = fields.text("note");
}

} // namespace

TableOf<CouplingLine> parseCouplings(std::string_view bytes)
{
    return linesOf<CouplingLine>(bytes, {TableKind::Couplings, couplingColumns(), {"airframe", "coupling"}},
                                 readCoupling);
}

TableOf<PersonLine> parsePeople(std::string_view bytes)
{
    return linesOf<PersonLine>(bytes, {TableKind::People, personColumns(), {"name"}}, readPerson);
}

TableOf<GaugeLine> parseGauges(std::string_view bytes)
{
    return linesOf<GaugeLine>(bytes, {TableKind::Gauges, gaugeColumns(), {"name"}}, readGauge);
}

TableOf<EventLine> parseEvents(std::string_view bytes)
{
    return linesOf<EventLine>(bytes, {TableKind::Events, eventColumns(), {"airframe", "date", "kind"}},
                              readEvent);
}

TableOf<JointPlayLine> parseJointPlays(std::string_view bytes)
{
    return linesOf<JointPlayLine>(
        bytes, {TableKind::JointPlays, jointPlayColumns(), {"airframe", "coupling", "date", "person"}},
        readJointPlay);
}

} // namespace rig
