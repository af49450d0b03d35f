// rigband-shots OUTDIR [LANGUAGE]: every page as a picture, at the sizes and text sizes that have to hold,
// light, dark and for sunlight, so that anyone can look at them. Needs no screen: run with
// QT_QPA_PLATFORM=offscreen.

#include "app/pages/prompts.h"
#include "app/pages/trends/trends_page.h"
#include "app/shots/crowded_file.h"
#include "app/shots/palette.h"
#include "app/shots/troubled_file.h"
#include "app/widgets/work_behind.h"
#include "app/window/main_window.h"
#include "app/window/start_up.h"
#include "app/wording/language.h"
#include "app/wording/wide_words.h"

#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QElapsedTimer>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSettings>
#include <QTemporaryDir>
#include <QTextStream>
#include <QTimer>

#include <algorithm>
#include <array>
#include <optional>

namespace {

// How the program ends.
constexpr int kDone = 0;
constexpr int kCouldNot = 1;
constexpr int kBadUse = 2;

struct Setting
{
    QString name;
    QSize size;
    double scale;
    rig::Scheme scheme = rig::Scheme::Light;
};

constexpr QSize kUsualWindow{1280, 800};

const std::array<Setting, 5> kSettings{{
    {"1280x800", {1280, 800}, 1.0},
    {"1920x1080", {1920, 1080}, 1.0},
    {"1280x800-150", {1280, 800}, 1.5},
    {"1280x800-dark", {1280, 800}, 1.0, rig::Scheme::Dark},
    {"1280x800-sun", {1280, 800}, 1.0, rig::Scheme::Sunlight},
}};

// The demonstration's last season is over by then.
class ShotClock : public rig::Clock
{
public:
    rig::Moment now() const override { return {1793439600, 3600}; } // 2026-10-31, 09:20 local
};

void settle()
{
    constexpr int kTurns = 5;
    for (int i = 0; i < kTurns; ++i)
        QApplication::processEvents();
    for (const QWidget* window : QApplication::topLevelWidgets())
        rig::WorkBehind::finishAll(*window);
    for (int i = 0; i < kTurns; ++i)
        QApplication::processEvents();
}

// What is typed right behind a reading that is not inside its band counts for nothing.
void waitUntilItCounts(const QWidget& target)
{
    const auto* lost = target.findChild<QTimer*>(QStringLiteral("typedAhead"));
    while (lost && lost->isActive())
        QApplication::processEvents(QEventLoop::WaitForMoreEvents);
}

void type(QWidget& target, const QString& keys)
{
    waitUntilItCounts(target);
    for (const QChar key : keys) {
        const bool enter = key == '\n';
        QKeyEvent press{QEvent::KeyPress, enter ? int{Qt::Key_Return} : key.toUpper().unicode(),
                        Qt::NoModifier, enter ? QString{"\r"} : QString{key}};
        QApplication::sendEvent(&target, &press);
        settle();
    }
}

void press(QWidget& target, Qt::Key key)
{
    QKeyEvent event{QEvent::KeyPress, key, Qt::NoModifier};
    QApplication::sendEvent(&target, &event);
    settle();
}

class Album
{
public:
    Album(QDir folder, const Setting& setting) : m_folder{std::move(folder)}, m_setting{setting} {}

