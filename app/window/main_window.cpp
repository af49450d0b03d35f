#include "app/window/main_window.h"

#include "app/pages/annual/annual_page.h"
#include "app/pages/later_page.h"
#include "app/pages/prompts.h"
#include "app/pages/questions/questions_page.h"
#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/pages/trends/trends_page.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/widgets/question_cover.h"
#include "app/window/question_bar.h"
#include "app/wording/problem_words.h"
#include "app/wording/window_words.h"
#include "core/store/facts_book.h"

#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QFileInfo>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QSettings>
#include <QShortcut>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

constexpr double kSmallestText = 1.0;
constexpr double kLargestText = 2.0;
constexpr double kTextStep = 0.125;
constexpr int kCardOfRow = 100;     // stretch: the card is as wide as it may be
constexpr int kCatchUpEvery = 1000; // milliseconds, with what another window has written
constexpr int kLookEvery = 50;      // milliseconds, whether the file is looked through

QString choiceOf(const Airframe& airframe)
{
    return WindowWords::airframeChoice(QString::fromStdString(airframe.registration),
                                       QString::fromStdString(airframe.type));
}

QString lastAirframeKey(const QString& path)
{
    return QStringLiteral("lastAirframe/") + QString{path}.replace('/', '|');
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
    layout->addWidget(makeBar());
    layout->addWidget(makeBanner());
    m_questionBar = new QuestionBar;
    connect(m_questionBar, &QuestionBar::showAsked, this, &MainWindow::showQuestions);
    connect(m_questionBar, &QuestionBar::leaveAsked, this, &MainWindow::leaveQuestions);
    connect(new QShortcut{QKeySequence{Qt::CTRL | Qt::Key_6}, this}, &QShortcut::activated, this,
            &MainWindow::showQuestions);
    layout->addWidget(m_questionBar);
    m_stack = new QStackedWidget;
    m_welcome = makeWelcome();
    m_stack->addWidget(m_welcome);
    layout->addWidget(m_stack, 1);
    setCentralWidget(whole);
    m_lookingThrough = new QTimer{this};
    m_lookingThrough->setInterval(kLookEvery);
    connect(m_lookingThrough, &QTimer::timeout, this, &MainWindow::followLookingThrough);
    m_catchingUp = new QTimer{this};
    m_catchingUp->setInterval(kCatchUpEvery);
    connect(m_catchingUp, &QTimer::timeout, this, &MainWindow::catchUp);
    m_catchingUp->start();
    setWindowTitle(WindowWords::programName());
    setLook({});
    showAirframe();
}

MainWindow::~MainWindow() = default;

QWidget* MainWindow::makeBar()
{
    auto* bar = new QWidget;
    bar->setProperty("bar", true);
    bar->setAttribute(Qt::WA_StyledBackground);
    auto* layout = new QHBoxLayout{bar};
    layout->setContentsMargins(16, 8, 16, 8);
    layout->setSpacing(6);

    m_registration = new QPushButton;
    m_registration->setProperty("kind", "registration");
    m_registration->setObjectName("registration");
    m_registration->setToolTip(WindowWords::chooseAirframe());
    m_airframeMenu = new QMenu{m_registration};
    connect(m_airframeMenu, &QMenu::aboutToShow, this, &MainWindow::markAirframeMenu);
    connect(m_registration, &QPushButton::clicked, this, [this] {
        if (!m_airframeMenu->isEmpty())
            m_airframeMenu->popup(m_registration->mapToGlobal(QPoint{0, m_registration->height()}));
    });
    auto* choose = new QShortcut{QKeySequence{Qt::CTRL | Qt::Key_K}, this};
    connect(choose, &QShortcut::activated, m_registration, &QPushButton::click);
    m_type = new QLabel;
    layout->addWidget(m_registration);
    layout->addWidget(m_type);
    layout->addStretch(1);

    const std::array<QString, 5> names{WindowWords::riggedToday(), WindowWords::trends(),
                                       WindowWords::beforeTheAnnual(), WindowWords::knowThisAirframe(),
                                       WindowWords::setUp()};
    for (std::size_t i = 0; i < names.size(); ++i) {
        const int number = static_cast<int>(i) + 1;
        auto* button = new QPushButton{names[i]};
        button->setProperty("kind", "bar");
        button->setCheckable(true);
        button->setAutoExclusive(true);
        button->setObjectName(QStringLiteral("moment%1").arg(number));
        button->setToolTip(WindowWords::momentWithKey(names[i], number));
        connect(button, &QPushButton::clicked, this, [this, i] { showMoment(static_cast<Moments>(i)); });
        auto* key = new QShortcut{
            QKeySequence{QKeyCombination{Qt::CTRL, static_cast<Qt::Key>(Qt::Key_0 + number)}}, this};
        connect(key, &QShortcut::activated, this, [this, i] { showMoment(static_cast<Moments>(i)); });
        m_moments[i] = button;
        layout->addWidget(button);
    }
    layout->addSpacing(12);
    auto* file = new QPushButton{WindowWords::fileMenu()};
    file->setProperty("kind", "bar");
    file->setObjectName("fileMenu");
    file->setMenu(makeFileMenu());
    layout->addWidget(file);
    return bar;
}

