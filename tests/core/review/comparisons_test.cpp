#include "core/airframe/id_source.h"
#include "core/review/comparisons.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::literals;

namespace {

// Records in which two persons read one coupling.
class Pairs
{
public:
    // What the second person had written on paper, typed by somebody else.
    Pairs& copied()
    {
        m_all.back().copiedBy = PersonId{{7}};
        return *this;
    }

    Pairs& read(Gap first, std::optional<Gap> second)
    {
        RecordId record;
        record.bytes = m_ids.next(0);
        m_content.record.id = record;
        add(record, Turn::First, first);
        if (second)
            add(record, Turn::Second, *second);
        return *this;
    }

    PersonsSpread spread() const { return personsSpread(m_all, {}); }
    std::optional<numbers::ReadingPair> lastPair() const
    {
        RecordContent content = m_content;
        for (const Reading& reading : m_all)
            if (reading.record == content.record.id)
                content.readings.push_back(reading);
        return pairIn(content, {}, PersonsSpread{kUsualPersonsDeviation, 0});
    }

private:
    void add(RecordId record, Turn turn, Gap enters)
    {
        Reading reading;
        reading.id.bytes = m_ids.next(0);
        reading.record = record;
        reading.turn = turn;
        reading.interval = {enters, enters + 10_um};
        m_all.push_back(reading);
    }

    IdSource m_ids{3};
    RecordContent m_content;
    std::vector<Reading> m_all;
};

Coupling couplingOf(Circuit circuit, Side side, int number)
{
    Coupling coupling;
    coupling.id.bytes[15] = static_cast<std::uint8_t>(number);
    coupling.circuit = circuit;
    coupling.side = side;
    return coupling;
}

} // namespace

TEST(PersonsSpread, IsCommonPracticeUntilTenPairsAreThere)
{
    Pairs pairs;
    for (int i = 0; i < 9; ++i)
        pairs.read(500_um, 520_um);
    EXPECT_EQ(pairs.spread().deviation, kUsualPersonsDeviation);
    EXPECT_EQ(pairs.spread().pairs, 0);
    pairs.read(500_um, std::nullopt).read(500_um, 520_um);
    EXPECT_EQ(pairs.spread().pairs, 10);
    EXPECT_NEAR(pairs.spread().deviation, 0.02 / std::sqrt(2.0), 1e-12);
}

TEST(PersonsSpread, IsNeverFinerThanTheStepOfTheGauge)
{
    Pairs pairs;
    for (int i = 0; i < 12; ++i)
        pairs.read(500_um, 500_um);
    EXPECT_NEAR(pairs.spread().deviation, 0.01 / std::sqrt(12.0), 1e-12);
}

TEST(TwoReadings, DisagreeWhenMeasuringDoesNotExplainTheirDistance)
{
    EXPECT_FALSE(Pairs{}.read(500_um, std::nullopt).lastPair());
    EXPECT_EQ(Pairs{}.read(500_um, 520_um).lastPair()->verdict, numbers::PairVerdict::Agree);
    EXPECT_EQ(Pairs{}.read(500_um, 580_um).lastPair()->verdict, numbers::PairVerdict::Unresolved);
    EXPECT_EQ(Pairs{}.read(500_um, 600_um).lastPair()->verdict, numbers::PairVerdict::Disagree);
    EXPECT_EQ(Pairs{}.read(600_um, 500_um).lastPair()->verdict, numbers::PairVerdict::Disagree);
}

TEST(OtherSide, IsTheOneCouplingOfTheSameCircuitOnTheOtherSide)
{
    const Coupling left = couplingOf(Circuit::Aileron, Side::Left, 1);
    const Coupling right = couplingOf(Circuit::Aileron, Side::Right, 2);
    const Coupling brake = couplingOf(Circuit::Airbrake, Side::Right, 3);
    EXPECT_EQ(otherSideOf(left, std::vector{left, right, brake})->id, right.id);
    EXPECT_FALSE(otherSideOf(brake, std::vector{left, right, brake}));
    const Coupling outer = couplingOf(Circuit::Aileron, Side::Right, 4);
    EXPECT_FALSE(otherSideOf(left, std::vector{left, right, outer})) << "nobody can say which of the two";
}

TEST(PersonsSpread, IsNotLearntFromWhatWasCopied)
{
    Pairs pairs;
    for (int i = 0; i < 2 * kPairsForOwnSpread; ++i)
        pairs.read(500_um, 700_um).copied();
    EXPECT_EQ(pairs.spread().pairs, 0);
    EXPECT_TRUE(pairs.lastPair()) << "that the two differ is still said";
    for (int i = 0; i < kPairsForOwnSpread; ++i)
        pairs.read(500_um, 520_um);
    EXPECT_EQ(pairs.spread().pairs, kPairsForOwnSpread);
}
