#include "core/measure/gap_entry.h"

#include "core/measure/typed_text.h"

#include <algorithm>

namespace rig {

namespace {

constexpr bool isSeparator(char c)
{
    return c == '.' || c == ',';
}

// What stands before the figures, when it is a minus: the one of a keyboard or the one of print (U+2212).
std::string_view minusOf(std::string_view text)
{
    for (const std::string_view minus : {"-", "\u2212"})
        if (text.starts_with(minus))
            return text.substr(0, minus.size());
    return {};
}

} // namespace

FigureEntry parseFigure(std::string_view typed, std::int32_t most)
{
    const std::string_view text = trimmed(typed);
    if (text.empty())
        return EntryProblem::Empty;
    const std::string_view minus = minusOf(text);
    const std::string_view figures = text.substr(minus.size());
    if (std::ranges::none_of(figures, isDigit))
        return EntryProblem::NotANumber;
    if (!std::ranges::all_of(figures, [](char c) { return isDigit(c) || isSeparator(c); }))
        return EntryProblem::NotANumber;
    if (std::ranges::count_if(figures, isSeparator) > 1)
        return EntryProblem::TwoSeparators;
    if (!minus.empty())
        return EntryProblem::Negative;

    const auto separator = std::ranges::find_if(figures, isSeparator);
    const std::string_view whole{figures.begin(), separator};
    const std::string_view decimals =
        separator == figures.end() ? std::string_view{} : std::string_view{separator + 1, figures.end()};
    if (decimals.size() > 3)
        return EntryProblem::TooManyDecimals;

    std::int32_t thousandths = 0;
    for (const char c : whole) {
        thousandths = thousandths * 10 + (c - '0') * 1000;
        if (thousandths > most)
            return EntryProblem::TooLarge;
    }
    std::int32_t place = 100;
    for (const char c : decimals) {
        thousandths += (c - '0') * place;
        place /= 10;
    }
    if (thousandths > most)
        return EntryProblem::TooLarge;
    return thousandths;
}

GapEntry parseGap(std::string_view typed)
{
    const FigureEntry entry = parseFigure(typed, kWidestGap.inMicrometres());
    if (const auto* um = std::get_if<std::int32_t>(&entry))
        return Gap::micrometres(*um);
    return std::get<EntryProblem>(entry);
}

} // namespace rig
