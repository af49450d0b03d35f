// The sheet for a rigging without the laptop, as Set up makes it: keys only.

#include "app/pages/setup/setup_page.h"
#include "tests/support/hangar.h"
#include "tests/support/scripted_prompts.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTest>

#include <filesystem>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class PaperPanelTest : public testing::Test
{
protected:
    PaperPanelTest()
    {
        must(store.records().add(hangar.reading(between(600, 650), store.clock().now()), std::nullopt));
        page.resize(1280, 744);
        page.show();
        QObject::connect(&page, &Page::problemArose, &page,
                         [this](const QString& sentence) { problem = sentence; });
        page.showAirframe(hangar.airframe);
        page.showPart(SetUpPart::Paper);
        QCoreApplication::processEvents();
    }

    template <typename Widget> Widget* child(const char* name)
    {
        return page.findChild<Widget*>(QLatin1String(name));
    }

    void saveAs(const std::string& name)
    {
        prompts.saveFiles.push_back(folder.file(name));
        QTest::keyClick(child<QPushButton>("saveSheet"), Qt::Key_Space);
    }

    TempStore store;
    Hangar hangar{store.records()};
    TempFolder folder;
    ScriptedPrompts prompts;
    QString problem;
    SetUpPage page{store.records(), store.clock(), prompts};
};

} // namespace

TEST_F(PaperPanelTest, WritesTheSheetOfTheAirframeInHand)
{
    saveAs("sheet.pdf");
    ASSERT_EQ(prompts.suggested.size(), 1U);
    EXPECT_EQ(prompts.suggested.front(), "QX-17-sheet.pdf");
    EXPECT_TRUE(std::filesystem::exists(folder.file("sheet.pdf")));
    EXPECT_TRUE(child<QLabel>("sheetSaid")->text().contains("sheet.pdf"));
    EXPECT_EQ(problem.toStdString(), "");
}

TEST_F(PaperPanelTest, OffersTheGaugeThatWasUsedLastAndEachPaper)
{
    EXPECT_EQ(child<QComboBox>("sheetGauge")->currentText(), "A");
    auto* paper = child<QComboBox>("sheetPaper");
    ASSERT_EQ(paper->count(), 3);
    EXPECT_EQ(paper->itemText(2), "A5");
    for (QComboBox* box : {paper, child<QComboBox>("sheetGauge")})
        EXPECT_FALSE(box->accessibleName().isEmpty());
}

TEST_F(PaperPanelTest, OpensNoEntryThatTheStartOfARiggingRefuses)
{
    EXPECT_TRUE(child<QPushButton>("enterFromPaper")->isEnabled());
    Gauge set = must(store.records().gauges()).front();
    set.inUse = false;
    must(store.records().add(set));
    page.showAirframe(hangar.airframe);
    EXPECT_FALSE(child<QPushButton>("enterFromPaper")->isEnabled()) << "there is nothing to measure with";
}

TEST_F(PaperPanelTest, SaysWhenTheSheetCannotBeWritten)
{
    saveAs("none/sheet.pdf");
    EXPECT_TRUE(problem.contains("cannot be written")) << problem.toStdString();
}

TEST_F(PaperPanelTest, IsReachedByItsKey)
{
    page.showPart(SetUpPart::People);
    page.activateWindow();
    QTest::keyClick(&page, Qt::Key_9, Qt::AltModifier);
    EXPECT_TRUE(child<QPushButton>("saveSheet")->isVisible());
}
