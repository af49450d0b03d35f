// Learning one airframe by keys alone, in the whole window: from the first look over practice to a sign-off
// and its expiry, a crossed study, and a coupling of which nothing is known yet.

#include "app/window/main_window.h"
#include "app/wording/learn_words.h"
#include "app/wording/lesson_picture_words.h"
#include "app/wording/practice_words.h"
#include "app/wording/signing_words.h"
#include "core/lesson/seating_round.h"
#include "core/lesson/study_plan.h"
#include "core/store/facts_book.h"
#include "tests/support/clipped.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/typing.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDeadlineTimer>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>

#include <algorithm>
#include <array>
#include <functional>

using namespace rig;
using namespace rig::test;

namespace {

class LearnJourney : public testing::TestWithParam<Pace>
{
protected:
    LearnJourney()
    {
        QSettings{}.clear(); // who learnt last is remembered, also from the test before
        must(store.records().add(aPerson("J. Iver")));
        takeTwelve(store, hangar);
        store.clock().passMinutes(24 * 60);
        window.resize(1280, 800);
        window.show();
        window.openPath(QString::fromStdString(store.path()), OpenAs::Existing);
        window.activateWindow();
        Typist::look();
        press(Qt::Key_4, Qt::ControlModifier);
        Typist::look();
    }

    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) { typist.press(key, with); }
    void type(const QString& text) { typist.type(text); }

    // By the arrows of a list of names, as a person would.
    void choose(const char* box, int index)
    {
        typist.tabTo(box);
        for (int i = 0; i < index; ++i)
            press(Qt::Key_Down);
        Typist::look();
    }

    // By the underlined letter.
    void openPart(int part)
    {
        constexpr std::array kLetters{Qt::Key_L, Qt::Key_P, Qt::Key_C, Qt::Key_R, Qt::Key_M, Qt::Key_U};
        press(kLetters[static_cast<std::size_t>(part)], Qt::AltModifier);
        // Qt lets a button that is pressed so be seen down for a while before it is clicked.
        const auto& button =
            rig::test::part<QPushButton>(window, ("learnPart" + std::to_string(part)).c_str());
        const QDeadlineTimer patience{5000};
        while (!button.isChecked() && !patience.hasExpired())
            QApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }

    // Qt lets a button that is pressed so be seen down for a while before it is clicked.
    void pressedUntilHidden(const char* name)
    {
        const auto& button = rig::test::part<QPushButton>(window, name);
        const QDeadlineTimer patience{5000};
        while (button.isVisible() && !patience.hasExpired())
            QApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }

    std::string text(const char* label)
    {
        Typist::look();
        return textOf(window, label);
    }

    LearningFacts facts() { return must(store.records().learning(hangar.airframe)); }

    PersonId iver()
    {
        const std::vector<Person> persons = must(store.records().persons());
        return std::ranges::find(persons, std::string{"J. Iver"}, &Person::name)->id;
    }

    void answer(const QString& key, const QString& sure = "s")
    {
        type(key + sure);
        Typist::look();
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    MainWindow window{store.clock(), prompts};
    Typist typist{window, GetParam()};
};

INSTANTIATE_TEST_SUITE_P(Paces, LearnJourney, kPaces, nameOfPace);

} // namespace

TEST_P(LearnJourney, NewcomerLooksPractisesAndIsSignedForUntilItExpires)
{
    EXPECT_EQ(text("lessonHeading"), "Left aileron: seated and part-seated");
    openPart(1);
    EXPECT_EQ(text("learnMessage"), LearnWords::chooseWhoLearns().toStdString());
    choose("whoLearns", 3);
    EXPECT_EQ(text("practiceWhat"), PracticeWords::what().toStdString());
    typist.tabTo("practiseOne");
    press(Qt::Key_Space);
    Typist::look();
    for (int i = 0; i < kAskedOfOneCoupling; ++i) {
        EXPECT_EQ(text("lessonCount"), "Question " + std::to_string(i + 1) + " of 6");
        answer("2");
        EXPECT_EQ(facts().seatingAnswers.size(), static_cast<std::size_t>(i + 1));
        press(Qt::Key_Return);
        Typist::look();
    }
    const LearningFacts known = facts();
    ASSERT_EQ(known.rounds.size(), 1U);
    EXPECT_EQ(known.rounds[0].person, iver());
    EXPECT_NE(text("practiceDone").find("of 6 right"), std::string::npos);
    EXPECT_EQ(
        std::ranges::count_if(known.seatingAnswers, [](const SeatingAnswer& one) { return isMissed(one); }),
        0)
        << "all were called not locked";

    openPart(3);
    EXPECT_EQ(text("signOffStanding"), "Not signed off on this airframe.");
    choose("signer", 1);
    typist.goTo("signDay");
    type("2026-01-01");
    typist.tabTo("signAllTheSame"); // beside what is not met
    press(Qt::Key_Space);
    typist.tabTo("signIt");
    press(Qt::Key_Space);
    Typist::look();
    ASSERT_EQ(facts().signOffs.size(), 1U);
    EXPECT_EQ(facts().signOffs[0].person, iver());
    EXPECT_NE(text("signOffStanding").find("expired"), std::string::npos) << "three months without a rigging";
}

