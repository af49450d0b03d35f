#include "app/pages/rigged_today/coupling_questions.h"

#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/rigged_words.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace rig {

CouplingQuestions::CouplingQuestions(QVBoxLayout* look, QLayout* pull, QObject* parent) : QObject{parent}
{
    addLine(look);
    m_look = new QWidget;
    auto* row = new WrapLayout{10, true};
    row->setContentsMargins(0, 0, 0, 0);
    m_look->setLayout(row);
    addTile(row, CheckKind::BallInSocket, "tile0", AnswerChoice::OrFelt);
    addTile(row, CheckKind::PlungerHome, "tile1", AnswerChoice::OrFelt);
    addTile(row, CheckKind::SleeveAtStop, "tile2", AnswerChoice::OrFelt);
    addTile(row, CheckKind::PinThrough, "tilePin", AnswerChoice::OrFelt);
    addTile(row, CheckKind::Engaged, "tileEngaged", AnswerChoice::OrFelt);
    addTile(row, CheckKind::NoStep, "tileNoStep", AnswerChoice::OrFelt);
    addTile(row, CheckKind::LineConnected, "tileLine", AnswerChoice::OrFelt);
    addTile(row, CheckKind::Connected, "tileConnected", AnswerChoice::OrFelt);
    look->addWidget(m_look);
    addTile(pull, CheckKind::Pull, "tilePull", AnswerChoice::YesNo);
    addTile(pull, CheckKind::Secured, "tileSecured", AnswerChoice::OrCannotSee);
}

void CouplingQuestions::addLine(QVBoxLayout* layout)
{
    m_looked = new QWidget;
    auto* line = new QHBoxLayout{m_looked};
    line->setContentsMargins(0, 0, 0, 0);
    m_lookedText = labelOf({}, "soft", "looked");
    m_lookAgain = buttonOf({}, "showLook", "link");
    connect(m_lookAgain, &QPushButton::clicked, this, &CouplingQuestions::fold);
    line->addWidget(m_lookedText, 1);
    line->addWidget(m_lookAgain);
    layout->addWidget(m_looked);
}

void CouplingQuestions::addTile(QLayout* layout, CheckKind kind, const char* name, AnswerChoice choice)
{
    auto* one = new QuestionTile{RiggedWords::question(kind), RiggedWords::hint(kind), choice};
    one->setObjectName(QLatin1String(name));
    connect(one, &QuestionTile::answered, this, [this, kind](Answer answer) { emit answered(kind, answer); });
    m_tiles[static_cast<std::size_t>(kind)] = one;
    layout->addWidget(one);
}

// A part that this kind of coupling does not have is not there, nor what a stop leaves unasked; what was
// answered all the same is.
void CouplingQuestions::showPart(CheckKind kind, const CouplingSheet& sheet, bool isOpen)
{
    const auto answer = answerOf(sheet.flow, kind);
    tile(kind)->setVisible((sheet.flow.asks.has(kind, sheet.turn) && !sheet.stop) || answer);
    tile(kind)->setAnswer(answer);
    tile(kind)->setState(isOpen && sheet.flow.ask == kind, isOpen);
}

void CouplingQuestions::display(const CouplingSheet& sheet)
{
    const bool isOpen = sheet.mayAnswer();
    const bool isBallMissing = sheet.flow.asks.has(CheckKind::BallInSocket, sheet.turn) &&
                               !isSeen(sheet.flow, CheckKind::BallInSocket);
    int number = 0;
    for (const CheckKind kind : kCheckKinds) {
        if (!isLook(kind))
            continue;
        showPart(kind, sheet, isOpen && (kind == CheckKind::BallInSocket || !isBallMissing));
        if (sheet.flow.asks.has(kind, sheet.turn))
            tile(kind)->setTitle(RiggedWords::numbered(++number, RiggedWords::question(kind)));
    }
    showLook(sheet);
    const CouplingKind kind = sheet.coupling.kind;
    tile(CheckKind::Pull)->setHint(RiggedWords::pullHint(kind));
    showPull(sheet);
    tile(CheckKind::Secured)->setHint(RiggedWords::secureHint(kind));
    showPart(CheckKind::Secured, sheet, isOpen && sheet.flow.next >= Step::Secure);
}

void CouplingQuestions::showPull(const CouplingSheet& sheet)
{
    showPart(CheckKind::Pull, sheet, sheet.mayAnswer() && sheet.flow.next >= Step::Pull);
}

void CouplingQuestions::openPull(bool isOpenNow)
{
    tile(CheckKind::Pull)->setState(isOpenNow, isOpenNow);
}

// What is answered folds away; a “no” and a “cannot see” stay where they can be answered anew.
void CouplingQuestions::showLook(const CouplingSheet& sheet)
{
    QStringList looked;
    for (const CheckKind kind : sheet.flow.asks.look)
        if (const auto answer = answerOf(sheet.flow, kind); answer && countsAsYes(*answer))
            looked << RiggedWords::looked(kind, *answer);
    const bool isLooked = looked.size() == static_cast<qsizetype>(sheet.flow.asks.look.size());
    m_looked->setVisible(isLooked);
    m_look->setVisible(!isLooked || m_isLookWanted);
    m_lookedText->setText(looked.join(QLatin1Char(' ')));
    m_lookAgain->setText(m_isLookWanted ? RiggedWords::foldLook() : RiggedWords::showLook());
}

bool CouplingQuestions::toggleLook()
{
    if (!m_looked->isVisible())
        return false;
    m_lookAgain->click();
    return true;
}

// The line stands there only while everything is answered.
void CouplingQuestions::fold()
{
    m_isLookWanted = !m_isLookWanted;
    m_look->setVisible(m_isLookWanted);
    m_lookAgain->setText(m_isLookWanted ? RiggedWords::foldLook() : RiggedWords::showLook());
}

} // namespace rig
