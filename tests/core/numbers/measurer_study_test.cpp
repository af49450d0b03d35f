#include "core/numbers/measurer_study.h"
#include "tests/support/odd_numbers.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

using namespace rig::numbers;
using namespace rig::tests;

namespace {

using StudyReadings = std::vector<StudyReading>;

// Two parts, two persons, two readings each; the second person reads 0.02 higher.
StudyReadings aStudy()
{
    return {{0.50, 1, 1}, {0.51, 1, 1}, {0.52, 1, 2}, {0.53, 1, 2},
            {0.70, 2, 1}, {0.71, 2, 1}, {0.72, 2, 2}, {0.73, 2, 2}};
}

StudyStatus studyStatus(const StudyReadings& readings, double step = 0)
{
    const MeasurerStudyResult result = measurerStudy(readings, step);
    EXPECT_EQ(result.study.has_value(), result.status == StudyStatus::Ok);
    return result.status;
}

} // namespace

// By hand: cells scatter by 0.01 about their mean, part means differ by 0.2 and person means by 0.02, without
// interaction.
TEST(MeasurerStudy, TellsPersonsFromRepeats)
{
    const auto study = measurerStudy(aStudy()).study;
    ASSERT_TRUE(study);
    EXPECT_EQ(study->parts.df, 1);
    EXPECT_EQ(study->persons.df, 1);
    EXPECT_EQ(study->interaction.df, 1);
    EXPECT_EQ(study->repeats.df, 4);
    EXPECT_NEAR(study->parts.meanSquare, 0.08, 1e-15);     // 8 x 0.1^2
    EXPECT_NEAR(study->persons.meanSquare, 0.0008, 1e-15); // 8 x 0.01^2
    EXPECT_NEAR(study->interaction.meanSquare, 0, 1e-15);
    EXPECT_NEAR(study->repeats.meanSquare, 5e-5, 1e-15); // 8 x 0.005^2 / 4
    EXPECT_EQ(study->interactionVariance, 0);
    EXPECT_NEAR(study->personVariance, 0.0002, 1e-15);
    EXPECT_NEAR(study->partVariance, 0.02, 1e-15);
    EXPECT_NEAR(study->repeatSd, std::sqrt(5e-5), 1e-14);
    EXPECT_NEAR(study->reproducedSd, std::sqrt(25e-5), 1e-14);
    EXPECT_NEAR(study->repeatLimit, 2.8 * std::sqrt(5e-5), 1e-14);
    EXPECT_NEAR(study->reproducedLimit, 2.8 * std::sqrt(25e-5), 1e-14);
    EXPECT_FALSE(study->limitedByStep);
}

TEST(MeasurerStudy, DoesNotDependOnTheOrderOfReadingsNorOnTheLabels)
{
    const auto study = measurerStudy(aStudy()).study;
    StudyReadings shuffled = aStudy();
    std::ranges::reverse(shuffled);
    std::swap(shuffled[1], shuffled[6]);
    for (StudyReading& reading : shuffled) {
        reading.part = reading.part == 1 ? -40 : 7;
        reading.person = reading.person == 1 ? 12 : 300;
    }
    const auto same = measurerStudy(shuffled).study;
    ASSERT_TRUE(study && same);
    EXPECT_EQ(same->repeatSd, study->repeatSd);
    EXPECT_EQ(same->reproducedSd, study->reproducedSd);
    EXPECT_EQ(same->parts.meanSquare, study->parts.meanSquare);
    EXPECT_EQ(same->persons.meanSquare, study->persons.meanSquare);
}

TEST(MeasurerStudy, SaysWhyThereIsNone)
{
    EXPECT_EQ(studyStatus({}), StudyStatus::TooFewParts);
    EXPECT_EQ(studyStatus({{1, 1, 1}, {1, 1, 2}}), StudyStatus::TooFewParts);
    EXPECT_EQ(studyStatus({{1, 1, 1}, {1, 2, 1}}), StudyStatus::TooFewPersons);
    EXPECT_EQ(studyStatus({{1, 1, 1}, {1, 1, 2}, {1, 2, 1}, {1, 2, 2}}), StudyStatus::TooFewRepeats);
    EXPECT_EQ(studyStatus({{1, 1, 1}, {1, 2, 2}}), StudyStatus::Unbalanced);

    StudyReadings oneLess = aStudy();
    oneLess.pop_back();
    EXPECT_EQ(studyStatus(oneLess), StudyStatus::Unbalanced);
    StudyReadings wrongPerson = aStudy();
    wrongPerson[7].person = 1;
    EXPECT_EQ(studyStatus(wrongPerson), StudyStatus::Unbalanced);
    StudyReadings noNumber = aStudy();
    noNumber[3].value = kNotANumber;
    EXPECT_EQ(studyStatus(noNumber), StudyStatus::NotANumber);
    for (const double step : {-0.01, kNotANumber, std::numeric_limits<double>::infinity()})
        EXPECT_EQ(studyStatus(aStudy(), step), StudyStatus::NotANumber);
}

