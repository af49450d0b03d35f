#include "app/wording/formats.h"
#include "app/wording/verdict_words.h"
#include "app/wording/witness_words.h"

#include <gtest/gtest.h>
#include <limits>

using namespace rig;
using namespace rig::literals;

namespace {

Judgement judgementOf(Verdict verdict, double tail = 1)
{
    Band band;
    band.inner = {0.55, 0.71};
    band.outer = {0.52, 0.74};
    band.readings = 12;
    Judgement judgement;
    judgement.verdict = verdict;
    judgement.reason = Reason::None;
    judgement.direction = Direction::Above;
    judgement.tail = tail;
    judgement.band = band;
    return judgement;
}

struct NamedVerdict
{
    const char* name;
    Verdict verdict;

    friend std::ostream& operator<<(std::ostream& out, const NamedVerdict& row) { return out << row.name; }
};

class EveryVerdict : public testing::TestWithParam<NamedVerdict>
{
};

} // namespace

TEST_P(EveryVerdict, SaysLastThatTheGapIsOneSignOnly)
{
    const QString said = VerdictWords::caution(GetParam().verdict, "Anna", "123");
    const QString last = said.section(". ", -1);
    EXPECT_TRUE(last.contains("one sign only")) << said.toStdString();
    const QString ofSecond = VerdictWords::cautionOfSecond(GetParam().verdict, "Anna", "123");
    EXPECT_TRUE(ofSecond.section(". ", -1).contains("one sign only")) << ofSecond.toStdString();
    EXPECT_FALSE(ofSecond.contains("second person")) << "that is who reads it";
}

INSTANTIATE_TEST_SUITE_P(Cautions, EveryVerdict,
                         testing::Values(NamedVerdict{"No band yet", Verdict::NoBandYet},
                                         NamedVerdict{"Outside", Verdict::Outside},
                                         NamedVerdict{"Cannot tell", Verdict::CannotTell},
                                         NamedVerdict{"Near edge", Verdict::NearEdge},
                                         NamedVerdict{"Inside", Verdict::Inside}));

TEST(VerdictWords, SaysAVanishingShareAsSmallAndNeverAsNone)
{
    const Formats formats{QLocale::c()};
    EXPECT_EQ(formats.oneIn(0), "fewer than 1 in 10000");
    EXPECT_EQ(formats.oneIn(2e-14), "fewer than 1 in 10000");
    EXPECT_EQ(formats.oneIn(1.0 / 400), "1 in 400");
    EXPECT_EQ(formats.oneIn(0.5), "1 in 2");
    EXPECT_EQ(formats.oneIn(0.6), "more than 1 in 2");
}

TEST(VerdictWords, SaysThatAShareIsNotKnownWhenThereIsNone)
{
    EXPECT_EQ(Formats{}.oneIn(std::numeric_limits<double>::quiet_NaN()), "not known");
}

TEST(VerdictWords, ReadsWellHoweverRareTheReadingIs)
{
    const GapInterval reading{1700_um, 1750_um};
    for (const double tail : {0.0, 2e-14, 0.0017}) {
        const QString said = VerdictWords::explanation(judgementOf(Verdict::Outside, tail), reading);
        EXPECT_FALSE(said.contains("About fewer") || said.contains("About none")) << said.toStdString();
        EXPECT_FALSE(said.contains("(s)")) << said.toStdString();
        EXPECT_TRUE(said.contains("12 confirmed readings")) << said.toStdString();
    }
}

TEST(VerdictWords, ClaimsOfAnOutsideReadingOnlyWhereItLiesToTheBand)
{
    const QString said = VerdictWords::explanation(judgementOf(Verdict::Outside), {1700_um, 1750_um});
    EXPECT_TRUE(said.startsWith("1.70–1.75 mm lies above this coupling's band")) << said.toStdString();
    EXPECT_FALSE(said.contains("everything")) << said.toStdString();
}

