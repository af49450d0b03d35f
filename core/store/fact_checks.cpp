#include "core/store/fact_checks.h"

#include "core/plain_text.h"
#include "core/store/connection.h"
#include "core/store/fact_shape.h"
#include "core/store/first_problem.h"
#include "core/store/names.h"
#include "core/store/newest.h"
#include "core/store/values.h"

#include <set>

namespace rig {

namespace {

// A laptop's clock may be set wrong by hours, and noon stands for a day of which no hour is known.
constexpr std::int64_t kDaySeconds = 24 * 3600;

constexpr const char* kOfAirframe = "WHERE t.airframe = ?";

QString sqlOf(const char* form, const char* table)
{
    return QString::fromLatin1(form).arg(QString::fromLatin1(table));
}

bool hasVersions(std::string_view table)
{
    for (const FactShape* shape : {&factShape<Person>(), &factShape<Airframe>(), &factShape<Gauge>(),
                                   &factShape<Coupling>(), &factShape<Surface>()})
        if (table == shape->table)
            return true;
    return false;
}

// What a fact is about to say: whether each value may stand in its column, and to what it refers.
class ToldCells final : public CellSink
{
public:
    struct Reference
    {
        const char* table;
        IdBytes id;
    };

    explicit ToldCells(const char* table) : m_table{table} {}

    std::string problem;
    std::vector<Reference> references;

    void put(const ColumnInfo& column, const std::optional<IdBytes>& id) override
    {
        if (id && column.refersTo)
            references.push_back({column.refersTo, *id});
    }
    void put(const ColumnInfo& column, const std::optional<std::int64_t>& number) override
    {
        look(column, !number || lies(*number, column.range));
    }
    void put(const ColumnInfo& column, const std::optional<double>& number) override
    {
        look(column, !number || lies(*number, column.range));
    }
    void put(const ColumnInfo& column, const std::optional<std::string_view>& text) override
    {
        look(column, !text || (lies(*text, column.range) && !hasInvisible(*text)));
    }
    void put(const ColumnInfo& column, const std::optional<BytesView>& bytes) override
    {
        look(column, !bytes || lies(*bytes, column.range));
    }

private:
    void look(const ColumnInfo& column, bool isInRange)
    {
        if (!isInRange && problem.empty())
            problem = std::string{m_table} + '.' + column.name + ": out of its range";
    }

