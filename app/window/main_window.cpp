#include "app/window/main_window.h"

#include "app/pages/annual/annual_page.h"
#include "app/pages/learn/learn_page.h"
#include "app/pages/prompts.h"
#include "app/pages/questions/questions_page.h"
#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/trends/trends_page.h"
#include "app/widgets/announcer.h"
#include "app/widgets/long_work.h"
#include "app/widgets/parts.h"
#include "app/widgets/question_cover.h"
#include "app/window/button_key.h"
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
#include "app/wording/conflict_words.h"
#include "app/wording/copy_words.h"
#include "app/wording/file_menu_words.h"
#include "app/wording/formats.h"
#include "app/wording/join_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/window_words.h"
#include "core/store/facts_book.h"

#include <QApplication>
#include <QCloseEvent>
#include <QFileInfo>
#include <QKeyEvent>
#include <QShortcut>
#include <QStackedWidget>
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
    m_banner = new ProblemBanner;
    layout->addWidget(m_banner);
    m_drafts = new DraftBar;
    layout->addWidget(m_drafts);
    m_faultsBar = new AsideBar{
        "faultsBar",
        MarkedBar::Tone::Problem,
        "showFaults",
        {ChainWords::show(), ChainWords::showHint(), ChainWords::leave(), ChainWords::leaveHint()}};
    m_faultsBar->mark(shapeOf(Verdict::Outside), shapeRoleOf(Verdict::Outside));
    layout->addWidget(m_faultsBar);
    m_copyBar = new CopyBar;
    layout->addWidget(m_copyBar);
    m_questionBar = new QuestionBar;
    layout->addWidget(m_questionBar);
    m_conflictsBar = new AsideBar{"conflictsBar",
                                  MarkedBar::Tone::Caution,
                                  "showConflicts",
                                  {ConflictWords::show(), ConflictWords::showHint(), ConflictWords::leave(),
                                   ConflictWords::leaveHint()}};
    m_conflictsBar->mark(MarkShape::HalfDisc, Role::InkSoft);
    layout->addWidget(m_conflictsBar);
    m_stack = new QStackedWidget;
    m_welcome = new Welcome;
    m_stack->addWidget(m_welcome);
    layout->addWidget(m_stack, 1);
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
    for (const auto& [bar, shown] :
         {std::pair<AsideBar*, void (MainWindow::*)()>{m_questionBar, &MainWindow::showQuestions},
          {m_faultsBar, &MainWindow::showFaults},
          {m_conflictsBar, &MainWindow::showConflicts}}) {
        connect(bar, &AsideBar::showAsked, this, shown);
        connect(bar, &AsideBar::leaveAsked, this, &MainWindow::leaveBesides);
    }
    connect(m_banner, &ProblemBanner::salvageAsked, this, &MainWindow::salvage);
    connect(m_copyBar, &CopyBar::backAsked, this, [this] { leaveCopy(); });
    connect(m_copyBar, &CopyBar::bringBackAsked, this, [this] { bringBackCopy(m_copy); });
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
    m_banner->hide();
    dropPages();
    m_session = std::move(left.session);
    const QString path = filePath();
    if (m_session->isDemo()) // each start has one of its own
        m_calls->hearNone();
    else
        m_calls->hearFor(path);
    m_drafts->showFor(m_session->isDemo() ? QString{} : path);
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
        qobject_cast<RiggedTodayPage*>(page(Moments::RiggedToday))->goOnWith(*left.work);
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
    if (isPageMadeAhead() || !file.isLookedThrough())
        return;
    m_lookingThrough->stop();
    readFaults();
    readConflicts();
    if (const auto problem = file.copyProblem())
        showProblem(problem->kind == ProblemKind::NoRoomForCopy ||
                            problem->kind == ProblemKind::CopyOfLaterDay
                        ? ProblemWords::sentence(*problem, name)
                        : WindowWords::noCopyToday(name));
}

// What another window or program has written is shown, whatever page is seen.
void MainWindow::catchUp()
{
    auto* now = qobject_cast<Page*>(m_stack->currentWidget());
    const bool isAsked = QApplication::activeModalWidget() || QApplication::activePopupWidget();
    if (!m_session || !now || isAsked || QuestionCover::standsOn(*this) || LongWork::standsOn(*this))
        return;
    readFaults(); // found behind the window meanwhile
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
    if (auto* now = qobject_cast<Page*>(m_stack->currentWidget()))
        takeNews(*now);
    if (!m_airframe) {
        m_airframe = lastAirframeIn(filePath(), m_airframes);
        showAirframe();
        refreshPage();
    }
}

