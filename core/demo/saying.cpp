#include "core/demo/saying.h"

#include <algorithm>

namespace rig::demo {

std::string_view codeOf(Language language)
{
    switch (language) {
    case Language::English:
        return "en";
    case Language::German:
        return "de";
    case Language::French:
        break;
    }
    return "fr";
}

Language languageOf(std::string_view code)
{
    const auto* const found = std::ranges::find(kLanguages, code, codeOf);
    return found == kLanguages.end() ? Language::English : *found;
}

std::string Saying::in(Language language) const
{
    switch (language) {
    case Language::English:
        return std::string{m_english};
    case Language::German:
        return std::string{m_german};
    case Language::French:
        break;
    }
    return std::string{m_french};
}

} // namespace rig::demo
