#include "app/wording/cause_words.h"
#include "app/wording/review_report_words.h"
#include "app/wording/review_words.h"
#include "app/wording/sentence_parts.h"
#include "app/wording/standing_words.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace rig;

namespace {

Day day(int year, unsigned month, unsigned number)
{
    return std::chrono::year{year} / static_cast<int>(month) / static_cast<int>(number);
}

class WordsOfAReview : public testing::Test
{
protected:
    WordsOfAReview()
    {
        facts.persons = {{}, {}};
        facts.persons[0].id.bytes[0] = 1;
        facts.persons[0].name = "J. Iver";
        facts.persons[1].id.bytes[0] = 2;
        facts.persons[1].name = "T. Vale";
        facts.gauges.resize(1);
        facts.gauges[0].id.bytes[0] = 3;
        facts.gauges[0].name = "B";
        coupling.coupling.name = "Left flap";
    }

    PathChangeTold& addChange(ChangeKind kind, double size)
    {
        PathChangeTold change;
        change.kind = kind;
        change.at = 233;
        change.atLower = 230;
        change.atUpper = 236;
        change.day = day(2026, 5, 12);
        change.dayLower = day(2026, 5, 2);
        change.dayUpper = day(2026, 5, 20);
        change.isOfPeriod = true;
        const numbers::EstimateWithInterval estimate{size, {size - 0.02, size + 0.02}};
        if (kind != ChangeKind::Drift)
            change.step = estimate;
        if (kind != ChangeKind::Step)
            change.rate = estimate;
        coupling.movement = FittingMovement{};
        coupling.movement->changes = {change};
        return coupling.movement->changes.front();
    }

    // Outside one after the other, above, so far beyond the edge.
    void addOutside(const std::vector<double>& beyond, OutsideBy by)
    {
        for (std::size_t i = 0; i < beyond.size(); ++i) {
            OutsideStory story;
            story.reading.when = noonOf(day(2026, 5, 12) + std::chrono::days{7 * static_cast<int>(i)});
            story.reading.interval = {Gap::micrometres(900), Gap::micrometres(910)};
            story.judgement.verdict = Verdict::Outside;
            story.judgement.direction = Direction::Above;
            story.by = by;
            story.beyond = beyond[i];
            coupling.outside.push_back(story);
        }
        coupling.runs = {{0, beyond.size(), std::ranges::min(beyond), std::ranges::max(beyond)}};
    }

    SharedShiftStory shiftOn(std::vector<std::pair<Day, double>> days)
    {
        SharedShiftStory story;
        for (const auto& [when, mm] : days) {
            DayShift one;
            one.when = noonOf(when);
            one.millimetres = mm;
            one.shift.sameSignShare = 1;
            story.days.push_back(one);
            story.millimetres += mm / static_cast<double>(days.size());
        }
        return story;
    }

    AirframeFacts facts;
    ReviewWords words{facts};
    CouplingReview coupling;
};

std::string plain(const QString& text)
{
    return text.toStdString();
}

} // namespace

TEST_F(WordsOfAReview, CompareTheScatterWithoutSayingSinceWhen)
{
    coupling.movement = FittingMovement{};
    coupling.movement->scatter = ScatterNow{10, 0.05, 0.02, 0.999, true, false};
    EXPECT_EQ(
        plain(ReviewWords::scatterSentence(coupling)),
        "The last 10 readings, taken together, scatter by 0.050 mm, those of this fitting before them by "
        "0.020 mm. Since when is not told by this.");
}

TEST_F(WordsOfAReview, SayThatNoQuestionIsOpenAsOfTheEndOfThePeriod)
{
    AirframeReview review;
    review.period = {day(2026, 1, 1), day(2026, 6, 1), {}, false, false};
    review.counts.readings = 1;
    QuestionStory story;
    story.question.stamp.when = noonOf(day(2026, 5, 1));
    story.resolution.emplace();
    story.resolution->stamp.when = noonOf(day(2026, 7, 1)); // after the period
    review.questions = {story};
    EXPECT_FALSE(ReviewWords::nothingOfItsKind(review).contains("No question is open."));
    review.period.to = day(2026, 7, 1);
    EXPECT_TRUE(ReviewWords::nothingOfItsKind(review).contains("No question is open."));
}

