#pragma once

#include "core/exchange/document_fault.h"
#include "core/result.h"
#include "core/store/carried.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>

namespace rig {

// A whole file as one JSON document (RFC 8259), and a file made of it that is equal to the one that went out:
// docs/import.md, “Everything as one document”; docs/rigband.schema.json is its JSON Schema. What stands in
// it follows from the descriptions of the facts and is written for no kind by hand.

inline constexpr const char* kDocumentFormat = "rigband";
inline constexpr int kDocumentVersion = 1;
// Of the layout of the file; there are no documents of earlier ones.
inline constexpr int kFirstDocumentLayout = 13;

inline constexpr std::int64_t kMostDocumentBytes = 4'000'000'000;
// Of one text or figure, with its escapes; the largest picture has 5,333,336.
inline constexpr std::size_t kLongestToken = 8'000'000;

// Takes the document piece by piece; false when there is no room for more.
using WriteSome = std::function<bool(std::string_view)>;
// Gives at most so many bytes more; 0 at the end, and -1 where reading fails.
using ReadSome = std::function<std::int64_t(char* into, std::size_t most)>;

// DiskFull where `write` takes no more; DamagedFile, with table, id and column in the detail, where something
// stands in the file that cannot stand there.
Outcome writeDocument(StoreFile::Connection& file, const WriteSome& write);

struct DocumentRead
{
    DocumentFault fault;
    CarriedIn made; // as far as it was looked at
};

// Makes a file at `out` of a document: all of it or nothing. FileExists when something stands there.
Result<DocumentRead> readDocument(const ReadSome& read, const std::string& out, CarryWhat what);

// What a document is, in the words of JSON Schema, draft 2020-12.
std::string documentSchema();

} // namespace rig
