#include "app/wording/doubt_words.h"
#include "app/wording/formats.h"
#include "app/wording/picture_words.h"
#include "app/wording/question_words.h"
#include "app/wording/review_words.h"
#include "app/wording/sentence_parts.h"
#include "app/wording/verdict_words.h"
#include "core/airframe/name_in.h"

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr qsizetype kMostToldOfARun = 3; // of what came of its readings

QString dayOfMoment(const Moment& moment) { return Formats{}.day(moment.localDay()); }

QString textOf(const std::string& text)
{
    QString plain = QString::fromStdString(text).trimmed();
    while (plain.endsWith(QLatin1Char('.')))
        plain.chop(1);
    return plain;
}

} // namespace

QString ReviewWords::couplingName(CouplingId id) const
{
    const QString name = QString::fromStdString(nameIn(m_facts.couplings, id));
    return name.isEmpty() ? tr("a coupling") : name;
}

QString ReviewWords::personName(PersonId id) const
{
    const QString name = QString::fromStdString(m_facts.nameOf(id));
    return name.isEmpty() ? tr("somebody not named") : name;
}

// A name on its case is short, A or P: then its kind says what it is.
QString ReviewWords::gaugeInSentence(GaugeId id) const
{
    constexpr int kShort = 3;
    const Gauge* gauge = m_facts.gauge(id);
    if (!gauge)
        return tr("a gauge not known");
    const QString name = QString::fromStdString(gauge->name);
    if (name.size() > kShort)
        return name;
    return DoubtWords::gauge(gauge->set.kind(), name);
}

QString ReviewWords::gaugeName(GaugeId id) const { return SentenceParts::capital(gaugeInSentence(id)); }

// Outside its band

QString ReviewWords::readBy(const Reading& reading) const
{
    const QString person = personName(reading.person);
    if (!reading.gauge)
        return tr("Read by %1.").arg(person);
    return tr("Read by %1 with %2.").arg(person, gaugeInSentence(*reading.gauge));
}

QString ReviewWords::outsideTitle(const OutsideStory& story) const
{
    return tr("%1, %2: %3", "coupling, day, reading")
        .arg(couplingName(story.reading.coupling), dayOfMoment(story.reading.when),
             Formats{}.interval(story.reading.interval));
}

// The farthest that nothing explains, or the farthest of all.
QString ReviewWords::farthestOutside(const CouplingReview& coupling,
                                     const std::vector<OutsideStory>& stories) const
{
    const OutsideStory& story = *std::ranges::max_element(stories, {}, [](const OutsideStory& one) {
        return std::pair{one.by == OutsideBy::Nothing, one.beyond};
    });
    const QString day = dayOfMoment(story.reading.when);
    const QString reading = Formats{}.interval(story.reading.interval);
    QStringList said;
    if (stories.size() == 1)
        said << tr("On %1: %2.", "day, reading").arg(day, reading);
    else
        said << tr("The farthest on %1: %2.", "day, reading").arg(day, reading);
    if (story.beyond > 0)
        said << beyondEdge({0, 1, story.beyond, story.beyond});
    said << explained(coupling, story) << whatCameOf(story);
    said.removeAll(QString{});
    return said.join(QLatin1Char(' '));
}

QString ReviewWords::beyondEdge(const OutsideRun& run)
{
    const QString nearest = Formats{}.number(run.nearest, 2);
    const QString farthest = Formats{}.number(run.farthest, 2);
    if (nearest == farthest)
        return tr("At least %1 mm beyond the outer edge.").arg(farthest);
    return tr("Beyond the outer edge: the nearest by at least %1 mm, the farthest by at least %2 mm.")
        .arg(nearest, farthest);
}

