// A whole file as one document, and a file made of it.

#include "core/airframe/name_replaced.h"
#include "core/demo/demo.h"
#include "core/exchange/document.h"
#include "core/store/cells.h"
#include "core/store/newest.h"
#include "tests/support/laptop.h"
#include "tests/support/shape_values.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <map>
#include <nlohmann/json.hpp>
#include <regex>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

using Json = nlohmann::ordered_json; // in the order of the document

ReadSome readFrom(std::string_view text)
{
    return [text, at = std::size_t{0}](char* into, std::size_t most) mutable {
        const std::size_t size = text.copy(into, most, at);
        at += size;
        return static_cast<std::int64_t>(size);
    };
}

std::string documentOf(StoreFile::Connection& file)
{
    std::string text;
    must(writeDocument(file, [&text](std::string_view more) {
        text += more;
        return true;
    }));
    return text;
}

DrawnPhoto fewBytes(const Coupling& coupling, PhotoOf)
{
    return {{"\xff\xd8 no picture of " + coupling.name + std::string(3, '\0')}, 640, 480};
}

// The demonstration as a document, written once for all.
const std::string& demoDocument()
{
    static const std::string text = [] {
        TempStore store;
        must(buildDemo(store.file(), demo::Language::English, fewBytes));
        return documentOf(store.file().connection());
    }();
    return text;
}

// Each fact of a kind as its shape tells it, in the order of their ids.
template <typename Fact> std::string toldOf(StoreFile::Connection& file)
{
    const FactShape& shape = factShape<Fact>();
    std::vector<std::pair<IdBytes, Fact>> facts;
    must(
        file.each(QString("SELECT t.id, %1 FROM %2 t ORDER BY t.id").arg(columnsSql(shape, "t"), shape.table),
                  {}, [&facts](Row& row) {
                      const IdBytes id = row.bytes().value_or(IdBytes{});
                      facts.emplace_back(id, factFrom<Fact>(row));
                  }));
    std::string told = std::string{shape.table} + ' ' + std::to_string(facts.size()) + '\n';
    for (auto& [id, fact] : facts) {
        if (shape.children)
            must(readChildren(file, id, fact));
        told += written(fact);
    }
    return told;
}

template <typename... Kinds>
void expectTheSameFacts(std::tuple<Kinds...>*, StoreFile::Connection& one, StoreFile::Connection& other)
{
    (static_cast<void>([&] { EXPECT_EQ(toldOf<Kinds>(one), toldOf<Kinds>(other)); }()), ...);
}

class Document : public testing::Test
{
protected:
    std::string at(const std::string& name) const { return folder.file(name + ".rigband"); }

    DocumentRead read(std::string_view text, CarryWhat what = CarryWhat::WhatHolds)
    {
        return must(readDocument(readFrom(text), at("new"), what));
    }

    // Refused with this, and nothing is made, not even for a while.
    DocumentFault refusal(std::string_view text)
    {
        const DocumentRead document = read(text);
        EXPECT_FALSE(document.made.isMade);
        EXPECT_TRUE(fs::is_empty(folder.path()));
        return document.fault;
    }

    TempFolder folder;
};

// A small file, to be changed as JSON.
class ChangedDocument : public Document
{
protected:
    void SetUp() override
    {
        TempStore store;
        const Hangar hangar{store.records()};
        takeTwelve(store, hangar);
        document = Json::parse(documentOf(store.file().connection()));
        reading = document["facts"]["reading"][3]["id"];
        person = document["facts"]["person"][0]["id"];
    }

    Json& aReading() { return document["facts"]["reading"][3]; }
    DocumentFault refused() { return refusal(inOrder(document)); }

    // The head stands first, whatever was taken out and put in again.
    static std::string inOrder(const Json& document)
    {
        std::string text = "{";
        for (const char* key : {"format", "version", "layout", "facts", "chain"})
            if (document.contains(key))
                text += '"' + std::string{key} + "\":" + document[key].dump() + ',';
        for (const auto& [key, value] : document.items())
            if (text.find('"' + key + "\":") == std::string::npos)
                text += '"' + key + "\":" + value.dump() + ',';
        text.back() = '}';
        return text;
    }

