#include "core/exchange/csv.h"
#include "core/exchange/review_tables.h"
#include "tests/support/airframe_in_memory.h"
#include "tests/support/fixed_clock.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>

using namespace rig;
using namespace rig::test;

namespace {

constexpr Day kTablesBegin = dayOf(2024, 3, 1);

// Eight couplings read at forty riggings: one steps, one drifts; on three days all were read with another
// set, which is bent.
class TablesOfAReview : public testing::Test
{
protected:
    TablesOfAReview()
    {
        for (int i = 0; i < 8; ++i)
            told.addCoupling("C" + std::to_string(i), 0.50, kTablesBegin);
        for (int rigging = 1; rigging <= 40; ++rigging) {
            day += std::chrono::days{3};
            told.rig(day);
            for (int i = 0; i < 8; ++i)
                readAt(i, rigging);
        }
    }

    void readAt(int coupling, int rigging)
    {
        static constexpr double kOff[] = {0.01, -0.02, 0.02, 0, -0.01, 0, 0.01};
        const bool isBent = rigging >= 10 && rigging <= 12;
        double gap = 0.505 + kOff[(rigging + 3 * coupling) % 7] + (isBent ? 0.08 : 0);
        if (coupling == 2 && rigging >= 25)
            gap += 0.12;
        if (coupling == 5 && rigging > 20)
            gap += 0.006 * (rigging - 20);
        Reading& reading = told.read(told.facts.couplings[static_cast<std::size_t>(coupling)].id, gap);
        reading.gauge = told.facts.gauges[isBent ? 1 : 0].id;
    }

    std::vector<std::map<std::string, std::string>> rowsOf(const std::string& table) const
    {
        std::vector<std::map<std::string, std::string>> rows;
        const auto lines = csvRows(table, ',');
        for (std::size_t i = 1; i < lines.size(); ++i)
            for (std::size_t j = 0; j < lines[i].fields.size(); ++j) {
                rows.resize(i);
                rows[i - 1][lines[0].fields[j]] = lines[i].fields[j];
            }
        return rows;
    }
    std::map<std::string, std::string> coupling(const std::string& name) const
    {
        const auto rows = rowsOf(reviewCouplingsTable(review()));
        return *std::ranges::find(rows, name, [](const auto& row) { return row.at("coupling"); });
    }
    AirframeReview review() const
    {
        return airframeReviewOf(told.facts, reviewPeriods(told.facts, day).front());
    }

    AirframeInMemory told;
    Day day = kTablesBegin;
};

double number(const std::string& text)
{
    return std::stod(text);
}

} // namespace

TEST_F(TablesOfAReview, TellAStepInMillimetresWithItsPlace)
{
    const auto row = coupling("C2");
    EXPECT_EQ(row.at("movement_kind"), "step");
    EXPECT_GT(number(row.at("movement_chance")), 0.999);
    EXPECT_EQ(number(row.at("movement_at_rigging")), 25);
    EXPECT_LE(number(row.at("movement_at_lower")), 25);
    EXPECT_GE(number(row.at("movement_at_upper")), 25);
    EXPECT_LT(number(row.at("step_lower_mm")), 0.12);
    EXPECT_GT(number(row.at("step_upper_mm")), 0.12);
    EXPECT_EQ(row.at("drift_mm_per_100"), "");
    EXPECT_NEAR(number(row.at("largest_excursion_mm")), 0.12, 0.02);
    EXPECT_GE(number(row.at("movement_flag_rigging")), 25);
    EXPECT_EQ(row.at("signs").find("step"), 0U);
}

TEST_F(TablesOfAReview, TellADriftAsARateAndASteadyCouplingWithoutOne)
{
    const auto row = coupling("C5");
    EXPECT_EQ(row.at("movement_kind"), "drift");
    EXPECT_LT(number(row.at("drift_lower_mm")), 0.6);
    EXPECT_GT(number(row.at("drift_upper_mm")), 0.6);
    EXPECT_EQ(row.at("step_mm"), "");
    const auto still = coupling("C0");
    EXPECT_EQ(still.at("movement_kind"), "steady");
    EXPECT_LT(number(still.at("movement_chance")), 0.95);
    for (const char* empty : {"movement_at_rigging", "step_mm", "drift_mm_per_100", "drift_lower_mm"})
        EXPECT_EQ(still.at(empty), "") << empty;
}

TEST_F(TablesOfAReview, SayWhoseOffsetExplainsADayAndHowLargeItIs)
{
    const AirframeReview all = review();
    for (const auto& row : rowsOf(reviewShiftsTable(told.facts, all))) {
        const bool isBent = number(row.at("rigging")) >= 10 && number(row.at("rigging")) <= 12;
        EXPECT_EQ(row.at("called"), isBent ? "yes" : "no") << row.at("rigging");
        EXPECT_EQ(row.at("explained_by"), isBent ? "gauge" : "") << row.at("rigging");
    }
    const auto measurers = rowsOf(reviewMeasurersTable(told.facts, all));
    const auto bent = std::ranges::find(measurers, "B", [](const auto& row) { return row.at("name"); });
    ASSERT_NE(bent, measurers.end());
    EXPECT_GT(number(bent->at("offset_lower_mm")), 0.04);
    EXPECT_LT(number(bent->at("offset_upper_mm")), 0.12);
}

TEST_F(TablesOfAReview, TellTheReadingsOutsideByTheirRunAndWhatExplainsThem)
{
    int byStep = 0;
    for (const auto& row : rowsOf(reviewOutsideTable(told.facts, review()))) {
        if (row.at("coupling") != "C2" || row.at("explained_by") != "movement")
            continue;
        ++byStep;
        EXPECT_GT(number(row.at("beyond_mm")), 0);
    }
    EXPECT_GT(byStep, 8);
}

TEST_F(TablesOfAReview, ShowNoHourOfAReadingOfATableThatDidNotTellWhen)
{
    Reading& last = told.facts.readings.back().reading;
    last.technique = Technique::Table;
    told.facts.riggingRecords.back().origin = RecordOrigin::ImportedTable;
    const auto readings = rowsOf(reviewReadingsTable(told.facts, review()));
    const auto withTime = [](const auto& rows, const std::string& time) {
        return std::ranges::count_if(rows, [&](auto row) { return row.at("time") == time; });
    };
    EXPECT_EQ(withTime(readings, ""), 1);
    EXPECT_EQ(withTime(rowsOf(reviewRiggingsTable(told.facts, review())), ""), 1);
    last.when.offsetSeconds = 1; // noon was told
    last.when.utcSeconds -= 1;
    EXPECT_EQ(withTime(rowsOf(reviewReadingsTable(told.facts, review())), ""), 0);
}
