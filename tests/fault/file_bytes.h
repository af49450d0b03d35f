#pragma once

#include <fstream>
#include <iterator>
#include <string>

namespace rig::test {

inline std::string bytesOf(const std::string& path)
{
    std::ifstream file{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{file}, {}};
}

inline void writeBytes(const std::string& path, const std::string& bytes)
{
    std::ofstream{path, std::ios::binary | std::ios::trunc} << bytes;
}

} // namespace rig::test
