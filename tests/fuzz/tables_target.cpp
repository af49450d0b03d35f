#include "core/exchange/csv.h"
#include "core/exchange/tables_in.h"
#include "tests/fuzz/always.h"
#include "tests/fuzz/targets.h"
#include "tests/fuzz/temp_file.h"

#include <algorithm>
#include <array>

namespace rig::fuzz {

namespace {

// One airframe, so that a reading finds what it names.
constexpr std::string_view kCouplings = "airframe,coupling,kind,fitting_begins\n"
                                        "QX-17,Left aileron,,2024-03-16\n"
                                        "QX-17,Trim,by-itself,2024-03-16\n";
constexpr std::string_view kPeople = "name\nM. Oren\nT. Vale\n";
constexpr std::string_view kGauges = "name,sizes_mm\nA,0.05-1.00 step 0.05\n";

// A file with them in it, anew after something came in.
class SmallFile
{
public:
    Records& records()
    {
        if (!m_open) {
            m_folder.empty();
            auto made = StoreFile::open(m_folder.file("hangar.rigband"), OpenAs::New, m_clock);
            always(static_cast<bool>(made), "no file can be made");
            m_open = std::make_unique<OpenFile>(std::move(made).value(), m_clock);
            const auto imported = importTables(m_open->records, m_clock,
                                               {.couplings = kCouplings,
                                                .people = kPeople,
                                                .gauges = kGauges,
                                                .events = {},
                                                .jointPlays = {},
                                                .readings = {}});
            always(imported && imported.value().bad.empty(), "the airframe does not come in");
        }
        return m_open->records;
    }

    const Clock& clock() const { return m_clock; }
    void forget() { m_open.reset(); }

private:
    MemoryFolder m_folder;
    StillClock m_clock;
    std::unique_ptr<OpenFile> m_open;
};

struct NamedTable
{
    std::string_view name;
    std::optional<std::string_view> TablesGiven::*of;
};
constexpr std::array kNamedTables{
    NamedTable{"couplings", &TablesGiven::couplings},   NamedTable{"people", &TablesGiven::people},
    NamedTable{"gauges", &TablesGiven::gauges},         NamedTable{"events", &TablesGiven::events},
    NamedTable{"joint_play", &TablesGiven::jointPlays}, NamedTable{"readings", &TablesGiven::readings},
};

bool isAnything(const Imported& imported)
{
    return imported.things() + imported.readings + imported.records > 0;
}

void importTwice(const TablesGiven& given)
{
    static SmallFile file;
    const auto first = importTables(file.records(), file.clock(), given);
    always(static_cast<bool>(first), "a table is refused without a row that says why");
    if (!isAnything(first.value()))
        return;
    always(first.value().bad.empty(), "something came in although a row is bad");
    const auto again = importTables(file.records(), file.clock(), given);
    always(again && !isAnything(again.value()), "the same came in twice");
    file.forget();
}

// What is written out is read back: a row, whatever stands in it.
void writeAndRead(std::string_view table)
{
    for (const CsvRow& row : csvRows(table, ',')) {
        if (row.unclosedQuote || row.strayQuote || row.fields.size() > kMostRowFields || row.isBlank())
            continue;
        const std::vector<CsvRow> read = csvRows(csvLine(row.fields), ',');
        always(read.size() == 1 && read.front().fields == row.fields, "a row that is written out is another");
    }
}

} // namespace

void tables(std::string_view bytes)
{
    const std::size_t end = std::min(bytes.find('\n'), bytes.size());
    const auto* const named = std::ranges::find(kNamedTables, bytes.substr(0, end), &NamedTable::name);
    if (named == kNamedTables.end())
        return;
    const std::string_view table = bytes.substr(std::min(end + 1, bytes.size()));
    writeAndRead(table);
    TablesGiven given;
    given.*named->of = table;
    importTwice(given);
}

} // namespace rig::fuzz
