#pragma once

#include "app/pages/rigged_today/rigged_today_presenter.h"

#include <QObject>

class QKeyEvent;
class QPushButton;
class QVBoxLayout;

namespace rig {

class FootScroll;

// What else can be pressed at a joint, in the row that always stays in sight, and by its letter.
class CouplingButtons : public QObject
{
    Q_OBJECT

public:
    CouplingButtons(QVBoxLayout* layout, QObject* parent);

    void display(const CouplingSheet& sheet, bool isMeasuring, const QString& nextText);
    // Pixels of height that they have at most; beyond it they scroll.
    void setRoom(int room);
    // The letters that measure again or take a reading back.
    bool takeReadingKey(const QKeyEvent& event);
    // Those of joint play and of the second person.
    bool takeOtherKey(const QKeyEvent& event);
    bool goOn(); // false where that is not open yet

signals:
    void againAsked();
    void correctionAsked();
    void strikeAsked();
    void playAsked();
    void turnAsked(rig::Turn turn);
    void nextAsked();

private:
    Turn m_turn = Turn::First;
    FootScroll* m_foot = nullptr;
    QPushButton* m_again = nullptr;
    QPushButton* m_correct = nullptr;
    QPushButton* m_strike = nullptr;
    QPushButton* m_play = nullptr;
    QPushButton* m_other = nullptr; // the other person's turn
    QPushButton* m_next = nullptr;
};

} // namespace rig