TEST_F(WordsOfAReview, TellOnceOfManyCouplingsThatPartSeatedWasNeverSeen)
{
    AirframeReview review;
    coupling.signs = {Sign::ThinBand, Sign::PartSeatedNeverShown};
    review.couplings = {coupling};
    EXPECT_TRUE(ReviewWords::neverSeen(review).isEmpty()) << "one says it itself";
    review.couplings.push_back(coupling);
    review.couplings.back().coupling.name = "Right flap";
    review.couplings.push_back(coupling);
    review.couplings.back().coupling.name = "Elevator";
    review.couplings.back().signs = {};
    EXPECT_EQ(plain(ReviewWords::neverSeen(review)),
              "† No reading was noted as part-seated on Left flap and Right flap: what they read then is not "
              "known.");
    const QStringList shown = ReviewWords::signsWithMark(coupling);
    ASSERT_EQ(shown.size(), 1);
    EXPECT_TRUE(shown.front().endsWith(" †"));
    EXPECT_EQ(ReviewWords::signsWithMark(review.couplings.back()), QStringList{});
}

TEST_F(WordsOfAReview, SayADriftAsARateAndSinceWhen)
{
    addChange(ChangeKind::Drift, 0.35);
    EXPECT_EQ(plain(ReviewWords::sign(Sign::Drift, coupling)),
              "the gap has been growing since about rigging 233");
    EXPECT_EQ(plain(ReviewWords::movement(coupling)), "drift +0.35 (+0.33 to +0.37, since rigging 233)");
    EXPECT_EQ(
        plain(ReviewWords::movementSentence(coupling)),
        "The drift is +0.35 mm per 100 riggings (95 % interval +0.33 to +0.37). It began at about rigging "
        "233 (12 May 2026); 95 in 100 that it was from rigging 230 (2 May 2026) to rigging 236 (20 May "
        "2026).");
    PathChangeTold& ended = addChange(ChangeKind::Drift, -0.35);
    EXPECT_EQ(plain(ReviewWords::sign(Sign::Drift, coupling)),
              "the gap has been shrinking since about rigging 233");
    ended.endedAt = 250;
    ended.endedOn = day(2026, 8, 3);
    EXPECT_EQ(plain(ReviewWords::sign(Sign::DriftEnded, coupling)),
              "the gap shrank from about rigging 233 to about rigging 250, and no more since");
    EXPECT_FALSE(ReviewWords::isMoving(coupling));
}

TEST_F(WordsOfAReview, SayAStepInMillimetres)
{
    addChange(ChangeKind::Step, 0.09);
    coupling.signs = {Sign::Step};
    EXPECT_EQ(plain(ReviewWords::gravest(coupling)),
              "Left flap: the gap became 0.09 mm larger by a step at about rigging 233.");
    EXPECT_EQ(plain(ReviewWords::movement(coupling)), "step +0.09 (+0.07 to +0.11, since rigging 233)");
    const std::string said = plain(ReviewWords::movementSentence(coupling));
    EXPECT_EQ(said.find("The step is +0.09 mm (95 % interval +0.07 to +0.11)."), 0U) << said;
    EXPECT_EQ(said.find("per 100"), std::string::npos) << said;
}

TEST_F(WordsOfAReview, SayThatAStepOrADriftCannotBeToldApartYet)
{
    addChange(ChangeKind::StepOrDrift, 0.09);
    EXPECT_NE(plain(ReviewWords::sign(Sign::StepOrDrift, coupling)).find("cannot be told yet"),
              std::string::npos);
    const std::string said = plain(ReviewWords::movementSentence(coupling));
    EXPECT_EQ(said.find("As a step it is +0.09 mm (95 % interval"), 0U) << said;
    EXPECT_NE(said.find("as a drift +0.09 mm per 100 riggings"), std::string::npos) << said;
}

TEST_F(WordsOfAReview, SayNoRateWhereNothingIsTold)
{
    coupling.movement = FittingMovement{};
    coupling.movement->path = numbers::Movement{};
    EXPECT_TRUE(ReviewWords::movementSentence(coupling).isEmpty());
    EXPECT_TRUE(ReviewWords::movement(coupling).isEmpty());
    EXPECT_EQ(plain(ReviewWords::whyNoMovement(coupling)), "none told");
    addChange(ChangeKind::Step, 0.09).isOfPeriod = false;
    EXPECT_TRUE(ReviewWords::movement(coupling).isEmpty())
        << "of before the period, in which nothing was read";
}

