#include "core/demo/teller.h"

#include "core/demo/sayings.h"
#include "core/demo/surfaces.h"
#include "core/review/quarantine_effect.h"
#include "core/rigging/counts_as.h"
#include "core/store/airframe_facts.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace rig::demo {

namespace {

// One of a few tried: with it the bands lie close to the scene's figures, and only the story's own readings
// fall outside (tests/core/demo).
constexpr std::uint64_t kSeed = 3;

std::vector<Gap> stepsOf(int firstUm, int lastUm, int stepUm)
{
    std::vector<Gap> sizes;
    for (int um = firstUm; um <= lastUm; um += stepUm)
        sizes.push_back(Gap::micrometres(um));
    return sizes;
}

Gauge gaugeOf(const char* name, GaugeSet set, int toleranceUm, std::string note)
{
    Gauge gauge;
    gauge.name = name;
    gauge.set = std::move(set);
    gauge.tolerance = Gap::micrometres(toleranceUm);
    gauge.note = std::move(note);
    return gauge;
}

// In the order of Tool.
std::vector<Gauge> gaugePlans(Language language)
{
    return {
        gaugeOf("A", {GaugeKind::Leaves, stepsOf(50, 1000, 50)}, 4, says::kSetA.in(language)),
        gaugeOf("B", {GaugeKind::Leaves, stepsOf(50, 1000, 50)}, 4, says::kSetB.in(language)),
        gaugeOf("C", {GaugeKind::Leaves, stepsOf(20, 1000, 20)}, 3, says::kSetC.in(language)),
        gaugeOf("P", {GaugeKind::Pins, stepsOf(800, 2000, 50)}, 3, says::kPins.in(language)),
        gaugeOf("T", GaugeSet::taper(Gap::micrometres(50)), 25, says::kTaper.in(language)),
    };
}

// The thickest that enters the gap, and what follows from it.
GaugeReading measure(const GaugeSet& set, double gapMm)
{
    const auto gap = Gap::micrometres(static_cast<std::int32_t>(std::lround(std::max(gapMm, 0.0) * 1000)));
    Gap size = gap;
    if (set.kind() == GaugeKind::Taper) {
        const std::int32_t edge = set.resolution().inMicrometres();
        size = Gap::micrometres((gap.inMicrometres() + edge / 2) / edge * edge);
    } else {
        const std::vector<GaugeStep> steps = set.steps();
        const auto above = std::ranges::upper_bound(steps, gap, {}, &GaugeStep::size);
        if (above == steps.begin())
            return std::get<GaugeReading>(set.noLeafEnters());
        if (above == steps.end())
            return std::get<GaugeReading>(set.thickestLoose());
        size = std::prev(above)->size;
    }
    return std::get<GaugeReading>(set.enters(size));
}

} // namespace

Day dayOf(int year, unsigned month, unsigned day)
{
    return Day{std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{day}};
}

void StoryClock::set(Day day, int hour, int minute)
{
    const std::chrono::year_month_day date{day};
    const bool summer = date.month() >= std::chrono::April && date.month() <= std::chrono::October;
    const std::int32_t offset = summer ? 7200 : 3600;
    m_now =
        Moment{std::chrono::sys_seconds{day}.time_since_epoch().count() + hour * 3600 + minute * 60 - offset,
               offset};
}

Teller::Teller(StoreFile& file, Language language)
    : m_language{language}, m_ids{kSeed}, m_records{file, m_ids, m_clock}, m_dice{kSeed}
{
}

Outcome Teller::outcome() const
{
    if (m_problem)
        return *m_problem;
    return Done{};
}

Stamp Teller::by(Who who) const
{
    return Stamp{person(who), m_clock.now()};
}

void Teller::introduce()
{
    introducePeople();
    introduceGauges();
    introduceAirframes();
    introduceCouplings();
}

void Teller::introducePeople()
{
    for (const PersonPlan& plan : personPlans()) {
        Person person;
        person.name = plan.name;
        person.role = told(plan.role);
        person.phone = plan.phone;
        if (!m_persons.empty())
            person.stamp.by = m_persons.front();
        m_persons.push_back(keep(m_records.add(person)));
    }
}

void Teller::introduceGauges()
{
    for (Gauge gauge : gaugePlans(m_language)) {
        gauge.stamp = by(Who::Oren);
        gauge.id = keep(m_records.add(gauge));
        m_gauges.push_back(std::move(gauge));
    }
}

