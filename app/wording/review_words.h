#pragma once

#include "core/review/airframe_review.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include <functional>
#include <string>

namespace rig {

// What a period of an airframe says, in the sentences that the page and the report share. They tell what was
// read and how it moved, with the interval; they diagnose nothing and never say that anything is in order.
class ReviewWords
{
    Q_DECLARE_TR_FUNCTIONS(ReviewWords)

public:
    // The facts give names to ids; they outlive this object.
    explicit ReviewWords(const AirframeFacts& facts) : m_facts{facts} {}

    // The period
    static QString title(const ReviewPeriod& period);  // "Before the annual of 20 February 2027"
    static QString period(const ReviewPeriod& period); // "Since the last annual, 20 February 2026 to …"
    // Which readings of today are kept back, why, and how they open; empty where none is.
    static QString closedToSecond(const std::vector<std::string>& couplings);
    static QString counted(const AirframeReview& review); // "Since the last annual: 48 riggings, …"

    // What stands out, as a phrase in the middle of a sentence: "the gap has been growing since about rigging
    // 233"
    static QString sign(Sign sign, const CouplingReview& coupling);
    static QStringList signs(const CouplingReview& coupling); // gravest first; also what comes with a drift
    // Told once of all couplings on which part-seated was never seen; empty where that is not more than one,
    // which says so itself. In the signs a mark then stands for it.
    static QString neverSeen(const AirframeReview& review);
    static QStringList signsWithMark(const CouplingReview& coupling);
    // The same of the gravest one as a sentence of its own, and the figures that belong to it.
    static QString gravest(const CouplingReview& coupling);
    QString gravestFigures(const CouplingReview& coupling) const;
    static bool isMoving(const CouplingReview& coupling); // told to, and not ended
    static bool isGrave(Sign sign);                       // worth a sentence at the top
    // Whatever is not grave: that nothing stands out, where nothing is worth saying; else what is. Always
    // with what it is said of.
    static QString nothingGrave(const AirframeReview& review);
    static QStringList nothingOfItsKind(const AirframeReview& review);
    static bool nothingStandsOut(const AirframeReview& review);
    static QString caution(); // a band is a past, never a limit; one sign only

    // Figures of a coupling: short for a table; `why…` in place of a figure that cannot be known.
    static QString
    movement(const CouplingReview& coupling); // "step +0.09 (+0.07 to +0.11, since rigging 41)"
    static QString movementFigure(const CouplingReview& coupling);   // "step +0.09"
    static QString movementInterval(const CouplingReview& coupling); // "+0.07 to +0.11, since rigging 41"
    static QString excursion(const CouplingReview& coupling);        // "+0.11"
    static QString scatter(const CouplingReview& coupling);          // "0.041 (was 0.018)"
    static QString scatterNow(const CouplingReview& coupling);       // "0.041"
    static QString scatterBefore(const CouplingReview& coupling);    // "was 0.018"
    static QString chance(const CouplingReview& coupling);           // "0.93", "< 0.01"
    static QString chanceOf(double chance);
    static QString whyNoMovement(const CouplingReview& coupling); // "none told"
    static QString whyNoFigure(const CouplingReview& coupling);
    static QString whyNoChance(const CouplingReview& coupling, const ReviewPeriod& period);
    static QString noGap();
    static QString noBand(const CouplingReview& coupling); // "no band yet: 4 readings"
    // The same figures as sentences, with what they rest on; empty when there are none.
    static QString movementSentence(const CouplingReview& coupling);
    static QString excursionSentence(const CouplingReview& coupling);
    static QString forecastSentence(const CouplingReview& coupling);
    static QString scatterSentence(const CouplingReview& coupling);
    // Too early to tell what moves: the last readings lie to one side of the band's middle.
    static QString earlySign(const DriftFlag& flag);

    // Is it the coupling, the leaf set or the person?
    QString shift(const SharedShiftStory& story) const;
    // Words for what is drawn of a shift: "leaf set B"; empty when nothing names itself. Outlived by this
    // object.
    std::function<std::string(const DayShift&)> shiftCauses() const;
    static QString noShift(const AirframeReview& review);