// What two laptops say differently: it takes a look at the whole file, so not after each key.
void MainWindow::readConflicts()
{
    const auto open = m_session->records().openConflicts();
    if (!open)
        return showProblem(ProblemWords::sentence(open.problem(), {}));
    m_conflictsBar->say(!open.value().empty() || m_conflictsBar->isOnPage() ? ConflictWords::bar(open.value())
                                                                            : QString{});
}

void MainWindow::showConflicts()
{
    if (!m_session)
        return;
    if (!m_conflicts)
        addBeside(m_conflicts = new ConflictsPage{m_session->records()});
    showBeside(m_conflicts);
}

void MainWindow::showCopies()
{
    if (!m_session)
        return m_prompts.tell(this, CopyWords::openOneFirst());
    if (!m_copiedFile.isEmpty() && !leaveCopy()) // it is the file's copies that are asked for
        return;
    if (!m_copies) {
        // Both leave this page behind, which is still in the middle of a press.
        const auto later = [this](void (MainWindow::*then)(const KeptCopy&)) {
            return [this, then](const KeptCopy& copy) {
                QTimer::singleShot(0, this, [this, then, copy] { (this->*then)(copy); });
            };
        };
        m_copies = new CopiesPage;
        connect(m_copies, &CopiesPage::lookAsked, this, later(&MainWindow::lookAtCopy));
        connect(m_copies, &CopiesPage::bringBackAsked, this, later(&MainWindow::bringBackCopy));
        addBeside(m_copies);
    }
    const auto chain = m_session->file().chainFound();
    m_copies->display(lookAtCopies(*m_session, m_clock), chain && chain->faults > 0);
    showBeside(m_copies);
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
    m_banner->hide(); // the line of the copy says it, and stays
    m_copy = copy;
    m_copiedFile = file;
    m_copyBar->say(saidOfCopy());
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
    if (Page* rigged = m_pages[static_cast<std::size_t>(Moments::RiggedToday)])
        left.work = qobject_cast<RiggedTodayPage*>(rigged)->handOn();
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
    m_drafts->showFor({});
    m_menu->setFile({});
    m_airframe.reset();
    m_stack->setCurrentWidget(m_welcome);
    readAirframes();
    showAirframe();
    readQuestions();
    setWindowTitle(WindowWords::programName());
}

// The pages that judge many readings when they are shown are made before, one at a time, behind the first
// one.
bool MainWindow::isPageMadeAhead()
{
    for (const Moments moment : {Moments::Trends, Moments::BeforeTheAnnual})
        if (!m_pages[static_cast<std::size_t>(moment)])
            return page(moment);
    return false;
}

// A page is made when it is first shown, or behind the first one: making all of them took most of the time of
// opening a file.
Page* MainWindow::page(Moments moment)
{
    Page*& page = m_pages[static_cast<std::size_t>(moment)];
    if (!page && m_session)
        page = added(newPage(moment));
    return page;
}

Page* MainWindow::newPage(Moments moment)
{
    Records& records = m_session->records();
    switch (moment) {
    case Moments::RiggedToday:
        return new RiggedTodayPage{records, m_clock, m_prompts};
    case Moments::Trends:
        return newTrends();
    case Moments::BeforeTheAnnual: {
        auto* annual = new AnnualPage{records, m_clock, m_prompts};
        annual->sharePeriod(m_period);
        connect(annual, &AnnualPage::trendWanted, this,
                [this](CouplingId coupling, const std::optional<ReadingId>& reading) {
                    showMoment(Moments::Trends);
                    qobject_cast<TrendsPage*>(page(Moments::Trends))->visit(coupling, reading);
                });
        return annual;
    }
    case Moments::KnowThisAirframe:
        return new LearnPage{records, m_clock, m_prompts,
                             m_session->isDemo() ? LearnerMemory{} : rememberedLearners()};
    case Moments::SetUp:
        break;
    }
    auto* setUp = new SetUpPage{records, m_clock, m_prompts};
    connect(setUp, &SetUpPage::paperEntryAsked, this, [this] {
        showMoment(Moments::RiggedToday);
        qobject_cast<RiggedTodayPage*>(page(Moments::RiggedToday))->enterFromPaper();
    });
    return setUp;
}

Page* MainWindow::newTrends()
{
    auto* trends = new TrendsPage{m_session->records(), m_clock};
    trends->sharePeriod(m_period);
    connect(trends, &TrendsPage::annualWanted, this, [this] { showMoment(Moments::BeforeTheAnnual); });
    return trends;
}

