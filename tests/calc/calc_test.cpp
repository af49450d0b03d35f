// Runs the program rigband-calc itself, as a script would.

#include "tests/support/json_file.h"

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>
#include <string>
#include <sys/wait.h>
#include <unistd.h>

using nlohmann::json;
using rig::tests::jsonFile;

namespace {

struct Answer
{
    int status = -1;
    std::string out;
    std::string err;

    json document() const { return json::parse(out, nullptr, false); }
    bool complains(const std::string& about) const { return err.find(about) != std::string::npos; }
};

class Calc : public testing::Test
{
protected:
    void SetUp() override
    {
        const auto* info = testing::UnitTest::GetInstance()->current_test_info();
        m_folder = std::filesystem::temp_directory_path() /
                   ("rigband_calc_" + std::to_string(getpid()) + "_" + info->name());
        std::filesystem::create_directories(m_folder);
    }
    void TearDown() override { std::filesystem::remove_all(m_folder); }

    Answer run(const std::string& arguments, const std::string& input) const
    {
        std::ofstream{at("in")} << input;
        const std::string command = std::string{"\""} + RIGBAND_CALC + "\" " + arguments + " < \"" +
                                    at("in") + "\" > \"" + at("out") + "\" 2> \"" + at("err") + "\"";
        const int ended = std::system(command.c_str());
        Answer answer;
        answer.status = WIFEXITED(ended) ? WEXITSTATUS(ended) : -1;
        answer.out = textOf(at("out"));
        answer.err = textOf(at("err"));
        return answer;
    }

private:
    std::string at(const char* name) const { return (m_folder / name).string(); }
    static std::string textOf(const std::string& path)
    {
        std::ostringstream text;
        text << std::ifstream{path}.rdbuf();
        return text.str();
    }

    std::filesystem::path m_folder;
};

std::string oneCase(const std::string& input)
{
    return R"({"cases":[{"id":"one","input":)" + input + "}]}";
}

} // namespace

// The figures are compared in tests/reference; here, that the program hands each case to the right place.
TEST_F(Calc, AnswersEveryCaseOfAFileUnderItsId)
{
    for (const std::string kind :
         {"arl", "band", "budget", "discrimination", "drift", "empirical_bayes_interval",
          "empirical_bayes_moments", "mixed_model", "repeat_pair", "shared_shift"}) {
        SCOPED_TRACE(kind);
        const json oracle = jsonFile("method/" + kind + ".json");
        const Answer answer = run(kind, oracle.dump());
        EXPECT_EQ(answer.status, 0) << answer.err;
        EXPECT_EQ(answer.err, "");
        const json cases = answer.document().at("cases");
        ASSERT_FALSE(cases.empty());
        ASSERT_EQ(cases.size(), oracle["cases"].size());
        for (std::size_t i = 0; i < cases.size(); ++i) {
            EXPECT_EQ(cases[i]["id"], oracle["cases"][i]["id"]);
            for (const auto& [name, value] : oracle["cases"][i]["expected"].items())
                EXPECT_TRUE(cases[i].at("output").contains(name)) << name;
        }
    }
}

TEST_F(Calc, GivesTheSameBytesForTheSameInput)
{
    const std::string input = jsonFile("method/band.json").dump();
    EXPECT_EQ(run("band", input).out, run("band", input).out);
}

TEST_F(Calc, AnswersTheGoodCasesBesideABadOne)
{
    const Answer answer = run("band", R"({"cases":[
        {"id":"bad","input":{"readings":[["0,5",0.55]]}},
        {"id":"good","input":{"readings":[[0.5,0.55],[0.5,0.55]]}},
        {"id":"without input"}]})");
    EXPECT_EQ(answer.status, 2);
    const json cases = answer.document().at("cases");
    ASSERT_EQ(cases.size(), 3u);
    EXPECT_EQ(cases[0]["id"], "bad");
    EXPECT_FALSE(cases[0].contains("output"));
    EXPECT_EQ(cases[0]["error"], "readings[0] has a bound that is neither a number nor null");
    EXPECT_EQ(cases[1]["output"]["status"], "OK");
    EXPECT_FALSE(cases[1].contains("error"));
    EXPECT_EQ(cases[2]["id"], "without input");
    EXPECT_TRUE(cases[2].contains("error"));
    EXPECT_TRUE(answer.complains("\"bad\"")) << answer.err;
    EXPECT_TRUE(answer.complains("readings[0]")) << answer.err;
}