    // Who measures like whom
    QStringList personOffsets(const MeasurerOffsets& offsets) const;
    QStringList gaugeOffsets(const MeasurerOffsets& offsets) const;
    // In place of an offset, beside the number of readings.
    static QString noOffset(numbers::OffsetsState state);
    template <typename Who>
    static std::string noOffset(const MeasuredBy<Who>& measured, numbers::OffsetsState state)
    {
        return noOffset(measured.isHidden ? numbers::OffsetsState::CannotBeToldApart : state).toStdString();
    }

    // Outside its band
    QString outsideTitle(const OutsideStory& story) const; // "Right aileron, 20 April 2025: 0.10–0.15 mm"
    QStringList outside(const OutsideStory& story) const;  // what was shown, who, what came of it
    // The same of a run: of several readings as one.
    QString outsideTitle(const CouplingReview& coupling, const OutsideRun& run) const;
    QStringList outside(const CouplingReview& coupling, const OutsideRun& run) const;
    // What explains it, for one that lies outside; empty where nothing does.
    static QString explained(const CouplingReview& coupling, const OutsideStory& story);
    // Where all couplings went that way on its day; empty elsewhere.
    static QString togetherThatDay(const OutsideStory& story);
    // "2 of them when all or nearly all couplings read high"; empty without any.
    static QString outsideTogether(const std::vector<OutsideStory>& stories);
    static QString noneOutside();

    // Questions
    QString question(const QuestionStory& story) const; // "Left aileron, could not be seen since 3 May 2026"
    QString resolution(const QuestionStory& story) const; // "Closed …: found …; done …"; empty when open
    static QString noQuestion();

    // Gauges, fittings, events
    QString gauge(const Gauge& gauge) const { return gaugeName(gauge.id); } // "Leaf set B"
    QStringList gaugeStory(const GaugeReview& gauge) const;
    QString fitting(const FittingChange& change) const;
    QString event(const Event& event) const;
    static QString noChange();

    // Too few readings; riggings
    static QStringList tooFew(const AirframeReview& review);
    static QStringList riggings(const AirframeReview& review);
    static QStringList layoffs(const AirframeReview& review);

private:
    static bool isWorthSaying(Sign sign);
    static QString riggingsIn(const ReviewPeriod& period, int riggings);
    static QString saidOf(const AirframeReview& review);
    static QString nameOf(const CouplingReview& coupling);
    QString shiftCause(const DayShift& day) const;
    static QString riggingNumber(double rigging);
    static QString ratio(const ScatterNow& scatter);
    static QString movementSign(const PathChangeTold& change);
    static QString stepOf(const PathChangeTold& change);
    static QString rateOf(const PathChangeTold& change);
    static QString placeOf(const PathChangeTold& change);
    static QString outsideSign(const CouplingReview& coupling);
    static QString outsideByMovement(const CouplingReview& coupling);
    static QString beyondEdge(const OutsideRun& run);
    QString farthestOutside(const CouplingReview& coupling, const std::vector<OutsideStory>& stories) const;
    static QStringList howFarOutside(const std::vector<OutsideStory>& stories, int count);
    static QString outsideBeforeSign(const CouplingReview& coupling);
    static QString typedIn(const std::vector<Day>& onPaper);
    static QString hiddenBehind(const std::vector<numbers::OffsetFactor>& factors);
    QString couplingName(CouplingId id) const;
    QString gaugeName(GaugeId id) const;       // "Leaf set B"
    QString gaugeInSentence(GaugeId id) const; // "leaf set B"
    QString personName(PersonId id) const;     // never empty
    QString shiftedHow(const SharedShiftStory& story, bool isOneWay) const;
    QStringList afterShift(const SharedShiftStory& story, const std::vector<Day>& days) const;
    QString readBy(const Reading& reading) const;
    QString whatCameOf(const OutsideStory& story) const; // empty: the correction says it
    QString placeOf(const OutsideStory& story) const;
    QString correctedTo(const Reading& correction) const;
    QString struck(const Exclusion& strike) const;
    QString readAfterwards(const OutsideStory& story) const;
    QString readBesides(const OutsideStory& story) const;
    QString listOf(const std::vector<Reading>& readings) const;
    template <typename Who, typename NameOf>
    static QStringList offsets(const std::vector<MeasuredBy<Who>>& rows, const NameOf& nameOf);
    template <typename Who, typename NameOf>
    static QString readingsBy(const std::vector<MeasuredBy<Who>>& rows, const NameOf& nameOf);

    const AirframeFacts& m_facts;
};

} // namespace rig
