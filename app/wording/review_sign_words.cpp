#include "app/wording/formats.h"
#include "app/wording/review_words.h"
#include "app/wording/sentence_parts.h"
#include "app/wording/standing_words.h"
#include "core/review/coupling_signs.h"

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

struct OutsideCounts
{
    int outside = 0;
    int partSeated = 0; // found so, outside or not
    int notSecured = 0; // likewise
};

// On days on which all couplings went the way of the reading.
struct TogetherCounts
{
    int high = 0;
    int low = 0;
};

TogetherCounts togetherCounts(const std::vector<OutsideStory>& stories)
{
    TogetherCounts counts;
    for (const OutsideStory& story : stories)
        if (story.together && !story.foundAs())
            ++(story.judgement.direction == Direction::Above ? counts.high : counts.low);
    return counts;
}

// Of those that stand the one that surely lies farthest beyond its band, else of all; null where none does.
const OutsideStory* farthestOf(const std::vector<OutsideStory>& stories)
{
    const auto farness = [](const OutsideStory& story) {
        return std::pair{story.isStanding(), story.foundAs() ? -1.0 : story.beyond};
    };
    const auto farthest = std::ranges::max_element(stories, {}, farness);
    return farthest == stories.end() || farthest->foundAs() ? nullptr : &*farthest;
}

OutsideCounts outsideCounts(const std::vector<OutsideStory>& stories)
{
    OutsideCounts counts;
    for (const OutsideStory& story : stories) {
        const auto found = story.foundAs();
        ++(!found ? counts.outside : *found == SeatState::NotSecured ? counts.notSecured : counts.partSeated);
    }
    return counts;
}

} // namespace

QString ReviewWords::sign(Sign sign, const CouplingReview& coupling)
{
    switch (sign) {
    case Sign::FactsInDoubt:
        return tr("another program changed facts it rests on, or may have");
    case Sign::OpenQuestion:
        if (coupling.openQuestions.size() == 1)
            return tr("one question open: %1")
                .arg(StandingWords::asked(coupling.openQuestions.front().question.kind,
                                          coupling.askedSurface));
        return tr("%n question(s) open", nullptr, static_cast<int>(coupling.openQuestions.size()));
    case Sign::Drift:
    case Sign::Step:
    case Sign::StepOrDrift:
    case Sign::DriftEnded:
        return movementSign(*coupling.movement->told());
    case Sign::ScatterGrew:
    case Sign::ScatterShrank: {
        const ScatterNow& scatter = *coupling.movement->scatter;
        return tr("scatter %1 times what it was before, in the last %n reading(s)", nullptr, scatter.readings)
            .arg(ratio(scatter));
    }
    case Sign::Outside:
        return outsideSign(coupling);
    case Sign::OutsideBefore:
        return outsideBeforeSign(coupling);
    case Sign::OutsideExplained: {
        const int count = static_cast<int>(coupling.outside.size());
        QStringList parts{tr(
            "%n reading(s) outside its band, not wholly so once the usual offset of the person or gauge is "
            "taken off",
            nullptr, count)};
        parts << howFarOutside(coupling.outside, count);
        return parts.join(tr(", ", "between signs"));
    }
    case Sign::NearEdge:
        return tr("last reading near the edge");
    case Sign::GapIsNoWitness:
        return tr("the gap cannot tell locked from part-seated");
    case Sign::NotRead:
        return tr("no reading in this period");
    case Sign::NoBand:
        return noBand(coupling);
    case Sign::MissedRiggings:
        return tr("no reading at %n rigging(s)", nullptr, coupling.riggingsMissed);
    case Sign::ThinBand:
        return tr("thin band, from %n reading(s)", nullptr, coupling.baselineReadings);
    case Sign::PartSeatedNeverShown:
        break;
    }
    return tr("no reading noted as part-seated");
}

