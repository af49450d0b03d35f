#include "core/review/conflicts.h"
#include "core/review/decided.h"
#include "core/review/lineage.h"
#include "tests/support/made_id.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

IdBytes idOf(int number)
{
    return madeId<FactId>(number).bytes;
}

Rival rival(ConflictKind kind, int number, const std::string& about = "it")
{
    return {kind, "table", about, idOf(number), SaveOrder{number, idOf(number)}};
}

Decision decision(ConflictKind kind, int first, int second, Holds holds, int savedAt = 100)
{
    Decision one;
    one.id.bytes = idOf(savedAt);
    one.kind = kind;
    one.first.bytes = idOf(first);
    one.second.bytes = idOf(second);
    one.holds = holds;
    one.stamp.when.utcSeconds = savedAt;
    return one;
}

using NumberPairs = std::vector<std::pair<int, int>>;

// By the numbers of their ids.
NumberPairs openAmong(std::vector<Rival> rivals, const std::vector<Decision>& decisions = {},
                      const std::set<std::pair<int, int>>& inOneFile = {})
{
    NumberPairs pairs;
    const auto areApart = [&](const IdBytes& one, const IdBytes& other) {
        return !inOneFile.contains({one[0], other[0]}) && !inOneFile.contains({other[0], one[0]});
    };
    for (const Conflict& conflict : openConflicts(std::move(rivals), decisions, areApart))
        pairs.emplace_back(conflict.first[0], conflict.second[0]);
    return pairs;
}

} // namespace

TEST(Conflicts, AreFactsOfOneKindAboutOneThing)
{
    using enum ConflictKind;
    const struct
    {
        const char* what;
        std::vector<Rival> rivals;
        std::set<std::pair<int, int>> inOneFile;
        NumberPairs open; // the one that counts first
    } table[] = {
        {"nothing", {}, {}, {}},
        {"one closing", {rival(Closings, 1)}, {}, {}},
        {"two closings", {rival(Closings, 2), rival(Closings, 1)}, {}, {{1, 2}}},
        {"of two records", {rival(Closings, 1, "a"), rival(Closings, 2, "b")}, {}, {}},
        {"of two kinds", {rival(Closings, 1), rival(Resolutions, 2)}, {}, {}},
        {"three resolutions",
         {rival(Resolutions, 1), rival(Resolutions, 2), rival(Resolutions, 3)},
         {},
         {{1, 2}, {1, 3}}},
        {"two corrections", {rival(Corrections, 1), rival(Corrections, 2)}, {}, {{1, 2}}},
        {"one name twice", {rival(Names, 1), rival(Names, 2)}, {}, {{1, 2}}},
        {"two records apart", {rival(Records, 1), rival(Records, 2)}, {}, {{1, 2}}},
        {"two records that one file knew", {rival(Records, 1), rival(Records, 2)}, {{1, 2}}, {}},
        {"three records, two of one file",
         {rival(Records, 1), rival(Records, 2), rival(Records, 3)},
         {{1, 2}},
         {{1, 3}, {2, 3}}},
        {"versions in one line",
         {rival(Versions, 1), rival(Versions, 2), rival(Versions, 3)},
         {{1, 2}, {1, 3}, {2, 3}},
         {}},
        {"two newest versions, the newer counts",
         {rival(Versions, 1), rival(Versions, 2), rival(Versions, 3)},
         {{1, 2}, {1, 3}},
         {{3, 2}}},
        {"of a line that was written apart only its last",
         {rival(Versions, 1), rival(Versions, 2), rival(Versions, 3), rival(Versions, 4)},
         {{1, 2}, {1, 3}, {1, 4}, {2, 3}},
         {{4, 3}}},
        {"the next version knows both",
         {rival(Versions, 2), rival(Versions, 3), rival(Versions, 4)},
         {{2, 4}, {3, 4}},
         {}},
    };
    for (const auto& row : table)
        EXPECT_EQ(openAmong(row.rivals, {}, row.inOneFile), row.open) << row.what;
}

TEST(Conflicts, AreOpenUntilSomebodyDecides)
{
    using enum ConflictKind;
    const std::vector<Rival> closings{rival(Closings, 1), rival(Closings, 2), rival(Closings, 3)};
    EXPECT_EQ(openAmong(closings, {decision(Closings, 1, 2, Holds::First)}), (NumberPairs{{1, 3}}));
    EXPECT_EQ(openAmong(closings, {decision(Closings, 1, 2, Holds::Second)}), (NumberPairs{{2, 3}}));
    EXPECT_EQ(openAmong(closings, {decision(Closings, 2, 1, Holds::First),
                                   decision(Closings, 3, 2, Holds::First, 101)}),
              NumberPairs{});
    const std::vector<Rival> names{rival(Names, 1), rival(Names, 2)};
    EXPECT_EQ(openAmong(names, {decision(Names, 2, 1, Holds::TwoThings)}), NumberPairs{})
        << "either way round";
    EXPECT_EQ(openAmong(names, {decision(Records, 1, 2, Holds::TwoThings)}), (NumberPairs{{1, 2}}))
        << "another question";
}