TEST_F(WordsOfAReview, TellARunOutsideInOneStory)
{
    addChange(ChangeKind::Step, 0.09);
    addOutside({0.06, 0.11, 0.08}, OutsideBy::Movement);
    EXPECT_EQ(plain(words.outsideTitle(coupling, coupling.runs.front())),
              "Left flap: 3 readings outside, 12 May 2026 to 26 May 2026");
    EXPECT_EQ(plain(words.outside(coupling, coupling.runs.front()).join(' ')),
              "All of them above its band. Beyond the outer edge: the nearest by at least 0.06 mm, the "
              "farthest by at "
              "least 0.11 mm. It fits the step told of this coupling; why the gap moved, the readings cannot "
              "tell. No "
              "question was asked, and nothing is noted of what was found.");
}

TEST_F(WordsOfAReview, TellOfALongRunWhatCameOfThreeAndHowManyMoreThereAre)
{
    addOutside({0.06, 0.11, 0.08, 0.07, 0.09}, OutsideBy::Nothing);
    for (std::size_t i = 0; i < 5; ++i) {
        coupling.outside[i].question = QuestionStory{};
        coupling.outside[i].question->resolution = Resolution{};
        coupling.outside[i].question->resolution->found = "cause " + std::to_string(i);
    }
    const std::string said = plain(words.outside(coupling, coupling.runs.front()).join(' '));
    EXPECT_NE(said.find("cause 2"), std::string::npos) << said;
    EXPECT_EQ(said.find("cause 3"), std::string::npos) << said;
    EXPECT_NE(said.find("And 2 more, each of them in the report."), std::string::npos) << said;
}

TEST_F(WordsOfAReview, TellTheFarthestReadingOutsideThatNothingExplains)
{
    addOutside({0.02, 0.46, 0.01}, OutsideBy::Nothing);
    coupling.signs = {Sign::Outside};
    const std::string said = plain(words.gravestFigures(coupling));
    EXPECT_EQ(said.find("The farthest on 19 May 2026: 0.90–0.91 mm. At least 0.46 mm beyond the outer edge."),
              0U)
        << said;
}

TEST_F(WordsOfAReview, NeverSayThatAChanceIsNoneOrCertain)
{
    EXPECT_EQ(plain(ReviewWords::chanceOf(0)), "under 1 in 100");
    EXPECT_EQ(plain(ReviewWords::chanceOf(0.2)), "20 in 100");
    EXPECT_EQ(plain(ReviewWords::chanceOf(1)), "over 99 in 100");
}

TEST_F(WordsOfAReview, SayWhatIsMissingWhereThereIsNoBand)
{
    EXPECT_EQ(plain(ReviewWords::noBand(coupling)), "no band yet: no fitting has begun");
    coupling.fitting = Fitting{};
    EXPECT_EQ(plain(ReviewWords::noBand(coupling)), "no band yet: no confirmed reading");
    EXPECT_EQ(plain(ReviewWords::whyNoMovement(coupling)), "no band yet");
    coupling.band = Band{};
    EXPECT_EQ(plain(ReviewWords::whyNoMovement(coupling)), "not read");
}

TEST_F(WordsOfAReview, SayWhichWayALeafSetReadAndThatEachJointIsLookedAtAllTheSame)
{
    SharedShiftStory story = shiftOn({{day(2025, 7, 11), 0.03}, {day(2025, 7, 13), 0.04}});
    story.gauge = facts.gauges[0].id;
    EXPECT_EQ(plain(words.shift(story)),
              "Leaf set B read 0.035 mm high: the middle of all couplings, on 2 days. That was on every "
              "coupling, on 2 days: 11 and 13 July 2025. Check "
              "the leaf set, read again with another person, and look at each joint. Stiff grease leaves "
              "plungers short.");
    facts.gaugeChecks.push_back(
        {{}, story.gauge.value(), day(2025, 7, 20), "", "worn", day(2025, 7, 11), {}});
    EXPECT_NE(plain(words.shift(story)).find("The gauge is in doubt from 11 July 2025 on"),
              std::string::npos);
}

