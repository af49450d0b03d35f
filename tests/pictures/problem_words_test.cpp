#include "app/wording/problem_words.h"

#include <gtest/gtest.h>

using namespace rig;

namespace {

struct NamedProblem
{
    const char* name;
    ProblemKind kind;

    friend std::ostream& operator<<(std::ostream& out, const NamedProblem& row) { return out << row.name; }
};

class EveryProblem : public testing::TestWithParam<NamedProblem>
{
};

} // namespace

TEST_P(EveryProblem, SaysWhatIsWrongAndWhatToDoWithoutTechnicalWords)
{
    for (const char* name : {"", "hangar.rigband"}) {
        const QString said = ProblemWords::sentence({GetParam().kind, "SQLITE_FULL 13"}, QLatin1String(name));
        EXPECT_GT(said.length(), 30) << said.toStdString();
        EXPECT_FALSE(said.contains("SQLITE")) << said.toStdString();
        EXPECT_FALSE(said.contains("  ") || said.startsWith(' ')) << said.toStdString();
        EXPECT_FALSE(said.contains("%1")) << said.toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(Problems, EveryProblem,
                         testing::Values(NamedProblem{"No such file", ProblemKind::NoSuchFile},
                                         NamedProblem{"Cannot open", ProblemKind::CannotOpen},
                                         NamedProblem{"Not our file", ProblemKind::NotOurFile},
                                         NamedProblem{"Newer file", ProblemKind::NewerFile},
                                         NamedProblem{"Damaged file", ProblemKind::DamagedFile},
                                         NamedProblem{"Wrong version", ProblemKind::WrongVersion},
                                         NamedProblem{"No greater id", ProblemKind::NoGreaterId},
                                         NamedProblem{"File read only", ProblemKind::FileReadOnly},
                                         NamedProblem{"Folder read only", ProblemKind::FolderReadOnly},
                                         NamedProblem{"Disk full", ProblemKind::DiskFull},
                                         NamedProblem{"Busy elsewhere", ProblemKind::BusyElsewhere},
                                         NamedProblem{"Fact refused", ProblemKind::FactRefused},
                                         NamedProblem{"Not found", ProblemKind::NotFound},
                                         NamedProblem{"File exists", ProblemKind::FileExists},
                                         NamedProblem{"Unexpected", ProblemKind::Unexpected}));

TEST(ForeignLayout, NamesWhatDiffersFirst)
{
    const QString said = ProblemWords::sentence({ProblemKind::ForeignLayout, "spy"}, "hangar.rigband");
    EXPECT_TRUE(said.contains("“spy”")) << said.toStdString();
    EXPECT_FALSE(said.contains("%")) << said.toStdString();
}
