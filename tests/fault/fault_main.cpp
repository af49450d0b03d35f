#include "tests/fault/saver.h"

#include <QCoreApplication>

#include <gtest/gtest.h>
#include <string_view>

int main(int argc, char** argv)
{
    testing::InitGoogleTest(&argc, argv);
    const QCoreApplication application(argc, argv);
    if (argc == 3 && std::string_view{argv[1]} == "--save-for-ever")
        return rig::test::saveForEver(argv[2]);
    if (argc == 3 && std::string_view{argv[1]} == "--stop-half-way")
        return rig::test::stopHalfWay(argv[2]);
    return RUN_ALL_TESTS();
}
