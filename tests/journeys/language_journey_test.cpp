// The program in one language and then in another, around the same file.

#include "app/window/main_window.h"
#include "app/window/program.h"
#include "app/wording/verdict_words.h"
#include "app/wording/window_words.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/typing.h"
#include "tests/support/who_connected.h"

#include <QComboBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSettings>

using namespace rig;
using namespace rig::test;

namespace {

class LanguageJourney : public testing::Test
{
protected:
    LanguageJourney()
    {
        QSettings{}.clear();
        must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), {}));
        store.close();
    }
    ~LanguageJourney() override { QSettings{}.clear(); }

    void start()
    {
        program = std::make_unique<Program>(store.clock(), prompts, Look{});
        program->window().openPath(QString::fromStdString(store.path()), OpenAs::Existing);
        program->show();
        Typist::look();
    }
    // The press of a menu, and what the program does once it has ended.
    void ask(const QString& code)
    {
        program->window().askLanguage(code);
        Typist::look();
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    std::unique_ptr<Program> program;
};

} // namespace

TEST_F(LanguageJourney, ThePageThatWasShownComesBackInTheOtherLanguage)
{
    start();
    program->window().showMoment(Moments::Trends);
    const QString english = WindowWords::trends();
    ask("de");
    EXPECT_NE(WindowWords::trends(), english);
    EXPECT_EQ(program->window().moment(), Moments::Trends);
    EXPECT_TRUE(program->window().page(Moments::Trends)->isVisible());
    EXPECT_EQ(QLocale{}.decimalPoint(), QStringLiteral(","));
    ask("en");
    EXPECT_EQ(WindowWords::trends(), english);
}

TEST_F(LanguageJourney, WhatIsHalfDoneAtAJointGoesOnInTheOtherLanguageWhereItWas)
{
    start();
    const auto rigged = [this] { return program->window().page(Moments::RiggedToday); };
    part<QComboBox>(*rigged(), "leader").setCurrentIndex(1);
    part<QPushButton>(*rigged(), "begin").click();
    part<QPushButton>(*rigged(), "seasonNext").click();
    passWhoConnected(*rigged());
    typeSlowly(*rigged(), "yy");
    ask("de");
    typeSlowly(*rigged(), "y0,5\r");
    Typist::look();
    store.reopen();
    const auto records = must(store.records().riggingRecords(hangar.airframe));
    ASSERT_EQ(records.size(), 1U);
    const RecordContent content = must(store.records().content(records.front().id));
    EXPECT_EQ(content.checks.size(), 3U) << "what was answered stays answered";
    EXPECT_EQ(content.readings.size(), 1U);
    EXPECT_TRUE(content.interruptions.empty());
}

TEST_F(LanguageJourney, TheNextStartSpeaksTheLanguageThatWasChosenAndLooksAsItWasLeft)
{
    start();
    ask("fr");
    Look large;
    large.theme = Theme::dark();
    large.fonts.scale = 1.5;
    program->setLook(large);
    program->window().close();
    program.reset();
    const QString english = VerdictWords::word(Verdict::Inside);
    start();
    EXPECT_NE(VerdictWords::word(Verdict::Inside), english);
    EXPECT_EQ(program->window().look().theme.scheme(), Scheme::Dark);
    EXPECT_EQ(program->window().look().fonts.scale, 1.5);
}

TEST_F(LanguageJourney, TheNextStartHasTheColoursForSunlightAgain)
{
    start();
    program->setLook({Theme::outdoor(), {}});
    program->window().close();
    program.reset();
    start();
    EXPECT_EQ(program->window().look().theme.scheme(), Scheme::Sunlight);
}

TEST_F(LanguageJourney, AStartAfterAnOlderProgramIsAsDarkAsThatWasLeft)
{
    QSettings{}.setValue("look/dark", true);
    start();
    EXPECT_EQ(program->window().look().theme.scheme(), Scheme::Dark);
    program->setLook({Theme::light(), {}});
    program->window().close();
    program.reset();
    start();
    EXPECT_EQ(program->window().look().theme.scheme(), Scheme::Light);
}

TEST_F(LanguageJourney, WhatIsHalfTypedIsAskedAboutBeforeTheLanguageChanges)
{
    start();
    program->window().activateWindow();
    program->window().showMoment(Moments::Trends);
    Typist typist{program->window()};
    typist.press(Qt::Key_F);
    Typist::look();
    part<QPlainTextEdit>(program->window(), "statementSaid").setPlainText("a flat on the ball");
    const MainWindow* before = &program->window();
    ask("de");
    EXPECT_EQ(&program->window(), before) << "turned away";
    EXPECT_EQ(prompts.asked.size(), 1U);
    prompts.confirmations.push_back(true);
    ask("de");
    EXPECT_NE(QLocale{}.decimalPoint(), QStringLiteral("."));
}
