#include "app/bench/big_file.h"
#include "app/bench/tables.h"
#include "app/pages/prompts.h"
#include "app/widgets/pages_view.h"
#include "app/window/main_window.h"
#include "app/window/start_up.h"
#include "app/wording/language.h"
#include "core/demo/demo.h"
#include "core/store/records.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QKeyEvent>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <filesystem>
#include <optional>
#include <vector>

namespace rig::bench {

namespace {

constexpr double kPatienceMs = 20'000;
constexpr double kLookedAtMs = 250; // a page, before the next is asked for

// What a user waits, and how long this thread worked of it: on a busy machine only the latter tells
// something.
struct Wait
{
    double waited = 0; // ms
    double worked = 0; // ms
};

class Stopwatch
{
public:
    Wait read() const
    {
        const std::chrono::duration<double, std::milli> waited = std::chrono::steady_clock::now() - m_start;
        return {waited.count(), workedMs() - m_worked};
    }

private:
    static double workedMs()
    {
        timespec now{};
        ::clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
        return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
    }

    std::chrono::steady_clock::time_point m_start = std::chrono::steady_clock::now();
    double m_worked = workedMs();
};

// Knows when something was painted.
class TimedApplication : public QApplication
{
public:
    using QApplication::QApplication;

    bool notify(QObject* receiver, QEvent* event) override
    {
        const QEvent::Type type = event->type(); // the event may be gone afterwards
        const bool isTaken = QApplication::notify(receiver, event);
        if (type == QEvent::UpdateRequest || type == QEvent::Expose) {
            ++m_paints;
            if (m_watch && !m_painted)
                m_painted = m_watch->read();
        }
        return isTaken;
    }
    int paints() const { return m_paints; }
    // The next painting is timed by a watch that outlives it.
    void timePainting(const Stopwatch& watch)
    {
        m_watch = &watch;
        m_painted.reset();
    }
    const std::optional<Wait>& painted() const { return m_painted; }

private:
    int m_paints = 0;
    const Stopwatch* m_watch = nullptr;
    std::optional<Wait> m_painted;
};

class DayClock : public Clock
{
public:
    Moment now() const override { return dayAfter(); }
};

class Bench
{
public:
    Bench(TimedApplication& application, bool small) : m_application{application}, m_isSmall{small} {}

    bool run();

private:
    struct Goal
    {
        const char* what;
        double ms;
    };

    std::string file(const char* name) const { return m_folder.filePath(QLatin1String(name)).toStdString(); }
    bool isMade(const Outcome& made) const;
    void row(const char* what, const QString& file, const Wait& times, double goal);
    Wait opened(const std::string& path);
    static Wait median(std::vector<Wait> times);

    // Turns the event loop until `isReached`.
    template <typename Reached> Wait until(const Stopwatch& watch, Reached isReached);

    void timeOpening(const char* name, const QString& what, double goal);
    void timeKeys(const char* name, const QString& what);
    // In ms. Whichever page comes first reads the facts of the airframe, which stay in hand.
    struct PageGoals
    {
        double first = 150;
        double annual = 150;
        double other = 100;
    };

    void timeMoments(const char* name, const QString& what, const PageGoals& goals);
    void timeReport(MainWindow& window, const QString& what);