TEST_F(Calc, NamesWhatIsWrongWithACase)
{
    struct Wrong
    {
        const char* kind;
        const char* input;
        const char* about;
    };
    const Wrong table[] = {
        {"band", "{}", "\"readings\" is missing"},
        {"band", R"({"readings":[[0.5]]})", "readings[0] is not a pair"},
        {"band", R"({"readings":[[0.5,0.55]],"judge":[[0.6,0.5]]})", "judge[0] has reversed bounds"},
        {"band", R"({"readings":[[0.5,0.55]],"judge":[["NaN",0.5]]})", "judge[0] is not a number"},
        {"band", R"({"readings":[[0.5,0.55]],"u_set2":-1})", "\"u_set2\" is negative"},
        {"band", R"({"readings":[[0.5,0.55]],"u_set2":"much"})", "\"u_set2\" is not a number"},
        {"band", R"({"readings":[[0.5,0.55]],"loo":1})", "\"loo\" is neither true nor false"},
        {"band", R"({"readings":[[0.5,0.55]],"smin":0.2,"smax":0.1})", "smin above 0 and below smax"},
        {"band", R"({"readings":[[0.5,0.55]],"nu0":-1})", "nu0 must not be negative"},
        {"band", R"({"readings":[[1e300,1e308],[0,1]]})", "too large or too small"},
        {"discrimination", R"({"locked":[[0.5,0.55]]})", "\"half_home\" is missing"},
        {"discrimination", R"({"locked":[[0.5,0.55]],"half_home":[[1,null]]})", "NO_UPPER_BOUND"},
        {"discrimination", R"({"locked":[[0.5,0.55]],"half_home":[[1,1.1]],"leaf_boundaries":[0.2,0.1]})",
         "\"leaf_boundaries\" do not rise"},
        {"discrimination", R"({"locked":[[0.5,0.55]],"half_home":[[1,1.1]],"prior_l":{"nu0":"x"}})",
         "\"prior_l\": \"nu0\" is not a number"},
        {"arl", R"({"shift":0,"two_sided":true})", "\"chart\" must be \"ewma\" or \"cusum\""},
        {"arl", R"({"chart":3,"shift":0,"two_sided":true})", "\"chart\" is not a word in quotes"},
        {"arl", R"({"chart":"ewma","two_sided":true,"lambda":0.2,"L":3})", "\"shift\" is missing"},
        {"arl", R"({"chart":"ewma","shift":0,"lambda":0.2,"L":3})", "\"two_sided\" is missing"},
        {"arl", R"({"chart":"ewma","shift":0,"two_sided":true,"lambda":1.2,"L":3})",
         "\"lambda\" must be above 0"},
        {"arl", R"({"chart":"ewma","shift":0,"two_sided":true,"lambda":0.2})", "\"L\" is missing"},
        {"arl", R"({"chart":"ewma","shift":0,"two_sided":true,"lambda":0.2,"L":0})", "\"L\" must be above 0"},
        {"arl", R"({"chart":"ewma","shift":0,"two_sided":false,"lambda":0.2,"L":3})", "give true"},
        {"arl", R"({"chart":"ewma","shift":0,"two_sided":true,"lambda":0.2,"L":3,"limits":"vary"})",
         "\"limits\" is \"vary\": give \"fixed\""},
        {"arl", R"({"chart":"cusum","shift":0,"two_sided":true,"k":-1,"h":5})", "\"k\" must not be below 0"},
        {"arl", R"({"chart":"cusum","shift":0,"two_sided":true,"k":0.5,"h":0})", "\"h\" must be above 0"},
        {"arl", R"({"chart":"cusum","shift":0,"two_sided":true,"k":0.5,"h":60})", "give a smaller limit"},
        {"drift", R"({"later":[]})", "\"baseline\" is missing"},
        {"drift", R"({"baseline":[[0.5,0.55],[0.5,0.55]]})", "\"later\" is missing: give the readings"},
        {"drift", R"({"baseline":[[0.5,0.55],[0.5,0.55]],"later":[]})",
         "too few readings for a chart: give 5"},
        {"drift", R"({"baseline":[[0.5,0.55]],"later":[],"mode":"sequential"})", "give 2 or more"},
        {"drift", R"({"baseline":[[0.5,0.55]],"later":[],"mode":"both"})",
         "give \"frozen\" or \"sequential\""},
        {"drift", R"({"baseline":[[0.5,0.55]],"later":[[0.6,0.5]]})", "later[0] has reversed bounds"},
        {"empirical_bayes_interval", "{}", "\"groups\" is missing"},
        {"empirical_bayes_interval", R"({"groups":[3]})", "\"groups[0]\" is missing or not a list"},
        {"empirical_bayes_interval", R"({"groups":[[[0.5]]]})", "groups[0][0] is not a pair"},
        {"empirical_bayes_interval", R"({"groups":[[[0.5,null]]]})", "\"groups\" has no group with a band"},
        {"empirical_bayes_interval", R"({"groups":[[[0.5,0.6]]],"nu0_min":5,"nu0_max":4})",
         "\"nu0_min\" must be above 0"},
        {"empirical_bayes_moments", R"({"df":[1,2]})", "\"s2\" is missing: give a list of numbers"},
        {"empirical_bayes_moments", R"({"s2":[1],"df":[1,2]})", "need the same length"},
        {"empirical_bayes_moments", R"({"s2":[1,"x"],"df":[1,2]})", "s2[1] is not a number"},
        {"shared_shift", "{}", "\"scores\" is missing: give a list of numbers"},
        {"shared_shift", R"({"scores":[1,null]})", "scores[1] is not a number"},
        {"trend", R"({"readings":[[0.5,0.55]]})", "\"t_days\" is missing: give one day"},
        {"trend", R"({"t_days":[1,2],"readings":[[0.5,0.55]]})", "\"t_days\" has not as many entries"},
        {"trend", R"({"t_days":[1,"x"],"readings":[[0.5,0.55],[0.5,0.55]]})", "t_days[1] is not a number"},
        {"trend", R"({"t_days":[1,2],"readings":[[0.5,0.55],[0.5,0.55]]})", "too few for a line"},
        {"trend", R"({"t_days":[1,2,3],"readings":[[0.5,null],[0.5,null],[0.5,null]]})", "NO_UPPER_BOUND"},
        {"trend", R"({"t_days":[1,1,1],"readings":[[0.5,0.55],[0.5,0.55],[0.5,0.55]]})",
         "at least two different \"t_days\""},
        {"trend", R"({"t_days":[1,2,3],"readings":[[0.5,0.55],[0.5,0.55],[0.5,0.55]],"band":[0.6,0.4]})",
         "\"band\" is not a pair of numbers that rise"},
        {"trend", R"({"t_days":[1,2,3],"readings":[[0.5,0.55],[0.5,0.55],[0.5,0.55]],"predict_at":[1e308]})",
         "\"predict_at\" has a day too far away"},
        {"changepoint", R"({"readings":[[0.5,0.55]]})", "too few for a change point: give at least 8"},
        {"changepoint", R"({"readings":[[0.6,0.55]]})", "REVERSED_BOUNDS"},
        {"changepoint", R"({"readings":[[1,1],[1,1],[1,1],[1,1],[1,1],[1,1],[1,1],[1,1]],"min_segment":5})",
         "\"min_segment\" does not fit: give a whole number from 2"},
        {"changepoint", R"({"readings":[[1,1],[1,1],[1,1],[1,1],[1,1],[1,1],[1,1],[1,1]],"sigma_floor":-1})",
         "\"sigma_floor\" is negative"},
        {"changepoint", R"({"readings":[[1,1],[1,1],[1,1],[1,1],[1,1],[1,1],[1,1],[1,1]],"sigma_floor":0})",
         "give a \"sigma_floor\" above 0"},
        {"mann_kendall_theil_sen", R"({"t":[1,2,3]})", "\"y\" is missing: give a list"},
        {"mann_kendall_theil_sen", R"({"t":[1,2],"y":[1,2,3]})", "\"t\" has not as many entries as \"y\""},
        {"mann_kendall_theil_sen", R"({"t":[1,2],"y":[1,2]})", "\"t\" has too few entries"},
        {"mann_kendall_theil_sen", R"({"t":[1,1,1],"y":[1,2,3]})", "no two different entries"},
        {"describe", "{}", "\"x\" is missing: give a list of numbers"},
        {"describe", R"({"x":[1,"2"]})", "x[1] is not a number"},
        {"describe", R"({"x":3})", "\"x\" is not a list of numbers"},
        {"line", R"({"x":[1,2,3]})", "\"y\" is missing: give a list of numbers"},
        {"line", R"({"x":[1,2,3],"y":[1,2]})", "\"x\" has not as many entries as \"y\""},
        {"line", R"({"x":[1,2],"y":[1,2]})", "\"x\" has too few entries: give 3 or more"},
        {"line", R"({"x":[1],"y":[1],"through_origin":true})", "\"x\" has too few entries: give 2 or more"},
        {"line", R"({"x":[1,1,1],"y":[1,2,3]})", "\"x\" is the same throughout"},
        {"line", R"({"x":[0,0],"y":[1,2],"through_origin":true})", "\"x\" is 0 throughout"},
        {"line", R"({"x":[1,2,3],"y":[1,2,3],"through_origin":0})",
         "\"through_origin\" is neither true nor false"},
        {"anova", "{}", "\"groups\" is missing or not a list of lists of numbers"},
        {"anova", R"({"groups":[[1,2],3]})", "\"groups[1]\" is not a list of numbers"},
        {"anova", R"({"groups":[[1,2],[3,"x"]]})", "groups[1][1] is not a number"},
        {"anova", R"({"groups":[[1,2]]})", "too few groups: give 2 or more"},
        {"anova", R"({"groups":[[1,2],[]]})", "has an empty group"},
        {"anova", R"({"groups":[[1],[2]]})", "one number in each group: give 2 or more"},
        {"anova", R"({"groups":[[1e300,2e300],[1,2]]})", "give them in another unit"},
        {"anova_rr", "{}", "\"y\" is missing"},
        {"anova_rr", R"({"y":[1]})", "\"part\" is missing or not a list: give one label for each reading"},
        {"anova_rr", R"({"y":[1],"part":[1]})", "\"operator\" is missing or not a list"},
        {"anova_rr", R"({"y":[1],"part":[null],"operator":[1]})", "part[0] is neither a number nor a word"},
        {"anova_rr", R"({"y":[1,2],"part":[1],"operator":[1,1]})", "\"part\" has not as many entries"},
        {"anova_rr", R"({"y":[1,2],"part":[1,1],"operator":[1]})", "\"operator\" has not as many entries"},
        {"anova_rr", R"({"y":[1,2],"part":[1,1],"operator":[1,2]})", "\"part\" has too few parts"},
        {"anova_rr", R"({"y":[1,2],"part":[1,2],"operator":[1,1]})", "\"operator\" has too few persons"},
        {"anova_rr", R"({"y":[1,2],"part":[1,2],"operator":["a","b"]})",
         "are unbalanced: give the same number"},
        {"anova_rr", R"({"y":[1,2,3,4],"part":[1,1,2,2],"operator":[1,2,1,2]})",
         "one reading for each person"},
        {"anova_rr", R"({"y":[1],"part":[1],"operator":[1],"step":-1})", "\"step\" is negative"},
        {"budget", R"({"leaf_tolerances":[]})", "\"bracket\" is missing or not a pair [lower, upper]"},
        {"budget", R"({"bracket":[0.5,0.55]})", "\"leaf_tolerances\" is missing"},
        {"budget", R"({"bracket":[0.5,null],"leaf_tolerances":[]})", "\"bracket\" is open: give both bounds"},
        {"budget", R"({"bracket":[0.6,0.5],"leaf_tolerances":[]})", "\"bracket\" has reversed bounds"},
        {"budget", R"({"bracket":[0.5,0.6],"leaf_tolerances":[-1]})",
         "\"leaf_tolerances\" has a negative entry"},
        {"budget", R"({"bracket":[0.5,0.6],"leaf_tolerances":[],"film":-1})", "\"film\" is negative"},
        {"budget", R"({"bracket":[0.5,0.6],"leaf_tolerances":[],"s_r":-1})", "\"s_r\" is negative"},
        {"budget", R"({"bracket":[-1e308,1e308],"leaf_tolerances":[]})", "too large to compute with"},
        {"repeat_pair", "{}", "\"first\" is missing or not a pair"},
        {"repeat_pair", R"({"first":[1,2],"second":[2,1],"s_r":1})", "\"second\" has reversed bounds"},
        {"repeat_pair", R"({"first":[1,"NaN"],"second":[1,2],"s_r":1})", "\"first\" has a bound that is not"},
        {"repeat_pair", R"({"first":[1,2],"second":[1,2]})", "\"s_r\" is missing: give a number"},
        {"repeat_pair", R"({"first":[1,2],"second":[1,2],"s_r":1,"two_persons":true})", "\"s_R\" is missing"},
        {"repeat_pair", R"({"first":[1,2],"second":[1,2],"s_r":-1})", "\"s_r\" is negative"},
        {"repeat_pair", R"({"first":[1,2],"second":[1,2],"s_r":1e308})", "\"s_r\" is too large"},
        {"repeat_pair", R"({"first":["Infinity",null],"second":[1,2],"s_r":1})", "holds no number"},
    };
    for (const Wrong& wrong : table) {
        SCOPED_TRACE(wrong.input);
        const Answer answer = run(wrong.kind, oneCase(wrong.input));
        EXPECT_EQ(answer.status, 2);
        EXPECT_TRUE(answer.complains(wrong.about)) << answer.err;
        const json cases = answer.document().at("cases");
        ASSERT_EQ(cases.size(), 1u);
        EXPECT_NE(cases[0]["error"].get<std::string>().find(wrong.about), std::string::npos);
    }
}

