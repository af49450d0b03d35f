#pragma once

#include "core/airframe/id_source.h"
#include "core/store/records.h"
#include "core/store/store_file.h"
#include "tests/support/fixed_clock.h"
#include "tests/support/must.h"

#include <filesystem>
#include <memory>
#include <string>

namespace rig::test {

// A folder of its own that goes away with the object.
class TempFolder
{
public:
    TempFolder();
    ~TempFolder();
    TempFolder(const TempFolder&) = delete;
    TempFolder& operator=(const TempFolder&) = delete;

    const std::filesystem::path& path() const { return m_path; }
    std::string file(const std::string& name) const { return (m_path / name).string(); }

private:
    std::filesystem::path m_path;
};

// A real file with a clock and ids that come out the same in every run.
class TempStore
{
public:
    TempStore();

    Records& records() { return *m_records; }
    StoreFile& file() { return *m_file; }
    FixedClock& clock() { return m_clock; }
    IdSource& ids() { return m_ids; }
    const std::filesystem::path& folder() const { return m_folder.path(); }
    std::string path() const { return m_folder.file("hangar.rigband"); }

    void close();
    void reopen(); // fails the test when it cannot

private:
    TempFolder m_folder;
    FixedClock m_clock;
    IdSource m_ids{20260502};
    std::unique_ptr<StoreFile> m_file;
    std::unique_ptr<Records> m_records;
};

} // namespace rig::test
