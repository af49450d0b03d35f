#include "app/pages/setup/quarantine_questions.h"

#include "core/store/ask.h"

#include <algorithm>

namespace rig {

Outcome askAboutQuarantine(Records& records, const GaugeCheck& check)
{
    if (!check.quarantineFrom)
        return Done{};
    const auto airframes = records.airframes();
    if (!airframes)
        return airframes.problem();
    for (const Airframe& airframe : airframes.value()) {
        const auto readings = records.readings(airframe.id);
        if (!readings)
            return readings.problem();
        const bool isConcerned = std::ranges::any_of(readings.value(), [&check](const KeptReading& kept) {
            return kept.reading.gauge == check.gauge && kept.reading.when.localDay() >= *check.quarantineFrom;
        });
        if (!isConcerned)
            continue;
        Question question;
        question.airframe = airframe.id;
        question.kind = QuestionKind::GaugeQuarantined;
        question.gauge = check.gauge;
        question.stamp = check.stamp;
        if (const Outcome asked = ask(records, question); !asked)
            return asked;
    }
    return Done{};
}

} // namespace rig
