// Movements and mixed models against published values and a closed case; tests/data/method holds more, worked
// out apart from this program.

#include "core/numbers/mixed_fit.h"
#include "core/numbers/movement.h"
#include "tests/support/oracle.h"

using namespace rig::numbers;
using namespace rig::tests;
using nlohmann::json;

namespace {

std::vector<SeriesReading> exactSeries(const std::vector<double>& values)
{
    std::vector<SeriesReading> series;
    for (const double value : values)
        series.push_back({{value, value}, static_cast<double>(series.size() + 1)});
    return series;
}

// A table of rows (groups) and columns (a fixed factor), the first column as the level of all.
struct Table
{
    std::vector<GroupedValue> values;
    std::vector<Column> columns;
};

Table tableOf(const std::vector<std::vector<double>>& rows)
{
    Table table;
    table.columns.resize(rows.front().size());
    for (std::size_t row = 0; row < rows.size(); ++row)
        for (std::size_t column = 0; column < rows[row].size(); ++column) {
            table.values.push_back({rows[row][column], 1, static_cast<int>(row)});
            for (std::size_t k = 0; k < table.columns.size(); ++k)
                table.columns[k].push_back(k == 0 || k == column ? 1 : 0);
        }
    return table;
}

// Without the ways that have a second change, which the oracle does not know; their prior taken back.
Movement withoutSecond(Movement movement)
{
    const double none = movement.second.moved() > 0 ? 0.9 : 1;
    std::erase_if(movement.ways,
                  [](const MovementWay& way) { return way.changes[1].kind != MovementKind::Steady; });
    movement.first = {0, 0, 0};
    double sum = 0;
    for (MovementWay& way : movement.ways) {
        way.chance /= way.changes[0].kind == MovementKind::Steady ? 1 : none;
        sum += way.chance;
    }
    for (MovementWay& way : movement.ways) {
        way.chance /= sum;
        const MovementKind kind = way.changes[0].kind;
        (kind == MovementKind::Steady ? movement.first.steady
         : kind == MovementKind::Step ? movement.first.step
                                      : movement.first.drift) += way.chance;
    }
    return movement;
}

std::vector<SeriesReading> seriesIn(const json& input)
{
    std::vector<SeriesReading> series;
    for (std::size_t i = 0; i < input["readings"].size(); ++i)
        series.push_back({intervalOf(input["readings"][i]), boundOf(input["rigging"][i], 0)});
    return series;
}

} // namespace

// Every place fitted by general optimisation of the exact likelihood (tests/data/make_season.py). Chances
// within the file's 0.01: places that weigh less than a thousandth are only approximated here. Sizes within a
// sixtieth of a scatter.
TEST_OF_CASES(Method, MovementOracle, Agrees, oracleCases("season/movement.json"))
{
    const json& expected = oneCase["expected"];
    const auto found = movementOf(seriesIn(oneCase["input"]));
    ASSERT_TRUE(found);
    const Movement movement = withoutSecond(*found);
    EXPECT_EQ(movement.readings, expected["n"].get<int>());
    const double allowed = oneCase["tolerance"]["chance_abs"];
    EXPECT_NEAR(movement.first.steady, expected["chance"]["steady"].get<double>(), allowed);
    EXPECT_NEAR(movement.first.step, expected["chance"]["step"].get<double>(), allowed);
    EXPECT_NEAR(movement.first.drift, expected["chance"]["drift"].get<double>(), allowed);
    const std::string likeliest = expected["likeliest"];
    const MovementKind kind = likeliest == "step" ? MovementKind::Step : MovementKind::Drift;
    const json& told = expected[likeliest];
    const auto place = placeOf(movement, kind);
    ASSERT_TRUE(place);
    EXPECT_EQ(place->mode, told["at"].get<double>());
    EXPECT_EQ(place->set, told["at_set"].get<std::vector<double>>());
    double size = 0;
    double chance = 0;
    for (const MovementWay& way : movement.ways)
        if (way.changes[0].kind == kind) {
            size += way.chance * way.coefficients[1];
            chance += way.chance;
        }
    EXPECT_NEAR(size / chance, told["mean_size"].get<double>(),
                oneCase["tolerance"][likeliest == "step" ? "size_mm" : "rate_mm"].get<double>());
}

