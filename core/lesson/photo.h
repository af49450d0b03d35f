#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"
#include "core/clock.h"

#include <optional>
#include <string>

namespace rig {

// What a photo shows of its coupling.
enum class PhotoOf {
    Locked,
    PartSeated, // brought about on purpose
    Empty,      // no ball in the socket
    Access,     // the hatch, and where to stand
};

// A photo of one coupling, as it was taken into the file: a JPEG without the place and the device it came
// from. Of several of one kind the one saved last is shown.
struct Photo
{
    PhotoId id; // null until saved
    CouplingId coupling;
    PhotoOf of = PhotoOf::Locked;
    Day day; // taken, or taken in where nobody knows
    PersonId person;
    int width = 1; // pixels
    int height = 1;
    std::string note;
    Stamp stamp;
};

struct Jpeg
{
    std::string bytes;
};

// Stands apart from the photo, so that a list of photos is short.
struct PhotoImage
{
    Jpeg jpeg;
};

// One that was drawn and not taken.
struct DrawnPhoto
{
    PhotoImage image;
    int width = 1; // pixels
    int height = 1;
};

// It showed something else than was said, or nothing. It stays in the file and is shown nowhere.
struct PhotoWithdrawn
{
    FactId id; // null until saved
    PhotoId photo;
    PersonId person;
    std::string reason;
    Stamp stamp;
};

} // namespace rig
