#include "app/wording/formats.h"
#include "app/wording/picture_words.h"
#include "app/wording/review_words.h"
#include "app/wording/sentence_parts.h"
#include "core/review/quarantine.h"

#include <algorithm>
#include <cmath>

namespace rig {

// Shared shifts

QString ReviewWords::shiftCause(const DayShift& day) const
{
    if (day.gauges.size() == 1)
        return gaugeInSentence(day.gauges.front());
    return day.persons.size() == 1 ? personName(day.persons.front()) : QString{};
}

std::function<std::string(const DayShift&)> ReviewWords::shiftCauses() const
{
    return [this](const DayShift& day) { return shiftCause(day).toStdString(); };
}

QString ReviewWords::shift(const SharedShiftStory& story) const
{
    std::vector<Day> days;
    for (const DayShift& day : story.days)
        days.push_back(day.when.localDay());
    const bool isUp = story.millimetres > 0;
    const bool isOneWay = std::ranges::all_of(
        story.days, [isUp](const DayShift& day) { return (day.millimetres > 0) == isUp; });
    const bool isEvery =
        std::ranges::all_of(story.days, [](const DayShift& day) { return day.shift.sameSignShare >= 1; });
    const QString where = isEvery ? tr("on every coupling") : tr("on nearly every coupling");
    const QString when = days.size() == 1 ? tr("on %1").arg(SentenceParts::days(days))
                                          : tr("on %1 days, %2", "how many, which")
                                                .arg(SentenceParts::number(static_cast<int>(days.size())),
                                                     SentenceParts::days(days));
    QString how = tr("high on one day and low on another");
    if (isOneWay)
        how =
            (isUp ? tr("%1 mm high") : tr("%1 mm low")).arg(Formats{}.number(std::abs(story.millimetres), 3));
    if (!story.gauge && !story.person)
        return tr("All read %1 %2 %3, with neither gauge nor person in common: cold or fresh grease, before "
                  "a "
                  "coupling.")
            .arg(how, where, when);
    const QString who = story.gauge ? gaugeName(*story.gauge) : personName(*story.person);
    const QString said = tr("%1 read %2 %3 %4.", "who or what, how, where, when").arg(who, how, where, when);
    return tr("%1 %2").arg(said, afterShift(story, days));
}

QString ReviewWords::afterShift(const SharedShiftStory& story, const std::vector<Day>& days) const
{
    if (!story.gauge)
        return tr("Measure together once more before a coupling is blamed.");
    const GaugeCheck* doubt = doubtOn(*story.gauge, days.front(), m_facts.gaugeChecks);
    if (doubt && doubt->quarantineFrom)
        return tr("It is in doubt from %1 on: these readings are left out of band, drift and scatter.")
            .arg(Formats{}.day(*doubt->quarantineFrom));
    if (story.person)
        return tr("Only %1 read with it then: check the set, and read once with another one and another "
                  "person.")
            .arg(personName(*story.person));
    return tr("Check it against a micrometer before a coupling is blamed.");
}

QString ReviewWords::noShift(const AirframeReview& review)
{
    if (review.shifts.empty())
        return tr("No rigging in this period has a reading that can be held against a band.");
    return tr("On no rigging day did all couplings read high, or low, together.");
}

// Who measures like whom

QString ReviewWords::noOffset(numbers::OffsetsState state)
{
    return state == numbers::OffsetsState::Estimated ? tr("too few to tell") : tr("cannot be told");
}

template <typename Who, typename NameOf>
QStringList ReviewWords::offsets(const std::vector<MeasuredBy<Who>>& rows, const NameOf& nameOf)
{
    QStringList sentences;
    for (const MeasuredBy<Who>& row : rows) {
        if (!row.offset || !row.offset->isShown())
            continue;
        const MeasuredOffset& offset = *row.offset;
        const QString amount = Formats{}.number(std::abs(offset.estimate), 3);
        const QString interval = tr("95 % interval %1 to %2")
                                     .arg(PictureWords::signedMillimetres(offset.lower, 3),
                                          PictureWords::signedMillimetres(offset.upper, 3));
        sentences << (offset.estimate > 0
                          ? tr("%1 reads %2 mm high (%3).").arg(nameOf(row.who), amount, interval)
                          : tr("%1 reads %2 mm low (%3).").arg(nameOf(row.who), amount, interval));
    }
    return sentences;
}

template <typename Who, typename NameOf>
QString ReviewWords::readingsBy(const std::vector<MeasuredBy<Who>>& rows, const NameOf& nameOf)
{
    QStringList parts;
    for (const MeasuredBy<Who>& row : rows)
        parts << tr("%1 %Ln reading(s)", "who or what", row.readings).arg(nameOf(row.who));
    return tr("%1.", "so many readings each").arg(SentenceParts::list(parts));
}

QStringList ReviewWords::personOffsets(const MeasurerOffsets& offsets) const
{
    if (offsets.persons.empty())
        return {tr("Nobody read anything here that can be held against a band.")};
    const auto nameOf = [this](PersonId id) { return personName(id); };
    const QString each = readingsBy(offsets.persons, nameOf);
    switch (offsets.personsState) {
    case numbers::OffsetsState::OneLevel:
        return {each, tr("One person read everything: there is nobody to compare with.")};
    case numbers::OffsetsState::CannotBeToldApart:
        return {each, tr("Who reads high or low cannot be told: %1.")
                          .arg(hiddenBehind(offsets.personsHiddenBehind, numbers::OffsetFactor::Person))};
    case numbers::OffsetsState::NoDegreesOfFreedom:
        return {each, tr("Too few readings to tell the persons apart.")};
    case numbers::OffsetsState::Estimated:
        break;
    }
    QStringList sentences = ReviewWords::offsets(offsets.persons, nameOf);
    if (sentences.isEmpty())
        return {tr("No person’s distance from all of them can be told from none.")};
    return sentences << tr("Measure together once before the next rigging.");
}

QStringList ReviewWords::gaugeOffsets(const MeasurerOffsets& offsets) const
{
    if (offsets.gauges.empty())
        return {};
    const auto nameOf = [this](GaugeId id) { return gaugeName(id); };
    const QString each = readingsBy(offsets.gauges, nameOf);
    switch (offsets.gaugesState) {
    case numbers::OffsetsState::OneLevel:
        return {each, tr("Everything was read with one gauge: there is none to compare with.")};
    case numbers::OffsetsState::CannotBeToldApart:
        return {each, tr("Which gauge reads high or low cannot be told: %1.")
                          .arg(hiddenBehind(offsets.gaugesHiddenBehind, numbers::OffsetFactor::LeafSet))};
    case numbers::OffsetsState::NoDegreesOfFreedom:
        return {each, tr("Too few readings to tell the gauges apart.")};
    case numbers::OffsetsState::Estimated:
        break;
    }
    QStringList sentences = ReviewWords::offsets(offsets.gauges, nameOf);
    if (sentences.isEmpty())
        return {tr("No gauge’s distance from all of them can be told from none.")};
    return sentences << tr("Check the set against a micrometer.");
}

// Why one factor's differences are also another's.
QString ReviewWords::hiddenBehind(const std::vector<numbers::OffsetFactor>& factors,
                                  numbers::OffsetFactor asked)
{
    const bool aboutPersons = asked == numbers::OffsetFactor::Person;
    const auto has = [&factors](numbers::OffsetFactor one) {
        return std::ranges::find(factors, one) != factors.end();
    };
    if (has(numbers::OffsetFactor::Day))
        return aboutPersons ? tr("on each day one person read all, so persons and days go together")
                            : tr("on each day one gauge was used, so gauges and days go together");
    if (has(numbers::OffsetFactor::Person) || has(numbers::OffsetFactor::LeafSet))
        return tr("each person kept to an own gauge, so persons and gauges go together");
    return tr("persons, gauges and days go together");
}

} // namespace rig