// Annual flow of the Nile at Aswan 1871-1970 (tests/data/published/trend_and_change.json): the well-known
// step after 1898, of some 250 (1e8 m^3) down (Cobb 1978, Biometrika 65, from memory: 1097.75 before and
// 849.97 after, means of the data). In units of 1e12 m^3 it has the size of a gap in mm, and the floor of
// sigma stays below its scatter. The size is held to a tenth of its standard error, for the wild share and
// the neighbouring places.
TEST(PublishedMovement, OfTheNileIsAStepOf1899)
{
    std::vector<double> flow = publishedCase("trend_and_change.json", "trend-nile")["data"]["x"];
    for (double& one : flow)
        one /= 1e4;
    const auto movement = movementOf(exactSeries(flow));
    ASSERT_TRUE(movement);
    EXPECT_TRUE(isMovementTold(*movement, false));
    EXPECT_GT(movement->first.step, kKindNamed);
    const auto place = placeOf(*movement, MovementKind::Step);
    ASSERT_TRUE(place);
    EXPECT_EQ(place->mode, 29); // the first year of the lower level: 1899
    EXPECT_LE(place->upper() - place->lower(), 6);
    const double before = 1097.75 / 1e4;
    const double after = 849.97 / 1e4;
    const auto size = sizeOf(*movement, MovementKind::Step);
    ASSERT_TRUE(size);
    EXPECT_NEAR(size->estimate, after - before, 0.0003);
    EXPECT_LT(size->interval.upper, -0.018);
    EXPECT_GT(size->interval.lower, -0.031);
}

// A hinge with noise that is orthogonal to level, slope and corner: least squares finds the corner's line
// itself. The noise comes in blocks of four, +-+- turned to +--+, which add up to 0 against a constant and a
// line within each block; the corner lies between blocks. Held to 1e-5 mm, what the wild share takes off.
TEST(ClosedMovement, OfAHingeIsItsLine)
{
    std::vector<double> values;
    for (int rigging = 1; rigging <= 60; ++rigging) {
        const int place = (rigging - 1) % 4;
        const double noise = place == 0 || place == 3 ? 0.012 : -0.012;
        values.push_back(0.5 + 0.004 * std::max(0, rigging - 24) + noise);
    }
    const auto movement = movementOf(exactSeries(values));
    ASSERT_TRUE(movement);
    EXPECT_GT(movement->first.drift, 0.999);
    const auto atCorner = std::ranges::find_if(movement->ways, [](const MovementWay& way) {
        return way.changes[0].kind == MovementKind::Drift && way.changes[0].at == 24 &&
               way.changes[1].kind == MovementKind::Steady;
    });
    ASSERT_NE(atCorner, movement->ways.end());
    EXPECT_NEAR(atCorner->coefficients[0], 0.5, 1e-5);
    EXPECT_NEAR(atCorner->coefficients[1], 0.4, 1e-3);
    EXPECT_NEAR(atCorner->sigma, 0.012 * std::sqrt(60.0 / 58.0), 1e-5);
}

