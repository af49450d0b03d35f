#pragma once

#include "core/progress.h"
#include "core/review/airframe_review.h"

#include <string>
#include <vector>

namespace rig {

struct NamedTable
{
    std::string name; // readings.csv
    std::string text;
};

// All that a review of one period rests on and says, as tables: UTF-8, RFC 4180, lengths in millimetres with
// a point, days as 2026-06-14. docs/import.md describes them. Stopped: not all of them.
std::vector<NamedTable> reviewTables(const AirframeFacts& facts, const AirframeReview& review,
                                     Progress* progress = nullptr);

// Their parts, one table each.
std::string reviewReadingsTable(const AirframeFacts& facts, const AirframeReview& review);
std::string reviewOutsideTable(const AirframeFacts& facts, const AirframeReview& review);
std::string reviewQuestionsTable(const AirframeFacts& facts, const AirframeReview& review);
std::string reviewGaugesTable(const AirframeFacts& facts, const AirframeReview& review);
std::string reviewFittingsTable(const AirframeFacts& facts, const AirframeReview& review);
std::string reviewEventsTable(const AirframeFacts& facts, const AirframeReview& review);
std::string reviewJointPlayTable(const AirframeFacts& facts, const AirframeReview& review);
std::string reviewCouplingsTable(const AirframeReview& review);
std::string reviewMeasurersTable(const AirframeFacts& facts, const AirframeReview& review);
std::string reviewShiftsTable(const AirframeFacts& facts, const AirframeReview& review);
std::string reviewPeriodTable(const AirframeReview& review);
std::string reviewRiggingsTable(const AirframeFacts& facts, const AirframeReview& review);
// From facts.contents: who connected, looks and pulls, the control check, what was measured on the surfaces.
std::string reviewConnectedTable(const AirframeFacts& facts, const AirframeReview& review);
std::string reviewLooksTable(const AirframeFacts& facts, const AirframeReview& review);
std::string reviewControlTable(const AirframeFacts& facts, const AirframeReview& review);
std::string reviewDeflectionsTable(const AirframeFacts& facts, const AirframeReview& review);

} // namespace rig
