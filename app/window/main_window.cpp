#include "app/window/main_window.h"

#include "app/pages/prompts.h"
#include "app/pages/questions/questions_page.h"
#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/widgets/announcer.h"
#include "app/widgets/long_work.h"
#include "app/widgets/question_cover.h"
#include "app/window/bars.h"
#include "app/window/conflicts_page.h"
#include "app/window/copies_page.h"
#include "app/window/copy_bar.h"
#include "app/window/draft_bar.h"
#include "app/window/faults_page.h"
#include "app/window/file_menu.h"
#include "app/window/manual_page.h"
#include "app/window/problem_banner.h"
#include "app/window/question_bar.h"
#include "app/window/recent_files.h"
#include "app/window/remembered.h"
#include "app/window/salvaging.h"
#include "app/window/start_up.h"
#include "app/window/taking_in.h"
#include "app/window/welcome.h"
#include "app/window/window_calls.h"
#include "app/wording/chain_words.h"
#include "app/wording/copy_words.h"
#include "app/wording/draft_words.h"
#include "app/wording/file_menu_words.h"
#include "app/wording/formats.h"
#include "app/wording/join_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/prompt_words.h"
#include "app/wording/window_words.h"
#include "core/store/facts_book.h"

#include <QApplication>
#include <QCloseEvent>
#include <QFileInfo>
#include <QKeyEvent>
#include <QShortcut>
#include <QThread>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

constexpr std::array kMoments{Moments::RiggedToday, Moments::Trends, Moments::BeforeTheAnnual,
                              Moments::KnowThisAirframe, Moments::SetUp};
constexpr double kTextStep = 0.125;
constexpr int kCatchUpEvery = 1000; // milliseconds, with what another window has written
constexpr int kLookEvery = 50;      // milliseconds, whether the file is looked through

// Of a moment, as a page that words stood on.
QString titleOf(Moments moment)
{
    switch (moment) {
    case Moments::RiggedToday:
        return WindowWords::riggedToday();
    case Moments::Trends:
        return WindowWords::trends();
    case Moments::BeforeTheAnnual:
        return WindowWords::beforeTheAnnual();
    case Moments::KnowThisAirframe:
        return WindowWords::knowThisAirframe();
    case Moments::SetUp:
        break;
    }
    return WindowWords::setUp();
}

} // namespace

MainWindow::MainWindow(const Clock& clock, Prompts& prompts) : m_clock{clock}, m_prompts{prompts}
{
    setObjectName("mainWindow");
    setMinimumSize(1000, 640);
    auto* whole = new QWidget;
    auto* layout = new QVBoxLayout{whole};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    m_menu = new FileMenu{*this, m_prompts};
    m_bar = new TopBar{m_menu};
    layout->addWidget(m_bar);
    m_bars = new Bars;
    layout->addWidget(m_bars);
    m_pages = new PageStack{m_clock, m_prompts};
    m_welcome = new Welcome;
    m_pages->addWidget(m_welcome);
    layout->addWidget(m_pages, 1);
    setCentralWidget(whole);
    new Announcer{this};
    m_lookingThrough = new QTimer{this};
    m_lookingThrough->setInterval(kLookEvery);
    connect(m_lookingThrough, &QTimer::timeout, this, &MainWindow::followLookingThrough);
    m_catchingUp = new QTimer{this};
    m_catchingUp->setInterval(kCatchUpEvery);
    connect(m_catchingUp, &QTimer::timeout, this, &MainWindow::catchUp);
    m_catchingUp->start();
    connectParts();
    addKeys();
    setWindowTitle(WindowWords::programName());
    setLook({});
    showAirframe();
}

MainWindow::~MainWindow() = default;

