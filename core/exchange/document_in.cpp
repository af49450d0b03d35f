#include "core/exchange/document.h"
#include "core/exchange/document_cells.h"
#include "core/store/base64.h"
#include "core/store/layout.h"

#include <algorithm>
#include <iterator>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>

namespace rig {

namespace {

constexpr std::size_t kReadAtOnce = 65'536;

// The bytes of a document one after the other, some thousand of them in memory. Ends where a text or a figure
// is longer than any may be, so that none is ever held.
class DocumentBytes
{
public:
    explicit DocumentBytes(const ReadSome& read) : m_read{read}, m_buffer(kReadAtOnce, '\0') { fill(); }

    bool isAtEnd() const { return m_at == m_size || m_isTooLong; }
    char byte() const { return m_buffer[m_at]; }
    void goOn()
    {
        measure(m_buffer[m_at]);
        m_line += m_buffer[m_at] == '\n' ? 1 : 0;
        if (++m_at == m_size)
            fill();
    }

    std::int64_t line() const { return m_line; }
    bool isTooLong() const { return m_isTooLong; }
    bool hasFailed() const { return m_hasFailed; }

private:
    void fill()
    {
        const std::int64_t size = m_read(m_buffer.data(), m_buffer.size());
        m_hasFailed = size < 0;
        m_size = size < 0 ? 0 : static_cast<std::size_t>(size);
        m_at = 0;
    }

    void measure(char byte)
    {
        constexpr std::string_view kBetween = ",:[]{} \t\r\n";
        if (m_isInText) {
            m_isInText = m_isEscaped || byte != '"';
            m_isEscaped = !m_isEscaped && byte == '\\';
        } else if (byte == '"') {
            m_isInText = true;
            m_length = 0;
        } else if (kBetween.find(byte) != std::string_view::npos) {
            m_length = 0;
        }
        m_isTooLong = ++m_length > kLongestToken;
    }

    const ReadSome& m_read;
    std::string m_buffer;
    std::size_t m_at = 0;
    std::size_t m_size = 0;
    std::size_t m_length = 0; // of the text or figure
    std::int64_t m_line = 1;
    bool m_isInText = false;
    bool m_isEscaped = false;
    bool m_isTooLong = false;
    bool m_hasFailed = false;
};

// As the parser walks over them.
class DocumentByte
{
public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = char;

    DocumentByte() = default;
    explicit DocumentByte(DocumentBytes& bytes) : m_bytes{&bytes} {}

    char operator*() const { return m_bytes->byte(); }
    DocumentByte& operator++()
    {
        m_bytes->goOn();
        return *this;
    }
    void operator++(int) { m_bytes->goOn(); }
    // The one that was made of nothing is the end.
    bool operator==(const DocumentByte& other) const { return isAtEnd() == other.isAtEnd(); }

private:
    bool isAtEnd() const { return !m_bytes || m_bytes->isAtEnd(); }

    DocumentBytes* m_bytes = nullptr;
};

const CarriedTable* tableNamed(const std::vector<CarriedTable>& tables, std::string_view name)
{
    const auto found = std::ranges::find(tables, name, &CarriedTable::name);
    return found == tables.end() ? nullptr : &*found;
}

// An object of cells: a row, or what belongs to one.
struct OpenRow
{
    const CarriedTable* table = nullptr;
    CarriedRow row = {{}};
    std::set<std::string, std::less<>> keys = {};
};

OpenRow begun(const CarriedTable& table)
{
    OpenRow row{&table, {std::vector<CarriedCell>(table.columns.size())}};
    row.row.belonging.resize(table.belonging.size());
    return row;
}

// What the parser calls. Each answer is whether to go on.
class DocumentIn
{
public:
    DocumentIn(const DocumentBytes& bytes, const PutRow& put) : m_bytes{bytes}, m_put{put} {}

