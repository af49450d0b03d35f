#include "core/plain_text.h"

#include <array>
#include <gtest/gtest.h>

using namespace rig;

TEST(PlainText, KnowsWhatNobodySees)
{
    constexpr std::array kInvisible{"a\u200Eb",
                                    "a\u200Fb",
                                    "a\u202Ab",
                                    "a\u202Eb",
                                    "a\u2066b",
                                    "a\u2069b",
                                    "a\u200Bb",
                                    "a\u200Db",
                                    "a\uFEFFb",
                                    "a\u00ADb",
                                    "a\u061Cb",
                                    "a\u2060b",
                                    "a\u3164b",
                                    "a\x01"
                                    "b",
                                    "a\x7F"
                                    "b",
                                    "a\u0085b",
                                    "a\u2028b",
                                    "a\U000E0041b"};
    for (const char* text : kInvisible) {
        EXPECT_TRUE(hasInvisible(text)) << text;
        EXPECT_EQ(withPlaceholders(text), "a\uFFFDb");
    }
    for (const char* text : {"", "Left aileron", "Querruder, Fl\u00FCgelwurzel \u2013 0,60 \u2026",
                             "\u05D0\u05D1 \u4E2D\u6587 \U0001F600", "two\nlines\tand more\r\n"}) {
        EXPECT_FALSE(hasInvisible(text)) << text;
        EXPECT_EQ(withPlaceholders(text), text);
    }
}

TEST(PlainText, BrokenUtf8IsLeftAsItIs)
{
    for (const std::string& text : {std::string{"\xFF\xFE"}, std::string{"\xE2\x80"}, std::string{"a\xC3"}}) {
        EXPECT_FALSE(hasInvisible(text));
        EXPECT_EQ(withPlaceholders(text), text);
    }
}

TEST(PlainText, LeavesOutTheMiddleOfWhatIsTooLong)
{
    EXPECT_EQ(elided("Left aileron", 12), "Left aileron");
    EXPECT_EQ(elided("abcdefghij", 4), "ab [\u2026] ij");
    EXPECT_EQ(elided("\u00E4\u00F6\u00FC\u00DF", 4), "\u00E4\u00F6\u00FC\u00DF") << "characters, not bytes";
    EXPECT_EQ(elided("\u00E4\u00F6\u00FC\u00DF", 2), "\u00E4 [\u2026] \u00DF");
    EXPECT_LT(elided(std::string(5000, 'x'), kMostPrinted).size(), 130U);
}
