#include "core/review/record_summary.h"

#include "core/airframe/name_in.h"
#include "core/airframe/saved_before.h"
#include "core/review/coupling_history.h"
#include "core/review/last_rigging.h"
#include "core/review/not_seen.h"
#include "core/review/whole_check.h"
#include "core/rigging/at_the_close.h"
#include "core/rigging/counts_as.h"
#include "core/rigging/joint_stop.h"
#include "core/rigging/rigging_session.h"
#include "core/rigging/surface_answers.h"

#include <algorithm>
#include <map>
#include <set>

namespace rig {

namespace {

// As it was closed, but for what was put right since: a correction and the question that it asked speak as
// though they had been there. `right`: as it was closed.
RecordContent asPutRight(const RecordContent& content, RecordContent right)
{
    if (!content.close)
        return right;
    const RecordClose& end = *content.close;
    right.readings = content.readings;
    for (QuestionStory story : content.questions) {
        if (!savedBefore(end, story.question))
            continue;
        story.question.stamp.when = end.stamp.when;
        right.questions.push_back(std::move(story));
    }
    return right;
}

bool hasContentOf(const RecordContent& content, CouplingId id)
{
    const auto isOfIt = [id](const auto& one) { return one.coupling == id; };
    return std::ranges::any_of(content.checks, isOfIt) || std::ranges::any_of(content.readings, isOfIt) ||
           std::ranges::any_of(content.interruptions, isOfIt) ||
           std::ranges::any_of(content.jointPlays, isOfIt);
}

bool hasContentOf(const RecordContent& content, SurfaceId id)
{
    const auto isOfIt = [id](const auto& one) { return one.surface == id; };
    return std::ranges::any_of(content.surfaceChecks, isOfIt) ||
           std::ranges::any_of(content.surfaceMeasures, isOfIt);
}

// Those the record was about: in use and known before its end, and any other that something was said of.
template <typename Part> std::vector<Part> partsOf(const RecordContent& content, const std::vector<Part>& all)
{
    std::vector<Part> parts;
    for (const Part& part : all) {
        const bool cameLater = content.close && saveOrderOf(*content.close) < firstSavedOf(part);
        if ((!part.inUse || cameLater) && !hasContentOf(content, part.id))
            continue;
        parts.push_back(part);
        parts.back().inUse = true;
    }
    return parts;
}

// A step at a coupling that one of the two had not come to.
bool isStepOf(OpenItemKind kind)
{
    switch (kind) {
    case OpenItemKind::NotLooked:
    case OpenItemKind::NotMeasured:
    case OpenItemKind::NotPulled:
    case OpenItemKind::NotSecured:
    case OpenItemKind::NoSecondPerson:
    case OpenItemKind::SecondInParts:
        return true;
    case OpenItemKind::NotSeen:
    case OpenItemKind::Doubted:
    case OpenItemKind::OutsideReading:
    case OpenItemKind::ReadingsDisagree:
    case OpenItemKind::SidesSwapped:
    case OpenItemKind::NotJudged:
    case OpenItemKind::CannotTell:
    case OpenItemKind::SurfaceNotChecked:
    case OpenItemKind::SurfaceSetBack:
    case OpenItemKind::SurfaceDoubted:
    case OpenItemKind::NoSurfaces:
    case OpenItemKind::SeasonList:
        break;
    }
    return false;
}

class Summing
{
public:
    Summing(const AirframeFacts& facts, const RecordContent& content)
        : m_facts{facts}, m_content{content}, m_atTheClose{asAtTheClose(content)},
          m_putRight{asPutRight(content, m_atTheClose)}, m_standings{standings()},
          m_now{tellsOfItself() ? std::optional{standingsNow()} : std::nullopt}, m_wholeChecks{
                                                                                     facts, &content.record}
    {
    }

