#include "core/numbers/admission.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

using namespace rig::numbers;

namespace {

std::vector<AdmissionFinding> findingsOf(const std::vector<Interval>& readings)
{
    return admissionOf(intervalSetOf(readings));
}

std::vector<Interval> likeReadings(int count)
{
    std::vector<Interval> readings;
    for (int i = 0; i < count; ++i)
        readings.push_back({i % 3 == 0 ? 0.45 : 0.5, i % 3 == 0 ? 0.5 : 0.55});
    return readings;
}

AdmissionFlag flagOfLast(std::vector<Interval> readings, const Interval& last)
{
    readings.push_back(last);
    const auto findings = findingsOf(readings);
    return std::ranges::find(findings, last, &AdmissionFinding::reading)->flag;
}

} // namespace

TEST(Admission, FindsNothingAmongLikeReadings)
{
    const auto findings = findingsOf(likeReadings(10));
    ASSERT_EQ(findings.size(), 2u);
    for (const AdmissionFinding& finding : findings)
        EXPECT_EQ(finding.flag, AdmissionFlag::None);
}

TEST(Admission, FindsAReadingFarFromTheOthers)
{
    EXPECT_EQ(flagOfLast(likeReadings(9), {0.8, 0.85}), AdmissionFlag::Outlier);
    EXPECT_EQ(flagOfLast(likeReadings(9), {0.2, 0.25}), AdmissionFlag::Outlier);
}

TEST(Admission, ComesByWayOfStragglerAsAReadingMovesAway)
{
    AdmissionFlag before = AdmissionFlag::None;
    bool sawStraggler = false;
    for (double lower = 0.5; lower < 0.9; lower += 0.005) {
        const AdmissionFlag flag = flagOfLast(likeReadings(9), {lower, lower + 0.05});
        EXPECT_GE(flag, before) << lower; // the enumerators rise from None to Outlier
        sawStraggler = sawStraggler || flag == AdmissionFlag::Straggler;
        before = flag;
    }
    EXPECT_TRUE(sawStraggler);
    EXPECT_EQ(before, AdmissionFlag::Outlier);
}

TEST(Admission, LetsTwoEqualStrangersHideEachOther)
{
    std::vector<Interval> readings = likeReadings(5);
    readings.insert(readings.end(), 2, {0.8, 0.85});
    const auto findings = findingsOf(readings);
    ASSERT_EQ(findings.size(), 3U) << "one of each different reading";
    for (const AdmissionFinding& finding : findings)
        EXPECT_EQ(finding.flag, AdmissionFlag::None);
}

TEST(Admission, TestsNothingBelowFiveReadings)
{
    const auto findings = findingsOf({{0.5, 0.55}, {0.5, 0.55}, {0.5, 0.55}, {5, 5.05}});
    ASSERT_EQ(findings.size(), 2u);
    for (const AdmissionFinding& finding : findings) {
        EXPECT_EQ(finding.flag, AdmissionFlag::NotTestable);
        EXPECT_FALSE(finding.tail);
    }
}

TEST(Admission, CannotTestTheOnlyReadingWithAnUpperBound)
{
    std::vector<Interval> readings(5, {0.5, std::numeric_limits<double>::infinity()});
    readings.push_back({0.5, 0.55});
    const auto findings = findingsOf(readings);
    ASSERT_EQ(findings.size(), 2u);
    EXPECT_EQ(findings[0].flag, AdmissionFlag::NotTestable);
    EXPECT_NE(findings[1].flag, AdmissionFlag::NotTestable);
}

TEST(Admission, IsEmptyWithoutAPosterior)
{
    EXPECT_TRUE(findingsOf({}).empty());
    EXPECT_TRUE(findingsOf({{0.55, 0.5}}).empty());
}