QMenu* MainWindow::makeFileMenu()
{
    auto* menu = new QMenu{this};
    const auto add = [this, menu](const QString& text, const QKeySequence& key, auto action) {
        QAction* one = menu->addAction(text);
        one->setShortcut(key);
        addAction(one); // the key works while the menu is shut
        connect(one, &QAction::triggered, this, action);
        return one;
    };
    add(WindowWords::newFile(), QKeySequence::New, [this] { askNewFile(); });
    add(WindowWords::openFile(), QKeySequence::Open, [this] { askOpenFile(); });
    add(WindowWords::openDemo(), {}, [this] { openDemo(); });
    menu->addSeparator();
    add(WindowWords::largerText(), QKeySequence::ZoomIn, [this] { scaleText(kTextStep); });
    add(WindowWords::smallerText(), QKeySequence::ZoomOut, [this] { scaleText(-kTextStep); });
    m_darkAction = add(WindowWords::darkColours(), Qt::Key_F9, [this] { setDark(!m_look.theme.isDark()); });
    m_darkAction->setCheckable(true);
    menu->addSeparator();
    add(WindowWords::keys(), Qt::Key_F1, [this] { m_prompts.tell(this, WindowWords::keysText()); });
    add(WindowWords::quit(), QKeySequence::Quit, [this] { close(); });
    return menu;
}

QWidget* MainWindow::makeBanner()
{
    m_banner = new QFrame;
    m_banner->setProperty("banner", true);
    m_banner->setObjectName("problemBanner");
    auto* layout = new QHBoxLayout{m_banner};
    layout->setContentsMargins(20, 8, 16, 8);
    m_bannerText = new QLabel;
    m_bannerText->setProperty("kind", "problem");
    m_bannerText->setWordWrap(true);
    m_bannerText->setObjectName("problemText");
    auto* dismiss = new QPushButton{WindowWords::dismiss()};
    connect(dismiss, &QPushButton::clicked, m_banner, &QFrame::hide);
    layout->addWidget(m_bannerText, 1);
    layout->addWidget(dismiss);
    m_banner->hide();
    return m_banner;
}

