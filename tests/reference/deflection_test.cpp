// Angles and travels of a surface about its hinge (tests/data/published/control_surface_geometry.json): plane
// trigonometry, worked out apart from this program. The tolerances are the file's own: what its twelve
// printed digits leave, and for free play one more.

#include "core/numbers/deflection.h"
#include "tests/support/oracle.h"

#include <array>

using namespace rig::numbers;
using namespace rig::tests;
using nlohmann::json;

namespace {

constexpr const char* kFile = "control_surface_geometry.json";

double toleranceOf(const json& oneCase)
{
    return oneCase.at("tolerance").at("value").get<double>();
}

double radiusOf(const json& oneCase)
{
    return oneCase.at("data").at("radius_mm").get<double>();
}

// Null in the file: it cannot be.
void expectValue(const std::optional<double>& actual, const json& expected, double tolerance,
                 const char* name)
{
    ASSERT_EQ(actual.has_value(), !expected.is_null()) << name;
    if (actual) {
        EXPECT_NEAR(*actual, expected.get<double>(), tolerance) << name;
    }
}

std::vector<json> angleCases()
{
    std::vector<json> cases = publishedCases(kFile, "inv-");
    std::erase_if(cases, [](const json& oneCase) { return oneCase.at("expected").contains("error"); });
    return cases;
}

} // namespace

TEST_OF_CASES(Published, AngleToTravel, IsTheTravelOfTheFile, publishedCases(kFile, "geo-"))
{
    const double degrees = oneCase.at("data").at("angle_deg").get<double>();
    const std::array kinds{std::pair{Travel::StraightLine, "straight_line_travel_mm"},
                           std::pair{Travel::Perpendicular, "travel_perpendicular_to_neutral_mm"},
                           std::pair{Travel::Arc, "arc_travel_mm"}};
    for (const auto& [kind, name] : kinds)
        expectValue(travelOf(degrees, radiusOf(oneCase), kind), oneCase.at("expected").at(name),
                    toleranceOf(oneCase), name);
}

TEST_OF_CASES(Published, TravelToAngle, IsTheAngleOfTheFile, angleCases())
{
    const double travel = oneCase.at("data").at("travel_mm").get<double>();
    const std::array kinds{std::pair{Travel::StraightLine, "angle_deg_straight_line"},
                           std::pair{Travel::Perpendicular, "angle_deg_perpendicular"},
                           std::pair{Travel::Arc, "angle_deg_arc"}};
    for (const auto& [kind, name] : kinds)
        expectValue(degreesOf(travel, radiusOf(oneCase), kind), oneCase.at("expected").at(name),
                    toleranceOf(oneCase), name);
}

TEST_OF_CASES(Published, FreePlay, IsTheAngleOfTheFile, publishedCases(kFile, "play-"))
{
    const auto degrees = degreesOf(oneCase.at("data").at("free_play_mm").get<double>(), radiusOf(oneCase),
                                   Travel::StraightLine);
    expectValue(degrees, oneCase.at("expected").at("angle_deg"), toleranceOf(oneCase), "angle_deg");
}

TEST(TravelToAngle, CannotBeLongerThanTwiceTheRadius)
{
    const json oneCase = publishedCase(kFile, "inv-impossible");
    EXPECT_FALSE(
        degreesOf(oneCase.at("data").at("travel_mm").get<double>(), radiusOf(oneCase), Travel::StraightLine));
}
