#include "core/day_entry.h"
#include "core/measure/gap_entry.h"
#include "core/measure/size_list.h"
#include "tests/fuzz/always.h"
#include "tests/fuzz/targets.h"

#include <algorithm>
#include <array>
#include <cstdio>

namespace rig::fuzz {

namespace {

std::string inMillimetres(std::int32_t um, char mark)
{
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%d%c%03d", um / 1000, mark, um % 1000);
    return text.data();
}

} // namespace

void typedGap(std::string_view bytes)
{
    const GapEntry entry = parseGap(bytes);
    if (const Gap* gap = std::get_if<Gap>(&entry)) {
        always(*gap >= Gap{} && *gap <= kWidestGap, "a gap is outside what can be one");
        for (const char mark : {'.', ','})
            always(parseGap(inMillimetres(gap->inMicrometres(), mark)) == entry,
                   "a gap that is written out is read as another");
    }
    constexpr std::int32_t kMost = 1'000'000;
    const FigureEntry figure = parseFigure(bytes, kMost);
    if (const std::int32_t* thousandths = std::get_if<std::int32_t>(&figure))
        always(*thousandths >= 0 && *thousandths <= kMost, "a figure is more than the most");
}

void typedDay(std::string_view bytes)
{
    if (const auto day = parseDay(bytes))
        always(parseDay(dayText(*day)) == day, "a day that is written out is read as another");
}

void sizeList(std::string_view bytes)
{
    const SizeListEntry entry = parseSizeList(bytes);
    const auto* const sizes = std::get_if<std::vector<Gap>>(&entry);
    if (!sizes)
        return;
    always(!sizes->empty() && sizes->size() <= kMostSizes, "no leaves, or more than there may be");
    always(std::ranges::adjacent_find(*sizes, std::ranges::greater_equal{}) == sizes->end(),
           "leaves do not rise");
    always(sizes->front() > Gap{} && sizes->back() <= kWidestGap, "a leaf is outside what can be one");
    for (const char mark : {'.', ','}) {
        const SizeListEntry again = parseSizeList(sizeListText(*sizes, mark));
        const auto* const read = std::get_if<std::vector<Gap>>(&again);
        always(read && *read == *sizes, "leaves that are written out are read as others");
    }
}

} // namespace rig::fuzz
