// rigband-calc WHAT < in.json > out.json: the numbers without a window, for scripts and checks
// (docs/method.md).

#include "app/calc/kinds.h"

#include <algorithm>
#include <array>
#include <iostream>
#include <optional>
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

constexpr std::size_t kMostBytes = 50'000'000;
constexpr int kDeepest = 64; // lists and objects within one another; a case has five

// Before it is parsed: the parser goes as deep as the text does, until its memory ends.
bool isTooDeep(const std::string& text)
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

// Empty when there is more than may be read.
std::optional<std::string> readAll(std::istream& in)
{
    std::string text;
    std::array<char, 1 << 16> part{};
    while (in.read(part.data(), part.size()) || in.gcount() > 0) {
        text.append(part.data(), static_cast<std::size_t>(in.gcount()));
        if (text.size() > kMostBytes)
            return std::nullopt;
    }
    return text;
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
    const std::string usage = "usage: rigband-calc WHAT < in.json > out.json\n"
                              "       rigband-calc --help | --version\n"
                              "WHAT is one of: " +
                              knownKinds() +
                              ".\n"
                              "Ends with 0 when every case was answered; with 2 when one was not, which says "
                              "why in its place, or\nwhen the input or the command was not understood.";
    const std::string what = argc == 2 ? argv[1] : "";
    const auto option =
        std::find_if(argv + std::min(argc, 1), argv + argc, [](const char* one) { return *one == '-'; });
    if (what == "--help" || what == "-h") {
        std::cout << usage << '\n';
        return kAnswered;
    }
    if (what == "--version" || what == "-v") {
        std::cout << "rigband-calc " RIGBAND_VERSION "\n";
        return kAnswered;
    }
    if (what.empty() || what.starts_with('-')) {
        complain(option == argv + argc ? "name one thing to work out"
                                       : std::string{"there is no option '"} + *option + "'");
        std::cerr << usage << '\n';
        return kWrongInput;
    }
    const auto kinds = rig::calc::kinds();
    const auto kind = std::ranges::find(kinds, what, &Kind::name);
    if (kind == kinds.end()) {
        complain("unknown kind '" + what + "'; known are: " + knownKinds());
        return kWrongInput;
    }
    const std::optional<std::string> text = readAll(std::cin);
    if (!text)
        complain("the input is longer than " + std::to_string(kMostBytes) + " bytes");
    else if (isTooDeep(*text))
        complain("the input has more than " + std::to_string(kDeepest) + " lists within one another");
    else
        return run(*kind, *text);
    return kWrongInput;
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
