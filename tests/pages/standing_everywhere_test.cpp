// However a coupling stands, every page, list, table and paper says the same of it.

#include "app/pages/rigged_today/record_list.h"
#include "app/pages/rigged_today/rigged_today_presenter.h"
#include "app/wording/standing_words.h"
#include "core/demo/demo.h"
#include "core/review/record_summary.h"
#include "core/store/airframe_facts.h"
#include "core/store/values.h"
#include "tests/pages/told_everywhere.h"
#include "tests/pages/trends_scene.h"
#include "tests/support/laptop.h"
#include "tests/support/on_screen.h"

#include <algorithm>
#include <functional>
#include <gtest/gtest.h>
#include <map>

using namespace rig;
using namespace rig::test;

namespace {

constexpr Day kBaseline = dayOf(2026, 3, 7);
constexpr Day kDay = dayOf(2026, 10, 31);

// The left aileron has a band around 0.50 mm and was rigged twice before the story.
class ToldFile : public TrendsScene
{
public:
    ToldFile()
    {
        baselineDay(kBaseline);
        for (const int daysBefore : {14, 7}) {
            rigged = rig(kDay - std::chrono::days{daysBefore}, 500);
            close();
        }
    }

    void today(int entersUm)
    {
        rigged = record(kDay);
        read(entersUm);
    }

    ReadingId read(int entersUm, SeatState state = SeatState::Locked, int hour = 10)
    {
        Reading one = reading(entersUm, kDay, hour);
        one.record = rigged;
        one.state = state;
        Shown shown;
        shown.judgement.verdict = Verdict::Inside; // whatever it is: what was shown is never input
        last = must(store.records().add(one, shown));
        return last;
    }

    void leaveOutTheBaseline()
    {
        for (const KeptReading& kept : must(store.records().readings(hangar.airframe)))
            if (kept.reading.purpose == Purpose::Baseline)
                must(store.records().add(
                    Exclusion{{}, kept.reading.id, "read on the wrong joint", {hangar.oren, {}}}));
    }

    void strike()
    {
        must(
            store.records().add(Exclusion{{}, last, "read on the wrong joint", {hangar.oren, at(kDay, 11)}}));
    }

    // “No” to the lock, read as found, and somebody has said what it was.
    void findNotSecured(int entersUm)
    {
        ask(QuestionKind::AnsweredNo, CheckKind::SleeveAtStop);
        Reading one = reading(entersUm, kDay, 12);
        one.record = rigged;
        one.state = SeatState::PartSeated; // as the file knows it
        one.stamp.when = at(kDay, 12);
        last = must(store.records().add(one, std::nullopt));
        resolve(13);
    }

    void ask(QuestionKind kind, std::optional<CheckKind> check = {})
    {
        Question question;
        question.airframe = hangar.airframe;
        question.kind = kind;
        question.record = rigged;
        question.coupling = hangar.leftAileron;
        if (kind == QuestionKind::OutsideReading)
            question.reading = last;
        question.check = check;
        question.stamp = {hangar.oren, at(kDay, 11)};
        asked = must(store.records().add(question));
    }

    void sidesAreSaid()
    {
        for (Coupling coupling : must(store.records().couplings(hangar.airframe))) {
            coupling.side = coupling.id == hangar.leftAileron ? Side::Left : Side::Right;
            must(store.records().add(coupling));
        }
    }

    void rightAileronIsInDoubt()
    {
        Surface surface;
        surface.airframe = hangar.airframe;
        surface.name = "Right aileron";
        surface.kind = SurfaceKind::Aileron;
        surface.side = Side::Right;
        Question question;
        question.airframe = hangar.airframe;
        question.kind = QuestionKind::SurfaceDoubt;
        question.record = rigged;
        question.surface = must(store.records().add(surface));
        question.surfaceCheck = SurfaceCheckKind::Sense;
        question.stamp = {hangar.oren, at(kDay, 11)};
        must(store.records().add(question));
    }

    void resolve(int hour = 12)
    {
        Resolution resolution;
        resolution.question = asked;
        resolution.person = hangar.vale;
        resolution.found = "grit under the sleeve";
        resolution.done = "cleaned and put together again";
        resolution.stamp.when = at(kDay, hour);
        must(store.records().add(resolution));
    }

    void close(Closing closing = Closing::LeftOpen)
    {
        RecordClose close;
        close.record = rigged;
        close.closing = closing;
        close.first = hangar.oren;
        close.second = hangar.vale;
        close.stamp.when = at(kDay, 13);
        must(store.records().add(close));
    }

    void connectsByItself()
    {
        for (Coupling coupling : must(store.records().couplings(hangar.airframe))) {
            if (coupling.id != hangar.leftAileron)
                continue;
            coupling.kind = CouplingKind::ByItself;
            must(store.records().add(coupling));
        }
    }

