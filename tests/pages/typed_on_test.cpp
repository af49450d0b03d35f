// Somebody types on without a look at the screen. What was meant for something else answers nothing.

#include "app/pages/rigged_today/rigged_today_page.h"
#include "core/rigging/rigging_flow.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/sleeve_joint.h"
#include "tests/support/who_connected.h"

#include <QPushButton>
#include <QShortcut>

#include <algorithm>

using namespace rig;
using namespace rig::test;

namespace {

// At the left aileron, with its band; the right one comes next.
class TypedOn : public testing::Test
{
protected:
    TypedOn()
    {
        takeTwelve(store, hangar);
        store.clock().passMinutes(24 * 60);
        page.showAirframe(hangar.airframe);
        showAt(page, {1280, 744});
        part<QComboBox>(page, "leader").setCurrentIndex(1);
        part<QPushButton>(page, "begin").click();
        if (part(page, "seasonNext").isVisible())
            part<QPushButton>(page, "seasonNext").click();
        passWhoConnected(page);
        EXPECT_EQ(textOf(page, "couplingTitle"), "Left aileron");
    }

    void slowly(const char* keys) { typeSlowly(page, keys); }

    // Each key is taken and shown before the next, but nobody looks.
    void inOneBurst(const char* keys)
    {
        for (const char* key = keys; *key; ++key) {
            QTest::keyClick(&page, *key == '\r' ? Qt::Key_Return : QTest::asciiToKey(*key));
            QApplication::processEvents();
        }
    }

    // In how many places that are seen.
    int timesSaid(const QString& sentence) const
    {
        const auto all = page.findChildren<QLabel*>();
        return static_cast<int>(std::ranges::count_if(all, [&sentence](const QLabel* one) {
            return one->isVisible() && one->text().contains(sentence);
        }));
    }

    RecordContent content()
    {
        lookUp();
        return must(store.records().content(must(store.records().riggingRecords(hangar.airframe)).back().id));
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
};

} // namespace

TEST_F(TypedOn, BehindAnEnterThatLeavesAStopNothingAnswersAtTheNextJoint)
{
    slowly("yyy1.00\r\r");
    ASSERT_TRUE(part(page, "stopCard").isVisible());
    inOneBurst("\ryyy0.70\ryy");
    EXPECT_EQ(textOf(page, "couplingTitle"), "Right aileron");
    EXPECT_EQ(content().checks.size(), 3U) << "nobody has looked at the next one";
    slowly("y");
    EXPECT_EQ(content().checks.size(), 4U) << "who has looked answers";
}

TEST_F(TypedOn, BehindAReadingThatIsNotInsideNothingIsAnsweredBeforeItIsSeen)
{
    for (const auto& [keys, word] :
         {std::pair{"0.40\ryy\r", "Near the edge of the band"}, std::pair{"0.55\ryy\r", "Cannot tell"}}) {
        SCOPED_TRACE(word);
        slowly(content().readings.empty() ? "yyy" : "m");
        inOneBurst(keys);
        EXPECT_EQ(textOf(page, "verdictWord"), word);
        EXPECT_EQ(textOf(page, "couplingTitle"), "Left aileron");
        EXPECT_EQ(content().checks.size(), 3U) << "nothing but the look was answered";
    }
    EXPECT_EQ(content().readings.size(), 2U);
    slowly("yy\r");
    EXPECT_EQ(content().checks.size(), 5U) << "who has looked goes on";
    EXPECT_EQ(textOf(page, "couplingTitle"), "Right aileron");
}

TEST_F(TypedOn, BehindAReadingInsideWhatIsTypedCounts)
{
    slowly("yyy");
    inOneBurst("0.50\ryy\r");
    EXPECT_EQ(content().checks.size(), 5U);
    EXPECT_EQ(textOf(page, "couplingTitle"), "Right aileron");
}

TEST_F(TypedOn, BehindAFigureThatIsRefusedNothingIsAnsweredOrRead)
{
    inOneBurst("0.75\ryy\ryyy1.00\ryy");
    EXPECT_TRUE(content().checks.empty());
    EXPECT_TRUE(content().readings.empty());
    EXPECT_EQ(timesSaid("The look comes first"), 1);
    slowly("yyy");
    inOneBurst("0.51\ryyyy"); // there is no such leaf
    EXPECT_EQ(content().checks.size(), 3U);
    EXPECT_TRUE(content().readings.empty());
    slowly("0.50\ryy");
    EXPECT_EQ(content().readings.size(), 1U) << "who has looked goes on";
}

TEST_F(TypedOn, EscOnAnOpenListClosesTheListAlone)
{
    slowly("yy");
    for (const char* key : {"b", "g"}) {
        slowly(key);
        ASSERT_TRUE(QApplication::activePopupWidget()) << key;
        for (auto* shortcut : page.findChildren<QShortcut*>())
            if (shortcut->key() == Qt::Key_Escape)
                emit shortcut->activated(); // before the list has the key
        EXPECT_FALSE(QApplication::activePopupWidget()) << key;
        EXPECT_TRUE(content().interruptions.empty()) << key;
    }
}

TEST_F(TypedOn, WhyAFigureIsNotTakenIsSaidOnce)
{
    inOneBurst("0.47\r");
    EXPECT_EQ(timesSaid("The look comes first"), 1);
    lookUp();
    slowly("yyy0.47\r");
    EXPECT_EQ(timesSaid("its neighbours are 0.45 and 0.50"), 1);
}