    const DocumentFault& fault() const { return m_fault; }
    const Outcome& outcome() const { return m_outcome; }

    bool null() { return refuse(DocumentProblem::WrongType); }
    bool boolean(bool value) { return take(std::int64_t{value}, true); }
    bool number_integer(std::int64_t value) { return take(value, false); }
    bool number_unsigned(std::uint64_t value)
    {
        constexpr auto kMost = static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max());
        return value <= kMost ? take(static_cast<std::int64_t>(value), false)
                              : refuse(DocumentProblem::OutOfRange);
    }
    bool number_float(double value, const std::string&) { return take(value, false); }
    bool string(std::string& value) { return take(std::move(value), false); }
    bool binary(nlohmann::json::binary_t&) { return refuse(DocumentProblem::WrongType); }

    bool start_object(std::size_t)
    {
        switch (m_level) {
        case Level::Nothing:
            return goInto(Level::Document);
        case Level::Document:
            m_section = sectionNamed(m_key);
            return m_section ? goInto(Level::Section) : refuse(DocumentProblem::WrongType);
        case Level::List:
            m_row = begun(*m_table);
            return goInto(Level::Row);
        case Level::Row:
            m_belonging = belongingNamed(m_key);
            if (!m_belonging || m_belonging->isList)
                return refuse(DocumentProblem::WrongType);
            m_attached = begun(*m_belonging);
            return goInto(Level::Attached);
        case Level::Section:
        case Level::Attached:
        case Level::Values:
            break;
        }
        return refuse(DocumentProblem::WrongType);
    }

    bool start_array(std::size_t)
    {
        if (m_level == Level::Section)
            return goInto(Level::List);
        m_belonging = m_level == Level::Row ? belongingNamed(m_key) : nullptr;
        return m_belonging && m_belonging->isList ? goInto(Level::Values)
                                                  : refuse(DocumentProblem::WrongType);
    }

    bool key(std::string& key)
    {
        m_key = key.substr(0, kLongestKeyTold);
        switch (m_level) {
        case Level::Document:
            return isNew(m_keys, key) && isAKeyOfTheDocument(key);
        case Level::Section:
            m_table = tableNamed(m_section->tables(), key);
            if (!m_table)
                return refuse(DocumentProblem::UnknownKind);
            return isNew(m_kinds, key) && isOfItsLayout(*m_table);
        case Level::Row:
            if (const CarriedTable* const belonging = belongingNamed(key))
                return isNew(m_row.keys, key) && isOfItsLayout(*belonging);
            return isNew(m_row.keys, key) && isAColumnOf(*m_table, key);
        case Level::Attached:
            return isNew(m_attached.keys, key) && isAColumnOf(*m_belonging, key);
        case Level::Nothing:
        case Level::List:
        case Level::Values:
            break;
        }
        return refuse(DocumentProblem::WrongType);
    }

    bool end_object()
    {
        switch (m_level) {
        case Level::Attached:
            m_level = Level::Row;
            if (!isWhole(m_attached))
                return false;
            m_row.row.belonging[placeOf(*m_belonging)].push_back(std::move(m_attached.row));
            return true;
        case Level::Row:
            m_level = Level::List;
            return isWhole(m_row) && put();
        case Level::Section:
            m_level = Level::Document;
            m_table = nullptr;
            return true;
        default:
            m_level = Level::Nothing;
            return hasAllKeys();
        }
    }

    bool end_array()
    {
        m_level = m_level == Level::Values ? Level::Row : Level::Section;
        return true;
    }

    template <typename Thrown> bool parse_error(std::size_t, const std::string&, const Thrown& thrown)
    {
        constexpr int kNoSuchNumber = 406; // a figure beyond all that a number can be
        if (thrown.id == kNoSuchNumber && !m_bytes.isTooLong())
            return refuse(DocumentProblem::OutOfRange);
        m_key.clear();
        if (m_bytes.hasFailed())
            return refuse(DocumentProblem::CannotRead);
        if (m_bytes.isTooLong())
            return refuse(DocumentProblem::TooLong);
        return refuse(m_bytes.isAtEnd() ? DocumentProblem::EndsEarly : DocumentProblem::NotJson);
    }

private:
    enum class Level { Nothing, Document, Section, List, Row, Attached, Values };

