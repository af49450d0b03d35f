#include "app/wording/study_words.h"

#include "app/wording/formats.h"

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr int kDecimals = 3;
constexpr int kFewPersons = 4; // from so many down two people differ by chance alone

QString mm(double value) { return Formats{}.number(value, kDecimals); }

} // namespace

QString StudyWords::measuringTitle() { return tr("Practise to measure"); }
QString StudyWords::measuringWhat()
{
    return tr(
        "Read the same locked joint several times, each time taking the leaf out and beginning anew. Earlier "
        "readings are not shown. Only on a joint that was looked at and found locked. What is read here "
        "makes no band and "
        "is held against none; but a figure far from the others is a stop, practice or not. Afterwards look "
        "at the "
        "joint and pull it again, and try its surfaces again.");
}
QString StudyWords::measureAt(const QString& coupling)
{
    return tr("Reading: %1", "a coupling").arg(coupling);
}
QString StudyWords::gauge() { return tr("Measured &with"); }
QString StudyWords::chooseGauge() { return tr("Choose a gauge"); }
QString StudyWords::chooseGaugeFirst() { return tr("Choose first what you measure with."); }
QString StudyWords::noGap()
{
    return tr("This coupling has no gap to read. Choose another one at the left.");
}
QString StudyWords::kept(int count) { return tr("Kept. Own practice readings so far: %n", "", count); }
QString StudyWords::keptAt(const QString& person, int read, int of)
{
    return tr("Kept: reading %1 of %2, by %3.", "numbers, a person").arg(read).arg(of).arg(person);
}
QString StudyWords::chooseReading() { return tr("Choose a reading of yours"); }
QString StudyWords::oneReading(const QString& what, const QString& when)
{
    return tr("%1, %2", "a coupling, a time").arg(what, when);
}
QString StudyWords::showOwn() { return tr("S&how my figures"); }
QString StudyWords::hideOwn() { return tr("&Hide my figures"); }
QString StudyWords::isPrivate(const QString& person)
{
    return tr("Private to %1: in no report and no table, unless the box is ticked.", "a person").arg(person);
}
QString StudyWords::share() { return tr("M&y figures may be told to others"); }
QString StudyWords::noneOwn() { return tr("No practice reading yet."); }
QString StudyWords::ownCount(int readings) { return tr("Own practice readings: %n", "", readings); }
QString StudyWords::tooFew()
{
    return tr("How alike you read again can be told from the second reading of one joint on.");
}

QString StudyWords::repeats(double sd, const numbers::Interval& interval)
{
    return tr("Your repeated readings of one joint scatter by %1 mm (standard deviation; 95 % interval %2 to "
              "%3).")
        .arg(mm(sd), mm(interval.lower), mm(interval.upper));
}
QString StudyWords::limitedByStep()
{
    return tr("The step of the leaves alone scatters more than that: a finer set would tell more.");
}

QString StudyWords::offset(double offset, const numbers::Interval& interval)
{
    const QString size = mm(std::abs(offset));
    const QString lower = Formats{}.number(interval.lower, kDecimals);
    const QString upper = Formats{}.number(interval.upper, kDecimals);
    if (interval.lower > 0)
        return tr("You read wider than the others by %1 mm (95 % interval %2 to %3).")
            .arg(size, lower, upper);
    if (interval.upper < 0)
        return tr("You read narrower than the others by %1 mm (95 % interval %2 to %3).")
            .arg(size, lower, upper);
    return tr("No difference from the others is shown; it may be anything from %1 to %2 mm (95 % interval).")
        .arg(lower, upper);
}
QString StudyWords::noOffset()
{
    return tr(
        "How far you read from the others can be told from ten readings on, and where others have read the "
        "same joints.");
}

