#include "core/review/coupling_standing.h"

#include "core/airframe/saved_before.h"
#include "core/review/known_airframe.h"
#include "core/review/not_seen.h"
#include "core/rigging/circuit_hand.h"

#include <algorithm>
#include <ranges>
#include <tuple>

namespace rig {

namespace {

// Clocks differ by less from place to place.
constexpr std::chrono::days kDayBefore{1};

bool isMeasuredBefore(const Reading* one, const Reading* other)
{
    return std::tie(one->when.utcSeconds, one->id) < std::tie(other->when.utcSeconds, other->id);
}

// Who sees later what could not be seen has changed nothing.
bool wasAtTheJoint(const QuestionStory& story)
{
    const bool isSeenLater = story.resolution && story.resolution->answered;
    return story.question.isAtTheJoint() && !isSeenLater;
}

Says saysWhileOpen(const Question& question)
{
    if (question.kind == QuestionKind::OutsideReading)
        return Says::Outside;
    return question.isStop() ? Says::Stopped : Says::Asked;
}

} // namespace

Says saysOf(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Outside:
        return Says::Outside;
    case Verdict::CannotTell:
        return Says::CannotTell;
    case Verdict::NoBandYet:
        return Says::NoBandYet;
    case Verdict::NearEdge:
        return Says::NearEdge;
    case Verdict::Inside:
        break;
    }
    return Says::Inside;
}

std::optional<DoubtedSurface> doubtedFor(const Coupling& coupling, const Surface& surface,
                                         const Question& question)
{
    if (!mayMove(coupling.circuit, surface.kind))
        return std::nullopt;
    SurfaceTie tie = coupling.side == surface.side ? SurfaceTie::Own : SurfaceTie::Circuit;
    if (coupling.circuit != surface.kind || coupling.circuit == Circuit::Other)
        tie = SurfaceTie::Unknown;
    return DoubtedSurface{surface.name, tie, question.surfaceAnswer, question.isWrongMovement()};
}

std::optional<Verdict> CouplingStanding::verdict() const
{
    if (!judgement || saysOf(judgement->verdict) != says)
        return std::nullopt;
    return judgement->verdict;
}

void CouplingStanding::standBeside(Says told)
{
    if (says == Says::Inside)
        says = told;
}

CouplingStandings::CouplingStandings(const AirframeFacts& facts, Day from, Day to)
    : m_from{from}, m_to{to}, m_heldOn{to}
{
    if (const RiggingRecord* open = openRecordIn(facts); open && open->begins.localDay() <= to)
        m_hidden.insert(facts.closedToSecond.begin(), facts.closedToSecond.end());
    std::vector<RecordId> closed;
    std::vector<RecordId> closedLater;
    for (const RecordClose& close : facts.closings)
        (close.stamp.when.localDay() <= to ? closed : closedLater).push_back(close.record);
    std::ranges::sort(closed);
    std::ranges::sort(closedLater);
    Day opened = Day::max();
    for (const RiggingRecord& record : facts.riggingRecords) {
        if (record.origin == RecordOrigin::ImportedTable || record.begins.localDay() > to ||
            std::ranges::binary_search(closed, record.id) ||
            // One that was typed in afterwards had come to its end on its day.
            (record.isFromPaper() && std::ranges::binary_search(closedLater, record.id)))
            continue;
        m_open.insert(record.id);
        opened = std::min(opened, record.begins.localDay());
    }
    takeStrikes(facts.exclusions);
    takeQuestions(facts.questions, facts.surfaces);
    takeBackwards(facts, std::min(from, opened), opened);
}

// Histories grow long: no further back than anything can speak, and not beyond the day of the last reading of
// each coupling, unless a record has been open since before.
void CouplingStandings::takeBackwards(const AirframeFacts& facts, Day back, Day opened)
{
    std::map<CouplingId, FittingId> silent; // couplings of whose fitting nothing was met yet
    for (const Coupling& coupling : facts.couplings)
        if (const auto holding = fittingOn(m_to, coupling.id, facts.fittings))
            silent.emplace(coupling.id, holding->id);
    for (const KeptReading& kept : facts.readings | std::views::reverse) {
        const Reading& reading = kept.reading;
        const Day day = reading.when.localDay();
        if (m_asked.empty() && day + kDayBefore < back)
            break;
        take(reading);
        const auto met = silent.find(reading.coupling);
        if (met == silent.end() || met->second != reading.fitting || !maySpeak(reading) ||
            isSetAside(reading))
            continue;
        silent.erase(met);
        if (silent.empty())
            back = std::max(back, std::min(day, opened));
    }
}

