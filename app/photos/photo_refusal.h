#pragma once

namespace rig {

// Why a picture was not taken in. `wording/` says what to do about each.
enum class PhotoRefusal {
    CannotOpen,
    TooManyBytes,
    NoPicture,
    OtherFormat, // a picture, of a kind that is not read here
    PhoneFormat, // likewise, as telephones keep theirs (HEIF)
    TooManyPixels,
    EdgeTooLong,
    CutShort,   // the file ends before the picture does
    Unreadable, // it says that it is a picture, and cannot be decoded
};

} // namespace rig