TEST_F(Calc, SaysWhyReadingsHaveNoBandWithoutCallingItAnError)
{
    const Answer answer = run("band", oneCase(R"({"readings":[[0.5,"NaN"]]})"));
    EXPECT_EQ(answer.status, 0);
    EXPECT_EQ(answer.document()["cases"][0]["output"], json({{"status", "NOT_A_NUMBER"}}));
}

TEST_F(Calc, CallsNothingOnADayWithoutScores)
{
    const Answer answer = run("shared_shift", oneCase(R"({"scores":[]})"));
    EXPECT_EQ(answer.status, 0) << answer.err;
    EXPECT_EQ(answer.document()["cases"][0]["output"], json({{"n", 0}, {"called", false}}));
}

TEST_F(Calc, LeavesOutWhatNeedsLeavesWhereThereAreNone)
{
    const Answer answer =
        run("discrimination", oneCase(R"({"locked":[[0.5,0.55],[0.5,0.55]],"half_home":[[1,1.05]]})"));
    EXPECT_EQ(answer.status, 0) << answer.err;
    const json output = answer.document()["cases"][0]["output"];
    EXPECT_TRUE(output["miss_true_gap_9973"].is_number());
    EXPECT_FALSE(output.contains("miss_cells_9973"));
    EXPECT_FALSE(output.contains("best_single_leaf"));
}

