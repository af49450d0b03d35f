// rigband-calc WHAT < in.json > out.json: the numbers without a window, for scripts and checks
// (docs/method.md).

#include "app/calc/answer.h"

#include <algorithm>
#include <array>
#include <iostream>
#include <string>

namespace {

using rig::calc::Kind;

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

// No more than tells that it is too much.
std::string readAll(std::istream& in)
{
    std::string text;
    std::array<char, 1 << 16> part{};
    while (text.size() <= rig::calc::kMostBytes && (in.read(part.data(), part.size()) || in.gcount() > 0))
        text.append(part.data(), static_cast<std::size_t>(in.gcount()));
    return text;
}

int run(const Kind& kind, const std::string& text)
{
    const rig::calc::Answered answered = rig::calc::answerText(kind, text);
    for (const std::string& complaint : answered.complaints)
        complain(complaint);
    if (answered.json.empty())
        return kWrongInput;
    std::cout << answered.json << '\n';
    std::cout.flush();
    if (!std::cout) {
        complain("the answer could not be written");
        return kWrongInput;
    }
    return answered.isWhole() ? kAnswered : kWrongInput;
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
    return run(*kind, readAll(std::cin));
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
