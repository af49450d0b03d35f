#pragma once

#include "app/pages/page.h"
#include "app/pages/period_choice.h"
#include "app/pages/questions/questions_view.h"
#include "app/pages/rigged_today/rigging_work.h"
#include "app/widgets/reading_order.h"
#include "app/window/session.h"
#include "app/window/top_bar.h"
#include "core/store/copies.h"

#include <QMainWindow>

#include <array>
#include <cstdint>
#include <memory>

class QStackedWidget;
class QTimer;

namespace rig {

class AsideBar;
class AsidePage;
class ConflictsPage;
class CopiesPage;
class CopyBar;
class DraftBar;
class FaultsPage;
class FileMenu;
class ManualPage;
class ProblemBanner;
class Prompts;
class QuestionBar;
class QuestionsPage;
class Welcome;
class WindowCalls;

// What one window hands on to another.
struct LeftOff
{
    std::unique_ptr<Session> session; // none: no file was open
    std::optional<AirframeId> airframe = {};
    std::optional<Moments> moment = {};
    std::optional<WorkInHand> work = {};
};

// The top bar and the page stack, nothing else.
class MainWindow : public QMainWindow
{
    Q_OBJECT

public:
    MainWindow(const Clock& clock, Prompts& prompts);
    ~MainWindow() override;

    void openSession(std::unique_ptr<Session> session);
    void openPath(const QString& path, OpenAs as);
    void openAnother(const QString& path, OpenAs as); // asks first where something is half done
    void openDemo();
    void setLook(const Look& look);
    const Look& look() const { return m_look; }
    Moments moment() const { return m_moment; }
    // Asks first where something is half done.
    void askLanguage(const QString& code);
    // For the window that is made anew in its place, in another language: nothing is shown of the file here
    // any more.
    LeftOff leaveOff();
    void goOnFrom(LeftOff left);
    void showMoment(Moments moment);
    void showQuestions();
    void showFaults(); // where there are any
    void showConflicts();
    void showCopies(); // of the file; from a copy that is looked at, back to the file first
    void showManual(); // at the chapter of what is seen
    void chooseAirframe(AirframeId airframe);
    // Null before a file is open.
    Page* page(Moments moment);
    // The session of the desktop ends: closed without a question, as soon as nothing that is asked stands
    // open.
    void closeUnasked();

public slots:
    void showProblem(const QString& sentence);

signals:
    void languageAsked(const QString& code);
    void closed();

protected:
    bool focusNextPrevChild(bool next) override { return goOnAsRead(*this, next); }
    void keyPressEvent(QKeyEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    void connectParts();
    void addKeys();
    Page* newPage(Moments moment);
    Page* newTrends();
    void addBeside(AsidePage* page);
    void showBeside(AsidePage* page);
    void readFaults();
    Page* added(Page* page);
    std::vector<Page*> allPages() const;
    void dropPages();
    void takeNewAirframes();
    void readAirframes();
    void showAirframe();
    void nameAirframes(); // in the list, when somebody looks: a hangar may hold hundreds of them
    void followLookingThrough();
    std::unique_ptr<Session> leaveSession();
    bool isPageMadeAhead();
    void catchUp();
    void closeSession();
    void readQuestions();
    void leaveBesides(); // back from what is no moment of its own
    void leaveManual();
    QString chapterSeen() const;
    void readConflicts();
    void takeInOther();
    void takeNews(Page& now);
    void showPage(Page* next);
    bool isBlind() const;
    Result<std::vector<OpenQuestion>> openQuestions(AirframeId airframe) const;
    std::size_t openQuestionsOf(AirframeId airframe) const;
    void refreshPage();
    void keepTyped();
    QString filePath() const;                                      // while one is open
    void showRefusal(const Problem& problem, const QString& path); // of a whole file
    void salvage();
    void lookAtCopy(const KeptCopy& copy);
    bool leaveCopy();
    QString saidOfCopy() const;
    void bringBackCopy(const KeptCopy& copy);
    enum class Leaving { File, Program };
    bool m_asksNothing = false; // any more
    bool mayLeavePages(Leaving what);
    void scaleText(double factor);
    void setColours(Scheme scheme);
    bool adopt(Result<std::unique_ptr<Session>> session, const QString& path);

    const Clock& m_clock;
    Prompts& m_prompts;
    Look m_look;
    std::unique_ptr<Session> m_session;
    QTimer* m_lookingThrough = nullptr;
    QTimer* m_catchingUp = nullptr;
    std::int64_t m_writesSeen = 0; // of FactsBook
    std::vector<Airframe> m_airframes;
    std::optional<AirframeId> m_airframe;
    PeriodChoice m_period; // while the file is open

    TopBar* m_bar = nullptr;
    FileMenu* m_menu = nullptr;
    WindowCalls* m_calls = nullptr;
    ProblemBanner* m_banner = nullptr;
    QString m_refused; // the file that may be salvaged
    DraftBar* m_drafts = nullptr;
    QStackedWidget* m_stack = nullptr;
    Welcome* m_welcome = nullptr;
    std::array<Page*, 5> m_pages{};
    Moments m_moment = Moments::RiggedToday; // the last one shown
    AsideBar* m_conflictsBar = nullptr;
    ConflictsPage* m_conflicts = nullptr;
    CopiesPage* m_copies = nullptr;
    CopyBar* m_copyBar = nullptr;
    KeptCopy m_copy;      // that is looked at,
    QString m_copiedFile; // of this file; empty while it is none
    QuestionBar* m_questionBar = nullptr;
    QuestionsPage* m_questions = nullptr;
    AsideBar* m_faultsBar = nullptr;
    FaultsPage* m_faults = nullptr;
    ManualPage* m_manual = nullptr;
    AsidePage* m_readFrom = nullptr; // the manual, where that was no moment
};

} // namespace rig
