#include "core/airframe/ids.h"

#include <algorithm>

namespace rig {

namespace {

constexpr std::string_view kHex = "0123456789abcdef";
constexpr std::uint16_t kCounterLimit = 0x0fff;

} // namespace

std::string textOf(const IdBytes& id)
{
    std::string text;
    text.reserve(36);
    for (std::size_t i = 0; i < id.size(); ++i) {
        if (i == 4 || i == 6 || i == 8 || i == 10)
            text += '-';
        text += kHex[id[i] >> 4];
        text += kHex[id[i] & 0x0f];
    }
    return text;
}

std::optional<IdBytes> idFromText(std::string_view text)
{
    if (text.size() != 36)
        return std::nullopt;
    IdBytes id{};
    std::size_t digit = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (i == 8 || i == 13 || i == 18 || i == 23) {
            if (text[i] != '-')
                return std::nullopt;
            continue;
        }
        const auto value = kHex.find(text[i]);
        if (value == std::string_view::npos)
            return std::nullopt;
        id[digit / 2] = static_cast<std::uint8_t>(id[digit / 2] * 16 + value);
        ++digit;
    }
    return id;
}

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