    RecordSummary make()
    {
        RecordSummary summary;
        summary.airframe = m_facts.airframe;
        summary.record = m_content.record;
        summary.leader = m_facts.nameOf(m_content.record.leader);
        summary.notesMet = notesMetBy(m_content.record, m_facts);
        summary.enteredBy = nameOf(m_content.record.enteredBy);
        summary.close = m_content.close;
        if (m_content.close) {
            summary.first = nameOf(m_content.close->first);
            summary.second = nameOf(m_content.close->second);
        }
        const auto couplings = partsOf(m_content, m_facts.couplings);
        sumUpConnected(summary, sidesOf(couplings));
        const auto surfaces = partsOf(m_content, m_facts.surfaces);
        for (const Coupling& coupling : couplings)
            summary.couplings.push_back(sumUp(coupling));
        for (const Surface& surface : surfaces)
            summary.surfaces.push_back(sumUp(surface));
        for (const RecordTick& tick : m_content.ticks)
            summary.ticks.push_back({tick.kind, m_facts.nameOf(tick.person), tick.stamp.when});
        for (const QuestionStory& story : m_content.questions)
            summary.questions.push_back(sumUp(story));
        summary.stood = stoodBefore(m_content.record, m_facts.riggingRecords, m_facts.closings);
        summary.isFirstOfSeason = summary.stood.isFirstOfSeason();
        summary.notDone = notDone({couplings, surfaces, summary.isFirstOfSeason});
        return summary;
    }

private:
    // A record that is open stands in the middle of all that is known; a closed one tells of itself, and so
    // does one from paper, whose day is another.
    CouplingStandings standings() const
    {
        return tellsOfItself() ? CouplingStandings{m_putRight, m_facts.surfaces} : standingsNow();
    }

    bool tellsOfItself() const { return m_content.close || m_content.record.isFromPaper(); }

    CouplingStandings standingsNow() const
    {
        return {m_facts, m_content.record.begins.localDay(), Day::max()};
    }

    // What another record has left open is told beside what this one says by itself.
    std::optional<CouplingStanding> graverNow(const Coupling& coupling, const CouplingStanding& then)
    {
        if (!m_now)
            return std::nullopt;
        CouplingStanding now = m_now->standingOf(coupling, history(coupling.id));
        const bool isGraver = now.isUnresolved && now.says <= Says::Asked && now.says < then.says;
        return isGraver ? std::optional{std::move(now)} : std::nullopt;
    }

    const CouplingHistory& history(CouplingId coupling)
    {
        const auto known = m_histories.find(coupling);
        if (known != m_histories.end())
            return known->second;
        return m_histories.emplace(coupling, historyOf(coupling, m_facts, m_facts.readingsOf(coupling)))
            .first->second;
    }

    std::string nameOf(const std::optional<PersonId>& person) const
    {
        return person ? m_facts.nameOf(*person) : std::string{};
    }

    std::optional<Shown> shownWith(ReadingId id) const
    {
        const KeptReading* kept = m_facts.reading(id);
        return kept ? kept->shown : std::nullopt;
    }

    void sumUpConnected(RecordSummary& summary, const std::vector<Side>& sides) const
    {
        for (const Side side : sides) {
            SummaryConnected one{side, statedFor(side, m_content.connected) != nullptr, {}};
            for (const PersonId person : whoConnected(side, m_content.connected))
                one.persons.push_back(m_facts.nameOf(person));
            summary.connected.push_back(std::move(one));
        }
        if (m_content.close && m_content.close->second)
            summary.secondName = independenceOf(*m_content.close->second, sides, m_content.connected);
        if (m_content.close && m_content.close->second) {
            const std::vector<PersonId> seconds = secondPersonsIn(m_content);
            summary.didNoSecondLook = std::ranges::find(seconds, *m_content.close->second) == seconds.end();
        }
    }

