// rigband-calc WHAT < in.json > out.json: the numbers without a window, for scripts and checks
// (docs/method.md).

#include "app/calc/kinds.h"

#include <algorithm>
#include <iostream>
#include <sstream>
#include <string>

namespace {

using nlohmann::json;
using rig::calc::CaseInput;
using rig::calc::Kind;
using rig::calc::Output;

constexpr int kAnswered = 0;
constexpr int kWrongInput = 2;

void complain(const std::string& what)
{
    std::cerr << "rigband-calc: " << what << '\n';
}

std::string knownKinds()
{
    std::string names;
    for (const Kind& kind : rig::calc::kinds())
        names += (names.empty() ? "" : ", ") + std::string{kind.name};
    return names;
}

// A discarded value when the text is not JSON.
json parsed(const std::string& text)
{
    try {
        return json::parse(text);
    } catch (const json::exception& exception) { // the only place that says where the text breaks
        complain(std::string{"the input is not JSON: "} + exception.what());
        return json(json::value_t::discarded);
    }
}

// Answers one case; `status` becomes kWrongInput when it cannot be.
Output answered(const Kind& kind, const json& oneCase, std::size_t index, int& status)
{
    static const json kNothing;
    const bool isObject = oneCase.is_object();
    const json& id = isObject && oneCase.contains("id") ? oneCase["id"] : kNothing;
    CaseInput input{isObject && oneCase.contains("input") ? oneCase["input"] : kNothing};
    Output output = input.isGood() ? kind.answer(input) : Output{};
    if (input.isGood())
        return {{"id", id}, {"output", output}};
    complain("case " + std::to_string(index) + " (" + id.dump() + "): " + input.error());
    status = kWrongInput;
    return {{"id", id}, {"error", input.error()}};
}

int run(const Kind& kind, const std::string& text)
{
    const json document = parsed(text);
    if (document.is_discarded())
        return kWrongInput;
    if (!document.is_object() || !document.contains("cases") || !document["cases"].is_array()) {
        complain("the input has no list \"cases\"");
        return kWrongInput;
    }
    int status = kAnswered;
    Output cases = Output::array();
    for (const json& oneCase : document["cases"])
        cases.push_back(answered(kind, oneCase, cases.size(), status));
    std::cout << Output{{"cases", cases}}.dump(1) << '\n';
    std::cout.flush();
    if (!std::cout) {
        complain("the answer could not be written");
        return kWrongInput;
    }
    return status;
}

int answer(int argc, char** argv)
{
    if (argc != 2) {
        complain("usage: rigband-calc WHAT < in.json > out.json; WHAT is one of: " + knownKinds());
        return kWrongInput;
    }
    const std::string what = argv[1];
    const auto kinds = rig::calc::kinds();
    const auto kind = std::ranges::find(kinds, what, &Kind::name);
    if (kind == kinds.end()) {
        complain("unknown kind '" + what + "'; known are: " + knownKinds());
        return kWrongInput;
    }
    std::ostringstream text;
    text << std::cin.rdbuf();
    return run(*kind, text.str());
}

} // namespace

int main(int argc, char** argv)
{
    try {
        return answer(argc, argv);
    } catch (const std::exception& exception) { // no memory left: said, not thrown
        complain(exception.what());
        return kWrongInput;
    }
}
