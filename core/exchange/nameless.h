#pragma once

#include <map>
#include <string>
#include <string_view>

namespace rig {

// Takes names out of tables that tables_out.h wrote, for a reader who is to learn from what happened and not
// from whom: persons become letters, airframes and gauges numbers, in the order in which they first come up
// in all tables given to one such object. A column stays only where it is known to hold neither a name nor
// words of anybody's own, so that a new one stays out until somebody has thought about it.
class Nameless
{
public:
    std::string table(std::string_view written);

private:
    // From 1 on; whoever comes up again has the same.
    class Numbers
    {
    public:
        std::size_t of(const std::string& name)
        {
            return m_numbers.emplace(name, m_numbers.size() + 1).first->second;
        }

    private:
        std::map<std::string, std::size_t> m_numbers;
    };

    enum class Holds { Nothing, Kept, Person, Gauge, Airframe, Circuit, FittingReason };

    static Holds whatHolds(const std::string& column, bool ofGauges);
    std::string field(const std::string& written, Holds what);

    Numbers m_persons;
    Numbers m_gauges;
    Numbers m_airframes;
};

} // namespace rig
