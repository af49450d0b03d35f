// A spoiled reading: the usual reasons are one press away, and nothing is struck without one.

#include "app/pages/prompts.h"
#include "app/pages/trends/readings_model.h"
#include "app/pages/trends/trends_presenter.h"
#include "app/wording/prompt_words.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"

#include <QLineEdit>
#include <QPushButton>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class OfferedReasons : public testing::Test
{
protected:
    OfferedReasons()
    {
        showAt(window, {1024, 740});
        prompts.askText(&window, "Strike it", "Why was it no reading?", PromptWords::noReadingHere(),
                        [this](const QString& reason) { given << reason; });
        QApplication::processEvents();
    }

    QLineEdit& line() { return part<QLineEdit>(window, "promptLine"); }

    QWidget window;
    WindowPrompts prompts;
    QStringList given;
};

} // namespace

TEST_F(OfferedReasons, StandBesideTheLineEachWithItsKey)
{
    const QStringList all = PromptWords::noReadingHere();
    for (const char* one : {"Wrong leaf", "Wrong coupling", "Misread", "Wrong person"})
        EXPECT_TRUE(all.contains(one)) << one;
    EXPECT_EQ(part<QPushButton>(window, "promptOffer1").text().toStdString(), "Wrong leaf  (Alt+1)");
    EXPECT_TRUE(part(window, "promptOffer6").isVisible());
}

TEST_F(OfferedReasons, AreGivenByOnePressOfAButton)
{
    part<QPushButton>(window, "promptOffer2").click();
    EXPECT_EQ(given, QStringList{"Misread"});
}

TEST_F(OfferedReasons, AreGivenByTheirKeyFromWithinTheLine)
{
    QTest::keyClick(&line(), Qt::Key_3, Qt::AltModifier);
    EXPECT_EQ(given, QStringList{"Leaf bent or tilted"});
}

TEST_F(OfferedReasons, TakeWhatWasTypedBesidesBehindThem)
{
    QTest::keyClicks(&line(), "0.55 for 0.65");
    QTest::keyClick(&line(), Qt::Key_1, Qt::AltModifier);
    EXPECT_EQ(given, QStringList{"Wrong leaf; 0.55 for 0.65"});
}

TEST_F(OfferedReasons, AreNotNeededForAReasonOfOnesOwn)
{
    QTest::keyClicks(&line(), "glove in the way");
    QTest::keyClick(&line(), Qt::Key_Return);
    EXPECT_EQ(given, QStringList{"glove in the way"});
}

TEST(StruckReading, StandsInTheTableOfTrendsStruckThroughWithItsReason)
{
    TempStore store;
    const Hangar hangar{store.records()};
    Reading reading = hangar.reading(between(450, 500), store.clock().now());
    reading.record = must(store.records().add(hangar.record(store.clock().now())));
    Exclusion strike;
    strike.reading = must(store.records().add(reading, std::nullopt));
    strike.reason = "Wrong coupling";
    strike.stamp.by = hangar.oren;
    must(store.records().add(strike));
    const TrendsView view = must(TrendsPresenter{store.records(), store.clock()}.view(hangar.airframe, {}));
    ReadingsModel model;
    model.display(view.find(hangar.leftAileron)->readings);
    ASSERT_EQ(model.rowCount(), 1);
    const auto note = model.index(0, static_cast<int>(ReadingColumn::Note));
    EXPECT_TRUE(model.data(note, Qt::DisplayRole).toString().contains("Wrong coupling"));
    const auto enters = model.index(0, static_cast<int>(ReadingColumn::Enters));
    EXPECT_TRUE(model.data(enters, Qt::FontRole).value<QFont>().strikeOut());
}