    // Past the program, which then holds the file against its chain.
    void doctor(const QString& table, const QString& sql, const QVariantList& values = {})
    {
        byHand(store.file().connection(), table, sql, values);
        must(store.file().lookAtChain());
    }
    void doctorTheLast(int entersUm)
    {
        doctor("reading", "UPDATE reading SET enters_um = ?, refuses_um = ? WHERE id = ?",
               {entersUm, entersUm + 50, valueOf(last)});
    }
    void doctorTheBaseline()
    {
        doctor(
            "reading",
            "UPDATE reading SET enters_um = 500, refuses_um = 550 WHERE id = (SELECT min(id) FROM reading)");
    }

    RecordId rigged;
    ReadingId last;
    QuestionId asked;
};

struct Story
{
    const char* name;
    Says says; // of the left aileron
    std::function<void(ToldFile&)> tell;
};

const std::vector<Story>& stories()
{
    static const std::vector<Story> kStories{
        {"inside", Says::Inside, [](ToldFile& file) { file.today(500); }},
        {"outside and then inside in the record that is open", Says::Outside,
         [](ToldFile& file) {
             file.today(900);
             file.ask(QuestionKind::OutsideReading);
             file.read(500, SeatState::Locked, 12);
         }},
        {"the same, closed with open items", Says::Outside,
         [](ToldFile& file) {
             file.today(900);
             file.ask(QuestionKind::OutsideReading);
             file.read(500, SeatState::Locked, 12);
             file.close();
         }},
        {"the same, and inside in a further record", Says::Outside,
         [](ToldFile& file) {
             file.today(900);
             file.ask(QuestionKind::OutsideReading);
             file.close();
             file.today(500);
         }},
        {"resolved and read again", Says::WasOutside,
         [](ToldFile& file) {
             file.today(900);
             file.ask(QuestionKind::OutsideReading);
             file.resolve();
             file.read(500, SeatState::Locked, 13);
         }},
        {"outside with no question", Says::Outside, [](ToldFile& file) { file.today(900); }},
        {"could not be seen", Says::Asked,
         [](ToldFile& file) {
             file.today(500);
             file.ask(QuestionKind::CannotSee);
         }},
        {"found part-seated", Says::PartSeated,
         [](ToldFile& file) {
             file.today(500);
             file.read(900, SeatState::PartSeated, 12);
         }},
        {"found not secured", Says::NotSecured,
         [](ToldFile& file) {
             file.today(500);
             file.findNotSecured(900);
         }},
        {"found part-seated, and that struck", Says::WasOutside,
         [](ToldFile& file) {
             file.today(500);
             file.read(900, SeatState::PartSeated, 12);
             file.strike();
         }},
        {"an outside reading struck, and read again", Says::Outside,
         [](ToldFile& file) {
             file.today(900);
             file.ask(QuestionKind::OutsideReading);
             file.strike();
             file.read(500, SeatState::Locked, 12);
         }},
        {"its band taken away since", Says::NoBandYet,
         [](ToldFile& file) {
             file.today(500);
             file.leaveOutTheBaseline();
         }},
        {"refitted since", Says::NotRead,
         [](ToldFile& file) { file.refit(kDay + std::chrono::days{1}, "sleeve refitted"); }},
        {"its scatter grew", Says::Scatters,
         [](ToldFile& file) {
             for (int i = 0; i < 24; ++i)
                 file.rig(kDay - std::chrono::days{60 - 2 * i}, i < 14 ? 500 : (i % 2 ? 440 : 560));
             file.today(500);
         }},
        {"outside before the annual, and nobody was asked", Says::OutsideBefore,
         [](ToldFile& file) {
             file.rigged = file.rig(kDay - std::chrono::days{40}, 900);
             file.close();
             Event annual;
             annual.airframe = file.hangar.airframe;
             annual.kind = EventKind::Annual;
             annual.day = kDay - std::chrono::days{30};
             must(file.store.records().add(annual));
             file.today(500);
         }},
        {"no gap, and read while it was another kind", Says::NoGap,
         [](ToldFile& file) {
             file.today(500);
             file.connectsByItself();
         }},
        {"no gap, and answered no", Says::Stopped,
         [](ToldFile& file) {
             file.today(500);
             file.connectsByItself();
             file.ask(QuestionKind::AnsweredNo);
         }},
        {"a gauge in quarantine", Says::CannotTell,
         [](ToldFile& file) {
             file.today(500);
             must(file.store.records().add(
                 GaugeCheck{{}, file.hangar.setA, kDay, "micrometer", "worn", kDay, {file.hangar.oren, {}}}));
         }},
        {"an outside reading made an inside one past the program", Says::InDoubt,
         [](ToldFile& file) {
             file.today(900);
             file.doctorTheLast(500);
         }},
        {"inside, and a reading of its baseline changed", Says::InDoubt,
         [](ToldFile& file) {
             file.today(500);
             file.doctorTheBaseline();
         }},
        {"outside, and a reading of its baseline changed", Says::Outside,
         [](ToldFile& file) {
             file.today(900);
             file.doctorTheBaseline();
         }},
        {"all links taken out", Says::InDoubt,
         [](ToldFile& file) {
             file.today(500);
             file.doctor("link", "DELETE FROM link");
         }},
        {"an outside reading taken out", Says::InDoubt,
         [](ToldFile& file) {
             file.today(500);
             file.read(900, SeatState::Locked, 12);
             byHand(file.store.file().connection(), "shown", "DELETE FROM shown WHERE reading = ?",
                    {valueOf(file.last)});
             file.doctor("reading", "DELETE FROM reading WHERE id = ?", {valueOf(file.last)});
         }},
        {"a leaf changed of the set it was read with", Says::InDoubt,
         [](ToldFile& file) {
             file.today(500);
             file.doctor("gauge_size", "UPDATE gauge_size SET size_um = 525 WHERE size_um = 500");
         }},
        {"a question about it closed past the program", Says::InDoubt,
         [](ToldFile& file) {
             file.today(900);
             file.ask(QuestionKind::OutsideReading);
             file.read(500, SeatState::Locked, 12);
             file.resolve(13);
             file.doctor("resolution", "UPDATE resolution SET found = 'nothing'");
         }},
        {"made one without a gap past the program", Says::InDoubt,
         [](ToldFile& file) {
             file.today(500);
             file.doctor("coupling", "UPDATE coupling SET kind = 'by-itself', has_gap = 0 WHERE name = 'Left "
                                     "aileron'");
         }},
    };
    return kStories;
}

std::string listOf(const std::vector<std::string>& sentences)
{
    std::string all;
    for (const std::string& one : sentences)
        all += one + "\n";
    return all;
}

Says saidOf(const std::vector<Told>& all, const std::string& coupling)
{
    return std::ranges::find(all, coupling, &Told::coupling)->says;
}

} // namespace

