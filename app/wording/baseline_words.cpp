#include "app/wording/baseline_words.h"

#include "app/wording/formats.h"

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

// As shown: an edge below 0 is shown as 0, so it counts as 0 here too.
double widthOf(const BandEdges& edges) { return std::max(0.0, edges.upper) - std::max(0.0, edges.lower); }

} // namespace

QString BaselineWords::keyCorrect() { return tr("W", "key for wrong leaf pressed"); }
QString BaselineWords::keyExclude() { return tr("X", "key for leave out of the band"); }
QString BaselineWords::keyFreeze() { return tr("F", "key for freeze the baseline"); }

QString BaselineWords::title() { return tr("Baseline day"); }

QString BaselineWords::whatFor()
{
    return tr("The owner and one other, on a day without flying, the glider on trestles. Ten readings of "
              "each coupling "
              "or more make its band.");
}

QString BaselineWords::couplings() { return tr("Couplings"); }
QString BaselineWords::noAirframe() { return tr("No airframe is chosen. Enter one under Airframe first."); }
QString BaselineWords::noneWithGap() { return tr("None of the couplings has a gap to measure."); }

QString BaselineWords::withoutGap(const QStringList& names)
{
    return tr("No gap to measure: %1.").arg(names.join(tr(", ", "between couplings")));
}

QString BaselineWords::noCouplings() { return tr("This airframe has no couplings yet. Enter them first."); }
QString BaselineWords::noPeople() { return tr("Nobody is entered yet. Enter the people first."); }
QString BaselineWords::noGauges() { return tr("No leaf set is entered yet. Enter one first."); }
QString BaselineWords::chooseCoupling() { return tr("Choose a coupling."); }

QString BaselineWords::noFitting()
{
    return tr("This coupling has no fitting that a reading could belong to. Start one under Couplings.");
}

QString BaselineWords::confirmed(int readings) { return tr("%n confirmed reading(s)", nullptr, readings); }

QString BaselineWords::confirmedThin(int readings)
{
    return tr("%n confirmed reading(s), thin band", nullptr, readings);
}

QString BaselineWords::confirmedFrozen(int readings)
{
    return tr("%n confirmed reading(s), frozen", nullptr, readings);
}

QString BaselineWords::noFittingShort() { return tr("no fitting yet"); }
QString BaselineWords::measuredBy() { return tr("Measured by"); }
QString BaselineWords::choosePerson() { return tr("Choose a person"); }
QString BaselineWords::measuredWith() { return tr("Measured with"); }
QString BaselineWords::chooseGauge() { return tr("Choose a leaf set or gauge"); }

QString BaselineWords::gaugeInDoubt(const QString& gauge)
{
    return tr("%1 (in doubt)", "leaf set").arg(gauge);
}

QString BaselineWords::reconnected() { return tr("1  Disconnected, cleaned and connected again?"); }

QString BaselineWords::reconnectedHint()
{
    return tr("Before every reading. Without it the band comes out too narrow.");
}

QString BaselineWords::locked() { return tr("2  Locked, confirmed otherwise than by the gap?"); }

QString BaselineWords::lockedHint()
{
    return tr("Ball seen in the socket, tab or witness hole, sleeve at its stop, pull. Never by the gap: "
              "that would go "
              "in a circle.");
}

QString BaselineWords::choosePersonFirst() { return tr("First choose who measures."); }
QString BaselineWords::chooseGaugeFirst() { return tr("First choose what is measured with."); }

QString BaselineWords::gaugeInDoubtFirst()
{
    return tr(
        "That leaf set is in doubt since its last check. A baseline is not read with it: choose another.");
}

QString BaselineWords::personChanged() { return tr("Another person measures: the cycle starts anew."); }

QString BaselineWords::answerFirst()
{
    return tr("Disconnect, clean and connect again; then answer the first question.");
}

QString BaselineWords::confirmFirst()
{
    return tr("Confirm that it is locked; then answer the second question.");
}

QString BaselineWords::notReconnected()
{
    return tr("No reading is taken: read twice without disconnecting, the joint says the same twice and the "
              "band comes "
              "out too narrow. Disconnect, clean, connect, then answer yes.");
}

QString BaselineWords::notLocked()
{
    return tr("No reading is taken: a band made of joints that were not locked would call a bad joint usual. "
              "Disconnect, "
              "clean and connect again; if it does not lock then, leave it and call whom you call.");
}