    TimedApplication& m_application;
    bool m_isSmall;
    QTemporaryDir m_folder;
    DayClock m_clock;
    WindowPrompts m_prompts;
    bool m_isMet = true;
};

bool Bench::isMade(const Outcome& made) const
{
    if (!made)
        std::fprintf(stderr, "cannot make a file: %s\n", made.problem().detail.c_str());
    return static_cast<bool>(made);
}

void Bench::row(const char* what, const QString& file, const Wait& times, double goal)
{
    const bool isMet = times.waited <= goal;
    m_isMet &= isMet;
    std::printf("| %s | %s | %.1f | %.1f | %.0f | %s |\n", what, qPrintable(file), times.waited, times.worked,
                goal, isMet ? "met" : "missed");
    std::fflush(stdout);
}

Wait Bench::median(std::vector<Wait> times)
{
    std::ranges::sort(times, {}, &Wait::waited);
    return times[times.size() / 2];
}

template <typename Reached> Wait Bench::until(const Stopwatch& watch, Reached isReached)
{
    while (!isReached() && watch.read().waited < kPatienceMs)
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 1);
    return watch.read();
}

Wait Bench::opened(const std::string& path)
{
    // The day's first opening, which keeps a copy.
    std::error_code ignored;
    const std::filesystem::path file{path};
    std::filesystem::remove_all(file.parent_path() / (file.stem().string() + "-copies"), ignored);
    const Stopwatch watch;
    MainWindow window{m_clock, m_prompts};
    window.resize(1280, 800);
    window.openPath(QString::fromStdString(path), OpenAs::Existing);
    window.show();
    const int before = m_application.paints();
    return until(watch, [&] { return m_application.paints() > before; });
}

void Bench::timeOpening(const char* name, const QString& what, double goal)
{
    std::vector<Wait> times;
    for (int i = 0; i < 3; ++i)
        times.push_back(opened(file(name)));
    row("open to first paint", what, median(times), goal);
}

QWidget* underTheKeys(MainWindow& window)
{
    QWidget* focus = window.focusWidget();
    return focus ? focus : window.page(Moments::RiggedToday);
}

void press(MainWindow& window, int key, const QString& text = {})
{
    for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease}) {
        QKeyEvent event{type, key, Qt::NoModifier, text};
        QCoreApplication::sendEvent(underTheKeys(window), &event);
    }
}

void type(MainWindow& window, const QString& text)
{
    for (const QChar c : text) {
        press(window, c.toUpper().unicode(), QString{c});
        QCoreApplication::processEvents();
    }
}

void beginRecord(MainWindow& window)
{
    window.findChild<QComboBox*>("leader")->setCurrentIndex(1);
    if (auto* anew = window.findChild<QAbstractButton*>("riggedAnew"))
        anew->setChecked(true);
    window.findChild<QAbstractButton*>("begin")->click();
    QCoreApplication::processEvents();
    if (auto* season = window.findChild<QAbstractButton*>("seasonNext"); season && season->isVisible())
        season->click();
    QCoreApplication::processEvents();
    auto* connected = window.findChild<QAbstractButton*>("connectedNext");
    while (connected && connected->isVisible()) {
        connected->click();
        QCoreApplication::processEvents();
    }
}

void Bench::timeKeys(const char* name, const QString& what)
{
    auto opened = Session::open(file(name), OpenAs::Existing, m_clock);
    if (!opened) {
        std::fprintf(stderr, "cannot open: %s\n", opened.problem().detail.c_str());
        m_isMet = false;
        return;
    }
    Records& records = opened.value()->records();
    MainWindow window{m_clock, m_prompts};
    window.resize(1280, 800);
    window.openSession(std::move(opened).value());
    window.show();
    QCoreApplication::processEvents();
    beginRecord(window);
    const auto airframes = records.airframes();
    const auto open = records.openRecord(airframes.value().front().id);
    const auto readings = [&] { return records.content(*open.value()).value().readings.size(); };
    const auto answers = [&] { return records.content(*open.value()).value().checks.size(); };

    std::vector<Wait> answered;
    std::vector<Wait> painted;
    std::vector<Wait> saved;
    for (int i = 0; i < kCouplingsEach; ++i) {
        for (int look = 0; look < 3; ++look) {
            const std::size_t before = answers();
            const Stopwatch watch;
            press(window, Qt::Key_Y, QStringLiteral("y"));
            const int paints = m_application.paints();
            answered.push_back(
                until(watch, [&] { return answers() > before && m_application.paints() > paints; }));
        }
        type(window, QString::number(0.6 + 0.05 * i, 'f', 2));
        const std::size_t before = readings();
        const Stopwatch watch;
        m_application.timePainting(watch);
        press(window, Qt::Key_Return);
        until(watch, [&] { return m_application.painted().has_value(); });
        painted.push_back(m_application.painted().value_or(watch.read()));
        saved.push_back(until(watch, [&] { return readings() > before; }));
        QCoreApplication::processEvents();
        type(window, QStringLiteral("yy"));
        press(window, Qt::Key_Return);
        QCoreApplication::processEvents();
    }
    row("an answer, press to saved and painted", what, median(answered), 40);
    row("a reading, press to verdict painted", what, median(painted), 16);
    row("a reading, press to saved", what, median(saved), 40);
}