CouplingStandings::CouplingStandings(const RecordContent& record, std::span<const Surface> surfaces)
    : m_from{record.record.begins.localDay()}, m_to{record.close ? record.close->stamp.when.localDay()
                                                                 : Day::max()},
      m_heldOn{record.record.isFromPaper() ? m_from : m_to}
{
    if (!record.close)
        m_open.insert(record.record.id);
    takeStrikes(record.exclusions);
    takeQuestions(record.questions, surfaces);
    for (const Reading& reading : record.readings | std::views::reverse)
        take(reading);
}

void CouplingStandings::takeStrikes(const std::vector<Exclusion>& exclusions)
{
    for (const Exclusion& one : exclusions)
        if (one.stamp.when.localDay() <= m_to)
            m_struck.insert(one.reading); // of those that may speak, which were all read at a rigging
}

void CouplingStandings::takeQuestions(const std::vector<QuestionStory>& questions,
                                      std::span<const Surface> surfaces)
{
    for (const QuestionStory& story : questions) {
        const Question& question = story.question;
        if (question.stamp.when.localDay() > m_to)
            continue;
        const auto surface =
            std::ranges::find(surfaces, question.surface.value_or(SurfaceId{}), &Surface::id);
        if (surface != surfaces.end() && story.isOpenAfter(m_to))
            m_doubted.push_back({&*surface, &question});
        if (!question.coupling)
            continue;
        m_known[*question.coupling].questions.push_back(&story);
        if (question.reading && story.isOpenAfter(m_to) && question.kind != QuestionKind::Asked)
            m_asked.insert(*question.reading);
    }
}

void CouplingStandings::take(const Reading& reading)
{
    const bool speaks = maySpeak(reading);
    const bool isAsked = m_asked.erase(reading.id) > 0;
    if (!speaks && !isAsked)
        return;
    m_known[reading.coupling].readings.push_back(&reading);
    if (speaks && reading.corrects)
        m_superseded.insert(*reading.corrects);
}

bool CouplingStandings::maySpeak(const Reading& reading) const
{
    const Day day = reading.when.localDay();
    return reading.purpose == Purpose::Rigging && day <= m_to &&
           (day >= m_from || (reading.record && m_open.contains(*reading.record)));
}

bool CouplingStandings::isSetAside(const Reading& reading) const
{
    return m_superseded.contains(reading.id) || m_struck.contains(reading.id);
}

bool CouplingStandings::isResolvedSince(const Known& known, const Reading& reading) const
{
    return std::ranges::any_of(known.questions, [&](const QuestionStory* story) {
        return !story->isOpenAfter(m_to) && wasAtTheJoint(*story) && savedBefore(reading, *story->resolution);
    });
}

// Of a record that is open, where nobody has asked about an outside reading of this coupling.
bool CouplingStandings::isUnasked(const Known& known, const Reading& reading) const
{
    return maySpeak(reading) && reading.record && m_open.contains(*reading.record) &&
           std::ranges::none_of(known.questions, [&reading](const QuestionStory* story) {
               return story->question.kind == QuestionKind::OutsideReading &&
                      story->question.record == reading.record;
           });
}

CouplingStandings::Spoken CouplingStandings::spokenBy(const Known& known, const Reading& reading,
                                                      const CouplingHistory& history) const
{
    if (reading.state == SeatState::PartSeated)
        return {Says::PartSeated, std::nullopt};
    if (reading.state == SeatState::NotSecured)
        return {Says::NotSecured, std::nullopt};
    std::optional<CheckKind> notSeen;
    for (const QuestionStory* story : known.questions)
        if (story->isOpenAfter(m_to) && story->question.kind == QuestionKind::CannotSee && reading.record &&
            story->question.record == reading.record)
            notSeen = story->question.check;
    const Judgement judgement = withoutSight(judgeIn(history, reading), notSeen);
    return {saysOf(judgement.verdict), judgement};
}

void CouplingStandings::say(const Reading& reading, const Spoken& spoken, CouplingStanding& standing)
{
    standing.says = spoken.says;
    standing.reading = reading;
    standing.judgement = spoken.judgement;
}

void CouplingStandings::sayUnresolved(const Known& known, const CouplingHistory& history,
                                      CouplingStanding& standing) const
{
    const Question* gravest = nullptr;
    for (const QuestionStory* story : known.questions) {
        if (!story->isOpenAfter(m_to))
            continue;
        ++standing.openQuestions;
        if (!gravest || gravest->gravity() < story->question.gravity())
            gravest = &story->question;
    }
    if (gravest) {
        standing.asked = gravest->kind;
        standing.askedIn = gravest->record;
        standing.askedAbout = gravest->check;
        standing.isUnresolved = true;
        for (const Reading* reading : known.readings)
            if (gravest->reading == reading->id)
                say(*reading, spokenBy(known, *reading, history), standing);
        standing.says = saysWhileOpen(*gravest);
    }
    if (standing.says == Says::Outside)
        return;
    for (const Reading* reading : known.readings) {
        if (reading->state != SeatState::Locked || !isUnasked(known, *reading))
            continue;
        const Spoken spoken = spokenBy(known, *reading, history);
        if (spoken.says != Says::Outside)
            continue;
        say(*reading, spoken, standing);
        standing.isUnresolved = true;
        return;
    }
}