TEST(Decided, SetsAsideTheOtherAndTheLastDecisionCounts)
{
    const Decision first = decision(ConflictKind::Closings, 1, 2, Holds::First);
    const Decision later = decision(ConflictKind::Closings, 2, 1, Holds::First, 101);
    EXPECT_EQ(decidedBy(std::vector{first}).setAside, std::set{idOf(2)});
    for (const auto& both : {std::vector{first, later}, std::vector{later, first}})
        EXPECT_EQ(decidedBy(both).setAside, std::set{idOf(1)});
}

TEST(Decided, ReadsPersonsThatAreOneAsTheOneToldOfFirst)
{
    const auto same = [](int one, int other, int at) {
        return decision(ConflictKind::Names, one, other, Holds::OneThing, at);
    };
    const std::vector<Decision> chain{same(4, 3, 100), same(5, 2, 101), same(3, 2, 102)};
    const Decided decided = decidedBy(chain);
    for (const int one : {2, 3, 4, 5})
        EXPECT_EQ(decided.asRead(idOf(one)), idOf(2)) << one;
    EXPECT_EQ(decided.asRead(idOf(6)), idOf(6));
    std::vector<Decision> undone = chain;
    undone.push_back(decision(ConflictKind::Names, 2, 3, Holds::TwoThings, 103));
    EXPECT_EQ(decidedBy(undone).asRead(idOf(4)), idOf(3));
}

// 1 - 2 - 3 ------- 6 - 7     6 was saved after 3 and 5 had been joined
//      \- 4 - 5 ---/
TEST(Lineage, KnowsWhatStoodInTheFileWhenAFactWasSaved)
{
    const auto link = [](std::int64_t sequence, int fact, const char* before) {
        return LineageLink{sequence, std::to_string(fact), before, idOf(fact)};
    };
    const std::vector<LineageLink> links{link(1, 1, "0"), link(2, 2, "1"),   link(3, 3, "2"), link(3, 4, "2"),
                                         link(4, 5, "4"), link(5, 6, "3+5"), link(6, 7, "6")};
    const std::vector<LineageTie> ties{{"3+5", "3"}, {"3+5", "5"}};
    const Lineage lineage{links, ties};
    for (const auto& [fact, later] :
         NumberPairs{{1, 2}, {1, 7}, {2, 3}, {2, 5}, {3, 6}, {4, 5}, {4, 7}, {5, 7}}) {
        EXPECT_TRUE(lineage.stoodBefore(idOf(fact), idOf(later))) << fact << ' ' << later;
        EXPECT_FALSE(lineage.stoodBefore(idOf(later), idOf(fact))) << fact << ' ' << later;
    }
    for (const auto& [one, other] : NumberPairs{{3, 4}, {3, 5}})
        EXPECT_TRUE(lineage.areApart(idOf(one), idOf(other))) << one << ' ' << other;
    EXPECT_FALSE(lineage.areApart(idOf(3), idOf(9))) << "of what has no link nothing is known";
}

// 1 - 2 - (3) - 4 - 5     what stands in brackets is gone; after a slash another origin goes on
TEST(Lineage, PartsNothingWhereALinkIsGone)
{
    const struct
    {
        const char* what;
        std::vector<LineageLink> links;
        std::vector<LineageTie> ties;
    } table[] = {
        {"in one origin",
         {{1, "1", "0", idOf(1), idOf(90)},
          {2, "2", "1", idOf(2), idOf(90)},
          {4, "4", "3", idOf(4), idOf(90)}},
         {}},
        {"the last of an origin",
         {{1, "1", "0", idOf(1), idOf(90)},
          {2, "2", "1", idOf(2), idOf(90)},
          {4, "4", "3", idOf(4), idOf(91)}},
         {}},
        {"between two origins in turns",
         {{1, "1", "0", idOf(1), idOf(90)},
          {2, "2", "1", idOf(2), idOf(91)},
          {4, "4", "3", idOf(4), idOf(90)}},
         {}},
        {"the first after files were joined",
         {{1, "1", "0", idOf(1), idOf(90)},
          {1, "2", "0", idOf(2), idOf(91)},
          {3, "4", "3", idOf(4), idOf(92)}},
         {{"1+2", "1"}, {"1+2", "2"}}},
        {"the first of the file", {{2, "2", "1", idOf(2), idOf(90)}, {3, "4", "2", idOf(4), idOf(90)}}, {}},
    };
    for (const auto& row : table) {
        const Lineage lineage{row.links, row.ties};
        EXPECT_TRUE(lineage.stoodBefore(idOf(2), idOf(4))) << row.what;
        EXPECT_FALSE(lineage.stoodBefore(idOf(4), idOf(2))) << row.what;
    }
}

// 1 - 2 - (3) - 4    of one laptop
//  \- 5 - 6          of the other
TEST(Lineage, KnowsTwoLaptopsApartAlsoWhereALinkOfOneIsGone)
{
    const std::vector<LineageLink> links{{1, "1", "0", idOf(1), idOf(90)},
                                         {2, "2", "1", idOf(2), idOf(90)},
                                         {2, "5", "1", idOf(5), idOf(91)},
                                         {3, "6", "5", idOf(6), idOf(91)},
                                         {4, "4", "3", idOf(4), idOf(90)}};
    const Lineage lineage{links, {}};
    EXPECT_TRUE(lineage.stoodBefore(idOf(2), idOf(4)));
    EXPECT_TRUE(lineage.areApart(idOf(4), idOf(6)));
    EXPECT_TRUE(lineage.areApart(idOf(2), idOf(5)));
}
