// SetUpPresenter's save()s: from what was typed to a fact, or to the sentences why not.

#include "app/pages/setup/entry_reader.h"
#include "app/pages/setup/quarantine_outlook.h"
#include "app/pages/setup/setup_presenter.h"
#include "app/wording/coupling_words.h"
#include "app/wording/formats.h"
#include "app/wording/gauge_words.h"
#include "app/wording/setup_words.h"
#include "core/day_entry.h"
#include "core/measure/size_list.h"
#include "core/store/ask.h"

#include <algorithm>

namespace rig {

namespace {

// A whole number from 0 on; nothing typed is 0. More digits than these are a slip.
std::optional<int> countFrom(const QString& typed)
{
    constexpr qsizetype kMostDigits = 6;
    const QString text = typed.trimmed();
    const bool digits = std::ranges::all_of(text, [](QChar c) { return c >= u'0' && c <= u'9'; });
    if (!digits || text.size() > kMostDigits)
        return std::nullopt;
    return text.toInt();
}

template <typename Things, typename IdType> auto findIn(Things& things, const IdType& id)
{
    using Thing = std::remove_reference_t<decltype(*things.begin())>;
    const auto found = std::ranges::find_if(things, [&id](const Thing& thing) { return thing.id == id; });
    return found == things.end() ? nullptr : &*found;
}

} // namespace

Result<Saved> SetUpPresenter::save(const AirframeEntry& entry, std::optional<AirframeId> of)
{
    const auto known = m_records.airframes();
    if (!known)
        return known.problem();
    Airframe airframe;
    airframe.id = of.value_or(AirframeId{});
    EntryReader reader;
    reader.needs(Field::Registration, entry.registration, SetUpWords::registrationMissing());
    if (isTaken(known.value(), entry.registration, airframe.id,
                [](const Airframe& one) { return one.registration; }))
        reader.refuse(Field::Registration, SetUpWords::registrationTaken(entry.registration.trimmed()));
    airframe.annualDue = reader.day(Field::AnnualDue, entry.annualDue, true);
    const auto count = countFrom(entry.riggingsBefore);
    if (!count)
        reader.refuse(Field::RiggingsBefore, SetUpWords::notACount());
    if (reader.hasProblem())
        return reader.refusal();
    airframe.registration = plain(entry.registration);
    airframe.type = plain(entry.type);
    airframe.serial = plain(entry.serial);
    airframe.jurisdiction = plain(entry.jurisdiction);
    airframe.manualReferences = plain(entry.manualReferences);
    airframe.callName = plain(entry.callName);
    airframe.callPhone = plain(entry.callPhone);
    airframe.riggingsBefore = *count;
    airframe.stamp = stamp();
    return savedAs(m_records.add(airframe));
}

Result<Saved> SetUpPresenter::save(const CouplingEntry& entry, AirframeId airframe,
                                   std::optional<CouplingId> of)
{
    const auto known = m_records.couplings(airframe);
    if (!known)
        return known.problem();
    Coupling coupling;
    int order = 0;
    for (const Coupling& one : known.value()) {
        order = std::max(order, one.riggingOrder);
        if (of && one.id == *of)
            coupling = one;
    }
    EntryReader reader;
    reader.needs(Field::CouplingName, entry.name, CouplingWords::nameMissing());
    if (isTaken(known.value(), entry.name, coupling.id, [](const Coupling& one) { return one.name; }))
        reader.refuse(Field::CouplingName, CouplingWords::nameTaken(entry.name.trimmed()));
    if (reader.hasProblem())
        return reader.refusal();
    coupling.airframe = airframe;
    coupling.name = plain(entry.name);
    coupling.circuit = plain(entry.circuit);
    coupling.side = entry.side;
    coupling.access = plain(entry.access);
    coupling.layout = entry.layout;
    coupling.leafPlace = plain(entry.leafPlace);
    coupling.securing = entry.securing;
    // A place finer than the choices stays as it is while the choice stays.
    if (entry.spot == PlanSpot::NotGiven)
        coupling.place.reset();
    else if (spotOf(coupling.place) != entry.spot)
        coupling.place = placeOf(entry.spot);
    coupling.note = plain(entry.note);
    coupling.stamp = stamp();
    if (of)
        return savedAs(m_records.add(coupling));
    coupling.riggingOrder = order + 1;
    std::optional<CouplingId> id;
    const Outcome kept = m_records.together([&]() -> Outcome {
        const auto added = addWithFirstFitting(coupling);
        if (!added)
            return added.problem();
        id = added.value();
        return Done{};
    });
    if (!kept)
        return kept.problem();
    return Saved{{}, id->bytes};
}

Result<Saved> SetUpPresenter::save(const FittingEntry& entry, AirframeId airframe, CouplingId coupling)
{
    const auto known = m_records.fittings(airframe);
    if (!known)
        return known.problem();
    std::optional<Day> last;
    for (const Fitting& one : known.value())
        if (one.coupling == coupling && (!last || *last < one.begins))
            last = one.begins;
    EntryReader reader;
    const auto day = reader.pastDay(Field::FittingDay, entry.day, today());
    if (day && last && *day < *last)
        reader.refuse(Field::FittingDay, CouplingWords::beforeLastFitting(Formats{}.day(*last)));
    reader.needs(Field::FittingReason, entry.reason, CouplingWords::reasonMissing());
    if (reader.hasProblem())
        return reader.refusal();
    return savedAs(m_records.add(Fitting{{}, coupling, *day, plain(entry.reason), stamp()}));
}

namespace {

// The set that the entry describes; empty after a refusal.
std::optional<GaugeSet> setFrom(const GaugeEntry& entry, EntryReader& reader)
{
    if (entry.kind == GaugeKind::Taper) {
        const auto resolution = reader.length(Field::Resolution, entry.resolution);
        if (!resolution)
            return std::nullopt;
        if (*resolution == Gap{})
            reader.refuse(Field::Resolution, GaugeWords::resolutionZero());
        return GaugeSet::taper(*resolution);
    }
    const SizeListEntry sizes = parseSizeList(entry.sizes.toStdString());
    if (const auto* refused = std::get_if<SizeListRefusal>(&sizes)) {
        reader.refuse(Field::Sizes, GaugeWords::refused(*refused, Formats{}.gap(refused->size)));
        return std::nullopt;
    }
    return GaugeSet{entry.kind, *std::get_if<std::vector<Gap>>(&sizes)};
}

} // namespace

Result<Saved> SetUpPresenter::save(const GaugeEntry& entry, std::optional<GaugeId> of)
{
    const auto known = m_records.gauges();
    if (!known)
        return known.problem();
    Gauge gauge;
    if (of)
        if (const Gauge* before = findIn(known.value(), *of))
            gauge = *before;
    EntryReader reader;
    reader.needs(Field::GaugeName, entry.name, GaugeWords::nameMissing());
    if (isTaken(known.value(), entry.name, gauge.id, [](const Gauge& one) { return one.name; }))
        reader.refuse(Field::GaugeName, GaugeWords::nameTaken(entry.name.trimmed()));
    const auto set = setFrom(entry, reader);
    gauge.tolerance.reset();
    if (!entry.tolerance.trimmed().isEmpty())
        gauge.tolerance = reader.length(Field::Tolerance, entry.tolerance);
    if (reader.hasProblem())
        return reader.refusal();
    gauge.name = plain(entry.name);
    gauge.set = *set;
    gauge.note = plain(entry.note);
    gauge.stamp = stamp();
    return savedAs(m_records.add(gauge));
}

namespace {

// The day from which a set is in doubt; empty when it is not, or after a refusal.
std::optional<Day> doubtedFrom(const GaugeCheckEntry& entry, std::optional<Day> checked, Day today,
                               EntryReader& reader)
{
    if (!entry.doubted)
        return std::nullopt;
    const auto from = reader.pastDay(Field::DoubtedFrom, entry.doubtedFrom, today);
    if (from && checked && *from > *checked && *from <= today)
        reader.refuse(Field::DoubtedFrom, GaugeWords::afterCheck());
    return from;
}

// What there is to ask is worked out from the file as it is without the check.
Result<std::vector<Question>> questionsOf(const Records& records, const GaugeCheck& check)
{
    if (!check.quarantineFrom)
        return std::vector<Question>{};
    const auto outlook = QuarantineOutlook::of(records, check.gauge);
    if (!outlook)
        return outlook.problem();
    return outlook.value().questions(check);
}

} // namespace

Result<QuarantineOutlook> SetUpPresenter::outlook(GaugeId gauge) const
{
    return QuarantineOutlook::of(m_records, gauge);
}

Result<Saved> SetUpPresenter::save(const GaugeCheckEntry& entry, GaugeId gauge)
{
    EntryReader reader;
    const auto day = reader.pastDay(Field::CheckDay, entry.day, today());
    reader.needs(Field::CheckHow, entry.how, GaugeWords::howMissing());
    reader.needs(Field::CheckFound, entry.found, GaugeWords::foundMissing());
    const auto from = doubtedFrom(entry, day, today(), reader);
    if (reader.hasProblem())
        return reader.refusal();
    const GaugeCheck check{{}, gauge, *day, plain(entry.how), plain(entry.found), from, stamp()};
    FactId id;
    const Outcome kept = m_records.together([&]() -> Outcome {
        const auto questions = questionsOf(m_records, check);
        if (!questions)
            return questions.problem();
        const auto added = m_records.add(check);
        if (!added)
            return added.problem();
        id = added.value();
        for (const Question& question : questions.value())
            if (const Outcome asked = ask(m_records, question); !asked)
                return asked;
        return Done{};
    });
    if (!kept)
        return kept.problem();
    return Saved{{}, id.bytes};
}

Result<Saved> SetUpPresenter::save(const PersonEntry& entry, std::optional<PersonId> of)
{
    const auto known = m_records.persons();
    if (!known)
        return known.problem();
    const PersonId own = of.value_or(PersonId{});
    EntryReader reader;
    reader.needs(Field::PersonName, entry.name, SetUpWords::nameMissing());
    if (isTaken(known.value(), entry.name, own, [](const Person& one) { return one.name; }))
        reader.refuse(Field::PersonName, SetUpWords::nameTaken(entry.name.trimmed()));
    if (reader.hasProblem())
        return reader.refusal();
    return savedAs(
        m_records.add(Person{own, plain(entry.name), plain(entry.role), plain(entry.phone), stamp()}));
}

Result<Saved> SetUpPresenter::save(const EventEntry& entry, AirframeId airframe)
{
    EntryReader reader;
    const auto day = reader.pastDay(Field::EventDay, entry.day, today());
    if (entry.kind == EventKind::Note)
        reader.needs(Field::EventNote, entry.note, SetUpWords::noteMissing());
    if (reader.hasProblem())
        return reader.refusal();
    return savedAs(
        m_records.add(Event{{}, airframe, entry.coupling, entry.kind, *day, plain(entry.note), stamp()}));
}

} // namespace rig