QString ReviewWords::explained(const CouplingReview& coupling, const OutsideStory& story)
{
    if (story.isOpen() || story.foundAs())
        return {};
    switch (story.by) {
    case OutsideBy::Person:
        return tr("Less what this person usually reads high or low, it would not lie wholly outside. That "
                  "does not show "
                  "that the joint was locked.");
    case OutsideBy::Gauge:
        return tr("Less what is usually read high or low with this gauge, it would not lie wholly outside. "
                  "That does "
                  "not show that the joint was locked.");
    case OutsideBy::Both:
        return tr("Less what this person and this gauge usually add, it would not lie wholly outside. That "
                  "does not "
                  "show that the joint was locked.");
    case OutsideBy::Movement: {
        const PathChangeTold* change = coupling.movement ? coupling.movement->told() : nullptr;
        if (!change)
            return tr("It fits a change of this gap; why the gap moved, the readings cannot tell.");
        if (change->kind == ChangeKind::Step)
            return tr("It fits the step told of this coupling; why the gap moved, the readings cannot tell.");
        return change->kind == ChangeKind::Drift
                   ? tr("It fits the drift told of this coupling; why the gap moved, the readings cannot "
                        "tell.")
                   : tr("It fits the step or drift told of this coupling; why the gap moved, the "
                        "readings cannot tell.");
    }
    case OutsideBy::Nothing:
        break;
    }
    return {};
}

QString ReviewWords::outsideTitle(const CouplingReview& coupling, const OutsideRun& run) const
{
    const OutsideStory& first = coupling.outside[run.first];
    if (run.count == 1)
        return outsideTitle(first);
    const OutsideStory& last = coupling.outside[run.first + run.count - 1];
    return tr("%1: %n reading(s) outside, %2 to %3", "coupling, first day, last day",
              static_cast<int>(run.count))
        .arg(nameOf(coupling), dayOfMoment(first.reading.when), dayOfMoment(last.reading.when));
}

QStringList ReviewWords::outside(const CouplingReview& coupling, const OutsideRun& run) const
{
    const OutsideStory& first = coupling.outside[run.first];
    QStringList sentences;
    if (run.count == 1) {
        sentences = outside(first);
        sentences.insert(1, explained(coupling, first));
        if (first.beyond > 0)
            sentences.insert(1, beyondEdge(run));
    } else {
        sentences << (first.judgement.direction == Direction::Below ? tr("All of them below its band.")
                                                                    : tr("All of them above its band."))
                  << beyondEdge(run) << explained(coupling, first);
        QStringList came;
        for (std::size_t i = run.first; i < run.first + run.count; ++i)
            if (const QString one = whatCameOf(coupling.outside[i]); !one.isEmpty() && !came.contains(one))
                came << one;
        const auto more = came.size() - kMostToldOfARun;
        sentences << came.mid(0, kMostToldOfARun);
        if (more > 0)
            sentences << tr("And %n more, each of them in the report.", nullptr, static_cast<int>(more));
    }
    sentences.removeAll(QString{});
    return sentences;
}

QStringList ReviewWords::outside(const OutsideStory& story) const
{
    QStringList sentences;
    sentences << placeOf(story);
    sentences << readBy(story.reading)
              << tr("Rigging %1.").arg(Formats{}.count(static_cast<int>(std::floor(story.rigging))));
    if (!story.shown)
        sentences << tr("Nothing was shown then: it was entered afterwards.");
    else if (story.shown->judgement.verdict != story.judgement.verdict)
        sentences << tr("Shown then: %1.").arg(VerdictWords::word(story.shown->judgement.verdict));
    if (story.corrected)
        sentences << correctedTo(*story.corrected);
    if (story.struck)
        sentences << struck(*story.struck);
    sentences << togetherThatDay(story) << whatCameOf(story);
    if (const QString besides = readBesides(story); !besides.isEmpty())
        sentences << besides;
    if (const QString later = readAfterwards(story); !later.isEmpty())
        sentences << later;
    sentences.removeAll(QString{});
    return sentences;
}

QString ReviewWords::whatCameOf(const OutsideStory& story) const
{
    if (story.question)
        return story.question->isOpen() ? tr("Still open: nobody has said what was found.")
                                        : resolution(*story.question);
    return story.corrected || story.struck
               ? QString{}
               : tr("No question was asked, and nothing is noted of what was found.");
}

QString ReviewWords::togetherThatDay(const OutsideStory& story)
{
    if (!story.together)
        return {};
    return story.judgement.direction == Direction::Above
               ? tr("All or nearly all couplings read high that day.")
               : tr("All or nearly all couplings read low that day.");
}