QString BaselineWords::readNow()
{
    return tr("Now read: the thickest leaf that enters freely. Leaf clean and square, sleeve at its stop by "
              "its own "
              "spring, no hand on it, no force.");
}

QString BaselineWords::correctNow(const QString& interval, const QString& time, const QString& person)
{
    return tr("Give the figure that was right instead of %1 (%2, %3). The wrong one stays, with a line "
              "through it.")
        .arg(interval, time, person);
}

QString BaselineWords::inWhoseName(const QString& measuredBy, const QString& correctedBy)
{
    return tr("Measured by %1, put right by %2: the reading stays in the name of %1.", "persons")
        .arg(measuredBy, correctedBy);
}

QString BaselineWords::readElsewhere()
{
    return tr("If it was read at another coupling or by another person, leave it out (%1) and read there, or "
              "in that name, again.",
              "its key")
        .arg(keyExclude());
}

QString BaselineWords::dropCorrection() { return tr("Leave it as it was  (Esc)"); }

QString BaselineWords::kept(const QString& interval, const QString& time)
{
    return tr("%1, saved %2. Next cycle: disconnect, clean and connect again.").arg(interval, time);
}

QString BaselineWords::corrected(const QString& interval, const QString& time)
{
    return tr("%1 takes its place, saved %2. The wrong one stays in the list.").arg(interval, time);
}

QString BaselineWords::notKept() { return tr("Not saved."); }

QString BaselineWords::sources(int readings, int people, int gauges, int days)
{
    const QString by = tr("by %n person(s)", nullptr, people);
    const QString with = tr("with %n gauge(s)", nullptr, gauges);
    const QString on = tr("on %n day(s)", nullptr, days);
    return tr("%1 %2, %3, %4.", "readings by people, with gauges, on days")
        .arg(confirmed(readings), by, with, on);
}

QString BaselineWords::splitAdvice()
{
    return tr("Two people, two leaf sets and two days make the band honest.");
}

QString BaselineWords::noBandYet(int readings, int needed)
{
    return tr("No band below %1 readings: %2 still missing.").arg(needed).arg(needed - readings);
}

QString BaselineWords::noBandFromThese()
{
    return tr("These readings make no band: each of them is open on one side. Read with a gauge that reaches "
              "further.");
}

QString BaselineWords::thin(int readings, int needed)
{
    return tr("Thin band: only %1 readings. %2 make one that can be frozen.").arg(readings).arg(needed);
}

QString BaselineWords::enough(int readings) { return tr("Band from %1 readings.").arg(readings); }

QString BaselineWords::widths(const Band& band)
{
    const Formats formats;
    return tr("From outer edge to outer edge it is %1 mm wide (%2), from inner edge to inner edge %3 mm "
              "(%4).")
        .arg(formats.millimetres(widthOf(band.outer)), formats.band(band.outer),
             formats.millimetres(widthOf(band.inner)), formats.band(band.inner));
}

QString BaselineWords::narrowing(double now, double withOneMore)
{
    const Formats formats;
    const double by = now - withOneMore;
    if (by >= 0.005)
        return tr("If the next one reads like the others, it becomes %1 mm narrower between the outer edges; "
                  "otherwise "
                  "it may become wider.")
            .arg(formats.millimetres(by));
    if (by > 0)
        return tr("If the next one reads like the others, it becomes narrower by less than %1 mm.")
            .arg(formats.millimetres(0.01));
    return tr("If the next one reads like the others, it does not become narrower.");
}

QString BaselineWords::outerShare()
{
    // Content of the outer band 99.73 % (docs/method.md A).
    return tr(
        "Of 10 000 locked readings about 27 fall beyond the outer edges, on average over couplings. One "
        "band from few readings may hold noticeably more or less.");
}

QString BaselineWords::neverALimit() { return tr("The band is this coupling's own past, never a limit."); }

QString BaselineWords::readingsSoFar() { return tr("Readings so far"); }
QString BaselineWords::columnWhen() { return tr("When"); }
QString BaselineWords::columnReading() { return tr("Reading"); }
QString BaselineWords::columnPerson() { return tr("Who"); }
QString BaselineWords::today(const QString& time) { return tr("today, %1").arg(time); }
QString BaselineWords::columnGauge() { return tr("With"); }
QString BaselineWords::columnState() { return tr("What became of it"); }
QString BaselineWords::inTheBand() { return tr("counts for the band"); }
QString BaselineWords::correctedBecause(const QString& reason) { return tr("corrected: %1").arg(reason); }

