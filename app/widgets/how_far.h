#pragma once

#include "core/progress.h"

#include <atomic>

namespace rig {

// How far the working thread says it is, for the window's to look at.
class HowFar : public Progress
{
public:
    std::size_t done() const { return m_done; }
    std::size_t of() const { return m_of; }

private:
    void told(std::size_t done, std::size_t of) override
    {
        m_of = of;
        m_done = done;
    }

    std::atomic<std::size_t> m_done{0};
    std::atomic<std::size_t> m_of{0};
};

} // namespace rig
