#include "core/store/other_file.h"

#include "core/store/chain_look.h"
#include "core/store/file_header.h"
#include "core/store/layout.h"
#include "core/store/migrations.h"
#include "core/store/passing_file.h"
#include "core/store/raw_file.h"

#include <filesystem>

namespace rig {

Result<std::unique_ptr<OtherFile>> OtherFile::read(const std::string& path, const std::string& beside,
                                                   Progress* progress)
{
    const Result<FileHeader> header = readHeader(path);
    if (!header)
        return header.problem();
    if (const Outcome known = checkHeader(header.value()); !known)
        return known.problem();
    if (const Outcome whole = lookThrough(path, stopOf(progress)); !whole)
        return whole.problem();
    removeLeftBehind(beside);
    std::unique_ptr<OtherFile> file{new OtherFile{path, freeReadingName(beside)}};
    if (const Outcome copied = copyPages(path, file->m_copy, progress); !copied)
        return copied.problem();
    if (const Outcome opened = file->open(); !opened)
        return opened.problem();
    return file;
}

Outcome OtherFile::open()
{
    auto opened = StoreFile::Connection::open(m_copy, StoreFile::Connection::Access::Writing);
    if (!opened)
        return opened.problem();
    m_connection = std::move(opened).value();
    // Whatever is lost of the copy can be copied again.
    for (const char* setting : {"PRAGMA journal_mode = MEMORY", "PRAGMA synchronous = OFF"})
        if (const auto set = m_connection->word(QString::fromLatin1(setting)); !set)
            return set.problem();
    // Nothing that another program built into it is obeyed, here or in what is joined to it.
    if (const Outcome known = readVersion(*m_connection); !known)
        return known;
    return migrate(*m_connection, newestSchemaVersion());
}

OtherFile::~OtherFile()
{
    m_connection.reset();
    std::error_code ignored;
    for (const char* beside : {"", "-journal", "-wal", "-shm"})
        std::filesystem::remove(m_copy + beside, ignored);
}

Result<ChainState> OtherFile::lookAtChain(const std::stop_token& stop)
{
    return rig::lookAtChain(*m_connection, stop);
}

} // namespace rig
