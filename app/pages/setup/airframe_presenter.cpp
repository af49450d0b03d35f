#include "app/pages/setup/entry_reader.h"
#include "app/pages/setup/part_presenters.h"

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

} // namespace

AirframeEntry entryOf(const Airframe& airframe)
{
    return {shown(airframe.registration),
            shown(airframe.type),
            shown(airframe.serial),
            shown(airframe.jurisdiction),
            shown(airframe.manualReferences),
            airframe.annualDue ? shown(dayText(*airframe.annualDue)) : QString{},
            shown(airframe.callName),
            shown(airframe.callPhone),
            QString::number(airframe.riggingsBefore)};
}

Result<Saved> AirframePresenter::save(const AirframeEntry& entry, std::optional<AirframeId> of)
{
    const auto known = records().airframes();
    if (!known)
        return known.problem();
    Airframe airframe;
    airframe.id = of.value_or(AirframeId{});
    EntryReader reader;
    reader.name(Field::Registration, entry.registration, known.value(), airframe.id, &Airframe::registration,
                SetUpWords::registrationMissing(), SetUpWords::registrationTaken);
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
    airframe.stamp = desk().stamp();
    return savedAs(records().add(airframe));
}

} // namespace rig
