#include "app/calc/answer.h"

namespace rig::calc {

namespace {

using nlohmann::json;

// Before it is parsed: the parser goes as deep as the text does, until its memory ends.
bool isTooDeep(std::string_view text)
{
    int depth = 0;
    bool inString = false;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const char c = text[at];
        if (inString && c == '\\')
            ++at;
        else if (c == '"')
            inString = !inString;
        else if (!inString && (c == '[' || c == '{') && ++depth > kDeepest)
            return true;
        else if (!inString && (c == ']' || c == '}'))
            --depth;
    }
    return false;
}

// A discarded value when the text is not JSON.
json parsed(std::string_view text, Answered& answered)
{
    try {
        return json::parse(text);
    } catch (const json::exception& exception) { // the only place that says where the text breaks
        answered.complaints.push_back(std::string{"the input is not JSON: "} + exception.what());
        return json(json::value_t::discarded);
    }
}

Output answerCase(const Kind& kind, const json& oneCase, std::size_t index, Answered& answered)
{
    static const json kNothing;
    const bool isObject = oneCase.is_object();
    const json& id = isObject && oneCase.contains("id") ? oneCase["id"] : kNothing;
    CaseInput input{isObject && oneCase.contains("input") ? oneCase["input"] : kNothing};
    Output output = input.isGood() ? kind.answer(input) : Output{};
    if (input.isGood())
        return {{"id", id}, {"output", output}};
    answered.complaints.push_back("case " + std::to_string(index) + " (" + id.dump() + "): " + input.error());
    return {{"id", id}, {"error", input.error()}};
}

} // namespace

Answered answerText(const Kind& kind, std::string_view text)
{
    Answered answered;
    const auto refused = [&answered](std::string why) {
        answered.complaints.push_back(std::move(why));
        return answered;
    };
    if (text.size() > kMostBytes)
        return refused("the input is longer than " + std::to_string(kMostBytes) + " bytes");
    if (isTooDeep(text))
        return refused("the input has more than " + std::to_string(kDeepest) + " lists within one another");
    const json document = parsed(text, answered);
    if (document.is_discarded())
        return answered;
    if (!document.is_object() || !document.contains("cases") || !document["cases"].is_array())
        return refused("the input has no list \"cases\"");
    Output cases = Output::array();
    for (const json& oneCase : document["cases"])
        cases.push_back(answerCase(kind, oneCase, cases.size(), answered));
    answered.json = Output{{"cases", cases}}.dump(1);
    return answered;
}

} // namespace rig::calc