    bool take(QWidget& window, const QString& name)
    {
        settle();
        const QString path = m_folder.filePath(QStringLiteral("%1-%2.png").arg(name, m_setting.name));
        const bool saved = rig::inFewColours(window.grab().toImage()).save(path);
        QTextStream{stdout} << path << (saved ? "\n" : ": could not be written\n");
        return saved;
    }

private:
    QDir m_folder;
    Setting m_setting;
};

void prepare(rig::MainWindow& window, const Setting& setting)
{
    rig::Look look;
    look.theme = rig::Theme::of(setting.scheme);
    look.fonts.scale = setting.scale;
    window.setLook(look);
    window.resize(setting.size);
    window.show();
    settle();
}

bool shootEmptyFile(const Setting& setting, Album& album, const rig::Clock& clock, rig::Prompts& prompts)
{
    const QTemporaryDir folder;
    rig::MainWindow window{clock, prompts};
    prepare(window, setting);
    bool all = album.take(window, "welcome");
    window.openPath(folder.filePath("empty.rigband"), rig::OpenAs::New);
    all = album.take(window, "first-start") && all;
    return all;
}

void choose(QWidget& page, const char* box, int index)
{
    auto* choice = page.findChild<QComboBox*>(QLatin1String(box));
    choice->setCurrentIndex(index);
    emit choice->activated(index);
    settle();
}

bool shootLearning(rig::MainWindow& window, Album& album)
{
    window.showMoment(rig::Moments::KnowThisAirframe);
    auto* page = window.page(rig::Moments::KnowThisAirframe);
    const auto open = [page](int part) {
        page->findChild<QAbstractButton*>(QStringLiteral("learnPart%1").arg(part))->click();
        settle();
    };
    choose(*page, "whoLearns", 4);
    open(1);
    bool all = album.take(window, "know-practice");
    type(*page, "o");
    all = album.take(window, "know-question") && all;
    type(*page, "1s");
    all = album.take(window, "know-answer") && all;
    open(2);
    type(*page, "b");
    all = album.take(window, "know-calls") && all;
    open(3);
    all = album.take(window, "know-sign-off") && all;
    open(4);
    all = album.take(window, "know-measuring") && all;
    open(5);
    return album.take(window, "know-study") && all;
}

bool shootControlCheck(rig::MainWindow& window, QWidget& page, Album& album)
{
    page.findChild<QAbstractButton*>(QStringLiteral("recordRow10"))->click();
    bool all = album.take(window, "control-people");
    choose(page, "atSurface", 1);
    choose(page, "inCockpit", 2);
    type(page, "yy");
    press(page, Qt::Key_Up);
    press(page, Qt::Key_Down);
    auto* up = page.findChild<QLineEdit*>(QStringLiteral("measuredUp"));
    up->setText("57.5");
    up->setFocus();
    press(page, Qt::Key_Return);
    auto* down = page.findChild<QLineEdit*>(QStringLiteral("measuredDown"));
    down->setText("25.5");
    down->setFocus();
    press(page, Qt::Key_Return);
    all = album.take(window, "control-aileron") && all;
    type(page, "yyyy\nyy");
    press(page, Qt::Key_Up); // of the right aileron, with the stick to the left
    return album.take(window, "control-reversed") && all;
}

// The season in which the left flap wears, all couplings together, and back to today.
bool shootLookingBack(rig::MainWindow& window, Album& album)
{
    auto* trends = qobject_cast<rig::TrendsPage*>(window.page(rig::Moments::Trends));
    const std::chrono::year_month_day from{std::chrono::year{2025}, std::chrono::month{2},
                                           std::chrono::day{20}};
    const std::chrono::year_month_day annual{std::chrono::year{2026}, std::chrono::month{2},
                                             std::chrono::day{20}};
    trends->lookBack(rig::PeriodOffer{{rig::Day{from}, rig::Day{annual} - std::chrono::days{1},
                                       rig::Day{annual}, true, false}},
                     {});
    bool all = album.take(window, "trends-looking-back");
    type(*trends, "a");
    all = album.take(window, "trends-aircraft") && all;
    type(*trends, "a");
    trends->lookBack({}, {});
    return all;
}

// The page's own length, and the period in which the left flap drifts.
bool shootAnnual(rig::MainWindow& window, Album& album)
{
    window.showMoment(rig::Moments::BeforeTheAnnual);
    QWidget& page = *window.page(rig::Moments::BeforeTheAnnual);
    auto* bar = page.findChild<QScrollArea*>()->verticalScrollBar();
    bar->setValue(bar->pageStep());
    bool all = album.take(window, "annual-2");
    bar->setValue(0);
    choose(page, "annualPeriod", 1);
    all = album.take(window, "annual-2025") && all;
    page.findChild<QPushButton*>("noteFinding")->click();
    page.findChild<QPushButton*>("keepStatement")->click();
    all = album.take(window, "annual-finding") && all;
    page.findChild<QPushButton*>("putStatementAside")->click();
    bar->setValue(0);
    bar->setValue(bar->pageStep());
    all = album.take(window, "annual-2025-2") && all;
    bar->setValue(bar->maximum());
    all = album.take(window, "annual-2025-3") && all;
    page.findChild<QPushButton*>("annualReport")->click();
    return album.take(window, "annual-report") && all;
}

bool shootDemo(const Setting& setting, Album& album, const rig::Clock& clock, rig::Prompts& prompts)
{
    rig::MainWindow window{clock, prompts};
    prepare(window, setting);
    window.openDemo();
    bool all = album.take(window, "rigged-start");
    const std::array<std::pair<rig::Moments, const char*>, 4> pages{{
        {rig::Moments::Trends, "trends"},
        {rig::Moments::BeforeTheAnnual, "annual"},
        {rig::Moments::KnowThisAirframe, "know"},
        {rig::Moments::SetUp, "set-up"},
    }};
    for (const auto& [moment, name] : pages) {
        window.showMoment(moment);
        all = album.take(window, name) && all;
    }
    all = shootAnnual(window, album) && all;
    all = shootLearning(window, album) && all;
    window.showMoment(rig::Moments::SetUp);
    auto* setUp = window.page(rig::Moments::SetUp);
    setUp->findChild<QAbstractButton*>(QStringLiteral("part2"))->click();
    all = album.take(window, "set-up-surfaces") && all;
    setUp->findChild<QPushButton*>(QStringLiteral("changeSurface"))->click();
    all = album.take(window, "set-up-surface") && all;
    window.showMoment(rig::Moments::Trends);
    if (auto* flap = window.findChild<QAbstractButton*>(QStringLiteral("trendRow2")))
        flap->click();
    all = album.take(window, "trends-flap") && all;
    all = shootLookingBack(window, album) && all;
    window.showMoment(rig::Moments::RiggedToday);
    auto* page = window.page(rig::Moments::RiggedToday);
    page->findChild<QComboBox*>("leader")->setCurrentIndex(1);
    page->findChild<QAbstractButton*>(QStringLiteral("riggedAnew"))->click();
    page->findChild<QPushButton*>("begin")->click();
    type(*page, "13\n2");
    all = album.take(window, "rigged-connected") && all;
    type(*page, "\n12\n");
    all = album.take(window, "rigged-look") && all;
    auto* gauge = page->findChild<QComboBox*>("measuredWith");
    gauge->setCurrentIndex(1);
    emit gauge->activated(1);
    type(*page, "yyy");
    all = album.take(window, "rigged-measure") && all;
    type(*page, "0.45\n");
    all = album.take(window, "rigged-inside") && all;
    type(*page, "yy\n");
    type(*page, "yyy0.95\n");
    all = album.take(window, "rigged-outside") && all;
    type(*page, "n");
    window.showQuestions();
    all = album.take(window, "questions") && all;
    window.findChild<QPushButton*>("openCloseForm")->click();
    all = album.take(window, "questions-closing") && all;
    window.showManual();
    all = album.take(window, "manual") && all;
    window.showMoment(rig::Moments::RiggedToday);
    type(*page, "s");
    all = album.take(window, "rigged-second") && all;
    type(*page, "s");
    all = shootControlCheck(window, *page, album) && all;
    page->findChild<QAbstractButton*>(QStringLiteral("recordRow11"))->click();
    all = album.take(window, "rigged-close") && all;
    return all;
}

// The bar is there once the file is looked through, behind the window.
bool waitFor(const QWidget& bar)
{
    QElapsedTimer since;
    since.start();
    while (!bar.isVisible() && since.elapsed() < 60'000)
        QApplication::processEvents(QEventLoop::WaitForMoreEvents, 100);
    return bar.isVisible();
}

// What stands beside the moments: what was changed by another program, what two files say of one thing,
// copies.
bool shootBeside(const Setting& setting, Album& album, const rig::Clock& clock, rig::Prompts& prompts)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath("hangar.rigband");
    const auto language = rig::demo::languageOf(rig::spokenLanguage().toStdString());
    if (const rig::Outcome written = rig::writeTroubledFile(path.toStdString(), clock, language); !written) {
        QTextStream{stderr} << QString::fromStdString(written.problem().detail) << '\n';
        return false;
    }
    rig::MainWindow window{clock, prompts};
    prepare(window, setting);
    window.openPath(path, rig::OpenAs::Existing);
    if (!waitFor(*window.findChild<QWidget*>("faultsBar")))
        return false;
    window.showFaults();
    bool all = album.take(window, "faults");
    window.showConflicts();
    all = album.take(window, "conflicts") && all;
    window.findChild<QAbstractButton*>(QStringLiteral("conflict1"))->click();
    all = album.take(window, "conflicts-2") && all;
    window.showCopies();
    return album.take(window, "copies") && all;
}

// Everything as long and as much as people have it, where room is scarcest.
bool shootCrowded(const Setting& setting, Album& album, const rig::Clock& clock, rig::Prompts& prompts)
{
    if (setting.size != kUsualWindow || setting.scheme != rig::Scheme::Light)
        return true;
    const QTemporaryDir folder;
    const QString path = folder.filePath("a hangar with a name as long as this one.rigband");
    if (const rig::Outcome written = rig::writeCrowdedFile(path.toStdString(), clock); !written) {
        QTextStream{stderr} << QString::fromStdString(written.problem().detail) << '\n';
        return false;
    }
    rig::MainWindow window{clock, prompts};
    prepare(window, setting);
    window.openPath(path, rig::OpenAs::Existing);
    bool all = album.take(window, "crowded-start");
    auto* page = window.page(rig::Moments::RiggedToday);
    page->findChild<QComboBox*>("leader")->setCurrentIndex(1);
    page->findChild<QAbstractButton*>(QStringLiteral("riggedAnew"))->click();
    page->findChild<QPushButton*>("begin")->click();
    all = album.take(window, "crowded-connected") && all;
    type(*page, "\n1\n1\n");
    choose(*page, "measuredWith", 1);
    type(*page, "yyy");
    all = album.take(window, "crowded-measure") && all;
    type(*page, "0.40\n");
    all = album.take(window, "crowded-read") && all;
    const std::array<std::pair<rig::Moments, const char*>, 4> pages{{
        {rig::Moments::Trends, "crowded-trends"},
        {rig::Moments::BeforeTheAnnual, "crowded-annual"},
        {rig::Moments::KnowThisAirframe, "crowded-know"},
        {rig::Moments::SetUp, "crowded-set-up"},
    }};
    for (const auto& [moment, name] : pages) {
        window.showMoment(moment);
        all = album.take(window, name) && all;
    }
    auto* setUp = window.page(rig::Moments::SetUp);
    for (const int part : {1, 3, 4, 5, 6, 7}) {
        setUp->findChild<QAbstractButton*>(QStringLiteral("part%1").arg(part))->click();
        all = album.take(window, QStringLiteral("crowded-set-up-%1").arg(part)) && all;
    }
    return all;
}

constexpr const char* kUsage =
    "usage: rigband-shots OUTDIR [en | de | fr | wide]\n"
    "       rigband-shots --help | --version\n"
    "Draws every page at the sizes and text sizes that have to hold, light, dark and for sunlight, as "
    "pictures\n"
    "into the folder OUTDIR, which is made where it is not there. Needs no screen with "
    "QT_QPA_PLATFORM=offscreen.\n"
    "In English or the language named; wide is English, two fifths longer, to see where words would be cut.\n"
    "Ends with 0 when all were written; with 1 when one could not be; with 2 when the command was not\n"
    "understood.\n";

const QString kWide = QStringLiteral("wide");

bool isLanguage(const QString& code)
{
    return code == kWide || std::ranges::any_of(rig::languages(), [&code](const rig::Language& one) {
               return one.code == code;
           });
}

// How the program ends where nothing is drawn; nothing where one folder was named.
std::optional<int> toldOnly(const QStringList& given)
{
    if (given == QStringList{"--help"} || given == QStringList{"-h"}) {
        QTextStream{stdout} << kUsage;
        return kDone;
    }
    if (given == QStringList{"--version"} || given == QStringList{"-v"}) {
        QTextStream{stdout} << "rigband-shots " RIGBAND_VERSION "\n";
        return kDone;
    }
    for (const QString& one : given)
        if (one.startsWith('-')) {
            QTextStream{stderr} << "There is no option \"" << one << "\".\n" << kUsage;
            return kBadUse;
        }
    const bool isFolder = !given.isEmpty() && !given.constFirst().isEmpty();
    if (isFolder && (given.size() == 1 || (given.size() == 2 && isLanguage(given[1]))))
        return std::nullopt;
    QTextStream{stderr} << "Name one folder for the pictures, and one language at most.\n" << kUsage;
    return kBadUse;
}

} // namespace

