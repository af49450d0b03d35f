#pragma once

#include "app/pages/page.h"
#include "app/pages/questions/questions_view.h"
#include "app/pages/rigged_today/rigging_work.h"
#include "app/widgets/reading_order.h"
#include "app/window/page_stack.h"
#include "app/window/session.h"
#include "core/store/copies.h"

#include <QMainWindow>

#include <cstdint>
#include <memory>

class QTimer;

namespace rig {

class AsidePage;
class Bars;
class FileMenu;
class Prompts;
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
    Page* page(Moments moment) { return m_pages->moment(moment); }
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
    void showBeside(Beside page);
    void showBesidePage(AsidePage& page);
    void dropPages();
    void takeNewAirframes();
    void readAirframes();
    void showAirframe();
    QString registrationNow() const; // empty: no airframe
    void nameAirframes();            // in the list, when somebody looks: a hangar may hold hundreds of them
    void followLookingThrough();
    std::unique_ptr<Session> leaveSession();
    void catchUp();
    void closeSession();
    void readQuestions();
    void leaveBesides(); // back from what is no moment of its own
    void leaveBeside();
    void readConflicts();
    void takeInOther();
    void takeNews(Page& now);
    void showPage(Page& next);
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
    enum class Leaving { File, Language, Program };
    struct LeavingText // of the question
    {
        QString title;
        QString yes;
    };
    static LeavingText textOf(Leaving what);
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

    TopBar* m_bar = nullptr;
    FileMenu* m_menu = nullptr;
    WindowCalls* m_calls = nullptr;
    QString m_refused; // the file that may be salvaged
    Bars* m_bars = nullptr;
    PageStack* m_pages = nullptr;
    Welcome* m_welcome = nullptr;
    Moments m_moment = Moments::RiggedToday; // the last one shown
    std::optional<Beside> m_readFrom;        // the manual, where that was no moment
    KeptCopy m_copy;                         // that is looked at,
    QString m_copiedFile;                    // of this file; empty while it is none
};

} // namespace rig
