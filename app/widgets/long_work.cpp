#include "app/widgets/long_work.h"

#include "app/widgets/how_far.h"
#include "app/widgets/parts.h"
#include "app/wording/long_work_words.h"

#include <QEventLoop>
#include <QProgressBar>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <thread>

namespace rig {

namespace {

constexpr int kMoment = 300;   // milliseconds, after which something is said
constexpr int kTellEvery = 50; // milliseconds

} // namespace

LongWork::LongWork(QWidget& window, const QString& said, HowFar& told) : QDialog{&window}, m_told{told}
{
    setObjectName("longWork");
    setModal(true);
    setWindowTitle(LongWorkWords::name());
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(24, 20, 24, 20);
    layout->setSpacing(12);
    layout->addWidget(labelOf(said, "section", "longWorkSaid"));
    m_bar = new QProgressBar;
    m_bar->setTextVisible(false);
    m_bar->setAccessibleName(said);
    layout->addWidget(m_bar);
    m_howFar = labelOf({}, "body", "longWorkHowFar");
    layout->addWidget(m_howFar);
    layout->addWidget(labelOf(LongWorkWords::leavesNothing(), "soft"));
    m_stop = buttonOf(LongWorkWords::stop(), "stopLongWork");
    layout->addWidget(m_stop, 0, Qt::AlignRight);
    connect(m_stop, &QPushButton::clicked, this, &LongWork::reject);
    auto* timer = new QTimer{this};
    timer->setInterval(kTellEvery);
    connect(timer, &QTimer::timeout, this, &LongWork::showHowFar);
    timer->start();
    showHowFar();
}

void LongWork::showHowFar()
{
    constexpr int kWhole = 1000;
    const std::size_t of = m_told.of();
    const std::size_t done = m_told.done();
    m_bar->setRange(0, of > 0 ? kWhole : 0);
    if (of > 0)
        m_bar->setValue(static_cast<int>(std::min(done, of) * kWhole / of));
    m_howFar->setText(m_told.isStopped() ? LongWorkWords::stopping() : LongWorkWords::soFar(done, of));
}

void LongWork::reject()
{
    m_told.stop();
    m_stop->setEnabled(false);
    showHowFar();
}

bool LongWork::standsOn(const QWidget& window)
{
    return window.findChild<const LongWork*>(QString{}, Qt::FindDirectChildrenOnly);
}

bool LongWork::run(QWidget& window, const QString& said, const std::function<void(Progress&)>& work)
{
    HowFar told;
    LongWork shown{window, said, told};
    QEventLoop loop;
    bool isOver = false;
    const auto end = [&loop, &isOver] {
        isOver = true;
        loop.quit();
    };
    std::jthread worker{[&] {
        work(told);
        QMetaObject::invokeMethod(&loop, end, Qt::QueuedConnection);
    }};
    QTimer::singleShot(kMoment, &loop, &QEventLoop::quit);
    loop.exec(QEventLoop::ExcludeUserInputEvents);
    if (!isOver) {
        shown.show();
        loop.exec();
        shown.hide();
        window.activateWindow(); // the keys are its own again
    }
    worker.join();
    return !told.isStopped();
}

} // namespace rig
