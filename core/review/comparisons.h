#pragma once

#include "core/airframe/coupling.h"
#include "core/numbers/reading_pair.h"
#include "core/numbers/shared_shift.h"
#include "core/review/coupling_history.h"
#include "core/review/known_airframe.h"
#include "core/rigging/record_content.h"

#include <optional>
#include <span>

namespace rig {

// How far two persons' readings of one joint differ by measuring alone.
struct PersonsSpread
{
    double deviation = 0; // mm, s_R of docs/method.md F, never below the step of the gauge / sqrt(12)
    int pairs = 0;        // of readings that it was learnt from; 0: taken from common practice

    double limit() const { return numbers::kDifferenceFactor * deviation; }
};

// Without enough pairs of their own, people are taken to differ by this much: the lower end of 0.03 to 0.05
// mm in a cramped hatch (common practice, no published source).
inline constexpr double kUsualPersonsDeviation = 0.03; // mm
inline constexpr int kPairsForOwnSpread = 10;

// From the records in which both persons read the same coupling on the same rigging: root of half the mean
// squared difference of the middles. `readings` of one airframe, superseded and struck ones among
// them.
PersonsSpread personsSpread(std::span<const Reading> readings, std::span<const Exclusion> exclusions);

// The second person's latest reading against the first's; empty while one of them is missing.
std::optional<numbers::ReadingPair> pairIn(const RecordContent& content, CouplingId coupling,
                                           const PersonsSpread& spread);

// The coupling on the other side with the same circuit; empty where there is none or more than one.
std::optional<Coupling> otherSideOf(const Coupling& coupling, std::span<const Coupling> all);

// Outside the band or near its edge.
bool liesOff(Verdict verdict);

// True when each reading lies off its own band and well within the other's: leaves read on the wrong side, or
// rods put in the wrong way round. Both belong to couplings whose histories they come with.
bool looksSwapped(const Reading& one, const CouplingHistory& ofOne, const Reading& other,
                  const CouplingHistory& ofOther);

// Whether these couplings of a record read high, or low, together: the first person's latest reading of each,
// against its own band (docs/method.md I). Empty while none of them can be scored.
std::optional<numbers::SharedShift> sharedShiftIn(const RecordContent& content, const KnownAirframe& known,
                                                  std::span<const Coupling> couplings);

} // namespace rig