QString ReviewWords::movementSign(const PathChangeTold& change)
{
    const QString rigging = riggingNumber(change.at);
    if (change.endedAt)
        return change.isUp()
                   ? tr("the gap grew from about rigging %1 to about rigging %2, and no more since")
                         .arg(rigging, riggingNumber(*change.endedAt))
                   : tr("the gap shrank from about rigging %1 to about rigging %2, and no more since")
                         .arg(rigging, riggingNumber(*change.endedAt));
    switch (change.kind) {
    case ChangeKind::Step: {
        const QString amount = Formats{}.number(std::abs(change.step->estimate), 2);
        return change.isUp()
                   ? tr("the gap became %1 mm larger by a step at about rigging %2").arg(amount, rigging)
                   : tr("the gap became %1 mm smaller by a step at about rigging %2").arg(amount, rigging);
    }
    case ChangeKind::Drift:
        return change.isUp() ? tr("the gap has been growing since about rigging %1").arg(rigging)
                             : tr("the gap has been shrinking since about rigging %1").arg(rigging);
    case ChangeKind::StepOrDrift:
        break;
    }
    return change.isUp() ? tr("the gap has been larger since about rigging %1; whether by a step or a drift "
                              "cannot be told "
                              "yet")
                               .arg(rigging)
                         : tr("the gap has been smaller since about rigging %1; whether by a step or a drift "
                              "cannot be told "
                              "yet")
                               .arg(rigging);
}

QString ReviewWords::outsideTogether(const std::vector<OutsideStory>& stories)
{
    const TogetherCounts counts = togetherCounts(stories);
    const int together = counts.high + counts.low;
    if (together == 0)
        return {};
    if (stories.size() == 1)
        return counts.high > 0 ? tr("when all or nearly all couplings read high")
                               : tr("when all or nearly all couplings read low");
    if (counts.low == 0)
        return tr("%n of them when all or nearly all couplings read high", nullptr, together);
    if (counts.high == 0)
        return tr("%n of them when all or nearly all couplings read low", nullptr, together);
    return tr("%n of them when all or nearly all couplings read high, or low, together", nullptr, together);
}

// The farthest in millimetres, with its day, and how many of them were not this coupling's alone.
QStringList ReviewWords::howFarOutside(const std::vector<OutsideStory>& stories, int count)
{
    QStringList parts;
    if (const OutsideStory* farthest = farthestOf(stories)) {
        const QString day = Formats{}.day(farthest->reading.when.localDay());
        const QString amount = Formats{}.number(farthest->beyond, 2);
        if (amount == Formats{}.number(0, 2))
            parts << (count == 1 ? tr("just beyond it, on %1", "day")
                                 : tr("the farthest just beyond it, on %1", "day"))
                         .arg(day);
        else
            parts << (count == 1 ? tr("%1 mm or more beyond it, on %2", "figure, day")
                                 : tr("the farthest %1 mm or more beyond it, on %2", "figure, day"))
                         .arg(amount, day);
    }
    if (const QString together = outsideTogether(stories); !together.isEmpty())
        parts << together;
    return parts;
}

QString ReviewWords::outsideBeforeSign(const CouplingReview& coupling)
{
    const QString last = Formats{}.day(coupling.outsideBefore.back().reading.when.localDay());
    const auto count = static_cast<int>(coupling.outsideBefore.size());
    if (count == 1)
        return tr("outside before this period, on %1, and nobody has said what it was", "day").arg(last);
    return tr("%n reading(s) outside before this period, the last on %1, and nobody has said what they were",
              "day", count)
        .arg(last);
}

QString ReviewWords::outsideSign(const CouplingReview& coupling)
{
    const OutsideCounts counts = outsideCounts(coupling.outside);
    QStringList parts;
    if (counts.outside > 0)
        parts << tr("%n reading(s) outside its band", nullptr, counts.outside)
              << howFarOutside(coupling.outside, counts.outside);
    if (counts.partSeated == 1)
        parts << tr("once found part-seated");
    else if (counts.partSeated > 1)
        parts << tr("%n time(s) found part-seated", nullptr, counts.partSeated);
    if (counts.notSecured == 1)
        parts << tr("once found not secured");
    else if (counts.notSecured > 1)
        parts << tr("%n time(s) found not secured", nullptr, counts.notSecured);
    return parts.join(tr(", ", "between signs"));
}

QStringList ReviewWords::signs(const CouplingReview& coupling)
{
    QStringList all;
    for (const Sign one : coupling.signs) {
        all << sign(one, coupling);
        if (isMovement(one) && coupling.otherSideMovesToo)
            all << tr("the other side moves the same way");
    }
    return all;
}

namespace {

QString neverSeenMark() { return QStringLiteral("†"); }

} // namespace