TEST_F(Calc, LeavesOutOfATrendWhatNeedsABandOrADayWhereThereIsNone)
{
    const Answer answer =
        run("trend", oneCase(R"({"t_days":[1,2,3],"readings":[[0.5,0.55],[0.5,0.55],[0.5,0.55]]})"));
    EXPECT_EQ(answer.status, 0) << answer.err;
    const json output = answer.document()["cases"][0]["output"];
    EXPECT_TRUE(output["slope_per_year"].is_number());
    for (const char* absent : {"predictions", "p_reading_outside_at_inspection", "day_line_crosses"})
        EXPECT_FALSE(output.contains(absent)) << absent;
}

TEST_F(Calc, GivesNullForPlainFiguresThatCannotBeKnown)
{
    const json one = run("describe", oneCase(R"({"x":[0.5]})")).document()["cases"][0]["output"];
    EXPECT_EQ(one["n"], 1);
    EXPECT_EQ(one["mean"], 0.5);
    EXPECT_TRUE(one["sd_n_minus_1"].is_null());
    EXPECT_TRUE(one["lag1_autocorrelation"].is_null());
    const json exact = run("line", oneCase(R"({"x":[1,2,3],"y":[2,4,6]})")).document()["cases"][0]["output"];
    EXPECT_EQ(exact["estimate"], json({0, 2}));
    EXPECT_TRUE(exact["F"].is_null());
}