    void expect(DocumentProblem problem, const std::string& kind, const std::string& id,
                const std::string& key)
    {
        const DocumentFault fault = refused();
        EXPECT_EQ(fault.problem, problem) << static_cast<int>(fault.problem);
        EXPECT_EQ(fault.kind, kind);
        EXPECT_EQ(fault.id, id);
        EXPECT_EQ(fault.key, key);
    }
    void expectAtReading(DocumentProblem problem, const char* key)
    {
        expect(problem, "reading", reading, key);
    }

    Json document;
    std::string reading;
    std::string person;
};

// The keywords of JSON Schema that documentSchema() uses, and an error for any other.
class Validator
{
public:
    explicit Validator(const Json& schema) : m_schema{schema} {}

    // The first that does not fit, by its place; empty where all does.
    std::string problem(const Json& value) { return problemOf(m_schema, value, ""); }

private:
    std::string problemOf(const Json& schema, const Json& value, const std::string& at)
    {
        for (const auto& [keyword, wanted] : schema.items())
            if (const std::string found = byKeyword(schema, keyword, wanted, value, at); !found.empty())
                return found;
        return {};
    }

    std::string byKeyword(const Json& schema, const std::string& keyword, const Json& wanted,
                          const Json& value, const std::string& at)
    {
        const auto fits = [&](bool is) { return is ? std::string{} : at + ": " + keyword; };
        if (keyword == "$ref")
            return problemOf(definition(wanted), value, at);
        if (keyword == "type")
            return fits(isOfType(wanted, value));
        if (keyword == "const")
            return fits(value == wanted);
        if (keyword == "enum")
            return fits(std::ranges::find(wanted, value) != wanted.end());
        if (keyword == "minimum")
            return fits(!value.is_number() || value >= wanted);
        if (keyword == "maximum")
            return fits(!value.is_number() || value <= wanted);
        if (keyword == "minLength")
            return fits(!value.is_string() || lengthOf(value) >= wanted);
        if (keyword == "maxLength")
            return fits(!value.is_string() || lengthOf(value) <= wanted);
        if (keyword == "pattern")
            return fits(!value.is_string() || fitsPattern(wanted, value));
        if (keyword == "required")
            return fits(std::ranges::all_of(wanted, [&](const Json& key) { return value.contains(key); }));
        if (keyword == "additionalProperties")
            return fits(wanted == false && std::ranges::all_of(value.items(), [&](const auto& item) {
                            return schema["properties"].contains(item.key());
                        }));
        if (keyword == "properties")
            return ofEachKey(wanted, value, at);
        if (keyword == "items")
            return ofEach(wanted, value, at);
        const bool saysNothing =
            keyword == "$schema" || keyword == "title" || keyword == "$defs" || keyword == "contentEncoding";
        return fits(saysNothing);
    }

    std::string ofEachKey(const Json& properties, const Json& value, const std::string& at)
    {
        for (const auto& [key, one] : value.items())
            if (properties.contains(key))
                if (const std::string found = problemOf(properties[key], one, at + '/' + key); !found.empty())
                    return found;
        return {};
    }

    std::string ofEach(const Json& items, const Json& value, const std::string& at)
    {
        for (std::size_t i = 0; i < value.size(); ++i)
            if (const std::string found = problemOf(items, value[i], at + '/' + std::to_string(i));
                !found.empty())
                return found;
        return {};
    }

    static bool isOfType(const std::string& type, const Json& value)
    {
        return type == "object"    ? value.is_object()
               : type == "array"   ? value.is_array()
               : type == "string"  ? value.is_string()
               : type == "boolean" ? value.is_boolean()
               : type == "integer" ? value.is_number_integer()
                                   : type == "number" && value.is_number();
    }

    const Json& definition(const std::string& reference)
    {
        constexpr std::string_view kBefore = "#/$defs/";
        return m_schema["$defs"].at(reference.substr(kBefore.size()));
    }

    bool fitsPattern(const std::string& pattern, const std::string& text)
    {
        const auto known = m_patterns.try_emplace(pattern, pattern).first;
        return std::regex_search(text, known->second);
    }

    // Characters and not bytes.
    static std::int64_t lengthOf(const std::string& text)
    {
        return std::ranges::count_if(text, [](char byte) { return (byte & 0xc0) != 0x80; });
    }

    const Json& m_schema;
    std::map<std::string, std::regex> m_patterns;
};

