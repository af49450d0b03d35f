#pragma once

#include <span>
#include <string_view>

namespace rig::fuzz {

// Each takes whatever bytes there are, as what they stand for would come from outside, and throws
// std::logic_error where something is not as it always has to be. A crash is for the sanitizers to see.

void tables(std::string_view bytes);     // the first line names a table (readings, couplings ...), then it
void calculator(std::string_view bytes); // the first line names a kind of rigband-calc, then its JSON
void typedGap(std::string_view bytes);   // a figure in millimetres
void typedDay(std::string_view bytes);
void sizeList(std::string_view bytes); // leaves of a gauge
void opener(std::string_view bytes);   // a whole file: opened, read, and salvaged where it is damaged

struct Target
{
    std::string_view name; // of its folder in tests/fuzz/corpus too
    void (*take)(std::string_view bytes);
};
std::span<const Target> targets();

} // namespace rig::fuzz