TEST(StandingEverywhere, IsTheSameInEveryStory)
{
    for (const Story& story : stories()) {
        SCOPED_TRACE(story.name);
        ToldFile file;
        story.tell(file);
        const std::vector<Told> all = toldEverywhere(file.store, file.hangar.airframe);
        EXPECT_GE(std::ranges::count(all, "Left aileron", &Told::coupling), 4);
        EXPECT_EQ(saidOf(all, "Left aileron"), story.says);
        EXPECT_EQ(listOf(disagreements(all)), "");
    }
}

TEST(StandingEverywhere, IsTheSameForEveryCouplingOfTheDemonstration)
{
    TempStore store;
    store.clock().set(dayOf(2026, 11, 1));
    must(buildDemo(store.file(), demo::Language::English));
    std::size_t told = 0;
    for (const Airframe& airframe : must(store.records().airframes())) {
        const std::vector<Told> all = toldEverywhere(store, airframe.id);
        EXPECT_EQ(listOf(disagreements(all)), "") << airframe.registration;
        told += all.size();
    }
    EXPECT_GE(told, 4U * 20) << "pages, table and paper of every coupling";
}

TEST(StandingEverywhere, ARecordThatSaysInsideTellsWhatAnotherOneHasLeftOpen)
{
    ToldFile file;
    file.today(900);
    file.ask(QuestionKind::OutsideReading);
    file.close();
    file.today(500);
    file.close();
    const auto aileron = [&file] {
        const AirframeFacts facts = must(factsOf(file.store.records(), file.hangar.airframe));
        return summaryOf(facts, must(file.store.records().content(file.rigged))).couplings.front();
    };
    ASSERT_EQ(aileron().coupling.name, "Left aileron");
    EXPECT_EQ(aileron().standing.says, Says::Inside);
    ASSERT_TRUE(aileron().now.has_value());
    EXPECT_EQ(aileron().now->says, Says::Outside);

    file.resolve();
    EXPECT_FALSE(aileron().now.has_value()) << "somebody has said what it was";
}

TEST(StandingEverywhere, OnlyTheCouplingWhoseFactsWereChangedIsInDoubt)
{
    ToldFile file;
    file.today(900);
    file.doctorTheLast(500);
    const std::vector<Told> all = toldEverywhere(file.store, file.hangar.airframe);
    EXPECT_EQ(saidOf(all, "Left aileron"), Says::InDoubt);
    EXPECT_EQ(saidOf(all, "Right aileron"), Says::NotRead);
}

