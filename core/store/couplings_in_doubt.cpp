#include "core/store/couplings_in_doubt.h"

#include "core/store/values.h"

#include <algorithm>
#include <array>
#include <vector>

namespace rig {

namespace {

// From a fact of a table to what the next step asks by: another table, or the couplings themselves.
struct Way
{
    std::string_view table;
    const char* sql;     // by the fact's id
    std::string_view to; // a table; empty: couplings
};

// What a band, a verdict or a question is made of, and where it leads.
constexpr std::array kWays{
    Way{"reading", "SELECT coupling FROM reading WHERE id = ?", {}},
    Way{"reading", "SELECT f.coupling FROM reading r JOIN fitting f ON f.id = r.fitting WHERE r.id = ?", {}},
    Way{"reading", "SELECT c.coupling FROM reading r JOIN reading c ON c.id = r.corrects WHERE r.id = ?", {}},
    Way{"exclusion", "SELECT reading FROM exclusion WHERE id = ?", "reading"},
    Way{"fitting", "SELECT coupling FROM fitting WHERE id = ?", {}},
    Way{"fitting", "SELECT DISTINCT coupling FROM reading WHERE fitting = ?", {}},
    Way{"baseline", "SELECT fitting FROM baseline WHERE id = ?", "fitting"},
    Way{"baseline",
        "SELECT DISTINCT r.coupling FROM baseline_reading b JOIN reading r ON r.id = b.reading WHERE "
        "b.baseline = ?",
        {}},
    Way{"coupling", "SELECT subject FROM coupling WHERE id = ?", {}},
    Way{"gauge", "SELECT subject FROM gauge WHERE id = ?", "read with"},
    Way{"gauge_check", "SELECT gauge FROM gauge_check WHERE id = ?", "read with"},
    Way{"read with", "SELECT DISTINCT coupling FROM reading WHERE gauge = ?", {}},
    Way{"question", "SELECT coupling FROM question WHERE id = ? AND coupling IS NOT NULL", {}},
    Way{"question", "SELECT reading FROM question WHERE id = ? AND reading IS NOT NULL", "reading"},
    Way{"question", "SELECT gauge FROM question WHERE id = ? AND gauge IS NOT NULL", "read with"},
    Way{"question",
        "SELECT airframe FROM question WHERE id = ? AND coupling IS NULL AND reading IS NULL AND gauge IS "
        "NULL",
        "of airframe"},
    Way{"resolution", "SELECT question FROM resolution WHERE id = ?", "question"},
    Way{"answer", "SELECT coupling FROM answer WHERE id = ?", {}},
    Way{"surface", "SELECT airframe FROM surface WHERE id = ?", "of airframe"},
    Way{"surface_answer",
        "SELECT s.airframe FROM surface_answer a JOIN surface s ON s.id = a.surface WHERE a.id = ?",
        "of airframe"},
    Way{"rigging_record", "SELECT airframe FROM rigging_record WHERE id = ?", "of airframe"},
    Way{"closing", "SELECT r.airframe FROM closing c JOIN rigging_record r ON r.id = c.record WHERE c.id = ?",
        "of airframe"},
    Way{"of airframe", "SELECT DISTINCT subject FROM coupling WHERE airframe = ?", {}},
};

} // namespace

Outcome CouplingsInDoubt::take(const std::string& table, const IdBytes& fact)
{
    if (m_found.all)
        return Done{};
    for (const Way& way : kWays) {
        if (way.table != table || !m_asked.emplace(way.sql, fact).second)
            continue;
        std::vector<IdBytes> found;
        const Outcome read = m_connection.each(QString::fromLatin1(way.sql), {valueOf(fact)}, [&](Row& row) {
            if (row.type() == CellType::Bytes)
                found.push_back(row.bytes().value_or(IdBytes{}));
        });
        if (!read)
            return read;
        for (const IdBytes& one : found)
            if (way.to.empty())
                m_found.couplings.insert(CouplingId{one});
            else if (const Outcome taken = take(std::string{way.to}, one); !taken)
                return taken;
    }
    return Done{};
}

void CouplingsInDoubt::takeGone(const std::string& table)
{
    m_found.all =
        m_found.all || std::ranges::find(kWays, std::string_view{table}, &Way::table) != kWays.end();
}

} // namespace rig