TEST_F(Calc, GivesALineThroughTheOriginItsSlopeAlone)
{
    const Answer answer = run("line", oneCase(R"({"x":[1,2],"y":[1,3],"through_origin":true})"));
    const json output = answer.document()["cases"][0]["output"];
    EXPECT_EQ(output["estimate"].size(), 1u);
    EXPECT_EQ(output["se"].size(), 1u);
}

TEST_F(Calc, TakesWordsForPartsAndPersonsAndTheStepOfTheGauge)
{
    const Answer answer = run("anova_rr", oneCase(R"({"y":[0.5,0.5,0.5,0.5,0.7,0.7,0.7,0.7],
        "part":["left","left","left","left","right","right","right","right"],
        "operator":["A","A","B","B","A","A","B","B"],"step":0.05})"));
    EXPECT_EQ(answer.status, 0) << answer.err;
    const json output = answer.document()["cases"][0]["output"];
    EXPECT_EQ(output["s_r"], 0);
    EXPECT_EQ(output["limited_by_step"], true);
    EXPECT_NEAR(output["repeatability_limit"].get<double>(), 2.8 * 0.05 / std::sqrt(12), 1e-12);
}

TEST_F(Calc, LeavesTheLargestDifferenceOfAnOpenReadingUnknown)
{
    const Answer answer =
        run("repeat_pair", oneCase(R"({"first":[0.5,0.55],"second":[1.0,null],"s_r":0.02})"));
    const json output = answer.document()["cases"][0]["output"];
    EXPECT_TRUE(output["largest_difference"].is_null());
    EXPECT_EQ(output["verdict"], "disagree");
}

