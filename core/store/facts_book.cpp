#include "core/store/facts_book.h"

#include "core/review/blind_readings.h"
#include "core/store/airframe_facts.h"
#include "core/store/connection.h"

#include <algorithm>
#include <array>
#include <set>

namespace rig {

namespace {

// One moment of the file for several SELECTs. Within a transaction that is so already.
class OneMoment
{
public:
    explicit OneMoment(StoreFile::Connection& connection)
        : m_connection{connection}, m_begun{Done{}}, m_isOwn{connection.depth == 0}
    {
        if (m_isOwn)
            m_begun = m_connection.run(QStringLiteral("BEGIN"));
    }
    ~OneMoment()
    {
        if (m_isOwn && m_begun)
            static_cast<void>(m_connection.run(QStringLiteral("COMMIT")));
    }
    OneMoment(const OneMoment&) = delete;
    OneMoment& operator=(const OneMoment&) = delete;

    const Outcome& begun() const { return m_begun; }

private:
    StoreFile::Connection& m_connection;
    Outcome m_begun;
    bool m_isOwn;
};

template <typename Fact> Outcome put(Result<std::vector<Fact>> read, std::vector<Fact>& into)
{
    Problem problem;
    if (!take(std::move(read), into, problem))
        return problem;
    return Done{};
}

Outcome putAirframe(Result<std::vector<Airframe>> read, Airframe& into)
{
    if (!read)
        return read.problem();
    const auto found = std::ranges::find(read.value(), into.id, &Airframe::id);
    if (found == read.value().end())
        return Problem{ProblemKind::NotFound, textOf(into.id.bytes)};
    into = *found;
    return Done{};
}

} // namespace

FactsBook::FactsBook(const Records& records, StoreFile& file) : m_records{records}, m_file{file} {}

Result<const KnownAirframe*> FactsBook::airframe(AirframeId airframe)
{
    if (const Outcome upToDate = bringUpToDate(airframe); !upToDate) {
        drop();
        return upToDate.problem();
    }
    return &*m_known;
}

Result<const KnownAirframe*> FactsBook::toldOpenly(AirframeId airframe, std::optional<Day> today)
{
    const auto known = this->airframe(airframe);
    if (!known)
        return known;
    const AirframeFacts& facts = known.value()->facts();
    const RiggingRecord* open = openRecordIn(facts);
    const bool isLeftBehind = open && !open->isFromPaper() && today && open->begins.localDay() != *today;
    if (!open || isLeftBehind)
        return known;
    const auto content = this->content(open->id);
    if (!content)
        return content.problem();
    std::vector<CouplingId> closed =
        closedToTheSecond(*content.value(), facts.questions, facts.couplings, m_isBlind);
    if (closed.empty())
        return known;
    const std::pair now{m_seen, m_writesElsewhere};
    if (!m_openly || m_openlyOf != now || m_openly->facts().airframe.id != airframe)
        m_openly.emplace(withoutWhatIsClosed(facts, *content.value(), std::move(closed)));
    m_openlyOf = now;
    return &*m_openly;
}

void FactsBook::setBlind(bool isBlind)
{
    if (m_isBlind != isBlind)
        m_openly.reset();
    m_isBlind = isBlind;
}

Result<const LearningFacts*> FactsBook::learning(AirframeId airframe)
{
    const auto writes = writesElsewhere();
    if (!writes)
        return writes.problem();
    const std::pair now{airframe, writes.value()};
    const bool isHeld = m_learning && m_learningOf == now && isLearningUpToDate();
    m_learningSeen = m_file.connection().saved.count();
    if (isHeld)
        return &*m_learning;
    m_learning.reset();
    auto read = m_records.learning(airframe);
    if (!read)
        return read.problem();
    m_learningOf = now;
    return &m_learning.emplace(std::move(read).value());
}

// A key press of a rigging saves something else, and must not read all of it again.
bool FactsBook::isLearningUpToDate() const
{
    constexpr std::array<std::string_view, 12> kTables{
        "photo",         "photo_withdrawn",    "lesson_round",    "seating_answer",
        "recall_answer", "supervised_rigging", "sign_off",        "crossed_study",
        "study_place",   "practice_reading",   "practice_shared", "learning_taken_back"};
    const auto saved = m_file.connection().saved.since(m_learningSeen);
    return saved && std::ranges::none_of(*saved, [&](const SavedLog::Saved& one) {
               return std::ranges::find(kTables, one.table) != kTables.end();
           });
}

Result<std::int64_t> FactsBook::writesElsewhere() const
{
    return m_file.changesElsewhere();
}

Result<const RecordContent*> FactsBook::content(RecordId record)
{
    const auto held = m_contents.find(record);
    if (held != m_contents.end())
        return &held->second;
    auto content = m_records.content(record);
    if (!content)
        return content.problem();
    return &m_contents.emplace(record, std::move(content).value()).first->second;
}

Result<const AirframeFacts*> FactsBook::withoutReadings(AirframeId airframe)
{
    if (m_known && m_known->facts().airframe.id == airframe) {
        const auto known = this->airframe(airframe);
        return known ? Result<const AirframeFacts*>{&known.value()->facts()} : known.problem();
    }
    const OneMoment moment{m_file.connection()};
    const Outcome read = moment.begun() ? bringRestUpToDate(airframe) : moment.begun();
    if (!read) {
        drop();
        return read.problem();
    }
    return &*m_rest;
}

Result<bool> FactsBook::isUpToDate(AirframeId airframe)
{
    const auto writes = writesElsewhere();
    if (!writes)
        return writes.problem();
    const AirframeFacts* held = m_known ? &m_known->facts() : m_rest ? &*m_rest : nullptr;
    const auto saved = m_file.connection().saved.since(m_seen);
    return held && held->airframe.id == airframe && m_writesElsewhere == writes.value() && saved &&
           (m_known || saved->empty());
}

Outcome FactsBook::bringUpToDate(AirframeId airframe)
{
    const auto isHeld = isUpToDate(airframe);
    if (!isHeld)
        return isHeld.problem();
    if (isHeld.value() && m_known)
        return takeIn(*m_file.connection().saved.since(m_seen));
    return read(airframe);
}

Outcome FactsBook::read(AirframeId airframe)
{
    m_known.reset();
    const OneMoment moment{m_file.connection()};
    if (!moment.begun())
        return moment.begun();
    if (const Outcome rest = bringRestUpToDate(airframe); !rest)
        return rest;
    if (const Outcome readings = put(m_records.readings(airframe), m_rest->readings); !readings)
        return readings;
    m_known.emplace(*std::exchange(m_rest, std::nullopt));
    return Done{};
}

// Within one moment of the file, while m_known is of no use.
Outcome FactsBook::bringRestUpToDate(AirframeId airframe)
{
    const auto isHeld = isUpToDate(airframe);
    if (!isHeld)
        return isHeld.problem();
    if (isHeld.value() && m_rest)
        return Done{};
    drop();
    const auto writes = writesElsewhere();
    if (!writes)
        return writes.problem();
    auto rest = factsWithoutReadings(m_records, airframe);
    if (!rest)
        return rest.problem();
    m_writesElsewhere = writes.value();
    m_seen = m_file.connection().saved.count();
    m_rest = std::move(rest).value();
    return Done{};
}

Outcome FactsBook::takeIn(std::span<const SavedLog::Saved> saved)
{
    if (saved.empty())
        return Done{};
    m_contents.clear(); // each is small, whatever the length of the history
    std::set<std::string_view> lists;
    for (const SavedLog::Saved& one : saved) {
        if (one.table != "reading") {
            lists.insert(one.table);
            continue;
        }
        auto reading = m_records.reading(ReadingId{one.id});
        if (!reading)
            return reading.problem();
        if (std::ranges::find(m_known->facts().couplings, reading.value().reading.coupling, &Coupling::id) !=
            m_known->facts().couplings.end())
            m_known->take(std::move(reading).value());
    }
    for (const std::string_view list : lists)
        if (const Outcome read = readAgain(list); !read)
            return read;
    m_seen = m_file.connection().saved.count();
    return Done{};
}

Outcome FactsBook::readAgain(std::string_view table)
{
    const AirframeId airframe = m_known->facts().airframe.id;
    AirframeFacts& rest = m_known->changeTheRest();
    if (table == "airframe")
        return putAirframe(m_records.airframes(), rest.airframe);
    if (table == "person")
        return put(m_records.persons(), rest.persons);
    if (table == "coupling")
        return put(m_records.couplings(airframe), rest.couplings);
    if (table == "surface")
        return put(m_records.surfaces(airframe), rest.surfaces);
    if (table == "event")
        return put(m_records.events(airframe), rest.events);
    if (table == "joint_play")
        return put(m_records.jointPlays(airframe), rest.jointPlays);
    if (table == "rigging_record")
        return put(m_records.riggingRecords(airframe), rest.riggingRecords);
    if (table == "closing")
        return put(m_records.closings(airframe), rest.closings);
    if (table == "question" || table == "resolution")
        return put(m_records.questions(airframe), rest.questions);
    if (table == "tick")
        return put(m_records.notesRead(airframe), rest.notesRead);
    if (table == "gauge")
        return put(m_records.gauges(), m_known->changeWhatIsJudged().gauges);
    if (table == "gauge_check")
        return put(m_records.gaugeChecks(), m_known->changeWhatIsJudged().gaugeChecks);
    if (table == "fitting")
        return put(m_records.fittings(airframe), m_known->changeWhatIsJudged().fittings);
    if (table == "exclusion")
        return put(m_records.exclusions(airframe), m_known->changeWhatIsJudged().exclusions);
    if (table == "baseline")
        return put(m_records.frozenBaselines(airframe), m_known->changeWhatIsJudged().frozenBaselines);
    // A later answer closes what could not be seen; without such a question nothing is read for it.
    if (table == "answer" && std::ranges::any_of(rest.questions, [](const QuestionStory& story) {
            return story.isOpen() && story.question.kind == QuestionKind::CannotSee;
        }))
        return put(m_records.questions(airframe), rest.questions);
    // Likewise what was called at a surface that was not seen before.
    if (table == "surface_answer" && std::ranges::any_of(rest.questions, [](const QuestionStory& story) {
            return story.isOpen() && story.question.kind == QuestionKind::SurfaceDoubt;
        }))
        return put(m_records.questions(airframe), rest.questions);
    return Done{}; // the rest stands in the content of a record alone
}

void FactsBook::drop()
{
    m_known.reset();
    m_rest.reset();
    m_openly.reset();
    m_contents.clear();
}

} // namespace rig