// Beside what is graver it is told too, and on the screen where the facts are.
TEST(StandingEverywhere, SaysInWordsThatAnotherProgramChangedFactsItRestsOn)
{
    ToldFile file;
    file.store.clock().set(kDay);
    file.today(500);
    file.doctorTheBaseline();
    const std::map<std::string, QString> said = saidOfLeftAileron(file.store, file.hangar.airframe);
    EXPECT_EQ(said.size(), 9U);
    for (const auto& [place, words] : said)
        EXPECT_TRUE(words.contains("facts in doubt") ||
                    words.contains("another program changed facts it rests on, or may have"))
            << place << ": " << words.toStdString();

    CouplingStanding standing;
    standing.says = Says::Outside;
    standing.factsInDoubt = true;
    EXPECT_EQ(StandingWords::inFull(standing),
              "Outside the band; another program changed facts it rests on, or may have");
}

// All that is said of the left aileron, place by place, while the right one was wrong in the control check.
TEST(StandingEverywhere, NamesTheSurfaceThatWasWrongWhereAJointIsMarkedBecauseOfAnother)
{
    ToldFile file;
    file.store.clock().set(kDay); // the record is the day's, and its card is shown
    file.sidesAreSaid();
    file.today(500);
    file.rightAileronIsInDoubt();
    const std::map<std::string, QString> said = saidOfLeftAileron(file.store, file.hangar.airframe);
    EXPECT_EQ(said.size(), 9U);
    for (const auto& [place, words] : said) {
        EXPECT_TRUE(words.contains("Right aileron wrong or not seen"))
            << place << ": " << words.toStdString();
        EXPECT_FALSE(words.contains("its surface")) << place << ": " << words.toStdString();
    }
}

TEST(StandingEverywhere, NamesAnotherSurfaceInTheListWithinItsRow)
{
    ToldFile file;
    file.store.clock().set(kDay);
    file.sidesAreSaid();
    file.today(500);
    file.rightAileronIsInDoubt();
    const RiggedTodayPresenter presenter{file.store.records(), file.store.clock()};
    const RiggedTodayView view = must(presenter.view(file.hangar.airframe));
    const QString word = StandingWords::word(view.standings.at(file.hangar.leftAileron));
    for (const double scale : {1.0, 1.5}) {
        RecordList list;
        const Look look = lookAt(scale);
        list.setLook(look);
        list.display(view, {});
        showAt(list, {list.width(), 700}, look);
        const double beside = 46 * scale; // the mark, and room around it
        EXPECT_LE(QFontMetricsF{fontOf(look.fonts.small())}.horizontalAdvance(word),
                  part(list, "recordRow1").width() - beside)
            << word.toStdString() << " at " << scale;
    }
}

// By the rules of before: the glance told what was shown with the last reading, the ranking judged the
// latest.
TEST(StandingEverywhere, IsFoundOutWhenTwoPlacesGoByRulesOfTheirOwn)
{
    ToldFile file;
    file.today(900);
    file.ask(QuestionKind::OutsideReading);
    file.read(500, SeatState::Locked, 12);
    std::vector<Told> all = toldEverywhere(file.store, file.hangar.airframe);
    ASSERT_EQ(listOf(disagreements(all)), "");
    for (const char* place : {"the record's glance", "Before the annual"}) {
        std::vector<Told> byItself = all;
        const auto left = std::ranges::find_if(byItself, [place](const Told& one) {
            return one.place == place && one.coupling == "Left aileron";
        });
        ASSERT_NE(left, byItself.end()) << place;
        const AirframeFacts facts = must(factsOf(file.store.records(), file.hangar.airframe));
        const RecordSummary summary = summaryOf(facts, must(file.store.records().content(file.rigged)));
        left->says = saysOf(summary.couplings.front().last()->judgement.verdict);
        EXPECT_EQ(disagreements(byItself).size(), 1U) << place;
    }
}

TEST(Standing, AReadingOfAnotherRiggingIsSaidToBeTheLastOneBesideWhatIsAsked)
{
    CouplingStanding standing;
    standing.says = Says::Asked;
    standing.asked = QuestionKind::CannotSee;
    standing.askedIn = RecordId{{1}};
    standing.reading = Reading{};
    standing.reading->record = RecordId{{2}};
    standing.reading->interval = between(1200, 1250);
    EXPECT_TRUE(StandingWords::withReading(standing).contains("; last read: 1.20"))
        << StandingWords::withReading(standing).toStdString();
    standing.reading->record = standing.askedIn;
    EXPECT_FALSE(StandingWords::withReading(standing).contains("last read"));
}