QWidget* MainWindow::makeWelcome()
{
    auto* page = new QWidget;
    page->setProperty("page", true);
    auto* layout = new QVBoxLayout{page};
    layout->setContentsMargins(16, 16, 16, 16);
    auto* card = new QFrame;
    card->setProperty("card", true);
    card->setMaximumWidth(820);
    auto* inner = new QVBoxLayout{card};
    inner->setContentsMargins(32, 28, 32, 28);
    inner->setSpacing(12);
    const auto label = [inner](const QString& text, const char* kind) {
        auto* one = new QLabel{text};
        one->setProperty("kind", kind);
        one->setWordWrap(true);
        inner->addWidget(one);
    };
    const auto button = [this, inner](const QString& text, const char* name, const char* kind, auto action) {
        auto* one = new QPushButton{text};
        one->setObjectName(QLatin1String(name));
        one->setProperty("kind", kind);
        connect(one, &QPushButton::clicked, this, action);
        inner->addWidget(one);
    };
    label(WindowWords::welcomeTitle(), "title");
    label(WindowWords::welcomeSentence(), "body");
    button(WindowWords::welcomeNew(), "welcomeNew", "primary", [this] { askNewFile(); });
    button(WindowWords::welcomeOpen(), "welcomeOpen", "plain", [this] { askOpenFile(); });
    button(WindowWords::welcomeDemo(), "welcomeDemo", "plain", [this] { openDemo(); });
    label(WindowWords::welcomeCaution(), "soft");
    auto* middle = new QHBoxLayout; // an aligned card would not get the height that its words need
    middle->addStretch(1);
    middle->addWidget(card, kCardOfRow);
    middle->addStretch(1);
    layout->addStretch(1);
    layout->addLayout(middle);
    layout->addStretch(2);
    return new FlowScroll{page};
}

void MainWindow::openPath(const QString& path, OpenAs as)
{
    adopt(Session::open(path.toStdString(), as, m_clock), path);
}

void MainWindow::openDemo()
{
    adopt(Session::openDemo(m_clock), WindowWords::openDemo());
}

void MainWindow::adopt(Result<std::unique_ptr<Session>> session, const QString& path)
{
    if (!session) {
        showProblem(ProblemWords::sentence(session.problem(), QFileInfo{path}.fileName()));
        return;
    }
    openSession(std::move(session).value());
}

void MainWindow::openSession(std::unique_ptr<Session> session)
{
    m_banner->hide();
    dropPages();
    m_session = std::move(session);
    const auto writes = m_session->records().book().writesElsewhere();
    m_writesSeen = writes ? writes.value() : 0;
    m_airframe.reset();
    readAirframes();
    chooseFirstAirframe();
    showAirframe();
    if (m_session->file().isReadOnly())
        showProblem(WindowWords::readOnlyNote(
            QFileInfo{QString::fromStdString(m_session->file().path())}.fileName()));
    showMoment(m_airframe ? Moments::RiggedToday : Moments::SetUp);
    m_lookingThrough->start();
}

// The file is already shown while it is looked through as a whole behind the window.
void MainWindow::followLookingThrough()
{
    if (QApplication::activeModalWidget() || QuestionCover::standsOn(*this))
        return; // a page stands beneath it and waits for the answer
    const StoreFile& file = m_session->file();
    const QString name = QFileInfo{QString::fromStdString(file.path())}.fileName();
    if (const auto whole = file.wholeness(); whole && !*whole) {
        const QString sentence = ProblemWords::sentence(whole->problem(), name);
        closeSession();
        return showProblem(sentence);
    }
    if (m_airframe) // what the first page could be painted without; a page that meets a problem there says so
        static_cast<void>(m_session->records().book().airframe(*m_airframe));
    if (isPageMadeAhead() || !file.isLookedThrough())
        return;
    m_lookingThrough->stop();
    if (const auto problem = file.copyProblem())
        showProblem(problem->kind == ProblemKind::NoRoomForCopy ? ProblemWords::sentence(*problem, name)
                                                                : WindowWords::noCopyToday(name));
}

// What another window or program has written is shown, whatever page is seen.
void MainWindow::catchUp()
{
    auto* now = qobject_cast<Page*>(m_stack->currentWidget());
    const bool isAsked = QApplication::activeModalWidget() || QApplication::activePopupWidget();
    if (!m_session || !now || isAsked || QuestionCover::standsOn(*this))
        return;
    const auto writes = m_session->records().book().writesElsewhere();
    if (!writes || m_writesSeen == writes.value())
        return;
    m_writesSeen = writes.value();
    now->catchUp();
    readAirframes();
    showAirframe();
    readQuestions();
}

