// rigband-bench calibration [BASELINES] | seasons [SEASONS] | compute | pictures | pages [--small]: the
// figures that the docs state, made again.

#include "app/bench/tables.h"

#include <charconv>
#include <cstdio>
#include <optional>
#include <string_view>

namespace {

constexpr int kBaselines = 2000; // a row
constexpr int kSeasons = 500;    // a column
constexpr int kMostBaselines = 1'000'000;

// How the program ends.
constexpr int kMet = 0;
constexpr int kMissed = 1;
constexpr int kBadUse = 2;

int explain(std::FILE* where)
{
    std::fputs(
        "usage: rigband-bench calibration [BASELINES] | seasons [SEASONS] | compute | pictures | pages "
        "[--small]\n"
        "  calibration  content of bands, false alarms and finds of drift, over invented couplings\n"
        "               (BASELINES a row, 10 to 1000000; 2000 when left out: some minutes)\n"
        "  seasons      what is told of invented seasons beside its goals; fails when one is missed\n"
        "               (SEASONS a column, 10 to 1000000; 500 when left out: some minutes)\n"
        "  compute      median times beside their goals\n"
        "  pictures     times of drawing long histories; fails when a pan frame takes too long\n"
        "  pages        times of keys, opening and pages on large files made for it; fails when one\n"
        "               takes too long (some minutes and a gigabyte of temporary space; --small: seconds)\n"
        "       rigband-bench --help | --version\n"
        "Ends with 0 when all was done and every goal is met; with 1 when a goal is missed; with 2 when the\n"
        "command was not understood.\n",
        where);
    return where == stdout ? kMet : kBadUse;
}

// The first option that is none of ours; empty where there is none.
std::string_view unknownOption(int argc, char** argv)
{
    for (int i = 1; i < argc; ++i)
        if (const std::string_view one = argv[i]; one.starts_with('-') && one != "--small")
            return one;
    return {};
}

std::optional<int> countIn(std::string_view text)
{
    int count = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), count);
    const bool isWhole = error == std::errc{} && end == text.data() + text.size();
    return isWhole && count >= 10 && count <= kMostBaselines ? std::optional{count} : std::nullopt;
}

} // namespace

int main(int argc, char** argv)
{
    const std::string_view what = argc > 1 ? argv[1] : "";
    if (argc == 2 && (what == "--help" || what == "-h"))
        return explain(stdout);
    if (argc == 2 && (what == "--version" || what == "-v")) {
        std::puts("rigband-bench " RIGBAND_VERSION);
        return kMet;
    }
    if (const std::string_view unknown = unknownOption(argc, argv); !unknown.empty()) {
        std::fprintf(stderr, "There is no option \"%.*s\".\n", static_cast<int>(unknown.size()),
                     unknown.data());
        return explain(stderr);
    }
    if (what == "compute" && argc == 2) {
        rig::bench::printTimes();
        return kMet;
    }
    if (what == "pictures" && argc == 2)
        return rig::bench::printPictureTimes(argc, argv) ? kMet : kMissed;
    const bool isSmall = argc == 3 && std::string_view{argv[2]} == "--small";
    if (what == "pages" && (argc == 2 || isSmall))
        return rig::bench::printPageTimes(argc, argv, isSmall) ? kMet : kMissed;
    const std::optional<int> seasons = argc == 3 ? countIn(argv[2]) : kSeasons;
    if (what == "seasons" && argc <= 3 && seasons)
        return rig::bench::printSeasons(*seasons) ? kMet : kMissed;
    const std::optional<int> baselines = argc == 3 ? countIn(argv[2]) : kBaselines;
    if (what != "calibration" || argc > 3 || !baselines)
        return explain(stderr);
    rig::bench::printCoverage(*baselines);
    rig::bench::printRunChart(*baselines);
    return kMet;
}