TEST_F(WordsOfAReview, DoNotMakeOneDirectionOutOfTwo)
{
    const SharedShiftStory story = shiftOn({{day(2025, 7, 11), 0.04}, {day(2025, 8, 2), -0.01}});
    const std::string said = plain(words.shift(story));
    EXPECT_NE(said.find("high on one day and low on another"), std::string::npos) << said;
    EXPECT_NE(said.find("neither a gauge nor a person explains it"), std::string::npos) << said;
}

TEST_F(WordsOfAReview, SayOfAPersonsOffsetHowMuchWhichWayAndHowSure)
{
    MeasurerOffsets offsets;
    offsets.personsState = numbers::OffsetsState::Estimated;
    offsets.persons = {{facts.persons[0].id, 40, MeasuredOffset{0.02, 0.012, 0.028}, false, 0.02},
                       {facts.persons[1].id, 40, MeasuredOffset{-0.003, -0.004, -0.002}, false, 0.02}};
    const QStringList said = words.personOffsets(offsets);
    ASSERT_EQ(said.size(), 2) << "3 micrometres are a trifle, however sure";
    EXPECT_EQ(plain(said.front()), "Over all days J. Iver reads about 0.020 mm higher than the mean of all "
                                   "here (95 % interval 0.012 to 0.028).");
    offsets.persons[0].offset = MeasuredOffset{-0.02, -0.028, -0.012};
    EXPECT_EQ(plain(words.personOffsets(offsets).front()),
              "Over all days J. Iver reads about 0.020 mm lower than the mean of all here (95 % interval "
              "0.012 to 0.028).");
}

TEST_F(WordsOfAReview, SayWhyPersonsCannotBeToldApart)
{
    MeasurerOffsets offsets;
    offsets.personsState = numbers::OffsetsState::CannotBeToldApart;
    offsets.personsHiddenBehind = {numbers::OffsetFactor::LeafSet};
    offsets.persons = {{facts.persons[0].id, 8, {}, false, {}}, {facts.persons[1].id, 4, {}, false, {}}};
    EXPECT_NE(plain(words.personOffsets(offsets).join(' ')).find("so a person cannot be told from a gauge."),
              std::string::npos);
    offsets.personsHiddenBehind = {};
    EXPECT_NE(
        plain(words.personOffsets(offsets).join(' ')).find("Persons, gauges and days cannot be told apart."),
        std::string::npos);
}

TEST_F(WordsOfAReview, TellAReadingOutsideWithWhatWasShownThenAndWhatCameOfIt)
{
    OutsideStory story;
    story.reading.person = facts.persons[0].id;
    story.reading.gauge = facts.gauges[0].id;
    story.reading.interval = {Gap::micrometres(100), Gap::micrometres(150)};
    story.judgement.verdict = Verdict::Outside;
    story.judgement.direction = Direction::Below;
    story.judgement.band = Band{{0.53, 0.63}, {0.52, 0.64}, 0.58, 0.018, 12, false};
    story.rigging = 117;
    story.shown = Shown{};
    story.shown->judgement.verdict = Verdict::NoBandYet;
    const std::string open = plain(words.outside(story).join(' '));
    EXPECT_EQ(open,
              "Below its band, outer edges 0.52–0.64 mm. Read by J. Iver with leaf set B. Rigging 117. "
              "Shown then: No band yet. No question was asked, and nothing is noted of what was found.");
    story.question = QuestionStory{};
    EXPECT_NE(plain(words.outside(story).join(' ')).find("Still open: nobody has said what was found."),
              std::string::npos);
    story.question->resolution = Resolution{};
    story.question->resolution->person = facts.persons[1].id;
    story.question->resolution->found = "grit.";
    story.question->resolution->done = "cleaned";
    EXPECT_NE(plain(words.outside(story).join(' ')).find("by T. Vale. Found: grit. Done: cleaned."),
              std::string::npos);
}

