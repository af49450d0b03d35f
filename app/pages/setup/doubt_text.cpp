#include "app/pages/setup/doubt_text.h"

#include "app/wording/doubt_words.h"
#include "app/wording/question_words.h"

#include <algorithm>

namespace rig {

namespace {

QString whySentence(const DoubtProposal& proposal)
{
    using Why = DoubtProposal::Why;
    switch (proposal.why) {
    case Why::AfterGoodCheck:
        return DoubtWords::afterGoodCheck(*proposal.goodCheck);
    case Why::OnDayOfGoodCheck:
        return DoubtWords::onDayOfGoodCheck(*proposal.goodCheck);
    case Why::FirstReading:
        return DoubtWords::fromFirstReading(proposal.from);
    case Why::NeverRead:
        break;
    }
    return DoubtWords::neverRead();
}

QStringList couplingSentences(const DoubtedAirframe& airframe)
{
    const QString registration = QString::fromStdString(airframe.registration);
    QStringList sentences;
    for (const DoubtedCoupling& one : airframe.couplings) {
        const QString name = QString::fromStdString(one.name);
        for (const BandChange& change : one.effect.bands) {
            const QString where =
                one.hasManyFittings ? DoubtWords::ofFitting(name, change.fitting.begins) : name;
            sentences << DoubtWords::band(
                {registration, where, change.before.band(), change.after.band(), change.after.readings()});
        }
        if (one.effect.judgedOtherwise > 0)
            sentences << DoubtWords::judgedOtherwise(registration, name, one.effect.judgedOtherwise);
    }
    return sentences;
}

QString questionSentence(const DoubtPreview& preview)
{
    QStringList asked;
    for (const DoubtQuestion& one : preview.questions)
        asked << DoubtWords::question(QString::fromStdString(one.registration),
                                      QuestionWords::asked(one.kind, QString::fromStdString(one.place)));
    return DoubtWords::opens(asked);
}

} // namespace

QString sentenceOf(const DoubtProposal& proposal)
{
    QString sentence = whySentence(proposal);
    if (proposal.why != DoubtProposal::Why::NeverRead)
        sentence += QLatin1Char(' ') + DoubtWords::readingsSince(proposal.readings, proposal.airframes);
    return sentence;
}

QStringList sentencesOf(const DoubtPreview& preview)
{
    QStringList sentences;
    if (preview.goodCheckPassed)
        sentences << DoubtWords::beforeGoodCheck(*preview.goodCheckPassed);
    if (preview.marked() == 0) {
        sentences << DoubtWords::marksNothing();
    } else {
        sentences << DoubtWords::marks(preview.marked(), static_cast<int>(preview.airframes.size()));
        QStringList couplings;
        for (const DoubtedAirframe& airframe : preview.airframes)
            couplings += couplingSentences(airframe);
        sentences += couplings.isEmpty() ? QStringList{DoubtWords::noBandChanges()} : couplings;
    }
    if (!preview.questions.empty())
        sentences << questionSentence(preview);
    else if (preview.isOpenAlready)
        sentences << DoubtWords::isOpenAlready();
    return sentences;
}

} // namespace rig
