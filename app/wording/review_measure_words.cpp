#include "app/wording/cause_words.h"
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
    if (day.ofGauge)
        return gaugeInSentence(*day.ofGauge);
    return day.ofPerson ? personName(*day.ofPerson) : QString{};
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
    const int count = static_cast<int>(days.size());
    const QString named = SentenceParts::days(days);
    QStringList sentences{shiftedHow(story, isOneWay)};
    sentences
        << (isEvery ? tr("That was on every coupling, on %n day(s): %1.", nullptr, count).arg(named)
                    : tr("That was on nearly every coupling, on %n day(s): %1.", nullptr, count).arg(named));
    return (sentences << afterShift(story, days)).join(QLatin1Char(' '));
}

QString ReviewWords::shiftedHow(const SharedShiftStory& story, bool isOneWay) const
{
    const bool isUp = story.millimetres > 0;
    const QString amount = Formats{}.number(std::abs(story.millimetres), 3);
    if (!story.gauge && !story.person) {
        if (!isOneWay)
            return tr(
                "All read high on one day and low on another, and neither a gauge nor a person explains it.");
        return isUp ? tr("All read %1 mm high, and neither a gauge nor a person explains it.").arg(amount)
                    : tr("All read %1 mm low, and neither a gauge nor a person explains it.").arg(amount);
    }
    const QString who = story.gauge ? gaugeName(*story.gauge) : personName(*story.person);
    if (!isOneWay)
        return tr("%1 read high on one day and low on another.", "gauge or person").arg(who);
    const int days = static_cast<int>(story.days.size());
    return isUp ? tr("%1 read %2 mm high: the middle of all couplings, on %n day(s).",
                     "gauge or person, figure", days)
                      .arg(who, amount)
                : tr("%1 read %2 mm low: the middle of all couplings, on %n day(s).",
                     "gauge or person, figure", days)
                      .arg(who, amount);
}

// Whatever the day has in common, each joint is looked at: what leaves plungers short moves all of them too.
QStringList ReviewWords::afterShift(const SharedShiftStory& story, const std::vector<Day>& days) const
{
    const GaugeCheck* doubt =
        story.gauge ? doubtOn(*story.gauge, days.front(), m_facts.gaugeChecks) : nullptr;
    if (doubt && doubt->quarantineFrom)
        return {
            tr("The gauge is in doubt from %1 on: these readings do not count for band, drift and scatter.")
                .arg(Formats{}.day(*doubt->quarantineFrom)),
            tr("Look at each joint all the same."), CauseWords::stiffGrease()};
    QStringList sentences;
    if (story.gauge && story.person)
        sentences << tr("Part of it may be that %1 usually reads a little high or low.")
                         .arg(personName(*story.person));
    return sentences << CauseWords::whenTogether() << CauseWords::stiffGrease();
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
        const auto end = [](double mm) { return Formats{}.number(std::abs(mm), 3); };
        sentences
            << (offset.estimate > 0
                    ? tr("Over all days %1 reads about %2 mm higher than the mean of all here (95 % interval "
                         "%3 to %4).",
                         "who or what, figures")
                          .arg(nameOf(row.who), amount, end(offset.lower), end(offset.upper))
                    : tr("Over all days %1 reads about %2 mm lower than the mean of all here (95 % interval "
                         "%3 to %4).",
                         "who or what, figures")
                          .arg(nameOf(row.who), amount, end(offset.upper), end(offset.lower)));
    }
    return sentences;
}

template <typename Who, typename NameOf>
QString ReviewWords::readingsBy(const std::vector<MeasuredBy<Who>>& rows, const NameOf& nameOf)
{
    QStringList parts;
    for (const MeasuredBy<Who>& row : rows)
        parts << tr("%1: %Ln reading(s).", "who or what", row.readings).arg(nameOf(row.who));
    return parts.join(QLatin1Char(' '));
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
        return {each, tr("Who reads high or low cannot be told."), hiddenBehind(offsets.personsHiddenBehind)};
    case numbers::OffsetsState::Estimated:
        break;
    }
    QStringList sentences = ReviewWords::offsets(offsets.persons, nameOf);
    if (sentences.isEmpty())
        return {tr("Nobody reads clearly higher or lower than the others.")};
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
        return {each, tr("Which gauge reads high or low cannot be told."),
                hiddenBehind(offsets.gaugesHiddenBehind)};
    case numbers::OffsetsState::Estimated:
        break;
    }
    QStringList sentences =
        ReviewWords::offsets(offsets.gauges, [this](GaugeId id) { return gaugeInSentence(id); });
    if (sentences.isEmpty())
        return {tr("No gauge reads clearly higher or lower than the others.")};
    return sentences << tr("Check the set against a micrometer.");
}

// Why one factor's differences are also another's.
QString ReviewWords::hiddenBehind(const std::vector<numbers::OffsetFactor>& factors)
{
    if (!factors.empty())
        return tr("Each person kept to one gauge, so a person cannot be told from a gauge.");
    return tr("Persons, gauges and days cannot be told apart.");
}

} // namespace rig