    static constexpr std::size_t kLongestKeyTold = 100;

    bool goInto(Level level)
    {
        m_level = level;
        return true;
    }

    bool refuse(DocumentProblem problem)
    {
        if (m_fault.problem != DocumentProblem::None)
            return false;
        // What begins otherwise was never a document.
        const bool isOurs = m_level != Level::Nothing || problem != DocumentProblem::WrongType;
        m_fault = {isOurs ? problem : DocumentProblem::NotOurs, m_bytes.line()};
        m_fault.key = m_key;
        if (m_table && m_level >= Level::List)
            m_fault.kind = m_table->name;
        if (m_level >= Level::Row && !m_row.row.cells.empty())
            m_fault.id = idTold(m_row);
        return false;
    }

    bool refuseRow(DocumentProblem problem, std::string_view key)
    {
        m_key = key;
        m_level = Level::Row;
        return refuse(problem);
    }

    static std::string idTold(const OpenRow& row)
    {
        const auto* bytes = std::get_if<std::string>(&row.row.cells.front());
        IdBytes id{};
        if (!bytes || bytes->size() != id.size() || row.table->columns.front().storage != Storage::Id)
            return {};
        std::ranges::copy(*bytes, id.begin());
        return textOf(id);
    }

    static const DocumentSection* sectionNamed(std::string_view name)
    {
        const auto* const found = std::ranges::find(kDocumentSections, name, &DocumentSection::name);
        return found == std::end(kDocumentSections) ? nullptr : found;
    }

    const CarriedTable* belongingNamed(std::string_view name) const
    {
        return tableNamed(m_table->belonging, name);
    }
    std::size_t placeOf(const CarriedTable& belonging) const
    {
        return static_cast<std::size_t>(&belonging - m_table->belonging.data());
    }

    bool isAColumnOf(const CarriedTable& table, const std::string& key)
    {
        if (!columnNamed(table, key))
            return refuse(DocumentProblem::UnknownKey);
        return !m_older || m_older->contains({table.name, key}) || refuseLater();
    }

    // What the document says it is, and what stands in it, must not contradict one another.
    bool isOfItsLayout(const CarriedTable& table)
    {
        return !m_older || m_older->contains({table.name, table.columns.front().name}) || refuseLater();
    }

    bool refuseLater()
    {
        refuse(DocumentProblem::LaterLayout);
        m_fault.named = std::to_string(m_layout);
        return false;
    }

    // Where it is not the one that this program writes, what stands in it is asked for.
    bool takeLayout(int layout)
    {
        m_layout = layout;
        if (layout == carriedLayout())
            return true;
        auto columns = columnsOfLayout(layout);
        if (!columns) {
            m_outcome = columns.problem();
            return false;
        }
        m_older = std::move(columns).value();
        return true;
    }

    static const ColumnInfo* columnNamed(const CarriedTable& table, std::string_view name)
    {
        const auto found = std::ranges::find(table.columns, name, &ColumnInfo::name);
        return found == table.columns.end() ? nullptr : &*found;
    }

    bool isNew(std::set<std::string, std::less<>>& keys, const std::string& key)
    {
        return keys.insert(key.substr(0, kLongestKeyTold)).second || refuse(DocumentProblem::KeyTwice);
    }

    // The head comes first, so that nothing is read as what it may not be.
    bool isAKeyOfTheDocument(std::string_view key)
    {
        constexpr std::string_view kHead[] = {"format", "version", "layout"};
        const std::size_t place = m_keys.size() - 1;
        if (place < std::size(kHead))
            return key == kHead[place] || refuse(DocumentProblem::NotOurs);
        return sectionNamed(key) || refuse(DocumentProblem::UnknownKey);
    }