void MainWindow::addBeside(AsidePage* page)
{
    connect(page, &AsidePage::leaveAsked, this, &MainWindow::leaveBesides);
    added(page);
}

void MainWindow::showBeside(AsidePage* page)
{
    showPage(page);
    m_bar->checkNone();
}

Page* MainWindow::added(Page* page)
{
    m_stack->addWidget(page);
    connect(page, &Page::problemArose, this, &MainWindow::showProblem);
    connect(page, &Page::airframesChanged, this, &MainWindow::takeNewAirframes);
    connect(page, &Page::factsChanged, this, &MainWindow::readQuestions);
    page->setLook(m_look);
    return page;
}

// Those of the five moments that were shown, and the questions; none before a file is open.
std::vector<Page*> MainWindow::allPages() const
{
    std::vector<Page*> pages{m_pages.begin(), m_pages.end()};
    pages.push_back(m_questions);
    pages.push_back(m_faults);
    pages.push_back(m_conflicts);
    pages.push_back(m_copies);
    pages.push_back(m_manual);
    std::erase(pages, nullptr);
    return pages;
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
    for (Page* page : allPages()) {
        page->end();
        m_stack->removeWidget(page);
        delete page;
    }
    m_pages.fill(nullptr);
    m_period = {};
    m_questions = nullptr;
    m_faults = nullptr;
    m_faultsBar->hide();
    m_conflicts = nullptr;
    m_conflictsBar->hide();
    m_copies = nullptr;
    m_manual = nullptr;
    m_readFrom = nullptr;
    m_copyBar->hide();
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
    const auto now =
        std::ranges::find_if(m_airframes, [this](const Airframe& one) { return m_airframe == one.id; });
    const QString registration =
        now == m_airframes.end() ? QString{} : QString::fromStdString(now->registration);
    const QString file = m_session->isDemo() ? WindowWords::demoTitle() : QFileInfo{filePath()}.fileName();
    setWindowTitle(WindowWords::title(registration, file));
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
    presenter.setBlind(isBlind());
    return presenter.open(airframe);
}

// Whichever page is seen: the second person may have gone there.
bool MainWindow::isBlind() const
{
    const Page* rigged = m_pages[static_cast<std::size_t>(Moments::RiggedToday)];
    return rigged && rigged->isBlind();
}

void MainWindow::readQuestions()
{
    const auto airframe =
        std::ranges::find_if(m_airframes, [this](const Airframe& one) { return m_airframe == one.id; });
    if (airframe == m_airframes.end()) {
        m_questionBar->hide();
        return;
    }
    const auto open = openQuestions(airframe->id);
    if (!open) {
        showProblem(ProblemWords::sentence(open.problem(), {}));
        return;
    }
    m_questionBar->display(QString::fromStdString(airframe->registration), open.value());
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
    if (!page(moment))
        return;
    m_moment = moment;
    showPage(page(moment));
    m_bar->check(moment);
}

void MainWindow::showQuestions()
{
    if (!m_session)
        return;
    if (!m_questions)
        addBeside(m_questions = new QuestionsPage{m_session->records()});
    if (const auto* rigged = qobject_cast<RiggedTodayPage*>(m_stack->currentWidget()))
        m_questions->comeFor(rigged->atHand());
    showBeside(m_questions);
}

// Found behind the window when the file was opened; no later save hides it.
void MainWindow::readFaults()
{
    const auto found = m_session->file().chainFound();
    const bool areFaults = found && found->faults > 0;
    const Verdict marked = areFaults ? Verdict::Outside : Verdict::CannotTell;
    m_faultsBar->mark(shapeOf(marked), shapeRoleOf(marked));
    m_faultsBar->setTone(areFaults ? MarkedBar::Tone::Problem : MarkedBar::Tone::Caution);
    m_faultsBar->say(found ? ChainWords::barOf(*found) : QString{});
}

void MainWindow::showFaults()
{
    const auto found = m_session ? m_session->file().chainFound() : std::nullopt;
    if (!found || ChainWords::barOf(*found).isEmpty())
        return;
    if (!m_faults)
        addBeside(m_faults = new FaultsPage);
    m_faults->display(*found);
    showBeside(m_faults);
}

void MainWindow::showManual()
{
    if (!m_manual) {
        m_manual = new ManualPage{m_prompts};
        added(m_manual);
        connect(m_manual, &ManualPage::leaveAsked, this, &MainWindow::leaveManual);
    }
    if (m_stack->currentWidget() != m_manual) {
        m_readFrom = qobject_cast<AsidePage*>(m_stack->currentWidget());
        m_manual->openChapter(chapterSeen());
    }
    showBeside(m_manual);
}