QString ReviewWords::neverSeen(const AirframeReview& review)
{
    QStringList names;
    int measured = 0;
    for (const CouplingReview& one : review.couplings) {
        measured += hasGap(one.coupling) ? 1 : 0;
        if (one.has(Sign::PartSeatedNeverShown))
            names << nameOf(one);
    }
    if (names.size() < 2)
        return {};
    if (names.size() == measured)
        return tr("%1 On none of these %n coupling(s) was a reading noted as part-seated: what they read "
                  "then is not known.",
                  nullptr, measured)
            .arg(neverSeenMark());
    return tr("%1 No reading was noted as part-seated on %2: what they read then is not known.")
        .arg(neverSeenMark(), SentenceParts::list(names));
}

QStringList ReviewWords::signsWithMark(const CouplingReview& coupling)
{
    QStringList all = signs(coupling);
    if (!coupling.has(Sign::PartSeatedNeverShown))
        return all;
    all.removeAll(sign(Sign::PartSeatedNeverShown, coupling));
    if (all.isEmpty())
        return {neverSeenMark()};
    all.back() = tr("%1 %2", "sign, mark of what is told once below").arg(all.back(), neverSeenMark());
    return all;
}

bool ReviewWords::isGrave(Sign sign) { return sign <= Sign::OutsideBefore; }

QString ReviewWords::gravest(const CouplingReview& coupling)
{
    if (coupling.signs.empty())
        return {};
    const QString name = nameOf(coupling);
    switch (coupling.signs.front()) {
    case Sign::ScatterGrew:
        return tr("%1 scatters %2 times as much as before.").arg(name, ratio(*coupling.movement->scatter));
    case Sign::OpenQuestion: {
        const Question& first = coupling.openQuestions.front().question;
        return tr("%1: %2, open since %3.", "coupling, what is asked, day")
            .arg(name, StandingWords::asked(first.kind, coupling.askedSurface), Formats{}.day(first.day()));
    }
    case Sign::Drift:
    case Sign::Step:
    case Sign::StepOrDrift:
    case Sign::FactsInDoubt:
    case Sign::Outside:
    case Sign::OutsideBefore:
    case Sign::NearEdge:
    case Sign::GapIsNoWitness:
    case Sign::OutsideExplained:
    case Sign::DriftEnded:
    case Sign::ScatterShrank:
    case Sign::NotRead:
    case Sign::NoBand:
    case Sign::MissedRiggings:
    case Sign::ThinBand:
    case Sign::PartSeatedNeverShown:
        break;
    }
    return tr("%1: %2.", "coupling, what stands out").arg(name, sign(coupling.signs.front(), coupling));
}

// One line of all the readings outside that the movement explains.
QString ReviewWords::outsideByMovement(const CouplingReview& coupling)
{
    const auto explained = std::ranges::count(coupling.outside, OutsideBy::Movement, &OutsideStory::by);
    if (explained == 0)
        return {};
    return tr("%n reading(s) outside the band fit this change; each was to be looked at all the same.",
              nullptr, static_cast<int>(explained));
}

QString ReviewWords::gravestFigures(const CouplingReview& coupling) const
{
    if (coupling.signs.empty())
        return {};
    QStringList sentences;
    switch (coupling.signs.front()) {
    case Sign::Drift:
    case Sign::Step:
    case Sign::StepOrDrift:
        sentences << movementSentence(coupling) << excursionSentence(coupling) << forecastSentence(coupling)
                  << outsideByMovement(coupling);
        if (coupling.otherSideMovesToo)
            sentences << tr("The same circuit on the other side moves the same way, by itself.");
        break;
    case Sign::ScatterGrew:
        sentences << scatterSentence(coupling);
        break;
    case Sign::FactsInDoubt:
        sentences << tr("Trust no band and no verdict of it until these facts were compared with a copy or a "
                        "print.");
        break;
    case Sign::OpenQuestion:
        sentences << tr("Nobody has said yet what was found.");
        if (coupling.openQuestions.size() > 1)
            sentences << tr("%n more open question(s) on it.", nullptr,
                            static_cast<int>(coupling.openQuestions.size()) - 1);
        break;
    case Sign::Outside:
        sentences << farthestOutside(coupling, coupling.outside);
        break;
    case Sign::OutsideBefore:
        sentences << farthestOutside(coupling, coupling.outsideBefore)
                  << tr("Whoever knows what it was notes it as a finding.");
        break;
    case Sign::NearEdge:
    case Sign::GapIsNoWitness:
    case Sign::OutsideExplained:
    case Sign::DriftEnded:
    case Sign::ScatterShrank:
    case Sign::NotRead:
    case Sign::NoBand:
    case Sign::MissedRiggings:
    case Sign::ThinBand:
    case Sign::PartSeatedNeverShown:
        break;
    }
    sentences.removeAll(QString{});
    return sentences.join(QLatin1Char(' '));
}

