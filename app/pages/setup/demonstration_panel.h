#pragma once

#include "app/pages/setup/reading_bench.h"

namespace rig {

// A joint left part-seated on purpose, with its cautions, to learn where its gap then lies.
class DemonstrationPanel : public ReadingBench
{
    Q_OBJECT

public:
    // The first three outlive it.
    DemonstrationPanel(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent = nullptr);
};

} // namespace rig
