#include "app/pages/setup/entry_reader.h"
#include "app/pages/setup/part_presenters.h"
#include "app/widgets/step_line.h"
#include "app/wording/plan_field_words.h"
#include "core/day_entry.h"
#include "core/measure/gap_entry.h"

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

constexpr int kLeastSpan = 100; // centimetres
constexpr int kMostSpan = 6'000;
constexpr int kMostPanels = 8;

// Metres with a comma or a point, in whole centimetres.
std::optional<int> spanIn(const QString& typed)
{
    constexpr int kPerCentimetre = 10; // thousandths of a metre
    const FigureEntry entry = parseFigure(plain(typed), kMostSpan * kPerCentimetre);
    const auto* thousandths = std::get_if<std::int32_t>(&entry);
    if (!thousandths || *thousandths % kPerCentimetre != 0 || *thousandths < kLeastSpan * kPerCentimetre)
        return std::nullopt;
    return *thousandths / kPerCentimetre;
}

QString metres(int centimetres)
{
    QString text = QString::number(centimetres / 100.0, 'f', 2);
    while (text.endsWith(QLatin1Char('0')))
        text.chop(1);
    return text.endsWith(QLatin1Char('.')) ? text.chopped(1) : text;
}

// Each may stay empty.
void readForm(EntryReader& reader, const AirframeEntry& entry, Airframe& airframe)
{
    airframe.tail = entry.tail;
    const bool saysSpan = !entry.span.trimmed().isEmpty();
    airframe.spanCentimetres = saysSpan ? spanIn(entry.span) : std::nullopt;
    if (saysSpan && !airframe.spanCentimetres)
        reader.refuse(Field::Span, PlanFieldWords::notASpan(entry.span.trimmed()));
    const bool saysPanels = !entry.wingPanels.trimmed().isEmpty();
    airframe.wingPanels = wholeNumberIn(entry.wingPanels, 1, kMostPanels);
    if (saysPanels && !airframe.wingPanels)
        reader.refuse(Field::WingPanels, PlanFieldWords::notPanels());
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
            QString::number(airframe.riggingsBefore),
            airframe.spanCentimetres ? metres(*airframe.spanCentimetres) : QString{},
            airframe.tail,
            airframe.wingPanels ? QString::number(*airframe.wingPanels) : QString{}};
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
    readForm(reader, entry, airframe);
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
