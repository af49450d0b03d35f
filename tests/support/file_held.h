#pragma once

#include <condition_variable>
#include <memory>
#include <mutex>
#include <string>
#include <thread>

namespace rig::test {

// Another program that is writing to the file, and is done after two seconds: whoever saves meanwhile waits.
// It has the file before the constructor is through.
class FileHeld
{
public:
    explicit FileHeld(const std::string& path);
    ~FileHeld(); // waits until the file is free

    FileHeld(const FileHeld&) = delete;
    FileHeld& operator=(const FileHeld&) = delete;

    bool isHeld() const;

private:
    void hold(const std::string& path);

    mutable std::mutex m_mutex;
    std::condition_variable m_changed;
    bool m_begun = false;
    bool m_held = false;
    std::thread m_thread;
};

} // namespace rig::test
