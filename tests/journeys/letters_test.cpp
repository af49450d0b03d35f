// In every language that is spoken, each letter that is pressed with Alt means one thing on its page.

#include "app/wording/annual_words.h"
#include "app/wording/baseline_words.h"
#include "app/wording/connected_words.h"
#include "app/wording/control_words.h"
#include "app/wording/joint_play_words.h"
#include "app/wording/paper_words.h"
#include "app/wording/period_words.h"
#include "app/wording/photo_words.h"
#include "app/wording/practice_words.h"
#include "app/wording/preview_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/statement_words.h"
#include "app/wording/summary_words.h"
#include "app/wording/trends_page_words.h"
#include "app/wording/verdict_words.h"
#include "tests/journeys/page_tour.h"
#include "tests/support/on_screen.h"

#include <QKeySequence>
#include <QLabel>
#include <QMenu>
#include <QShortcut>

#include <map>

using namespace rig;
using namespace rig::test;

namespace {

// What each letter is on, by the text it stands in.
using Letters = std::map<std::string, std::vector<std::string>>;

void note(Letters& letters, const QKeySequence& keys, const QString& on)
{
    if (!keys.isEmpty())
        letters[keys.toString().toStdString()].push_back(on.toStdString());
}

// It is seen, or comes beside what is seen when it is wanted there.
bool mayBeSeen(const QWidget& one)
{
    return one.isVisible() || (one.isHidden() && one.parentWidget() && one.parentWidget()->isVisible());
}

Letters lettersOn(const MainWindow& window)
{
    Letters letters;
    for (const auto* one : window.findChildren<const QAbstractButton*>())
        if (mayBeSeen(*one))
            note(letters, QKeySequence::mnemonic(one->text()), one->text());
    for (const auto* one : window.findChildren<const QLabel*>())
        if (mayBeSeen(*one) && one->buddy())
            note(letters, QKeySequence::mnemonic(one->text()), one->text());
    for (const auto* one : window.findChildren<const QShortcut*>())
        if (const auto* holder = qobject_cast<const QWidget*>(one->parent()); holder && holder->isVisible())
            note(letters, one->key(), "a shortcut of " + holder->objectName());
    for (const auto* one : window.actions())
        note(letters, one->shortcut(), one->text());
    return letters;
}

void expectApart(const Letters& letters, const std::string& where)
{
    for (const auto& [letter, on] : letters) {
        EXPECT_EQ(on.size(), 1U) << where << ": " << letter;
        if (on.size() > 1)
            for (const std::string& one : on)
                ADD_FAILURE() << where << ": " << letter << " on “" << one << "”";
    }
}

void expectApartIn(const QMenu& menu)
{
    Letters letters;
    for (const QAction* row : menu.actions())
        note(letters, QKeySequence::mnemonic(row->text()), row->text());
    expectApart(letters, "the menu " + menu.objectName().toStdString());
}

// What is pressed by itself at one place.
struct Place
{
    const char* name;
    QStringList keys;
};

std::vector<Place> places()
{
    using R = RiggedWords;
    using C = ControlWords;
    const QStringList people{C::keyAtSurface(), C::keyInCockpit(), C::keyPlay(), C::keyUp(), C::keyDown()};
    const QStringList statements{StatementWords::keyFinding(), StatementWords::keyAsk(), PeriodWords::key()};
    return {
        {"the start", {R::keyNoteRead(), PaperWords::keyEnter(), SummaryWords::keyLast()}},
        {"who connected", {ConnectedWords::keyNotKnown()}},
        {"a joint",
         {R::keyPerson(), R::keyGauge(), R::keyYes(), R::keyNo(), R::keyCannotSee(), R::keyFelt(),
          R::keyMeasureAgain(), R::keySecondPerson(), R::keyCorrect(), R::keyStrike(), R::keyLook(),
          PhotoWords::keyPhoto(), VerdictWords::keyMore(), JointPlayWords::key()}},
        {"a surface", people + QStringList{R::keyYes(), R::keyNo(), R::keyCannotSee()}},
        {"a call at a surface", people + QStringList{C::keyNothing(), R::keyCannotSee()}},
        {"a rigging that is done", {SummaryWords::keyPrint(), SummaryWords::keyBack()}},
        {"trends", statements + QStringList{TrendsPageWords::keyByDate(), TrendsPageWords::keyByRigging(),
                                            TrendsPageWords::keyTable(), TrendsPageWords::keyAircraft()}},
        {"before the annual",
         statements + QStringList{AnnualWords::keyMeaning(), AnnualWords::keyReport(),
                                  AnnualWords::keyHeadlines(), AnnualWords::keyOutside()}},
        {"the report",
         {PreviewWords::keySave(), PreviewWords::keyPaper(), PreviewWords::keyAppendix(),
          PreviewWords::keyEnds()}},
        {"practice", {PracticeWords::keyOne(), PracticeWords::keyAll()}},
        {"a question of practice", {PracticeWords::keySure(), PracticeWords::keyNotSure()}},
        {"the first baseline",
         {R::keyYes(), R::keyNo(), BaselineWords::keyCorrect(), BaselineWords::keyExclude(),
          BaselineWords::keyFreeze()}},
    };
}

class Letter : public testing::TestWithParam<TourPart>
{
};

INSTANTIATE_TEST_SUITE_P(On, Letter, testing::ValuesIn(kTourParts),
                         [](const auto& part) { return std::string{part.param.name}; });

} // namespace

TEST_P(Letter, IsOnOneThingOfAPageInEveryLanguage)
{
    for (const Language& language : languages()) {
        SCOPED_TRACE(language.code.toStdString());
        PageTour tour{[](MainWindow& window, const std::string& where) {
                          expectApart(lettersOn(window), where);
                          for (const QMenu* menu : window.findChildren<const QMenu*>())
                              expectApartIn(*menu);
                      },
                      language.code};
        (tour.*GetParam().go)();
    }
}

TEST(LetterByItself, MeansOneThingAtAPlaceInEveryLanguage)
{
    for (const Language& language : languages()) {
        const Speech speech{language.code};
        for (const Place& place : places()) {
            std::map<QString, int> keys;
            for (const QString& key : place.keys) {
                EXPECT_EQ(key.size(), 1) << place.name << ": " << key.toStdString();
                EXPECT_EQ(++keys[key.toLower()], 1)
                    << language.code.toStdString() << ", " << place.name << ": " << key.toStdString();
            }
        }
    }
}
