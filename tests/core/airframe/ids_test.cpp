#include "core/airframe/ids.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>

namespace rig {
namespace {

TEST(IdsTest, AreInTheOrderOfTheirBytesFromTheFirst)
{
    std::mt19937_64 draw{20261129};
    for (int i = 0; i < 10'000; ++i) {
        AirframeId one;
        AirframeId other;
        for (std::size_t b = 0; b < 16; ++b) {
            one.bytes[b] = static_cast<std::uint8_t>(draw());
            other.bytes[b] = i % 3 ? one.bytes[b] : static_cast<std::uint8_t>(draw());
        }
        other.bytes[draw() % 16] = static_cast<std::uint8_t>(draw());
        const bool before = std::ranges::lexicographical_compare(one.bytes, other.bytes);
        const bool after = std::ranges::lexicographical_compare(other.bytes, one.bytes);
        EXPECT_EQ(one < other, before) << textOf(one.bytes) << ' ' << textOf(other.bytes);
        EXPECT_EQ(one > other, after) << textOf(one.bytes) << ' ' << textOf(other.bytes);
        EXPECT_EQ(one == other, !before && !after);
    }
}

TEST(IdsTest, AnEarlierMillisecondComesFirst)
{
    const AirframeId early{{0x01, 0x9a, 0x00, 0x00, 0x00, 0xff, 0x7f, 0xff}};
    const AirframeId late{{0x01, 0x9a, 0x00, 0x00, 0x01, 0x00, 0x70, 0x00}};
    EXPECT_LT(early, late);
    EXPECT_LT(millisecondsIn(early.bytes), millisecondsIn(late.bytes));
}

} // namespace
} // namespace rig
