#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"
#include "core/clock.h"
#include "core/measure/gap_interval.h"
#include "core/measure/gauge_set.h"

#include <optional>
#include <string>

namespace rig {

// Couplings x persons x repeats in a random order: how far one person reads alike again, and how far the
// persons differ (docs/method.md, F).
struct CrossedStudy
{
    StudyId id; // null until saved
    AirframeId airframe;
    int repeats = 2;
    std::string note;
    Stamp stamp;
};

// One reading that a study asks for.
struct StudyPlace
{
    StudyPlaceId id; // null until saved
    StudyId study;
    int turn = 0; // in the order of reading, from 0
    CouplingId coupling;
    PersonId person;
    Stamp stamp;
};

// A reading that counts for nothing else than practice or a study: it makes no band and no trend, and is held
// against none.
struct PracticeReading
{
    PracticeReadingId id; // null until saved
    CouplingId coupling;
    PersonId person;
    GapInterval interval;
    Technique technique = Technique::Leaf;
    GaugeId gauge;
    Moment when;
    std::optional<StudyPlaceId> place; // empty: somebody practises alone
    Stamp stamp;
};

// Whether a person's own practice may be told to others, in reports too. Of several the one saved last
// counts; who has said nothing has not agreed.
struct PracticeShared
{
    FactId id; // null until saved
    PersonId person;
    bool isShared = false;
    Stamp stamp;
};

} // namespace rig
