#pragma once

#include "core/store/other_file.h"

namespace rig {

// What was handed on, and how far the file had come from which it was taken.
struct HandedOn
{
    FileEnd end;
    FileEnd original;
};

// One airframe with all that belongs to it in a new file at `out`, and with the people and gauges that are
// named in it and nobody else. Its facts are linked anew, as taken over: a chain with holes would hold no
// more. FileExists when something stands at `out`; NotFound without such an airframe.
Result<HandedOn> handOn(OtherFile& whole, AirframeId airframe, const std::string& out);

} // namespace rig
