#include "core/airframe/id_source.h"
#include "core/rigging/counts_as.h"
#include "core/rigging/found_as.h"
#include "core/rigging/measured_before.h"
#include "core/store/conflicts_in.h"
#include "core/store/connection.h"
#include "core/store/fact_checks.h"
#include "core/store/facts_book.h"
#include "core/store/hands_in_rigging.h"
#include "core/store/newest.h"
#include "core/store/records.h"
#include "core/store/values.h"
#include "core/store/writer.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>

namespace rig {

namespace {

// In all statements here `t` is the table of the facts that are read.

QString selectSql(const FactShape& shape, const char* rest)
{
    return QStringLiteral("SELECT %1 %2").arg(columnsSql(shape, "t"), QLatin1String{rest});
}

template <typename Fact>
Result<std::vector<Fact>> factsIn(StoreFile& file, const char* rest, const QVariantList& values)
{
    if (const Outcome decided = readDecided(file.connection()); !decided)
        return decided.problem();
    std::vector<Fact> found;
    const FactShape& shape = factShape<Fact>();
    const Outcome read = file.connection().each(selectSql(shape, rest), values, [&found, &shape](Row& row) {
        RowCells cells{row, shape.table};
        hear(found.emplace_back(), cells);
    });
    if (!read)
        return read.problem();
    return found;
}

// Where each of so many goes; empty when they stand in order.
std::vector<std::size_t> orderOf(std::size_t many,
                                 const std::function<bool(std::size_t, std::size_t)>& isBefore)
{
    std::vector<std::size_t> places(many);
    std::iota(places.begin(), places.end(), std::size_t{0});
    if (std::is_sorted(places.begin(), places.end(), isBefore))
        return {};
    std::stable_sort(places.begin(), places.end(), isBefore);
    return places;
}

// As SQLite gives them by id, facts of one file stand in the order of saving; those of two that were joined
// may not.
template <typename Fact, typename Before>
Result<std::vector<Fact>> inOrder(Result<std::vector<Fact>> read, const Before& before)
{
    if (!read)
        return read;
    std::vector<Fact> facts = std::move(read).value();
    const std::vector<std::size_t> order = orderOf(
        facts.size(), [&](std::size_t one, std::size_t other) { return before(facts[one], facts[other]); });
    if (order.empty())
        return facts;
    std::vector<Fact> ordered;
    ordered.reserve(facts.size());
    for (const std::size_t place : order)
        ordered.push_back(std::move(facts[place]));
    return ordered;
}

template <typename Fact> Result<std::vector<Fact>> inOrderOfSaving(Result<std::vector<Fact>> read)
{
    return inOrder(std::move(read), savedBefore);
}

// By what a member says, and where it says the same by the order of saving.
template <typename Fact, typename Value>
Result<std::vector<Fact>> inOrderOf(Value Fact::*member, Result<std::vector<Fact>> read)
{
    return inOrder(std::move(read), [member](const Fact& one, const Fact& other) {
        return one.*member != other.*member ? one.*member < other.*member : savedBefore(one, other);
    });
}

template <typename Thing>
Result<std::vector<Thing>> inOrderOfNumber(int Thing::*number, Result<std::vector<Thing>> read)
{
    return inOrder(std::move(read),
                   [number](const Thing& one, const Thing& other) { return one.*number < other.*number; });
}

// Of several facts that end the same thing the one that was saved first counts, unless a person decided
// otherwise: two copies of a file may each have ended it. These come in the order of saving.
std::vector<RecordClose> theOneOfEach(std::vector<RecordClose> closings, const Decided& decided)
{
    std::set<RecordId> seen;
    std::erase_if(closings, [&](const RecordClose& close) {
        return decided.isSetAside(close.id.bytes) || !seen.insert(close.record).second;
    });
    return closings;
}

// A reading is large and a history long: places are sorted, and each reading is moved once.
std::vector<KeptReading> inOrderOfMeasuring(std::vector<KeptReading> readings)
{
    const auto before = [&readings](std::size_t one, std::size_t other) {
        return measuredBefore(readings[one].reading, readings[other].reading);
    };
    std::vector<std::size_t> places(readings.size());
    std::iota(places.begin(), places.end(), std::size_t{0});
    if (std::ranges::is_sorted(places, before))
        return readings;
    std::ranges::stable_sort(places, before);
    std::vector<KeptReading> sorted;
    sorted.reserve(readings.size());
    for (const std::size_t place : places)
        sorted.push_back(std::move(readings[place]));
    return sorted;
}

// Each with the resolution that was saved first and not set aside, where it has any.
Result<std::vector<QuestionStory>> questionStories(StoreFile& file, const char* where,
                                                   const QVariantList& values)
{
    const QString sql =
        QStringLiteral("SELECT %1, %2 FROM question t LEFT JOIN resolution a ON a.question = t.id %3")
            .arg(columnsSql(factShape<Question>(), "t"), columnsSql(factShape<Resolution>(), "a"),
                 QLatin1String{where});
    if (const Outcome decided = readDecided(file.connection()); !decided)
        return decided.problem();
    const Decided& decided = file.connection().decided;
    std::map<QuestionId, QuestionStory> stories;
    const Outcome read = file.connection().each(sql, values, [&](Row& row) {
        const Question question = factFrom<Question>(row);
        const std::optional<Resolution> closed = factIfAnyFrom<Resolution>(row);
        QuestionStory& story = stories.try_emplace(question.id, QuestionStory{question, {}}).first->second;
        if (closed && !decided.isSetAside(closed->id.bytes) &&
            (!story.resolution || savedBefore(*closed, *story.resolution)))
            story.resolution = closed;
    });
    if (!read)
        return read.problem();
    std::vector<QuestionStory> all;
    for (auto& [id, story] : stories)
        all.push_back(std::move(story));
    std::ranges::sort(all, savedBefore, &QuestionStory::question);
    return all;
}

// Nothing is read for it but of records in which a gap was read as it was found.
Outcome tellHowFound(StoreFile& file, std::vector<KeptReading>& kept)
{
    std::set<RecordId> records;
    for (const KeptReading& one : kept)
        if (one.reading.record && wasFoundNotLocked(one.reading))
            records.insert(*one.reading.record);
    std::set<ReadingId> notSecured;
    for (const RecordId record : records) {
        const QVariantList values{valueOf(record)};
        const auto saidNo = questionStories(file, "WHERE t.record = ? AND t.kind = 'answered-no'", values);
        if (!saidNo)
            return saidNo.problem();
        if (saidNo.value().empty())
            continue;
        auto read = factsIn<Reading>(file, "FROM reading t WHERE t.record = ?", values);
        if (!read)
            return read.problem();
        std::vector<Reading> readings = std::move(read).value();
        takeHowFound(readings, saidNo.value());
        for (const Reading& reading : readings)
            if (reading.state == SeatState::NotSecured)
                notSecured.insert(reading.id);
    }
    for (KeptReading& one : kept)
        if (notSecured.contains(one.reading.id))
            one.reading.state = SeatState::NotSecured;
    return Done{};
}

Result<std::vector<KeptReading>> keptReadings(StoreFile& file, const char* rest, const QVariantList& values)
{
    const QString sql = QStringLiteral("SELECT %1, %2 %3")
                            .arg(columnsSql(factShape<Reading>(), "t"), columnsSql(factShape<Shown>(), "s"),
                                 QLatin1String{rest});
    if (const Outcome decided = readDecided(file.connection()); !decided)
        return decided.problem();
    std::vector<KeptReading> found;
    const Outcome read = file.connection().each(sql, values, [&found](Row& row) {
        Reading reading = factFrom<Reading>(row);
        found.push_back({std::move(reading), factIfAnyFrom<Shown>(row)});
    });
    if (!read)
        return read.problem();
    if (const Outcome told = tellHowFound(file, found); !told)
        return told.problem();
    return inOrderOfMeasuring(std::move(found));
}

Result<std::vector<PartInRigging>> partsIn(StoreFile& file, const QString& table, AirframeId airframe)
{
    const QString sql =
        QStringLiteral("SELECT record, person FROM (%1) WHERE person IS NOT NULL AND record IN"
                       " (SELECT id FROM rigging_record WHERE airframe = ?)")
            .arg(table);
    std::vector<PartInRigging> parts;
    const Outcome read = file.connection().each(sql, {valueOf(airframe)}, [&parts](Row& row) {
        const auto record = row.bytes();
        const auto person = row.bytes();
        if (record && person)
            parts.push_back({RecordId{*record}, PersonId{row.asRead(*person)}});
    });
    if (!read)
        return read.problem();
    return parts;
}

// Those of `all` that nobody took back; the others go to `back`, each with who did so first.
template <typename Fact, typename SomeId>
void partTakenBack(std::vector<Fact>& all, std::optional<SomeId> LearningTakenBack::*of,
                   const std::vector<LearningTakenBack>& takenBack, std::vector<WithdrawnFact<Fact>>& back)
{
    std::erase_if(all, [&](const Fact& fact) {
        const auto found = std::ranges::find(takenBack, std::optional{fact.id}, of);
        if (found != takenBack.end())
            back.push_back({fact, *found});
        return found != takenBack.end();
    });
}

// The first row that says what no screen and no check would have let through: it was written by hand.
Outcome holdsInItself(const LearningFacts& facts)
{
    Outcome holds{Done{}};
    const auto ask = [&holds](const auto& all) {
        using Fact = typename std::decay_t<decltype(all)>::value_type;
        for (const Fact& fact : all)
            if (const Outcome one = FactChecks::holdsInItself(fact); !one && holds)
                holds = Problem{ProblemKind::DamagedFile, std::string{factShape<Fact>().table} + ": " +
                                                              one.problem().detail + ", " +
                                                              textOf(fact.id.bytes)};
    };
    ask(facts.supervisedRiggings);
    ask(facts.signOffs);
    ask(facts.practiceReadings);
    return holds;
}

} // namespace

Records::Records(StoreFile& file, IdSource& ids, const Clock& clock, FactChecking checking)
    : m_file{file}, m_ids{ids}, m_clock{clock}, m_checking{checking}, m_book{std::make_unique<FactsBook>(
                                                                          *this, file)}
{
}

Records::~Records() = default;

Writer Records::writer()
{
    return Writer{m_file.connection(), m_ids, m_clock.now(), m_checking};
}

Result<std::vector<Airframe>> Records::airframes() const
{
    return newest<Airframe>(m_file.connection());
}

Result<std::vector<Person>> Records::persons() const
{
    return newest<Person>(m_file.connection());
}

Result<std::vector<Gauge>> Records::gauges() const
{
    return newest<Gauge>(m_file.connection());
}

Result<std::vector<GaugeCheck>> Records::gaugeChecks() const
{
    return inOrderOf(&GaugeCheck::day,
                     factsIn<GaugeCheck>(m_file, "FROM gauge_check t ORDER BY t.day, t.id", {}));
}

Result<std::vector<Coupling>> Records::couplings(AirframeId airframe) const
{
    return inOrderOfNumber(
        &Coupling::riggingOrder,
        newest<Coupling>(m_file.connection(), "WHERE t.airframe = ?", {valueOf(airframe)}));
}

Result<std::vector<Surface>> Records::surfaces(AirframeId airframe) const
{
    return inOrderOfNumber(&Surface::order,
                           newest<Surface>(m_file.connection(), "WHERE t.airframe = ?", {valueOf(airframe)}));
}

Result<std::vector<QuestionStory>> Records::questions(AirframeId airframe) const
{
    auto stories = questionStories(m_file, "WHERE t.airframe = ?", {valueOf(airframe)});
    if (!stories)
        return stories;
    const auto seen = factsIn<Check>(m_file,
                                     "FROM question q JOIN answer t ON t.record = q.record"
                                     " AND t.coupling = q.coupling AND t.kind = q.check_kind"
                                     " WHERE q.airframe = ? AND q.kind = 'cannot-see'"
                                     " AND t.answer <> 'cannot-see'",
                                     {valueOf(airframe)});
    if (!seen)
        return seen.problem();
    std::vector<QuestionStory> settled = std::move(stories).value();
    settleWhatWasSeen(settled, seen.value());
    const auto doubts = factsIn<SurfaceCheck>(m_file,
                                              "FROM question q JOIN surface_answer t ON t.record = q.record"
                                              " AND t.surface = q.surface AND t.kind = q.surface_check"
                                              " WHERE q.airframe = ? AND q.kind = 'surface-doubt'",
                                              {valueOf(airframe)});
    if (!doubts)
        return doubts.problem();
    takeSurfaceAnswers(settled, doubts.value());
    const auto papers = factsIn<RiggingRecord>(
        m_file, "FROM rigging_record t WHERE t.airframe = ? AND t.entered_by IS NOT NULL",
        {valueOf(airframe)});
    if (!papers)
        return papers.problem();
    for (const RiggingRecord& paper : papers.value())
        takeMomentOfPaper(settled, paper);
    return settled;
}

Result<std::vector<Fitting>> Records::fittings(AirframeId airframe) const
{
    return inOrderOf(
        &Fitting::begins,
        factsIn<Fitting>(m_file,
                         "FROM coupling c JOIN fitting t ON t.coupling = c.id WHERE c.airframe = ?"
                         " AND c.subject = c.id ORDER BY t.begins, t.id",
                         {valueOf(airframe)}));
}

Result<std::vector<Event>> Records::events(AirframeId airframe) const
{
    return inOrderOf(&Event::day,
                     factsIn<Event>(m_file, "FROM event t WHERE t.airframe = ? ORDER BY t.day, t.id",
                                    {valueOf(airframe)}));
}

Result<std::vector<JointPlay>> Records::jointPlays(AirframeId airframe) const
{
    return inOrderOf(
        &JointPlay::day,
        factsIn<JointPlay>(m_file,
                           "FROM coupling c JOIN joint_play t ON t.coupling = c.id WHERE c.airframe = ?"
                           " AND c.subject = c.id ORDER BY t.day, t.id",
                           {valueOf(airframe)}));
}

Result<std::vector<KeptReading>> Records::readings(AirframeId airframe) const
{
    // The inner SELECT stands in one index; its rows are then read as they lie in the file, each page once.
    return keptReadings(m_file,
                        "FROM reading t LEFT JOIN shown s ON s.reading = t.id WHERE t.rowid IN"
                        " (SELECT r.rowid FROM coupling c JOIN reading r ON r.coupling = c.id"
                        " WHERE c.airframe = ? AND c.subject = c.id)",
                        {valueOf(airframe)});
}

Result<std::vector<KeptReading>> Records::readingsOf(CouplingId coupling) const
{
    return keptReadings(m_file, "FROM reading t LEFT JOIN shown s ON s.reading = t.id WHERE t.coupling = ?",
                        {valueOf(coupling)});
}

Result<KeptReading> Records::reading(ReadingId reading) const
{
    auto found = keptReadings(m_file, "FROM reading t LEFT JOIN shown s ON s.reading = t.id WHERE t.id = ?",
                              {valueOf(reading)});
    if (!found)
        return found.problem();
    if (found.value().empty())
        return Problem{ProblemKind::NotFound, "no reading " + textOf(reading.bytes)};
    return std::move(found).value().front();
}

Result<std::vector<Exclusion>> Records::exclusions(AirframeId airframe) const
{
    // CROSS JOIN: few readings are excluded, so SQLite is to begin with those.
    return inOrderOfSaving(factsIn<Exclusion>(
        m_file,
        "FROM exclusion t CROSS JOIN reading r ON r.id = t.reading JOIN coupling c ON c.id = r.coupling"
        " WHERE c.airframe = ? ORDER BY t.id",
        {valueOf(airframe)}));
}

Result<std::vector<FrozenBaseline>> Records::frozenBaselines(AirframeId airframe) const
{
    auto read = inOrderOfSaving(factsIn<FrozenBaseline>(
        m_file,
        "FROM coupling c JOIN fitting f ON f.coupling = c.id JOIN baseline t ON t.fitting = f.id"
        " WHERE c.airframe = ? AND c.subject = c.id ORDER BY t.id",
        {valueOf(airframe)}));
    if (!read)
        return read;
    std::vector<FrozenBaseline> whole = std::move(read).value();
    for (FrozenBaseline& baseline : whole)
        if (const Outcome all = readChildren(m_file.connection(), baseline.id.bytes, baseline); !all)
            return all.problem();
    return whole;
}

Result<std::vector<RiggingRecord>> Records::riggingRecords(AirframeId airframe) const
{
    return inOrderOf(&RiggingRecord::begins,
                     factsIn<RiggingRecord>(
                         m_file, "FROM rigging_record t WHERE t.airframe = ? ORDER BY t.begins_at, t.id",
                         {valueOf(airframe)}));
}

Result<std::vector<RecordClose>> Records::closings(AirframeId airframe) const
{
    auto found = inOrderOfSaving(factsIn<RecordClose>(
        m_file, "FROM rigging_record r JOIN closing t ON t.record = r.id WHERE r.airframe = ?",
        {valueOf(airframe)}));
    if (!found)
        return found;
    return theOneOfEach(std::move(found).value(), m_file.connection().decided);
}

Result<std::vector<RecordTick>> Records::notesRead(AirframeId airframe) const
{
    return inOrderOfSaving(factsIn<RecordTick>(
        m_file,
        "FROM rigging_record r JOIN tick t ON t.record = r.id WHERE r.airframe = ? AND t.kind = 'note-read'",
        {valueOf(airframe)}));
}

Result<std::vector<PartInRigging>> Records::partsInRiggings(AirframeId airframe) const
{
    return partsIn(m_file, partsInRiggingSql(), airframe);
}

Result<std::vector<PartInRigging>> Records::namedInRiggings(AirframeId airframe) const
{
    return partsIn(m_file, namedInRiggingSql(), airframe);
}

Result<RecordContent> Records::content(RecordId record) const
{
    const QVariantList values{valueOf(record)};
    // All that names the record, in the order of saving.
    const auto put = [&]<typename Fact>(std::vector<Fact>& into, Problem& problem) {
        const QString from = QStringLiteral("FROM %1 t WHERE t.record = ? ORDER BY t.id")
                                 .arg(QLatin1String{factShape<Fact>().table});
        return take(inOrderOfSaving(factsIn<Fact>(m_file, from.toLatin1().constData(), values)), into,
                    problem);
    };
    RecordContent content;
    std::vector<RiggingRecord> found;
    std::vector<RecordClose> closings;
    Problem problem;
    const bool isRead =
        take(factsIn<RiggingRecord>(m_file, "FROM rigging_record t WHERE t.id = ?", values), found,
             problem) &&
        put(content.connected, problem) && put(content.checks, problem) && put(content.readings, problem) &&
        take(inOrderOfSaving(factsIn<Exclusion>(
                 m_file,
                 "FROM exclusion t JOIN reading r ON r.id = t.reading WHERE r.record = ? ORDER BY t.id",
                 values)),
             content.exclusions, problem) &&
        put(content.interruptions, problem) && put(content.surfaceChecks, problem) &&
        put(content.surfaceMeasures, problem) && put(content.ticks, problem) &&
        put(content.jointPlays, problem) && put(closings, problem) &&
        take(questionStories(m_file, "WHERE t.record = ?", values), content.questions, problem);
    if (!isRead)
        return problem;
    if (found.empty())
        return Problem{ProblemKind::NotFound, "no rigging record " + textOf(record.bytes)};
    for (SideConnected& connected : content.connected)
        if (const Outcome all = readChildren(m_file.connection(), connected.id.bytes, connected); !all)
            return all.problem();
    takeHowFound(content.readings, content.questions);
    settleWhatWasSeen(content.questions, content.checks);
    takeSurfaceAnswers(content.questions, content.surfaceChecks);
    content.record = found.front();
    takeMomentOfPaper(content.questions, content.record);
    closings = theOneOfEach(std::move(closings), m_file.connection().decided);
    if (!closings.empty())
        content.close = closings.front();
    return content;
}

Result<LearningFacts> Records::learning(AirframeId airframe) const
{
    Problem problem;
    const auto put = [&]<typename Fact>(std::vector<Fact>& into, const char* from, bool ofAirframe = true) {
        return take(inOrderOfSaving(factsIn<Fact>(
                        m_file, from, ofAirframe ? QVariantList{valueOf(airframe)} : QVariantList{})),
                    into, problem);
    };
    constexpr const char* kOfRound = "FROM lesson_round r JOIN %1 t ON t.round = r.id WHERE r.airframe = ?";
    const auto ofRound = [&](const FactShape& shape) {
        return QString::fromLatin1(kOfRound).arg(QLatin1String{shape.table}).toLatin1();
    };
    LearningFacts facts;
    std::vector<LearningTakenBack> takenBack; // of every airframe
    const bool isRead =
        put(facts.photos, "FROM coupling c JOIN photo t ON t.coupling = c.id WHERE c.airframe = ?"
                          " AND c.subject = c.id"
                          " AND NOT EXISTS (SELECT 1 FROM photo_withdrawn WHERE photo = t.id)") &&
        put(facts.rounds, "FROM lesson_round t WHERE t.airframe = ?") &&
        put(facts.seatingAnswers, ofRound(factShape<SeatingAnswer>()).constData()) &&
        put(facts.recallAnswers, ofRound(factShape<RecallAnswer>()).constData()) &&
        put(facts.supervisedRiggings, "FROM rigging_record r JOIN supervised_rigging t ON t.record = r.id"
                                      " WHERE r.airframe = ?") &&
        put(facts.signOffs, "FROM sign_off t WHERE t.airframe = ?") &&
        put(facts.studies, "FROM crossed_study t WHERE t.airframe = ?") &&
        put(facts.studyPlaces, "FROM crossed_study s JOIN study_place t ON t.study = s.id"
                               " WHERE s.airframe = ?") &&
        put(facts.practiceReadings, "FROM coupling c JOIN practice_reading t ON t.coupling = c.id"
                                    " WHERE c.airframe = ? AND c.subject = c.id") &&
        put(facts.practiceShared, "FROM practice_shared t", false) &&
        put(takenBack, "FROM learning_taken_back t", false);
    if (!isRead)
        return problem;
    if (const Outcome holds = holdsInItself(facts); !holds)
        return holds.problem();
    partTakenBack(facts.supervisedRiggings, &LearningTakenBack::supervised, takenBack,
                  facts.supervisedTakenBack);
    partTakenBack(facts.practiceReadings, &LearningTakenBack::practice, takenBack, facts.practiceTakenBack);
    return facts;
}

Result<PhotoImage> Records::image(PhotoId photo) const
{
    const auto found = factsIn<PhotoImage>(m_file, "FROM photo_image t WHERE t.photo = ?", {valueOf(photo)});
    if (!found)
        return found.problem();
    if (found.value().empty())
        return Problem{ProblemKind::NotFound, "no photo " + textOf(photo.bytes)};
    return found.value().front();
}

Result<std::vector<ToldConflict>> Records::openConflicts() const
{
    return toldConflictsIn(m_file.connection());
}

Result<std::optional<RecordId>> Records::openRecord(AirframeId airframe) const
{
    const auto found =
        factsIn<RiggingRecord>(m_file,
                               "FROM rigging_record t WHERE t.airframe = ? AND t.origin <> 'imported-table'"
                               " AND NOT EXISTS (SELECT 1 FROM closing WHERE record = t.id)",
                               {valueOf(airframe)});
    if (!found)
        return found.problem();
    if (found.value().empty())
        return std::optional<RecordId>{};
    return std::optional{std::ranges::max_element(found.value(), savedBefore)->id};
}

} // namespace rig
