#include "tests/support/temp_store.h"

#include <cstdlib>

namespace rig::test {

TempFolder::TempFolder()
{
    std::string form = (std::filesystem::temp_directory_path() / "rigband-XXXXXX").string();
    m_path = ::mkdtemp(form.data());
}

TempFolder::~TempFolder()
{
    std::error_code ignored;
    std::filesystem::permissions(m_path, std::filesystem::perms::owner_all, ignored);
    std::filesystem::remove_all(m_path, ignored);
}

TempStore::TempStore() : m_file{must(StoreFile::open(path(), OpenAs::New, m_clock))}
{
    m_records = std::make_unique<Records>(*m_file, m_ids, m_clock);
}

void TempStore::close()
{
    m_records.reset();
    m_file.reset();
}

void TempStore::reopen()
{
    close();
    m_file = must(StoreFile::open(path(), OpenAs::Existing, m_clock));
    m_records = std::make_unique<Records>(*m_file, m_ids, m_clock);
}

} // namespace rig::test
