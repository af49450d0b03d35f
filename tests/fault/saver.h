#pragma once

#include <string>

namespace rig::test {

// The other process of the tests that kill one: saves pairs of readings into the file for ever, a line on
// standard output after each pair.
int saveForEver(const std::string& path);

// Writes half of a large save to the disk, says so, and waits.
int stopHalfWay(const std::string& path);

} // namespace rig::test
