#include "tests/support/file_held.h"

#include <chrono>
#include <gtest/gtest.h>
#include <sqlite3.h>

namespace rig::test {

namespace {

constexpr std::chrono::seconds kHeldFor{2};

} // namespace

FileHeld::FileHeld(const std::string& path) : m_thread{[this, path] { hold(path); }}
{
    std::unique_lock lock{m_mutex};
    m_changed.wait(lock, [this] { return m_begun; });
    EXPECT_TRUE(m_held) << "nobody could begin to write to " << path;
}

FileHeld::~FileHeld()
{
    m_thread.join();
}

bool FileHeld::isHeld() const
{
    const std::lock_guard lock{m_mutex};
    return m_held;
}

void FileHeld::hold(const std::string& path)
{
    sqlite3* file = nullptr;
    const bool opened = sqlite3_open(path.c_str(), &file) == SQLITE_OK;
    const bool begun =
        opened && sqlite3_exec(file, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr) == SQLITE_OK;
    std::unique_lock lock{m_mutex};
    m_begun = true;
    m_held = begun;
    m_changed.notify_all();
    if (begun)
        m_changed.wait_for(lock, kHeldFor, [] { return false; });
    m_held = false;
    lock.unlock();
    sqlite3_close(file); // what was begun is given up with it
}

} // namespace rig::test
