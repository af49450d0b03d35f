#pragma once

#include "core/exchange/document.h"
#include "tests/support/must.h"

#include <string>

namespace rig::test {

// Writes a file as a document and makes a new one of it at `out`, whatever is named in it that is not there.
inline void throughADocument(StoreFile::Connection& file, const std::string& out)
{
    std::string text;
    must(writeDocument(file, [&text](std::string_view more) {
        text += more;
        return true;
    }));
    std::size_t at = 0;
    const ReadSome read = [&](char* into, std::size_t most) {
        const std::size_t size = text.copy(into, most, at);
        at += size;
        return static_cast<std::int64_t>(size);
    };
    EXPECT_TRUE(must(readDocument(read, out, CarryWhat::AllAsFound)).made.isMade);
}

} // namespace rig::test
