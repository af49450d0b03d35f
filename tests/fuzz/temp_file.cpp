#include "tests/fuzz/temp_file.h"

#include "tests/fuzz/always.h"

#include <cstdlib>
#include <fstream>
#include <sstream>

namespace rig::fuzz {

namespace fs = std::filesystem;

Moment StillClock::now() const
{
    return noonOf(Day{std::chrono::year{2026} / 5 / 2});
}

MemoryFolder::MemoryFolder()
{
    std::error_code ignored;
    const fs::path memory{"/dev/shm"};
    const fs::path above = fs::is_directory(memory, ignored) ? memory : fs::temp_directory_path();
    std::string form = (above / "rigband-fuzz-XXXXXX").string();
    const char* const made = ::mkdtemp(form.data());
    always(made, "no folder for files can be made");
    m_path = made;
}

MemoryFolder::~MemoryFolder()
{
    std::error_code ignored;
    fs::remove_all(m_path, ignored);
}

void MemoryFolder::empty() const
{
    for (const fs::directory_entry& entry : fs::directory_iterator{m_path})
        fs::remove_all(entry.path());
}

void writeFile(const std::string& path, std::string_view bytes)
{
    std::ofstream file{path, std::ios::binary | std::ios::trunc};
    file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    always(file.flush().good(), "a file cannot be written");
}

std::string readFile(const std::string& path)
{
    std::ostringstream bytes;
    bytes << std::ifstream{path, std::ios::binary}.rdbuf();
    return bytes.str();
}

} // namespace rig::fuzz