// The strip beside them shows the same: outer edges 0.52 and 0.74, inner ones 0.55 and 0.71.
TEST(VerdictWords, SaysOfAReadingNearAnEdgeWhereItStandsToBothEdges)
{
    const auto said = [](Direction direction, const GapInterval& reading) {
        Judgement judgement = judgementOf(Verdict::NearEdge);
        judgement.direction = direction;
        return VerdictWords::sentence(judgement, reading).toStdString();
    };
    EXPECT_EQ(said(Direction::Below, {480_um, 530_um}),
              "0.48–0.53 mm reaches below the lower outer edge of this coupling's band.");
    EXPECT_EQ(said(Direction::Below, {530_um, 540_um}),
              "0.53–0.54 mm lies between the lower inner and outer edge of this coupling's band.");
    EXPECT_EQ(said(Direction::Below, {530_um, 550_um}),
              "0.53–0.55 mm touches the lower inner edge of this coupling's band from below.");
    EXPECT_EQ(said(Direction::Above, {730_um, 780_um}),
              "0.73–0.78 mm reaches above the upper outer edge of this coupling's band.");
    EXPECT_EQ(said(Direction::Above, {720_um, 730_um}),
              "0.72–0.73 mm lies between the upper inner and outer edge of this coupling's band.");
    EXPECT_EQ(said(Direction::Above, {710_um, 730_um}),
              "0.71–0.73 mm touches the upper inner edge of this coupling's band from above.");
    EXPECT_TRUE(said(Direction::Above, {730_um, std::nullopt}).find("reaches above") != std::string::npos);
}

TEST(VerdictWords, SaysInWordsThatABandIsThin)
{
    Judgement judgement = judgementOf(Verdict::Inside);
    judgement.band->readings = 6;
    const QString said = VerdictWords::explanation(judgement, {600_um, 650_um});
    EXPECT_TRUE(said.contains("This band is thin: it rests on few readings")) << said.toStdString();
    EXPECT_TRUE(said.contains("drawn from 6 confirmed readings.")) << said.toStdString();
}

// One reading far away makes the model's miss tiny. That is the prior's figure and nothing a person may lean
// on.
TEST(VerdictWords, SaysHowOftenAndWherePartSeatedWasShownAndNoOddsOfItsGoingUnseen)
{
    Judgement judgement = judgementOf(Verdict::Inside);
    judgement.witness = {Witness::TooRare, 1.5e-4, 1, 1, 0};
    const GapInterval reading{600_um, 650_um};
    const QString once = VerdictWords::explanation(judgement, reading);
    EXPECT_TRUE(once.contains("Part-seated was seen once here, above the band.")) << once.toStdString();
    EXPECT_FALSE(once.contains("unseen")) << once.toStdString();
    EXPECT_FALSE(once.contains("1 in 1,000") || once.contains("1 in 1000")) << once.toStdString();
    judgement.witness = {Witness::Weak, 1.5e-4, 4, 0, 4};
    EXPECT_TRUE(
        VerdictWords::explanation(judgement, reading)
            .endsWith("Part-seated was seen 4 times here, each time below the band. That does not say "
                      "that it always would lie there."));
    judgement.witness = {Witness::None, 0.3, 4, 2, 1};
    EXPECT_TRUE(
        VerdictWords::explanation(judgement, reading)
            .endsWith("Part-seated was seen 4 times here: 2 above the band, 1 below it, 1 not outside "
                      "it."));
}

TEST(WitnessWords, TheReportSaysHowLittleFewReadingsCanTell)
{
    EXPECT_TRUE(WitnessWords::bound({Witness::TooRare, 1e-4, 1, 1, 0}).contains("up to 95 in 100"));
    EXPECT_TRUE(WitnessWords::bound({Witness::Good, 1e-4, 5, 5, 0}).contains("up to 46 in 100"));
    EXPECT_TRUE(WitnessWords::bound({Witness::Good, 1e-4, 30, 30, 0}).contains("up to 10 in 100"));
    EXPECT_EQ(WitnessWords::bound({}), QString{});
}

TEST(VerdictWords, SaysWhenTheScatterIsTooWildForABand)
{
    Judgement judgement = judgementOf(Verdict::Inside);
    judgement.band->scatterAtCap = true;
    EXPECT_TRUE(VerdictWords::explanation(judgement, {600_um, 650_um}).contains("scatter more"));
}

// Whoever may read until it fits will.
TEST(VerdictWords, AskForOneFinerReadingAndNotForRepeats)
{
    Judgement judgement = judgementOf(Verdict::CannotTell);
    judgement.reason = Reason::ReachesBeyondBand;
    const QString said = VerdictWords::explanation(judgement, {600_um, 800_um});
    EXPECT_TRUE(said.contains("Read once with a finer gauge.")) << said.toStdString();
    EXPECT_FALSE(said.contains("another reading")) << said.toStdString();
    judgement.reason = Reason::GaugeQuarantined;
    EXPECT_TRUE(
        VerdictWords::explanation(judgement, {600_um, 650_um}).contains("Read once with another gauge."));
}