void MainWindow::connectParts()
{
    m_calls = new WindowCalls{*this};
    connect(m_menu, &FileMenu::fileAsked, this, &MainWindow::openAnother);
    connect(m_menu, &FileMenu::demoAsked, this, [this] {
        if (mayLeavePages(Leaving::File))
            openDemo();
    });
    connect(m_menu, &FileMenu::takeInAsked, this, &MainWindow::takeInOther);
    connect(m_menu, &FileMenu::copiesAsked, this, &MainWindow::showCopies);
    connect(m_menu, &FileMenu::textAsked, this, [this](int steps) { scaleText(steps * kTextStep); });
    connect(m_menu, &FileMenu::manualAsked, this, &MainWindow::showManual);
    connect(m_menu, &FileMenu::languageAsked, this, &MainWindow::askLanguage);
    connect(m_menu, &FileMenu::coloursAsked, this, &MainWindow::setColours);
    connect(m_bar, &TopBar::momentChosen, this, &MainWindow::showMoment);
    connect(m_bar, &TopBar::airframeChosen, this, &MainWindow::chooseAirframe);
    connect(m_bar, &TopBar::airframesOpened, this, &MainWindow::nameAirframes);
    connect(m_bars, &Bars::showAsked, this, &MainWindow::showBeside);
    connect(m_bars, &Bars::leaveAsked, this, &MainWindow::leaveBesides);
    connect(&m_bars->problems(), &ProblemBanner::salvageAsked, this, &MainWindow::salvage);
    connect(&m_bars->copy(), &CopyBar::backAsked, this, [this] { leaveCopy(); });
    connect(&m_bars->copy(), &CopyBar::bringBackAsked, this, [this] { bringBackCopy(m_copy); });
    connect(m_pages, &PageStack::problemArose, this, &MainWindow::showProblem);
    connect(m_pages, &PageStack::airframesChanged, this, &MainWindow::takeNewAirframes);
    connect(m_pages, &PageStack::factsChanged, this, &MainWindow::readQuestions);
    connect(m_pages, &PageStack::momentAsked, this, &MainWindow::showMoment);
    connect(m_pages, &PageStack::leaveAsked, this, &MainWindow::leaveBeside);
    connect(m_pages, &PageStack::copyLookAsked, this, &MainWindow::lookAtCopy);
    connect(m_pages, &PageStack::copyBringBackAsked, this, &MainWindow::bringBackCopy);
    connect(m_welcome, &Welcome::fileAsked, this,
            [this](const QString& path) { openAnother(path, OpenAs::Existing); });
    connect(m_welcome, &Welcome::newAsked, m_menu, &FileMenu::askNew);
    connect(m_welcome, &Welcome::openAsked, m_menu, &FileMenu::askOpen);
    connect(m_welcome, &Welcome::demoAsked, this, &MainWindow::openDemo);
}

void MainWindow::addKeys()
{
    const auto onKey = [this](Qt::Key key, auto action) {
        auto* shortcut = new QShortcut{QKeySequence{QKeyCombination{Qt::CTRL, key}}, this};
        connect(shortcut, &QShortcut::activated, this, action);
    };
    for (const Moments moment : kMoments)
        onKey(static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(moment)),
              [this, moment] { showMoment(moment); });
    onKey(Qt::Key_6, [this] { showQuestions(); });
    onKey(Qt::Key_7, [this] { showFaults(); });
    onKey(Qt::Key_8, [this] { showConflicts(); });
    onKey(Qt::Key_K, [this] { m_bar->openAirframes(); });
}

void MainWindow::openPath(const QString& path, OpenAs as)
{
    if (adopt(Session::open(path.toStdString(), as, m_clock), path))
        rememberRecent(path);
}

void MainWindow::openAnother(const QString& path, OpenAs as)
{
    if (mayLeavePages(Leaving::File))
        openPath(path, as);
}

void MainWindow::openDemo()
{
    adopt(Session::openDemo(m_clock), WindowWords::openDemo());
}

QString MainWindow::filePath() const
{
    return QString::fromStdString(m_session->file().path());
}

bool MainWindow::adopt(Result<std::unique_ptr<Session>> session, const QString& path)
{
    if (session)
        openSession(std::move(session).value());
    else
        showRefusal(session.problem(), path);
    return bool{session};
}

void MainWindow::openSession(std::unique_ptr<Session> session)
{
    goOnFrom({std::move(session)});
}

void MainWindow::goOnFrom(LeftOff left)
{
    if (!left.session)
        return;
    m_bars->problems().hide();
    dropPages();
    m_session = std::move(left.session);
    m_pages->setSession(*m_session);
    const QString path = filePath();
    if (m_session->isDemo()) // each start has one of its own
        m_calls->hearNone();
    else
        m_calls->hearFor(path);
    m_bars->drafts().showFor(m_session->isDemo() ? QString{} : path);
    m_menu->setFile(path);
    const auto writes = m_session->records().book().writesElsewhere();
    m_writesSeen = writes ? writes.value() : 0;
    m_airframe = left.airframe;
    readAirframes();
    if (!m_airframe)
        m_airframe = lastAirframeIn(path, m_airframes);
    showAirframe();
    if (m_session->file().isReadOnly())
        showProblem(WindowWords::readOnlyNote(QFileInfo{path}.fileName()));
    if (left.work)
        m_pages->riggedToday().goOnWith(*left.work);
    showMoment(left.moment.value_or(m_airframe ? Moments::RiggedToday : Moments::SetUp));
    m_lookingThrough->start();
}

