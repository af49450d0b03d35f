#pragma once

#include <cstdint>
#include <string>

namespace rig {

enum class DocumentProblem {
    None,
    CannotRead,
    EndsEarly,
    NotJson,
    TooLong, // a text or a figure
    NotOurs, // does not begin with the name of the format
    Newer,   // of a version or a layout that this program does not know
    MissingKey,
    UnknownKey,
    UnknownKind,
    LaterLayout, // `key` came with a later layout than `named`, which the document says it has
    KeyTwice,
    WrongType, // something else belongs there
    OutOfRange,
    UnknownWord,
    NotADay,
    IdTwice,
    CannotStand, // its cells contradict one another
    LostReference,
    OtherSubject, // a version says that it is one of something else, and is named as what it was
};

// What is wrong with a document, and where.
struct DocumentFault
{
    DocumentProblem problem = DocumentProblem::None;
    std::int64_t line = 0; // counted from 1
    std::string kind = {}; // a table
    std::string id = {};   // of the fact; empty where it is not known yet
    std::string key = {};
    std::string named = {}; // of LostReference the kind that `key` names, of LaterLayout the layout
};

} // namespace rig
