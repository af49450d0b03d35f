#include "app/pages/setup/entry_reader.h"
#include "app/pages/setup/part_presenters.h"
#include "app/pages/setup/things_kept.h"
#include "app/wording/joint_play_words.h"
#include "core/airframe/name_in.h"
#include "core/airframe/saved_before.h"

namespace rig {

std::vector<EventRow> EventsPresenter::view(const AirframeFacts& facts) const
{
    std::vector<EventRow> rows;
    for (const Event& event : facts.events) {
        const Coupling* at = event.coupling ? findIn(facts.couplings, *event.coupling) : nullptr;
        rows.push_back({event, at ? at->name : std::string{}});
    }
    std::ranges::sort(rows, [](const EventRow& one, const EventRow& other) {
        return one.event.day != other.event.day ? one.event.day > other.event.day
                                                : savedBefore(other.event, one.event);
    });
    return rows;
}

Result<Saved> EventsPresenter::save(const EventEntry& entry, AirframeId airframe)
{
    EntryReader reader;
    const auto day = reader.pastDay(Field::EventDay, entry.day, desk().today());
    if (entry.kind == EventKind::Derigged && !desk().statedBy())
        reader.refuse(Field::EventKind, SetUpWords::whoTookApartMissing());
    if (entry.kind == EventKind::Note)
        reader.needs(Field::EventNote, entry.note, SetUpWords::noteMissing());
    if (reader.hasProblem())
        return reader.refusal();
    return savedAs(records().add(Event{{},
                                       airframe,
                                       entry.coupling,
                                       entry.kind,
                                       *day,
                                       plain(entry.note),
                                       desk().stamp().by,
                                       desk().stamp()}));
}

std::vector<PlayRow> EventsPresenter::plays(const AirframeFacts& facts) const
{
    std::vector<PlayRow> rows;
    for (const JointPlay& play : facts.jointPlays) // by day
        rows.push_back({play, nameIn(facts.couplings, play.coupling), facts.nameOf(play.person)});
    std::ranges::reverse(rows);
    return rows;
}

namespace {

// What was typed beside one way; none of it is guessed.
PlayFound playRead(EntryReader& reader, PlayFelt felt, Field field, const QString& typed)
{
    PlayFound found{felt, std::nullopt};
    if (typed.trimmed().isEmpty())
        return found;
    found.measured = reader.length(field, typed);
    if (const PlayProblem problem = problemOf(found); problem != PlayProblem::None)
        reader.refuse(field, JointPlayWords::refusal(problem));
    return found;
}

} // namespace

Result<Saved> EventsPresenter::save(const PlayEntry& entry)
{
    EntryReader reader;
    JointPlay play;
    const auto day = reader.pastDay(Field::PlayDay, entry.day, desk().today());
    if (!entry.coupling)
        reader.refuse(Field::PlayCoupling, JointPlayWords::chooseCoupling());
    if (!entry.person)
        reader.refuse(Field::PlayPerson, JointPlayWords::choosePerson());
    if (entry.along == PlayFelt::NotTried && entry.across == PlayFelt::NotTried)
        reader.refuse(Field::PlayAlong, JointPlayWords::tryOne());
    play.along = playRead(reader, entry.along, Field::PlayAlongMm, entry.alongMm);
    play.across = playRead(reader, entry.across, Field::PlayAcrossMm, entry.acrossMm);
    if (reader.hasProblem())
        return reader.refusal();
    play.coupling = *entry.coupling;
    play.day = *day;
    play.person = *entry.person;
    play.note = plain(entry.note);
    play.stamp = desk().stamp();
    return savedAs(records().add(play));
}

} // namespace rig
