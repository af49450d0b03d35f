#include "core/lesson/own_practice.h"
#include "core/lesson/study_plan.h"
#include "tests/support/made_id.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>

using namespace rig;
using namespace rig::test;

namespace {

const std::vector kStudied{madeId<CouplingId>(1), madeId<CouplingId>(2), madeId<CouplingId>(3)};
const std::vector kReaders{madeId<PersonId>(1), madeId<PersonId>(2)};

GapInterval stepAround(double middle, double step = 0.02)
{
    const int enters = static_cast<int>(std::lround((middle - step / 2) * 1000));
    return {Gap::micrometres(enters), Gap::micrometres(enters + static_cast<int>(std::lround(step * 1000)))};
}

std::vector<StudyPlace> drawnPlan(unsigned seed, int repeats = 3)
{
    numbers::Dice dice{seed};
    std::vector<StudyPlace> places = studyPlanOf(madeId<StudyId>(1), kStudied, kReaders, repeats, dice);
    for (std::size_t i = 0; i < places.size(); ++i)
        places[i].id = madeId<StudyPlaceId>(static_cast<int>(i) + 1);
    return places;
}

PracticeReading readAt(const StudyPlace& place, GapInterval interval)
{
    PracticeReading reading;
    reading.coupling = place.coupling;
    reading.person = place.person;
    reading.interval = interval;
    reading.place = place.id;
    return reading;
}

} // namespace

TEST(StudyPlan, HasEveryCouplingReadByEveryPersonAsOftenInARandomOrder)
{
    const std::vector<StudyPlace> places = drawnPlan(1);
    ASSERT_EQ(places.size(), 18U);
    std::map<std::pair<CouplingId, PersonId>, int> times;
    for (std::size_t i = 0; i < places.size(); ++i) {
        EXPECT_EQ(places[i].turn, static_cast<int>(i));
        ++times[{places[i].coupling, places[i].person}];
    }
    EXPECT_EQ(times.size(), 6U);
    for (const auto& [pair, count] : times)
        EXPECT_EQ(count, 3);
    const auto sameOrder = [](const StudyPlace& one, const StudyPlace& other) {
        return one.coupling == other.coupling && one.person == other.person;
    };
    EXPECT_FALSE(std::ranges::equal(places, drawnPlan(2), sameOrder));
    EXPECT_TRUE(std::ranges::equal(places, drawnPlan(1), sameOrder));
}

TEST(StudyPlan, LetsNobodyReadTheSameCouplingTwiceRunning)
{
    int twice = 0;
    for (unsigned seed = 1; seed <= 200; ++seed) {
        const std::vector<StudyPlace> places = drawnPlan(seed);
        for (std::size_t i = 1; i < places.size(); ++i)
            twice += places[i].coupling == places[i - 1].coupling && places[i].person == places[i - 1].person;
    }
    EXPECT_EQ(twice, 0);
}

TEST(StudyResult, IsToldOnceEveryPlaceIsRead)
{
    const std::vector<StudyPlace> places = drawnPlan(1, 2);
    std::vector<PracticeReading> readings;
    for (const StudyPlace& place : places) {
        EXPECT_FALSE(studyResultOf(places, readings).isWhole());
        EXPECT_EQ(nextPlace(places, readings)->id, place.id);
        const double base = 0.4 + 0.2 * place.coupling.bytes[0] + (place.person == kReaders[1] ? 0.03 : 0);
        readings.push_back(readAt(place, stepAround(base + (place.turn % 2 ? 0.005 : -0.005))));
    }
    EXPECT_FALSE(nextPlace(places, readings));
    const StudyResult result = studyResultOf(places, readings);
    EXPECT_TRUE(result.isWhole());
    ASSERT_TRUE(result.figures.study);
    EXPECT_GT(result.figures.study->reproducedSd, result.figures.study->repeatSd);
    readings.back().interval.refuses.reset();
    EXPECT_TRUE(studyResultOf(places, readings).hasOpenReading);
    EXPECT_FALSE(studyResultOf(places, readings).figures.study) << "no middle is made up";
}

TEST(OwnPractice, TellsHowAlikeSomebodyReadsAgain)
{
    std::vector<PracticeReading> own;
    for (const double middle : {0.60, 0.62, 0.64})
        own.push_back(readAt({{}, {}, 0, kStudied[0], kReaders[0], {}}, stepAround(middle)));
    for (const double middle : {0.90, 0.90})
        own.push_back(readAt({{}, {}, 0, kStudied[1], kReaders[0], {}}, stepAround(middle)));
    const OwnPractice practice = ownPracticeOf(own, {});
    EXPECT_EQ(practice.readings, 5);
    ASSERT_TRUE(practice.repeatSd);
    EXPECT_NEAR(*practice.repeatSd, std::sqrt(0.0008 / 3), 1e-9);
    // chi-square, 3 degrees of freedom: 0.2158 and 9.3484 (tables, from memory).
    EXPECT_NEAR(practice.repeatSdInterval->lower, std::sqrt(0.0008 / 9.3484), 1e-5);
    EXPECT_NEAR(practice.repeatSdInterval->upper, std::sqrt(0.0008 / 0.2158), 1e-4);
    EXPECT_FALSE(practice.limitedByStep);
    EXPECT_FALSE(practice.offset) << "there is nobody to compare with";
    EXPECT_FALSE(ownPracticeOf(std::span{own}.first(1), {}).repeatSd);
}

TEST(OwnPractice, TellsHowFarSomebodyReadsFromTheOthers)
{
    std::vector<PracticeReading> own;
    std::vector<OthersReading> others;
    numbers::Dice dice{4};
    for (int i = 0; i < 40; ++i)
        for (const CouplingId coupling : kStudied) {
            const double level = 0.4 + 0.2 * coupling.bytes[0];
            others.push_back({coupling, kReaders[1], stepAround(level + 0.01 * dice.normal()),
                              Day{std::chrono::days{20'000 + i}}});
            if (i < 8) {
                own.push_back(readAt({{}, {}, 0, coupling, kReaders[0], {}},
                                     stepAround(level + 0.03 + 0.01 * dice.normal())));
                own.back().when = noonOf(Day{std::chrono::days{20'000 + i}});
            }
        }
    const OwnPractice practice = ownPracticeOf(own, others);
    ASSERT_TRUE(practice.offset);
    EXPECT_NEAR(*practice.offset, 0.03, 0.006);
    EXPECT_LT(practice.offsetInterval->lower, 0.03);
    EXPECT_GT(practice.offsetInterval->upper, 0.03);
    EXPECT_GT(practice.offsetInterval->lower, 0.015);
}
