#include "app/pages/rigged_today/held_key.h"

#include <QKeyEvent>

#include <utility>

namespace rig {

namespace {

constexpr quint64 kHeld = 150;   // milliseconds: no screen repeats a held key sooner
constexpr quint64 kRepeats = 60; // milliseconds between its repeats, at most

} // namespace

bool HeldKey::isRepeated(const QKeyEvent& event)
{
    const quint64 at = event.timestamp();
    const bool isSame = event.key() == std::exchange(m_lastKey, event.key());
    const quint64 since = at - std::exchange(m_lastAt, at);
    const bool isRepeat = event.isAutoRepeat() && at > m_pressedAt + kHeld;
    m_isHeld = isSame && (isRepeat || (m_isHeld && since <= kRepeats));
    if (!m_isHeld)
        m_pressedAt = at;
    return m_isHeld;
}

} // namespace rig