// The file is already shown while it is looked through as a whole behind the window.
void MainWindow::followLookingThrough()
{
    if (QApplication::activeModalWidget() || QuestionCover::standsOn(*this) || LongWork::standsOn(*this))
        return; // a page stands beneath it and waits for the answer
    const StoreFile& file = m_session->file();
    const QString name = QFileInfo{QString::fromStdString(file.path())}.fileName();
    if (const auto whole = file.wholeness(); whole && !*whole) {
        const Problem problem = whole->problem();
        const QString path = QString::fromStdString(file.path());
        closeSession();
        return showRefusal(problem, path);
    }
    if (m_airframe) // what the first page could be painted without; a page that meets a problem there says so
        static_cast<void>(m_session->records().book().airframe(*m_airframe));
    if (m_pages->makeOneAhead() || !file.isLookedThrough())
        return;
    m_lookingThrough->stop();
    readConflicts();
    catchUp(); // with what was found, which pages tell
    m_bars->readFaults(file);
    if (const auto problem = file.copyProblem())
        showProblem(problem->kind == ProblemKind::NoRoomForCopy ||
                            problem->kind == ProblemKind::CopyOfLaterDay
                        ? ProblemWords::sentence(*problem, name)
                        : WindowWords::noCopyToday(name));
}

// What another window or program has written is shown, whatever page is seen.
void MainWindow::catchUp()
{
    Page* now = m_pages->seen();
    const bool isAsked = QApplication::activeModalWidget() || QApplication::activePopupWidget();
    if (!m_session || !now || isAsked || QuestionCover::standsOn(*this) || LongWork::standsOn(*this))
        return;
    m_bars->readFaults(m_session->file()); // found behind the window meanwhile
    const auto writes = m_session->records().book().writesElsewhere();
    if (!writes || m_writesSeen == writes.value())
        return;
    m_writesSeen = writes.value();
    takeNews(*now);
}

void MainWindow::takeNews(Page& now)
{
    m_session->file().lookAtChainAgain();
    now.catchUp();
    readAirframes();
    showAirframe();
    readQuestions();
    readConflicts();
}

void MainWindow::takeInOther()
{
    if (!m_session)
        return m_prompts.tell(this, JoinWords::openOneFirst());
    if (!m_copiedFile.isEmpty()) // nothing comes into a copy, and no copy is made of it
        return m_prompts.tell(this, saidOfCopy());
    if (!takeInAnother(this, *m_session, m_prompts))
        return;
    if (Page* now = m_pages->seen())
        takeNews(*now);
    if (!m_airframe) {
        m_airframe = lastAirframeIn(filePath(), m_airframes);
        showAirframe();
        refreshPage();
    }
}

void MainWindow::readConflicts()
{
    if (const Outcome read = m_bars->readConflicts(m_session->records()); !read)
        showProblem(ProblemWords::sentence(read.problem(), {}));
}

void MainWindow::showCopies()
{
    if (!m_session)
        return m_prompts.tell(this, CopyWords::openOneFirst());
    if (!m_copiedFile.isEmpty() && !leaveCopy()) // it is the file's copies that are asked for
        return;
    const auto chain = m_session->file().chainFound();
    m_pages->copies().display(lookAtCopies(*m_session, m_clock), chain && chain->faults > 0);
    showBesidePage(m_pages->copies());
}

void MainWindow::lookAtCopy(const KeptCopy& copy)
{
    const QString file = filePath();
    auto looked = Session::open(copy.path.string(), OpenAs::ToLook, m_clock);
    if (!looked)
        return showProblem(
            ProblemWords::sentence(looked.problem(), QString::fromStdString(copy.path.filename().string())));
    if (!mayLeavePages(Leaving::File))
        return;
    openSession(std::move(looked).value());
    m_bars->problems().hide(); // the line of the copy says it, and stays
    m_copy = copy;
    m_copiedFile = file;
    m_bars->copy().say(saidOfCopy());
}

