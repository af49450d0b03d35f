#pragma once

#include "core/rigging/question.h"
#include "tests/support/hangar.h"

namespace rig::test {

constexpr Day kBaselineWithTwoSets = dayOf(2026, 4, 1);

// The small hangar with a leaf set B that reads 0.10 mm too high. The left aileron's baseline is eight
// readings with A and four with B; a later reading with A lies at 0.65, which only B's readings make usual.
struct QuarantineScene
{
    explicit QuarantineScene(TempStore& file)
        : store{file}, hangar{store.records()}, setB{must(store.records().add(aLeafSet("B")))}
    {
        for (int i = 0; i < 12; ++i)
            read(i < 8 ? (i % 3 ? 500 : 450) : 600, i < 8 ? hangar.setA : setB, kBaselineWithTwoSets,
                 Purpose::Baseline);
    }

    ReadingId read(int entersUm, GaugeId gauge, Day day, Purpose purpose = Purpose::Rigging)
    {
        Reading reading = hangar.reading(between(entersUm, entersUm + 50), noonOf(day));
        reading.gauge = gauge;
        reading.purpose = purpose;
        return must(store.records().add(reading, std::nullopt));
    }

    void check(GaugeId gauge, Day day, std::optional<Day> quarantineFrom = {})
    {
        must(store.records().add(
            GaugeCheck{{}, gauge, day, "micrometer", "as found", quarantineFrom, {hangar.oren, {}}}));
    }

    std::vector<Question> questions() const
    {
        std::vector<Question> all;
        for (const QuestionStory& story : must(store.records().questions(hangar.airframe)))
            all.push_back(story.question);
        return all;
    }

    TempStore& store;
    Hangar hangar;
    GaugeId setB;
};

} // namespace rig::test
