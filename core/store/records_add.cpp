#include "core/store/fact_checks.h"
#include "core/store/records.h"
#include "core/store/writer.h"

namespace rig {

namespace {

template <typename SomeId> Result<SomeId> idOf(const Result<IdBytes>& saved)
{
    if (!saved)
        return saved.problem();
    return SomeId{saved.value()};
}

// Checks a fact and appends it, in one transaction.
template <typename Fact> Result<decltype(Fact::id)> keep(const Writer& writer, const Fact& fact)
{
    return idOf<decltype(Fact::id)>(saved(writer, [&](Writer& within) -> Result<IdBytes> {
        if (within.checksFacts())
            if (const Outcome checked = FactChecks{within.connection(), within.now()}.check(fact); !checked)
                return checked.problem();
        return within.add(fact);
    }));
}

} // namespace

bool Records::isOpenElsewhere() const
{
    return m_file.isOpenElsewhere();
}

FactsInDoubt Records::inDoubt() const
{
    return m_file.inDoubt();
}

Result<FileEvidence> Records::evidence(const std::vector<std::string>& shortForms) const
{
    return m_file.evidence(shortForms);
}

Outcome Records::together(const std::function<Outcome()>& work)
{
    Transaction transaction{m_file.connection()};
    if (!transaction.begun())
        return transaction.begun();
    if (const Outcome done = work(); !done)
        return done;
    return transaction.commit();
}

Result<ReadingId> Records::add(const Reading& reading, const std::optional<Shown>& shown)
{
    return idOf<ReadingId>(saved(writer(), [&](Writer& within) -> Result<IdBytes> {
        const FactChecks checks{within.connection(), within.now()};
        if (within.checksFacts()) {
            if (const Outcome checked = checks.check(reading); !checked)
                return checked.problem();
            if (const Outcome checked = shown ? checks.check(*shown) : Outcome{Done{}}; !checked)
                return checked.problem();
        }
        const Result<IdBytes> id = within.add(reading);
        if (id && shown)
            if (const Outcome kept = within.attach(id.value(), *shown); !kept)
                return kept.problem();
        return id;
    }));
}

Result<AirframeId> Records::add(const Airframe& airframe)
{
    return keep(writer(), airframe);
}

Result<PersonId> Records::add(const Person& person)
{
    return keep(writer(), person);
}

Result<GaugeId> Records::add(const Gauge& gauge)
{
    return keep(writer(), gauge);
}

Result<FactId> Records::add(const GaugeCheck& check)
{
    return keep(writer(), check);
}

Result<CouplingId> Records::add(const Coupling& coupling)
{
    return keep(writer(), coupling);
}

Result<FittingId> Records::add(const Fitting& fitting)
{
    return keep(writer(), fitting);
}

Result<EventId> Records::add(const Event& event)
{
    return keep(writer(), event);
}

Result<RecordId> Records::add(const RiggingRecord& record)
{
    return keep(writer(), record);
}

Result<CheckId> Records::add(const Check& check)
{
    return keep(writer(), check);
}

Result<FactId> Records::add(const Exclusion& exclusion)
{
    return keep(writer(), exclusion);
}

Result<BaselineId> Records::add(const FrozenBaseline& baseline)
{
    return keep(writer(), baseline);
}

Result<FactId> Records::add(const Interruption& interruption)
{
    return keep(writer(), interruption);
}

Result<FactId> Records::add(const RecordClose& close)
{
    return keep(writer(), close);
}

Result<SurfaceId> Records::add(const Surface& surface)
{
    return keep(writer(), surface);
}

Result<FactId> Records::add(const SurfaceCheck& check)
{
    return keep(writer(), check);
}

Result<FactId> Records::add(const SurfaceMeasure& measure)
{
    return keep(writer(), measure);
}

Result<FactId> Records::add(const RecordTick& tick)
{
    return keep(writer(), tick);
}

Result<FactId> Records::add(const SideConnected& connected)
{
    return keep(writer(), connected);
}

Result<QuestionId> Records::add(const Question& question)
{
    return keep(writer(), question);
}

Result<FactId> Records::add(const Resolution& resolution)
{
    return keep(writer(), resolution);
}

Result<FactId> Records::add(const JointPlay& play)
{
    return keep(writer(), play);
}

Result<PhotoId> Records::add(const Photo& photo, const PhotoImage& image)
{
    return idOf<PhotoId>(saved(writer(), [&](Writer& within) -> Result<IdBytes> {
        const FactChecks checks{within.connection(), within.now()};
        if (const Outcome checked = checks.check(photo); !checked)
            return checked.problem();
        if (const Outcome checked = checks.check(image); !checked)
            return checked.problem();
        const Result<IdBytes> id = within.add(photo);
        if (id)
            if (const Outcome kept = within.attach(id.value(), image); !kept)
                return kept.problem();
        return id;
    }));
}

Result<FactId> Records::add(const PhotoWithdrawn& withdrawn)
{
    return keep(writer(), withdrawn);
}

Result<LessonRoundId> Records::add(const LessonRound& round)
{
    return keep(writer(), round);
}

Result<FactId> Records::add(const SeatingAnswer& answer)
{
    return keep(writer(), answer);
}

Result<FactId> Records::add(const RecallAnswer& answer)
{
    return keep(writer(), answer);
}

Result<SupervisedId> Records::add(const SupervisedRigging& rigging)
{
    return keep(writer(), rigging);
}

Result<FactId> Records::add(const SignOff& signOff)
{
    return keep(writer(), signOff);
}

Result<StudyId> Records::add(const CrossedStudy& study)
{
    return keep(writer(), study);
}

Result<StudyPlaceId> Records::add(const StudyPlace& place)
{
    return keep(writer(), place);
}

Result<PracticeReadingId> Records::add(const PracticeReading& reading)
{
    return keep(writer(), reading);
}

Result<FactId> Records::add(const LearningTakenBack& back)
{
    return keep(writer(), back);
}

Result<FactId> Records::add(const PracticeShared& shared)
{
    return keep(writer(), shared);
}

Result<FactId> Records::add(const Decision& decision)
{
    const Result<FactId> kept = keep(writer(), decision);
    m_file.connection().saved.loseTrack(); // facts of before are now read otherwise
    return kept;
}

} // namespace rig
