#include "core/measure/size_list.h"

#include "core/measure/typed_text.h"

#include <algorithm>
#include <optional>

namespace rig {

namespace {

constexpr std::string_view kStepWord = "step";

// The dashes that a text program puts for a hyphen become one; capitals do not matter.
std::string plain(std::string_view typed)
{
    std::string text{trimmed(typed)};
    for (const std::string_view dash : {"\u2013", "\u2212", "\u2014"})
        for (auto at = text.find(dash); at != std::string::npos; at = text.find(dash))
            text.replace(at, dash.size(), "-");
    std::ranges::transform(text, text.begin(),
                           [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
    return text;
}

std::vector<std::string_view> partedBy(std::string_view text, std::string_view separators)
{
    std::vector<std::string_view> pieces;
    while (!text.empty()) {
        const auto end = std::min(text.find_first_of(separators), text.size());
        if (const auto piece = trimmed(text.substr(0, end)); !piece.empty())
            pieces.push_back(piece);
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return pieces;
}

// A comma right between two figures may be a decimal mark.
bool hasDecimalComma(std::string_view text)
{
    for (std::size_t i = 1; i + 1 < text.size(); ++i)
        if (text[i] == ',' && isDigit(text[i - 1]) && isDigit(text[i + 1]))
            return true;
    return false;
}

SizeListRefusal refusal(SizeListProblem problem, std::string_view piece)
{
    return {problem, std::string{piece}, {}, {}};
}

using Pieces = std::variant<std::vector<std::string_view>, SizeListRefusal>;

Pieces piecesOf(std::string_view text)
{
    if (text.find_first_of(";\n") != std::string_view::npos)
        return partedBy(text, ";\n");
    const bool oneRange = text.find(kStepWord) != std::string_view::npos &&
                          std::ranges::count(text, ',') <= 3 && text.find('.') == std::string_view::npos &&
                          text.find(", ") == std::string_view::npos;
    if (oneRange || text.find(',') == std::string_view::npos)
        return std::vector<std::string_view>{text};
    const auto pieces = partedBy(text, ",");
    const bool allPointed = std::ranges::all_of(
        pieces, [](std::string_view piece) { return piece.find('.') != std::string_view::npos; });
    if (hasDecimalComma(text) && !allPointed)
        return refusal(SizeListProblem::CommaOrSeparator, text);
    return pieces;
}

// One figure above 0, or why not.
std::optional<SizeListRefusal> readSize(std::string_view piece, Gap& into)
{
    const GapEntry entry = parseGap(piece);
    if (const auto* problem = std::get_if<EntryProblem>(&entry))
        return SizeListRefusal{SizeListProblem::NotASize, std::string{trimmed(piece)}, *problem, {}};
    into = *std::get_if<Gap>(&entry);
    return std::nullopt;
}

std::optional<SizeListRefusal> addRange(std::string_view piece, std::size_t dash, std::vector<Gap>& sizes)
{
    const auto word = piece.find(kStepWord);
    if (word == std::string_view::npos)
        return refusal(SizeListProblem::StepMissing, piece);
    Gap from;
    Gap to;
    Gap step;
    if (const auto bad = readSize(piece.substr(0, dash), from))
        return bad;
    if (const auto bad = readSize(piece.substr(dash + 1, word - dash - 1), to))
        return bad;
    if (const auto bad = readSize(piece.substr(word + kStepWord.size()), step))
        return bad;
    if (step == Gap{})
        return refusal(SizeListProblem::StepTooSmall, piece);
    if (to <= from)
        return refusal(SizeListProblem::Backwards, piece);
    const std::int32_t span = (to - from).inMicrometres();
    if (span % step.inMicrometres() != 0)
        return refusal(SizeListProblem::StepDoesNotFit, piece);
    if (static_cast<std::size_t>(span / step.inMicrometres()) >= kMostSizes)
        return refusal(SizeListProblem::TooMany, piece);
    for (Gap size = from; size <= to; size = size + step)
        sizes.push_back(size);
    return std::nullopt;
}

std::optional<SizeListRefusal> addPiece(std::string_view piece, std::vector<Gap>& sizes)
{
    // A dash at the front is a sign, which parseGap() refuses by its own name.
    if (const auto dash = piece.find('-', 1); dash != std::string_view::npos)
        return addRange(piece, dash, sizes);
    Gap size;
    if (auto bad = readSize(piece, size))
        return bad;
    sizes.push_back(size);
    return std::nullopt;
}

std::string figures(Gap gap, char decimalMark)
{
    const std::int32_t um = gap.inMicrometres();
    std::string decimals = std::to_string(1000 + um % 1000).substr(1);
    if (decimals.back() == '0')
        decimals.pop_back();
    return std::to_string(um / 1000) + decimalMark + decimals;
}

} // namespace

SizeListEntry parseSizeList(std::string_view typed)
{
    const std::string text = plain(typed);
    const Pieces pieces = piecesOf(text);
    if (const auto* bad = std::get_if<SizeListRefusal>(&pieces))
        return *bad;
    std::vector<Gap> sizes;
    for (const std::string_view piece : *std::get_if<std::vector<std::string_view>>(&pieces)) {
        if (piece.empty())
            continue;
        if (const auto bad = addPiece(piece, sizes))
            return *bad;
        if (sizes.size() > kMostSizes)
            return refusal(SizeListProblem::TooMany, piece);
    }
    if (sizes.empty())
        return refusal(SizeListProblem::Empty, {});
    std::ranges::sort(sizes);
    if (sizes.front() == Gap{})
        return SizeListRefusal{SizeListProblem::NoThickness, {}, {}, sizes.front()};
    if (const auto twice = std::ranges::adjacent_find(sizes); twice != sizes.end())
        return SizeListRefusal{SizeListProblem::Repeated, {}, {}, *twice};
    return sizes;
}

std::string sizeListText(std::span<const Gap> sizes, char decimalMark)
{
    constexpr std::size_t kLongestPlainRun = 3; // a longer run of equal steps is written as a range
    const std::string separator = decimalMark == ',' ? "; " : ", ";
    std::string text;
    for (std::size_t at = 0; at < sizes.size();) {
        std::size_t end = at + 1;
        while (end + 1 < sizes.size() && sizes[end + 1] - sizes[end] == sizes[at + 1] - sizes[at])
            ++end;
        if (!text.empty())
            text += separator;
        text += figures(sizes[at], decimalMark);
        if (end < sizes.size() && end - at + 1 > kLongestPlainRun) {
            text += '-' + figures(sizes[end], decimalMark) + ' ' + std::string{kStepWord} + ' ' +
                    figures(sizes[at + 1] - sizes[at], decimalMark);
            at = end;
        }
        ++at;
    }
    // Alone, "0,5" could be two leaves to its reader.
    if (sizes.size() == 1 && decimalMark == ',')
        text += ';';
    return text;
}

} // namespace rig