TEST_F(Calc, AddsTolerancesOfOneSetFirstWhenAsked)
{
    const char* const input =
        R"({"bracket":[0.5,0.51],"leaf_tolerances":[0.003,0.004],"shared_tolerance":true})";
    const json output = run("budget", oneCase(input)).document()["cases"][0]["output"];
    EXPECT_NEAR(output["u_set"].get<double>(), 0.007 / std::sqrt(3), 1e-12);
}

TEST_F(Calc, RefusesAnUnknownKindAndNamesTheKnownOnes)
{
    const Answer answer = run("palmistry", R"({"cases":[]})");
    EXPECT_EQ(answer.status, 2);
    EXPECT_EQ(answer.out, "");
    for (const char* known : {"palmistry", "band", "discrimination"})
        EXPECT_TRUE(answer.complains(known)) << known;
}

TEST_F(Calc, AsksForAKindWhenNoneIsGiven)
{
    const Answer answer = run("", R"({"cases":[]})");
    EXPECT_EQ(answer.status, 2);
    EXPECT_EQ(answer.out, "");
    EXPECT_TRUE(answer.complains("usage"));
}

TEST_F(Calc, RefusesWhatIsNotJson)
{
    for (const char* text :
         {"", "{\"cases\":[", "readings: 0.5", "{\"cases\":[{\"id\":1,\"input\":{\"readings\":[[NaN,1]]}}]}",
          "{\"cases\":[1e999]}"}) {
        SCOPED_TRACE(text);
        const Answer answer = run("band", text);
        EXPECT_EQ(answer.status, 2);
        EXPECT_EQ(answer.out, "");
        EXPECT_TRUE(answer.complains("not JSON")) << answer.err;
    }
}

TEST_F(Calc, RefusesJsonWithoutCases)
{
    for (const char* text : {"{}", "[]", "3", R"({"cases":{}})"}) {
        SCOPED_TRACE(text);
        const Answer answer = run("band", text);
        EXPECT_EQ(answer.status, 2);
        EXPECT_EQ(answer.out, "");
        EXPECT_TRUE(answer.complains("\"cases\"")) << answer.err;
    }
}