QString BaselineWords::correctionBecause(const QString& reason)
{
    return tr("corrects another: %1").arg(reason);
}

QString BaselineWords::leftOutBecause(const QString& person, const QString& reason)
{
    return tr("left out by %1: %2").arg(person, reason);
}

QString BaselineWords::unlikeTheOthers()
{
    return tr("unlike the others: measure again, or leave it out with a reason");
}

QString BaselineWords::inDoubt(const QString& day)
{
    return tr("its gauge is in doubt from %1: does not count").arg(day);
}

QString BaselineWords::doesNotCount() { return tr("came after the freeze, does not count"); }

QString BaselineWords::inOneLine(const QString& first, const QString& second)
{
    return tr("%1; %2").arg(first, second);
}

QString BaselineWords::gaugeNotKnown() { return tr("not known"); }
QString BaselineWords::correct() { return tr("Wrong leaf pressed  (%1)").arg(keyCorrect()); }
QString BaselineWords::exclude() { return tr("Leave out of the band  (%1)").arg(keyExclude()); }
QString BaselineWords::excludedBy() { return tr("Left out by"); }
QString BaselineWords::chooseRow() { return tr("Choose a reading in the list first."); }

QString BaselineWords::rowIsDone()
{
    return tr("That reading was corrected or left out before. It stays as it is.");
}

QString BaselineWords::rowIsFrozen()
{
    return tr("This baseline is frozen: its readings are neither corrected nor left out any more.");
}

QString BaselineWords::chooseExcluder()
{
    return tr("Choose who leaves it out first. The name stands beside it.");
}

QString BaselineWords::chooseCorrector()
{
    return tr("Choose who corrects it first. The correction stands in that person's name.");
}

QString BaselineWords::correctTitle() { return tr("Wrong leaf pressed"); }

QString BaselineWords::correctQuestion(const QString& interval, const QString& time)
{
    return tr("What was wrong with %1, read at %2? Your words stand beside it for good.").arg(interval, time);
}

QString BaselineWords::excludeTitle() { return tr("Leave out of the band"); }

QString BaselineWords::excludeQuestion(const QString& interval, const QString& time)
{
    return tr("Why does %1, read at %2, not belong to the band? Your words stand beside it for good.")
        .arg(interval, time);
}

QString BaselineWords::freezeTitle() { return tr("Freeze this baseline"); }

QString BaselineWords::freezeSentence()
{
    return tr(
        "A frozen baseline stays as it is, so that slow movement shows against it. It takes two people.");
}

QString BaselineWords::firstName() { return tr("First name"); }
QString BaselineWords::secondName() { return tr("Second name, another person"); }
QString BaselineWords::freeze() { return tr("Freeze  (%1)").arg(keyFreeze()); }
QString BaselineWords::freezeYes() { return tr("Freeze it"); }

QString BaselineWords::freezeQuestion(const QString& coupling, int readings, const QString& first,
                                      const QString& second)
{
    return tr("%1: freeze the baseline of %2 readings, in the names of %3 and %4? It cannot be thawed: only "
              "a refit starts "
              "a new one.")
        .arg(coupling)
        .arg(readings)
        .arg(first, second);
}

QString BaselineWords::tooFewToFreeze(int readings, int needed)
{
    return tr("It cannot be frozen yet: %n reading(s) of %1.", nullptr, readings).arg(needed);
}

QString BaselineWords::outlierBlocks()
{
    return tr("It cannot be frozen yet: a reading in the list is unlike the others. Correct it, or leave it "
              "out with a "
              "reason and a name.");
}

QString BaselineWords::scatterBlocks()
{
    return tr("It cannot be frozen: the readings scatter more than a band can follow. Look at the joint, the "
              "leaves and "
              "how each person reads.");
}

QString BaselineWords::namesFirst() { return tr("Choose two different people. Nobody is filled in."); }

QString BaselineWords::frozen(const QString& when, const QString& first, const QString& second)
{
    return tr("Frozen on %1 by %2 and %3.").arg(when, first, second);
}

QString BaselineWords::frozenStays()
{
    return tr("Later readings do not move this band. A refit, an adjustment or a new part starts a new "
              "fitting with a "
              "baseline of its own.");
}

} // namespace rig