QString ReviewWords::placeOf(const OutsideStory& story) const
{
    const auto& band = story.judgement.band;
    if (story.foundAs() == SeatState::NotSecured)
        return tr("Found not secured.");
    if (story.judgement.verdict != Verdict::Outside || !band)
        return tr("Found part-seated.");
    const QString edges = Formats{}.band(band->outer);
    return story.judgement.direction == Direction::Below ? tr("Below its band, outer edges %1.").arg(edges)
                                                         : tr("Above its band, outer edges %1.").arg(edges);
}

QString ReviewWords::correctedTo(const Reading& correction) const
{
    const QString why = textOf(correction.note);
    const QString day = dayOfMoment(correction.stamp.when);
    QStringList sentences;
    if (correction.state == SeatState::NotSecured)
        sentences << tr("Noted on %1: found not secured.").arg(day);
    else
        sentences
            << (correction.state == SeatState::PartSeated
                    ? tr("Noted on %1: found part-seated.").arg(day)
                    : tr("Noted on %1: corrected to %2.").arg(day, Formats{}.interval(correction.interval)));
    if (!why.isEmpty())
        sentences << tr("“%1.”", "the reason, as it was noted").arg(why);
    return sentences.join(QLatin1Char(' '));
}

QString ReviewWords::struck(const Exclusion& strike) const
{
    return tr("Struck on %1: “%2.”", "day: reason")
        .arg(dayOfMoment(strike.stamp.when), textOf(strike.reason));
}

QString ReviewWords::listOf(const std::vector<Reading>& readings) const
{
    QStringList each;
    for (const Reading& one : readings)
        each << tr("%1 by %2", "interval, person")
                    .arg(Formats{}.interval(one.interval), personName(one.person));
    return SentenceParts::list(each);
}

QString ReviewWords::readBesides(const OutsideStory& story) const
{
    if (story.besides.empty())
        return {};
    return tr("Also read on the same rigging, before or after it: %1. The table did not tell when.")
        .arg(listOf(story.besides));
}

QString ReviewWords::readAfterwards(const OutsideStory& story) const
{
    if (story.afterwards.empty())
        return {};
    return tr("Read afterwards, on the same rigging: %1.").arg(listOf(story.afterwards));
}

QString ReviewWords::noneOutside()
{
    return tr("No reading of a rigging in this period lay outside its band or was found part-seated. That is "
              "one sign only.");
}

// Questions

QString ReviewWords::question(const QuestionStory& story) const
{
    const Question& question = story.question;
    QString place = QString::fromStdString(m_facts.airframe.registration);
    if (question.gauge)
        place = gaugeInSentence(*question.gauge);
    if (question.coupling)
        place = couplingName(*question.coupling);
    for (const Surface& surface : m_facts.surfaces)
        if (question.surface == surface.id)
            place = QString::fromStdString(surface.name);
    const QString asked =
        QuestionWords::askedSince(QuestionWords::asked(question, place), Formats{}.day(question.day()));
    return question.text.empty() ? asked : QuestionWords::withText(asked, textOf(question.text));
}

QString ReviewWords::resolution(const QuestionStory& story) const
{
    if (!story.resolution)
        return {};
    const Resolution& closed = *story.resolution;
    if (closed.answered)
        return closed.copiedBy ? tr("Closed on %1 by %2, who looked again: copied from paper by %3.")
                                     .arg(dayOfMoment(closed.when()), personName(closed.person),
                                          personName(*closed.copiedBy))
                               : tr("Closed on %1 by %2, who looked again.")
                                     .arg(dayOfMoment(closed.when()), personName(closed.person));
    const bool isOwn = story.question.stamp.by == closed.person;
    const bool isOfWords = story.question.kind == QuestionKind::Asked;
    const QString sentence =
        !isOwn ? tr("Closed on %1 by %2. Found: %3. Done: %4.")
        : isOfWords
            ? tr("Closed on %1 by %2, who had asked it. Found: %3. Done: %4.")
            : tr("Closed on %1 by %2, whose own reading or answer had opened it. Found: %3. Done: %4.");
    return sentence.arg(dayOfMoment(closed.when()), personName(closed.person), textOf(closed.found),
                        textOf(closed.done));
}

QString ReviewWords::noQuestion() { return tr("No question is open."); }

} // namespace rig
