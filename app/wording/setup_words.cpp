#include "app/wording/setup_words.h"

namespace rig {

QString SetUpWords::couplings(int count)
{
    return count == 1 ? tr("1 coupling") : tr("%1 couplings").arg(count);
}

QString SetUpWords::gauges(int count)
{
    return count == 1 ? tr("1 gauge") : tr("%1 gauges").arg(count);
}

QString SetUpWords::leafSets(int count)
{
    return count == 1 ? tr("1 leaf set") : tr("%1 leaf sets").arg(count);
}

QString SetUpWords::people(int count)
{
    return count == 1 ? tr("1 person") : tr("%1 people").arg(count);
}

QString SetUpWords::events(int count)
{
    return count == 1 ? tr("1 event") : tr("%1 events").arg(count);
}

QString SetUpWords::whyAirframe()
{
    return tr(
        "The registration stands on every page, so that two gliders are never mixed up, and whoever meets a "
        "reading outside its band sees at once whom to call.");
}

QString SetUpWords::whyCouplings()
{
    return tr("Each coupling is read and judged for itself, against its own past. The list is in rigging "
              "order: the "
              "order in which you walk round the aircraft.");
}

QString SetUpWords::whyGauges()
{
    return tr("A reading lies between the leaf that enters and the next one that does not. So the program "
              "has to know "
              "which leaves there are, and when somebody last checked them.");
}

QString SetUpWords::whyPeople()
{
    return tr("Every look, pull and reading is stated by a person, and the second look by another one. Two "
              "people is "
              "the least.");
}

QString SetUpWords::whyEvents()
{
    return tr(
        "Cleaning, greasing and repairs shift readings. Noted here with their day, they stand beside the "
        "readings, and nobody has to guess later.");
}

QString SetUpWords::lacksPeople(int there)
{
    return there == 0 ? tr("Add two people first.") : tr("Add a second person first.");
}

QString SetUpWords::airframeFirst()
{
    return tr("This part belongs to an airframe, and the file knows none yet.");
}

QString SetUpWords::notADay(const QString& typed)
{
    return tr("“%1” is no day that can be read for sure. Type year-month-day, like 2026-05-02.").arg(typed);
}

QString SetUpWords::registrationTaken(const QString& registration)
{
    return tr("%1 is already in this file. Choose it by the registration at the top left (Ctrl+K), or type "
              "another.")
        .arg(registration);
}

QString SetUpWords::nameTaken(const QString& name)
{
    return tr("%1 is already in this file. Add an initial, so that the two are told apart.").arg(name);
}

QString SetUpWords::personDetail(const QString& role, const QString& phone)
{
    if (role.isEmpty())
        return phone;
    return phone.isEmpty() ? role : tr("%1 · %2", "role, phone").arg(role, phone);
}

QString SetUpWords::kind(EventKind kind)
{
    switch (kind) {
    case EventKind::Cleaned:
        return tr("Cleaned");
    case EventKind::Greased:
        return tr("Greased");
    case EventKind::Refitted:
        return tr("Refitted or adjusted");
    case EventKind::PartChanged:
        return tr("Part changed");
    case EventKind::Annual:
        return tr("Annual");
    case EventKind::Derigged:
        return tr("Taken apart");
    case EventKind::Note:
        break;
    }
    return tr("Note");
}

QString SetUpWords::startFittingToo()
{
    return tr("A refit, an adjustment or a changed part ends the old baseline. Noting it here does not do "
              "that: start a "
              "new fitting of the coupling in Couplings (Alt+2) as well.");
}

QString SetUpWords::eventLine(const QString& day, const QString& kind, const QString& where)
{
    return tr("%1 · %2 · %3", "day, what was done, where").arg(day, kind, where);
}

} // namespace rig
