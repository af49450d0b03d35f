#pragma once

#include "core/demo/language.h"

#include <string>
#include <string_view>

namespace rig::demo {

// Never defined: what calls it while the program is compiled is no saying, and does not compile.
void isLeftUntranslated();

// What somebody of the demonstration says, in each language. One without all three, or with two alike, does
// not compile, and text that is no saying has no way into what is told.
class Saying
{
public:
    constexpr Saying() = default; // says nothing
    consteval Saying(std::string_view english, std::string_view german, std::string_view french)
        : m_english{english}, m_german{german}, m_french{french}
    {
        if (english.empty() || german.empty() || french.empty())
            isLeftUntranslated();
        if (english == german || english == french || german == french)
            isLeftUntranslated();
    }

    std::string in(Language language) const;

    bool operator==(const Saying&) const = default;

private:
    std::string_view m_english;
    std::string_view m_german;
    std::string_view m_french;
};

} // namespace rig::demo