void Teller::introduceAirframes()
{
    for (const AirframePlan& plan : airframePlans()) {
        Airframe airframe;
        airframe.registration = plan.registration;
        airframe.type = plan.type;
        airframe.serial = plan.serial;
        airframe.jurisdiction = told(says::kAuthority);
        airframe.manualReferences = told(says::kManuals);
        airframe.callName = personPlans()[static_cast<std::size_t>(Who::Quill)].name;
        airframe.callPhone = personPlans()[static_cast<std::size_t>(Who::Quill)].phone;
        airframe.riggingsBefore = plan.riggingsBefore;
        airframe.spanCentimetres = plan.spanCentimetres;
        airframe.tail = TailForm::T;
        airframe.wingPanels = plan.wingPanels;
        airframe.stamp = by(Who::Oren);
        airframe.id = keep(m_records.add(airframe));
        m_airframes.push_back(airframe);
        std::vector<Surface>& surfaces =
            m_surfaces.emplace_back(surfacesOf(static_cast<int>(m_surfaces.size()), airframe.id, m_language));
        for (Surface& surface : surfaces) {
            surface.stamp = by(Who::Oren);
            surface.id = keep(m_records.add(surface));
        }
    }
}

void Teller::introduceCouplings()
{
    for (const CouplingPlan& plan : couplingPlans()) {
        Joint& joint = m_joints.emplace_back();
        joint.plan = &plan;
        Coupling& coupling = joint.coupling;
        coupling.airframe = airframe(plan.airframe);
        coupling.name = told(plan.name);
        coupling.circuit = plan.circuit;
        coupling.side = plan.side;
        coupling.place = plan.place;
        coupling.access = told(plan.access);
        coupling.seenFrom = plan.seenFrom;
        coupling.mirrorFrom = plan.mirrorFrom;
        coupling.leafPlace = told(plan.leafPlace);
        coupling.layout = plan.layout;
        coupling.kind = plan.kind;
        coupling.parts = plan.parts;
        coupling.riggingOrder = static_cast<int>(m_joints.size());
        coupling.stamp = by(Who::Oren);
        coupling.id = keep(m_records.add(coupling));
    }
}

GaugeCheck Teller::checkOf(Tool tool, const Saying& found) const
{
    GaugeCheck check;
    check.gauge = gauge(tool).id;
    check.day = m_clock.now().localDay();
    check.how = told(says::kHowChecked);
    check.found = told(found);
    check.stamp = by(Who::Quill);
    return check;
}

void Teller::checkGauge(Tool tool, const Saying& found)
{
    m_checks.push_back(checkOf(tool, found));
    keep(m_records.add(m_checks.back()));
}

std::vector<Question> Teller::questionsOf(const GaugeCheck& check)
{
    std::vector<Question> all;
    for (const Airframe& airframe : m_airframes) {
        const AirframeFacts facts = keep(factsOf(m_records, airframe.id));
        std::ranges::copy(questionsFrom(effectOf(check, facts), check, airframe.id), std::back_inserter(all));
    }
    return all;
}

void Teller::putAside(Tool tool, const Saying& found, Day quarantineFrom, const Saying& done)
{
    GaugeCheck check = checkOf(tool, found);
    check.quarantineFrom = quarantineFrom;
    const std::vector<Question> questions = questionsOf(check);
    keep(m_records.add(check));
    m_checks.push_back(check);
    for (const Question& question : questions)
        close(keep(m_records.add(question)), Who::Quill, found, done);
    for (Joint& joint : m_joints)
        joint.history.reset();
    Gauge& kept = m_gauges[static_cast<std::size_t>(tool)];
    kept.inUse = false;
    kept.stamp = by(Who::Quill);
    keep(m_records.add(kept));
}

void Teller::happen(int index, EventKind kind, const Saying& note, const Joint* joint)
{
    Event event;
    event.airframe = airframe(index);
    if (joint)
        event.coupling = joint->coupling.id;
    event.kind = kind;
    event.day = m_clock.now().localDay();
    event.note = told(note);
    event.stamp = by(kind == EventKind::Note ? Who::Oren : Who::Quill);
    event.person = event.stamp.by;
    keep(m_records.add(event));
}

void Teller::feelPlay(const Joint& joint, Who who, PlayFound along, PlayFound across, const Saying& note)
{
    JointPlay play;
    play.coupling = joint.coupling.id;
    play.day = m_clock.now().localDay();
    play.along = along;
    play.across = across;
    play.person = person(who);
    play.note = told(note);
    play.stamp = by(who);
    keep(m_records.add(play));
}

void Teller::annualDone(int index, Day nextDue)
{
    happen(index, EventKind::Annual, says::kAnnual);
    Airframe& airframe = m_airframes[static_cast<std::size_t>(index)];
    airframe.annualDue = nextDue;
    airframe.stamp = by(Who::Oren);
    keep(m_records.add(airframe));
}

void Teller::ask(Joint& joint, Question question, Who who)
{
    question.airframe = joint.coupling.airframe;
    question.coupling = joint.coupling.id;
    question.stamp = by(who);
    joint.question = keep(m_records.add(question));
}

void Teller::resolve(Joint& joint, Who who, const Saying& found, const Saying& done)
{
    close(*std::exchange(joint.question, std::nullopt), who, found, done);
}

