#include "core/store/rename_person.h"

#include "app/file/open_file.h"
#include "app/file/verbs.h"
#include "app/wording/join_words.h"
#include "app/wording/rename_words.h"
#include "core/store/names.h"
#include "core/store/newest.h"

#include <QRegularExpression>

#include <algorithm>

namespace rig::file {

namespace {

// Complains where nobody, or more than one, has this name.
std::optional<PersonId> personNamed(const QString& file, const std::vector<Person>& people,
                                    const QString& name)
{
    const auto isMeant = [wanted = comparable(name.toStdString())](const Person& one) {
        return comparable(one.name) == wanted;
    };
    const auto found = std::ranges::count_if(people, isMeant);
    if (found == 1)
        return std::ranges::find_if(people, isMeant)->id;
    complain(found == 0 ? RenameWords::noSuchPerson(file, name) : RenameWords::several(file, name));
    return std::nullopt;
}

// Nothing that could be read as the name of somebody else, or as a word.
bool isNeutral(const QString& as)
{
    static const QRegularExpression letters{QStringLiteral("^[A-Z]{1,2}( ?[0-9]{1,3})?$")};
    return letters.match(as).hasMatch();
}

bool isAsItWasSaved(OtherFile& file)
{
    const auto chain = chainToldOf(file);
    if (chain && chain->faults > 0)
        complain(RenameWords::lookFirst());
    return chain && chain->faults == 0;
}

int tellRenamed(const PersonRenamed& wanted, const Renamed& renamed)
{
    say(RenameWords::done(wanted.out, wanted.as));
    for (const FactCount& count : renamed.stillNamed)
        say(RenameWords::stillNamed(JoinWords::kind(count.table), count.facts));
    say(RenameWords::whereElse(wanted.file));
    return kDone;
}

} // namespace

int renamePerson(const PersonRenamed& wanted)
{
    if (!isFree(wanted.out))
        return kCouldNot;
    if (!isNeutral(wanted.as))
        return couldNot(RenameWords::notNeutral(wanted.as));
    const auto whole = OtherFile::read(wanted.file.toStdString(), wanted.out.toStdString());
    if (!whole)
        return couldNot(whole.problem(), failedAtNewFile(whole.problem().kind) ? wanted.out : wanted.file);
    const auto people = newest<Person>(whole.value()->connection());
    if (!people)
        return couldNot(people.problem(), wanted.file);
    const auto person = personNamed(wanted.file, people.value(), wanted.person);
    const auto by = person ? personNamed(wanted.file, people.value(), wanted.by) : std::nullopt;
    if (!by || !isAsItWasSaved(*whole.value()))
        return kCouldNot;
    OpenFile made; // for its clock and its ids
    const auto renamed = replaceName(*whole.value(), {*person, wanted.as.toStdString(), *by}, made.ids,
                                     made.clock, wanted.out.toStdString());
    if (renamed)
        return tellRenamed(wanted, renamed.value());
    if (renamed.problem().kind == ProblemKind::FactRefused)
        return couldNot(RenameWords::taken(wanted.file, wanted.as));
    return couldNot(renamed.problem(), wanted.out);
}

} // namespace rig::file
