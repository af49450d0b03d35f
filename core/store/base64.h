#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace rig {

// Bytes as text and back, RFC 4648: base 64 of section 4 with its padding, and base 16 of section 8 in small
// letters. Empty where the text is not what the bytes would be written as.
std::string base64Of(std::string_view bytes);
std::optional<std::string> bytesOfBase64(std::string_view text);

std::string base16Of(std::string_view bytes);
std::optional<std::string> bytesOfBase16(std::string_view text);

} // namespace rig