void MainWindow::leaveManual()
{
    if (!m_session)
        m_stack->setCurrentWidget(m_welcome);
    else if (m_readFrom)
        showBeside(m_readFrom);
    else
        leaveBesides();
}

QString MainWindow::chapterSeen() const
{
    const QWidget* seen = m_stack->currentWidget();
    if (seen == m_welcome)
        return QStringLiteral("start.md");
    for (const auto& [page, chapter] : {std::pair<const QWidget*, const char*>{m_questions, "questions.md"},
                                        {m_faults, "changed-facts.md"},
                                        {m_conflicts, "two-laptops.md"},
                                        {m_copies, "copies.md"}})
        if (page == seen)
            return QLatin1String(chapter);
    switch (m_moment) {
    case Moments::RiggedToday:
        return isBlind() ? QStringLiteral("second-person.md") : QStringLiteral("rigged-today.md");
    case Moments::Trends:
        return QStringLiteral("trends.md");
    case Moments::BeforeTheAnnual:
        return QStringLiteral("before-the-annual.md");
    case Moments::KnowThisAirframe:
        return QStringLiteral("know-this-airframe.md");
    case Moments::SetUp:
        break;
    }
    return QStringLiteral("set-up.md");
}

void MainWindow::leaveBesides()
{
    showMoment(m_moment);
}

void MainWindow::showPage(Page* next)
{
    if (auto* now = qobject_cast<Page*>(m_stack->currentWidget()); now && now != next)
        now->leave();
    m_stack->setCurrentWidget(next);
    m_questionBar->setOnPage(next == m_questions);
    m_faultsBar->setOnPage(next == m_faults);
    m_conflictsBar->setOnPage(next == m_conflicts);
    if (m_conflicts || !m_conflictsBar->isHidden())
        readConflicts();
    refreshPage();
    next->setFocus();
}

void MainWindow::refreshPage()
{
    if (m_session) // before any page is shown: all of them keep back the same
        m_session->records().book().setBlind(isBlind());
    if (auto* now = qobject_cast<Page*>(m_stack->currentWidget()))
        now->showAirframe(m_airframe);
    readQuestions();
}

void MainWindow::showProblem(const QString& sentence)
{
    m_banner->say(sentence);
}

void MainWindow::showRefusal(const Problem& problem, const QString& path)
{
    m_refused = path;
    m_banner->sayOfFile(ProblemWords::sentence(problem, QFileInfo{path}.fileName()),
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
    m_questionBar->setLook(look);
    m_faultsBar->setLook(look);
    m_conflictsBar->setLook(look);
    m_copyBar->setLook(look);
    m_drafts->setLook(look);
    for (Page* page : allPages())
        page->setLook(look);
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
    if (!mayLeavePages(Leaving::File))
        return;
    if (m_copiedFile.isEmpty() || leaveCopy()) // the window of another language begins with the file itself
        emit languageAsked(code);
}

// Asks where something is half done.
bool MainWindow::mayLeavePages(Leaving what)
{
    if (m_asksNothing)
        return true;
    const bool closes = what == Leaving::Program;
    const QString title = closes ? WindowWords::closeTitle() : FileMenuWords::leaveTitle();
    const QString yes = closes ? WindowWords::closeAllTheSame() : FileMenuWords::leaveAllTheSame();
    return std::ranges::all_of(allPages(), [&](const Page* page) {
        const QString undone = page->leftUndone();
        return undone.isEmpty() || m_prompts.confirm(this, title, undone, yes);
    });
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
    // A question within the window takes the first closing for itself.
    if (isAsked || QThread::currentThread()->loopLevel() > 1 || !close())
        QTimer::singleShot(kLookAgain, this, &MainWindow::closeUnasked);
}

// Nobody is asked any more.
void MainWindow::keepTyped()
{
    Drafts drafts{Formats{}.moment(m_clock.now()), {}};
    for (const Moments moment : kMoments)
        if (const Page* page = m_pages[static_cast<std::size_t>(moment)])
            drafts.lines << typedInto(*page, titleOf(moment));
    if (m_session && !m_session->isDemo() && !drafts.lines.isEmpty())
        keepDrafts(filePath(), drafts);
}

// Esc that nothing has taken, wherever the focus is: a page beside the five moments is left by it.
void MainWindow::keyPressEvent(QKeyEvent* event)
{
    auto* aside = qobject_cast<AsidePage*>(m_stack->currentWidget());
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
