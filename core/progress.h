#pragma once

#include <cstddef>
#include <stop_token>

namespace rig {

// How far long work has come, and whether it is to go on. The work asks between its rows; any thread may stop
// it. What is stopped leaves nothing and ends with some problem: whoever stopped it knows why.
class Progress
{
public:
    Progress() = default;
    virtual ~Progress() = default;
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;

    // From the working thread. `of` is 0 where nobody knows how much there is.
    bool goOn(std::size_t done, std::size_t of)
    {
        told(done, of);
        return !isStopped();
    }

    void stop() { m_stop.request_stop(); }
    bool isStopped() const { return m_stop.stop_requested(); }
    std::stop_token token() const { return m_stop.get_token(); }

private:
    virtual void told(std::size_t, std::size_t) {} // in the working thread

    std::stop_source m_stop;
};

// Of work that is watched by nobody: never stops.
inline std::stop_token stopOf(const Progress* progress)
{
    return progress ? progress->token() : std::stop_token{};
}

inline bool isStopped(const Progress* progress)
{
    return progress && progress->isStopped();
}

inline bool goesOn(Progress* progress, std::size_t done, std::size_t of)
{
    return !progress || progress->goOn(done, of);
}

} // namespace rig
