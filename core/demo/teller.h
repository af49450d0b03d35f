#pragma once

#include "core/airframe/id_source.h"
#include "core/demo/scene.h"
#include "core/numbers/dice.h"
#include "core/review/coupling_history.h"
#include "core/store/records.h"
#include "core/store/store_file.h"

#include <deque>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace rig::demo {

Day dayOf(int year, unsigned month, unsigned day);

// Goes where the story is.
class StoryClock : public Clock
{
public:
    Moment now() const override { return m_now; }
    void set(Day day, int hour, int minute); // local time, summer time from April to October
    void passSeconds(int seconds) { m_now.utcSeconds += seconds; }

private:
    Moment m_now;
};

// A coupling of the scene with what the file knows of it so far, and the truth behind its readings.
struct Joint
{
    const CouplingPlan* plan = nullptr;
    Coupling coupling;
    double mean = 0;     // mm, of the fitting that holds now
    double scatter = 0;  // mm
    double widest = 2.2; // in scatters: how far a locked gap of this story strays
    FittingId fitting;
    std::vector<Fitting> fittings;
    std::vector<Reading> readings;
    std::vector<Exclusion> exclusions;
    std::vector<FrozenBaseline> frozen;
    std::optional<CouplingHistory> history; // as far as it is still true
    std::optional<QuestionId> question;     // open
};

// How one reading comes about.
struct Taking
{
    Who who = Who::Oren;
    Tool tool = Tool::SetA;
    double gap = 0;   // mm, the truth
    double shift = 0; // mm, by worn leaves or a tilted one
    std::optional<RecordId> record;
    Turn turn = Turn::First;
    Purpose purpose = Purpose::Rigging;
    SeatState state = SeatState::Locked;
    std::optional<ReadingId> corrects;
    Saying note = {};
    std::optional<Who> second = {}; // who stands by
};

// Tells the story into a file: one call per thing that happens, stamped by the story's clock. The first
// problem stays and ends the telling; see outcome().
class Teller
{
public:
    Teller(StoreFile& file, Language language);

    Records& records() { return m_records; }
    StoryClock& clock() { return m_clock; }
    numbers::Dice& dice() { return m_dice; }
    Outcome outcome() const;
    std::string told(const Saying& saying) const { return saying.in(m_language); }

    void introduce(); // people, gauges, airframes, couplings
    void checkGauge(Tool tool, const Saying& found);
    // A check that puts the gauge aside; what it asks is closed at once.
    void putAside(Tool tool, const Saying& found, Day quarantineFrom, const Saying& done);
    void happen(int airframe, EventKind kind, const Saying& note, const Joint* joint = nullptr);
    void annualDone(int airframe, Day nextDue);
    void feelPlay(const Joint& joint, Who who, PlayFound along, PlayFound across, const Saying& note);
    // A question about the joint, and how it was closed.
    void ask(Joint& joint, Question question, Who who);
    void resolve(Joint& joint, Who who, const Saying& found, const Saying& done);

    Stamp by(Who who) const;
    PersonId person(Who who) const { return m_persons[static_cast<std::size_t>(who)]; }
    AirframeId airframe(int index) const { return m_airframes[static_cast<std::size_t>(index)].id; }
    const std::vector<Surface>& surfaces(int airframe) const
    {
        return m_surfaces[static_cast<std::size_t>(airframe)];
    }
    // The first rigging of this airframe in the year that the clock shows; true once.
    bool isFirstOfSeason(int airframe);
    // The note of the last record of this airframe that nobody has noted as read yet; once.
    std::optional<RecordId> noteLeft(int airframe);
    void leaveNote(RecordId record);
    void began(int airframe, RecordId record) { m_begun.emplace(record, airframe); }
    std::vector<Joint*> joints(int airframe);
    Joint& joint(int airframe, const Saying& name);

    // A new fitting from today on, with the truth it brings.
    void fit(Joint& joint, FittingKind kind, const Saying& reason, double mean, double scatter);
    double lockedGap(const Joint& joint)
    {
        return joint.mean + joint.scatter * m_dice.normalWithin(joint.widest);
    }
    // The latest reading of the joint is the one that was taken.
    Verdict read(Joint& joint, const Taking& taking);          // as shown on the spot
    void exclude(Joint& joint, Who who, const Saying& reason); // the latest reading
    void freeze(Joint& joint, Who first, Who second);          // every admitted reading of the fitting

    // Keeps the first problem.
    template <typename T> T keep(Result<T> result)
    {
        if (result)
            return std::move(result).value();
        if (!m_problem)
            m_problem = result.problem();
        return T{};
    }

private:
    void introducePeople();
    void introduceGauges();
    void introduceAirframes();
    void introduceCouplings();
    GaugeCheck checkOf(Tool tool, const Saying& found) const;
    std::vector<Question> questionsOf(const GaugeCheck& check);
    void close(QuestionId question, Who who, const Saying& found, const Saying& done);
    const Gauge& gauge(Tool tool) const { return m_gauges[static_cast<std::size_t>(tool)]; }
    const CouplingHistory& historyWith(Joint& joint, const Reading& reading) const;

    Language m_language;
    StoryClock m_clock;
    IdSource m_ids;
    Records m_records;
    numbers::Dice m_dice;
    std::optional<Problem> m_problem;
    std::vector<PersonId> m_persons;
    std::vector<Gauge> m_gauges;
    std::vector<GaugeCheck> m_checks;
    std::vector<Airframe> m_airframes;
    std::map<RecordId, int> m_begun;                       // on which airframe
    std::map<int, RecordId> m_notesLeft;                   // the last one of each
    std::vector<std::vector<Surface>> m_surfaces;          // of each airframe
    std::set<std::pair<int, std::chrono::year>> m_seasons; // that have begun
    std::deque<Joint> m_joints;
};

} // namespace rig::demo