const std::string kSchemaFile = RIG_DOCS "/rigband.schema.json";

std::string fileText(const std::string& path)
{
    std::ifstream file{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{file}, {}};
}

} // namespace

TEST_F(Document, OfTheDemonstrationMakesAnEqualFileWhoseChainHolds)
{
    TempStore store;
    must(buildDemo(store.file(), demo::Language::English, fewBytes));
    StoreFile::Connection& ours = store.file().connection();
    const std::string text = documentOf(ours);
    const DocumentRead document = read(text);
    ASSERT_TRUE(document.made.isMade);
    const auto made = must(OtherFile::read(at("new"), at("new")));
    expectTheSameFacts(static_cast<Facts*>(nullptr), ours, made->connection());
    EXPECT_EQ(contentOf(made->connection()), contentOf(ours)) << "and what belongs to them, and the chain";
    const ChainState before = must(store.file().lookAtChain());
    const ChainState after = must(made->lookAtChain());
    EXPECT_EQ(after.faults, 0);
    EXPECT_EQ(after.end, before.end);
    EXPECT_EQ(document.made.end, before.end);
    EXPECT_EQ(documentOf(made->connection()), text) << "the same to the byte, however often";
}

TEST_F(Document, ComesBackWhateverIsTypedIntoIt)
{
    TempStore store;
    const Hangar hangar{store.records()};
    for (const char* text : {"\"quoted\\\" \x01\x1f\x7f\t\n", "\xEF\xBB\xBFmarked",
                             "\xF0\x9F\x9B\xA9 \xC5\x81\xE2\x80\xAE", "</script>\\u0041", "  "}) {
        StoreFile::Connection& file = store.file().connection();
        byHand(file, "coupling", "UPDATE coupling SET note = ?",
               {QString{QChar{0xFEFF}} + QString::fromUtf8(text)});
        ASSERT_TRUE(read(documentOf(file), CarryWhat::AllAsFound).made.isMade);
        EXPECT_EQ(contentOf(at("new")), contentOf(file)) << text;
        fs::remove(at("new"));
    }
}

TEST_F(Document, NeverStandsInPlaceOfAFileThatIsThere)
{
    std::ofstream{at("new")} << "mine";
    const auto made = readDocument(readFrom("{}"), at("new"), CarryWhat::WhatHolds);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.problem().kind, ProblemKind::FileExists);
    EXPECT_EQ(fileText(at("new")), "mine");
}

TEST_F(Document, StopsWhereThereIsNoMoreRoom)
{
    TempStore store;
    const Hangar hangar{store.records()};
    int pieces = 0;
    const Outcome written =
        writeDocument(store.file().connection(), [&pieces](std::string_view) { return ++pieces < 5; });
    ASSERT_FALSE(written);
    EXPECT_EQ(written.problem().kind, ProblemKind::DiskFull);
}

TEST_F(Document, FitsItsSchema)
{
    const Json schema = Json::parse(documentSchema());
    EXPECT_EQ(Validator{schema}.problem(Json::parse(demoDocument())), "");
}

TEST_F(Document, HasTheSchemaThatIsCommitted)
{
    EXPECT_EQ(fileText(kSchemaFile), documentSchema())
        << "To renew it: exchange_tests --gtest_also_run_disabled_tests --gtest_filter=*WritesItsSchema*";
}

TEST_F(Document, DISABLED_WritesItsSchema)
{
    std::ofstream{kSchemaFile, std::ios::binary} << documentSchema();
}

TEST_F(ChangedDocument, IsReadAsLongAsNothingIsChanged)
{
    EXPECT_TRUE(read(inOrder(document)).made.isMade);
}

TEST_F(ChangedDocument, IsHeldAgainstItsSchemaByEachKeyword)
{
    const Json schema = Json::parse(documentSchema());
    const auto problem = [&](const char* pointer, const Json& value) {
        Json changed = document;
        changed[Json::json_pointer{pointer}] = value;
        return Validator{schema}.problem(changed);
    };
    EXPECT_EQ(problem("/format", "other"), "/format: const");
    EXPECT_EQ(problem("/facts/reading/3/enters_um", "450"), "/facts/reading/3/enters_um: type");
    EXPECT_EQ(problem("/facts/reading/3/enters_um", -1), "/facts/reading/3/enters_um: minimum");
    EXPECT_EQ(problem("/facts/reading/3/state", "well"), "/facts/reading/3/state: enum");
    EXPECT_EQ(problem("/facts/reading/3/id", "7"), "/facts/reading/3/id: pattern");
    EXPECT_EQ(problem("/facts/reading/3/more", 1), "/facts/reading/3: additionalProperties");
    EXPECT_EQ(problem("/facts/reading/3", Json::object()), "/facts/reading/3: required");
    EXPECT_EQ(problem("/facts/coupling/0/in_use", 1), "/facts/coupling/0/in_use: type");
}

