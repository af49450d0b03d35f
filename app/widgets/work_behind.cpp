#include "app/widgets/work_behind.h"

#include <algorithm>
#include <thread>

namespace rig {

struct WorkBehind::Job
{
    int number = 0;
    HowFar told;
    std::function<void()> take;
    std::jthread thread;
};

WorkBehind::WorkBehind(QObject* parent) : QObject{parent} {}

WorkBehind::~WorkBehind()
{
    stop();
    m_jobs.clear(); // joins
}

void WorkBehind::run(std::function<void(Progress&)> make, std::function<void()> take)
{
    stop();
    Job* job = m_jobs.emplace_back(std::make_unique<Job>()).get();
    job->number = ++m_begun;
    job->take = std::move(take);
    job->thread = std::jthread{[this, job, number = job->number, make = std::move(make)]() mutable {
        make(job->told);
        make = nullptr; // what it worked on is given back here, which may take long as well
        QMetaObject::invokeMethod(
            this, [this, number] { end(number); }, Qt::QueuedConnection);
    }};
}

void WorkBehind::stop()
{
    for (const auto& job : m_jobs)
        job->told.stop();
}

bool WorkBehind::isGoing() const
{
    return howFar() != nullptr;
}

const HowFar* WorkBehind::howFar() const
{
    return m_jobs.empty() || m_jobs.back()->told.isStopped() ? nullptr : &m_jobs.back()->told;
}

// Of one that was waited for there is nothing any more.
void WorkBehind::end(int number)
{
    const auto found = std::ranges::find(m_jobs, number, [](const auto& job) { return job->number; });
    if (found == m_jobs.end())
        return;
    const std::unique_ptr<Job> ended = std::move(*found);
    m_jobs.erase(found);
    ended->thread.join();
    if (!ended->told.isStopped())
        ended->take();
}

void WorkBehind::finish()
{
    emit finishAsked();
    while (isGoing()) {
        m_jobs.back()->thread.join();
        m_jobs.back()->thread = {};
        const std::unique_ptr<Job> ended = std::move(m_jobs.back());
        m_jobs.pop_back();
        ended->take();
    }
}

void WorkBehind::finishAll(const QObject& in)
{
    for (auto* work : in.findChildren<WorkBehind*>())
        work->finish();
}

} // namespace rig
