#pragma once

#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"
#include "core/airframe/gauge.h"
#include "core/airframe/person.h"
#include "core/airframe/surface.h"
#include "core/baseline/admitted.h"
#include "core/judgement/kept_reading.h"
#include "core/review/facts_in_doubt.h"
#include "core/rigging/event.h"
#include "core/rigging/joint_play.h"
#include "core/rigging/question.h"
#include "core/rigging/record_content.h"
#include "core/rigging/rigging_record.h"
#include "core/rigging/tick.h"

#include <optional>
#include <string>
#include <vector>

namespace rig {

// Everything the file knows about one airframe, read at once. Pages are worked out from this.
struct AirframeFacts
{
    Airframe airframe;
    std::vector<Person> persons;
    std::vector<Gauge> gauges;
    std::vector<GaugeCheck> gaugeChecks;
    std::vector<Coupling> couplings; // also those no longer in use
    std::vector<Fitting> fittings;
    std::vector<Event> events;
    std::vector<JointPlay> jointPlays; // by day
    std::vector<KeptReading> readings; // oldest first
    std::vector<Exclusion> exclusions;
    std::vector<FrozenBaseline> frozenBaselines;
    std::vector<RiggingRecord> riggingRecords;
    std::vector<RecordClose> closings;
    std::vector<Surface> surfaces;        // also those no longer in use
    std::vector<QuestionStory> questions; // of this airframe, closed ones too
    std::vector<RecordTick> notesRead;    // that a note was read, in the order of saving
    // Where the first person's readings of the record that is open were taken out: see blind_readings.h.
    std::vector<CouplingId> closedToSecond;
    // As far as the file was held against its chain.
    FactsInDoubt inDoubt;
    // All that stands in each record, oldest first; only where somebody asked for it: see readContents().
    std::vector<RecordContent> contents;

    std::vector<Reading> readingsOf(CouplingId coupling) const;
    std::vector<Coupling> couplingsInUse() const;
    std::vector<Gauge> gaugesInUse() const;
    std::vector<Surface> surfacesInUse() const;
    std::string nameOf(PersonId person) const;           // empty when not known
    std::string placeOf(const Question& question) const; // the surface, coupling or gauge it is about
    const Gauge* gauge(GaugeId id) const;                // null when not known
    const KeptReading* reading(ReadingId id) const;      // likewise
    // The latest check of a gauge, up to that day, that found it usable.
    std::optional<Day> lastGoodCheck(GaugeId id, Day upTo) const;
};

} // namespace rig
