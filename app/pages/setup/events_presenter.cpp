#include "app/pages/setup/entry_reader.h"
#include "app/pages/setup/part_presenters.h"
#include "app/pages/setup/things_kept.h"
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

} // namespace rig