QString MainWindow::saidOfCopy() const
{
    return CopyWords::onlyLookedAt(QFileInfo{m_copiedFile}.fileName(), m_copy.day);
}

bool MainWindow::leaveCopy()
{
    openPath(QString{m_copiedFile}, OpenAs::Existing);
    return m_copiedFile.isEmpty(); // else the file could not be opened again, which was said
}

void MainWindow::bringBackCopy(const KeptCopy& copy)
{
    const QString into = askNewRigband(this, m_prompts);
    if (into.isEmpty() || !mayLeavePages(Leaving::File))
        return;
    const QString name = QFileInfo{into}.fileName();
    const auto made = copyIntoNewBehind(*this, QString::fromStdString(copy.path.string()), into);
    if (!made)
        return;
    if (!*made)
        return m_prompts.tell(this, ProblemWords::sentence(made->problem(), name));
    m_prompts.tell(this, CopyWords::broughtBack(name));
    openPath(into, OpenAs::Existing);
}

LeftOff MainWindow::leaveOff()
{
    LeftOff left{nullptr, m_airframe, m_moment};
    if (m_pages->made(Moments::RiggedToday))
        left.work = m_pages->riggedToday().handOn();
    left.session = leaveSession();
    return left;
}

std::unique_ptr<Session> MainWindow::leaveSession()
{
    m_lookingThrough->stop();
    m_calls->hearNone(); // the window that takes it over hears
    dropPages();
    return std::move(m_session);
}

// Back to the welcome.
void MainWindow::closeSession()
{
    leaveSession().reset();
    m_bars->drafts().showFor({});
    m_menu->setFile({});
    m_airframe.reset();
    m_pages->setCurrentWidget(m_welcome);
    readAirframes();
    showAirframe();
    readQuestions();
    setWindowTitle(WindowWords::programName());
}

// One that was not there before is what the user works on now: the bar must never name another one than the
// page.
void MainWindow::takeNewAirframes()
{
    const std::vector<Airframe> before = m_airframes;
    readAirframes();
    const auto added = std::ranges::find_if(m_airframes, [&before](const Airframe& airframe) {
        return std::ranges::find(before, airframe.id, &Airframe::id) == before.end();
    });
    if (added != m_airframes.end())
        return chooseAirframe(added->id);
    showAirframe();
    readQuestions();
    readConflicts();
}

void MainWindow::dropPages()
{
    m_pages->drop();
    m_bars->hideOfFile();
    m_readFrom.reset();
    m_copiedFile.clear();
}

void MainWindow::readAirframes()
{
    m_airframes.clear();
    if (m_session) {
        auto airframes = m_session->records().airframes();
        if (airframes)
            m_airframes = std::move(airframes).value();
        else
            showProblem(ProblemWords::sentence(airframes.problem(), {}));
    }
}

// The one in hand, in the bar and in the title.
void MainWindow::showAirframe()
{
    m_bar->display(m_airframes, m_airframe, m_session != nullptr);
    if (!m_session)
        return;
    const QString file = m_session->isDemo() ? WindowWords::demoTitle() : QFileInfo{filePath()}.fileName();
    setWindowTitle(WindowWords::title(registrationNow(), file));
}

QString MainWindow::registrationNow() const
{
    const auto now =
        std::ranges::find_if(m_airframes, [this](const Airframe& one) { return m_airframe == one.id; });
    return now == m_airframes.end() ? QString{} : QString::fromStdString(now->registration);
}

// Only when somebody looks at the list: a hangar may hold hundreds of airframes.
void MainWindow::nameAirframes()
{
    QStringList choices;
    for (const Airframe& airframe : m_airframes) {
        QString choice = choiceOf(airframe);
        const auto record = m_session->records().openRecord(airframe.id);
        if (record && record.value())
            choice = WindowWords::openRecordMark(choice);
        const std::size_t open = openQuestionsOf(airframe.id);
        if (open > 0)
            choice = WindowWords::openQuestionsMark(choice, static_cast<int>(open));
        choices << choice;
    }
    m_bar->nameAirframes(choices);
}

// Of the airframe that is seen as beside it: what is kept back from the second person is not counted either.
std::size_t MainWindow::openQuestionsOf(AirframeId airframe) const
{
    if (m_airframe == airframe) {
        const auto open = openQuestions(airframe);
        return open ? open.value().size() : 0;
    }
    const auto questions = m_session->records().questions(airframe);
    return questions ? openAmong(questions.value()).size() : 0;
}

