#pragma once

#include "core/demo/language.h"

#include <string>
#include <string_view>
#include <vector>

namespace rig::demo {

// The files of all languages, in the order of kLanguages, as one: laid together slice by slice, so that what
// they have in common lies close together and is compressed once. What they have not is the digests of the
// chain.
std::string bundled(const std::vector<std::string>& files);

// The file of this language, in the slices of it that stand in `bundle` one after another; none where that is
// no bundle.
std::vector<std::string_view> unbundled(std::string_view bundle, Language language);

} // namespace rig::demo
