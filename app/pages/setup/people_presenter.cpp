#include "app/pages/setup/entry_reader.h"
#include "app/pages/setup/part_presenters.h"

namespace rig {

PersonEntry entryOf(const Person& person)
{
    return {shown(person.name), shown(person.role), shown(person.phone)};
}

Result<Saved> PeoplePresenter::save(const PersonEntry& entry, std::optional<PersonId> of)
{
    const auto known = records().persons();
    if (!known)
        return known.problem();
    const PersonId own = of.value_or(PersonId{});
    EntryReader reader;
    reader.name(Field::PersonName, entry.name, known.value(), own, &Person::name, SetUpWords::nameMissing(),
                SetUpWords::nameTaken);
    if (reader.hasProblem())
        return reader.refusal();
    return savedAs(
        records().add(Person{own, plain(entry.name), plain(entry.role), plain(entry.phone), desk().stamp()}));
}

} // namespace rig
