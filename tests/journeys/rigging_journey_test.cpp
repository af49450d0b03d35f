// The owner after rigging: keyboard only, from the start of the record to its close.

#include "app/pages/rigged_today/rigged_today_page.h"
#include "tests/support/hangar.h"
#include "tests/support/scripted_prompts.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class RiggingJourney : public testing::Test
{
protected:
    RiggingJourney()
    {
        for (int i = 0; i < 12; ++i) {
            Reading reading =
                hangar.reading(between(i % 3 ? 500 : 450, i % 3 ? 550 : 500), store.clock().now());
            reading.purpose = Purpose::Baseline;
            must(store.records().add(reading, std::nullopt));
        }
        store.clock().passMinutes(24 * 60);
        page.resize(1280, 744);
        page.show();
        page.showAirframe(hangar.airframe);
        QObject::connect(&page, &Page::problemArose, &page,
                         [this](const QString& sentence) { problem = sentence; });
    }

    // Whatever has the focus gets the key, as at a real keyboard; without one it is the page.
    void press(Qt::Key key)
    {
        QWidget* target = page.focusWidget() ? page.focusWidget() : &page;
        QTest::keyClick(target, key);
        QCoreApplication::processEvents();
    }

    void type(const QString& text)
    {
        for (const QChar c : text) {
            QWidget* target = page.focusWidget() ? page.focusWidget() : &page;
            QTest::keyClicks(target, QString{c});
            QCoreApplication::processEvents();
        }
    }

    QString text(const char* label) { return page.findChild<QLabel*>(QLatin1String(label))->text(); }

    void begin()
    {
        page.findChild<QComboBox*>("leader")->setFocus();
        press(Qt::Key_Down); // M. Oren
        press(Qt::Key_Tab);
        press(Qt::Key_Return);
    }

    void chooseSecond()
    {
        auto* person = page.findChild<QComboBox*>("measuredBy");
        person->setFocus();
        press(Qt::Key_Down); // the first of those who may be second
    }

    RecordContent content()
    {
        const auto records = must(store.records().riggingRecords(hangar.airframe));
        EXPECT_FALSE(records.empty());
        return must(store.records().content(records.back().id));
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
    QString problem;
};

} // namespace

TEST_F(RiggingJourney, GoesFromTheLookToTheCloseWithTwoNames)
{
    begin();
    EXPECT_EQ(text("recordProgress"), "0 of 2 couplings done");
    EXPECT_EQ(text("couplingTitle"), "Left aileron");

    type("yyy0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "Inside the band");
    EXPECT_TRUE(text("verdictCaution").contains("one sign only"));
    EXPECT_TRUE(text("verdictKept").startsWith("saved"));
    type("yy");
    EXPECT_EQ(text("recordProgress"), "1 of 2 couplings done");
    press(Qt::Key_Return);

    EXPECT_EQ(text("couplingTitle"), "Right aileron");
    type("yyy0,60");
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "No band yet");
    type("yy");
    EXPECT_EQ(text("recordProgress"), "2 of 2 couplings done");
    press(Qt::Key_Return);

    EXPECT_EQ(text("couplingTitle"), "Left aileron") << "the second inspection begins";
    for (const QPushButton* leaf : page.findChild<QWidget*>("leafRow")->findChildren<QPushButton*>())
        EXPECT_FALSE(leaf->isChecked()) << "the first person's reading shows: " << leaf->text().toStdString();
    chooseSecond();
    type("yyyy");
    press(Qt::Key_Return);
    type("yyyy");
    press(Qt::Key_Return);
    EXPECT_EQ(text("openItems"), "•  The list for the first rigging of the season is not finished\n"
                                 "•  Right aileron: no band yet, the reading could not be judged\n"
                                 "•  Control check: no surfaces are set up yet");

    page.findChild<QCheckBox*>("toolsCounted")->setFocus();
    press(Qt::Key_Space);
    page.findChild<QComboBox*>("closeFirst")->setFocus();
    press(Qt::Key_Down);
    page.findChild<QComboBox*>("closeSecond")->setFocus();
    press(Qt::Key_Down);
    page.findChild<QPushButton*>("closeRecord")->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(text("closeProblem"), "Both names are the same. The second person has to be somebody else.");
    EXPECT_FALSE(content().close);

    page.findChild<QComboBox*>("closeSecond")->setFocus();
    press(Qt::Key_Down);
    page.findChild<QPushButton*>("closeRecord")->setFocus();
    press(Qt::Key_Return);
    ASSERT_TRUE(content().close);
    EXPECT_EQ(content().close->closing, Closing::LeftOpen);
    EXPECT_EQ(content().close->first, hangar.oren);
    EXPECT_EQ(content().close->second, hangar.vale);
    EXPECT_TRUE(problem.isEmpty()) << problem.toStdString();
}

TEST_F(RiggingJourney, KeepsTheLeavesShutUntilTheBallIsSeen)
{
    begin();
    type("n");
    type("0.5");
    press(Qt::Key_Return);
    EXPECT_TRUE(content().readings.empty());
    EXPECT_TRUE(text("couplingNotice").contains("cannot be closed as complete"));
}

TEST_F(RiggingJourney, AnOutsideReadingSaysStopAndWhomToCallAndStands)
{
    Airframe airframe = must(store.records().airframes()).front();
    airframe.callName = "A. Quill";
    airframe.callPhone = "0700 0";
    must(store.records().add(airframe));
    page.showAirframe(hangar.airframe);
    begin();
    type("yyy0.9");
    press(Qt::Key_Return);
    EXPECT_EQ(text("verdictWord"), "Outside the band");
    EXPECT_TRUE(text("verdictCaution").contains("call A. Quill (0700 0)"));
    type("m0.5");
    press(Qt::Key_Return);
    EXPECT_EQ(content().readings.size(), 2U) << "measuring again adds, never replaces";
}

TEST_F(RiggingJourney, EscapeSendsTheCouplingBackToTheLook)
{
    begin();
    type("yyy");
    press(Qt::Key_Escape);
    EXPECT_EQ(content().interruptions.size(), 1U);
    EXPECT_TRUE(text("couplingNotice").startsWith("Interrupted at"));
    type("0.5");
    press(Qt::Key_Return);
    EXPECT_TRUE(content().readings.empty());
}

TEST_F(RiggingJourney, RefusesADoubtfulFigureWithASentenceAndKeepsNothing)
{
    begin();
    type("yyy1.234,5");
    press(Qt::Key_Return);
    EXPECT_TRUE(content().readings.empty());
    EXPECT_FALSE(text("leafNote").isEmpty());
    type("60");
    press(Qt::Key_Return);
    EXPECT_TRUE(content().readings.empty());
    type("0.62");
    press(Qt::Key_Return);
    EXPECT_TRUE(content().readings.empty());
    EXPECT_TRUE(text("leafNote").contains("0.60") && text("leafNote").contains("0.65"));
}

TEST_F(RiggingJourney, AWrongLeafIsCorrectedWithAReasonAndStaysInTheFile)
{
    begin();
    type("yyy0.55");
    press(Qt::Key_Return);
    prompts.texts.push_back("pressed the neighbour");
    type("w0.5");
    press(Qt::Key_Return);
    const RecordContent now = content();
    ASSERT_EQ(now.readings.size(), 2U);
    EXPECT_EQ(now.readings.back().corrects, now.readings.front().id);
    EXPECT_EQ(now.readings.back().note, "pressed the neighbour");
}
