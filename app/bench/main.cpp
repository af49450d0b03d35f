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
        "               takes too long (some minutes and a gigabyte of temporary space; --small: seconds)\n",
        where);
    return where == stdout ? 0 : 2;
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
    if (argc == 2 && what == "--version") {
        std::puts("rigband-bench " RIGBAND_VERSION);
        return 0;
    }
    if (what == "compute" && argc == 2) {
        rig::bench::printTimes();
        return 0;
    }
    if (what == "pictures" && argc == 2)
        return rig::bench::printPictureTimes(argc, argv) ? 0 : 1;
    const bool isSmall = argc == 3 && std::string_view{argv[2]} == "--small";
    if (what == "pages" && (argc == 2 || isSmall))
        return rig::bench::printPageTimes(argc, argv, isSmall) ? 0 : 1;
    const std::optional<int> seasons = argc == 3 ? countIn(argv[2]) : kSeasons;
    if (what == "seasons" && argc <= 3 && seasons)
        return rig::bench::printSeasons(*seasons) ? 0 : 1;
    const std::optional<int> baselines = argc == 3 ? countIn(argv[2]) : kBaselines;
    if (what != "calibration" || argc > 3 || !baselines)
        return explain(stderr);
    rig::bench::printCoverage(*baselines);
    rig::bench::printRunChart(*baselines);
    return 0;
}
