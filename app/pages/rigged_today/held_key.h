#pragma once

#include <QtGlobal>

class QKeyEvent;

namespace rig {

// Tells a key that is held from one that is pressed again: a finger that stays on a key answers one question.
// Qt's own flag is not enough: keys that a machine types have it too, and some repeats of a held key have
// not.
class HeldKey
{
public:
    // Each key press of the page once, in the order in which they come. True when it is a repeat of the one
    // before.
    bool isRepeated(const QKeyEvent& event);

private:
    quint64 m_pressedAt = 0; // ms, of the last key that was not held
    quint64 m_lastAt = 0;    // ms, of the last key
    int m_lastKey = 0;
    bool m_isHeld = false;
};

} // namespace rig