Result<std::vector<OpenQuestion>> MainWindow::openQuestions(AirframeId airframe) const
{
    QuestionsPresenter presenter{m_session->records()};
    presenter.setBlind(m_pages->isBlind());
    return presenter.open(airframe);
}

void MainWindow::readQuestions()
{
    const auto airframe =
        std::ranges::find_if(m_airframes, [this](const Airframe& one) { return m_airframe == one.id; });
    if (airframe == m_airframes.end()) {
        m_bars->questions().hide();
        return;
    }
    const auto open = openQuestions(airframe->id);
    if (!open) {
        showProblem(ProblemWords::sentence(open.problem(), {}));
        return;
    }
    m_bars->questions().display(QString::fromStdString(airframe->registration), open.value());
}

void MainWindow::chooseAirframe(AirframeId airframe)
{
    m_airframe = airframe;
    if (!m_session->isDemo())
        rememberAirframe(filePath(), airframe);
    showAirframe();
    refreshPage();
}

void MainWindow::showMoment(Moments moment)
{
    Page* page = m_pages->moment(moment);
    if (!page)
        return;
    m_moment = moment;
    showPage(*page);
    m_bar->check(moment);
}

void MainWindow::showBeside(Beside page)
{
    switch (page) {
    case Beside::Questions:
        return showQuestions();
    case Beside::Faults:
        return showFaults();
    case Beside::Conflicts:
        return showConflicts();
    case Beside::Copies:
        return showCopies();
    case Beside::Manual:
        break;
    }
    showManual();
}

void MainWindow::showBesidePage(AsidePage& page)
{
    showPage(page);
    m_bar->checkNone();
}

void MainWindow::showQuestions()
{
    if (!m_session)
        return;
    if (const auto* rigged = qobject_cast<RiggedTodayPage*>(m_pages->seen()))
        m_pages->questions().comeFor(rigged->atHand());
    showBesidePage(m_pages->questions());
}

void MainWindow::showFaults()
{
    const auto found = m_session ? m_session->file().chainFound() : std::nullopt;
    if (!found || ChainWords::barOf(*found).isEmpty())
        return;
    m_pages->faults().display(*found);
    showBesidePage(m_pages->faults());
}

void MainWindow::showConflicts()
{
    if (m_session)
        showBesidePage(m_pages->conflicts());
}

void MainWindow::showManual()
{
    ManualPage& manual = m_pages->manual();
    if (m_pages->seen() != &manual) {
        m_readFrom = m_pages->besideSeen();
        manual.openChapter(m_pages->chapterSeen(m_moment));
    }
    showBesidePage(manual);
}

// The page that is seen is left: the manual for where it was opened.
void MainWindow::leaveBeside()
{
    const bool isManual = m_pages->besideSeen() == Beside::Manual;
    if (isManual && !m_session)
        m_pages->setCurrentWidget(m_welcome);
    else if (isManual && m_readFrom)
        showBeside(*m_readFrom);
    else
        leaveBesides();
}

void MainWindow::leaveBesides()
{
    showMoment(m_moment);
}

void MainWindow::showPage(Page& next)
{
    if (Page* now = m_pages->seen(); now && now != &next)
        now->leave();
    m_pages->setCurrentWidget(&next);
    m_bars->setOnPage(m_pages->besideSeen());
    if (m_session && (m_pages->isMade(Beside::Conflicts) || m_bars->isConflictsTold()))
        readConflicts();
    refreshPage();
    next.setFocus();
}

void MainWindow::refreshPage()
{
    if (m_session) // before any page is shown: all of them keep back the same
        m_session->records().book().setBlind(m_pages->isBlind());
    if (Page* now = m_pages->seen())
        now->showAirframe(m_airframe);
    readQuestions();
}

void MainWindow::showProblem(const QString& sentence)
{
    m_bars->problems().say(sentence);
}

void MainWindow::showRefusal(const Problem& problem, const QString& path)
{
    m_refused = path;
    m_bars->problems().sayOfFile(ProblemWords::sentence(problem, QFileInfo{path}.fileName()),
                                 mayBeSalvaged(problem.kind));
}

void MainWindow::salvage()
{
    const QString made = salvageIntoNew(this, m_refused, m_prompts, m_clock);
    if (!made.isEmpty())
        openPath(made, OpenAs::Existing);
}

