#pragma once

#include "core/review/airframe_facts.h"
#include "core/review/coupling_history.h"
#include "core/review/rigging_numbers.h"

#include <optional>
#include <string>
#include <vector>

namespace rig {

// One reading of the file with all that can be said of it now.
struct JudgedReading
{
    Reading reading;
    std::optional<Shown> shown;   // as it was shown at the time
    std::optional<int> rigging;   // its number; empty outside the riggings
    Judgement judgement;          // worked out anew; of no meaning for a part-seated one
    std::optional<double> score;  // against its own fitting's band; empty without one, or part-seated
    bool inDoubt = false;         // its gauge was in quarantine on its day
    bool ofBaseline = false;      // its fitting's band is made of it
    bool superseded = false;      // another one took its place
    std::string supersededReason; //
    bool struck = false;          // it was a slip, and nothing took its place
    std::string struckReason;     //
    bool leftOut = false;         // of the band, by a person
    std::string leftOutReason;

    // Struck through wherever it is listed: it says nothing any more.
    bool isStruckThrough() const { return superseded || struck; }
};

// Those of one coupling up to the end of a day, superseded ones among them; oldest first. `history` is made
// of the same facts.
std::vector<JudgedReading> judgedReadingsOf(const CouplingHistory& history, const AirframeFacts& facts,
                                            const RiggingNumbers& numbers, Day last);

// Every reading up to the end of a day, of every coupling, superseded ones and couplings out of use among
// them; oldest first.
std::vector<JudgedReading> judgedReadings(const AirframeFacts& facts, Day last);

} // namespace rig
