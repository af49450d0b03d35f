// A demonstration damaged in many ways: what is salvaged of it can be reviewed and reported to the end.

#include "app/report/review_report.h"
#include "core/demo/demo.h"
#include "core/exchange/review_tables.h"
#include "core/review/record_summary.h"
#include "core/store/airframe_facts.h"
#include "core/store/inspection.h"
#include "tests/support/temp_store.h"

#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <random>

using namespace rig;
using namespace rig::test;

namespace {

std::string bytesIn(const std::string& path)
{
    std::ifstream file{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{file}, {}};
}

// One of the things that befall a file: pages of noise, bytes that flipped, an end that is missing.
std::string damaged(std::string bytes, std::mt19937& random)
{
    const auto below = [&random](std::size_t most) { return random() % most; };
    constexpr std::size_t kPage = 4096;
    switch (below(4)) {
    case 0:
        bytes.resize(bytes.size() / 2 + below(bytes.size() / 2));
        break;
    case 1:
        for (std::size_t pages = 1 + below(4); pages > 0; --pages)
            bytes.replace((1 + below(bytes.size() / kPage - 1)) * kPage, kPage, kPage, '\xA5');
        break;
    case 2: // within rows, where nothing shows that it is damaged
        for (std::size_t flips = 1 + below(400); flips > 0; --flips)
            bytes[2 * kPage + below(bytes.size() - 2 * kPage)] ^= static_cast<char>(1U << below(8));
        break;
    default:
        for (std::size_t pages = 1 + below(6); pages > 0; --pages)
            std::copy_n(
                bytes.begin() + static_cast<std::ptrdiff_t>((1 + below(bytes.size() / kPage - 1)) * kPage),
                kPage,
                bytes.begin() + static_cast<std::ptrdiff_t>((1 + below(bytes.size() / kPage - 1)) * kPage));
    }
    return bytes;
}

// Everything that is made of a file: whatever ends the program fails here.
void tellAll(const std::string& path, std::size_t way)
{
    FixedClock clock;
    clock.set(dayOf(2026, 10, 31));
    IdSource ids{1};
    const auto file = must(StoreFile::open(path, OpenAs::ToLook, clock));
    const Records records{*file, ids, clock};
    const auto found = findingsIn(file->connection(), clock.now());
    ASSERT_TRUE(found);
    for (const Finding& finding : found.value())
        EXPECT_NE(finding.kind, FindingKind::Unreadable) << finding.table << ' ' << finding.about;
    const Day today = clock.now().localDay();
    const std::vector<Airframe> airframes = must(records.airframes());
    for (const Airframe& airframe : airframes) {
        AirframeFacts facts = must(factsOf(records, airframe.id));
        must(readContents(records, facts));
        const auto people = must(personStandingsOn(records, facts, today));
        if (!facts.riggingRecords.empty())
            summaryOf(facts, must(records.content(facts.riggingRecords.back().id)), people);
        if (airframe.id != airframes[way % airframes.size()].id)
            continue; // a review of each takes a minute
        const AirframeReview review = airframeReviewOf(facts, reviewPeriods(facts, today).front());
        EXPECT_FALSE(reviewBlocks(facts, review).empty());
        EXPECT_FALSE(reviewTables(facts, review).empty());
    }
}

TEST(Salvaged, OfADozenDamagedDemonstrationsIsToldToTheEnd)
{
    const TempFolder folder;
    const FixedClock clock;
    const std::string whole = folder.file("whole.rigband");
    must(buildDemo(*must(StoreFile::open(whole, OpenAs::New, clock)), demo::Language::English));
    const std::string bytes = bytesIn(whole);
    std::mt19937 random{20261130};
    int salvaged = 0;
    for (std::size_t way = 0; way < 12; ++way) {
        SCOPED_TRACE(way);
        const std::string bad = folder.file("bad.rigband");
        std::ofstream{bad, std::ios::binary | std::ios::trunc} << damaged(bytes, random);
        const std::string into = folder.file(std::to_string(way) + ".rigband");
        const auto told = StoreFile::salvage(bad, into, clock);
        EXPECT_EQ(static_cast<bool>(told), std::filesystem::exists(into));
        if (!told)
            continue; // nothing in it could be read
        ++salvaged;
        tellAll(into, way);
    }
    EXPECT_GT(salvaged, 8);
}

} // namespace
