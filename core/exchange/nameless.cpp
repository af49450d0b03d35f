#include "core/exchange/nameless.h"

#include "core/exchange/csv.h"
#include "core/exchange/fields.h"

#include <algorithm>
#include <set>
#include <utility>

namespace rig {

namespace {

const std::set<std::string> kPersons = {"person",  "second", "copied_by",    "signer",
                                        "learner", "mentor", "taken_back_by"};

const std::set<std::string> kStays = {
    "coupling", "date", "enters_mm", "refuses_mm", "state", "repeat", "set_aside", "from_paper",
    // of couplings and fittings
    "side", "seen_from", "mirror_from", "plan_x", "plan_y", "layout", "kind", "gap", "to_pull", "to_secure",
    "in_use", "fitting_begins",
    // of gauges
    "sizes_mm", "resolution_mm", "tolerance_mm", "check_date", "quarantine_from", "known_mm",
    "known_enters_mm", "known_refuses_mm",
    // of joint play and sign-offs
    "along", "along_mm", "across", "across_mm", "months", "months_without_rigging", "asked_supervised",
    "asked_not_practised", "asked_missed",
    // of counts
    "riggings", "riggings_read", "readings", "outside", "found_part_seated", "no_answers",
    "found_not_secured"};

// A, B, ... Z, AA, AB.
std::string lettersOf(std::size_t number)
{
    constexpr std::size_t kLetters = 26;
    std::string letters;
    for (; number > 0; number = (number - 1) / kLetters)
        letters.insert(letters.begin(), static_cast<char>('A' + (number - 1) % kLetters));
    return letters;
}

// Where nobody found a kind for it, it stands there in words of their own.
template <typename Kind> std::string kindOrOther(const std::string& written)
{
    return kindFrom<Kind>(written) ? written : text(Kind::Other);
}

} // namespace

Nameless::Holds Nameless::whatHolds(const std::string& column, bool ofGauges)
{
    if (column == "name")
        return ofGauges ? Holds::Gauge : Holds::Person;
    if (column == "gauge")
        return Holds::Gauge;
    if (column == "airframe")
        return Holds::Airframe;
    if (column == "circuit")
        return Holds::Circuit;
    if (column == "fitting_reason")
        return Holds::FittingReason;
    if (kPersons.contains(column))
        return Holds::Person;
    return kStays.contains(column) ? Holds::Kept : Holds::Nothing;
}

std::string Nameless::field(const std::string& written, Holds what)
{
    if (written.empty())
        return {};
    switch (what) {
    case Holds::Nothing:
        break;
    case Holds::Kept:
        return written;
    case Holds::Person:
        return lettersOf(m_persons.of(written));
    case Holds::Gauge:
        return std::to_string(m_gauges.of(written));
    case Holds::Airframe:
        return std::to_string(m_airframes.of(written));
    case Holds::Circuit:
        return kindOrOther<Circuit>(written);
    case Holds::FittingReason:
        return kindOrOther<FittingKind>(written);
    }
    return {};
}

std::string Nameless::table(std::string_view written)
{
    const std::vector<CsvRow> rows = csvRows(written, ',');
    const Fields& columns = rows.front().fields;
    const bool ofGauges = std::ranges::count(columns, "sizes_mm") > 0;
    std::vector<Fields> lines;
    for (std::size_t row = 0; row < rows.size(); ++row) {
        Fields line;
        for (std::size_t i = 0; i < columns.size(); ++i)
            if (const Holds what = whatHolds(columns[i], ofGauges); what != Holds::Nothing)
                line.push_back(row == 0 ? columns[i] : field(rows[row].fields[i], what));
        lines.push_back(std::move(line));
    }
    // In a list of people or gauges the order in which somebody typed them in would tell who a letter is.
    if (columns.front() == "name")
        std::stable_sort(lines.begin() + 1, lines.end(), [](const Fields& one, const Fields& other) {
            return std::pair{one[0].size(), one[0]} < std::pair{other[0].size(), other[0]};
        });
    std::string table;
    for (const Fields& line : lines)
        table += csvLine(line);
    return table;
}

} // namespace rig
