#include "core/plain_text.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>

namespace rig {

namespace {

using Code = char32_t;

constexpr Code kBroken = 0xFFFD;

constexpr std::array<std::pair<Code, Code>, 21> kInvisible{{
    {0x00, 0x08},       {0x0B, 0x0C},     {0x0E, 0x1F},     {0x7F, 0x9F},     {0xAD, 0xAD},
    {0x34F, 0x34F},     {0x600, 0x605},   {0x61C, 0x61C},   {0x6DD, 0x6DD},   {0x70F, 0x70F},
    {0x115F, 0x1160},   {0x180B, 0x180F}, {0x200B, 0x200F}, {0x2028, 0x202E}, {0x2060, 0x206F},
    {0x3164, 0x3164},   {0xFE00, 0xFE0F}, {0xFEFF, 0xFEFF}, {0xFFA0, 0xFFA0}, {0xFFF0, 0xFFFB},
    {0xE0000, 0xE0FFF},
}};

bool isInvisible(Code code)
{
    return std::ranges::any_of(
        kInvisible, [code](const auto& range) { return range.first <= code && code <= range.second; });
}

std::size_t wantedBytes(char lead)
{
    const auto byte = static_cast<std::uint8_t>(lead);
    return byte >= 0xF0 ? 4 : byte >= 0xE0 ? 3 : byte >= 0xC0 ? 2 : 1;
}

// Bytes of the character that begins there; of a broken one what there is of it.
std::size_t lengthAt(std::string_view text, std::size_t at)
{
    const std::size_t wanted = wantedBytes(text[at]);
    std::size_t length = 1;
    while (length < wanted && at + length < text.size() &&
           (static_cast<std::uint8_t>(text[at + length]) & 0xC0) == 0x80)
        ++length;
    return length;
}

Code codeOf(std::string_view character)
{
    const auto lead = static_cast<std::uint8_t>(character[0]);
    if (character.size() == 1)
        return lead < 0x80 ? lead : kBroken;
    if (character.size() != wantedBytes(character[0]))
        return kBroken;
    Code code = lead & (0xFFU >> (character.size() + 1));
    for (const char one : character.substr(1))
        code = (code << 6U) | (static_cast<std::uint8_t>(one) & 0x3FU);
    return code;
}

template <typename Each> void eachCharacter(std::string_view text, Each each)
{
    for (std::size_t at = 0; at < text.size();) {
        const std::string_view character = text.substr(at, lengthAt(text, at));
        each(character);
        at += character.size();
    }
}

} // namespace

bool hasInvisible(std::string_view utf8)
{
    bool found = false;
    eachCharacter(utf8, [&found](std::string_view one) { found = found || isInvisible(codeOf(one)); });
    return found;
}

std::string withPlaceholders(std::string_view utf8)
{
    if (!hasInvisible(utf8))
        return std::string{utf8};
    std::string shown;
    eachCharacter(utf8, [&shown](std::string_view one) {
        shown += isInvisible(codeOf(one)) ? std::string_view{"\xEF\xBF\xBD"} : one;
    });
    return shown;
}

std::string elided(std::string_view utf8, std::size_t most)
{
    if (utf8.size() <= most)
        return std::string{utf8};
    std::size_t count = 0;
    eachCharacter(utf8, [&count](std::string_view) { ++count; });
    if (count <= most)
        return std::string{utf8};
    const std::size_t back = most / 2;
    const std::size_t front = most - back;
    std::string shown;
    std::size_t at = 0;
    eachCharacter(utf8, [&](std::string_view one) {
        if (at == front)
            shown += " [\xE2\x80\xA6] ";
        if (at < front || at >= count - back)
            shown += one;
        ++at;
    });
    return shown;
}

} // namespace rig
