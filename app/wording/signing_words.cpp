#include "app/wording/signing_words.h"

#include "app/wording/formats.h"
#include "app/wording/sentence_parts.h"
#include "app/wording/sign_off_words.h"

namespace rig {

QString SigningWords::title(const QString& person)
{
    return tr("%1 on this airframe", "a person").arg(person);
}

QString SigningWords::standing(const SignOffStanding& standing)
{
    return tr("%1.", "how somebody stands on this airframe")
        .arg(SentenceParts::capital(SignOffWords::standing(standing)));
}

QString SigningWords::lastRigging(const QString& day) { return tr("Last rigging here: %1.").arg(day); }
QString SigningWords::noRigging() { return tr("No rigging of this person stands in the file."); }

QString SigningWords::askedFor() { return tr("What is asked for before somebody signs"); }
QString SigningWords::supervisedCount(int count, int of)
{
    return tr("Riggings under somebody who knows this airframe: %1 of %2").arg(count).arg(of);
}
QString SigningWords::allPractised()
{
    return tr(
        "Last round, every coupling: no joint that was not locked was called locked. This is practice only.");
}
QString SigningWords::notPractised(const QStringList& couplings)
{
    return tr("Not practised to the end of a round: %1").arg(SentenceParts::list(couplings));
}
QString SigningWords::missed(const QStringList& couplings)
{
    return tr("Called locked in the last round, and was not: %1").arg(SentenceParts::list(couplings));
}
QString SigningWords::whoSignsDecides()
{
    return tr("Whoever signs decides, and may ask for more: every coupling named unaided, a planted fault "
              "found, the calls "
              "said, when to stop explained. A sign-off grants nothing.");
}

QString SigningWords::supervised() { return tr("Riggings under supervision"); }
QString SigningWords::noneSupervised() { return tr("None yet."); }
QString SigningWords::supervisedRow(const QString& day, const QString& mentor, const QString& note)
{
    return note.isEmpty() ? tr("%1, under %2", "day, person").arg(day, mentor)
                          : tr("%1, under %2: %3", "day, person, note").arg(day, mentor, note);
}
QString SigningWords::addSupervised() { return tr("Add a rigging under supervision"); }
QString SigningWords::rigging() { return tr("Which riggin&g"); }
QString SigningWords::chooseRigging() { return tr("Choose a rigging"); }
QString SigningWords::riggingLine(const QString& day, const QStringList& people)
{
    return tr("%1: %2", "day of a rigging, names").arg(day, SentenceParts::list(people));
}
QString SigningWords::mentor() { return tr("Under w&hom"); }
QString SigningWords::chooseMentor() { return tr("Choose who supervised"); }
QString SigningWords::supervisedNote() { return tr("No&te"); }
QString SigningWords::note() { return tr("Not&e"); }
QString SigningWords::keep() { return tr("&Keep this rigging"); }
QString SigningWords::noRiggings()
{
    return tr("There is no further rigging in the file that could be named.");
}
QString SigningWords::riggingMissing() { return tr("Choose which rigging it was."); }
QString SigningWords::mentorMissing() { return tr("Choose under whom it was: another person."); }
QString SigningWords::supervisedKept() { return tr("Kept."); }

QString SigningWords::sign(const QString& person) { return tr("Sign for %1", "a person").arg(person); }
QString SigningWords::signer() { return tr("Signed &by, the person responsible"); }
QString SigningWords::chooseSigner() { return tr("Choose who signs"); }
QString SigningWords::day() { return tr("&Day"); }
QString SigningWords::months() { return tr("Months until it e&xpires"); }
QString SigningWords::monthsWithoutRigging() { return tr("Months without rigg&ing until it expires"); }
QString SigningWords::commonPractice()
{
    return tr("12 and 3 months are common practice, not a rule. The months without rigging count "
              "from the last rigging here, also one before the "
              "signing.");
}
QString SigningWords::signIt() { return tr("&Sign"); }
QString SigningWords::withdrawIt() { return tr("Withdra&w the sign-off"); }
QString SigningWords::signerMissing() { return tr("Choose who signs: another person than the learner."); }
QString SigningWords::dayMissing() { return tr("Enter the day."); }
QString SigningWords::dayToCome() { return tr("This day is still to come."); }
QString SigningWords::whyMissing() { return tr("Say in the note why it is withdrawn."); }
QString SigningWords::signedNow(const QString& day) { return tr("Kept: signed on %1.").arg(day); }
QString SigningWords::withdrawnNow() { return tr("Kept: withdrawn."); }
QString SigningWords::history() { return tr("Everything that was signed"); }

QString SigningWords::historyRow(const SignOff& signOff, const QString& signer)
{
    const QString day = Formats{}.day(signOff.day);
    const QString note = QString::fromStdString(signOff.note);
    if (signOff.kind == SignOffKind::Withdrawn)
        return note.isEmpty() ? tr("%1: withdrawn by %2", "day, person").arg(day, signer)
                              : tr("%1: withdrawn by %2: %3", "day, person, note").arg(day, signer, note);
    const QString lacked = SignOffWords::notMet(signOff);
    const QString by = lacked.isEmpty()
                           ? tr("%1: signed by %2", "day, person").arg(day, signer)
                           : tr("%1: signed by %2 (not met when it was signed: %3)", "day, person, list")
                                 .arg(day, signer, lacked);
    return note.isEmpty() ? by : tr("%1: %2", "who signed when, note").arg(by, note);
}

QString SigningWords::notMet(const AskedFor& asked, const std::optional<QString>& lastRigging)
{
    const QString lacked = SignOffWords::notMet(asked);
    const QString met = lacked.isEmpty() ? QString{} : tr("Not met: %1.", "a list").arg(lacked);
    if (!lastRigging)
        return met;
    const QString old =
        tr("The last rigging here was on %1: a sign-off expires by that before it is given, unless there is "
           "a rigging on the day of signing.")
            .arg(*lastRigging);
    return met.isEmpty() ? old : met + QLatin1Char(' ') + old;
}
QString SigningWords::signAllTheSame() { return tr("Sign &just the same"); }
QString SigningWords::signAllTheSameMissing()
{
    return tr("Something is not met. Read it, and tick that you sign for it.");
}

QString SigningWords::notNamed(const QStringList& people)
{
    return tr("Not named in the record of this rigging: %1.", "names").arg(SentenceParts::list(people));
}
QString SigningWords::wereThere() { return tr("Super&vised all the same"); }
QString SigningWords::wereThereMissing(const QStringList& people)
{
    return tr("%1 stands nowhere in the record of this rigging. If it was supervised all the same, tick "
              "that, "
              "and say in the note what they did there.",
              "names")
        .arg(SentenceParts::list(people));
}
QString SigningWords::rowNotNamed(const QString& row, const QStringList& people)
{
    return tr("%1 (not named in its record: %2)", "a rigging, names").arg(row, SentenceParts::list(people));
}

QString SigningWords::toTakeBack() { return tr("To be taken b&ack"); }
QString SigningWords::chooseToTakeBack() { return tr("Choose what was told by mistake"); }
QString SigningWords::takenBackBy() { return tr("Taken back b&y"); }
QString SigningWords::chooseWhoTakesBack() { return tr("Choose who takes it back"); }
QString SigningWords::takeBack() { return tr("Take this o&ne back …"); }
QString SigningWords::toTakeBackMissing() { return tr("Choose what is to be taken back."); }
QString SigningWords::whoTakesBackMissing() { return tr("Choose who takes it back."); }
QString SigningWords::takeBackTitle() { return tr("Take back"); }
QString SigningWords::whyTakenBack(const QString& what)
{
    return tr("Why is this taken back? It stays to be read, and counts for nothing.\n%1").arg(what);
}
QStringList SigningWords::takenBackFor()
{
    return {tr("Another rigging"), tr("Another person"), tr("Told twice")};
}
QString SigningWords::takenBackNow() { return tr("Kept: taken back. It stays to be read."); }
QString SigningWords::takenBack(const QString& what, const QString& who, const QString& why)
{
    return tr("%1 taken back by %2: %3", "what, a person, the reason").arg(what, who, why);
}

} // namespace rig