TEST_F(ChangedDocument, IsRefusedWithoutAKey)
{
    aReading().erase("enters_um");
    expectAtReading(DocumentProblem::MissingKey, "enters_um");
    aReading().erase("id");
    expect(DocumentProblem::MissingKey, "reading", "", "id");
    document.erase("chain");
    document["facts"] = Json::object();
    expect(DocumentProblem::MissingKey, "", "", "chain");
}

TEST_F(ChangedDocument, IsRefusedWithAKeyOrAKindThatNobodyKnows)
{
    aReading()["colour"] = "red";
    expectAtReading(DocumentProblem::UnknownKey, "colour");
    aReading().erase("colour");
    document["facts"]["wheel"] = Json::array();
    expect(DocumentProblem::UnknownKind, "", "", "wheel");
    document["facts"].erase("wheel");
    document["more"] = 1;
    expect(DocumentProblem::UnknownKey, "", "", "more");
}

TEST_F(ChangedDocument, IsRefusedWithAKindOfALaterLayoutThanItSaysItHas)
{
    document["layout"] = 13;
    expect(DocumentProblem::LaterLayout, "", "", "name_replaced");
    EXPECT_EQ(refused().named, "13");
    document["facts"].erase("name_replaced");
    EXPECT_TRUE(read(inOrder(document)).made.isMade) << "it is one of that layout now";
}

TEST_F(ChangedDocument, SaysOfAVersionThatWasMadeOneOfSomethingElseThatItWasAndNotThatItIsGone)
{
    document["facts"]["person"][0]["subject"] = document["facts"]["person"][1]["subject"];
    expect(DocumentProblem::OtherSubject, "person", person, "subject");
}

TEST_F(ChangedDocument, IsRefusedWithATieOfEndsOnWhichNothingStands)
{
    const Json last = document["chain"]["link"].back();
    document["chain"]["tie"] = Json::array(
        {{{"before", std::string(64, 'a')}, {"hash", last["hash"]}, {"sequence", last["sequence"]}}});
    expect(DocumentProblem::LostReference, "tie", "", "before");
    EXPECT_TRUE(read(inOrder(document), CarryWhat::AllAsFound).made.isMade);
}

TEST_F(ChangedDocument, IsRefusedWithAKeyThatIsWrittenInAnotherWayASecondTime)
{
    std::string text = inOrder(document);
    const std::string once = "\"enters_um\":";
    text.insert(text.find(once), "\"enters_\\u0075m\":450,");
    EXPECT_EQ(refusal(text).problem, DocumentProblem::KeyTwice);
    EXPECT_EQ(refusal(inOrder(document) + "{}").problem, DocumentProblem::NotJson)
        << "a second one behind it";
}

TEST_F(ChangedDocument, IsRefusedWithAValueOfAnotherType)
{
    const auto expectType = [this](const char* key, const Json& value) {
        const Json before = aReading().contains(key) ? aReading()[key] : Json{};
        aReading()[key] = value;
        expectAtReading(DocumentProblem::WrongType, key);
        before.is_null() ? static_cast<void>(aReading().erase(key))
                         : static_cast<void>(aReading()[key] = before);
    };
    expectType("enters_um", "450");
    expectType("enters_um", 450.5);
    expectType("enters_um", true);
    expectType("enters_um", nullptr);
    expectType("enters_um", Json::array());
    expectType("enters_um", Json::object());
    expectType("note", 7);
    expectType("coupling", "left");
    document["facts"]["reading"] = 7;
    EXPECT_EQ(refused().problem, DocumentProblem::WrongType);
    document["facts"]["reading"] = Json::array({7});
    expect(DocumentProblem::WrongType, "reading", "", "reading");
    document["facts"] = 7;
    expect(DocumentProblem::WrongType, "", "", "facts");
}

