// Know this airframe: what its presenters take from the facts, and each part at the sizes that have to hold.

#include "app/pages/learn/learn_page.h"
#include "app/wording/day_words.h"
#include "app/wording/learn_words.h"
#include "app/wording/signing_words.h"
#include "app/wording/study_words.h"
#include "core/day_entry.h"
#include "core/store/facts_book.h"
#include "tests/support/clipped.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"

#include <QCheckBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

#include <algorithm>

using namespace rig;
using namespace rig::test;

namespace {

class LearnPageTest : public testing::Test
{
protected:
    LearnPageTest()
    {
        takeTwelve(store, hangar);
        Coupling rudder = aCoupling(hangar.airframe, "Rudder");
        rudder.kind = CouplingKind::ByItself;
        must(store.records().add(rudder));
        store.clock().passMinutes(24 * 60);
        QObject::connect(&page, &Page::problemArose, &page,
                         [this](const QString& sentence) { problem = sentence.toStdString(); });
    }

    void show(QSize size = {1280, 740}, double scale = 1.0)
    {
        page.setLook(lookAt(scale));
        showAt(page, size, lookAt(scale));
        page.showAirframe(hangar.airframe);
        QApplication::processEvents();
    }

    void open(int part, bool withPerson = true)
    {
        if (withPerson)
            chooseIn(page, "whoLearns", 2); // T. Vale
        rig::test::part<QPushButton>(page, ("learnPart" + std::to_string(part)).c_str()).click();
        QApplication::processEvents();
    }

    void press(const char* name)
    {
        rig::test::part<QAbstractButton>(page, name).click();
        QApplication::processEvents();
    }

    RecordId rigged(PersonId leader, PersonId second)
    {
        RiggingRecord record = hangar.record(store.clock().now());
        record.leader = leader;
        RecordClose close;
        close.record = must(store.records().add(record));
        close.first = leader;
        close.second = second;
        must(store.records().add(close));
        return close.record;
    }

    // Two couplings, two people, twice each; begun, and a gauge not yet chosen.
    void beginStudy()
    {
        open(5, false);
        for (const char* box : {"studyCoupling0", "studyCoupling1", "studyPerson0", "studyPerson1"})
            press(box);
        part<QSpinBox>(page, "studyRepeats").setValue(2);
        press("beginStudy");
    }

    LearningFacts facts() { return must(store.records().learning(hangar.airframe)); }

