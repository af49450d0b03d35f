#pragma once

#include "app/report/record_report.h"
#include "core/clock.h"
#include "core/measure/gap_entry.h"
#include "core/review/record_summary.h"
#include "core/store/records.h"

#include <optional>
#include <string>
#include <variant>

namespace rig {

// A record read afterwards, and who could put a reading right.
struct SummaryView
{
    RecordSummary summary;
    std::vector<Person> persons;
};

struct CorrectionWanted
{
    ReadingId reading;
    GapInterval interval;
    std::string reason;
    PersonId by;
};

// Why what was typed is no reading.
struct NoTwoFigures
{
};
using CorrectionRefusal = std::variant<EntryProblem, GaugeRefusal, IntervalProblem, NoTwoFigures>;

// Facts of a closed record -> its summary; a correction -> a fact. Knows no widget.
class SummaryPresenter
{
public:
    // Both outlive it.
    SummaryPresenter(Records& records, const Clock& clock);

    // Empty when no record of this airframe was closed yet.
    Result<std::optional<RecordId>> lastClosed(AirframeId airframe) const;
    Result<SummaryView> view(AirframeId airframe, RecordId record) const;

    // "0.50 0.55", or the leaf that enters of the gauge that the reading was taken with.
    Result<std::variant<GapInterval, CorrectionRefusal>> intervalFrom(const SummaryReading& reading,
                                                                      const std::string& typed) const;
    // A further reading that takes the place of the one named; outside its band it opens a question.
    // What the right reading is judged as.
    Result<Verdict> correct(const SummaryView& view, const CorrectionWanted& wanted);

    Day today() const { return m_clock.now().localDay(); }

    Outcome print(const SummaryView& view, const QString& path, Paper paper) const;

private:
    Records& m_records;
    const Clock& m_clock;
};

} // namespace rig
