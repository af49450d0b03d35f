#include "core/exchange/things_in.h"

#include "core/day_entry.h"
#include "core/exchange/field_text.h"
#include "core/exchange/table_columns.h"

#include <algorithm>
#include <optional>
#include <tuple>

namespace rig {

namespace {

// Facts that a file may hold several times: each is there already as often as it stands in the file.
template <typename Key> class HeldFacts
{
public:
    void hold(const Key& key) { ++m_counts[key]; }

    // Whether one more of these in a table is one that the file holds.
    bool meet(const Key& key)
    {
        const auto at = m_counts.find(key);
        if (at == m_counts.end() || at->second == 0)
            return false;
        --at->second;
        return true;
    }

private:
    std::map<Key, int> m_counts;
};

using CheckKey = std::pair<GaugeId, Fields>;

CheckKey keyOf(const GaugeCheck& check)
{
    return {check.gauge, columnsOf(check)};
}

using EventKey = std::tuple<AirframeId, std::optional<CouplingId>, Day, EventKind, std::string,
                            std::optional<PersonId>, std::string>;

EventKey keyOf(const Event& event)
{
    return {event.airframe, event.coupling, event.day,
            event.kind,     event.note,     event.person ? event.person : event.stamp.by,
            event.done};
}

using PlayKey = std::tuple<CouplingId, Day, PlayFelt, std::optional<Gap>, PlayFelt, std::optional<Gap>,
                           PersonId, std::string>;

PlayKey keyOf(const JointPlay& play)
{
    return {play.coupling,        play.day,    play.along.felt, play.along.measured, play.across.felt,
            play.across.measured, play.person, play.note};
}

template <typename Key, typename Fact>
Outcome addUnlessHeld(Records& records, HeldFacts<Key>& held, const Fact& fact, int& added, int& thereAlready)
{
    if (held.meet(keyOf(fact))) {
        ++thereAlready;
        return Done{};
    }
    if (const auto kept = records.add(fact); !kept)
        return kept.problem();
    ++added;
    return Done{};
}

// A fitting whose reason the table leaves out is any of that day.
bool saysTheSame(const Fitting& fitting, Day begins, const std::string& reason)
{
    return fitting.begins == begins &&
           (isBlank(reason) || comparable(reasonText(fitting)) == comparable(reason));
}

int nextRiggingOrder(const NamedAirframe& airframe)
{
    int last = 0;
    for (const auto& [name, coupling] : airframe.couplings)
        last = std::max(last, coupling.riggingOrder);
    return last + 1;
}

} // namespace

ThingsIn::ThingsIn(Records& records, Day today, NamedThings& known, Imported& imported)
    : m_records{records}, m_today{today}, m_known{known}, m_imported{imported}
{
}

void ThingsIn::refuse(TableKind table, int line, RowProblem problem, const std::string& text,
                      const std::string& column, const std::string& instead)
{
    m_imported.bad.push_back({line, problem, text, column, table, instead});
}

void ThingsIn::refuseToCome(TableKind table, int line, Day day, const std::string& column)
{
    if (day > m_today)
        refuse(table, line, RowProblem::FutureDay, dayText(day), column);
}

template <typename Thing>
Result<ThingsIn::Met> ThingsIn::meet(ByName<Thing>& things, const std::string& name, const Thing& thing,
                                     const TableLine& line, TableKind table,
                                     const std::vector<std::string>& columns,
                                     const std::function<Fields(const Thing&)>& fieldsOf)
{
    const std::string key = comparable(name);
    const auto at = key.empty() ? things.end() : things.find(key);
    if (line.isBad || key.empty()) {
        if (!key.empty())
            things.emplace(key, Thing{});
        return Met::Refused;
    }
    if (at == things.end()) {
        const auto added = m_records.add(thing);
        if (!added)
            return added.problem();
        Thing& kept = things.emplace(key, thing).first->second;
        kept.id = added.value();
        return Met::New;
    }
    if (at->second.id.isNull())
        return Met::Refused;
    const Fields told = fieldsOf(thing);
    const Fields known = fieldsOf(at->second);
    for (std::size_t i = 0; i < known.size(); ++i)
        if (!line.said[i].empty() && comparable(told[i]) != comparable(known[i])) {
            refuse(table, line.line, known[i].empty() ? RowProblem::SaysMore : RowProblem::SaysOtherwise,
                   line.said[i], columns[i], known[i]);
            return Met::Refused;
        }
    return Met::Same;
}

template <typename Thing>
auto ThingsIn::idOf(const ByName<Thing>& things, const std::string& name, TableKind table, int line,
                    RowProblem elseWhy, const char* column)
{
    const Thing* thing = found(things, name);
    if (!thing)
        refuse(table, line, elseWhy, name, column);
    return thing ? thing->id : decltype(Thing::id){};
}

Outcome ThingsIn::add(const TableOf<PersonLine>& people)
{
    for (const PersonLine& line : people.lines) {
        const auto met =
            meet<Person>(m_known.people, line.person.name, line.person, line, TableKind::People,
                         personColumns(), [](const Person& person) { return columnsOf(person); });
        if (!met)
            return met.problem();
        m_imported.people += met.value() == Met::New ? 1 : 0;
        m_imported.thereAlready += met.value() == Met::Same ? 1 : 0;
    }
    return Done{};
}

Outcome ThingsIn::add(const TableOf<GaugeLine>& gauges)
{
    const auto checks = m_records.gaugeChecks();
    if (!checks)
        return checks.problem();
    HeldFacts<CheckKey> held;
    for (const GaugeCheck& check : checks.value())
        held.hold(keyOf(check));
    for (const GaugeLine& line : gauges.lines) {
        const auto met = meet<Gauge>(m_known.gauges, line.gauge.name, line.gauge, line, TableKind::Gauges,
                                     gaugeColumns(), [](const Gauge& gauge) { return columnsOf(gauge); });
        if (!met)
            return met.problem();
        m_imported.gauges += met.value() == Met::New ? 1 : 0;
        if (line.check)
            refuseToCome(TableKind::Gauges, line.line, line.check->day, "check_date");
        if (met.value() == Met::Refused)
            continue;
        if (!line.check) {
            m_imported.thereAlready += met.value() == Met::Same ? 1 : 0;
            continue;
        }
        GaugeCheck check = *line.check;
        check.gauge = found(m_known.gauges, line.gauge.name)->id;
        if (const Outcome added =
                addUnlessHeld(m_records, held, check, m_imported.gaugeChecks, m_imported.thereAlready);
            !added)
            return added;
    }
    return Done{};
}

Result<NamedAirframe*> ThingsIn::airframeOf(const std::string& registration)
{
    const std::string key = comparable(registration);
    if (const auto at = m_known.airframes.find(key); at != m_known.airframes.end())
        return &at->second;
    Airframe airframe;
    airframe.registration = registration;
    const auto added = m_records.add(airframe);
    if (!added)
        return added.problem();
    ++m_imported.airframes;
    return &m_known.airframes.emplace(key, NamedAirframe{added.value(), registration, {}, {}}).first->second;
}

Outcome ThingsIn::add(const TableOf<CouplingLine>& couplings, const FirstReadings& firstReadings)
{
    CouplingsNamed named;
    for (const CouplingLine& line : couplings.lines)
        if (const Outcome taken = takeCoupling(line, named); !taken)
            return taken;
    for (CouplingNamed& one : named)
        if (const Outcome added = addFittings(one, firstReadings); !added)
            return added;
    return Done{};
}

Outcome ThingsIn::takeCoupling(const CouplingLine& line, CouplingsNamed& named)
{
    if (line.begins)
        refuseToCome(TableKind::Couplings, line.line, *line.begins, "fitting_begins");
    if (line.airframe.empty())
        return Done{};
    const auto airframe = airframeOf(line.airframe);
    if (!airframe)
        return airframe.problem();
    NamedAirframe& own = *airframe.value();
    Coupling coupling = line.coupling;
    coupling.airframe = own.id;
    coupling.riggingOrder = nextRiggingOrder(own);
    const auto met =
        meet<Coupling>(own.couplings, coupling.name, coupling, line, TableKind::Couplings, couplingColumns(),
                       [&own](const Coupling& one) { return columnsOf(own.registration, one); });
    if (!met)
        return met.problem();
    if (met.value() == Met::Refused)
        return Done{};
    const Coupling& known = *found(own.couplings, coupling.name);
    m_imported.couplings += met.value() == Met::New ? 1 : 0;
    auto at = std::ranges::find(named, known.id, [](const CouplingNamed& one) { return one.coupling.id; });
    if (at == named.end())
        at = named.insert(at, {&own, known, line.line, met.value() == Met::New, {}, {}});
    if (!wantsFitting(line, *at) && met.value() == Met::Same)
        ++m_imported.thereAlready;
    return Done{};
}

// False where the row brings no fitting that is not known.
bool ThingsIn::wantsFitting(const CouplingLine& line, CouplingNamed& named)
{
    if (!line.begins) {
        if (named.reason.empty())
            named.reason = line.reason;
        return false;
    }
    std::optional<Day> last;
    for (const Fitting& fitting : named.airframe->fittings) {
        if (fitting.coupling != named.coupling.id)
            continue;
        if (saysTheSame(fitting, *line.begins, line.reason))
            return false;
        last = std::max(last.value_or(fitting.begins), fitting.begins);
    }
    const auto isTheSame = [&line](const FittingWanted& other) {
        return other.begins == line.begins && comparable(other.reason) == comparable(line.reason);
    };
    if (std::ranges::any_of(named.fittings, isTheSame))
        refuse(TableKind::Couplings, line.line, RowProblem::FittingTwice, dayText(*line.begins),
               "fitting_begins");
    else if (last && *line.begins < *last)
        refuse(TableKind::Couplings, line.line, RowProblem::FittingTooEarly, dayText(*line.begins),
               "fitting_begins", dayText(*last));
    else
        named.fittings.push_back({*line.begins, line.reason});
    return true;
}

Outcome ThingsIn::addFittings(CouplingNamed& named, const FirstReadings& firstReadings)
{
    if (named.isNew && named.fittings.empty()) {
        const auto first =
            firstReadings.find({comparable(named.airframe->registration), comparable(named.coupling.name)});
        if (first == firstReadings.end()) {
            refuse(TableKind::Couplings, named.line, RowProblem::NoFittingDay, named.coupling.name,
                   "fitting_begins");
            return Done{};
        }
        named.fittings.push_back({first->second, named.reason});
    }
    std::ranges::stable_sort(named.fittings, {}, &FittingWanted::begins);
    bool isFirst = std::ranges::none_of(named.airframe->fittings, [&named](const Fitting& fitting) {
        return fitting.coupling == named.coupling.id;
    });
    for (const FittingWanted& wanted : named.fittings) {
        if (const Outcome added = addFitting(named, wanted, isFirst); !added)
            return added;
        isFirst = false;
    }
    return Done{};
}

Outcome ThingsIn::addFitting(CouplingNamed& named, const FittingWanted& wanted, bool isFirst)
{
    Fitting fitting;
    fitting.coupling = named.coupling.id;
    fitting.begins = wanted.begins;
    if (isBlank(wanted.reason))
        fitting.kind = isFirst ? FittingKind::First : FittingKind::Other;
    else if (const auto kind = kindFrom<FittingKind>(comparable(wanted.reason)))
        fitting.kind = *kind;
    else
        fitting.reason = wanted.reason;
    const auto added = m_records.add(fitting);
    if (!added)
        return added.problem();
    fitting.id = added.value();
    named.airframe->fittings.push_back(fitting);
    ++m_imported.fittings;
    return Done{};
}

// Empty where the row is bad, or names what a bad row tells of.
std::optional<Event> ThingsIn::eventOf(const EventLine& line)
{
    const std::size_t before = m_imported.bad.size();
    const TableKind table = TableKind::Events;
    Event event = line.event;
    refuseToCome(table, line.line, event.day, "date");
    event.airframe =
        idOf(m_known.airframes, line.airframe, table, line.line, RowProblem::UnknownAirframe, "airframe");
    const NamedAirframe* airframe = found(m_known.airframes, line.airframe);
    if (airframe && !line.coupling.empty())
        event.coupling = idOf(airframe->couplings, line.coupling, table, line.line,
                              RowProblem::UnknownCoupling, "coupling");
    if (!line.person.empty())
        event.person =
            idOf(m_known.people, line.person, table, line.line, RowProblem::UnknownPerson, "person");
    event.stamp.by = event.person;
    const bool leansOnBadRow =
        (event.coupling && event.coupling->isNull()) || (event.person && event.person->isNull());
    return m_imported.bad.size() > before || leansOnBadRow ? std::nullopt : std::optional{event};
}

std::optional<JointPlay> ThingsIn::playOf(const JointPlayLine& line)
{
    const std::size_t before = m_imported.bad.size();
    const TableKind table = TableKind::JointPlays;
    JointPlay play = line.play;
    refuseToCome(table, line.line, play.day, "date");
    idOf(m_known.airframes, line.airframe, table, line.line, RowProblem::UnknownAirframe, "airframe");
    if (const NamedAirframe* airframe = found(m_known.airframes, line.airframe))
        play.coupling = idOf(airframe->couplings, line.coupling, table, line.line,
                             RowProblem::UnknownCoupling, "coupling");
    play.person = idOf(m_known.people, line.person, table, line.line, RowProblem::UnknownPerson, "person");
    play.stamp.by = play.person;
    const bool leansOnBadRow = play.coupling.isNull() || play.person.isNull();
    return m_imported.bad.size() > before || leansOnBadRow ? std::nullopt : std::optional{play};
}

Outcome ThingsIn::add(const TableOf<EventLine>& events)
{
    HeldFacts<EventKey> held;
    for (const auto& [name, airframe] : m_known.airframes) {
        const auto known = m_records.events(airframe.id);
        if (!known)
            return known.problem();
        for (const Event& event : known.value())
            held.hold(keyOf(event));
    }
    for (const EventLine& line : events.lines) {
        const auto event = line.isBad ? std::nullopt : eventOf(line);
        if (!event)
            continue;
        if (const Outcome added =
                addUnlessHeld(m_records, held, *event, m_imported.events, m_imported.thereAlready);
            !added)
            return added;
    }
    return Done{};
}

Outcome ThingsIn::add(const TableOf<JointPlayLine>& plays)
{
    HeldFacts<PlayKey> held;
    for (const auto& [name, airframe] : m_known.airframes) {
        const auto known = m_records.jointPlays(airframe.id);
        if (!known)
            return known.problem();
        for (const JointPlay& play : known.value())
            held.hold(keyOf(play));
    }
    for (const JointPlayLine& line : plays.lines) {
        const auto play = line.isBad ? std::nullopt : playOf(line);
        if (!play)
            continue;
        if (const Outcome added =
                addUnlessHeld(m_records, held, *play, m_imported.jointPlays, m_imported.thereAlready);
            !added)
            return added;
    }
    return Done{};
}

} // namespace rig
