#include "core/exchange/reading_table.h"

#include "core/exchange/table_rows.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <utility>

namespace rig {

namespace {

constexpr std::array kStates = {RowState::Locked, RowState::PartSeated, RowState::Baseline};
constexpr std::size_t kLongestRepeat = 3; // figures

void readState(RowFields& fields, TableRow& row)
{
    const std::string text = fields.field("state");
    if (text.empty())
        return;
    const auto state =
        std::ranges::find_if(kStates, [&](RowState known) { return wordOf(known) == lowered(text); });
    if (state == kStates.end())
        fields.refuse(RowProblem::UnknownState, text, "state");
    else
        row.state = *state;
}

void readRepeat(RowFields& fields, TableRow& row)
{
    const std::string text = fields.field("repeat");
    if (text.empty())
        return;
    int repeat = 0;
    if (isFigures(text) && text.size() <= kLongestRepeat)
        for (const char c : text)
            repeat = repeat * 10 + (c - '0');
    if (repeat < 1)
        fields.refuse(RowProblem::NotARepeat, text, "repeat");
    else
        row.repeat = repeat;
}

TableRow readingIn(RowFields& fields)
{
    TableRow row;
    row.line = fields.line();
    row.airframe = fields.needed("airframe", RowProblem::NoAirframe);
    row.coupling = fields.needed("coupling", RowProblem::NoCoupling);
    row.person = fields.needed("person", RowProblem::NoPerson);
    row.gauge = fields.field("gauge");
    row.note = fields.text("note");
    row.second = fields.field("second");
    row.day = fields.neededDay("date").value_or(Day{});
    row.interval = fields.interval("enters_mm", "refuses_mm").value_or(GapInterval{});
    row.time = fields.time("time");
    row.rigging = fields.time("rigging");
    readState(fields, row);
    readRepeat(fields, row);
    return row;
}

// A reading that does not stand is no reading: it is kept where it was taken, and not brought in anew.
bool isSetAside(RowFields& fields)
{
    const std::string aside = fields.field("set_aside");
    if (aside.empty())
        return false;
    const std::string word = lowered(aside);
    if (word == wordOf(RowAside::Corrected) || word == wordOf(RowAside::Struck))
        return true;
    fields.refuse(RowProblem::UnknownAside, aside, "set_aside");
    return false;
}

// What says so is the “no” of its rigging, which no table of readings carries.
bool isFoundNotSecured(RowFields& fields)
{
    return lowered(fields.field("state")) == wordOf(RowState::NotSecured);
}

} // namespace

ReadingTable parseReadings(std::string_view bytes)
{
    const TableForm form{TableKind::Readings,
                         readingColumns(),
                         {"airframe", "coupling", "date", "enters_mm", "person"},
                         false};
    ReadingTable table;
    table.isRead = readTable(bytes, form, table.bad, [&table](RowFields& fields) {
        if (isSetAside(fields)) {
            ++table.setAside;
            return;
        }
        if (isFoundNotSecured(fields)) {
            ++table.notSecured;
            return;
        }
        if (fields.isBad())
            return;
        TableRow row = readingIn(fields);
        if (!fields.isBad())
            table.rows.push_back(std::move(row));
    });
    return table;
}

const std::vector<std::string>& readingColumns()
{
    static const std::vector<std::string> kColumns = {
        "airframe",      "coupling",  "date",       "enters_mm", "refuses_mm", "gauge",
        "person",        "state",     "note",       "repeat",    "second",     "set_aside",
        "set_aside_why", "copied_by", "from_paper", "time",      "rigging"};
    return kColumns;
}

std::string_view wordOf(RowAside aside)
{
    return aside == RowAside::Corrected ? "corrected" : "struck";
}

std::string_view wordOf(RowState state)
{
    switch (state) {
    case RowState::Locked:
        return "locked";
    case RowState::PartSeated:
        return "part-seated";
    case RowState::Baseline:
        return "baseline";
    case RowState::NotSecured:
        return "not-secured";
    }
    return {};
}

} // namespace rig
