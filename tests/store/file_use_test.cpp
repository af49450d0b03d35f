#include "core/store/file_use.h"
#include "tests/support/temp_store.h"

#include <cstdlib>
#include <filesystem>

using namespace rig;
using namespace rig::test;

TEST(FileUse, SeesAnotherProgramForAsLongAsItIsThere)
{
    TempStore store;
    const std::string path = store.path();
    store.close();
    const FileUse here{path};
    EXPECT_FALSE(here.isSharedWithOthers());
    {
        const FileUse there{path};
        EXPECT_TRUE(here.isSharedWithOthers());
        EXPECT_TRUE(there.isSharedWithOthers());
    }
    EXPECT_FALSE(here.isSharedWithOthers());
}

TEST(FileUse, KnowsAFileByAnotherNameAndTellsTwoFilesApart)
{
    TempStore store;
    TempStore other;
    const std::string link = (store.folder() / "link.rigband").string();
    std::filesystem::create_symlink(store.path(), link);
    EXPECT_FALSE(store.file().isOpenElsewhere());
    const FileUse throughTheLink{link};
    EXPECT_TRUE(store.file().isOpenElsewhere());
    EXPECT_FALSE(other.file().isOpenElsewhere());
}

TEST(FileUse, LeavesNothingBehind)
{
    TempStore store;
    const std::string path = store.path();
    store.close();
    const TempFolder folder; // other tests have files open in the usual one
    const char* before = std::getenv("TMPDIR");
    const std::string kept = before ? before : "";
    ::setenv("TMPDIR", folder.path().c_str(), 1);
    {
        const FileUse here{path};
        EXPECT_FALSE(std::filesystem::is_empty(folder.path()));
    }
    EXPECT_TRUE(std::filesystem::is_empty(folder.path()));
    before ? ::setenv("TMPDIR", kept.c_str(), 1) : ::unsetenv("TMPDIR");
}
