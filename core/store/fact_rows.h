#pragma once

#include "core/store/records.h"
#include "core/store/row.h"

namespace rig {

// One fact from one row, its columns in the order of the SELECT in records_read.cpp.
Airframe airframeFrom(Row& row);
Person personFrom(Row& row);
GaugeCheck gaugeCheckFrom(Row& row);
Coupling couplingFrom(Row& row);
Fitting fittingFrom(Row& row);
Event eventFrom(Row& row);
RiggingRecord recordFrom(Row& row);
Check checkFrom(Row& row);
Interruption interruptionFrom(Row& row);
RecordClose closingFrom(Row& row);
Exclusion exclusionFrom(Row& row);
FrozenBaseline baselineFrom(Row& row);
Reading readingFrom(Row& row);
KeptReading keptReadingFrom(Row& row);
Surface surfaceFrom(Row& row);
SurfaceCheck surfaceCheckFrom(Row& row);
SurfaceMeasure surfaceMeasureFrom(Row& row);
RecordTick tickFrom(Row& row);
// The question, and its resolution where there is one.
QuestionStory questionStoryFrom(Row& row);

} // namespace rig
