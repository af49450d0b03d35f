#pragma once

#include "core/store/kind_words.h"

#include <string>
#include <vector>

namespace rig {

// One line of a table, before it is written.
using Fields = std::vector<std::string>;

inline void append(Fields& fields, const Fields& more)
{
    fields.insert(fields.end(), more.begin(), more.end());
}

// The word by which the file and the tables know a kind.
template <typename Kind> std::string text(Kind kind)
{
    return std::string{wordOf(kind)};
}

// All of them, as they are told to a reader.
template <typename Kind> std::string wordsOf()
{
    std::string words;
    for (int i = 0; !wordOf(static_cast<Kind>(i)).empty(); ++i)
        words += (i == 0 ? "" : ", ") + text(static_cast<Kind>(i));
    return words;
}

} // namespace rig
