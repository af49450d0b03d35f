#include "core/exchange/csv.h"

#include <gtest/gtest.h>

namespace rig {
namespace {

using Fields = std::vector<std::string>;

// The first four examples are those of RFC 4180 section 2, points 5 to 7, and its CRLF.
TEST(Csv, ReadsFieldsAsRfc4180WritesThem)
{
    struct Example
    {
        const char* text;
        Fields fields;
    };
    const Example table[] = {
        {"\"aaa\",\"bbb\",\"ccc\"\r\n", {"aaa", "bbb", "ccc"}},
        {"zzz,yyy,xxx", {"zzz", "yyy", "xxx"}},
        {"\"aaa\",\"b\r\nbb\",\"ccc\"\r\n", {"aaa", "b\r\nbb", "ccc"}},
        {"\"aaa\",\"b\"\"bb\",\"ccc\"", {"aaa", "b\"bb", "ccc"}},
        {"a,,c,", {"a", "", "c", ""}},
        {"\"a,b\",\"\"\n", {"a,b", ""}},
        {" a , b ", {" a ", " b "}},
    };
    for (const Example& example : table) {
        SCOPED_TRACE(example.text);
        const auto rows = csvRows(example.text, ',');
        ASSERT_EQ(rows.size(), 1u);
        EXPECT_EQ(rows[0].fields, example.fields);
        EXPECT_FALSE(rows[0].strayQuote);
        EXPECT_FALSE(rows[0].unclosedQuote);
    }
}

TEST(Csv, CountsLinesThroughQuotedLineEndsBlankLinesAndEveryLineEnd)
{
    const auto rows = csvRows("one\r\n\"two\nstill two\"\n\n;;\rsix\n", ';');
    ASSERT_EQ(rows.size(), 3u);
    EXPECT_EQ(rows[0].line, 1);
    EXPECT_EQ(rows[1].line, 2);
    EXPECT_EQ(rows[2].line, 6);
    EXPECT_EQ(rows[2].fields, Fields{"six"});
}

TEST(Csv, MarksQuotesThatDoNotFit)
{
    EXPECT_TRUE(csvRows("a \"b\" c\n", ',').at(0).strayQuote);
    EXPECT_TRUE(csvRows("\"a\"b,c\n", ',').at(0).strayQuote);
    const auto rows = csvRows("a,b\n\"c,d\ne,f\n", ',');
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_FALSE(rows[0].unclosedQuote);
    EXPECT_TRUE(rows[1].unclosedQuote);
    EXPECT_EQ(rows[1].line, 2);
}

TEST(Csv, ReadsBackWhatItWrites)
{
    const Fields fields{"plain", "", "a,b", "semi;colon", "say \"no\"", "two\nlines", " edge ", "Größe"};
    const auto rows = csvRows(csvLine(fields), ',');
    ASSERT_EQ(rows.size(), 1u);
    EXPECT_EQ(rows[0].fields, fields);
}

// Bytes that RFC 3629 section 4 forbids, and some that it allows.
TEST(Csv, FindsLinesThatAreNotUtf8)
{
    EXPECT_TRUE(linesNotUtf8("plain\nGröße \xE2\x80\x93 \xF0\x9F\x9B\xA9\n").empty());
    EXPECT_EQ(linesNotUtf8("a\nGr\xF6\xDF"
                           "e\r\nb\n\xFF\xFE\n"),
              (std::vector{2, 4}));
    for (const char* wrong :
         {"\xC0\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xE2\x80", "\x80", "\xE0\x80\x80"})
        EXPECT_EQ(linesNotUtf8(wrong).size(), 1u);
    EXPECT_EQ(linesNotUtf8(std::string_view{"a\0b", 3}), std::vector{1});
}

TEST(Csv, GuardsWhatASpreadsheetWouldTakeForAFormulaAndTakesTheGuardOffAgain)
{
    const std::pair<const char*, const char*> table[] = {
        {"=1+1", "'=1+1"},
        {"@sum", "'@sum"},
        {"+49 170 555", "'+49 170 555"},
        {"-loose", "'-loose"},
        {"\tx", "'\tx"},
        {"'=x", "''=x"},
        {"''", "'''"},
        {"'tis loose", "'tis loose"},
        {"-0.05", "-0.05"},
        {"+3", "+3"},
        {"-1e-9", "-1e-9"},
        {"a=b", "a=b"},
        {"'", "'"},
    };
    for (const auto& [field, out] : table) {
        const std::string line = csvLine({"first", field, "last"});
        EXPECT_EQ(line, std::string{"first,"} + out + ",last\r\n");
        EXPECT_EQ(csvRows(line, ',').front().fields[1], field);
    }
    EXPECT_EQ(csvRows(csvLine({"\r=x"}), ',').front().fields[0], "\r=x");
}

TEST(Csv, KeepsNoMoreFieldsOfARowThanAnyTableHas)
{
    EXPECT_TRUE(csvRows(std::string(1'000'000, ','), ',').empty()) << "a row with nothing in it";
    const auto full = csvRows("a" + std::string(1'000'000, ',') + "\nb", ',');
    ASSERT_EQ(full.size(), 2u);
    EXPECT_EQ(full[0].fields.size(), kMostRowFields + 1);
    EXPECT_TRUE(isTooLarge(std::string(kMostTableBytes + 1, 'a')));
    EXPECT_TRUE(isTooLarge(std::string(2 * kMostTableLines + 1, '\n')));
    EXPECT_FALSE(isTooLarge("a,b\r\n"));
}

} // namespace
} // namespace rig
