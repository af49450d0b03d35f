#pragma once

#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"
#include "core/airframe/gauge.h"
#include "core/airframe/person.h"
#include "core/baseline/admitted.h"
#include "core/clock.h"
#include "core/judgement/kept_reading.h"
#include "core/lesson/learning_facts.h"
#include "core/result.h"
#include "core/review/file_evidence.h"
#include "core/review/person_riggings.h"
#include "core/rigging/decision.h"
#include "core/rigging/event.h"
#include "core/rigging/record_content.h"

#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace rig {

// Whether add() looks at each fact before it is kept: always, but for files that are made for measuring.
enum class FactChecking { Each, None };

class FactsBook;
class IdSource;
class StoreFile;
class Writer;

// All reading and writing of facts. Each write is one immediate transaction, durable before it returns.
// Nothing is ever changed or removed: add() of something with an id appends a newer version of it, a reading
// is corrected by another reading that names it.
//
// Every add() returns the id given to the fact (for versioned things: the id that stays the same over all
// versions). Ids rise in the order of saving, over all kinds and also when the clock was set back. stamp.when
// is always this object's clock. What cannot be a fact gives FactRefused: see fact_checks.h.
class Records
{
public:
    // All three must outlive this object.
    Records(StoreFile& file, IdSource& ids, const Clock& clock, FactChecking checking = FactChecking::Each);
    ~Records();

    // The facts of an airframe and the histories made of them, read once and held: what pages ask.
    FactsBook& book() const { return *m_book; }

    // Another program on this machine has the file open.
    bool isOpenElsewhere() const;
    // See StoreFile::inDoubt().
    FactsInDoubt inDoubt() const;
    // See StoreFile::evidence().
    Result<FileEvidence> evidence(const std::vector<std::string>& shortForms = {}) const;

    // Several writes as one transaction: all of them or, when `work` returns a problem, none. Not nested.
    Outcome together(const std::function<Outcome()>& work);

    Result<AirframeId> add(const Airframe& airframe);
    Result<PersonId> add(const Person& person);
    Result<GaugeId> add(const Gauge& gauge);
    Result<FactId> add(const GaugeCheck& check);
    Result<CouplingId> add(const Coupling& coupling);
    Result<FittingId> add(const Fitting& fitting);
    Result<EventId> add(const Event& event);
    Result<RecordId> add(const RiggingRecord& record);
    Result<CheckId> add(const Check& check);
    Result<ReadingId> add(const Reading& reading, const std::optional<Shown>& shown);
    Result<FactId> add(const Exclusion& exclusion);
    Result<BaselineId> add(const FrozenBaseline& baseline);
    Result<FactId> add(const Interruption& interruption);
    Result<FactId> add(const RecordClose& close);
    Result<SurfaceId> add(const Surface& surface);
    Result<FactId> add(const SurfaceCheck& check);
    Result<FactId> add(const SurfaceMeasure& measure);
    Result<FactId> add(const RecordTick& tick);
    Result<FactId> add(const SideConnected& connected);
    Result<QuestionId> add(const Question& question);
    Result<FactId> add(const Resolution& resolution);
    Result<FactId> add(const JointPlay& play);
    Result<PhotoId> add(const Photo& photo, const PhotoImage& image);
    Result<FactId> add(const PhotoWithdrawn& withdrawn);
    Result<LessonRoundId> add(const LessonRound& round);
    Result<FactId> add(const SeatingAnswer& answer);
    Result<FactId> add(const RecallAnswer& answer);
    Result<SupervisedId> add(const SupervisedRigging& rigging);
    Result<FactId> add(const SignOff& signOff);
    Result<StudyId> add(const CrossedStudy& study);
    Result<StudyPlaceId> add(const StudyPlace& place);
    Result<PracticeReadingId> add(const PracticeReading& reading);
    Result<FactId> add(const PracticeShared& shared);
    Result<FactId> add(const LearningTakenBack& back);
    Result<FactId> add(const Decision& decision);

    // Newest version of each, in the order they were first added; couplings in rigging order.
    Result<std::vector<Airframe>> airframes() const;
    Result<std::vector<Person>> persons() const;
    Result<std::vector<Gauge>> gauges() const;
    Result<std::vector<GaugeCheck>> gaugeChecks() const;
    Result<std::vector<Coupling>> couplings(AirframeId airframe) const;
    Result<std::vector<Surface>> surfaces(AirframeId airframe) const; // in the order of checking

    // Oldest first. Superseded readings are among them; standing() in core/baseline leaves them out.
    Result<std::vector<Fitting>> fittings(AirframeId airframe) const;
    Result<std::vector<Event>> events(AirframeId airframe) const;
    Result<std::vector<JointPlay>> jointPlays(AirframeId airframe) const;
    Result<std::vector<KeptReading>> readings(AirframeId airframe) const;
    Result<std::vector<KeptReading>> readingsOf(CouplingId coupling) const;
    Result<KeptReading> reading(ReadingId reading) const;
    Result<std::vector<Exclusion>> exclusions(AirframeId airframe) const;
    Result<std::vector<FrozenBaseline>> frozenBaselines(AirframeId airframe) const;
    Result<std::vector<RiggingRecord>> riggingRecords(AirframeId airframe) const;
    Result<std::vector<RecordClose>> closings(AirframeId airframe) const;
    Result<std::vector<QuestionStory>> questions(AirframeId airframe) const;
    Result<std::vector<RecordTick>> notesRead(AirframeId airframe) const;
    Result<RecordContent> content(RecordId record) const;
    Result<LearningFacts> learning(AirframeId airframe) const;
    // Who connected, as it was stated last, and who was the second person.
    Result<std::vector<PartInRigging>> partsInRiggings(AirframeId airframe) const;
    // Everybody whom a record names as having had a hand in it: those, who led and closed it, and whoever
    // looked, measured or stood at a surface. Not who typed it in from paper.
    Result<std::vector<PartInRigging>> namedInRiggings(AirframeId airframe) const;
    // NotFound when the file has no such photo.
    Result<PhotoImage> image(PhotoId photo) const;

    // What was decided apart on two computers and by nobody since.
    Result<std::vector<ToldConflict>> openConflicts() const;

    // The latest record of this airframe that nobody closed, if there is one. An imported table is no open
    // work.
    Result<std::optional<RecordId>> openRecord(AirframeId airframe) const;

private:
    Writer writer();

    StoreFile& m_file;
    IdSource& m_ids;
    const Clock& m_clock;
    FactChecking m_checking;
    std::unique_ptr<FactsBook> m_book;
};

} // namespace rig
