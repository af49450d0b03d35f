#include "core/store/base64.h"

#include <gtest/gtest.h>

using namespace rig;

// RFC 4648 section 10.
TEST(Base64, WritesAndReadsTheExamplesOfItsStandard)
{
    const std::pair<const char*, const char*> kExamples[] = {{"", ""},
                                                             {"f", "Zg=="},
                                                             {"fo", "Zm8="},
                                                             {"foo", "Zm9v"},
                                                             {"foob", "Zm9vYg=="},
                                                             {"fooba", "Zm9vYmE="},
                                                             {"foobar", "Zm9vYmFy"}};
    for (const auto& [bytes, text] : kExamples) {
        EXPECT_EQ(base64Of(bytes), text);
        EXPECT_EQ(bytesOfBase64(text), bytes);
    }
    EXPECT_EQ(base16Of("foobar"), "666f6f626172");
    EXPECT_EQ(bytesOfBase16("666f6f626172"), "foobar");
}

TEST(Base64, ComesBackForEveryByte)
{
    std::string all;
    for (int byte = 0; byte < 256; ++byte)
        all += static_cast<char>(byte);
    EXPECT_EQ(bytesOfBase64(base64Of(all)), all);
    EXPECT_EQ(bytesOfBase16(base16Of(all)), all);
}

TEST(Base64, RefusesWhatNobodyWouldWrite)
{
    for (const char* text : {"Z", "Zg", "Zg=", "Zm9", "Zh==", "Zm9=", "Z===", "====", "Zg==Zg==", "Zm 9v",
                             "Zm9v\n", "Zm9-", "\xC3\xBCg="})
        EXPECT_FALSE(bytesOfBase64(text)) << text;
    for (const char* text : {"6", "6G", "6F", "0x", "  "})
        EXPECT_FALSE(bytesOfBase16(text)) << text;
}
