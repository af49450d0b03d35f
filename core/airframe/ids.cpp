#include "core/airframe/ids.h"

namespace rig {

namespace {

constexpr std::string_view kHex = "0123456789abcdef";

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

} // namespace rig
