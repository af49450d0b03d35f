// A rigging without the laptop, typed in on another day: keyboard only, from the start card to its record.

#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/report/record_report.h"
#include "app/wording/rigged_words.h"
#include "core/review/record_summary.h"
#include "core/store/airframe_facts.h"
#include "tests/report/pages.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/sleeve_joint.h"
#include "tests/support/typing.h"
#include "tests/support/who_connected.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>

#include <algorithm>

using namespace rig;
using namespace rig::test;

namespace {

class PaperJourney : public testing::TestWithParam<Pace>
{
protected:
    PaperJourney()
    {
        store.clock().set(dayOf(2026, 4, 1));
        takeTwelve(store, hangar);
        store.clock().set(dayOf(2026, 5, 20));
        page.resize(1280, 744);
        page.show();
        page.showAirframe(hangar.airframe);
        QObject::connect(&page, &Page::problemArose, &page,
                         [this](const QString& sentence) { problem = sentence; });
    }

    void press(Qt::Key key) { typist.press(key); }
    void type(const QString& text) { typist.type(text); }

    QString text(const char* label)
    {
        Typist::look();
        return part<QLabel>(page, label).text();
    }

    void chooseIn(const char* box, int row)
    {
        auto& choice = part<QComboBox>(page, box);
        choice.setCurrentIndex(row);
        emit choice.activated(row);
    }

    // Oren first, Vale second, typed by Oren.
    void fillHead(const QString& day, const QString& time = "09:30", const char* before = "paperApart")
    {
        Typist::look();
        if (!part(page, "paperDay").isVisible()) {
            page.setFocus();
            type("p");
            Typist::look();
        }
        part<QLineEdit>(page, "paperDay").setText(day);
        part<QLineEdit>(page, "paperTime").setText(time);
        chooseIn("paperFirst", 1);
        chooseIn("paperSecond", 2);
        chooseIn("paperTypist", 1);
        part<QRadioButton>(page, before).setChecked(true);
        typist.goTo("paperDay");
        press(Qt::Key_Return);
        Typist::look();
    }

    void leaveSeasonList()
    {
        Typist::look();
        if (part(page, "seasonNext").isVisible()) {
            typist.goTo("seasonNext");
            press(Qt::Key_Return);
        }
        passWhoConnected(page, typist);
    }

    RecordContent content()
    {
        Typist::look();
        for (const RiggingRecord& record : must(store.records().riggingRecords(hangar.airframe)))
            if (record.enteredBy)
                return must(store.records().content(record.id));
        ADD_FAILURE() << "no record from paper";
        return {};
    }

    std::size_t records() { return must(store.records().riggingRecords(hangar.airframe)).size(); }

    RecordId riggedOn(Day day, Closing closing = Closing::LeftOpen)
    {
        const RecordId record = must(store.records().add(hangar.record(noonOf(day))));
        RecordClose close;
        close.record = record;
        close.closing = closing;
        close.first = hangar.oren;
        close.second = hangar.vale;
        must(store.records().add(close));
        page.showAirframe(hangar.airframe);
        return record;
    }

