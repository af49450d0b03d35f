#include "app/pages/setup/entry_reader.h"
#include "app/pages/setup/part_presenters.h"
#include "app/pages/setup/things_kept.h"
#include "app/wording/formats.h"
#include "app/wording/gauge_words.h"
#include "core/airframe/saved_before.h"
#include "core/measure/size_list.h"
#include "core/store/ask.h"

namespace rig {

namespace {

QString sizesText(const std::vector<Gap>& sizes, QChar decimalMark)
{
    return shown(sizeListText(sizes, decimalMark == QLatin1Char(',') ? ',' : '.'));
}

// One size, without the semicolon that a list of one needs.
QString sizeText(Gap size, QChar decimalMark)
{
    return sizesText({size}, decimalMark).remove(QLatin1Char(';'));
}

// The first day of a doubt that no later check has ended; empty when there is none.
std::optional<Day> doubtedSince(const GaugeRow& row, Day today)
{
    std::vector<GaugeCheck> good;
    std::ranges::copy_if(row.checks, std::back_inserter(good),
                         [](const GaugeCheck& check) { return !check.quarantineFrom; });
    std::optional<Day> since;
    for (const GaugeCheck& bad : row.checks) {
        if (!bad.quarantineFrom || (since && *since <= *bad.quarantineFrom))
            continue;
        good.push_back(bad);
        if (isQuarantined(row.gauge.id, today, good))
            since = bad.quarantineFrom;
        good.pop_back();
    }
    return since;
}

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
    const auto& known = *std::get_if<std::vector<Gap>>(&sizes);
    if (entry.kind == GaugeKind::GoNoGo && known.size() != 2)
        reader.refuse(Field::Sizes, GaugeWords::twoEnds());
    return GaugeSet{entry.kind, known};
}

// What was read on a gap of known width; empty when nothing was, or after a refusal.
std::optional<KnownGapRead> knownGapFrom(const GaugeCheckEntry& entry, EntryReader& reader)
{
    const auto isTyped = [](const QString& text) { return !text.trimmed().isEmpty(); };
    if (!isTyped(entry.knownGap) && !isTyped(entry.knownEnters) && !isTyped(entry.knownRefuses))
        return std::nullopt;
    const auto width = reader.length(Field::KnownGap, entry.knownGap);
    const auto enters = isTyped(entry.knownEnters) ? reader.length(Field::KnownEnters, entry.knownEnters)
                                                   : std::optional{Gap{}};
    const auto refuses = isTyped(entry.knownRefuses) ? reader.length(Field::KnownRefuses, entry.knownRefuses)
                                                     : std::optional<Gap>{};
    if (!width || !enters || (isTyped(entry.knownRefuses) && !refuses))
        return std::nullopt;
    const KnownGapRead read{*width, {*enters, refuses}};
    if (*width == Gap{})
        reader.refuse(Field::KnownGap, GaugeWords::knownGapZero());
    if (problemOf(read.read) == IntervalProblem::None && (*enters != Gap{} || refuses))
        return read;
    reader.refuse(Field::KnownRefuses, GaugeWords::knownGapReversed());
    return std::nullopt;
}

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

bool isMissed(const KnownGapRead& read, const std::optional<Gap>& tolerance)
{
    const Gap missed = read.missedBy();
    return std::max(missed, Gap{} - missed) > tolerance.value_or(Gap{});
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

GaugeEntry entryOf(const Gauge& gauge, QChar decimalMark)
{
    GaugeEntry entry;
    entry.name = shown(gauge.name);
    entry.kind = gauge.set.kind();
    if (entry.kind == GaugeKind::Taper)
        entry.resolution = sizeText(gauge.set.resolution(), decimalMark);
    else
        entry.sizes = sizesText(gauge.set.sizes(), decimalMark);
    if (gauge.tolerance)
        entry.tolerance = sizeText(*gauge.tolerance, decimalMark);
    entry.note = shown(gauge.note);
    return entry;
}

GaugeEntry usualLeafSet(const std::vector<GaugeRow>& known, QChar decimalMark)
{
    constexpr int kLeaves = 20;
    GaugeEntry entry;
    std::vector<Gap> sizes;
    for (int i = 1; i <= kLeaves; ++i)
        sizes.push_back(Gap::micrometres(50 * i));
    entry.sizes = sizesText(sizes, decimalMark);
    for (char letter = 'A'; letter <= 'Z' && entry.name.isEmpty(); ++letter) {
        const std::string name{letter};
        const bool taken = std::ranges::any_of(
            known, [&name](const GaugeRow& row) { return comparable(row.gauge.name) == comparable(name); });
        if (!taken)
            entry.name = shown(name);
    }
    return entry;
}

Result<std::vector<GaugeRow>> GaugesPresenter::view() const
{
    Problem problem;
    std::vector<Gauge> gauges;
    std::vector<GaugeCheck> checks;
    if (!take(records().gauges(), gauges, problem) || !take(records().gaugeChecks(), checks, problem))
        return problem;
    std::vector<GaugeRow> rows;
    for (const Gauge& gauge : gauges) {
        GaugeRow row{gauge, {}, {}};
        std::ranges::copy_if(checks, std::back_inserter(row.checks),
                             [&gauge](const GaugeCheck& check) { return check.gauge == gauge.id; });
        std::ranges::sort(row.checks, [](const GaugeCheck& one, const GaugeCheck& other) {
            return one.day != other.day ? one.day > other.day : savedBefore(other, one);
        });
        row.doubtedSince = doubtedSince(row, desk().today());
        rows.push_back(std::move(row));
    }
    std::ranges::stable_partition(rows, [](const GaugeRow& row) { return row.gauge.inUse; });
    return rows;
}

Result<Saved> GaugesPresenter::save(const GaugeEntry& entry, std::optional<GaugeId> of)
{
    const auto known = records().gauges();
    if (!known)
        return known.problem();
    Gauge gauge;
    if (const Gauge* before = of ? findIn(known.value(), *of) : nullptr)
        gauge = *before;
    EntryReader reader;
    reader.name(Field::GaugeName, entry.name, known.value(), gauge.id, &Gauge::name,
                GaugeWords::nameMissing(), GaugeWords::nameTaken);
    const auto set = setFrom(entry, reader);
    gauge.tolerance.reset();
    if (!entry.tolerance.trimmed().isEmpty())
        gauge.tolerance = reader.length(Field::Tolerance, entry.tolerance);
    if (reader.hasProblem())
        return reader.refusal();
    gauge.name = plain(entry.name);
    gauge.set = *set;
    gauge.note = plain(entry.note);
    gauge.stamp = desk().stamp();
    return savedAs(records().add(gauge));
}

Result<QuarantineOutlook> GaugesPresenter::outlook(GaugeId gauge) const
{
    return QuarantineOutlook::of(records(), gauge);
}

Result<Saved> GaugesPresenter::save(const GaugeCheckEntry& entry, GaugeId gauge)
{
    EntryReader reader;
    const auto day = reader.pastDay(Field::CheckDay, entry.day, desk().today());
    reader.needs(Field::CheckHow, entry.how, GaugeWords::howMissing());
    reader.needs(Field::CheckFound, entry.found, GaugeWords::foundMissing());
    const auto from = doubtedFrom(entry, day, desk().today(), reader);
    const auto known = knownGapFrom(entry, reader);
    const auto gauges = records().gauges();
    if (!gauges)
        return gauges.problem();
    // A set that misses what is known by more than it may is not noted as usable.
    const Gauge* set = findIn(gauges.value(), gauge);
    if (known && !entry.doubted && isMissed(*known, set ? set->tolerance : std::nullopt))
        reader.refuse(Field::KnownRefuses, GaugeWords::missesKnownGap(known->missedBy()));
    if (reader.hasProblem())
        return reader.refusal();
    const GaugeCheck check{{},   gauge,          *day, plain(entry.how), plain(entry.found),
                           from, desk().stamp(), known};
    FactId id;
    const Outcome kept = records().together([&]() -> Outcome {
        const auto questions = questionsOf(records(), check);
        if (!questions)
            return questions.problem();
        const auto added = records().add(check);
        if (!added)
            return added.problem();
        id = added.value();
        for (const Question& question : questions.value())
            if (const Outcome asked = ask(records(), question); !asked)
                return asked;
        return Done{};
    });
    if (!kept)
        return kept.problem();
    return Saved{{}, id.bytes};
}

Outcome GaugesPresenter::setInUse(GaugeId gauge, bool inUse)
{
    return putInUse<Gauge>(
        records(), [&] { return records().gauges(); }, gauge, inUse, desk().stamp());
}

} // namespace rig