    bool hasAllKeys()
    {
        if (m_keys.size() < 3)
            return refuse(DocumentProblem::NotOurs);
        for (const DocumentSection& section : kDocumentSections)
            if (!m_keys.contains(section.name)) {
                m_key = section.name;
                return refuse(DocumentProblem::MissingKey);
            }
        return true;
    }

    bool isWhole(const OpenRow& row)
    {
        for (std::size_t i = 0; i < row.table->columns.size(); ++i)
            if (faultOf(row.table->columns[i], row.row.cells[i]) != CellFault::None)
                return refuseRow(DocumentProblem::MissingKey, row.table->columns[i].name);
        return true;
    }

    bool put()
    {
        const Result<Put> done = m_put(*m_table, m_row.row);
        if (!done) {
            m_outcome = done.problem();
            return false;
        }
        switch (done.value()) {
        case Put::Done:
            return true;
        case Put::ThereAlready:
            return refuseRow(DocumentProblem::IdTwice, {});
        case Put::CannotStand:
            break;
        }
        return refuseRow(DocumentProblem::CannotStand, {});
    }

    bool take(CarriedCell value, bool isYesOrNo)
    {
        switch (m_level) {
        case Level::Document:
            return takeHead(value, isYesOrNo);
        case Level::Row:
            if (const ColumnInfo* column = columnNamed(*m_table, m_key))
                return takeCell(*column, std::move(value), isYesOrNo,
                                m_row.row.cells[placeIn(*m_table, *column)]);
            break;
        case Level::Attached:
            if (const ColumnInfo* column = columnNamed(*m_belonging, m_key))
                return takeCell(*column, std::move(value), isYesOrNo,
                                m_attached.row.cells[placeIn(*m_belonging, *column)]);
            break;
        case Level::Values: {
            CarriedRow one{std::vector<CarriedCell>(1)};
            if (!takeCell(m_belonging->columns.front(), std::move(value), isYesOrNo, one.cells.front()))
                return false;
            m_row.row.belonging[placeOf(*m_belonging)].push_back(std::move(one));
            return true;
        }
        case Level::Nothing:
        case Level::Section:
        case Level::List:
            break;
        }
        return refuse(DocumentProblem::WrongType);
    }

    static std::size_t placeIn(const CarriedTable& table, const ColumnInfo& column)
    {
        return static_cast<std::size_t>(&column - table.columns.data());
    }

    bool takeHead(const CarriedCell& value, bool isYesOrNo)
    {
        if (m_key == "format") {
            const auto* const format = std::get_if<std::string>(&value);
            return (format && *format == kDocumentFormat) || refuse(DocumentProblem::NotOurs);
        }
        const auto* const number = std::get_if<std::int64_t>(&value);
        if (!number || isYesOrNo || sectionNamed(m_key))
            return refuse(DocumentProblem::WrongType);
        const bool isVersion = m_key == "version";
        if (*number > (isVersion ? kDocumentVersion : carriedLayout()))
            return refuse(DocumentProblem::Newer);
        if (*number < (isVersion ? 1 : kFirstDocumentLayout))
            return refuse(DocumentProblem::OutOfRange);
        return isVersion || takeLayout(static_cast<int>(*number));
    }

