#include "core/airframe/id_source.h"

namespace rig {

namespace {

constexpr std::uint16_t kCounterLimit = 0x0fff;

} // namespace

IdBytes IdSource::next(std::int64_t utcMilliseconds)
{
    if (utcMilliseconds > m_lastMilliseconds) {
        m_lastMilliseconds = utcMilliseconds;
        m_counter = 0;
    } else if (m_counter == kCounterLimit) {
        ++m_lastMilliseconds;
        m_counter = 0;
    } else {
        ++m_counter;
    }
    IdBytes id{};
    for (std::size_t i = 0; i < 6; ++i)
        id[i] = static_cast<std::uint8_t>(m_lastMilliseconds >> (8 * (5 - i)));
    id[6] = static_cast<std::uint8_t>(0x70 | (m_counter >> 8));
    id[7] = static_cast<std::uint8_t>(m_counter & 0xff);
    const std::uint64_t random = m_random();
    for (std::size_t i = 0; i < 8; ++i)
        id[8 + i] = static_cast<std::uint8_t>(random >> (8 * i));
    id[8] = static_cast<std::uint8_t>(0x80 | (id[8] & 0x3f));
    return id;
}

} // namespace rig
