#include "core/airframe/id_source.h"
#include "core/rigging/connected.h"

#include <gtest/gtest.h>

using namespace rig;

namespace {

constexpr PersonId kSomebody{{1}};
constexpr PersonId kSomebodyElse{{2}};

class Stated
{
public:
    Stated& by(std::vector<PersonId> persons, Side side)
    {
        SideConnected one;
        one.id.bytes = m_ids.next(0);
        one.side = side;
        one.persons = std::move(persons);
        m_all.push_back(one);
        return *this;
    }

    const std::vector<SideConnected>& all() const { return m_all; }

private:
    IdSource m_ids{3};
    std::vector<SideConnected> m_all;
};

const std::vector kBoth{Side::Left, Side::Right};

} // namespace

TEST(WhoConnected, IsAskedOnceForEachSideThatAJointInUseStandsOn)
{
    Coupling left;
    left.side = Side::Left;
    Coupling tail;
    Coupling right;
    right.side = Side::Right;
    right.inUse = false;
    EXPECT_EQ(sidesOf(std::vector{tail, left, right, left}), (std::vector{Side::Left, Side::None}));
}

TEST(WhoConnected, IsWhatWasStatedLast)
{
    Stated stated;
    stated.by({kSomebody}, Side::Left).by({kSomebody, kSomebodyElse}, Side::Left);
    EXPECT_EQ(whoConnected(Side::Left, stated.all()), (std::vector{kSomebody, kSomebodyElse}));
    EXPECT_FALSE(statedFor(Side::Right, stated.all())) << "nobody said";
    stated.by({kSomebodyElse}, Side::Left);
    EXPECT_EQ(whoConnected(Side::Left, stated.all()), std::vector{kSomebodyElse}) << "a correction";
    stated.by({}, Side::Left);
    EXPECT_TRUE(statedFor(Side::Left, stated.all())) << "said, and not known";
    EXPECT_TRUE(whoConnected(Side::Left, stated.all()).empty());
}

TEST(Independence, IsThatOfSomebodyWhoConnectedNothing)
{
    Stated stated;
    stated.by({kSomebody}, Side::Left).by({kSomebody}, Side::Right);
    EXPECT_TRUE(independenceOf(kSomebodyElse, kBoth, stated.all()).isGiven());
    EXPECT_EQ(independenceOf(kSomebody, kBoth, stated.all()).connected, kBoth);
}

TEST(Independence, IsNotKnownWhereNobodySaidOrKnowsWhoConnected)
{
    Stated stated;
    stated.by({}, Side::Left);
    const Independence found = independenceOf(kSomebodyElse, kBoth, stated.all());
    EXPECT_FALSE(found.isGiven());
    EXPECT_TRUE(found.connected.empty());
    EXPECT_EQ(found.unknown, kBoth);
}