TEST(MeasurerStudy, OfHugeReadingsIsOutOfRangeAndOfTinyOnesIsNot)
{
    StudyReadings huge = aStudy();
    StudyReadings tiny = aStudy();
    for (std::size_t i = 0; i < huge.size(); ++i) {
        huge[i].value *= 1e200;
        tiny[i].value *= 1e-200;
    }
    EXPECT_EQ(studyStatus(huge), StudyStatus::OutOfRange);
    const auto study = measurerStudy(tiny).study;
    ASSERT_TRUE(study);
    EXPECT_NEAR(study->repeatSd / 1e-200, std::sqrt(5e-5), 1e-14);
}

TEST(MeasurerStudy, OfEqualReadingsHasNoF)
{
    StudyReadings equal = aStudy();
    for (StudyReading& reading : equal)
        reading.value = 0.1;
    const auto study = measurerStudy(equal).study;
    ASSERT_TRUE(study);
    EXPECT_EQ(study->repeatSd, 0);
    EXPECT_FALSE(study->interactionF);
    EXPECT_FALSE(study->interactionP);
}

// A person who reads the same leaf each time seems to err by nothing; the leaf's own step remains.
TEST(MeasurerStudy, IsLimitedByTheStepOfTheGauge)
{
    StudyReadings sameLeaf = aStudy();
    for (StudyReading& reading : sameLeaf)
        reading.value = reading.part == 1 ? 0.525 : 0.725;
    const auto study = measurerStudy(sameLeaf, 0.05).study;
    ASSERT_TRUE(study);
    EXPECT_TRUE(study->limitedByStep);
    EXPECT_EQ(study->repeatSd, 0);
    const double limit = 2.8 * 0.05 / std::sqrt(12);
    EXPECT_NEAR(study->repeatLimit, limit, 1e-15);
    EXPECT_NEAR(study->reproducedLimit, limit, 1e-15);
}

TEST(MeasurerStudy, PutsTheStepIntoBothLimitsBesideThePersons)
{
    const auto study = measurerStudy(aStudy(), 0.05).study; // 0.05 / sqrt(12) = 0.0144 > 0.0071
    ASSERT_TRUE(study);
    EXPECT_TRUE(study->limitedByStep);
    EXPECT_NEAR(study->repeatSd, std::sqrt(5e-5), 1e-14); // as it was found
    EXPECT_NEAR(study->reproducedSd, std::sqrt(25e-5), 1e-14);
    EXPECT_NEAR(study->repeatLimit, 2.8 * 0.05 / std::sqrt(12), 1e-14);
    EXPECT_NEAR(study->reproducedLimit, 2.8 * std::sqrt(0.0025 / 12 + 0.0002), 1e-14);

    const auto fine = measurerStudy(aStudy(), 0.01).study;
    ASSERT_TRUE(fine);
    EXPECT_FALSE(fine->limitedByStep);
    EXPECT_NEAR(fine->repeatLimit, 2.8 * std::sqrt(5e-5), 1e-14);
}

TEST(LimitForMeans, OfSingleReadingsIsTheLimitItselfAndShrinksWithMore)
{
    EXPECT_EQ(limitForMeans(0.03, 0.05, 1, 1), 0.05);
    EXPECT_NEAR(limitForMeans(0.03, 0.05, 2, 3).value(), std::sqrt(0.0025 - 0.0009 * (1 - 0.25 - 1.0 / 6)),
                1e-15);
    EXPECT_NEAR(limitForMeans(0.05, 0.05, 4, 4).value(), 0.025, 1e-15); // no difference between persons
    EXPECT_EQ(limitForMeans(0, 0.05, 4, 4), 0.05);                      // nothing to average out
    EXPECT_EQ(limitForMeans(0, 0, 1, 1), 0);
}

TEST(LimitForMeans, RefusesWhatIsNoPairOfLimits)
{
    EXPECT_FALSE(limitForMeans(0.06, 0.05, 1, 1));
    EXPECT_FALSE(limitForMeans(-0.01, 0.05, 1, 1));
    EXPECT_FALSE(limitForMeans(kNotANumber, 0.05, 1, 1));
    EXPECT_FALSE(limitForMeans(0.03, kNotANumber, 1, 1));
    EXPECT_FALSE(limitForMeans(0.03, 0.05, 0, 1));
    EXPECT_FALSE(limitForMeans(0.03, 0.05, 1, 0));
}
