#pragma once

#include "core/airframe/id_source.h"
#include "core/clock.h"
#include "core/store/records.h"
#include "core/store/store_file.h"

#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

namespace rig::fuzz {

// 2 May 2026, noon, whenever it is asked: what was found once is found again.
class StillClock : public Clock
{
public:
    Moment now() const override;
};

// A folder in memory where there is one, which goes away with the object.
class MemoryFolder
{
public:
    MemoryFolder();
    ~MemoryFolder();
    MemoryFolder(const MemoryFolder&) = delete;
    MemoryFolder& operator=(const MemoryFolder&) = delete;

    std::string file(const std::string& name) const { return (m_path / name).string(); }
    void empty() const;

private:
    std::filesystem::path m_path;
};

void writeFile(const std::string& path, std::string_view bytes);
std::string readFile(const std::string& path);

// A file with facts read and written.
struct OpenFile
{
    OpenFile(std::unique_ptr<StoreFile> opened, const Clock& clock)
        : file{std::move(opened)}, records{*file, ids, clock}
    {
    }

    std::unique_ptr<StoreFile> file;
    IdSource ids{20260502};
    Records records;
};

} // namespace rig::fuzz
