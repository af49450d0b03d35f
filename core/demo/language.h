#pragma once

#include <array>
#include <string_view>

namespace rig::demo {

// What the demonstration is told in.
enum class Language { English, German, French };
inline constexpr std::array kLanguages{Language::English, Language::German, Language::French};

// Of ISO 639: "de".
std::string_view codeOf(Language language);

// English where the demonstration is not told in the language with this code.
Language languageOf(std::string_view code);

} // namespace rig::demo
