#include "core/baseline/admitted.h"
#include "core/exchange/csv.h"
#include "core/exchange/tables_out.h"
#include "core/review/airframe_review.h"
#include "core/review/answers_review.h"
#include "core/rigging/counts_as.h"
#include "core/store/airframe_facts.h"

#include <algorithm>

namespace rig {

namespace {

// At riggings: a corrected one counts as what it was corrected to, a struck one not at all.
std::ptrdiff_t foundAs(SeatState state, const AirframeFacts& facts, CouplingId coupling, Day today)
{
    return std::ranges::count_if(
        standing(facts.readingsOf(coupling), facts.exclusions), [state, today](const Reading& one) {
            return one.state == state && countsAs(one.purpose).rigging && one.when.localDay() <= today;
        });
}

int noAnswersOf(const AnswersReview& answers, CouplingId coupling)
{
    for (const LookReview& look : answers.looks)
        if (look.coupling.id == coupling)
            return look.no;
    return 0;
}

std::string countsOf(const AirframeFacts& facts, Day today)
{
    const ReviewPeriod whole = reviewPeriods(facts, today).back();
    const AirframeReview review = airframeReviewOf(facts, whole);
    const AnswersReview answers = answersOf(facts, whole);
    std::string lines;
    for (const Coupling& coupling : facts.couplings) { // the review has them in the order of what stands out
        const CouplingReview* one = review.find(coupling.id);
        if (!one)
            continue;
        const int riggings = review.counts.riggings;
        const int read = hasGap(coupling) ? riggings - one->riggingsMissed : 0;
        const auto partSeated = foundAs(SeatState::PartSeated, facts, coupling.id, today);
        const auto notSecured = foundAs(SeatState::NotSecured, facts, coupling.id, today);
        lines += csvLine({facts.airframe.registration, coupling.name, std::to_string(riggings),
                          std::to_string(read), std::to_string(one->counts.all()),
                          std::to_string(one->counts.outside), std::to_string(partSeated),
                          std::to_string(noAnswersOf(answers, coupling.id)), std::to_string(notSecured)});
    }
    return lines;
}

} // namespace

Result<std::string> writeCounts(const Records& records, Day today)
{
    const auto airframes = records.airframes();
    if (!airframes)
        return airframes.problem();
    std::string table = csvLine({"airframe", "coupling", "riggings", "riggings_read", "readings", "outside",
                                 "found_part_seated", "no_answers", "found_not_secured"});
    for (const Airframe& airframe : airframes.value()) {
        AirframeFacts facts;
        Problem problem;
        if (!take(factsOf(records, airframe.id), facts, problem))
            return problem;
        if (const Outcome read = readContents(records, facts); !read)
            return read.problem();
        table += countsOf(facts, today);
    }
    return table;
}

} // namespace rig
