// What holds for the boxes and labels of every page, also of parts that nobody has opened yet.

#include "app/pages/annual/annual_page.h"
#include "app/pages/learn/learn_page.h"
#include "app/pages/questions/questions_page.h"
#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/trends/trends_page.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"

#include <QAbstractSpinBox>
#include <QRegularExpression>
#include <QWheelEvent>

using namespace rig;
using namespace rig::test;

namespace {

class PageWithItsParts : public testing::Test
{
protected:
    PageWithItsParts()
    {
        takeTwelve(store, hangar);
        store.clock().passMinutes(24 * 60);
        for (Page* page : pages) {
            page->showAirframe(hangar.airframe);
            showAt(*page, {1280, 744});
        }
    }

    static void expectStill(QWidget& box, const char* value)
    {
        const QVariant before = box.property(value);
        for (const int turned : {-120, 120}) {
            QWheelEvent wheel{box.rect().center(),
                              box.mapToGlobal(box.rect().center()),
                              {},
                              {0, turned},
                              Qt::NoButton,
                              Qt::NoModifier,
                              Qt::NoScrollPhase,
                              false};
            QApplication::sendEvent(&box, &wheel);
            EXPECT_EQ(box.property(value), before) << box.objectName().toStdString() << turned;
        }
        EXPECT_NE(box.focusPolicy() & Qt::WheelFocus, Qt::WheelFocus) << box.objectName().toStdString();
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    RiggedTodayPage today{store.records(), store.clock(), prompts};
    TrendsPage trends{store.records(), store.clock()};
    AnnualPage annual{store.records(), store.clock(), prompts};
    LearnPage learn{store.records(), store.clock(), prompts};
    QuestionsPage questions{store.records()};
    SetUpPage setUp{store.records(), store.clock(), prompts};
    std::array<Page*, 6> pages{&today, &trends, &annual, &learn, &questions, &setUp};
};

} // namespace

TEST_F(PageWithItsParts, TheWheelChangesNoBoxThatItPassesOver)
{
    int boxes = 0;
    for (Page* page : pages) {
        for (QComboBox* box : page->findChildren<QComboBox*>()) {
            box->clear();
            box->addItems({QStringLiteral("One"), QStringLiteral("Two"), QStringLiteral("Three")});
            box->setCurrentIndex(1);
            expectStill(*box, "currentIndex");
            ++boxes;
        }
        for (auto* box : page->findChildren<QAbstractSpinBox*>()) {
            expectStill(*box, "value");
            ++boxes;
        }
    }
    EXPECT_GE(boxes, 30) << "all that there are";
}

TEST_F(PageWithItsParts, NoLabelShowsTheSignOfAKeyThatItHasNot)
{
    int keys = 0;
    for (Page* page : pages)
        for (const QLabel* label : page->findChildren<QLabel*>()) {
            const bool hasKey = label->text().contains(QRegularExpression{QStringLiteral("&\\w")});
            keys += hasKey;
            EXPECT_TRUE(!hasKey || label->buddy()) << label->text().toStdString();
        }
    EXPECT_GE(keys, 20);
}