    const char* m_table;
};

} // namespace

Outcome FactChecks::fits(const AnyFact& fact) const
{
    ToldCells told{fact.shape().table};
    fact.tell(told);
    fact.tellChildren(told);
    if (!told.problem.empty())
        return refused(told.problem);
    for (const ToldCells::Reference& reference : told.references)
        if (const Outcome there = known(reference.table, reference.id); !there)
            return there;
    return Done{};
}

Outcome FactChecks::isNewUnder(const IdBytes& id, const AnyFact& fact) const
{
    if (id != IdBytes{}) {
        if (!fact.shape().hasVersions)
            return refused("already saved: " + textOf(id));
        if (const Outcome there = known(fact.shape().table, id); !there)
            return there;
    }
    return fits(fact);
}

template <typename Thing>
Outcome FactChecks::unused(const Thing& thing, std::string Thing::*name, const char* where,
                           const QVariantList& values) const
{
    const std::string table = factShape<Thing>().table;
    const std::string wanted = comparable(thing.*name);
    if (wanted.empty())
        return refused("empty: the name of " + table);
    const bool isNewOne = thing.id == decltype(thing.id){};
    const QByteArray parent = values.isEmpty() ? QByteArray{} : values.front().toByteArray();
    const auto [among, isFirst] = m_connection.namesTaken.try_emplace({table, parent});
    std::set<std::string>& taken = among->second;
    if (!isNewOne || isFirst) {
        const auto all = newest<Thing>(m_connection, where, values);
        if (!all)
            return all.problem();
        taken.clear();
        for (const Thing& other : all.value())
            if (other.id != thing.id)
                taken.insert(comparable(other.*name));
    }
    if (!taken.insert(wanted).second)
        return refused("already in use as a name of " + table + ": " + thing.*name);
    return Done{};
}

Outcome FactChecks::thereIs(const QString& sql, const QVariantList& values, const std::string& elseWhy) const
{
    const auto found = m_connection.integer(sql, values);
    if (!found)
        return found.problem();
    return found.value() ? Outcome{Done{}} : refused(elseWhy);
}

Outcome FactChecks::thereIsNo(const QString& sql, const QVariantList& values,
                              const std::string& elseWhy) const
{
    const auto found = m_connection.integer(sql, values);
    if (!found)
        return found.problem();
    return found.value() ? refused(elseWhy) : Outcome{Done{}};
}

Outcome FactChecks::known(const char* table, const IdBytes& id) const
{
    return thereIs(sqlOf(hasVersions(table) ? "SELECT 1 FROM %1 WHERE id = ? AND subject = id"
                                            : "SELECT 1 FROM %1 WHERE id = ?",
                         table),
                   {valueOf(id)}, std::string{"no such "} + table + ": " + textOf(id));
}

Outcome FactChecks::sameAirframe(const RecordId& record, const char* table, const IdBytes& part) const
{
    return thereIs(sqlOf("SELECT 1 FROM rigging_record r JOIN %1 p ON p.airframe = r.airframe"
                         " WHERE r.id = ? AND p.id = ? AND p.subject = p.id",
                         table),
                   {valueOf(record), valueOf(part)},
                   std::string{"not of the record's airframe: "} + table + ' ' + textOf(part));
}

Outcome FactChecks::ofAirframe(const char* table, const IdBytes& id, const AirframeId& airframe) const
{
    return thereIs(sqlOf("SELECT 1 FROM %1 WHERE id = ? AND airframe = ?", table),
                   {valueOf(id), valueOf(airframe)}, std::string{"not of this airframe: "} + table);
}

Outcome FactChecks::notYetToCome(Moment when) const
{
    if (when.utcSeconds > m_now.utcSeconds + kDaySeconds)
        return refused("in the future");
    return Done{};
}

Outcome FactChecks::open(const RecordId& record) const
{
    return thereIsNo(QStringLiteral("SELECT 1 FROM closing WHERE record = ?"), {valueOf(record)},
                     "the record is already closed");
}

// Only what a second person had written on paper is copied, and by somebody else: who typed the record in.
template <typename Fact>
Outcome FactChecks::copied(const Fact& fact, const std::optional<RecordId>& record) const
{
    if (!fact.copiedBy)
        return Done{};
    if (fact.turn != Turn::Second || !record)
        return refused("copied, and not of a second person in a record");
    return firstProblem(
        {twoPeople(fact.person, fact.copiedBy),
         thereIs(QStringLiteral("SELECT 1 FROM rigging_record WHERE id = ? AND entered_by = ?"),
                 {valueOf(*record), valueOf(*fact.copiedBy)},
                 "copied by somebody who did not type the record in from paper")});
}

Outcome FactChecks::closed(const RecordId& record) const
{
    return thereIs(QStringLiteral("SELECT 1 FROM closing WHERE record = ?"), {valueOf(record)},
                   "the record is not closed yet");
}

Outcome FactChecks::correctable(const Reading& reading) const
{
    // A closed record takes no further readings; one of its own may still be put right.
    if (!reading.corrects)
        return reading.record ? open(*reading.record) : Outcome{Done{}};
    if (isBlank(reading.note))
        return refused("a correction without a reason");
    const QVariant corrected = valueOf(*reading.corrects);
    return firstProblem(
        {thereIs(QStringLiteral("SELECT 1 FROM reading WHERE id = ? AND coupling = ?"),
                 {corrected, valueOf(reading.coupling)}, "corrects no reading of this coupling"),
         thereIs(QStringLiteral("SELECT 1 FROM reading WHERE id = ? AND record IS ?"),
                 {corrected, valueOf(reading.record)}, "corrects a reading of another record"),
         thereIsNo(QStringLiteral("SELECT 1 FROM reading WHERE corrects = ?"), {corrected},
                   "that reading was corrected before")});
}

Outcome FactChecks::check(const Airframe& airframe) const
{
    return firstProblem({isNew(airframe), unused(airframe, &Airframe::registration)});
}

Outcome FactChecks::check(const Person& person) const
{
    return firstProblem({isNew(person), unused(person, &Person::name)});
}

Outcome FactChecks::check(const Gauge& gauge) const
{
    if (gauge.set.isEmpty())
        return refused("a gauge without sizes");
    return firstProblem({isNew(gauge), unused(gauge, &Gauge::name)});
}

Outcome FactChecks::check(const GaugeCheck& check) const
{
    if (check.known && problemOf(check.known->read) != IntervalProblem::None)
        return refused("no possible interval");
    return isNew(check);
}

Outcome FactChecks::check(const Coupling& coupling) const
{
    return firstProblem(
        {isNew(coupling), unused(coupling, &Coupling::name, kOfAirframe, {valueOf(coupling.airframe)})});
}

Outcome FactChecks::check(const Fitting& fitting) const
{
    return isNew(fitting);
}

Outcome FactChecks::check(const Event& event) const
{
    const bool isFinding = event.kind == EventKind::Finding;
    if (isFinding && !event.person)
        return refused("a finding of nobody");
    if (isFinding)
        if (const Outcome said =
                firstProblem({filled(event.note, "what was found"), filled(event.done, "what was done")});
            !said)
            return said;
    if (!isFinding && !event.done.empty())
        return refused("what was done about no finding");
    return firstProblem({isNew(event), event.coupling ? ofAirframe(factShape<Coupling>().table,
                                                                   event.coupling->bytes, event.airframe)
                                                      : Outcome{Done{}}});
}

Outcome FactChecks::check(const RiggingRecord& record) const
{
    return firstProblem({isNew(record), notYetToCome(record.begins)});
}

Outcome FactChecks::check(const Check& check) const
{
    return firstProblem({isNew(check), copied(check, check.record), notYetToCome(check.when),
                         sameAirframe(check.record, factShape<Coupling>().table, check.coupling.bytes),
                         open(check.record)});
}

Outcome FactChecks::check(const Reading& reading) const
{
    if (problemOf(reading.interval) != IntervalProblem::None)
        return refused("no possible interval");
    if (const Outcome made = isNew(reading); !made)
        return made;
    return firstProblem(
        {thereIs(QStringLiteral("SELECT 1 FROM fitting WHERE id = ? AND coupling = ?"),
                 {valueOf(reading.fitting), valueOf(reading.coupling)}, "the fitting is not of the coupling"),
         reading.record ? sameAirframe(*reading.record, factShape<Coupling>().table, reading.coupling.bytes)
                        : Outcome{Done{}},
         notYetToCome(reading.when), twoPeople(reading.person, reading.second),
         copied(reading, reading.record), correctable(reading)});
}

Outcome FactChecks::check(const Shown& shown) const
{
    return fits(shown);
}

Outcome FactChecks::check(const Exclusion& exclusion) const
{
    return firstProblem({isNew(exclusion), filled(exclusion.reason, "reason"),
                         exclusion.stamp.by ? Outcome{Done{}} : refused("excluded by nobody")});
}

Outcome FactChecks::check(const FrozenBaseline& baseline) const
{
    if (baseline.readings.empty())
        return refused("a baseline of no readings");
    if (const Outcome names = firstProblem({isNew(baseline), twoPeople(baseline.first, baseline.second)});
        !names)
        return names;
    if (std::set(baseline.readings.begin(), baseline.readings.end()).size() != baseline.readings.size())
        return refused("a reading twice in one baseline");
    for (const ReadingId& reading : baseline.readings) {
        const Outcome own =
            thereIs(QStringLiteral("SELECT 1 FROM reading WHERE id = ? AND fitting = ?"),
                    {valueOf(reading), valueOf(baseline.fitting)}, "a reading of another fitting");
        if (!own)
            return own;
    }
    return Done{};
}

Outcome FactChecks::check(const Interruption& interruption) const
{
    return firstProblem({isNew(interruption), sameAirframe(interruption.record, factShape<Coupling>().table,
                                                           interruption.coupling.bytes)});
}

Outcome FactChecks::check(const RecordClose& close) const
{
    if (close.closing == Closing::Complete && (!close.first || !close.second))
        return refused("a complete close needs two names");
    return firstProblem({isNew(close), twoPeople(close.first, close.second), open(close.record)});
}

Outcome FactChecks::check(const Surface& surface) const
{
    if ((surface.up || surface.down || surface.mostPlay) && isBlank(surface.manualReference))
        return refused("figures from a manual without its page");
    return firstProblem(
        {isNew(surface), unused(surface, &Surface::name, kOfAirframe, {valueOf(surface.airframe)})});
}

Outcome FactChecks::check(const SurfaceCheck& check) const
{
    const bool isSeen = isCall(check.kind) && check.answer != Answer::CannotSee;
    if (check.seen.has_value() != isSeen)
        return refused("what a surface did belongs to a call that was seen, and to no other answer");
    return firstProblem({isNew(check),
                         sameAirframe(check.record, factShape<Surface>().table, check.surface.bytes),
                         twoPeople(check.person, check.cockpit), open(check.record)});
}

Outcome FactChecks::check(const SurfaceMeasure& measure) const
{
    return firstProblem({isNew(measure),
                         sameAirframe(measure.record, factShape<Surface>().table, measure.surface.bytes),
                         open(measure.record)});
}

Outcome FactChecks::check(const RecordTick& tick) const
{
    const bool isAfterwards = tick.kind == TickKind::NoteRead;
    return firstProblem({isNew(tick), isAfterwards ? closed(tick.record) : open(tick.record)});
}

Outcome FactChecks::check(const JointPlay& play) const
{
    if (play.along.felt == PlayFelt::NotTried && play.across.felt == PlayFelt::NotTried)
        return refused("a play that nobody tried");
    for (const PlayFound* found : {&play.along, &play.across})
        if (problemOf(*found) != PlayProblem::None)
            return refused("a play that was measured and not felt");
    if (const Outcome made = firstProblem({isNew(play), notYetToCome(noonOf(play.day))});
        !made || !play.record)
        return made;
    return firstProblem(
        {sameAirframe(*play.record, factShape<Coupling>().table, play.coupling.bytes), open(*play.record)});
}

Outcome FactChecks::check(const SideConnected& connected) const
{
    if (std::set(connected.persons.begin(), connected.persons.end()).size() != connected.persons.size())
        return refused("a person twice for one side");
    return firstProblem({isNew(connected), open(connected.record)});
}

Outcome FactChecks::check(const Question& question) const
{
    const bool isAsked = question.kind == QuestionKind::Asked;
    if (isAsked && !question.stamp.by)
        return refused("a question of nobody");
    if (isAsked != !question.text.empty())
        return refused("a question in words, or words of no question");
    const auto own = [&](const char* table, const auto& id) {
        return id ? ofAirframe(table, id->bytes, question.airframe) : Outcome{Done{}};
    };
    return firstProblem({isNew(question), own(factShape<RiggingRecord>().table, question.record),
                         own(factShape<Coupling>().table, question.coupling),
                         own(factShape<Surface>().table, question.surface)});
}

Outcome FactChecks::check(const Resolution& resolution) const
{
    return firstProblem({isNew(resolution), filled(resolution.found, "what was found"),
                         filled(resolution.done, "what was done"),
                         thereIsNo(QStringLiteral("SELECT 1 FROM resolution WHERE question = ?"),
                                   {valueOf(resolution.question)}, "the question is already closed")});
}

Outcome FactChecks::check(const Decision& decision) const
{
    const auto saved = [this](const FactId& fact) {
        return thereIs(QStringLiteral("SELECT 1 FROM link WHERE fact = ?"), {valueOf(fact)},
                       "decides about what is not in the file");
    };
    const bool isOneThing = decision.kind == ConflictKind::Names && decision.holds == Holds::OneThing;
    return firstProblem(
        {mayHold(decision.kind, decision.holds) && decision.first != decision.second
             ? isNew(decision)
             : refused("what cannot be decided of these two"),
         filled(decision.reason, "reason"), saved(decision.first), saved(decision.second),
         isOneThing ? thereIs(QStringLiteral("SELECT 1 FROM person WHERE id = ? UNION ALL SELECT 1 FROM "
                                             "gauge WHERE id = ?"),
                              {valueOf(decision.first), valueOf(decision.first)},
                              "only persons and gauges can be one and the same")
                    : Outcome{Done{}}});
}

} // namespace rig
