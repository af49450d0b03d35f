#pragma once

#include <cstdint>
#include <random>
#include <utility>
#include <vector>

namespace rig::numbers {

// The same throws on every machine: the library's own distributions are not fixed by the standard, its engine
// is.
class Dice
{
public:
    explicit Dice(std::uint64_t seed) : m_engine{seed} {}

    template <typename Thing> void shuffle(std::vector<Thing>& things)
    {
        for (std::size_t i = things.size(); i > 1; --i)
            std::swap(things[i - 1], things[static_cast<std::size_t>(below(static_cast<int>(i)))]);
    }

    double uniform();     // 0 to below 1
    int below(int sides); // 0 to sides - 1
    // Twelve uniforms less six: mean 0, standard deviation 1, nothing beyond 6. Only sums, so the same
    // everywhere; its tails are a little light, which a demonstration can bear.
    double normal();
    double normalWithin(double most);
    // `count` normal throws, shifted and stretched so that their mean is 0 and their standard deviation 1.
    std::vector<double> evenNormals(int count);

private:
    std::mt19937_64 m_engine;
};

} // namespace rig::numbers