QString StudyWords::studyTitle() { return tr("Crossed study"); }
QString StudyWords::studyWhat()
{
    return tr(
        "Several people read several couplings several times, in an order drawn by lot, and nobody sees "
        "earlier readings. The joints stay connected throughout. It tells how alike people measure here, and "
        "counts for nothing else. It can be left in the middle and gone on with here later. Only on joints "
        "that were looked at and found locked; afterwards look at "
        "each and pull it again, "
        "and try its surfaces again.");
}
QString StudyWords::whichCouplings() { return tr("Couplings"); }
QString StudyWords::whichPersons() { return tr("People"); }
QString StudyWords::repeatsEach() { return tr("R&eadings of each coupling by each person"); }
QString StudyWords::begin() { return tr("&Begin the study"); }
QString StudyWords::beginAnother() { return tr("&Begin another study"); }
QString StudyWords::twoOfEach() { return tr("Tick at least two couplings and two people."); }
QString StudyWords::wanted(int couplings, int persons, int repeats)
{
    return tr("%n reading(s) in all.", "", couplings * persons * repeats);
}
QString StudyWords::progress(int read, int of) { return tr("Reading %1 of %2").arg(read).arg(of); }
QString StudyWords::next(const QString& person, const QString& coupling)
{
    return tr("Next: %1 reads %2", "a person, a coupling").arg(person, coupling);
}
QString StudyWords::nextHint()
{
    return tr("Begin anew with the thinnest likely leaf. Do not look at what stood there before.");
}
QString StudyWords::handOver(const QString& person)
{
    return tr("Hand over to %1. Nothing is taken before that.", "a person").arg(person);
}
QString StudyWords::handOverHint()
{
    return tr("Alt+I, or a click, by whoever reads next: no figure and no Enter goes past this.");
}
QString StudyWords::iAm(const QString& person) { return tr("&I am %1 and read now", "a person").arg(person); }
QString StudyWords::takeLastBack(const QString& person, const QString& coupling)
{
    return tr("&Take the last reading back: %1, %2 …", "a person, a coupling").arg(person, coupling);
}
QString StudyWords::leave() { return tr("Leave it, &go on later"); }
QString StudyWords::left(int read, int of)
{
    return tr("The study is left at %1 of %2 readings. They are kept, and it is gone on with here at any "
              "time, also "
              "after the program was closed, as long as no joint of it was opened. Once one was, begin "
              "another study.")
        .arg(read)
        .arg(of);
}
QString StudyWords::goOn() { return tr("&Go on with the study"); }
QString StudyWords::whole() { return tr("The study is complete."); }

QString StudyWords::result(const numbers::MeasurerStudy& study, int persons)
{
    const QString one = mm(study.repeatLimit);
    const QString two = mm(study.reproducedLimit);
    const QString said =
        tr("About 95 of 100 pairs of readings of one joint would differ by no more than about %1 mm when one "
           "person reads, and %2 mm when two do.")
            .arg(one, two);
    return persons > kFewPersons ? said
                                 : tr("%1 With %n people the second figure is rough.", "", persons).arg(said);
}

QString StudyWords::noResult(const StudyResult& result)
{
    if (result.hasOpenReading)
        return tr(
            "A reading has no thicker leaf that refused, so its middle is not known, and the study tells "
            "nothing. Begin another one with thicker leaves.");
    return tr("These readings do not tell how alike people measure.");
}
QString StudyWords::columnWhat() { return tr("From these readings"); }
QString StudyWords::columnMm() { return tr("mm"); }
QString StudyWords::rowRepeat() { return tr("Standard deviation, one person reading again"); }
QString StudyWords::rowReproduced() { return tr("Standard deviation, any person reading"); }
QString StudyWords::rowPersons() { return tr("Standard deviation from person to person"); }
QString StudyWords::rowInteraction() { return tr("Standard deviation, person by coupling"); }
QString StudyWords::rowCouplings() { return tr("Standard deviation from coupling to coupling"); }
QString StudyWords::rowRepeatLimit() { return tr("95 % difference, one person"); }
QString StudyWords::rowReproducedLimit() { return tr("95 % difference, two people"); }
QString StudyWords::meaning()
{
    return tr("All of it on one rigging: how differently the joint sits each time it is connected is not in "
              "these figures.");
}

} // namespace rig
