#include "tests/journeys/page_tour.h"

#include "app/shots/troubled_file.h"
#include "app/wording/language.h"
#include "app/wording/practice_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/statement_words.h"
#include "app/wording/trends_page_words.h"
#include "tests/support/must.h"
#include "tests/support/on_screen.h"
#include "tests/support/who_connected.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>

namespace rig::test {

namespace {

QString yes(int times)
{
    return RiggedWords::keyYes().repeated(times);
}

} // namespace

PageTour::PageTour(Look look, const QString& language)
    : m_look{std::move(look)}, m_speech{language}, m_window{m_clock, m_prompts}, m_typist{m_window}
{
    m_clock.set(dayOf(2026, 11, 2));
    m_window.setLook({});
    m_window.resize(1280, 800);
    m_window.show();
    m_window.activateWindow();
    Typist::look();
}

void PageTour::openDemo()
{
    m_window.openDemo();
    Typist::look();
}

void PageTour::look(const std::string& where)
{
    Typist::look();
    m_look(m_window, where);
}

void PageTour::click(const std::string& name)
{
    Typist::look();
    auto& button = part<QAbstractButton>(m_window, name.c_str());
    button.setFocus();
    button.click();
    Typist::look();
}

bool PageTour::clickIfThere(const std::string& name)
{
    Typist::look();
    for (auto* one : m_window.findChildren<QAbstractButton*>(QString::fromStdString(name)))
        if (one->isVisible() && one->isEnabled())
            return one->setFocus(), one->click(), true;
    return false;
}

void PageTour::choose(const char* box, int index)
{
    chooseIn(m_window, box, index);
    Typist::look();
}

void PageTour::welcome()
{
    look("welcome");
    m_window.openPath(m_folder.filePath("empty.rigband"), OpenAs::New);
    for (const Moments moment : {Moments::SetUp, Moments::RiggedToday, Moments::Trends,
                                 Moments::BeforeTheAnnual, Moments::KnowThisAirframe}) {
        m_window.showMoment(moment);
        look("moment " + std::to_string(static_cast<int>(moment)) + " of an empty file");
    }
}

void PageTour::moments()
{
    openDemo();
    for (const Moments moment : {Moments::RiggedToday, Moments::Trends, Moments::BeforeTheAnnual,
                                 Moments::KnowThisAirframe, Moments::SetUp}) {
        m_window.showMoment(moment);
        look("moment " + std::to_string(static_cast<int>(moment)));
    }
}

void PageTour::trends()
{
    openDemo();
    m_window.showMoment(Moments::Trends);
    click("trendRow2");
    look("trends of a joint");
    m_typist.type(StatementWords::keyFinding());
    look("a finding in trends");
    click("putStatementAside");
    m_typist.type(TrendsPageWords::keyAircraft());
    look("trends of all couplings");
}

void PageTour::annual()
{
    openDemo();
    m_window.showMoment(Moments::BeforeTheAnnual);
    choose("annualPeriod", 1);
    look("before the annual");
    click("noteFinding");
    look("a finding");
    click("keepStatement");
    look("a finding that lacks something");
    click("putStatementAside");
    click("annualReport");
    look("the report");
}

void PageTour::begin()
{
    openDemo();
    choose("leader", 1);
    click("riggedAnew");
    click("begin");
}

void PageTour::toTheReading()
{
    begin();
    passWhoConnected(m_window, m_typist);
    choose("measuredWith", 1);
    m_typist.type(yes(3));
}

void PageTour::rigging()
{
    begin();
    look("who connected");
    passWhoConnected(m_window, m_typist);
    look("the look");
    choose("measuredWith", 1);
    m_typist.type(yes(3));
    look("measuring");
    m_typist.type("9.87\n");
    look("a figure that is refused");
    m_typist.press(Qt::Key_Escape);
    m_typist.type("0.45\n");
    look("inside");
    m_typist.type(RiggedWords::keyStrike());
    look("why it is struck");
    m_typist.press(Qt::Key_Escape);
    m_typist.type(yes(2));
    look("done");
    m_typist.type("\n" + yes(3) + "0.95\n");
    look("outside");
    m_typist.press(Qt::Key_Return);
    m_typist.press(Qt::Key_Return);
    m_typist.type(RiggedWords::keyNo());
    look("a no");
    click("recordRow11");
    look("the close");
}

void PageTour::second()
{
    toTheReading();
    m_typist.type("0.45\n");
    m_typist.type(yes(2) + RiggedWords::keySecondPerson());
    look("the second person");
}

void PageTour::controlCheck()
{
    begin();
    click("recordRow10");
    look("the control check");
    choose("atSurface", 1);
    choose("inCockpit", 2);
    look("two people at the surface");
    m_typist.type(yes(2));
    m_typist.press(Qt::Key_Up);
    look("one call answered");
    m_typist.press(Qt::Key_Up);
    look("moved the wrong way");
}

void PageTour::learning()
{
    openDemo();
    m_window.showMoment(Moments::KnowThisAirframe);
    look("nobody learns");
    choose("whoLearns", 4);
    for (int i = 0; i < 6; ++i) {
        click("learnPart" + std::to_string(i));
        look("part " + std::to_string(i));
        if (i != 1 && i != 2)
            continue;
        m_typist.type(i == 1 ? PracticeWords::keyOne() : PracticeWords::keyBegin());
        look("asked in part " + std::to_string(i));
        m_typist.type(QStringLiteral("1") + PracticeWords::keySure());
        look("told in part " + std::to_string(i));
    }
}

void PageTour::setUp()
{
    openDemo();
    m_window.showMoment(Moments::SetUp);
    for (int i = 0; i < 9; ++i) {
        click("part" + std::to_string(i));
        look("part " + std::to_string(i));
        for (const std::string name : {"changeCoupling", "newFitting", "changeSurface", "changeGauge",
                                       "addPerson", "addEvent", "addPlay"})
            if (clickIfThere(name)) {
                look(name);
                m_typist.press(Qt::Key_Escape);
            }
    }
}

void PageTour::paper()
{
    openDemo();
    m_window.showMoment(Moments::SetUp);
    click("part8");
    part<QPushButton>(*m_window.page(Moments::SetUp), "enterFromPaper").click();
    look("the head of the sheet");
    part<QLineEdit>(m_window, "paperDay").setText("2026-04-03");
    part<QLineEdit>(m_window, "paperTime").setText("09:30");
    for (const char* box : {"paperFirst", "paperTypist"})
        part<QComboBox>(m_window, box).setCurrentIndex(1);
    part<QComboBox>(m_window, "paperSecond").setCurrentIndex(2);
    click("paperApart");
    click("paperBegin");
    clickIfThere("seasonNext");
    look("the first to type");
}

void PageTour::questions()
{
    openDemo();
    m_window.showQuestions();
    look("questions");
    click("openCloseForm");
    look("closing one");
}

void PageTour::beside()
{
    const QString path = m_folder.filePath("hangar.rigband");
    ASSERT_TRUE(
        writeTroubledFile(path.toStdString(), m_clock, demo::languageOf(spokenLanguage().toStdString())));
    m_window.openPath(path, OpenAs::Existing);
    const auto& bar = part(m_window, "faultsBar");
    ASSERT_TRUE(QTest::qWaitFor([&bar] { return bar.isVisible(); }, 60'000));
    m_window.showFaults();
    look("faults");
    m_window.showConflicts();
    look("conflicts");
    clickIfThere("conflict1");
    look("another conflict");
    m_window.showCopies();
    look("copies");
    m_window.showManual();
    look("the manual");
}

} // namespace rig::test