    Photo photoOf(CouplingId coupling, PhotoOf of)
    {
        Photo photo;
        photo.coupling = coupling;
        photo.of = of;
        photo.day = store.clock().now().localDay();
        photo.person = hangar.oren;
        return photo;
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    LearnPage page{store.records(), store.clock(), prompts};
    LessonPresenter lessons{store.records(), store.clock()};
    MeasuringPresenter measuring{store.records(), store.clock()};
    std::string problem;
};

} // namespace

TEST_F(LearnPageTest, TakesGapsFromTheFittingThatHoldsAndKeepsWhatWasFoundApart)
{
    Reading shown = hangar.reading(between(1700, 1750), store.clock().now());
    shown.state = SeatState::PartSeated;
    shown.purpose = Purpose::Demonstration;
    shown.second = hangar.vale;
    must(store.records().add(shown, {}));
    Reading found = hangar.reading(between(1550, 1600), store.clock().now());
    found.state = SeatState::PartSeated;
    must(store.records().add(found, {}));
    const CouplingFacts known = must(lessons.coupling(hangar.airframe, hangar.leftAileron));
    EXPECT_EQ(known.strip.locked.size(), 12U);
    EXPECT_EQ(known.strip.partSeated, std::vector{between(1700, 1750)});
    EXPECT_EQ(known.strip.asFound, std::vector{between(1550, 1600)});
    ASSERT_TRUE(known.joint.lockedMm);
    EXPECT_NEAR(*known.joint.lockedMm, 0.5, 0.06);
    EXPECT_NEAR(*known.joint.partSeatedMm, 1.65, 0.08);
    const CouplingFacts other = must(lessons.coupling(hangar.airframe, hangar.rightAileron));
    EXPECT_FALSE(other.joint.lockedMm) << "nothing is made up";
    EXPECT_FALSE(other.joint.partSeatedMm);
    Fitting refit;
    refit.coupling = hangar.leftAileron;
    refit.begins = store.clock().now().localDay();
    refit.kind = FittingKind::Refitted;
    must(store.records().add(refit));
    const CouplingFacts afresh = must(lessons.coupling(hangar.airframe, hangar.leftAileron));
    EXPECT_FALSE(afresh.joint.lockedMm) << "readings of the fitting before say nothing of this one";
    EXPECT_EQ(afresh.strip.earlier.size(), 12U) << "and yet they were seen";
}

TEST_F(LearnPageTest, NobodyLearnsLockedFromAReadingThatLiesOutsideOrWasStruck)
{
    Reading outside = hangar.reading(between(1700, 1750), store.clock().now());
    must(store.records().add(outside, {}));
    Exclusion strike;
    strike.reading = must(store.records().add(hangar.reading(between(500, 550), store.clock().now()), {}));
    strike.reason = "burr on the leaf";
    strike.stamp.by = hangar.oren;
    must(store.records().add(strike));
    const double before = *must(lessons.coupling(hangar.airframe, hangar.leftAileron)).joint.lockedMm;
    EXPECT_LT(before, 0.6);
    const ReadingsStripView strip = must(lessons.coupling(hangar.airframe, hangar.leftAileron)).strip;
    EXPECT_EQ(strip.locked.size(), 12U) << "one that lies outside is not counted as locked";
    EXPECT_EQ(strip.asFound, std::vector{between(1700, 1750)}) << "it is shown apart";
    for (int i = 0; i < 30; ++i) {
        must(lessons.beginPractice(hangar.airframe, hangar.vale, hangar.leftAileron));
        for (int asked = 0; asked < kAskedOfOneCoupling; ++asked) {
            const PracticeView view = must(lessons.practice(hangar.airframe, hangar.vale));
            if (view.task->gap && view.task->state != JointState::PartSeated) {
                EXPECT_LT(view.task->gap->inMillimetres(), 1.0);
            }
            must(lessons.answer(view, SeatingCall::NotLocked, true));
        }
    }
}

TEST_F(LearnPageTest, PractisesBallJointsAlone)
{
    const PracticeView view = must(lessons.practice(hangar.airframe, hangar.vale));
    EXPECT_EQ(view.couplings.size(), 2U);
    EXPECT_FALSE(view.task);
    must(lessons.beginPractice(hangar.airframe, hangar.vale, std::nullopt));
    const PracticeView begun = must(lessons.practice(hangar.airframe, hangar.vale));
    ASSERT_TRUE(begun.task);
    EXPECT_TRUE(begun.find(begun.task->coupling));
    EXPECT_FALSE(must(lessons.practice(hangar.airframe, hangar.oren)).task)
        << "everybody has rounds of their own";
}

TEST_F(LearnPageTest, AnswerBelongsToTheQuestionThatWasOnTheScreen)
{
    must(lessons.beginPractice(hangar.airframe, hangar.vale, hangar.leftAileron));
    const PracticeView shown = must(lessons.practice(hangar.airframe, hangar.vale));
    must(lessons.beginPractice(hangar.airframe, hangar.vale, hangar.rightAileron)); // in another window
    must(lessons.answer(shown, SeatingCall::NotLocked, true));
    ASSERT_EQ(facts().seatingAnswers.size(), 1U);
    EXPECT_EQ(facts().seatingAnswers[0].round, shown.round->id);
    EXPECT_EQ(facts().seatingAnswers[0].coupling, hangar.leftAileron);
}

TEST_F(LearnPageTest, OwnFiguresAreShownOnlyOnAsking)
{
    show();
    open(4);
    EXPECT_FALSE(part<QLabel>(page, "measuringOwn").isVisible());
    chooseIn(page, "measuringGauge", 1);
    for (int i = 0; i < 3; ++i)
        typeSlowly(page, i == 1 ? "0.50\r" : "0.45\r");
    EXPECT_EQ(facts().practiceReadings.size(), 3U);
    EXPECT_EQ(facts().practiceReadings[0].person, hangar.vale);
    EXPECT_FALSE(part<QLabel>(page, "measuringOwn").isVisible());
    EXPECT_EQ(textOf(page, "measuringKept"), StudyWords::kept(3).toStdString());
    press("measuringShow");
    EXPECT_NE(textOf(page, "measuringOwn").find("standard deviation"), std::string::npos);
    EXPECT_FALSE(part<QCheckBox>(page, "measuringShare").isChecked());
    chooseIn(page, "whoLearns", 1);
    QApplication::processEvents();
    EXPECT_FALSE(part<QLabel>(page, "measuringOwn").isVisible()) << "another person's are not";
    EXPECT_EQ(must(store.records().readings(hangar.airframe)).size(), 12U);
}

TEST_F(LearnPageTest, NobodyAndNoDayIsFilledInWhereSomebodySigns)
{
    show();
    open(3);
    press("signIt");
    EXPECT_TRUE(facts().signOffs.empty());
    const std::string lacks = textOf(page, "signProblem");
    EXPECT_NE(lacks.find(SigningWords::signerMissing().toStdString()), std::string::npos);
    EXPECT_NE(lacks.find(SigningWords::dayMissing().toStdString()), std::string::npos);
    EXPECT_EQ(part<QComboBox>(page, "signer").count(), 2) << "the learner is not among those who sign";
    chooseIn(page, "signer", 1);
    part<QLineEdit>(page, "signDay").setText("2026-02-30");
    press("signIt");
    EXPECT_EQ(textOf(page, "signProblem"), DayWords::unread("2026-02-30").toStdString());
    part<QLineEdit>(page, "signDay").setText("2999-01-01");
    press("signIt");
    EXPECT_EQ(textOf(page, "signProblem"), SigningWords::dayToCome().toStdString());
    EXPECT_TRUE(facts().signOffs.empty());
    part<QLineEdit>(page, "signDay").setText(QString::fromStdString(dayText(store.clock().now().localDay())));
    press("signIt");
    EXPECT_TRUE(facts().signOffs.empty()) << "something is not met, and nobody has said that they read it";
    EXPECT_EQ(textOf(page, "signProblem"), SigningWords::signAllTheSameMissing().toStdString());
    EXPECT_FALSE(part(page, "signProblem").visibleRegion().isEmpty()) << "wherever it was scrolled to";
    EXPECT_EQ(textOf(page, "signNotMet"),
              "Not met: 0 of 3 riggings under supervision and 2 couplings not practised.");
    press("signAllTheSame");
    press("signIt");
    ASSERT_EQ(facts().signOffs.size(), 1U);
    ASSERT_TRUE(facts().signOffs[0].askedFor);
    EXPECT_EQ(facts().signOffs[0].askedFor->notPractised, 2);
    EXPECT_NE(textOf(page, "signOffHistory").find("(not met when it was signed: 0 of 3"), std::string::npos);
    EXPECT_FALSE(part<QCheckBox>(page, "signAllTheSame").isChecked()) << "it holds for one signing";
    EXPECT_EQ(facts().signOffs[0].person, hangar.vale);
    EXPECT_EQ(facts().signOffs[0].signer, hangar.oren);
    EXPECT_NE(textOf(page, "signOffStanding").find("Signed off until"), std::string::npos);
    chooseIn(page, "signer", 1);
    part<QLineEdit>(page, "signDay").setText(QString::fromStdString(dayText(store.clock().now().localDay())));
    press("withdrawIt");
    EXPECT_EQ(textOf(page, "signProblem"), SigningWords::whyMissing().toStdString());
}

TEST_F(LearnPageTest, CouplingThatConnectsByItselfHasNoBallToPractise)
{
    show();
    part<QAbstractButton>(page, "learnCoupling2").click();
    QApplication::processEvents();
    EXPECT_EQ(textOf(page, "lessonNoBall"), LearnWords::byItself().toStdString());
    EXPECT_FALSE(part<QWidget>(page, "lessonCutaway").isVisible());
    open(1);
    EXPECT_FALSE(part<QPushButton>(page, "practiseOne").isVisible());
    EXPECT_TRUE(part<QPushButton>(page, "practiseAll").isVisible());
}

TEST_F(LearnPageTest, DamagedPhotoIsLeftOutAndTheOthersStay)
{
    must(store.records().add(photoOf(hangar.leftAileron, PhotoOf::Locked), PhotoImage{{"no picture"}}));
    show();
    EXPECT_EQ(problem, "");
    EXPECT_TRUE(part<QLabel>(page, "lessonNoPhotos").isVisible());
}

TEST_F(LearnPageTest, HasRoomForItsWordsAtEverySize)
{
    for (const auto& [size, scale] : {std::pair{QSize{1280, 740}, 1.0}, std::pair{QSize{1024, 690}, 1.0},
                                      std::pair{QSize{1280, 740}, 1.5}, std::pair{QSize{1024, 690}, 1.5},
                                      std::pair{QSize{1280, 740}, 2.0}}) {
        SCOPED_TRACE(scale);
        SCOPED_TRACE(size.width());
        show(size, scale);
        for (int i = 0; i < 6; ++i) {
            SCOPED_TRACE(i);
            open(i);
            expectNothingClipped(page, 10);
        }
    }
}

TEST_F(LearnPageTest, MentorWhomTheRecordDoesNotNameIsAskedAbout)
{
    const PersonId iver = must(store.records().add(aPerson("J. Iver")));
    rigged(hangar.oren, hangar.vale);
    show();
    open(3);
    chooseIn(page, "supervisedRigging", 1);
    chooseIn(page, "supervisedMentor", 1); // M. Oren
    EXPECT_FALSE(part<QLabel>(page, "supervisedNotNamed").isVisible());
    chooseIn(page, "supervisedMentor", 2); // J. Iver
    EXPECT_EQ(textOf(page, "supervisedNotNamed"), "Not named in the record of this rigging: J. Iver.");
    press("keepSupervised");
    EXPECT_EQ(textOf(page, "supervisedProblem"), SigningWords::wereThereMissing({"J. Iver"}).toStdString());
    press("supervisedWereThere");
    press("keepSupervised");
    EXPECT_TRUE(facts().supervisedRiggings.empty()) << "what they did there is not said";
    part<QLineEdit>(page, "supervisedNote").setText("watched each joint");
    press("keepSupervised");
    ASSERT_EQ(facts().supervisedRiggings.size(), 1U) << problem;
    EXPECT_EQ(facts().supervisedRiggings[0].mentor, iver);
    EXPECT_NE(textOf(page, "supervisedRows").find("(not named in its record: J. Iver)"), std::string::npos);
}

TEST_F(LearnPageTest, SupervisedRiggingIsTakenBackByANamedPersonForAReasonAndStaysToBeRead)
{
    SupervisedRigging rigging;
    rigging.record = rigged(hangar.oren, hangar.vale);
    rigging.learner = hangar.vale;
    rigging.mentor = hangar.oren;
    rigging.note = "<first>";
    must(store.records().add(rigging));
    show();
    open(3);
    EXPECT_NE(textOf(page, "signOffAsked").find("1 of 3"), std::string::npos);
    press("takeBack");
    EXPECT_TRUE(prompts.asked.empty());
    EXPECT_TRUE(part<QLabel>(page, "takeBackProblem").isVisible());
    chooseIn(page, "takeBackWhich", 1);
    chooseIn(page, "takeBackWho", 1);
    press("takeBack");
    EXPECT_EQ(facts().supervisedRiggings.size(), 1U) << "nobody said why";
    part<QLineEdit>(page, "signDay").setText("2026-03-02");
    part<QLineEdit>(page, "signNote").setText("half typed");
    prompts.texts.push_back("another rigging");
    press("takeBack");
    EXPECT_TRUE(facts().supervisedRiggings.empty()) << problem;
    EXPECT_EQ(part<QLineEdit>(page, "signDay").text(), "2026-03-02") << "another form";
    EXPECT_EQ(part<QLineEdit>(page, "signNote").text(), "half typed");
    const std::string rows = textOf(page, "supervisedRows");
    EXPECT_NE(rows.find("<s>"), std::string::npos);
    EXPECT_NE(rows.find("&lt;first&gt;"), std::string::npos);
    EXPECT_NE(rows.find("taken back by M. Oren: another rigging"), std::string::npos) << rows;
    EXPECT_NE(textOf(page, "signOffAsked").find("0 of 3"), std::string::npos);
    EXPECT_FALSE(part(page, "takeBackWhich").isVisible());
    EXPECT_TRUE(part(page, "supervisedRigging").isVisible()) << "it may be told anew";
}

TEST_F(LearnPageTest, PracticeReadingIsTakenBackAndTellsItsFigureOnlyOnAsking)
{
    show();
    open(4);
    chooseIn(page, "measuringGauge", 1);
    typeSlowly(page, "0.45\r");
    typeSlowly(page, "0.85\r");
    chooseIn(page, "takePracticeBackWhich", 1); // the last one
    prompts.texts.push_back("Wrong leaf");
    press("takePracticeBack");
    ASSERT_EQ(facts().practiceReadings.size(), 1U) << problem;
    EXPECT_EQ(facts().practiceReadings[0].interval.enters, Gap::micrometres(450));
    EXPECT_EQ(textOf(page, "measuringKept"), SigningWords::takenBackNow().toStdString());
    const std::string told = textOf(page, "practiceTakenBack");
    EXPECT_NE(told.find("taken back by T. Vale: Wrong leaf"), std::string::npos) << told;
    EXPECT_EQ(told.find("0.85"), std::string::npos);
    press("measuringShow");
    EXPECT_NE(textOf(page, "practiceTakenBack").find("0.85"), std::string::npos);
    EXPECT_NE(textOf(page, "measuringOwn").find("Own practice readings: 1"), std::string::npos);
}

TEST_F(LearnPageTest, KeysOfOnePersonNeverGoOnToTheNextInAStudy)
{
    show();
    beginStudy();
    typeSlowly(page, "0.45\r");
    EXPECT_TRUE(facts().practiceReadings.empty()) << "nobody has said that they read";
    press("studyIAm");
    chooseIn(page, "studyGauge", 1);
    typeSlowly(page, "0.45\r0.45\r \r0.45\r");
    ASSERT_EQ(facts().practiceReadings.size(), 1U);
    EXPECT_TRUE(part(page, "studyIAm").isVisible());
    EXPECT_FALSE(part(page, "studyLeaves").isVisible());
    const bool isVale = facts().practiceReadings[0].person == hangar.vale;
    EXPECT_EQ(textOf(page, "studyKept"),
              StudyWords::keptAt(isVale ? "T. Vale" : "M. Oren", 1, 8).toStdString());
    EXPECT_EQ(textOf(page, "studyKept").find("0.45"), std::string::npos)
        << "nobody sees what was read before";
    press("studyIAm");
    typeSlowly(page, "0.50\r");
    EXPECT_EQ(facts().practiceReadings.size(), 2U);
}

TEST_F(LearnPageTest, TabGoesThroughAStudysTicksInTheOrderTheyStand)
{
    show();
    open(5, false);
    part(page, "studyCoupling0").setFocus();
    for (const char* next : {"studyCoupling1", "studyPerson0", "studyPerson1", "studyRepeats"}) {
        QTest::keyClick(page.focusWidget(), Qt::Key_Tab);
        EXPECT_EQ(page.focusWidget(), &part(page, next)) << next;
    }
}

TEST_F(LearnPageTest, LastReadingOfAStudyIsTakenBackAndItsPlaceReadAgain)
{
    show();
    beginStudy();
    EXPECT_FALSE(part(page, "takeStudyBack").isVisible()) << "nothing was read yet";
    press("studyIAm");
    chooseIn(page, "studyGauge", 1);
    typeSlowly(page, "0.45\r");
    const PracticeReading wrong = facts().practiceReadings.at(0);
    prompts.texts.push_back("Wrong leaf");
    press("takeStudyBack");
    EXPECT_TRUE(facts().practiceReadings.empty()) << problem;
    EXPECT_EQ(textOf(page, "studyProgress"), "Reading 1 of 8");
    EXPECT_TRUE(part(page, "studyIAm").isVisible());
    EXPECT_EQ(textOf(page, "studyKept"), SigningWords::takenBackNow().toStdString());
    EXPECT_NE(textOf(page, "studyTakenBack").find("Wrong leaf"), std::string::npos);
    EXPECT_EQ(textOf(page, "studyTakenBack").find("0.45"), std::string::npos);
    press("studyIAm");
    typeSlowly(page, "0.50\r");
    EXPECT_EQ(facts().practiceReadings.at(0).place, wrong.place);
}

TEST_F(LearnPageTest, StudyIsLeftInTheMiddleAndGoneOnWith)
{
    show();
    beginStudy();
    press("studyIAm");
    chooseIn(page, "studyGauge", 1);
    typeSlowly(page, "0.45\r");
    press("leaveStudy");
    EXPECT_EQ(textOf(page, "studyLeft"), StudyWords::left(1, 8).toStdString());
    typeSlowly(page, "0.45\r");
    EXPECT_EQ(facts().practiceReadings.size(), 1U);
    open(0, false);
    open(5, false);
    EXPECT_TRUE(part(page, "studyLeft").isVisible());
    press("goOnStudy");
    EXPECT_EQ(textOf(page, "studyProgress"), "Reading 2 of 8");
    press("studyIAm");
    open(0, false);
    open(5, false);
    EXPECT_TRUE(part(page, "studyIAm").isVisible()) << "whoever comes back says anew who reads";
    press("leaveStudy");
    press("insteadStudy");
    EXPECT_TRUE(part(page, "beginStudy").isVisible());
}

TEST_F(LearnPageTest, TheNextQuestionOfAPracticeFramesAndMarksNoAnswer)
{
    show();
    page.activateWindow();
    open(1);
    press("practiseOne");
    for (int i = 0; i < 3; ++i) {
        typeSlowly(page, "1");
        EXPECT_TRUE(part<QPushButton>(page, "lessonChoice0").isChecked());
        typeSlowly(page, "s\r");
        for (int choice = 0; choice < 3; ++choice) {
            const auto& button = part<QPushButton>(page, ("lessonChoice" + std::to_string(choice)).c_str());
            EXPECT_FALSE(button.hasFocus()) << "question " << i + 2 << ", answer " << choice + 1;
            EXPECT_FALSE(button.isChecked()) << "question " << i + 2 << ", answer " << choice + 1;
        }
        ASSERT_TRUE(QApplication::focusWidget());
        EXPECT_EQ(QApplication::focusWidget()->accessibleName().toStdString(),
                  textOf(page, "lessonQuestion"));
    }
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    EXPECT_TRUE(part<QPushButton>(page, "lessonChoice0").hasFocus());
}