    void happened(Day day, EventKind kind)
    {
        Event event;
        event.airframe = hangar.airframe;
        event.kind = kind;
        event.day = day;
        must(store.records().add(event));
        page.showAirframe(hangar.airframe);
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
    Typist typist{page, GetParam()};
    QString problem;
};

INSTANTIATE_TEST_SUITE_P(Typing, PaperJourney, kPaces, nameOfPace);

} // namespace

TEST_P(PaperJourney, KeepsItsDayItsNamesAndThatItWasEnteredLater)
{
    fillHead("2026-05-09");
    leaveSeasonList();
    EXPECT_TRUE(text("paperBannerText").startsWith("Entered from paper: 9 May 2026"))
        << text("paperBannerText").toStdString();
    type("yyy0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "Inside the band");
    type("yy");
    const RecordContent now = content();
    EXPECT_EQ(now.record.enteredBy, hangar.oren);
    EXPECT_EQ(now.record.begins.localDay(), dayOf(2026, 5, 9));
    EXPECT_EQ(now.record.stamp.when.localDay(), dayOf(2026, 5, 20));
    ASSERT_EQ(now.readings.size(), 1U);
    EXPECT_EQ(now.readings[0].when.localDay(), dayOf(2026, 5, 9));
    EXPECT_EQ(now.readings[0].stamp.when.localDay(), dayOf(2026, 5, 20));
    EXPECT_EQ(now.readings[0].person, hangar.oren);
    ASSERT_EQ(now.checks.size(), 5U);
    EXPECT_EQ(now.checks[0].when, now.record.begins);
    EXPECT_EQ(problem.toStdString(), "");
}

TEST_P(PaperJourney, MarksTheSecondColumnAsCopiedUnlessTheSecondPersonTypes)
{
    fillHead("2026-05-09");
    leaveSeasonList();
    type("yyy0.5");
    press(Qt::Key_Return);
    type("yy");
    Typist::look();
    type("s");
    Typist::look();
    EXPECT_TRUE(text("paperBannerText").contains("marked as copied by M. Oren"))
        << text("paperBannerText").toStdString();
    type("y");
    Typist::look();
    press(Qt::Key_F8);
    EXPECT_TRUE(text("paperBannerText").contains("types their own column"))
        << text("paperBannerText").toStdString();
    type("y");
    std::vector<std::optional<PersonId>> copied;
    for (const Check& check : content().checks)
        if (check.turn == Turn::Second) {
            EXPECT_EQ(check.person, hangar.vale);
            copied.push_back(check.copiedBy);
        }
    EXPECT_EQ(copied, (std::vector<std::optional<PersonId>>{hangar.oren, std::nullopt}));
    const AirframeFacts facts = must(factsOf(store.records(), hangar.airframe));
    const QString words =
        test::textsOf(layoutRecord(summaryOf(facts, content()), {Paper::A4, dayOf(2026, 5, 20), "Rigband"}))
            .join(QLatin1Char(' '));
    EXPECT_TRUE(words.contains("Entered later from paper by M. Oren, 20 May 2026")) << words.toStdString();
    EXPECT_TRUE(words.contains("copied from paper by M. Oren")) << words.toStdString();
}

TEST_P(PaperJourney, IsJudgedAsOfItsDay)
{
    GaugeCheck doubt;
    doubt.gauge = hangar.setA;
    doubt.day = dayOf(2026, 5, 1);
    doubt.how = "micrometer";
    doubt.found = "bent";
    doubt.quarantineFrom = dayOf(2026, 4, 20);
    must(store.records().add(doubt));
    doubt.day = dayOf(2026, 5, 3);
    doubt.found = "a new leaf";
    doubt.quarantineFrom.reset();
    must(store.records().add(doubt));
    Fitting fitting;
    fitting.coupling = hangar.leftAileron;
    fitting.begins = dayOf(2026, 5, 12);
    fitting.kind = FittingKind::Refitted;
    const FittingId later = must(store.records().add(fitting));
    page.showAirframe(hangar.airframe);
    fillHead("2026-04-25");
    leaveSeasonList();
    type("yyy0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "Cannot tell") << "the set was in doubt on that day";
    EXPECT_EQ(content().readings.at(0).fitting, hangar.leftFitting);
    EXPECT_NE(content().readings.at(0).fitting, later);
}

TEST_P(PaperJourney, OfADayBeforeTheFirstFittingHasNoBandYet)
{
    fillHead("2026-02-27");
    leaveSeasonList();
    type("yyy0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "No band yet");
    EXPECT_EQ(content().readings.at(0).fitting, hangar.leftFitting);
}

TEST_P(PaperJourney, AsksAnotherSecondPersonAfreshAndGoesOnWithThatOneWhenItIsOpenedAgain)
{
    const PersonId zacc = must(store.records().add(aPerson("Z. Quill")));
    page.showAirframe(hangar.airframe);
    fillHead("2026-05-09");
    leaveSeasonList();
    type("yyy0.5");
    press(Qt::Key_Return);
    type("yy");
    Typist::look();
    type("s");
    Typist::look();
    type("yy");
    Typist::look();
    chooseIn("measuredBy", 3);
    const auto labels = page.findChildren<QLabel*>();
    Typist::look();
    EXPECT_TRUE(std::ranges::any_of(labels, [](const QLabel* label) {
        return label->isVisible() && label->text().contains("half answered for another person");
    }));
    const auto second = [this] { return flowOfSleeve(content(), hangar.leftAileron, Turn::Second); };
    EXPECT_FALSE(second().begun);
    EXPECT_EQ(content().interruptions.size(), 1U);
    type("y");
    Typist::look();
    EXPECT_EQ(content().checks.back().person, zacc);
    page.end();
    RiggedTodayPage next{store.records(), store.clock(), prompts};
    next.resize(1280, 744);
    next.show();
    next.showAirframe(hangar.airframe);
    Typist::look();
    EXPECT_EQ(part<QComboBox>(next, "measuredBy").currentText(), "M. Oren") << "the other joint is undone";
    Typist{next, GetParam()}.type("s");
    Typist::look();
    EXPECT_EQ(part<QComboBox>(next, "measuredBy").currentText(), "Z. Quill");
    EXPECT_EQ(content().interruptions.size(), 1U) << "only the typing was broken off";
}

TEST_P(PaperJourney, ShowsOfItsJointsNothingThatWasReadAfterItsDay)
{
    RecordClose close;
    close.record = must(store.records().add(hangar.record(noonOf(dayOf(2026, 5, 16)))));
    close.first = hangar.oren;
    close.second = hangar.vale;
    Reading outside = hangar.reading(between(900, 950), noonOf(dayOf(2026, 5, 16)));
    outside.purpose = Purpose::Rigging;
    outside.record = close.record;
    must(store.records().add(outside, std::nullopt));
    must(store.records().add(close));
    page.showAirframe(hangar.airframe);
    fillHead("2026-05-09");
    leaveSeasonList();
    const RiggedTodayPresenter presenter{store.records(), store.clock()};
    const RiggedTodayView view = must(presenter.view(hangar.airframe));
    ASSERT_TRUE(view.record && view.record->enteredBy);
    EXPECT_EQ(view.standings.at(hangar.leftAileron).says, Says::NotRead);
    EXPECT_FALSE(view.standings.at(hangar.leftAileron).reading);
}

TEST_P(PaperJourney, OneReturnBeginsItAndPassesNothingOver)
{
    fillHead("2026-05-09");
    EXPECT_EQ(records(), 1U);
    EXPECT_TRUE(part(page, "seasonNext").isVisible());
}

TEST_P(PaperJourney, KnowsNothingOfWhatWasCheckedAfterItsDay)
{
    GaugeCheck check;
    check.gauge = hangar.setA;
    check.day = dayOf(2026, 5, 15);
    check.how = "micrometer";
    must(store.records().add(check));
    page.showAirframe(hangar.airframe);
    fillHead("2026-05-09");
    leaveSeasonList();
    EXPECT_EQ(text("leafNote"), RiggedWords::gaugeNeverChecked("A"));
}

TEST_P(PaperJourney, IsGoneThroughWholeForWhatHadBeenDoneByItsDayAlone)
{
    happened(dayOf(2026, 5, 12), EventKind::Greased);
    fillHead("2026-05-09", "09:30", "paperStood");
    EXPECT_EQ(content().record.origin, RecordOrigin::Recheck) << "it was greased later";
    leaveSeasonList();
    EXPECT_FALSE(part(page, "couplingTold").isVisible());
}

TEST_P(PaperJourney, IsGoneThroughWholeThoughALaterRiggingWas)
{
    happened(dayOf(2026, 5, 5), EventKind::Greased);
    riggedOn(dayOf(2026, 5, 16), Closing::Complete);
    fillHead("2026-05-09", "09:30", "paperStood");
    EXPECT_EQ(content().record.origin, RecordOrigin::Rigging);
    leaveSeasonList();
    EXPECT_TRUE(text("couplingTold").contains("5 May 2026")) << text("couplingTold").toStdString();
}

TEST_P(PaperJourney, LosesNoKeyToAPauseOfWhoeverTypesItIn)
{
    fillHead("2026-05-09");
    leaveSeasonList();
    type("y");
    Typist::look();
    store.clock().passMinutes(45);
    type("y");
    EXPECT_EQ(content().checks.size(), 2U);
}

TEST_P(PaperJourney, AsksBeforeItIsLeftInTheMiddle)
{
    EXPECT_TRUE(page.leftUndone().isEmpty());
    page.enterFromPaper();
    EXPECT_TRUE(page.leftUndone().isEmpty()) << "nothing is typed yet";
    part<QLineEdit>(page, "paperDay").setText("2026-05-09");
    EXPECT_TRUE(page.leftUndone().contains("is lost")) << page.leftUndone().toStdString();
    EXPECT_TRUE(page.lostWithTheLanguage().contains("is lost"));
    fillHead("2026-05-09");
    EXPECT_TRUE(page.leftUndone().contains("9 May 2026")) << page.leftUndone().toStdString();
    EXPECT_TRUE(page.lostWithTheLanguage().isEmpty()) << "the window of another language goes on with it";
}

TEST_P(PaperJourney, IsOpenedByNobodyBeforeThereIsSomethingToMeasureWith)
{
    Gauge set = must(store.records().gauges()).front();
    set.inUse = false;
    must(store.records().add(set));
    page.showAirframe(hangar.airframe);
    page.enterFromPaper();
    Typist::look();
    EXPECT_FALSE(part(page, "paperDay").isVisible());
    EXPECT_TRUE(part(page, "startMissing").isVisible());
}

TEST_P(PaperJourney, SaysOnEveryPanelThatARiggingIsOpen)
{
    must(store.records().add(hangar.record(store.clock().now())));
    page.showAirframe(hangar.airframe);
    part<QAbstractButton>(page, "recordRow6").click();
    ASSERT_TRUE(part(page, "closeRecord").isVisible());
    page.enterFromPaper();
    EXPECT_TRUE(text("riggingNews").contains("Close it first")) << text("riggingNews").toStdString();
}

TEST_P(PaperJourney, ReturnBeginsItAlsoWithTheFocusOnWhetherItWasTakenApart)
{
    fillHead("2026-04-04", {}); // refused without its hour
    part<QLineEdit>(page, "paperTime").setText("09:30");
    typist.goTo("paperApart");
    press(Qt::Key_Return);
    EXPECT_EQ(content().record.begins.localDay(), dayOf(2026, 4, 4));
}

TEST_P(PaperJourney, AStopOnItIsNoAdviceForTodayButAsksWhatWasDone)
{
    fillHead("2026-04-04");
    leaveSeasonList();
    type("yyn");
    Typist::look();
    EXPECT_TRUE(part(page, "stopCard").isVisible());
    EXPECT_TRUE(text("stopCall").startsWith("Found on 4 April 2026, as the paper says."))
        << text("stopCall").toStdString();
    EXPECT_EQ(text("stopTodo").indexOf("Tag the cockpit"), -1);
    EXPECT_TRUE(text("stopTodo").startsWith("If nobody has resolved it, the stop holds today too"));
}

TEST_P(PaperJourney, RefusesADayThatCannotBe)
{
    const std::pair<const char*, const char*> table[] = {
        {"2026-05-21", "still to come"},
        {"9.5.2026", "is no day"},
        {"", "Type the day that stands on the sheet"},
    };
    for (const auto& [day, about] : table) {
        fillHead(day);
        EXPECT_TRUE(text("paperRefused").contains(about))
            << day << ": " << text("paperRefused").toStdString();
    }
    fillHead("2026-05-09", "half past nine");
    EXPECT_TRUE(text("paperRefused").contains("is no time of day")) << text("paperRefused").toStdString();
    EXPECT_EQ(records(), 0U);
    press(Qt::Key_Escape);
    Typist::look();
    EXPECT_TRUE(part(page, "begin").isVisible());
    fillHead("2026-05-09", "");
    EXPECT_TRUE(text("paperRefused").startsWith("Write when it began")) << "no hour is made up";
    EXPECT_EQ(records(), 0U);
}

TEST_P(PaperJourney, AsksWhetherItIsTheRiggingThatStandsThereAlready)
{
    riggedOn(dayOf(2026, 5, 9));
    fillHead("2026-05-09");
    EXPECT_TRUE(text("paperRefused").contains("led by M. Oren")) << text("paperRefused").toStdString();
    EXPECT_EQ(records(), 1U) << "nothing is begun";
    typist.goTo("paperAnother");
    press(Qt::Key_Space);
    typist.goTo("paperBegin");
    press(Qt::Key_Space);
    EXPECT_EQ(content().record.begins.localDay(), dayOf(2026, 5, 9));
    EXPECT_EQ(records(), 2U);
}

TEST_P(PaperJourney, IsGoneOnWithOnAnotherDayAndWithoutAnInterruption)
{
    fillHead("2026-05-09");
    leaveSeasonList();
    type("yy");
    Typist::look();
    page.end();
    store.clock().set(dayOf(2026, 5, 23));
    RiggedTodayPage next{store.records(), store.clock(), prompts};
    next.resize(1280, 744);
    next.show();
    next.showAirframe(hangar.airframe);
    Typist::look();
    EXPECT_TRUE(part<QLabel>(next, "paperBannerText").isVisible());
    EXPECT_EQ(part<QLabel>(next, "couplingTitle").text(), "Left aileron");
    EXPECT_TRUE(content().interruptions.empty());
    EXPECT_EQ(content().checks.size(), 2U);
    EXPECT_FALSE(content().close) << "it is not left behind";
}

TEST_P(PaperJourney, DoesNotPushAnOpenRiggingAside)
{
    must(store.records().add(hangar.record(store.clock().now())));
    page.showAirframe(hangar.airframe);
    page.enterFromPaper();
    Typist::look();
    EXPECT_FALSE(part(page, "paperDay").isVisible());
    EXPECT_EQ(records(), 1U);
    const auto labels = page.findChildren<QLabel*>();
    EXPECT_TRUE(std::ranges::any_of(labels, [](const QLabel* label) {
        return label->isVisible() && label->text().contains("Close it first, then enter the one from paper");
    }));
}

TEST_P(PaperJourney, LeavesTheLastRecordToTheDayOfTheRigging)
{
    riggedOn(dayOf(2026, 5, 16));
    fillHead("2026-05-09");
    leaveSeasonList();
    RecordClose close;
    close.record = content().record.id;
    close.closing = Closing::LeftOpen;
    close.first = hangar.oren;
    close.second = hangar.vale;
    must(store.records().add(close));
    page.showAirframe(hangar.airframe);
    EXPECT_TRUE(text("lastRecord").contains("20 May 2026") || text("lastRecord").contains("16 May 2026"))
        << text("lastRecord").toStdString();
    EXPECT_FALSE(text("lastRecord").contains("9 May 2026")) << text("lastRecord").toStdString();
}

TEST_P(PaperJourney, TakesATimeAsItIsWrittenByHand)
{
    fillHead("2026-05-09", "24.30");
    EXPECT_TRUE(text("paperRefused").contains("is no time of day"));
    fillHead("2026-05-09", "9.30");
    EXPECT_EQ(records(), 1U) << text("paperRefused").toStdString();
}
