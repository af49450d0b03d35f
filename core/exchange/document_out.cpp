#include "core/exchange/csv.h"
#include "core/exchange/document.h"
#include "core/exchange/document_cells.h"
#include "core/store/base64.h"

#include <algorithm>
#include <charconv>

namespace rig {

namespace {

// RFC 8259 section 7.
std::string inQuotes(std::string_view text)
{
    constexpr std::string_view kHex = "0123456789abcdef";
    std::string into = "\"";
    for (const char byte : text) {
        if (byte == '"' || byte == '\\')
            into += '\\';
        if (static_cast<unsigned char>(byte) >= 0x20) {
            into += byte;
            continue;
        }
        into += "\\u00";
        into += kHex[static_cast<std::size_t>(byte) >> 4];
        into += kHex[static_cast<std::size_t>(byte) & 0xf];
    }
    return into + '"';
}

// The shortest figure that is read as the same number; never one that looks like a whole number.
std::string figureOf(double number)
{
    char figures[40];
    const auto [end, failed] = std::to_chars(figures, figures + sizeof figures, number);
    std::string text{figures, end};
    return text.find_first_of(".e") == std::string::npos ? text + ".0" : text;
}

std::string valueText(const ColumnInfo& column, const CarriedCell& cell)
{
    if (const auto* number = std::get_if<std::int64_t>(&cell))
        return writtenAs(column) != WrittenAs::YesOrNo ? std::to_string(*number) : *number ? "true" : "false";
    if (const auto* number = std::get_if<double>(&cell))
        return figureOf(*number);
    const std::string& bytes = std::get<std::string>(cell);
    IdBytes id{};
    switch (writtenAs(column)) {
    case WrittenAs::Id:
        std::ranges::copy(bytes, id.begin());
        return inQuotes(textOf(id));
    case WrittenAs::Hash:
        return inQuotes(base16Of(bytes));
    case WrittenAs::Picture:
        return inQuotes(base64Of(bytes));
    default:
        return inQuotes(bytes);
    }
}

class DocumentOut
{
public:
    DocumentOut(StoreFile::Connection& file, const WriteSome& write) : m_file{file}, m_write{write} {}

    Outcome written()
    {
        put("{\"format\":" + inQuotes(kDocumentFormat) + ",\"version\":" + std::to_string(kDocumentVersion) +
            ",\"layout\":" + std::to_string(carriedLayout()));
        for (const DocumentSection& section : kDocumentSections)
            if (const Outcome done = writeSection(section); !done)
                return done;
        put("}\n");
        return m_isFull ? Outcome{Problem{ProblemKind::DiskFull, "the document"}} : Done{};
    }

private:
    void put(std::string_view text) { m_isFull = m_isFull || !m_write(text); }

    Outcome writeSection(const DocumentSection& section)
    {
        put(",\n" + inQuotes(section.name) + ":{");
        const char* before = "\n";
        for (const CarriedTable& table : section.tables()) {
            put(before + inQuotes(table.name) + ":[");
            before = ",\n";
            if (const Outcome done = writeRows(table); !done)
                return done;
            put("]");
        }
        put("}");
        return Done{};
    }

    Outcome writeRows(const CarriedTable& table)
    {
        const char* before = "\n";
        return eachCarried(m_file, table, [&](const CarriedRow& row) -> Outcome {
            std::string text = before;
            addRow(table, row, text);
            if (!linesNotUtf8(text).empty()) // it could not be read again
                return Problem{ProblemKind::DamagedFile, table.name + ": UTF-8"};
            before = ",\n";
            put(text);
            return m_isFull ? Outcome{Problem{ProblemKind::DiskFull, "the document"}} : Done{};
        });
    }

    static void addRow(const CarriedTable& table, const CarriedRow& row, std::string& into)
    {
        into += '{';
        std::string before;
        for (std::size_t i = 0; i < table.columns.size(); ++i) {
            if (std::holds_alternative<std::monostate>(row.cells[i]))
                continue;
            into +=
                before + inQuotes(table.columns[i].name) + ':' + valueText(table.columns[i], row.cells[i]);
            before = ",";
        }
        for (std::size_t i = 0; i < row.belonging.size(); ++i)
            addBelonging(table.belonging[i], row.belonging[i], into);
        into += '}';
    }

    static void addBelonging(const CarriedTable& table, const std::vector<CarriedRow>& rows,
                             std::string& into)
    {
        if (!table.isList && rows.empty())
            return;
        into += ',' + inQuotes(table.name) + ':';
        if (!table.isList)
            return addRow(table, rows.front(), into);
        into += '[';
        std::string before;
        for (const CarriedRow& row : rows) {
            into += before + valueText(table.columns.front(), row.cells.front());
            before = ",";
        }
        into += ']';
    }

    StoreFile::Connection& m_file;
    const WriteSome& m_write;
    bool m_isFull = false;
};

} // namespace

Outcome writeDocument(StoreFile::Connection& file, const WriteSome& write)
{
    return DocumentOut{file, write}.written();
}

} // namespace rig