void MainWindow::setLook(const Look& look)
{
    m_look = look;
    m_menu->checkColours(look.theme.scheme());
    QApplication::setPalette(
        paletteFor(look.theme)); // widgets with a style sheet ask the application, not the window
    setStyleSheet(styleSheetFor(look.theme, look.fonts));
    m_bars->setLook(look);
    m_pages->setLook(look);
}

void MainWindow::scaleText(double by)
{
    Look look = m_look;
    look.fonts.scale = withinSizes(look.fonts.scale + by);
    setLook(look);
    refreshPage();
}

void MainWindow::setColours(Scheme scheme)
{
    setLook({Theme::of(scheme), m_look.fonts});
    refreshPage();
}

void MainWindow::askLanguage(const QString& code)
{
    if (!mayLeavePages(Leaving::Language))
        return;
    if (m_copiedFile.isEmpty() || leaveCopy()) // the window of another language begins with the file itself
        emit languageAsked(code);
}

// Asks where something is half done.
bool MainWindow::mayLeavePages(Leaving what)
{
    if (m_asksNothing)
        return true;
    const LeavingText text = textOf(what);
    const auto mayBeLeft = [&](const QString& undone) {
        return undone.isEmpty() || m_prompts.confirm(this, text.title, undone, text.yes);
    };
    const QuestionCover* asking = QuestionCover::standingOn(*this);
    if (asking && asking->hasTyped() && !mayBeLeft(PromptWords::reasonIsNotEntered()))
        return false;
    return std::ranges::all_of(m_pages->all(), [&](const Page* page) {
        return mayBeLeft(what == Leaving::Language ? page->lostWithTheLanguage() : page->leftUndone());
    });
}

MainWindow::LeavingText MainWindow::textOf(Leaving what)
{
    switch (what) {
    case Leaving::File:
        return {FileMenuWords::leaveTitle(), FileMenuWords::leaveAllTheSame()};
    case Leaving::Language:
        return {FileMenuWords::languageTitle(), FileMenuWords::changeLanguageAllTheSame()};
    case Leaving::Program:
        break;
    }
    return {WindowWords::closeTitle(), WindowWords::closeAllTheSame()};
}

// What asks stands in the middle of a press: it is turned away, and the press ends first.
void MainWindow::closeUnasked()
{
    constexpr int kLookAgain = 20; // milliseconds
    m_asksNothing = true;
    bool isAsked = false;
    for (QWidget* asking : {QApplication::activePopupWidget(), QApplication::activeModalWidget()})
        if (asking && asking != this) {
            isAsked = true;
            asking->close();
        }
    if (isAsked || QThread::currentThread()->loopLevel() > 1 || !close())
        QTimer::singleShot(kLookAgain, this, &MainWindow::closeUnasked);
}

// Nobody is asked any more.
void MainWindow::keepTyped()
{
    Drafts drafts{Formats{}.moment(m_clock.now()), {}};
    const QString registration = registrationNow();
    const auto on = [&registration](const QString& page) {
        return registration.isEmpty() ? page : DraftWords::of(registration, page);
    };
    for (const Moments moment : kMoments)
        if (const Page* page = m_pages->made(moment))
            drafts.lines << typedInto(*page, on(titleOf(moment)));
    for (const AsidePage* page : m_pages->asides())
        drafts.lines << typedInto(*page, on(page->accessibleName()));
    if (const QuestionCover* cover = QuestionCover::standingOn(*this))
        drafts.lines << typedInto(*cover, on(titleOf(m_moment)));
    if (m_session && !m_session->isDemo() && !drafts.lines.isEmpty())
        keepDrafts(filePath(), drafts);
}

// Esc that nothing has taken, wherever the focus is: a page beside the five moments is left by it.
void MainWindow::keyPressEvent(QKeyEvent* event)
{
    auto* aside = qobject_cast<AsidePage*>(m_pages->seen());
    if (aside && event->key() == Qt::Key_Escape)
        emit aside->leaveAsked();
    else
        QMainWindow::keyPressEvent(event);
}

void MainWindow::closeEvent(QCloseEvent* event)
{
    if (!mayLeavePages(Leaving::Program))
        return event->ignore();
    if (m_asksNothing)
        keepTyped();
    dropPages();
    event->accept();
    emit closed();
}

} // namespace rig
