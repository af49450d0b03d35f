#pragma once

#include "core/clock.h"
#include "core/exchange/imported.h"
#include "core/exchange/named_things.h"
#include "core/exchange/thing_tables.h"
#include "core/store/records.h"

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace rig {

// The day of the first reading in the table, by the comparable names of airframe and coupling.
using FirstReadings = std::map<std::pair<std::string, std::string>, Day>;

// Each adds what its table says and makes it known to those that follow. Within a transaction of the caller,
// who gives it up when there is a bad row.
class ThingsIn
{
public:
    // All must outlive this object.
    ThingsIn(Records& records, Day today, NamedThings& known, Imported& imported);

    Outcome add(const TableOf<PersonLine>& people);
    Outcome add(const TableOf<GaugeLine>& gauges);
    Outcome add(const TableOf<CouplingLine>& couplings, const FirstReadings& firstReadings);
    Outcome add(const TableOf<EventLine>& events);
    Outcome add(const TableOf<JointPlayLine>& plays);

private:
    // How the thing of a row stands to those that are known.
    enum class Met { New, Same, Refused };

    struct FittingWanted
    {
        Day begins;
        std::string reason;
    };

    // A coupling that the table names, with the fittings that are to begin.
    struct CouplingNamed
    {
        NamedAirframe* airframe = nullptr;
        Coupling coupling;
        int line = 0;
        bool isNew = false;
        std::vector<FittingWanted> fittings;
        std::string reason; // of a fitting without a day
    };
    using CouplingsNamed = std::vector<CouplingNamed>;

    void refuse(TableKind table, int line, RowProblem problem, const std::string& text,
                const std::string& column, const std::string& instead = {});
    void refuseToCome(TableKind table, int line, Day day, const std::string& column);

    template <typename Thing>
    Result<Met> meet(ByName<Thing>& things, const std::string& name, const Thing& thing,
                     const TableLine& line, TableKind table, const std::vector<std::string>& columns,
                     const std::function<Fields(const Thing&)>& fieldsOf);
    // Null, and told of, where nothing has this name; also where only a bad row has it.
    template <typename Thing>
    auto idOf(const ByName<Thing>& things, const std::string& name, TableKind table, int line,
              RowProblem elseWhy, const char* column);

    Result<NamedAirframe*> airframeOf(const std::string& registration);
    Outcome takeCoupling(const CouplingLine& line, CouplingsNamed& named);
    bool wantsFitting(const CouplingLine& line, CouplingNamed& named);
    Outcome addFittings(CouplingNamed& named, const FirstReadings& firstReadings);
    Outcome addFitting(CouplingNamed& named, const FittingWanted& wanted, bool isFirst);

    std::optional<Event> eventOf(const EventLine& line);
    std::optional<JointPlay> playOf(const JointPlayLine& line);

    Records& m_records;
    Day m_today;
    NamedThings& m_known;
    Imported& m_imported;
};

} // namespace rig
