#pragma once

#include "core/store/fact_shape.h"
#include "core/store/records.h"
#include "core/store/store_file.h"

#include <QString>
#include <QVariantList>

#include <optional>

namespace rig {

// The last guard before a fact is kept; the screens check earlier and say it in sentences. Each gives
// FactRefused with the reason, or whatever reading the file met.
class FactChecks
{
public:
    FactChecks(StoreFile::Connection& connection, Moment now) : m_connection{connection}, m_now{now} {}

    Outcome check(const Airframe& airframe) const;
    Outcome check(const Person& person) const;
    Outcome check(const Gauge& gauge) const;
    Outcome check(const GaugeCheck& check) const;
    Outcome check(const Coupling& coupling) const;
    Outcome check(const Fitting& fitting) const;
    Outcome check(const Event& event) const;
    Outcome check(const RiggingRecord& record) const;
    Outcome check(const Check& check) const;
    Outcome check(const Reading& reading) const;
    Outcome check(const Shown& shown) const;
    Outcome check(const Exclusion& exclusion) const;
    Outcome check(const FrozenBaseline& baseline) const;
    Outcome check(const Interruption& interruption) const;
    Outcome check(const RecordClose& close) const;
    Outcome check(const Surface& surface) const;
    Outcome check(const SurfaceCheck& check) const;
    Outcome check(const SurfaceMeasure& measure) const;
    Outcome check(const RecordTick& tick) const;
    Outcome check(const JointPlay& play) const;
    Outcome check(const SideConnected& connected) const;
    Outcome check(const Question& question) const;
    Outcome check(const Resolution& resolution) const;
    Outcome check(const Photo& photo) const;
    Outcome check(const PhotoImage& image) const;
    Outcome check(const PhotoWithdrawn& withdrawn) const;
    Outcome check(const LessonRound& round) const;
    Outcome check(const SeatingAnswer& answer) const;
    Outcome check(const RecallAnswer& answer) const;
    Outcome check(const SupervisedRigging& rigging) const;
    Outcome check(const SignOff& signOff) const;
    Outcome check(const CrossedStudy& study) const;
    Outcome check(const StudyPlace& place) const;
    Outcome check(const PracticeReading& reading) const;
    Outcome check(const PracticeShared& shared) const;
    Outcome check(const LearningTakenBack& back) const;
    Outcome check(const Decision& decision) const;

    // What a fact says in itself, whatever else the file holds: asked also of a file that is read.
    static Outcome holdsInItself(const SupervisedRigging& rigging);
    static Outcome holdsInItself(const SignOff& signOff);
    static Outcome holdsInItself(const PracticeReading& reading);

private:
    // By the fact's shape: every value may stand in its column, and what it refers to is in the file.
    Outcome fits(const AnyFact& fact) const;
    // The same, and it was not saved before; of a thing with versions, a first one was.
    template <typename Fact> Outcome isNew(const Fact& fact) const { return isNewUnder(fact.id.bytes, fact); }
    Outcome isNewUnder(const IdBytes& id, const AnyFact& fact) const;
    // No other newest version beside it, of those that `where` leaves, has the same name.
    template <typename Thing>
    Outcome unused(const Thing& thing, std::string Thing::*name, const char* where = "",
                   const QVariantList& values = {}) const;
    Outcome thereIs(const QString& sql, const QVariantList& values, const std::string& elseWhy) const;
    Outcome thereIsNo(const QString& sql, const QVariantList& values, const std::string& elseWhy) const;
    // `id` names the first version of something in this table.
    Outcome known(const char* table, const IdBytes& id) const;
    Outcome sameAirframe(const RecordId& record, const char* table, const IdBytes& part) const;
    Outcome ofAirframe(const char* table, const IdBytes& id, const AirframeId& airframe) const;
    Outcome notYetToCome(Moment when) const;
    Outcome open(const RecordId& record) const;
    Outcome closed(const RecordId& record) const;
    Outcome namedIn(const RecordId& record, const PersonId& person) const;
    template <typename Fact> Outcome copied(const Fact& fact, const std::optional<RecordId>& record) const;
    Outcome correctable(const Reading& reading) const;
    // `part` of this table belongs to the airframe of the round.
    Outcome ofRound(const LessonRoundId& round, const char* table, const IdBytes& part) const;

    StoreFile::Connection& m_connection;
    Moment m_now;
};

} // namespace rig
