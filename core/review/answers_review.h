#pragma once

#include "core/review/airframe_facts.h"
#include "core/review/review_period.h"

#include <map>
#include <optional>
#include <vector>

namespace rig {

// What was looked at, pulled and tried at the riggings of a period, beside what was read.

struct LookReview
{
    Coupling coupling;
    int riggings = 0;   // at which anything was answered here
    int wholeFirst = 0; // looked at, pulled and secured whole by the first person
    int wholeSecond = 0;
    int felt = 0; // answers, of either person
    int cannotSee = 0;
    int no = 0;
    int interrupted = 0;
};

struct SurfaceReview
{
    Surface surface;
    int riggings = 0;                               // at which anything was tried
    int whole = 0;                                  // at which everything was tried, and nothing set it back
    int no = 0;                                     // answers, those that were tried again among them
    std::map<MeasureKind, SurfaceMeasure> measured; // the last of each in the period
};

struct AnswersReview
{
    std::vector<LookReview> looks;       // in rigging order, those in use or with any answer
    std::vector<SurfaceReview> surfaces; // in the order of the control check
};

// Those of the period, each as it stood at the close: which answers count then changes no more.
std::vector<RecordContent> contentsAtTheClose(const AirframeFacts& facts, const ReviewPeriod& period);

// From what stands in the records, which has to be read: facts.contents.
AnswersReview answersOf(const AirframeFacts& facts, const ReviewPeriod& period);

} // namespace rig