TEST_F(Calc, AnswersACaseThatIsNoObjectWithAnError)
{
    const Answer answer = run("band", R"({"cases":[7]})");
    EXPECT_EQ(answer.status, 2);
    const json cases = answer.document().at("cases");
    ASSERT_EQ(cases.size(), 1u);
    EXPECT_TRUE(cases[0]["id"].is_null());
    EXPECT_TRUE(cases[0].contains("error"));
}

TEST_F(Calc, AnswersNothingForNoCases)
{
    const Answer answer = run("band", R"({"cases":[]})");
    EXPECT_EQ(answer.status, 0);
    EXPECT_EQ(answer.document(), json({{"cases", json::array()}}));
}

namespace {

// Two couplings, of which the first steps at rigging 13; the second person reads every third rigging 0.04
// low.
json toldSeason()
{
    json season{{"readings", json::array()}, {"rigging", json::array()}, {"coupling", json::array()},
                {"person", json::array()},   {"gauge", json::array()},   {"day", json::array()}};
    const auto read = [&season](double gap, const json& rigging, const char* coupling, const char* person,
                                int day) {
        season["readings"].push_back({gap - 0.005, gap + 0.005});
        season["rigging"].push_back(rigging);
        season["coupling"].push_back(coupling);
        season["person"].push_back(person);
        season["gauge"].push_back("set 1");
        season["day"].push_back(day);
    };
    for (int i = 0; i < 2; ++i) {
        const char* coupling = i == 0 ? "left" : "right";
        for (int j = 0; j < 8; ++j)
            read(0.6 + 0.01 * (j * 3 % 5 - 2), nullptr, coupling, "Ann", -1 - i);
        for (int rigging = 1; rigging <= 30; ++rigging) {
            const bool isSecond = rigging % 3 == 0;
            const double moved = (i == 0 && rigging >= 13 ? 0.2 : 0) - (isSecond ? 0.04 : 0);
            read(0.6 + moved + 0.01 * ((rigging * 7 + i) % 5 - 2), rigging, coupling,
                 isSecond ? "Ben" : "Ann", rigging);
        }
    }
    return season;
}

} // namespace

TEST_F(Calc, TellsASeasonByTheNamesItWasGiven)
{
    const Answer answer = run("season", oneCase(toldSeason().dump()));
    ASSERT_EQ(answer.status, 0) << answer.err;
    const json output = answer.document().at("cases")[0].at("output");
    EXPECT_EQ(output["couplings"][0]["coupling"], "left");
    EXPECT_EQ(output["couplings"][0]["kind"], "step");
    EXPECT_EQ(output["couplings"][0]["step"]["at"], 13);
    EXPECT_NEAR(output["couplings"][0]["step"]["mm"].get<double>(), 0.2, 0.02);
    EXPECT_EQ(output["couplings"][1]["kind"], "steady");
    EXPECT_EQ(output["persons"]["levels"][1]["who"], "Ben");
    EXPECT_NEAR(output["persons"]["levels"][1]["offset_mm"].get<double>() -
                    output["persons"]["levels"][0]["offset_mm"].get<double>(),
                -0.04, 0.01);
    EXPECT_EQ(output["gauges"]["state"], "nothing to compare");
    EXPECT_EQ(output["settled"], true);
}

TEST_F(Calc, AsksForEverythingASeasonNeeds)
{
    json season = toldSeason();
    season["person"].erase(0);
    const Answer answer = run("season", oneCase(season.dump()));
    EXPECT_EQ(answer.status, 2);
    EXPECT_TRUE(answer.complains("need one entry for each")) << answer.err;
}

TEST_F(Calc, ReadsNothingThatIsNestedWithoutEnd)
{
    const Answer answer = run("season", std::string(200'000, '[') + std::string(200'000, ']'));
    EXPECT_EQ(answer.status, 2);
    EXPECT_TRUE(answer.complains("lists within one another")) << answer.err;
    EXPECT_EQ(run("season", R"({"cases": [{"id": "[[[[\"[", "input": {}}]})").status, 2);
}

TEST_F(Calc, TellsHowItIsUsedAndWhichOneItIs)
{
    EXPECT_EQ(run("--help", "").status, 0);
    EXPECT_EQ(run("--version", "").out.substr(0, 13), "rigband-calc ");
    EXPECT_EQ(run("--polish", "").status, 2);
}
