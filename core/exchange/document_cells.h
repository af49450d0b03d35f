#pragma once

#include "core/store/carried.h"

#include <string_view>

namespace rig {

// How a cell of a column is written in a document: the natural type of what stands in it.
enum class WrittenAs { YesOrNo, WholeNumber, Number, Text, Word, Date, Id, Hash, Picture };

inline WrittenAs writtenAs(const ColumnInfo& column)
{
    const auto isRange = [&column](std::int64_t least, std::int64_t most) {
        return column.range.least == least && column.range.most == most;
    };
    switch (column.storage) {
    case Storage::Id:
        return WrittenAs::Id;
    case Storage::Integer:
        return isRange(0, 1) ? WrittenAs::YesOrNo : WrittenAs::WholeNumber;
    case Storage::Real:
        return WrittenAs::Number;
    case Storage::Word:
        return WrittenAs::Word;
    case Storage::Date:
        return WrittenAs::Date;
    case Storage::Bytes:
        return isRange(32, 32) ? WrittenAs::Hash : WrittenAs::Picture; // SHA-256
    case Storage::Text:
        break;
    }
    return WrittenAs::Text;
}

// The two parts of a document that hold rows, in the order in which they go out.
struct DocumentSection
{
    const char* name;
    const std::vector<CarriedTable>& (*tables)();
};
inline constexpr DocumentSection kDocumentSections[] = {{"facts", carriedFacts}, {"chain", carriedChain}};

} // namespace rig
