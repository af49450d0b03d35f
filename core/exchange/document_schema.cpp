#include "core/exchange/document.h"
#include "core/exchange/document_cells.h"

#include <algorithm>
#include <limits>
#include <nlohmann/json.hpp>
#include <utility>

namespace rig {

namespace {

using Json = nlohmann::ordered_json;

Json referenceTo(const char* definition)
{
    return {{"$ref", std::string{"#/$defs/"} + definition}};
}

// Of whole and other numbers; what has no end has none.
Json numberOf(const char* type, const Range& range)
{
    Json number{{"type", type}};
    if (range.least != std::numeric_limits<std::int64_t>::min())
        number["minimum"] = range.least;
    if (range.most != std::numeric_limits<std::int64_t>::max())
        number["maximum"] = range.most;
    return number;
}

// A file counts bytes and JSON Schema characters, of which there are never more.
Json textOfRange(const Range& range)
{
    Json text{{"type", "string"}};
    if (range.least > 0)
        text["minLength"] = 1;
    text["maxLength"] = range.most;
    return text;
}

// Two kinds may share a word.
Json wordsOf(const ColumnInfo& column)
{
    Json words = Json::array();
    for (int i = 0; !column.word(i).empty(); ++i) {
        const Json word = std::string{column.word(i)};
        if (std::find(words.begin(), words.end(), word) == words.end())
            words.push_back(word);
    }
    return Json{{"enum", std::move(words)}};
}

Json pictureOf(const Range& range)
{
    const std::int64_t most = (range.most + 2) / 3 * 4;
    return {{"type", "string"}, {"contentEncoding", "base64"}, {"minLength", 4}, {"maxLength", most}};
}

Json cellOf(const ColumnInfo& column)
{
    switch (writtenAs(column)) {
    case WrittenAs::YesOrNo:
        return {{"type", "boolean"}};
    case WrittenAs::WholeNumber:
        return numberOf("integer", column.range);
    case WrittenAs::Number:
        return numberOf("number", column.range);
    case WrittenAs::Word:
        return wordsOf(column);
    case WrittenAs::Date:
        return referenceTo("day");
    case WrittenAs::Id:
        return referenceTo("id");
    case WrittenAs::Hash:
        return referenceTo("hash");
    case WrittenAs::Picture:
        return pictureOf(column.range);
    case WrittenAs::Text:
        break;
    }
    return textOfRange(column.range);
}

Json objectOf(Json properties, Json required)
{
    Json object{{"type", "object"}, {"properties", std::move(properties)}};
    object["required"] = std::move(required);
    object["additionalProperties"] = false;
    return object;
}

Json rowOf(const CarriedTable& table)
{
    Json properties = Json::object();
    Json required = Json::array();
    for (const ColumnInfo& column : table.columns) {
        properties[column.name] = cellOf(column);
        if (!column.mayBeEmpty)
            required.push_back(column.name);
    }
    for (const CarriedTable& belonging : table.belonging)
        properties[belonging.name] =
            belonging.isList ? Json{{"type", "array"}, {"items", cellOf(belonging.columns.front())}}
                             : rowOf(belonging);
    return objectOf(std::move(properties), std::move(required));
}

Json sectionOf(const DocumentSection& section)
{
    Json properties = Json::object();
    for (const CarriedTable& table : section.tables())
        properties[table.name] = {{"type", "array"}, {"items", referenceTo(table.name.c_str())}};
    return objectOf(std::move(properties), Json::array());
}

Json definitions()
{
    Json all{{"id", {{"type", "string"}, {"pattern", "^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$"}}},
             {"hash", {{"type", "string"}, {"pattern", "^[0-9a-f]{64}$"}}},
             {"day", {{"type", "string"}, {"pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"}}}};
    for (const DocumentSection& section : kDocumentSections)
        for (const CarriedTable& table : section.tables())
            all[table.name] = rowOf(table);
    return all;
}

} // namespace

std::string documentSchema()
{
    Json properties{
        {"format", {{"const", kDocumentFormat}}},
        {"version", {{"const", kDocumentVersion}}},
        {"layout", {{"type", "integer"}, {"minimum", kFirstDocumentLayout}, {"maximum", carriedLayout()}}}};
    Json required{"format", "version", "layout"};
    for (const DocumentSection& section : kDocumentSections) {
        properties[section.name] = sectionOf(section);
        required.push_back(section.name);
    }
    Json schema{{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                {"title", "A Rigband file as one document"}};
    schema.update(objectOf(std::move(properties), std::move(required)));
    schema["$defs"] = definitions();
    return schema.dump(1) + '\n';
}

} // namespace rig
