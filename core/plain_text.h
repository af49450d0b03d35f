#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace rig {

// Characters that nobody sees and that can turn the order of figures around them, or make two names look
// alike: controls, marks of the direction of writing, zero-width ones. Line breaks and tabs are none. The
// list is that of Unicode 15, general categories Cc, Cf and Zl/Zp, and the fillers that are drawn as nothing.
bool hasInvisible(std::string_view utf8);

// Each of them as U+FFFD, so that it is seen and turns nothing.
std::string withPlaceholders(std::string_view utf8);

// At most so many characters and a mark in the middle where some are left out.
std::string elided(std::string_view utf8, std::size_t most);

// Typed on one line, and in a field of several. Characters.
inline constexpr int kLongestLine = 200;
inline constexpr int kLongestNote = 5000;
// Printed of a name: more would fill pages. The file holds it whole.
inline constexpr std::size_t kMostPrinted = 120;

} // namespace rig