int main(int argc, char* argv[])
{
    QStringList given;
    for (int i = 1; i < argc; ++i)
        given << QString::fromLocal8Bit(argv[i]);
    if (const auto status = toldOnly(given))
        return *status;
    qputenv("QT_SCALE_FACTOR", "1");
    qputenv("QT_FONT_DPI", "96");
    rig::setUpSurroundings();
    const QTemporaryDir settings; // what is opened here is none of the user's recent files
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, settings.path());
    QApplication application{argc, argv};
    rig::setUpApplication(application);
    const QString language = given.value(1, QStringLiteral("en"));
    const rig::Speech speech{language};
    rig::WideWords wide;
    if (language == kWide)
        QCoreApplication::installTranslator(&wide);
    const QDir folder{given.constFirst()};
    if (!folder.mkpath(".")) {
        QTextStream{stderr} << "The folder " << folder.path() << " cannot be made.\n";
        return kCouldNot;
    }
    const ShotClock clock;
    rig::WindowPrompts prompts;
    bool all = true;
    for (const Setting& setting : kSettings) {
        Album album{folder, setting};
        all = shootEmptyFile(setting, album, clock, prompts) && all;
        all = shootDemo(setting, album, clock, prompts) && all;
        all = shootCrowded(setting, album, clock, prompts) && all;
        all = shootBeside(setting, album, clock, prompts) && all;
    }
    return all ? kDone : kCouldNot;
}