// Measuring again adds a reading and takes none away, so a rigging speaks by all of them. What was read
// before somebody found out what it was is about another state of the joint, where anything was read since.
std::vector<const Reading*> CouplingStandings::latestOf(const Known& known,
                                                        const CouplingHistory& history) const
{
    const FittingHistory* holding = history.on(m_heldOn);
    std::vector<const Reading*> standing;
    for (const Reading* reading : known.readings)
        if (holding && reading->fitting == holding->fitting.id && maySpeak(*reading) && !isSetAside(*reading))
            standing.push_back(reading);
    if (standing.empty())
        return {};
    const Reading* last = *std::ranges::max_element(standing, isMeasuredBefore);
    if (last->state != SeatState::Locked || !last->record)
        return {last};
    std::erase_if(standing, [&](const Reading* one) {
        return one->record != last->record || one->when.localDay() != last->when.localDay() ||
               one->state != SeatState::Locked || (one != last && isResolvedSince(known, *one));
    });
    std::ranges::sort(standing, isMeasuredBefore);
    return standing;
}

// What moved wrongly before another “no” and what could only not be seen; then its own surface before another
// of the circuit, of those the one that was asked about first.
std::optional<DoubtedSurface> CouplingStandings::doubtedAt(const Coupling& coupling) const
{
    std::optional<DoubtedSurface> nearest;
    const auto order = [](const DoubtedSurface& one) {
        return std::tuple{!one.movedWrong, !one.saidNo(), one.tie};
    };
    for (const Doubted& one : m_doubted) {
        const auto doubted = doubtedFor(coupling, *one.surface, *one.question);
        if (doubted && (!nearest || order(*doubted) < order(*nearest)))
            nearest = doubted;
    }
    return nearest;
}

CouplingStanding CouplingStandings::standingOf(const Coupling& coupling, const CouplingHistory& history) const
{
    CouplingStanding standing = toldOf(coupling, history);
    standing.factsInDoubt = history.factsInDoubt;
    if (standing.factsInDoubt)
        standing.says = std::min(standing.says, Says::InDoubt);
    return standing;
}

CouplingStanding CouplingStandings::toldOf(const Coupling& coupling, const CouplingHistory& history) const
{
    CouplingStanding standing = ownStandingOf(coupling, history);
    const std::optional<DoubtedSurface> surface = doubtedAt(coupling);
    const Says told = surface && surface->saidNo() ? Says::Stopped : Says::Asked;
    if (!surface || standing.says <= told)
        return hiddenOf(coupling, standing);
    standing.surface = surface;
    standing.says = told;
    standing.asked = QuestionKind::SurfaceDoubt;
    standing.isUnresolved = true;
    return standing;
}

// What is told of an earlier rigging would stand where the finding of today is kept back.
CouplingStanding CouplingStandings::hiddenOf(const Coupling& coupling, const CouplingStanding& standing) const
{
    if (standing.isUnresolved || !hasGap(coupling) || !m_hidden.contains(coupling.id))
        return standing;
    CouplingStanding hidden;
    hidden.says = Says::Hidden;
    return hidden;
}

CouplingStanding CouplingStandings::ownStandingOf(const Coupling& coupling,
                                                  const CouplingHistory& history) const
{
    CouplingStanding standing;
    if (!hasGap(coupling))
        standing.says = Says::NoGap;
    const auto known = m_known.find(coupling.id);
    if (known == m_known.end())
        return standing;
    sayUnresolved(known->second, history, standing);
    if (!hasGap(coupling))
        return standing;
    std::optional<Spoken> gravest;
    const Reading* speaker = nullptr;
    const std::vector<const Reading*> latest = latestOf(known->second, history);
    for (const Reading* reading : latest) {
        Spoken spoken = spokenBy(known->second, *reading, history);
        if (gravest && gravest->says < spoken.says)
            continue;
        gravest = std::move(spoken);
        speaker = reading;
    }
    if (!gravest)
        return standing;
    const Says unresolved = standing.says;
    const bool isLatest = !standing.reading || standing.reading->id == speaker->id;
    if (!standing.isUnresolved || gravest->says < unresolved || isLatest) {
        say(*speaker, *gravest, standing);
        standing.among = static_cast<int>(latest.size());
    }
    if (standing.isUnresolved)
        standing.says = std::min(standing.says, unresolved);
    return standing;
}

} // namespace rig
