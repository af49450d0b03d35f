#include "app/wording/problem_words.h"

#include <gtest/gtest.h>

using namespace rig;

namespace {

class EveryProblem : public testing::TestWithParam<ProblemKind>
{
};

} // namespace

TEST_P(EveryProblem, SaysWhatIsWrongAndWhatToDoWithoutTechnicalWords)
{
    for (const char* name : {"", "hangar.rigband"}) {
        const QString said = ProblemWords::sentence({GetParam(), "SQLITE_FULL 13"}, QLatin1String(name));
        EXPECT_GT(said.length(), 30) << said.toStdString();
        EXPECT_FALSE(said.contains("SQLITE")) << said.toStdString();
        EXPECT_FALSE(said.contains("  ") || said.startsWith(' ')) << said.toStdString();
        EXPECT_FALSE(said.contains("%1")) << said.toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(
    Problems, EveryProblem,
    testing::Values(ProblemKind::NoSuchFile, ProblemKind::CannotOpen, ProblemKind::NotOurFile,
                    ProblemKind::NewerFile, ProblemKind::DamagedFile, ProblemKind::WrongVersion,
                    ProblemKind::NoGreaterId, ProblemKind::FileReadOnly, ProblemKind::FolderReadOnly,
                    ProblemKind::DiskFull, ProblemKind::BusyElsewhere, ProblemKind::FactRefused,
                    ProblemKind::NotFound, ProblemKind::FileExists, ProblemKind::Unexpected));

TEST(ForeignLayout, NamesWhatDiffersFirst)
{
    const QString said = ProblemWords::sentence({ProblemKind::ForeignLayout, "spy"}, "hangar.rigband");
    EXPECT_TRUE(said.contains("“spy”")) << said.toStdString();
    EXPECT_FALSE(said.contains("%")) << said.toStdString();
}