// From the press to the first paint, in which the window takes nothing.
void Bench::timeMoments(const char* name, const QString& what, const PageGoals& goals)
{
    MainWindow window{m_clock, m_prompts};
    window.resize(1280, 800);
    window.openPath(QString::fromStdString(file(name)), OpenAs::Existing);
    window.show();
    until(Stopwatch{}, [watch = Stopwatch{}] { return watch.read().waited > kLookedAtMs; });
    const auto time = [&](const char* title, double goal, const auto& show) {
        window.showMoment(Moments::RiggedToday);
        QCoreApplication::processEvents();
        const Stopwatch watch;
        const int before = m_application.paints();
        show();
        const Wait wait = until(watch, [&] { return m_application.paints() > before; });
        QCoreApplication::processEvents();
        row(title, what, wait, goal);
    };
    time("Trends", goals.first, [&window] { window.showMoment(Moments::Trends); });
    time("Before the annual", goals.annual, [&window] { window.showMoment(Moments::BeforeTheAnnual); });
    time("Know this airframe", goals.other, [&window] { window.showMoment(Moments::KnowThisAirframe); });
    time("Questions", goals.other, [&window] { window.showQuestions(); });
    timeReport(window, what);
}

// The longest in which the window takes nothing, from the press until the report is laid out.
void Bench::timeReport(MainWindow& window, const QString& what)
{
    constexpr double kPatienceForPages = 120'000; // ms
    window.showMoment(Moments::BeforeTheAnnual);
    QCoreApplication::processEvents();
    const Stopwatch all;
    Stopwatch turn;
    Wait longest;
    const auto endTurn = [&] {
        const Wait one = turn.read();
        if (one.waited > longest.waited)
            longest = one;
    };
    window.findChild<QAbstractButton*>("annualReport")->click();
    endTurn();
    const auto* pages = window.findChild<PagesView*>("pagesView");
    while (pages->pageCount() == 0 && all.read().waited < kPatienceForPages) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 1);
        turn = {};
        QCoreApplication::processEvents();
        endTurn();
    }
    row("the engineer's report, longest without a turn", what, longest, 100);
}

bool Bench::run()
{
    std::printf("| What | File | Waited, ms | Worked, ms | Goal | |\n|---|---|---|---|---|---|\n");
    const int big = m_isSmall ? 10'000 : 100'000;
    {
        auto demo = StoreFile::open(file("demo.rigband"), OpenAs::New, m_clock);
        if (!demo || !isMade(buildDemo(*demo.value(), demo::Language::English)))
            return false;
    }
    timeOpening("demo.rigband", QStringLiteral("demonstration"), 250);
    for (const int readings : {1'500, 10'000, big}) {
        const std::string name = std::to_string(readings) + ".rigband";
        if (!std::filesystem::exists(file(name.c_str())) &&
            !isMade(makeBigFile(file(name.c_str()), {1, readings})))
            return false;
    }
    const auto told = [](int readings) { return QStringLiteral("%L1 readings").arg(readings); };
    const std::string bigName = std::to_string(big) + ".rigband";
    timeOpening(bigName.c_str(), told(big), 400);
    timeMoments("10000.rigband", told(10'000), {});
    timeMoments(bigName.c_str(), told(big), {700, 200, 100});
    timeKeys("1500.rigband", told(1'500));
    timeKeys(bigName.c_str(), told(big));
    const int most = m_isSmall ? 20'000 : 2'000'000;
    const int airframes = m_isSmall ? 5 : 500;
    if (!isMade(makeBigFile(file("fleet.rigband"), {airframes, most})))
        return false;
    timeOpening("fleet.rigband", QStringLiteral("%L1 readings of %2 airframes").arg(most).arg(airframes),
                600);
    return m_isMet;
}

} // namespace

bool printPageTimes(int argc, char** argv, bool small)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QStandardPaths::setTestModeEnabled(true); // leaves the user's settings alone
    setUpSurroundings();
    TimedApplication application{argc, argv};
    setUpApplication(application);
    const Speech speech{QStringLiteral("en")};
    return Bench{application, small}.run();
}

} // namespace rig::bench