// Back to the welcome.
void MainWindow::closeSession()
{
    m_lookingThrough->stop();
    dropPages();
    m_session.reset();
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
        return new TrendsPage{records, m_clock};
    case Moments::BeforeTheAnnual: {
        auto* annual = new AnnualPage{records, m_clock, m_prompts};
        connect(annual, &AnnualPage::trendWanted, this,
                [this](const std::optional<ReviewPeriod>& period, CouplingId coupling) {
                    showMoment(Moments::Trends);
                    qobject_cast<TrendsPage*>(page(Moments::Trends))->lookBack(period, coupling);
                });
        return annual;
    }
    case Moments::KnowThisAirframe:
        return new LaterPage{WindowWords::knowThisAirframe(), WindowWords::knowLater()};
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

QuestionsPage* MainWindow::questionsPage()
{
    if (m_questions)
        return m_questions;
    m_questions = new QuestionsPage{m_session->records()};
    connect(m_questions, &QuestionsPage::leaveAsked, this, &MainWindow::leaveQuestions);
    added(m_questions);
    return m_questions;
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
}

void MainWindow::dropPages()
{
    for (Page* page : allPages()) {
        page->leave();
        m_stack->removeWidget(page);
        delete page;
    }
    m_pages.fill(nullptr);
    m_questions = nullptr;
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

// The one in hand, in the bar, in the list and in the title.
void MainWindow::showAirframe()
{
    QString registration;
    QString type;
    for (const Airframe& airframe : m_airframes) {
        if (m_airframe != airframe.id)
            continue;
        registration = QString::fromStdString(airframe.registration);
        type = QString::fromStdString(airframe.type);
    }
    m_registration->setText(registration.isEmpty() ? WindowWords::noAirframe() : registration);
    m_registration->setAccessibleName(m_registration->text());
    m_registration->setVisible(m_session != nullptr);
    m_type->setText(type);
    for (QPushButton* button : m_moments)
        button->setEnabled(m_session != nullptr);
    fillAirframeMenu();
    if (!m_session)
        return;
    const QString file = m_session->isDemo()
                             ? WindowWords::demoTitle()
                             : QFileInfo{QString::fromStdString(m_session->file().path())}.fileName();
    setWindowTitle(WindowWords::title(registration, file));
}

void MainWindow::fillAirframeMenu()
{
    m_airframeMenu->clear();
    for (const Airframe& airframe : m_airframes) {
        QAction* action = m_airframeMenu->addAction(choiceOf(airframe));
        connect(action, &QAction::triggered, this, [this, id = airframe.id] { chooseAirframe(id); });
    }
}

// Only when somebody looks at the list: a hangar may hold hundreds of airframes.
void MainWindow::markAirframeMenu()
{
    const QList<QAction*> actions = m_airframeMenu->actions();
    for (std::size_t i = 0; i < m_airframes.size(); ++i) {
        const Airframe& airframe = m_airframes[i];
        QString choice = choiceOf(airframe);
        const auto record = m_session->records().openRecord(airframe.id);
        if (record && record.value())
            choice = WindowWords::openRecordMark(choice);
        const auto questions = m_session->records().questions(airframe.id);
        const std::size_t open = questions ? openAmong(questions.value()).size() : 0;
        if (open > 0)
            choice = WindowWords::openQuestionsMark(choice, static_cast<int>(open));
        actions[static_cast<qsizetype>(i)]->setText(choice);
    }
}

void MainWindow::readQuestions()
{
    const auto airframe =
        std::ranges::find_if(m_airframes, [this](const Airframe& one) { return m_airframe == one.id; });
    if (airframe == m_airframes.end()) {
        m_questionBar->hide();
        return;
    }
    const auto open = QuestionsPresenter{m_session->records()}.open(airframe->id);
    if (!open) {
        showProblem(ProblemWords::sentence(open.problem(), {}));
        return;
    }
    const auto* now = qobject_cast<Page*>(m_stack->currentWidget());
    m_questionBar->display(QString::fromStdString(airframe->registration), open.value(),
                           now && now->isBlind());
}

void MainWindow::chooseFirstAirframe()
{
    if (m_airframes.empty())
        return;
    const QString key = lastAirframeKey(QString::fromStdString(m_session->file().path()));
    const auto last = idFromText(QSettings{}.value(key).toString().toStdString());
    const auto found = std::ranges::find_if(
        m_airframes, [&last](const Airframe& airframe) { return last && airframe.id.bytes == *last; });
    m_airframe = found == m_airframes.end() ? m_airframes.front().id : found->id;
}

void MainWindow::chooseAirframe(AirframeId airframe)
{
    m_airframe = airframe;
    if (!m_session->isDemo())
        QSettings{}.setValue(lastAirframeKey(QString::fromStdString(m_session->file().path())),
                             QString::fromStdString(textOf(airframe.bytes)));
    showAirframe();
    refreshPage();
}

void MainWindow::showMoment(Moments moment)
{
    if (!page(moment))
        return;
    m_moment = moment;
    showPage(page(moment));
    m_moments[static_cast<std::size_t>(moment)]->setChecked(true);
}

void MainWindow::showQuestions()
{
    if (!m_session)
        return;
    showPage(questionsPage());
    // It is none of the five, so none of them is the chosen one.
    chooseNeither({m_moments[static_cast<std::size_t>(m_moment)]});
}

void MainWindow::leaveQuestions()
{
    showMoment(m_moment);
}

void MainWindow::showPage(Page* next)
{
    if (auto* now = qobject_cast<Page*>(m_stack->currentWidget()); now && now != next)
        now->leave();
    m_stack->setCurrentWidget(next);
    m_questionBar->setOnPage(next == m_questions);
    refreshPage();
    next->setFocus();
}

void MainWindow::refreshPage()
{
    if (auto* now = qobject_cast<Page*>(m_stack->currentWidget()))
        now->showAirframe(m_airframe);
    readQuestions();
}

void MainWindow::showProblem(const QString& sentence)
{
    m_bannerText->setText(sentence);
    m_banner->show();
}

void MainWindow::askNewFile()
{
    const QString path = m_prompts.askNewFile(this, WindowWords::fileFilter());
    if (!path.isEmpty())
        openPath(path.endsWith(QLatin1String(".rigband")) ? path : path + QLatin1String(".rigband"),
                 OpenAs::New);
}

void MainWindow::askOpenFile()
{
    const QString path = m_prompts.askOpenFile(this, WindowWords::fileFilter());
    if (!path.isEmpty())
        openPath(path, OpenAs::Existing);
}

void MainWindow::setLook(const Look& look)
{
    m_look = look;
    m_darkAction->setChecked(look.theme.isDark());
    QApplication::setPalette(
        paletteFor(look.theme)); // widgets with a style sheet ask the application, not the window
    setStyleSheet(styleSheetFor(look.theme, look.fonts));
    m_questionBar->setLook(look);
    for (Page* page : allPages())
        page->setLook(look);
}

void MainWindow::scaleText(double by)
{
    Look look = m_look;
    look.fonts.scale = std::clamp(look.fonts.scale + by, kSmallestText, kLargestText);
    setLook(look);
    refreshPage();
}

void MainWindow::setDark(bool dark)
{
    setLook({dark ? Theme::dark() : Theme::light(), m_look.fonts});
    refreshPage();
}

void MainWindow::closeEvent(QCloseEvent* event)
{
    for (const Page* page : allPages())
        if (const QString undone = page->leftUndone();
            !undone.isEmpty() &&
            !m_prompts.confirm(this, WindowWords::closeTitle(), undone, WindowWords::closeAllTheSame()))
            return event->ignore();
    dropPages();
    event->accept();
}

} // namespace rig