TEST_F(ChangedDocument, IsRefusedWithAFigureOutOfItsRange)
{
    for (const char* figure : {"-1", "10000001", "99999999999999999999", "1e300", "1e999"}) {
        aReading()["enters_um"] = "HERE";
        std::string text = inOrder(document);
        text.replace(text.find("\"HERE\""), 6, figure);
        const DocumentFault fault = refusal(text);
        EXPECT_EQ(fault.problem, DocumentProblem::OutOfRange) << figure;
        EXPECT_EQ(fault.kind, "reading");
        EXPECT_EQ(fault.key, "enters_um");
    }
    aReading()["enters_um"] = 0;
    aReading()["refuses_um"] = 0;
    expectAtReading(DocumentProblem::CannotStand, "");
    aReading().erase("refuses_um");
    aReading()["note"] = std::string(100'001, 'a');
    expectAtReading(DocumentProblem::OutOfRange, "note");
}

TEST_F(ChangedDocument, IsRefusedWithAWordOrADayThatIsNone)
{
    aReading()["state"] = "well";
    expectAtReading(DocumentProblem::UnknownWord, "state");
    document["facts"]["fitting"][0]["begins"] = "2026-02-30";
    expect(DocumentProblem::NotADay, "fitting", document["facts"]["fitting"][0]["id"], "begins");
}

TEST_F(ChangedDocument, IsRefusedWithAFactThatStandsInItTwice)
{
    document["facts"]["reading"].push_back(aReading());
    expectAtReading(DocumentProblem::IdTwice, "");
    document["facts"]["reading"].erase(document["facts"]["reading"].size() - 1);
    std::string text = inOrder(document);
    text.replace(text.find("\"enters_um\""), 11, "\"note\":\"\",\"note\"");
    EXPECT_EQ(refusal(text).problem, DocumentProblem::KeyTwice);
}

TEST_F(ChangedDocument, IsRefusedWhereAFactNamesWhatIsNotInIt)
{
    document["facts"]["gauge"] = Json::array();
    const DocumentFault fault = refused();
    EXPECT_EQ(fault.problem, DocumentProblem::LostReference);
    EXPECT_EQ(fault.kind, "reading");
    EXPECT_EQ(fault.key, "gauge");
    EXPECT_EQ(fault.named, "gauge");
    EXPECT_FALSE(fault.id.empty());
}

TEST_F(ChangedDocument, IsRefusedWhereItsChainIsBrokenAndTakenAllTheSameAsFound)
{
    aReading()["note"] = "changed in the document";
    const DocumentRead refused = read(inOrder(document));
    EXPECT_FALSE(refused.made.isMade);
    ASSERT_EQ(refused.made.chain.faults, 1);
    EXPECT_EQ(refused.made.chain.told.front().fault, ChainFault::Changed);
    EXPECT_EQ(textOf(refused.made.chain.told.front().fact), reading);
    EXPECT_TRUE(fs::is_empty(folder.path()));
    const DocumentRead taken = read(inOrder(document), CarryWhat::AllAsFound);
    EXPECT_TRUE(taken.made.isMade);
    EXPECT_EQ(must(must(OtherFile::read(at("new"), at("new")))->lookAtChain()).faults, 1)
        << "and is told for ever";
}

TEST_F(ChangedDocument, IsRefusedWithoutALinkOrWithAnother)
{
    document["chain"]["link"].erase(2);
    EXPECT_GT(read(inOrder(document)).made.chain.faults, 0);
    EXPECT_TRUE(fs::is_empty(folder.path()));
    document["chain"]["link"][1]["hash"] = std::string(64, '0');
    EXPECT_GT(read(inOrder(document)).made.chain.faults, 0);
    document["chain"]["link"][1]["hash"] = std::string(63, '0');
    expect(DocumentProblem::WrongType, "link", "", "hash");
}

TEST_F(ChangedDocument, IsRefusedWhereItsHeadIsNotOurs)
{
    for (const char* text :
         {"", " ", "[]", "7", "\"rigband\"", "{}", "{\"facts\":{}}", "{\"format\":\"other\"}",
          "{\"version\":1,\"format\":\"rigband\"}", "{\"format\":7}", "null"}) {
        const DocumentProblem problem = refusal(text).problem;
        EXPECT_TRUE(problem == DocumentProblem::NotOurs || problem == DocumentProblem::EndsEarly) << text;
    }
    document["version"] = kDocumentVersion + 1;
    EXPECT_EQ(refused().problem, DocumentProblem::Newer);
    document["version"] = kDocumentVersion;
    document["layout"] = carriedLayout() + 1;
    EXPECT_EQ(refused().problem, DocumentProblem::Newer);
    document["layout"] = kFirstDocumentLayout - 1;
    EXPECT_EQ(refused().problem, DocumentProblem::OutOfRange);
}

TEST_F(ChangedDocument, IsRefusedWhereverItIsCutOff)
{
    const std::string text = inOrder(document);
    for (std::size_t size = 0; size < text.size(); size += 1009) {
        const DocumentFault fault = refusal(std::string_view{text}.substr(0, size));
        EXPECT_EQ(fault.problem, DocumentProblem::EndsEarly) << size;
    }
}

TEST_F(Document, IsRefusedAtOnceWhereItIsNestedDeeplyOrNothingButCommas)
{
    const std::string deep(200'000, '[');
    EXPECT_EQ(refusal(deep).problem, DocumentProblem::NotOurs);
    const std::string head = R"({"format":"rigband","version":1,"layout":13,"facts":{"person":[)";
    EXPECT_EQ(refusal(head + deep).problem, DocumentProblem::WrongType);
    EXPECT_EQ(refusal(head + "{\"name\":" + deep).problem, DocumentProblem::WrongType);
    std::int64_t given = 0;
    const auto commas = must(readDocument(
        [&given](char* into, std::size_t most) -> std::int64_t {
            if (given > 200'000'000)
                return 0;
            given += static_cast<std::int64_t>(most);
            std::fill(into, into + most, ',');
            return static_cast<std::int64_t>(most);
        },
        at("new"), CarryWhat::WhatHolds));
    EXPECT_EQ(commas.fault.problem, DocumentProblem::NotJson);
    EXPECT_LT(given, 1'000'000) << "read no further than it takes to know";
    EXPECT_TRUE(fs::is_empty(folder.path()));
}

TEST_F(Document, HoldsNoTextThatIsLongerThanAnyMayBe)
{
    const std::string head = R"({"format":"rigband","version":1,"layout":13,"facts":{"person":[{"name":)";
    for (const char* filling : {"a", "1", "\\\"", "\\\\"}) {
        std::int64_t given = 0;
        std::string first = head + (*filling == '1' ? "" : "\"");
        const auto document = must(readDocument(
            [&](char* into, std::size_t most) -> std::int64_t {
                if (given == 0) {
                    given += static_cast<std::int64_t>(first.size());
                    return static_cast<std::int64_t>(first.copy(into, most));
                }
                const std::size_t size = most / 2 * 2;
                for (std::size_t i = 0; i < size; ++i)
                    into[i] = filling[i % std::string_view{filling}.size()];
                given += static_cast<std::int64_t>(size);
                return given < 200'000'000 ? static_cast<std::int64_t>(size) : 0;
            },
            at("new"), CarryWhat::WhatHolds));
        EXPECT_EQ(document.fault.problem, DocumentProblem::TooLong) << filling;
        EXPECT_LT(given, 10'000'000) << filling;
    }
}

TEST_F(Document, SaysWhereReadingFailed)
{
    const auto document = must(
        readDocument([](char*, std::size_t) { return std::int64_t{-1}; }, at("new"), CarryWhat::WhatHolds));
    EXPECT_EQ(document.fault.problem, DocumentProblem::CannotRead);
}

TEST_F(Document, OfAFileThatAnotherProgramChangedIsRefusedWhereSomethingCannotStand)
{
    TempStore store;
    const Hangar hangar{store.records()};
    takeTwelve(store, hangar);
    StoreFile::Connection& file = store.file().connection();
    byHand(file, "reading", "UPDATE reading SET technique = 'well'");
    const Outcome written = writeDocument(file, [](std::string_view) { return true; });
    ASSERT_FALSE(written);
    EXPECT_EQ(written.problem().kind, ProblemKind::DamagedFile);
    EXPECT_TRUE(written.problem().detail.ends_with(": technique")) << written.problem().detail;
}
