#include "core/store/fact_checks.h"
#include "core/store/first_problem.h"
#include "core/store/hands_in_rigging.h"
#include "core/store/values.h"

namespace rig {

// Of what a newcomer learns an airframe by.

Outcome FactChecks::check(const Photo& photo) const
{
    return firstProblem({isNew(photo), notYetToCome(noonOf(photo.day))});
}

Outcome FactChecks::check(const PhotoImage& image) const
{
    return fits(image);
}

Outcome FactChecks::check(const PhotoWithdrawn& withdrawn) const
{
    return firstProblem({isNew(withdrawn), filled(withdrawn.reason, "reason"),
                         thereIsNo(QStringLiteral("SELECT 1 FROM photo_withdrawn WHERE photo = ?"),
                                   {valueOf(withdrawn.photo)}, "the photo is already withdrawn")});
}

Outcome FactChecks::check(const LessonRound& round) const
{
    return firstProblem({isNew(round), round.coupling ? ofAirframe(factShape<Coupling>().table,
                                                                   round.coupling->bytes, round.airframe)
                                                      : Outcome{Done{}}});
}

Outcome FactChecks::ofRound(const LessonRoundId& round, const char* table, const IdBytes& part) const
{
    return thereIs(QStringLiteral("SELECT 1 FROM lesson_round r JOIN %1 p ON p.airframe = r.airframe"
                                  " WHERE r.id = ? AND p.id = ? AND p.subject = p.id")
                       .arg(QLatin1String{table}),
                   {valueOf(round), valueOf(part)}, "asked of another airframe than the round's");
}

Outcome FactChecks::check(const SeatingAnswer& answer) const
{
    return firstProblem(
        {isNew(answer), ofRound(answer.round, factShape<Coupling>().table, answer.coupling.bytes)});
}

Outcome FactChecks::check(const RecallAnswer& answer) const
{
    const auto own = [&](const char* table, const auto& part) {
        return part ? ofRound(answer.round, table, part->bytes) : Outcome{Done{}};
    };
    return firstProblem(
        {isNew(answer), filled(answer.asked, "what was asked"), filled(answer.expected, "what was expected"),
         own(factShape<Coupling>().table, answer.coupling), own(factShape<Surface>().table, answer.surface)});
}

Outcome FactChecks::holdsInItself(const SupervisedRigging& rigging)
{
    return twoPeople(rigging.learner, rigging.mentor);
}

Outcome FactChecks::holdsInItself(const SignOff& signOff)
{
    return twoPeople(signOff.person, signOff.signer);
}

Outcome FactChecks::holdsInItself(const PracticeReading& reading)
{
    return problemOf(reading.interval) == IntervalProblem::None ? Outcome{Done{}}
                                                                : refused("no possible interval");
}

Outcome FactChecks::namedIn(const RecordId& record, const PersonId& person) const
{
    return thereIs(
        QStringLiteral("SELECT 1 FROM (%1) WHERE record = ? AND person = ?").arg(namedInRiggingSql()),
        {valueOf(record), valueOf(person)},
        "somebody whom the record does not name, and no word of what they did there");
}

// A record has no place for somebody who stood by and watched; so what they did there is said in words.
Outcome FactChecks::check(const SupervisedRigging& rigging) const
{
    const auto told = [&](const PersonId& person) {
        return isBlank(rigging.note) ? namedIn(rigging.record, person) : Outcome{Done{}};
    };
    return firstProblem(
        {isNew(rigging), holdsInItself(rigging), closed(rigging.record),
         thereIsNo(QStringLiteral("SELECT 1 FROM closing c JOIN rigging_record r ON r.id = c.record"
                                  " WHERE r.id = ? AND (c.closing = 'abandoned' OR r.origin <> 'rigging')"),
                   {valueOf(rigging.record)}, "abandoned, or no rigging"),
         thereIsNo(
             QStringLiteral("SELECT 1 FROM supervised_rigging s WHERE record = ? AND learner = ? AND NOT"
                            " EXISTS (SELECT 1 FROM learning_taken_back WHERE supervised = s.id)"),
             {valueOf(rigging.record), valueOf(rigging.learner)}, "this rigging was told before"),
         told(rigging.learner), told(rigging.mentor)});
}

Outcome FactChecks::check(const SignOff& signOff) const
{
    return firstProblem({isNew(signOff), holdsInItself(signOff), notYetToCome(noonOf(signOff.day)),
                         signOff.kind == SignOffKind::Withdrawn ? filled(signOff.note, "why it is withdrawn")
                                                                : Outcome{Done{}}});
}

Outcome FactChecks::check(const LearningTakenBack& back) const
{
    if (back.supervised.has_value() == back.practice.has_value())
        return refused("takes back nothing, or two things");
    return firstProblem(
        {isNew(back), filled(back.reason, "reason"),
         back.supervised
             ? thereIsNo(QStringLiteral("SELECT 1 FROM learning_taken_back WHERE supervised = ?"),
                         {valueOf(*back.supervised)}, "already taken back")
             : firstProblem(
                   {thereIsNo(QStringLiteral("SELECT 1 FROM learning_taken_back WHERE practice = ?"),
                              {valueOf(*back.practice)}, "already taken back"),
                    thereIs(QStringLiteral("SELECT 1 FROM practice_reading WHERE id = ? AND person = ?"),
                            {valueOf(*back.practice), valueOf(back.person)},
                            "taken back by somebody else than who read it")})});
}

Outcome FactChecks::check(const CrossedStudy& study) const
{
    return isNew(study);
}

Outcome FactChecks::check(const StudyPlace& place) const
{
    return firstProblem(
        {isNew(place), thereIs(QStringLiteral("SELECT 1 FROM crossed_study s JOIN coupling c"
                                              " ON c.airframe = s.airframe WHERE s.id = ? AND c.id = ?"
                                              " AND c.subject = c.id"),
                               {valueOf(place.study), valueOf(place.coupling)},
                               "a coupling of another airframe than the study's")});
}

Outcome FactChecks::check(const PracticeReading& reading) const
{
    if (const Outcome made =
            firstProblem({holdsInItself(reading), isNew(reading), notYetToCome(reading.when)});
        !made || !reading.place)
        return made;
    const QVariant place = valueOf(*reading.place);
    return firstProblem(
        {thereIs(QStringLiteral("SELECT 1 FROM study_place WHERE id = ? AND coupling = ? AND person = ?"),
                 {place, valueOf(reading.coupling), valueOf(reading.person)},
                 "the study asks somebody else, or another coupling, at this place"),
         thereIsNo(QStringLiteral("SELECT 1 FROM practice_reading p WHERE place = ? AND NOT EXISTS"
                                  " (SELECT 1 FROM learning_taken_back WHERE practice = p.id)"),
                   {place}, "this place of the study was read before")});
}

Outcome FactChecks::check(const PracticeShared& shared) const
{
    return isNew(shared);
}

} // namespace rig
