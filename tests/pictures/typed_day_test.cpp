// A day as somebody types it, in the order of the language that is spoken.

#include "app/wording/day_words.h"
#include "app/wording/language.h"

#include <gtest/gtest.h>

namespace rig {

namespace {

using namespace std::chrono_literals;

const QLocale kBritain{QLocale::English, QLocale::UnitedKingdom};
const QLocale kStates{QLocale::English, QLocale::UnitedStates};
const QLocale kGermany{QLocale::German, QLocale::Germany};
const QLocale kFrance{QLocale::French, QLocale::France};

constexpr Day kSecondOfMay{2026y / 5 / 2};

} // namespace

TEST(TypedDay, StandsInTheOrderOfTheLanguage)
{
    EXPECT_EQ(readDay("2.5.2026", kGermany), kSecondOfMay);
    EXPECT_EQ(readDay("02.05.2026", kGermany), kSecondOfMay);
    EXPECT_EQ(readDay("02/05/2026", kFrance), kSecondOfMay);
    EXPECT_EQ(readDay("2/5/2026", kBritain), kSecondOfMay);
    EXPECT_EQ(readDay("5/2/2026", kStates), kSecondOfMay);
    EXPECT_EQ(readDay(" 12/31/2026 ", kStates), (Day{2026y / 12 / 31}));
}

TEST(TypedDay, IsReadAsYearMonthDayInEveryLanguage)
{
    for (const QLocale& one : {kBritain, kStates, kGermany, kFrance, QLocale::c()})
        EXPECT_EQ(readDay("2026-05-02", one), kSecondOfMay) << one.name().toStdString();
}

TEST(TypedDay, OfNoCalendarIsRefused)
{
    EXPECT_FALSE(readDay("31.2.2026", kGermany));
    EXPECT_FALSE(readDay("1/13/2026", kBritain)) << "there is no thirteenth month";
    EXPECT_EQ(readDay("1/13/2026", kStates), (Day{2026y / 1 / 13}));
    EXPECT_FALSE(readDay("13/1/2026", kStates));
    EXPECT_FALSE(readDay("29/02/2026", kFrance));
    EXPECT_FALSE(readDay("0.5.2026", kGermany));
}

TEST(TypedDay, InAnotherOrderOrWithAShortYearIsRefused)
{
    for (const char* doubtful :
         {"2.5.26", "2.5.026", "2.5.02026", "2/5/2026", "2-5-2026", "2026.5.2", "2.5.", "2.5", "2..2026",
          "2.5.2026.", "002.5.2026", "2.Mai.2026", "-2.5.2026", "+2.5.2026", "", " "})
        EXPECT_FALSE(readDay(doubtful, kGermany)) << doubtful;
    EXPECT_FALSE(readDay("5/2/26", kStates));
    EXPECT_FALSE(readDay("2.5.2026", kBritain));
    EXPECT_FALSE(readDay("2/5/2026", QLocale::c()))
        << "its month is a word: nothing says which figure comes first";
}

TEST(TypedDay, IsAskedForInBothForms)
{
    const auto missing = [](const char* code, const QLocale& system) {
        const Speech speech{code, system};
        return DayWords::missing();
    };
    EXPECT_EQ(missing("en", kBritain).toStdString(), "Type the day, like 2026-05-31 or 31/05/2026.");
    EXPECT_EQ(missing("en", kStates).toStdString(), "Type the day, like 2026-05-31 or 5/31/2026.");
    EXPECT_TRUE(missing("de", kBritain).contains("2026-05-31 oder 31.05.2026"))
        << missing("de", kBritain).toStdString();
    EXPECT_TRUE(missing("fr", kBritain).contains("2026-05-31 ou 31/05/2026"))
        << missing("fr", kBritain).toStdString();
}

TEST(TypedDay, IsReadInEachFormThatIsAskedFor)
{
    for (const QLocale& one : {kBritain, kStates, kGermany, kFrance}) {
        const Speech speech{one.name().section('_', 0, 0), one};
        const QString example = DayWords::example();
        EXPECT_EQ(readDay(example.section(' ', -1)), (Day{2026y / 5 / 31})) << example.toStdString();
    }
}

} // namespace rig
