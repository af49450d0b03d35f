#pragma once

#include "core/review/chain_state.h"
#include "core/store/connection.h"

#include <memory>
#include <string>

namespace rig {

// A file that is only read: a copy of it as it is at one moment, brought up to date where its layout is
// older. The copy goes away with this, and the file itself is touched in no way.
class OtherFile
{
public:
    // Paths in UTF-8; the copy lies in the folder of `beside` and begins with its name. DamagedFile,
    // NotOurFile, NewerFile, ForeignLayout, WrongVersion as when it is opened; DiskFull or FolderReadOnly of
    // the folder of the copy.
    static Result<std::unique_ptr<OtherFile>> read(const std::string& path, const std::string& beside,
                                                   Progress* progress = nullptr);

    ~OtherFile();
    OtherFile(const OtherFile&) = delete;
    OtherFile& operator=(const OtherFile&) = delete;

    const std::string& path() const { return m_path; } // of the file itself
    StoreFile::Connection& connection() { return *m_connection; }
    // Where its chain does not hold.
    Result<ChainState> lookAtChain(const std::stop_token& stop = {});

private:
    OtherFile(std::string path, std::string copy) : m_path{std::move(path)}, m_copy{std::move(copy)} {}
    Outcome open();

    std::string m_path;
    std::string m_copy;
    std::unique_ptr<StoreFile::Connection> m_connection;
};

} // namespace rig