TEST_P(LearnJourney, WhatSomebodyWasWronglySureOfComesBackNext)
{
    choose("whoLearns", 3);
    openPart(1);
    typist.tabTo("practiseOne");
    press(Qt::Key_Space);
    Typist::look();
    // Everything is called locked and sure, until something was not.
    std::optional<SeatingAnswer> wrong;
    for (int i = 0; i < kAskedOfOneCoupling && !wrong; ++i) {
        answer("1");
        const SeatingAnswer last = facts().seatingAnswers.back();
        if (!isRight(last))
            wrong = last;
        else
            press(Qt::Key_Return);
        Typist::look();
    }
    ASSERT_TRUE(wrong);
    const auto wasAsked = [this](JointState state) {
        return std::ranges::count(facts().seatingAnswers, state, &SeatingAnswer::shown) > 0;
    };
    constexpr std::array kAlwaysAsked{JointState::PartSeated, JointState::NotConnected};
    const auto missing = std::ranges::count_if(kAlwaysAsked, std::not_fn(wasAsked));
    if (std::ssize(facts().seatingAnswers) + missing >= kAskedOfOneCoupling)
        GTEST_SKIP() << "the end of a round asks what it always asks";
    press(Qt::Key_Return);
    Typist::look();
    answer("2");
    EXPECT_EQ(facts().seatingAnswers.back().shown, wrong->shown);
    EXPECT_EQ(facts().seatingAnswers.back().coupling, wrong->coupling);
}

TEST_P(LearnJourney, AnswerCanBeChangedUntilItIsSaidHowSureItIs)
{
    choose("whoLearns", 3);
    openPart(1);
    typist.tabTo("practiseOne");
    press(Qt::Key_Space);
    Typist::look();
    type("1");
    Typist::look();
    EXPECT_TRUE(facts().seatingAnswers.empty());
    type("3n");
    Typist::look();
    ASSERT_EQ(facts().seatingAnswers.size(), 1U);
    EXPECT_EQ(facts().seatingAnswers[0].said, SeatingCall::CannotTell);
    EXPECT_FALSE(facts().seatingAnswers[0].sure);
}

TEST_P(LearnJourney, NothingTypedAheadAnswersAQuestionThatWasNotSeen)
{
    choose("whoLearns", 3);
    openPart(1);
    typist.tabTo("practiseOne");
    press(Qt::Key_Space);
    Typist::look();
    type("1s\n2s\n2s\n");
    Typist::look();
    const std::size_t answered = facts().seatingAnswers.size();
    if (GetParam() == Pace::Ahead) {
        EXPECT_EQ(answered, 1U);
    } else {
        EXPECT_EQ(answered, 3U) << "who looks up after each key goes on";
    }
}

TEST_P(LearnJourney, CallsAndOrderAreAskedInWords)
{
    choose("whoLearns", 3);
    openPart(2);
    type("b");
    Typist::look();
    for (int i = 0; i < 3; ++i) {
        type("1s");
        press(Qt::Key_Return);
        Typist::look(); // nothing typed ahead answers a question that was not seen
    }
    Typist::look();
    const LearningFacts known = facts();
    ASSERT_EQ(known.recallAnswers.size(), 3U);
    for (const RecallAnswer& answer : known.recallAnswers) {
        EXPECT_FALSE(answer.asked.empty());
        EXPECT_FALSE(answer.expected.empty());
    }
}

TEST_P(LearnJourney, CrossedStudyGoesFromTickingToItsSentence)
{
    openPart(5);
    for (const char* box : {"studyCoupling0", "studyCoupling1", "studyPerson0", "studyPerson1"}) {
        typist.tabTo(box);
        press(Qt::Key_Space);
    }
    typist.tabTo("studyRepeats");
    press(Qt::Key_Down); // two readings each
    typist.tabTo("beginStudy");
    press(Qt::Key_Space);
    Typist::look();
    ASSERT_EQ(facts().studyPlaces.size(), 8U);
    for (int i = 0; i < 8; ++i) {
        Typist::look();
        press(Qt::Key_I, Qt::AltModifier); // whoever reads next says so
        pressedUntilHidden("studyIAm");
        if (i == 0)
            choose("studyGauge", 1);
        EXPECT_EQ(text("studyProgress"), "Reading " + std::to_string(i + 1) + " of 8");
        const LearningFacts known = facts();
        const StudyPlace next = *nextPlace(known.studyPlaces, known.practiceReadings);
        type(next.coupling == hangar.leftAileron ? "0.45\n" : "0.60\n");
        Typist::look();
    }
    EXPECT_EQ(facts().practiceReadings.size(), 8U);
    EXPECT_NE(text("studyResult").find("About 95 of 100 pairs"), std::string::npos);
    EXPECT_EQ(must(store.records().readings(hangar.airframe)).size(), 12U) << "they count for nothing else";
}

TEST_P(LearnJourney, CouplingOfWhichNothingIsKnownSaysSo)
{
    typist.goTo("learnCoupling0");
    press(Qt::Key_Down);
    Typist::look();
    EXPECT_EQ(text("lessonHeading"), "Right aileron: seated and part-seated");
    const std::string unknown = text("lessonUnknown");
    EXPECT_NE(unknown.find(LessonPictureWords::layoutDoubt({Layout::C, false, false}).toStdString()),
              std::string::npos);
    EXPECT_NE(unknown.find(LearnWords::noReadings().toStdString()), std::string::npos);
    EXPECT_NE(unknown.find(LearnWords::neverShown().toStdString()), std::string::npos);
    EXPECT_EQ(text("lessonNoPhotos"), LearnWords::noPhotos().toStdString());
}