    // Those whose look or pull counts as the second person's, though they connected the joint.
    std::vector<std::string> secondsWhoConnected(const Coupling& coupling) const
    {
        const std::vector<PersonId> connected = whoConnected(coupling.side, m_content.connected);
        std::vector<std::string> names;
        for (const PersonId person : connected)
            if (std::ranges::any_of(m_content.checks, [&](const Check& check) {
                    return check.coupling == coupling.id && check.turn == Turn::Second &&
                           check.person == person && standingOf(check, m_content) == AnswerStanding::Counts;
                }))
                names.push_back(m_facts.nameOf(person));
        return names;
    }

    SummaryCoupling sumUp(const Coupling& coupling)
    {
        SummaryCoupling sum;
        sum.coupling = coupling;
        for (const Check& check : m_content.checks)
            if (check.coupling == coupling.id)
                sum.answers.push_back({check.kind, check.answer, check.turn, m_facts.nameOf(check.person),
                                       check.when, standingOf(check, m_content), nameOf(check.copiedBy)});
        for (const Reading& reading : m_content.readings)
            if (reading.coupling == coupling.id)
                sum.readings.push_back(sumUp(reading));
        for (const Interruption& interruption : m_content.interruptions)
            if (interruption.coupling == coupling.id)
                sum.interruptions.push_back(interruption);
        for (const JointPlay& play : m_content.jointPlays)
            if (play.coupling == coupling.id)
                sum.plays.push_back({play, m_facts.nameOf(play.person)});
        const std::vector<Reading> all = m_facts.readingsOf(coupling.id);
        for (const Reading& reading : standing(all, m_facts.exclusions))
            if (reading.state == SeatState::PartSeated && isKnownThen(reading))
                sum.partSeated.push_back(reading.interval);
        sum.secondsWhoConnected = secondsWhoConnected(coupling);
        sum.wholeCheck = m_wholeChecks.askedOf(coupling.id);
        sum.standing = m_standings.standingOf(coupling, history(coupling.id));
        sum.now = graverNow(coupling, sum.standing);
        return sum;
    }

    bool isKnownThen(const Reading& reading) const
    {
        return !m_content.close || savedBefore(reading, *m_content.close);
    }

    SummaryReading sumUp(const Reading& reading)
    {
        SummaryReading sum;
        sum.reading = reading;
        sum.person = m_facts.nameOf(reading.person);
        sum.copiedBy = nameOf(reading.copiedBy);
        const Gauge* gauge = reading.gauge ? m_facts.gauge(*reading.gauge) : nullptr;
        if (gauge)
            sum.gauge = gauge->name;
        sum.judgement =
            withoutSight(judgeIn(history(reading.coupling), reading),
                         notSeenAmong(m_content.questions, m_content.record.id, reading.coupling));
        sum.shown = shownWith(reading.id);
        sum.isCorrection = reading.corrects.has_value();
        for (const Reading& other : m_content.readings)
            if (other.corrects == reading.id)
                sum.replaced = SummaryCorrection{false, other.note, nameOf(other.stamp.by), other.stamp.when};
        if (const Exclusion* strike = strikeOf(reading, m_content.exclusions))
            sum.replaced =
                SummaryCorrection{true, strike->reason, nameOf(strike->stamp.by), strike->stamp.when};
        return sum;
    }

    SummarySurface sumUp(const Surface& surface) const
    {
        SummarySurface sum;
        sum.surface = surface;
        for (const SurfaceAnswer& answer : surfaceAnswersIn(m_atTheClose, m_facts.couplings, surface))
            sum.answers.push_back(
                {*answer.check, m_facts.nameOf(answer.check->person), m_facts.nameOf(answer.check->cockpit),
                 answer.isAnsweredAgain,
                 answer.hand ? nameIn(m_facts.couplings, answer.hand->coupling) : std::string{}});
        for (const SurfaceMeasure& measure : m_content.surfaceMeasures)
            if (measure.surface == surface.id)
                sum.measures.push_back({measure, m_facts.nameOf(measure.person)});
        return sum;
    }

