#include "app/pages/rigged_today/coupling_buttons.h"

#include "app/widgets/foot_scroll.h"
#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/joint_play_words.h"
#include "app/wording/rigged_words.h"

#include <QVBoxLayout>

namespace rig {

namespace {

bool clickedBy(const QKeyEvent& event, const QString& key, QPushButton* button)
{
    if (!isKey(event, key) || !button->isEnabled())
        return false;
    button->click();
    return true;
}

} // namespace

CouplingButtons::CouplingButtons(QVBoxLayout* layout, QObject* parent) : QObject{parent}
{
    auto* inside = new QWidget;
    auto* row = new WrapLayout{8, false};
    inside->setLayout(row);
    row->setContentsMargins(20, 8, 20, 10);
    m_correct = buttonOf(RiggedWords::correct(), "correct");
    m_strike = buttonOf(RiggedWords::strike(), "strike");
    m_again = buttonOf(RiggedWords::measureAgain(), "measureAgain");
    m_play = buttonOf(JointPlayWords::openWithKey(), "play");
    m_other = buttonOf({}, "turn");
    m_next = buttonOf(RiggedWords::nextCoupling(), "next", "primary");
    for (QPushButton* button : {m_correct, m_strike, m_again, m_play, m_other, m_next})
        row->addWidget(button);
    connect(m_correct, &QPushButton::clicked, this, &CouplingButtons::correctionAsked);
    connect(m_strike, &QPushButton::clicked, this, &CouplingButtons::strikeAsked);
    connect(m_again, &QPushButton::clicked, this, &CouplingButtons::againAsked);
    connect(m_play, &QPushButton::clicked, this, &CouplingButtons::playAsked);
    connect(m_other, &QPushButton::clicked, this,
            [this] { emit turnAsked(m_turn == Turn::First ? Turn::Second : Turn::First); });
    connect(m_next, &QPushButton::clicked, this, &CouplingButtons::nextAsked);
    m_foot = new FootScroll{inside};
    m_foot->setObjectName("couplingFoot");
    layout->addWidget(m_foot);
}

void CouplingButtons::setRoom(int room)
{
    m_foot->setRoom(room);
}

void CouplingButtons::display(const CouplingSheet& sheet, bool isMeasuring, const QString& nextText)
{
    m_turn = sheet.turn;
    const bool hasGap = sheet.flow.asks.parts.gap;
    for (QPushButton* button : {m_again, m_correct, m_strike})
        button->setVisible(hasGap || sheet.flow.last.has_value());
    const bool isAsked = sheet.wanted != ReadingWanted::None;
    const bool asFound = hasGap && sheet.stop && mayMeasureAsFound(*sheet.stop);
    m_again->setText(asFound ? RiggedWords::measureAsFound() : RiggedWords::measureAgain());
    const bool isReadAlready = !sheet.readings.empty() || (sheet.stop && sheet.flow.mayMeasure());
    m_again->setEnabled(!isMeasuring && sheet.person && (mayReadAgain(sheet.stop) ? isReadAlready : asFound));
    m_correct->setEnabled(sheet.flow.last && !isAsked);
    m_strike->setEnabled(sheet.flow.last && sheet.person && !isAsked);
    m_play->setEnabled(sheet.person && !sheet.stop);
    m_other->setText(sheet.turn == Turn::First ? RiggedWords::secondHere() : RiggedWords::firstHere());
    m_next->setEnabled((sheet.flow.isDone() || sheet.stop) && sheet.wanted != ReadingWanted::Corrected);
    m_next->setText(nextText);
}

bool CouplingButtons::takeReadingKey(const QKeyEvent& event)
{
    return clickedBy(event, RiggedWords::keyMeasureAgain(), m_again) ||
           clickedBy(event, RiggedWords::keyCorrect(), m_correct) ||
           clickedBy(event, RiggedWords::keyStrike(), m_strike);
}

bool CouplingButtons::takeOtherKey(const QKeyEvent& event)
{
    return clickedBy(event, JointPlayWords::key(), m_play) ||
           clickedBy(event, RiggedWords::keySecondPerson(), m_other);
}

bool CouplingButtons::goOn()
{
    if (!m_next->isEnabled())
        return false;
    m_next->click();
    return true;
}

} // namespace rig
