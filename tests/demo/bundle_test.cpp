// The files of all languages laid together, and each taken out again.

#include "core/demo/bundle.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace rig::demo;

namespace {

// Of so many bytes, each other than its neighbours.
std::string fileOf(std::size_t size, char first)
{
    std::string file(size, first);
    for (std::size_t i = 0; i < size; ++i)
        file[i] = static_cast<char>(first + static_cast<char>(i % 97));
    return file;
}

std::string takenOut(std::string_view bundle, Language language)
{
    std::string file;
    for (const std::string_view slice : unbundled(bundle, language))
        file += slice;
    return file;
}

} // namespace

TEST(Bundle, GivesEachFileBackAsItWasHoweverLong)
{
    constexpr std::size_t kSlice = std::size_t{1} << 20;
    for (const std::size_t longest : {std::size_t{1}, kSlice - 1, kSlice, kSlice + 1, 3 * kSlice + 5}) {
        const std::vector<std::string> files{fileOf(longest, 'a'), fileOf(longest / 2, 'b'), fileOf(1, 'c')};
        const std::string bundle = bundled(files);
        for (std::size_t i = 0; i < kLanguages.size(); ++i)
            EXPECT_TRUE(takenOut(bundle, kLanguages[i]) == files[i]) << longest << ", " << i;
    }
}

TEST(Bundle, IsNoneWhereSomethingIsMissingOrTooMuch)
{
    const std::string bundle = bundled({fileOf(500, 'a'), fileOf(600, 'b'), fileOf(700, 'c')});
    for (const std::string& other : {std::string{}, bundle.substr(0, 10), bundle.substr(0, bundle.size() - 1),
                                     bundle + "x", std::string(1000, '\xff')})
        EXPECT_TRUE(unbundled(other, Language::English).empty());
}