void Teller::close(QuestionId question, Who who, const Saying& found, const Saying& done)
{
    Resolution resolution;
    resolution.question = question;
    resolution.person = person(who);
    resolution.found = told(found);
    resolution.done = told(done);
    resolution.stamp = by(who);
    keep(m_records.add(resolution));
}

bool Teller::isFirstOfSeason(int index)
{
    const std::chrono::year_month_day today{m_clock.now().localDay()};
    return m_seasons.insert({index, today.year()}).second;
}

std::optional<RecordId> Teller::noteLeft(int airframe)
{
    const auto left = m_notesLeft.extract(airframe);
    return left ? std::optional{left.mapped()} : std::nullopt;
}

void Teller::leaveNote(RecordId record)
{
    m_notesLeft.insert_or_assign(m_begun.at(record), record);
}

std::vector<Joint*> Teller::joints(int index)
{
    std::vector<Joint*> of;
    for (Joint& joint : m_joints)
        if (joint.plan->airframe == index)
            of.push_back(&joint);
    return of;
}

Joint& Teller::joint(int index, const Saying& name)
{
    return *std::ranges::find_if(m_joints, [&](const Joint& joint) {
        return joint.plan->airframe == index && joint.plan->name == name;
    });
}

void Teller::fit(Joint& joint, FittingKind kind, const Saying& reason, double mean, double scatter)
{
    Fitting fitting;
    fitting.coupling = joint.coupling.id;
    fitting.begins = m_clock.now().localDay();
    fitting.kind = kind;
    fitting.reason = told(reason);
    fitting.stamp = by(Who::Quill);
    fitting.id = keep(m_records.add(fitting));
    joint.fitting = fitting.id;
    joint.fittings.push_back(fitting);
    joint.mean = mean;
    joint.scatter = scatter;
    joint.history.reset();
}

const CouplingHistory& Teller::historyWith(Joint& joint, const Reading& reading) const
{
    const auto isKnown = [&] {
        const FittingHistory* fitting = joint.history->find(joint.fitting);
        return !reading.gauge || (fitting && fitting->witness.contains(*reading.gauge));
    };
    if (!joint.history || !isKnown()) {
        // With the new reading, so that the miss with its gauge is worked out once and kept.
        std::vector<Reading> readings = joint.readings;
        readings.push_back(reading);
        joint.history = historyOf(joint.coupling.id, joint.fittings, readings, joint.exclusions, joint.frozen,
                                  m_gauges, m_checks);
    }
    return *joint.history;
}

Verdict Teller::read(Joint& joint, const Taking& taking)
{
    const double offset = personPlans()[static_cast<std::size_t>(taking.who)].offset;
    const GaugeReading measured = measure(gauge(taking.tool).set, taking.gap + offset + taking.shift);
    Reading reading;
    reading.coupling = joint.coupling.id;
    reading.fitting = joint.fitting;
    reading.record = taking.record;
    reading.interval = measured.interval;
    reading.technique = measured.technique;
    reading.gauge = gauge(taking.tool).id;
    reading.state = taking.state;
    reading.purpose = taking.purpose;
    reading.turn = taking.turn;
    reading.person = person(taking.who);
    if (taking.second)
        reading.second = person(*taking.second);
    reading.when = m_clock.now();
    reading.note = told(taking.note);
    reading.corrects = taking.corrects;
    reading.stamp = by(taking.who);

    std::optional<Shown> shown;
    const bool isJudged = countsAs(taking.purpose).rigging && !taking.corrects;
    if (isJudged)
        shown = Shown{judgeIn(historyWith(joint, reading), reading), kMethodVersion};
    reading.id = keep(m_records.add(reading, shown));
    joint.readings.push_back(reading);
    if (!isJudged)
        joint.history.reset();
    return shown ? shown->judgement.verdict : Verdict::NoBandYet;
}

void Teller::exclude(Joint& joint, Who who, const Saying& reason)
{
    Exclusion exclusion;
    exclusion.reading = joint.readings.back().id;
    exclusion.reason = told(reason);
    exclusion.stamp = by(who);
    exclusion.id = keep(m_records.add(exclusion));
    joint.exclusions.push_back(exclusion);
    joint.history.reset();
}

void Teller::freeze(Joint& joint, Who first, Who second)
{
    FrozenBaseline baseline;
    baseline.fitting = joint.fitting;
    for (const Reading& reading : admittedReadings(joint.fitting, joint.readings, joint.exclusions, {}))
        baseline.readings.push_back(reading.id);
    baseline.first = person(first);
    baseline.second = person(second);
    baseline.stamp = by(first);
    baseline.id = keep(m_records.add(baseline));
    joint.frozen.push_back(baseline);
    joint.history.reset();
}

} // namespace rig::demo