TEST_F(WordsOfAReview, SayThatNothingStandsOutOnlyWhereNothingIsWorthSayingAndOfWhatThatIsSaid)
{
    AirframeReview review;
    review.counts.readings = 24;
    review.counts.couplings = 2;
    review.counts.firstRead = day(2026, 4, 4);
    review.counts.lastRead = day(2026, 9, 12);
    coupling.band = Band{};
    coupling.latest = LaterReading{};
    coupling.standing.says = Says::Inside;
    coupling.signs = {Sign::PartSeatedNeverShown};
    review.couplings = {coupling, coupling};
    EXPECT_TRUE(ReviewWords::nothingStandsOut(review));
    EXPECT_EQ(
        plain(ReviewWords::nothingGrave(review)),
        "Nothing stands out on 2 couplings. The readings of this period show no drift, no step and no larger "
        "scatter; that is not to say that nothing moved. No reading lay outside its band in this period. No "
        "question is open. This is said of 24 readings, from 4 April 2026 to 12 September 2026. Each gap is "
        "one "
        "sign only.");
    for (const Sign sign : {Sign::NearEdge, Sign::GapIsNoWitness, Sign::NoBand, Sign::NotRead,
                            Sign::MissedRiggings, Sign::ThinBand}) {
        review.couplings.back().signs = {sign};
        if (sign == Sign::NoBand)
            review.couplings.back().band.reset();
        EXPECT_FALSE(ReviewWords::nothingStandsOut(review)) << static_cast<int>(sign);
        const std::string said = plain(ReviewWords::nothingGrave(review));
        EXPECT_EQ(said.find("Nothing stands out"), std::string::npos) << said;
        EXPECT_NE(said.find("Left flap"), std::string::npos) << said;
        review.couplings.back().band = Band{};
    }
    review.couplings.back().signs = {};
    review.couplings.back().standing.says = Says::NearEdge;
    EXPECT_FALSE(ReviewWords::nothingStandsOut(review));
}

TEST_F(WordsOfAReview, SayThatThePaceIsNotKnownWhereItIsNot)
{
    const Day due = std::chrono::sys_days{std::chrono::year{2026} / 12 / 1};
    EXPECT_EQ(plain(ReviewReportWords::annualDue(due, std::nullopt)),
              "1 December 2026; the pace of riggings is not known yet");
    EXPECT_EQ(plain(ReviewReportWords::annualDue(due, 0)), "1 December 2026");
    AirframeReview review;
    review.period.isCurrent = true;
    review.period.annual = due;
    EXPECT_TRUE(
        plain(ReviewWords::riggings(review).join(' '))
            .find("How many more until the annual is not known yet: that takes 4 riggings and 60 days.") !=
        std::string::npos);
}

TEST_F(WordsOfAReview, TellFalseAlarmsByTheReadingsJudgedAndByTheRigging)
{
    AirframeReview review;
    coupling.band = Band{};
    coupling.latest = LaterReading{};
    coupling.counts.inside = 100;
    review.couplings.assign(8, coupling);
    EXPECT_EQ(
        plain(ReviewReportWords::falseAlarms(review).join(' ')),
        "Of 800 readings judged in this period, to be expected with nothing changed: near the edge about "
        "38, outside about 2.2. With 8 couplings read at each rigging, that is an outside reading in about "
        "one rigging of 47.");
    EXPECT_TRUE(ReviewReportWords::falseAlarms({}).isEmpty());
}

TEST(PartsOfASentence, NameAFewDaysAndTheEndsOfMany)
{
    EXPECT_EQ(plain(SentenceParts::days({day(2025, 7, 11), day(2025, 7, 13), day(2025, 7, 19)})),
              "11, 13 and 19 July 2025");
    EXPECT_EQ(plain(SentenceParts::days({day(2025, 6, 30), day(2025, 7, 13)})),
              "30 June 2025 and 13 July 2025");
    EXPECT_EQ(plain(SentenceParts::days(
                  {day(2025, 6, 1), day(2025, 6, 2), day(2025, 6, 3), day(2025, 6, 4), day(2025, 6, 5)})),
              "1 June 2025 to 5 June 2025");
}

TEST_F(WordsOfAReview, TellTheFarthestSingleReadingWithItsDayInWhatStandsOut)
{
    addOutside({0.20}, OutsideBy::Nothing);
    EXPECT_EQ(plain(ReviewWords::sign(Sign::Outside, coupling)),
              "1 reading outside its band, 0.20 mm or more beyond it, on 12 May 2026");
    coupling.outside.clear();
    addOutside({0.02, 0.46, 0.01}, OutsideBy::Nothing);
    EXPECT_EQ(plain(ReviewWords::sign(Sign::Outside, coupling)),
              "3 readings outside its band, the farthest 0.46 mm or more beyond it, on 19 May 2026");
    coupling.outside[1].struck = Exclusion{};
    EXPECT_EQ(plain(ReviewWords::sign(Sign::Outside, coupling)),
              "3 readings outside its band, the farthest 0.02 mm or more beyond it, on 12 May 2026");
}