bool ReviewWords::isWorthSaying(Sign sign) { return sign != Sign::PartSeatedNeverShown; }

bool ReviewWords::nothingStandsOut(const AirframeReview& review)
{
    const auto isQuiet = [](const CouplingReview& one) {
        const bool isInside = one.standing.says == Says::Inside || one.standing.says == Says::NoGap;
        return isInside && std::ranges::none_of(one.signs, isWorthSaying);
    };
    return review.counts.couplings > 0 && !review.couplings.empty() && review.sharedShifts.empty() &&
           std::ranges::all_of(review.couplings, isQuiet);
}

// What a sentence of no sign is said of. Never without: nothing found in three readings is no news.
QString ReviewWords::saidOf(const AirframeReview& review)
{
    const RiggingCounts& counts = review.counts;
    if (!counts.firstRead || !counts.lastRead)
        return tr("No gap was read in this period.");
    const QString first = Formats{}.day(*counts.firstRead);
    if (*counts.firstRead == *counts.lastRead)
        return tr("This is said of %n reading(s), all of %1.", nullptr, counts.readings).arg(first);
    return tr("This is said of %n reading(s), from %1 to %2.", nullptr, counts.readings)
        .arg(first, Formats{}.day(*counts.lastRead));
}

// Each part only where it is so.
QStringList ReviewWords::nothingOfItsKind(const AirframeReview& review)
{
    const auto isOnAny = [&review](Sign sign) {
        return std::ranges::any_of(review.couplings,
                                   [sign](const CouplingReview& one) { return one.has(sign); });
    };
    QStringList sentences{isOnAny(Sign::DriftEnded) ? tr("The readings of this period show no drift that "
                                                         "still goes on, no step and no larger scatter; "
                                                         "that is not to say that nothing moved.")
                                                    : tr("The readings of this period show no drift, no step "
                                                         "and no larger scatter; that is not to say "
                                                         "that nothing moved.")};
    if (!isOnAny(Sign::OutsideExplained))
        sentences << tr("No reading lay outside its band in this period.");
    if (std::ranges::none_of(review.questions, [&review](const QuestionStory& one) {
            return one.isOpenAfter(review.period.to);
        }))
        sentences << tr("No question is open.");
    return sentences;
}

QString ReviewWords::nothingGrave(const AirframeReview& review)
{
    QStringList sentences;
    if (nothingStandsOut(review))
        sentences << tr("Nothing stands out on %n coupling(s).", nullptr, review.counts.couplings);
    if (review.counts.readings > 0)
        sentences << nothingOfItsKind(review);
    sentences << saidOf(review);
    QStringList without;
    QStringList withoutGap;
    for (const CouplingReview& one : review.couplings) {
        if (!hasGap(one.coupling))
            withoutGap << nameOf(one);
        else if (!one.band || !one.latest)
            without << nameOf(one);
        else if (!one.signs.empty() && isWorthSaying(one.signs.front()))
            sentences << gravest(one);
    }
    if (!without.isEmpty())
        sentences
            << tr("Nothing can be said of %1: no band, or no reading.").arg(SentenceParts::list(without));
    if (!withoutGap.isEmpty())
        sentences << tr("No gap to measure: %1.").arg(SentenceParts::list(withoutGap));
    return (sentences << tr("Each gap is one sign only.")).join(QLatin1Char(' '));
}

QString ReviewWords::caution()
{
    return tr(
        "A band is a coupling’s own past, never a limit. The gap is one sign only: look, pull and control "
        "check stand beside it. These are an owner’s measurements, for assessment by a person entitled to "
        "decide.");
}

} // namespace rig