// Four stools, nine subjects (Pinheiro & Bates 2000, Mixed-Effects Models in S and S-PLUS, 1.2; R's nlme,
// ergoStool). Data from memory; its row and column sums and its analysis of variance (error 1.210648 on 24,
// subjects 8.3125 on 8) agree with those printed. REML: deviations 1.332465 and 1.100295, ln likelihood
// -60.6, effects 8.556, 3.889, 2.222, 0.667 with errors 0.576 and 0.519 on 24 degrees of freedom. Held to
// half a last digit of what is printed.
TEST(PublishedMixedModel, OfFourStools)
{
    const Table table = tableOf({{12, 15, 12, 10},
                                 {10, 14, 13, 12},
                                 {7, 14, 13, 9},
                                 {7, 11, 10, 9},
                                 {8, 11, 8, 7},
                                 {9, 11, 11, 10},
                                 {8, 12, 12, 11},
                                 {7, 11, 8, 7},
                                 {9, 13, 10, 8}});
    const auto fit = MixedFit::of(table.values, table.columns);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(std::sqrt(fit->groupVariance()), 1.332465, 5e-7);
    EXPECT_NEAR(std::sqrt(fit->residualVariance()), 1.100295, 5e-7);
    EXPECT_NEAR(fit->logLikelihood(), -60.6, 0.05);
    const double printed[] = {8.556, 3.889, 2.222, 0.667};
    for (std::size_t i = 0; i < 4; ++i) {
        std::vector<double> along(4, 0.0);
        along[i] = 1;
        const MixedContrast effect = fit->contrast(along);
        EXPECT_NEAR(effect.estimate, printed[i], 5e-4);
        EXPECT_NEAR(effect.standardError, i == 0 ? 0.576 : 0.519, 5e-4);
        if (i > 0) {
            EXPECT_NEAR(effect.degreesOfFreedom, 24, 1e-4);
        }
    }
}

// Satterthwaite's degrees of freedom as the library lmerTest prints them (its test zlmerTest_zeroDenom,
// biomass ~ CO2 * nutrients + (1 | chamber)): four chambers, two to a CO2, six nutrients; variances 0.2437
// and 1.5797, the intercept's error 0.9548 on 11.0163, a nutrient's difference 1.2568 on 10. The table is
// balanced, so these follow from its two mean squares, 3.0419 on 2 and 1.5797 on 10; values that have them
// are made here. The printed variances are rounded: the degrees of freedom are held to 0.01, errors to a last
// digit.
TEST(PublishedMixedModel, HasLmerTestsDegreesOfFreedom)
{
    const double chamber =
        std::sqrt((1.5797 + 6 * 0.2437) / 12); // half the difference of two chambers of a CO2
    // Within a CO2 what is left is plus and minus in its two chambers and adds up to 0 over nutrients: 10
    // degrees of freedom over all, sum of squares 4 * 6 * rest^2.
    const double rest = std::sqrt(10 * 1.5797 / 24);
    Table table;
    table.columns.resize(12);
    for (int box = 0; box < 4; ++box)
        for (int nutrient = 0; nutrient < 6; ++nutrient) {
            const double side = box % 2 == 0 ? 1 : -1;
            table.values.push_back({side * (chamber + (nutrient % 2 == 0 ? rest : -rest)), 1, box});
            for (int k = 0; k < 12; ++k) {
                const bool isOfOther = k >= 6;
                const bool isCo2 = !isOfOther || box >= 2;
                const bool isNutrient = k % 6 == 0 || k % 6 == nutrient;
                table.columns[static_cast<std::size_t>(k)].push_back(isCo2 && isNutrient ? 1 : 0);
            }
        }
    const auto fit = MixedFit::of(table.values, table.columns);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->groupVariance(), 0.2437, 1e-4);
    EXPECT_NEAR(fit->residualVariance(), 1.5797, 1e-4);
    std::vector<double> along(12, 0.0);
    along[0] = 1;
    const MixedContrast intercept = fit->contrast(along);
    EXPECT_NEAR(intercept.standardError, 0.9548, 1e-4);
    EXPECT_NEAR(intercept.degreesOfFreedom, 11.0163, 0.01);
    along[0] = 0;
    along[1] = 1;
    const MixedContrast nutrient = fit->contrast(along);
    EXPECT_NEAR(nutrient.standardError, 1.2568, 1e-4);
    EXPECT_NEAR(nutrient.degreesOfFreedom, 10, 1e-3);
}