TEST_F(WordsOfAReview, SayOfTheOnlyReadingOutsideThatAllOthersWentAlong)
{
    addOutside({0.06}, OutsideBy::Nothing);
    coupling.outside[0].together = true;
    EXPECT_EQ(plain(ReviewWords::sign(Sign::Outside, coupling)),
              "1 reading outside its band, 0.06 mm or more beyond it, on 12 May 2026, when all or nearly all "
              "couplings read high");
}

TEST_F(WordsOfAReview, CountApartWhatLayOutsideWithAllTheOthers)
{
    addOutside({0.30, 0.06, 0.05}, OutsideBy::Nothing);
    coupling.outside[1].together = true;
    coupling.outside[2].together = true;
    const std::string said = plain(ReviewWords::sign(Sign::Outside, coupling));
    EXPECT_NE(said.find("3 readings outside its band"), std::string::npos) << said;
    EXPECT_NE(said.find("2 of them when all or nearly all couplings read high"), std::string::npos) << said;
}

TEST_F(WordsOfAReview, TellWhatLayOutsideBeforeThePeriodAndThatNobodyHasSaidWhatItWas)
{
    addOutside({0.20}, OutsideBy::Nothing);
    std::swap(coupling.outside, coupling.outsideBefore);
    coupling.signs = {Sign::OutsideBefore};
    EXPECT_EQ(plain(ReviewWords::gravest(coupling)),
              "Left flap: outside before this period, on 12 May 2026, and nobody has said what it was.");
    EXPECT_NE(plain(words.gravestFigures(coupling)).find("At least 0.20 mm beyond the outer edge."),
              std::string::npos);
    CouplingStanding standing;
    standing.says = Says::OutsideBefore;
    standing.outsideBefore = day(2026, 5, 12);
    EXPECT_EQ(plain(StandingWords::inFull(standing)),
              "Inside the band; outside before this period, on 12 May 2026, and nobody has said what it was");
    EXPECT_TRUE(ReviewWords::isGrave(Sign::OutsideBefore));
}

// What is said of the last reading is so of the last one, not of an earlier one.
TEST_F(WordsOfAReview, SayOfTheLastReadingWhereItLies)
{
    addOutside({0.20, 0.10}, OutsideBy::Nothing);
    coupling.latest = LaterReading{};
    coupling.latest->reading.when = noonOf(day(2026, 6, 30));
    coupling.latestJudgement = Judgement{};
    const auto saidWhere = [this](Verdict last) {
        coupling.latestJudgement->verdict = last;
        return plain(CauseWords::of(coupling, {}).front().pattern);
    };
    EXPECT_EQ(saidWhere(Verdict::NearEdge),
              "2 readings lay outside the band in this period; the last reading is near the edge.");
    EXPECT_EQ(saidWhere(Verdict::Inside),
              "2 readings lay outside the band in this period; the last reading is inside.");
    EXPECT_EQ(saidWhere(Verdict::Outside),
              "2 readings lay outside the band in this period, the last one too.");
    coupling.standing.says = Says::Asked;
    EXPECT_EQ(saidWhere(Verdict::Inside),
              "2 readings lay outside the band in this period; the last reading is inside.")
        << "whatever is asked";
    coupling.latest->reading.when = coupling.outside.back().reading.when;
    EXPECT_EQ(saidWhere(Verdict::Inside),
              "2 readings lay outside the band in this period, one of them at the last rigging.");
    coupling.latest.reset();
    coupling.latestJudgement.reset();
    EXPECT_EQ(plain(CauseWords::of(coupling, {}).front().pattern),
              "2 readings lay outside the band in this period.");
}

TEST_F(WordsOfAReview, SayOfThePastOnlyWhatIsNotedOfPartSeated)
{
    EXPECT_EQ(plain(ReviewWords::sign(Sign::PartSeatedNeverShown, coupling)),
              "no reading noted as part-seated");
}
