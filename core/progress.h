#pragma once

#include <algorithm>
#include <cstddef>
#include <numeric>
#include <stop_token>
#include <utility>
#include <vector>

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

protected:
    // Stopped with that one, and that one with it; by itself where there is none.
    explicit Progress(const Progress* whole)
    {
        if (whole)
            m_stop = whole->m_stop;
    }

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

// Long work of several parts, one after the other, told as one that never runs backwards. Each part counts as
// it likes, also from the beginning again.
class WorkInParts : public Progress
{
public:
    // How large each part is against the others. `whole` outlives it; null: nobody watches.
    WorkInParts(Progress* whole, std::vector<std::size_t> shares)
        : Progress{whole}, m_whole{whole}, m_shares{std::move(shares)}, m_all{std::accumulate(
                                                                            m_shares.begin(), m_shares.end(),
                                                                            std::size_t{0})}
    {
    }

    // The part that was gone on with is done. In the end all is told to be done.
    bool endPart()
    {
        if (m_part < m_shares.size())
            m_before += m_shares[m_part++];
        return goOn(0, 1);
    }

private:
    void told(std::size_t done, std::size_t of) override
    {
        constexpr std::size_t kFine = 1000;
        const std::size_t share = m_part < m_shares.size() ? m_shares[m_part] : 0;
        const std::size_t here = of > 0 ? share * kFine * std::min(done, of) / of : 0;
        m_reached = std::max(m_reached, m_before * kFine + here);
        if (m_whole)
            m_whole->goOn(m_reached, m_all * kFine);
    }

    Progress* m_whole;
    std::vector<std::size_t> m_shares;
    std::size_t m_all;
    std::size_t m_part = 0;    // gone on with
    std::size_t m_before = 0;  // shares of the parts that are done
    std::size_t m_reached = 0; // in thousandths of a share
};

} // namespace rig
