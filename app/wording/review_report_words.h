#pragma once

#include "core/review/airframe_review.h"
#include "core/review/judged_readings.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// What only the printed report says; it shares the rest with the page (review_words.h).
class ReviewReportWords
{
    Q_DECLARE_TR_FUNCTIONS(ReviewReportWords)

public:
    static QString title() { return tr("Engineer’s report on the control couplings"); }
    static QString running(const ReviewPeriod& period); // above every page
    static QString fileName(const QString& registration, const QString& lastDay);

    // At the top
    static QString whatThisIs();
    static QString airframe() { return tr("Airframe"); }
    static QString serial() { return tr("Serial number"); }
    static QString jurisdiction() { return tr("Jurisdiction"); }
    static QString manuals() { return tr("Manuals"); }
    static QString period() { return tr("Period"); }
    static QString annual() { return tr("Annual"); }
    static QString riggings() { return tr("Riggings"); }
    static QString readings() { return tr("Readings"); }
    static QString measuredBy() { return tr("Measured by"); }
    static QString measuredWith() { return tr("Measured with"); }
    static QString method() { return tr("Method"); }
    static QString notEntered() { return tr("not entered"); }
    static QString nobody() { return tr("nobody"); }
    static QString nothing() { return tr("nothing"); }
    static QString fromTo(Day from, Day to);
    static QString annualDue(Day day, double riggingsToCome);
    static QString riggingsCounted(const RiggingCounts& counts);
    static QString methodVersion(int version);
    static QString readingsOf(int readings, int inDoubt);
    static QString noReadings();
    static QString list(const QStringList& names) { return names.join(tr(", ", "between names")); }
    static QString withCount(const QString& name, int readings);

    // What stands out first
    static QString standsOut() { return tr("What stands out first"); }
    static QString rankingIntro();
    static QString coupling() { return tr("Coupling"); }
    static QString gapAndBand() { return tr("Last gap on its band"); }
    static QString drift() { return tr("Drift, mm per 100 riggings (95 %)"); }
    static QString scatter() { return tr("Scatter, mm"); }
    static QString chance() { return tr("Outside by the annual"); }
    static QString what() { return tr("What stands out"); }
    static QString nothingStandsOut() { return tr("nothing in these figures; one sign only"); }
    static QString readingCount(int readings) { return tr("%n reading(s)", nullptr, readings); }
    static QString bandShort(const QString& band) { return tr("band %1").arg(band); }

    // Questions
    static QString openQuestions() { return tr("Open questions"); }
    static QString openAtTheEnd(Day day);
    static QString closedQuestions() { return tr("Questions asked, and how they were closed"); }
    static QString asked() { return tr("Asked"); }
    static QString by() { return tr("By"); }
    static QString question() { return tr("Question"); }
    static QString foundAndDone() { return tr("Found and done"); }

    // Outside
    static QString outside() { return tr("Every reading outside its band or found part-seated"); }
    static QString outsideIntro();
    static QString when() { return tr("When"); }
    static QString reading() { return tr("Reading"); }
    static QString story() { return tr("What was shown, and what came of it"); }
    static QString rigging(double rigging);

    // Each coupling
    static QString eachCoupling() { return tr("Each coupling"); }
    static QString eachIntro();
    static QString placed(const Coupling& coupling); // circuit and access; empty when neither is entered
    static QString fitting() { return tr("Fitting"); }
    static QString band() { return tr("Band"); }
    static QString riggingsSince(int riggings);
    static QString edges(const Band& band);
    static QString frozenBy(Day day, const QString& first, const QString& second);
    static QString notFrozen() { return tr("Not frozen: further confirmed readings still move it."); }
    static QString firstBand() { return tr("First band"); }
    static QString firstBandWas(const Band& band);
    static QString withDoubted(const Band& band);
    static QString inThePeriod() { return tr("Readings"); }
    static QString verdicts(const VerdictCounts& counts);
    static QString inDoubt(int readings);
    static QString missed(int riggings);
    static QString driftHead() { return tr("Drift"); }
    static QString noBandNoMovement();
    static QString noDrift(const QString& why);
    static QString flag(const DriftFlag& flag, double onset, double signal);
    static QString noFlag();
    static QString sharedOnly();
    static QString scatterHead() { return tr("Scatter"); }
    static QString tooFewForScatter();
    static QString stepHead() { return tr("Step"); }
    static QString noStep();
    static QString byTheAnnual() { return tr("By the annual"); }
    static QString restsOn(const DriftForecast& forecast);
    static QString noForecast(const QString& why);
    static QString partSeated() { return tr("Part-seated"); }
    static QString witness(const WitnessFinding& witness, int seen);
    static QString doneSince() { return tr("Done to it"); }
    static QString lookAt() { return tr("To look at"); }
    static QString openHere() { return tr("Open"); }
    static QString standsOutHere() { return tr("Stands out"); }

    // Near the edge, superseded, left out
    static QString nearEdge() { return tr("Near the edge, superseded or left out"); }
    static QString nearEdgeShort(int shown, int all);
    static QString why() { return tr("Why it is listed"); }
    static QString side(Direction direction);
    static QString superseded(const QString& reason);
    static QString leftOut(const QString& reason);
    static QString with(const QString& person, const QString& gauge);

    // All couplings together, measurers, gauges
    static QString shared() { return tr("Is it the coupling, the leaf set or the person?"); }
    static QString sharedIntro();
    static QString measurers() { return tr("Who measures like whom"); }
    static QString measurersIntro();
    static QString gauge() { return tr("Leaf set or gauge"); }
    static QString gaugeChecks() { return tr("Leaf sets and gauges, their checks and doubts"); }
    static QString checks() { return tr("Checks and doubts"); }
    static QString checked(const std::vector<Day>& days, const QString& how, const QString& found);
    static QString noGauges() { return tr("No leaf set or gauge is entered."); }

    // Changes
    static QString fittings() { return tr("Fittings that began, and what changed"); }
    static QString began() { return tr("Began"); }
    static QString reason() { return tr("What was done"); }
    static QString bandBefore() { return tr("Band before"); }
    static QString bandAfter() { return tr("Band after"); }
    static QString bandNotYet() { return tr("none yet"); }
    static QString noFittings() { return tr("No fitting began in this period."); }
    static QString doubtedBands() { return tr("Bands that readings in doubt were part of"); }
    static QString withoutDoubted() { return tr("Without them, as judged"); }
    static QString withThem() { return tr("With them"); }
    static QString events() { return tr("What was done to the airframe"); }
    static QString eventHead() { return tr("Event"); }
    static QString noEvents() { return tr("No event was entered in this period."); }
    static QString whole() { return tr("whole airframe"); }

    // The rest
    static QString tooFew() { return tr("Couplings with too little to say"); }
    static QString outOfUse(const QStringList& couplings);
    static QString counted() { return tr("Riggings counted"); }
    static QString howWorkedOut() { return tr("How the figures are worked out"); }
    static QString methodLines();
    static QString tables();

    // When a part of it could not be written: `failed` is the PDF itself, or a table or their folder.
    static QString cannotWrite(const QString& pdf, const QString& failed);

    // By hand
    static QString byHand() { return tr("Findings"); }
    static QString findings();
    static QString signature() { return tr("Name, licence or authority, signature"); }
    static QString placeAndDay() { return tr("Place and date"); }
};

} // namespace rig
