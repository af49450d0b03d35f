#pragma once

#include "core/rigging/record_content.h"

namespace rig {

// Without what was added after the record was closed: corrections, strikes, questions and how they were
// closed. Of one that is open, all of it.
RecordContent asAtTheClose(RecordContent content);

} // namespace rig
