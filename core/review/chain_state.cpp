#include "core/review/chain_state.h"

#include <cctype>
#include <string_view>

namespace rig {

namespace {

constexpr std::string_view kAlphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
constexpr std::size_t kLetters = 10;
constexpr int kBits = 5; // of one letter

std::uint64_t firstBits(const std::string& hash)
{
    constexpr std::size_t kDigits = 13; // 52 bits, of which 50 are used
    return std::stoull(hash.substr(0, kDigits), nullptr, 16) >> 2;
}

} // namespace

std::string shortForm(const std::string& hash)
{
    const std::uint64_t bits = firstBits(hash);
    std::string letters;
    for (std::size_t i = 0; i < kLetters; ++i) {
        const auto shift = static_cast<int>(kLetters - 1 - i) * kBits;
        letters += kAlphabet[bits >> shift & 31U];
    }
    return letters.insert(kLetters / 2, "-");
}

std::optional<std::string> readShortForm(const std::string& typed)
{
    std::string letters;
    for (const char each : typed)
        if (each != ' ' && each != '-')
            letters += static_cast<char>(std::toupper(static_cast<unsigned char>(each)));
    if (letters.size() != kLetters || letters.find_first_not_of(kAlphabet) != std::string::npos)
        return std::nullopt;
    return letters.insert(kLetters / 2, "-");
}

} // namespace rig
