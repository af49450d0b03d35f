// What a field for a day says of what was typed.

#include "app/pages/day_edit.h"
#include "app/wording/language.h"

#include <QLabel>
#include <QLineEdit>

#include <gtest/gtest.h>

namespace rig {

namespace {

// A field for a day while the program speaks `code`.
struct DayField
{
    explicit DayField(const char* code,
                      const QLocale& system = QLocale{QLocale::English, QLocale::UnitedKingdom})
        : speech{code, system}
    {
        edit.line()->setAccessibleDescription("the hint");
    }

    std::string read() const
    {
        const auto* label = edit.findChild<QLabel*>("dayRead");
        return label->isHidden() ? "" : label->text().toStdString();
    }
    std::string heard() const { return edit.line()->accessibleDescription().toStdString(); }

    Speech speech;
    DayEdit edit;
};

} // namespace

TEST(DayField, SaysInWordsWhichDayItReads)
{
    DayField british{"en"};
    british.edit.setText("2/5/2026");
    EXPECT_EQ(british.read(), "2 May 2026");
    british.edit.setText("2026-02-05");
    EXPECT_EQ(british.read(), "5 February 2026");
}

TEST(DayField, SaysItInTheLanguageThatIsSpoken)
{
    {
        DayField american{"en", QLocale{QLocale::English, QLocale::UnitedStates}};
        american.edit.setText("5/2/2026");
        EXPECT_EQ(american.read(), "2 May 2026");
        american.edit.setText("13/1/2026");
        EXPECT_EQ(american.read(), "");
    }
    {
        DayField german{"de"};
        german.edit.setText("2.5.2026");
        EXPECT_EQ(german.read(), "2. Mai 2026");
    }
    DayField french{"fr"};
    french.edit.setText("02/05/2026");
    EXPECT_EQ(french.read(), "2 mai 2026");
}

TEST(DayField, SaysNothingOfWhatItCannotRead)
{
    DayField german{"de"};
    for (const char* typed : {"2.5.26", "31.2.2026", "2.5.", "heute"}) {
        german.edit.setText("2.5.2026");
        german.edit.setText(typed);
        EXPECT_EQ(german.read(), "") << typed;
    }
}

TEST(DayField, IsHeardAsItIsSeen)
{
    DayField british{"en"};
    british.edit.setText("2/5/202");
    EXPECT_EQ(british.heard(), "the hint");
    british.edit.setText("2/5/2026");
    EXPECT_EQ(british.heard(), "2 May 2026");
    british.edit.setText("3/5/2026");
    EXPECT_EQ(british.heard(), "3 May 2026");
    british.edit.setText("3/5/");
    EXPECT_EQ(british.heard(), "the hint");
    british.edit.setText("3/5/2026");
    british.edit.line()->setAccessibleDescription("refused: it has not come yet");
    british.edit.setText("3/5/202");
    EXPECT_EQ(british.heard(), "refused: it has not come yet");
}

} // namespace rig
