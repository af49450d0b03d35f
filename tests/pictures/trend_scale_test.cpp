#include "app/pictures/scale.h"

#include <QDate>
#include <QDateTime>
#include <QStringList>

#include <gtest/gtest.h>

using namespace rig;

namespace {

double seconds(int year, int month, int day)
{
    return static_cast<double>(QDateTime{QDate{year, month, day}, QTime{0, 0}, Qt::UTC}.toSecsSinceEpoch());
}

// Seven pixels a letter.
QStringList words(const Scale& scale, double apart)
{
    QStringList texts;
    for (const Tick& tick :
         scale.ticks([](const QString& text) { return 7.0 * static_cast<double>(text.size()); }, apart))
        texts << tick.text;
    return texts;
}

} // namespace

TEST(Scale, FindsTheValueOfAPixelAndThePixelOfAValue)
{
    const Scale scale{ScaleKind::Millimetres, 1.0, 1.4, 400, 0};
    EXPECT_NEAR(scale.at(1.1), 300, 1e-9);
    EXPECT_NEAR(scale.valueAt(100), 1.3, 1e-9);
}

TEST(Scale, CountsMillimetresInStepsThatLeavesHave)
{
    const auto line = [](const QString&) { return 14.0; };
    const auto step = [&line](double from, double to) {
        const std::vector<Tick> ticks = Scale{ScaleKind::Millimetres, from, to, 300, 0}.ticks(line, 12);
        return ticks.size() < 2 ? 0.0 : ticks[1].value - ticks[0].value;
    };
    EXPECT_NEAR(step(1.00, 1.10), 0.01, 1e-9);
    EXPECT_NEAR(step(1.00, 1.30), 0.05, 1e-9);
    EXPECT_NEAR(step(0.50, 1.40), 0.10, 1e-9);
    EXPECT_NEAR(step(0.00, 2.00), 0.20, 1e-9);
}

TEST(Scale, CountsRiggingsInWholeNumbers)
{
    EXPECT_EQ(words({ScaleKind::Riggings, 208, 264, 0, 800}, 30),
              (QStringList{"210", "215", "220", "225", "230", "235", "240", "245", "250", "255", "260"}));
    EXPECT_EQ(words({ScaleKind::Riggings, 230.2, 232.7, 0, 800}, 30), (QStringList{"231", "232"}));
    EXPECT_EQ(words({ScaleKind::Riggings, 900, 2100, 0, 300}, 30), (QStringList{"1000", "1500", "2000"}));
}

TEST(Scale, CountsDatesInMonthsAndYearsOfFourDigits)
{
    EXPECT_EQ(words({ScaleKind::Dates, seconds(2024, 11, 20), seconds(2025, 4, 10), 0, 700}, 30),
              (QStringList{"Dec 2024", "2025", "Feb", "Mar", "Apr"}));
    EXPECT_EQ(words({ScaleKind::Dates, seconds(2019, 6, 1), seconds(2025, 4, 10), 0, 420}, 30),
              (QStringList{"2020", "2021", "2022", "2023", "2024", "2025"}));
    EXPECT_EQ(words({ScaleKind::Dates, seconds(2025, 4, 9) + 1, seconds(2025, 4, 12), 0, 700}, 30),
              (QStringList{"10 Apr 2025", "11 Apr", "12 Apr"}));
}

TEST(Scale, KeepsItsWordsApartAtEveryWidth)
{
    std::size_t pairs = 0;
    for (int width = 60; width < 1600; width += 37)
        for (const double years : {0.02, 0.2, 1.0, 3.0, 30.0}) {
            const double from = seconds(2019, 3, 7);
            const Scale scale{ScaleKind::Dates, from, from + years * 365.25 * 86400, 0,
                              static_cast<double>(width)};
            const std::vector<Tick> ticks =
                scale.ticks([](const QString& text) { return 7.0 * static_cast<double>(text.size()); }, 10);
            for (std::size_t i = 1; i < ticks.size(); ++i) {
                ++pairs;
                const double halves =
                    3.5 * static_cast<double>(ticks[i].text.size() + ticks[i - 1].text.size());
                EXPECT_GE(scale.at(ticks[i].value) - scale.at(ticks[i - 1].value), halves + 10 - 1e-6)
                    << width << " pixels, " << years << " years: " << ticks[i].text.toStdString();
            }
        }
    EXPECT_GT(pairs, 500U);
}
