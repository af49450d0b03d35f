#include "core/exchange/base64.h"

#include <array>
#include <cstdint>

namespace rig {

namespace {

constexpr std::string_view kLetters64 = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
constexpr std::string_view kLetters16 = "0123456789abcdef";
constexpr std::uint8_t kNoLetter = 0xff;

constexpr std::array<std::uint8_t, 256> placesIn(std::string_view letters)
{
    std::array<std::uint8_t, 256> places{};
    for (std::uint8_t& place : places)
        place = kNoLetter;
    for (std::size_t i = 0; i < letters.size(); ++i)
        places[static_cast<unsigned char>(letters[i])] = static_cast<std::uint8_t>(i);
    return places;
}

constexpr auto kPlaces64 = placesIn(kLetters64);
constexpr auto kPlaces16 = placesIn(kLetters16);

std::uint8_t octet(char byte)
{
    return static_cast<std::uint8_t>(byte);
}

// Letters of so many bits each; what is left over at the end is zero bits.
std::string asLetters(std::string_view bytes, std::string_view letters, int bits)
{
    std::string text;
    text.reserve(bytes.size() * 8 / static_cast<std::size_t>(bits) + 4);
    std::uint32_t held = 0;
    int left = 0;
    for (const char byte : bytes) {
        held = held << 8 | octet(byte);
        for (left += 8; left >= bits; left -= bits)
            text += letters[held >> (left - bits) & ((1U << bits) - 1)];
    }
    if (left > 0)
        text += letters[held << (bits - left) & ((1U << bits) - 1)];
    return text;
}

std::optional<std::string> bytesOf(std::string_view text, const std::array<std::uint8_t, 256>& places,
                                   int bits)
{
    std::string bytes;
    bytes.reserve(text.size() * static_cast<std::size_t>(bits) / 8);
    std::uint32_t held = 0;
    int left = 0;
    for (const char letter : text) {
        const std::uint8_t place = places[octet(letter)];
        if (place == kNoLetter)
            return std::nullopt;
        held = held << bits | place;
        left += bits;
        if (left >= 8) {
            left -= 8;
            bytes += static_cast<char>(held >> left & 0xff);
        }
    }
    // A letter too many, or bits that no byte has.
    if (left >= bits || (held & ((1U << left) - 1)) != 0)
        return std::nullopt;
    return bytes;
}

} // namespace

std::string base64Of(std::string_view bytes)
{
    std::string text = asLetters(bytes, kLetters64, 6);
    text.append((4 - text.size() % 4) % 4, '=');
    return text;
}

std::optional<std::string> bytesOfBase64(std::string_view text)
{
    if (text.size() % 4 != 0)
        return std::nullopt;
    for (int i = 0; i < 2 && text.ends_with('='); ++i)
        text.remove_suffix(1);
    return bytesOf(text, kPlaces64, 6);
}

std::string base16Of(std::string_view bytes)
{
    return asLetters(bytes, kLetters16, 4);
}

std::optional<std::string> bytesOfBase16(std::string_view text)
{
    return text.size() % 2 == 0 ? bytesOf(text, kPlaces16, 4) : std::nullopt;
}

} // namespace rig
