#pragma once

#include "core/baseline/narrowing.h"
#include "core/review/known_airframe.h"

#include <optional>
#include <string>
#include <vector>

namespace rig {

// How far the baseline of a fitting has come.
enum class BaselineStage {
    NoFitting, // the coupling has no fitting to read
    NoBand,    // fewer than kReadingsForBand
    Thin,      // a band from few readings
    Enough,    // may be frozen, unless something stands in the way
    Frozen,
};

// What stands in the way of freezing.
enum class FreezeObstacle {
    None,
    AlreadyFrozen,
    TooFewReadings,
    NoBand,       // enough readings, but they make no band: all of them open
    ScatterAtCap, // wilder than the method can follow
    Outlier,      // one reading is unlike the others: measure again, or exclude it with a reason
};

// A reading with all that is said of it. None is ever left out of the list.
struct BaselineReadingRow
{
    Reading reading;
    std::string person;
    std::string second;                     // who stood by; empty: nobody, or not known
    std::string gauge;                      // empty: not known
    std::optional<std::string> correctedBy; // the reason of the reading that took its place
    std::optional<std::string> excluded;    // the reason
    std::string excludedBy;
    bool admitted = false;          // it makes the band
    std::optional<Day> inDoubtFrom; // its gauge is in doubt from that day on: it makes no band
    bool unlike = false;            // the others make it a stranger (FreezeObstacle::Outlier)

    bool mayBeCorrected() const { return admitted; }
};

// Who froze a baseline, and when.
struct FrozenBy
{
    std::string first;
    std::string second;
    Moment when;
};

// One coupling of which readings are taken, on a baseline day or for a demonstration.
struct ReadingSheet
{
    Coupling coupling;
    std::optional<Fitting> fitting;           // the one that holds today
    std::vector<BaselineReadingRow> readings; // oldest first
    std::optional<Band> band;
    std::vector<GapInterval> partSeated; // those that stand, over all fittings
};

// One coupling on its baseline day, with the readings of its fitting.
struct BaselineSheet : ReadingSheet
{
    BaselineStage stage = BaselineStage::NoFitting;
    FreezeObstacle obstacle = FreezeObstacle::TooFewReadings;
    int admitted = 0;                      // that make the band
    std::optional<DoubtedVersion> doubted; // the other version, where some are in doubt
    std::optional<Narrowing> narrowing;    // empty when frozen: nothing moves it any more
    std::optional<FrozenBy> frozen;
    int people = 0; // who measured the admitted readings, with how many gauges, on how many days
    int gauges = 0;
    int days = 0;
};

struct BaselineCouplingRow
{
    CouplingId id;
    std::string name;
    BaselineStage stage = BaselineStage::NoFitting;
    int admitted = 0;
    int partSeated = 0; // over all fittings
};

struct BaselineGaugeRow
{
    Gauge gauge;
    bool inDoubt = false; // readings taken with it today would be in doubt
};

// An airframe on its baseline day.
struct BaselineDayView
{
    Airframe airframe;
    std::vector<BaselineCouplingRow> couplings; // in use and with a gap, in rigging order
    std::vector<std::string> withoutGap;        // the names of the others in use
    std::vector<BaselineGaugeRow> gauges;       // in use
    std::vector<Person> persons;

    // Where the day begins: the first coupling that still needs readings, else the first.
    std::optional<CouplingId> firstCoupling;
    // Empty where there is one to choose. Who measures is always for a person to choose.
    std::optional<GaugeId> onlyGauge;
};

// One coupling shown part-seated on purpose, with the part-seated readings of all fittings.
struct DemonstrationSheet : ReadingSheet
{
    WitnessFinding witness;   // with the gauge in use
    bool riggedToday = false; // a rigging record begins today: is it a flying day?
};

// What is shown of one airframe on `today`, worked out from its facts.
BaselineDayView baselineDayOf(const KnownAirframe& known, Day today);
BaselineSheet baselineSheetOf(const KnownAirframe& known, const Coupling& coupling, Day today);
// `gauge` is the one in use: how far the gap tells the two states apart depends on it.
DemonstrationSheet demonstrationSheetOf(const KnownAirframe& known, const Coupling& coupling,
                                        std::optional<GaugeId> gauge, Day today);

} // namespace rig
