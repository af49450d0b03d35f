#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"
#include "core/measure/gap_interval.h"
#include "core/measure/gauge_set.h"

#include <optional>
#include <string>

namespace rig {

enum class SeatState {
    Locked,
    PartSeated,
    NotSecured, // ball and plunger home, and nothing held the plunger; found_as.h says of which
};

// Why the reading was taken. Only baseline readings, confirmed locked by other means, make a band.
enum class Purpose { Rigging, Baseline, Demonstration };

// Who of the two took it: the rigger, or the second person, who works without seeing the first result.
enum class Turn { First, Second };

// One interval by one person with one gauge at one time.
struct Reading
{
    ReadingId id; // null until saved
    CouplingId coupling;
    FittingId fitting;
    std::optional<RecordId> record; // the rigging record it belongs to
    GapInterval interval;
    Technique technique = Technique::Leaf;
    std::optional<GaugeId> gauge;
    SeatState state = SeatState::Locked;
    Purpose purpose = Purpose::Rigging;
    Turn turn = Turn::First;
    PersonId person;
    std::optional<PersonId> second; // who stood by while it was shown part-seated
    Moment when;                    // when it was measured; `stamp.when` is when it was entered
    std::string note;
    std::optional<ReadingId> corrects; // supersedes this one, for `note`'s reason
    Stamp stamp;
    // Of a record from paper: who copied it, where `person` did not type it in. It is nobody's blind reading.
    std::optional<PersonId> copiedBy = {};

    // What a correction notes was said of the one that it takes the place of.
    std::string ownNote() const { return corrects ? std::string{} : note; }
};

// A reading that a named person took out, with a reason; the program drops nothing. What it means follows
// from why the reading was taken (counts_as.h): one of a baseline day is left out of its band, one of a
// rigging is struck and speaks no more.
struct Exclusion
{
    FactId id; // null until saved
    ReadingId reading;
    std::string reason;
    Stamp stamp;
};

} // namespace rig