    // From the natural type of the document to what stands in a file.
    bool takeCell(const ColumnInfo& column, CarriedCell value, bool isYesOrNo, CarriedCell& into)
    {
        const WrittenAs as = writtenAs(column);
        if (isYesOrNo != (as == WrittenAs::YesOrNo))
            return refuse(DocumentProblem::WrongType);
        if (as == WrittenAs::Number && std::holds_alternative<std::int64_t>(value))
            value = static_cast<double>(std::get<std::int64_t>(value));
        if (auto* text = std::get_if<std::string>(&value))
            if (!isRead(as, *text))
                return refuse(DocumentProblem::WrongType);
        into = std::move(value);
        switch (faultOf(column, into)) {
        case CellFault::None:
            return true;
        case CellFault::OutOfRange:
            return refuse(DocumentProblem::OutOfRange);
        case CellFault::UnknownWord:
            return refuse(DocumentProblem::UnknownWord);
        case CellFault::NotADay:
            return refuse(DocumentProblem::NotADay);
        case CellFault::Missing:
        case CellFault::WrongType:
            break;
        }
        return refuse(isTooLargeAFigure(as, into) ? DocumentProblem::OutOfRange : DocumentProblem::WrongType);
    }

    // A whole number that is too large comes as one that is none.
    static bool isTooLargeAFigure(WrittenAs as, const CarriedCell& cell)
    {
        constexpr double kLargest = 9.2e18;
        const auto* const number = std::get_if<double>(&cell);
        return as == WrittenAs::WholeNumber && number && !(*number<kLargest&& * number> - kLargest);
    }

    // In place; false where it is not written so.
    static bool isRead(WrittenAs as, std::string& text)
    {
        std::optional<std::string> bytes;
        switch (as) {
        case WrittenAs::Id:
            if (const auto id = idFromText(text))
                bytes = std::string{id->begin(), id->end()};
            break;
        case WrittenAs::Hash:
            bytes = bytesOfBase16(text);
            break;
        case WrittenAs::Picture:
            bytes = bytesOfBase64(text);
            break;
        default:
            return true;
        }
        text = std::move(bytes).value_or(std::string{});
        return !text.empty();
    }

    const DocumentBytes& m_bytes;
    const PutRow& m_put;
    DocumentFault m_fault;
    Outcome m_outcome = Done{};
    Level m_level = Level::Nothing;
    std::string m_key; // the last one
    std::set<std::string, std::less<>> m_keys;
    std::set<std::string, std::less<>> m_kinds;
    int m_layout = 0;
    std::optional<LayoutColumns> m_older; // of a layout before this program's
    const DocumentSection* m_section = nullptr;
    const CarriedTable* m_table = nullptr;
    const CarriedTable* m_belonging = nullptr;
    OpenRow m_row;
    OpenRow m_attached;
};

DocumentFault faultAt(const NotCarriedIn& fact, DocumentProblem problem)
{
    DocumentFault fault{problem};
    fault.kind = fact.table;
    fault.id = fact.id;
    fault.key = fact.column;
    fault.named = fact.named;
    return fault;
}

Outcome putAll(const ReadSome& read, const PutRow& put, DocumentFault& fault)
{
    DocumentBytes bytes{read};
    DocumentIn in{bytes, put};
    const bool isWhole = nlohmann::json::sax_parse(DocumentByte{bytes}, DocumentByte{}, &in);
    fault = in.fault();
    if (!in.outcome())
        return in.outcome();
    return isWhole ? Outcome{Done{}} : Problem{ProblemKind::FactRefused, "not made: see the fault"};
}

} // namespace

Result<DocumentRead> readDocument(const ReadSome& read, const std::string& out, CarryWhat what)
{
    DocumentRead document;
    Result<CarriedIn> made =
        carryInto(out, what, [&](const PutRow& put) { return putAll(read, put, document.fault); });
    if (!made && document.fault.problem == DocumentProblem::None)
        return made.problem();
    if (!made)
        return document;
    document.made = std::move(made).value();
    if (document.made.unreadable)
        document.fault = faultAt(*document.made.unreadable, DocumentProblem::CannotStand);
    else if (document.made.lost)
        document.fault =
            faultAt(*document.made.lost, document.made.lost->named.empty() ? DocumentProblem::OtherSubject
                                                                           : DocumentProblem::LostReference);
    return document;
}

} // namespace rig
