#pragma once

#include <string>

namespace rig {

bool isBlank(const std::string& text);

// How a name is compared: surrounding blanks and upper or lower case do not count.
std::string comparable(const std::string& name);

} // namespace rig
