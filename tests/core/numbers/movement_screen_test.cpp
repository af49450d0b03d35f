#include "core/numbers/movement_screen.h"

#include <cmath>
#include <gtest/gtest.h>
#include <utility>

using namespace rig::numbers;

namespace {

using enum MovementKind;

struct Scene
{
    std::vector<PseudoReading> readings;
    std::vector<double> riggings;
};

Scene scene()
{
    Scene scene;
    for (int i = 0; i < 30; ++i) {
        scene.readings.push_back(
            {1 + 0.3 * std::sin(i), 0.5 + 0.01 * std::cos(3.1 * i) + (i > 17 ? 0.04 : 0), 1});
        scene.riggings.push_back(i < 6 ? 0 : 1.5 * (i - 5));
    }
    return scene;
}

double shapeAt(const Scene& scene, ChangePlace place, std::size_t i)
{
    if (place.kind == Steady)
        return 0;
    if (place.kind == Step)
        return i >= place.index ? 1 : 0;
    return std::max(0.0, scene.riggings[i] - scene.riggings[place.index]) / kRateUnit;
}

double squaresOf(const Scene& scene, const Vector3& coefficients, ChangePlace first, ChangePlace second)
{
    double sum = 0;
    for (std::size_t i = 0; i < scene.readings.size(); ++i) {
        const double left = scene.readings[i].value - coefficients[0] -
                            coefficients[1] * shapeAt(scene, first, i) -
                            coefficients[2] * shapeAt(scene, second, i);
        sum += scene.readings[i].weight * left * left;
    }
    return sum;
}

const std::vector<std::pair<ChangePlace, ChangePlace>> kPlaces{
    {{}, {}},
    {{Step, 12}, {}},
    {{Drift, 12}, {}},
    {{Step, 11}, {Step, 20}},
    {{Step, 11}, {Drift, 20}},
    {{Drift, 11}, {Step, 20}},
    {{Drift, 11}, {Drift, 20}},
};

} // namespace

TEST(MovementScreen, LeavesTheLeastSquares)
{
    const Scene all = scene();
    const MovementScreen screen{all.readings, all.riggings};
    for (const auto& [first, second] : kPlaces) {
        const auto solution = screen.solved(first, second);
        const double least = squaresOf(all, solution.coefficients, first, second);
        EXPECT_NEAR(solution.squares, least, 1e-12);
        EXPECT_NEAR(screen.squaresLeft(first, second), least, 1e-12);
        for (std::size_t i = 0; i < 3; ++i)
            for (const double step : {-0.001, 0.001}) {
                Vector3 other = solution.coefficients;
                other[i] += step;
                EXPECT_GE(squaresOf(all, other, first, second), least);
            }
    }
}

TEST(MovementScreen, HasNoSolutionWhereNothingHoldsAChange)
{
    Scene all = scene();
    for (std::size_t i = 20; i < 30; ++i)
        all.readings[i].weight = 0;
    const MovementScreen screen{all.readings, all.riggings};
    EXPECT_EQ(screen.squaresLeft({Step, 22}), kInfinity);
    EXPECT_EQ(screen.solved({Drift, 22}).squares, kInfinity);
}