    SummaryQuestion sumUp(const QuestionStory& story) const
    {
        SummaryQuestion sum;
        sum.question = story.question;
        sum.place = m_facts.placeOf(story.question);
        sum.resolution = story.resolution;
        sum.isOwnDecision = isOwnDecision(story, m_content.readings);
        if (!story.resolution)
            return sum;
        sum.resolvedBy = m_facts.nameOf(story.resolution->person);
        sum.copiedBy = nameOf(story.resolution->copiedBy);
        return sum;
    }

    std::vector<OpenItem> notDone(const RecordScope& scope)
    {
        std::vector<OpenItem> items = reviewOf(m_atTheClose, scope, [this](const Reading& reading) {
                                          return judgeIn(history(reading.coupling), reading);
                                      }).openItems;
        // What is another kind of coupling since is asked other things; they were not asked then.
        if (m_content.close && m_content.close->closing == Closing::Complete)
            std::erase_if(items, [](const OpenItem& item) { return isStepOf(item.kind); });
        return items;
    }

    const AirframeFacts& m_facts;
    const RecordContent& m_content;
    RecordContent m_atTheClose;
    RecordContent m_putRight;
    CouplingStandings m_standings;
    std::optional<CouplingStandings> m_now; // none: `m_standings` are those of now
    WholeChecks m_wholeChecks;
    std::map<CouplingId, CouplingHistory> m_histories;
};

} // namespace

const SummaryReading* SummaryCoupling::last() const
{
    const SummaryReading* last = nullptr;
    for (const SummaryReading& one : readings) {
        if (one.replaced || one.reading.state != SeatState::Locked)
            continue;
        if (!last || one.reading.turn == Turn::First || last->reading.turn == Turn::Second)
            last = &one;
    }
    return last;
}

AnswerStanding standingOf(const Check& check, const RecordContent& content)
{
    const bool isBefore =
        std::ranges::any_of(content.interruptions, [&check](const Interruption& interruption) {
            return interruption.coupling == check.coupling && interruption.turn == check.turn &&
                   savedBefore(check, interruption);
        });
    if (isBefore)
        return AnswerStanding::BeforeInterruption;
    const bool isRepeated = std::ranges::any_of(content.checks, [&check](const Check& other) {
        return other.coupling == check.coupling && other.turn == check.turn && other.kind == check.kind &&
               savedBefore(check, other);
    });
    return isRepeated ? AnswerStanding::AnsweredAgain : AnswerStanding::Counts;
}

namespace {

// Everybody who led it, connected, looked, measured, tried a surface or closed, in the order of the list of
// people.
std::vector<SummaryStanding> standingsIn(const AirframeFacts& facts, const RecordContent& content,
                                         const PersonStandings& people)
{
    std::set<PersonId> named{content.record.leader};
    if (content.close && content.close->first)
        named.insert(*content.close->first);
    if (content.close && content.close->second)
        named.insert(*content.close->second);
    for (const SideConnected& one : content.connected)
        named.insert(one.persons.begin(), one.persons.end());
    for (const Check& check : content.checks)
        named.insert(check.person);
    for (const Reading& reading : content.readings)
        named.insert(reading.person);
    for (const SurfaceCheck& check : content.surfaceChecks)
        named.insert({check.person, check.cockpit});
    std::vector<SummaryStanding> standings;
    for (const Person& person : facts.persons)
        if (const auto found = people.find(person.id); found != people.end() && named.contains(person.id))
            standings.push_back({person.name, found->second});
    return standings;
}

} // namespace

RecordSummary summaryOf(const AirframeFacts& facts, const RecordContent& content,
                        const PersonStandings& people)
{
    RecordSummary summary = Summing{facts, content}.make();
    summary.standings = standingsIn(facts, content, people);
    return summary;
}

std::optional<RecordId> lastClosedRecord(const AirframeFacts& facts)
{
    const auto last = lastEnded(facts, Ended::ByPeople);
    return last ? std::optional{last->record->id} : std::nullopt;
}

} // namespace rig
