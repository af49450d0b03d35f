#include "core/demo/bundle.h"

#include <algorithm>
#include <cassert>
#include <cstdint>
#include <numeric>
#include <optional>

namespace rig::demo {

namespace {

// Eight slices are the window in which zstd looks back at the level that the program is built with.
constexpr std::size_t kSlice = std::size_t{1} << 20;
constexpr std::size_t kSizeBytes = 8; // of the size of each file, least significant first, before all

using Sizes = std::array<std::size_t, kLanguages.size()>;
constexpr std::size_t kHeader = kSizeBytes * kLanguages.size();

std::optional<Sizes> sizesIn(std::string_view bundle)
{
    if (bundle.size() < kHeader)
        return std::nullopt;
    Sizes sizes{};
    for (std::size_t i = 0; i < kHeader; ++i)
        sizes[i / kSizeBytes] |= std::size_t{static_cast<unsigned char>(bundle[i])} << (8 * (i % kSizeBytes));
    for (const std::size_t size : sizes)
        if (size > bundle.size())
            return std::nullopt;
    if (std::accumulate(sizes.begin(), sizes.end(), kHeader) != bundle.size())
        return std::nullopt;
    return sizes;
}

std::size_t sliceAt(std::size_t offset, std::size_t size)
{
    return std::min(kSlice, size - std::min(offset, size));
}

} // namespace

std::string bundled(const std::vector<std::string>& files)
{
    assert(files.size() == kLanguages.size());
    std::string bundle;
    std::size_t longest = 0;
    for (const std::string& file : files) {
        longest = std::max(longest, file.size());
        for (std::size_t byte = 0; byte < kSizeBytes; ++byte)
            bundle += static_cast<char>((std::uint64_t{file.size()} >> (8 * byte)) & 0xff);
    }
    for (std::size_t offset = 0; offset < longest; offset += kSlice)
        for (const std::string& file : files)
            bundle.append(file, std::min(offset, file.size()), sliceAt(offset, file.size()));
    return bundle;
}

std::vector<std::string_view> unbundled(std::string_view bundle, Language language)
{
    const auto sizes = sizesIn(bundle);
    if (!sizes)
        return {};
    std::vector<std::string_view> slices;
    std::size_t at = kHeader;
    for (std::size_t offset = 0; at < bundle.size(); offset += kSlice)
        for (std::size_t i = 0; i < sizes->size(); ++i) {
            const std::size_t slice = sliceAt(offset, (*sizes)[i]);
            if (kLanguages[i] == language)
                slices.push_back(bundle.substr(at, slice));
            at += slice;
        }
    return slices;
}

} // namespace rig::demo
