#pragma once

#include "app/pages/setup/reading_bench.h"

namespace rig {

// Baseline day: cycles of disconnect, clean, connect, confirm, read, with the band narrowing beside them.
class BaselinePanel : public ReadingBench
{
    Q_OBJECT

public:
    // The first three outlive it.
    BaselinePanel(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent = nullptr);
};

} // namespace rig
