#pragma once

#include "app/report/review_parts.h"

namespace rig::engineer {

using FactRows = std::vector<std::vector<Cell>>;

// What is told of every coupling, short: how it stands, its band, its readings and how they move. What cannot
// be known is said to be unknown.
FactRows figuresOf(const Source& source, const CouplingReview& one);

// The same at length, for a coupling that stands out.
FactRows figuresAtLength(const Source& source, const CouplingReview& one);

std::vector<Cell> factRow(const QString& what, const QStringList& sentences);

} // namespace rig::engineer
