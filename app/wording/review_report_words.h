#pragma once

#include "core/review/airframe_review.h"
#include "core/review/judged_readings.h"
#include "core/rigging/control_check.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// What only the printed report says; it shares the rest with the page (review_words.h).
class ReviewReportWords
{
    Q_DECLARE_TR_FUNCTIONS(ReviewReportWords)

public:
    static QString title();
    static QString running(const ReviewPeriod& period); // above every page
    static QString fileName(const QString& registration, const QString& lastDay);

    // At the top
    static QString whatThisIs();
    static QString airframe();
    static QString serial();
    static QString jurisdiction();
    static QString manuals();
    static QString period();
    static QString annual();
    static QString riggings();
    static QString readings();
    static QString measuredBy();
    static QString measuredWith();
    static QString notEntered(const QStringList& what);
    static QString nobody();
    static QString nothing();
    static QString fromTo(Day from, Day to);
    static QString annualDue(Day day, std::optional<double> riggingsToCome);
    static QString riggingsCounted(const RiggingCounts& counts);
    static QString methodVersion(int version);
    static QString readingsOf(int readings, int inDoubt);
    static QString noReadings();
    static QString list(const QStringList& names);
    static QString withCount(const QString& name, int readings);

    // What stands out first: what to look at, to be ticked off
    static QString standsOut();
    static QString firstIntro();
    static QString coupling();
    static QString couplingOrMatter();
    static QString standsNow();
    static QString what();
    static QString page();
    static QString betweenSigns();
    static QString nothingStandsOut(int readings);
    static QString noOpenQuestion();
    static QString reversed(int times, Day last, const QStringList& checks); // of a surface
    static QString cannotSee(int times, Day last, const QStringList& checks);
    static QString openQuestion();
    static QString allCouplings();
    static QString movedTogether(int days);
    static QString movedTogetherWith(int days);
    static QString contents();
    static QString nothingAbout(const QStringList& parts);

    // Questions
    static QString openQuestions();
    static QString openAtTheEnd(Day day);
    static QString closedQuestions();
    static QString asked();
    static QString by();
    static QString question();
    static QString foundAndDone();

    // Outside
    static QString outside();
    static QString outsideIntro();
    static QString when();
    static QString reading();
    static QString story();
    static QString riggingNumbers(double first, double last);
    static QString readingsFromTo(int readings, const QString& least, const QString& most);
    static QString outsideOf(const QString& edges, Direction direction);
    static QString readBy(const QString& persons, const QString& gauges);
    static QString ofDays(const std::vector<Day>& days, const QString& whatCame);
    static QString enteredAfterwards();
    static QString shownThen(const QString& verdict);
    static QString correctedTo(const QString& reading, const QString& reason);
    static QString stillOpen();
    static QString allEnteredAfterwards();
    static QString noneAsked();
    static QString neverAsked();
    static QString readingBy(const QString& interval, const QString& person);
    static QString readAfterwards(const QStringList& readings);
    static QString readBesides(const QStringList& readings);
    static QString sentence(const QString& phrase); // as one of its own
    // What was noted with a reading, and of a gauge
    static QString note();
    static QString noted(const QString& note);
    static QString notedOf(const QString& gauge, const QString& note);

    // Each coupling
    static QString eachCoupling();
    static QString eachIntro();
    static QString placed(const Coupling& coupling); // circuit and access; empty when neither is entered
    static QString gapAxis();
    static QString riggingAxis();
    static QString stripAxis();
    static QString looked();
    static QString foundByHand();
    static QString doneByHand();
    static QString initials();
    static QString fitting();
    static QString band();
    static QString bandInShort(const Band& band, bool isFrozen);
    static QString scatterInShort(const QString& scatter);
    static QString chanceInShort(const QString& chance);
    static QString riggingsSince(int riggings);
    static QString edges(const Band& band);
    static QString frozenBy(Day day, const QString& first, const QString& second);
    static QString notFrozen();
    static QString firstBand();
    static QString firstBandWas(const Band& band);
    static QString withDoubted(const Band& band);
    static QString inThePeriod();
    static QString verdicts(const VerdictCounts& counts);
    static QString ofThoseOutside(const QString& together);
    static QString inDoubt(int readings);
    static QString missed(int riggings);
    static QString driftHead();
    static QString noBandNoMovement();
    static QString noMovementShown();
    static QString noDrift(const QString& why);
    static QString flag(const DriftFlag& flag, double signal);
    static QString noFlag();
    static QString scatterHead();
    static QString tooFewForScatter();
    static QString byTheAnnual();
    static QString restsOn(const AnnualForecast& forecast);
    static QString noForecast(const QString& why);
    static QString partSeated();
    static QString doneSince();
    static QString lookAt();
    static QString openHere();

    // Near the edge, superseded, struck, left out
    static QString nearEdge();
    static QString nearEdgeShort(int shown, int all);
    static QString why();
    static QString side(Direction direction);
    static QString superseded(const QString& reason);
    static QString struck(const QString& reason);
    static QString leftOut(const QString& reason);
    static QString with(const QString& person, const QString& gauge);

    // All couplings together, measurers, gauges
    static QString shared();
    static QString sharedIntro();
    static QString measurers();
    static QString measurersIntro();
    static QString gauge();
    // Looks, pulls and the control check
    static QString looks();
    static QString looksIntro();
    static QString atRiggings();
    static QString wholeFirst();
    static QString wholeSecond();
    static QString answeredFelt();
    static QString answeredCannotSee();
    static QString answeredNo();
    static QString interrupted();
    static QString controlChecks();
    static QString controlIntro();
    static QString surface();
    static QString triedWhole();
    static QString lastMeasured();
    static QString measured(MeasureKind kind, const QString& figure);
    static QString onDay(const QStringList& measured, const QString& day);

    static QString gaugeChecks();
    static QString checks();
    static QString checked(const std::vector<Day>& days, const QString& how, const QString& found);

    // Changes
    static QString fittings();
    static QString began();
    static QString reason();
    static QString bandBefore();
    static QString bandAfter();
    static QString bandNotYet();
    static QString doubtedBands();
    static QString withoutDoubted();
    static QString withThem();
    static QString events();
    static QString eventHead();
    static QString whole();

    // The rest
    static QString outOfUse(const QStringList& couplings);
    static QString rest();
    static QString howWorkedOut();
    static QString methodLines();
    // How many false alarms so many readings and riggings bring with nothing changed
    static QStringList falseAlarms(const AirframeReview& review);
    static QString tables();
    static QString withoutAppendix();

    // When a part of it could not be written: `failed` is the PDF itself, or a table or their folder.
    static QString cannotWrite(const QString& pdf, const QString& failed);

    // By hand
    static QString byHand();
    static QString findings();
    static QString signature();
    static QString placeAndDay();
};

} // namespace rig
