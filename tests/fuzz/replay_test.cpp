// What fuzzing begins with, and what it once found, under the ordinary build.

#include "tests/fuzz/targets.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>

using namespace rig::fuzz;
namespace fs = std::filesystem;

namespace {

class Corpus : public testing::Test
{
public:
    explicit Corpus(const Target& target) : m_target{target} {}

    void TestBody() override
    {
        int files = 0;
        for (const fs::directory_entry& entry :
             fs::directory_iterator{fs::path{RIG_FUZZ_CORPUS} / m_target.name}) {
            SCOPED_TRACE(entry.path().filename());
            std::ostringstream bytes;
            bytes << std::ifstream{entry.path(), std::ios::binary}.rdbuf();
            EXPECT_NO_THROW(m_target.take(bytes.str()));
            ++files;
        }
        EXPECT_GT(files, 0) << "fuzzing has nothing to begin with";
    }

private:
    const Target& m_target;
};

} // namespace

int main(int argc, char** argv)
{
    testing::InitGoogleTest(&argc, argv);
    for (const Target& target : targets())
        testing::RegisterTest("Corpus", std::string{target.name}.c_str(), nullptr, nullptr, __FILE__,
                              __LINE__, [&target] { return new Corpus{target}; });
    return RUN_ALL_TESTS();
}
