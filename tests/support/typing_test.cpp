#include "tests/support/on_screen.h"
#include "tests/support/typing.h"

#include <QLineEdit>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

using namespace rig;
using namespace rig::test;

namespace {

class TypistAtAWindow : public testing::Test
{
protected:
    TypistAtAWindow()
    {
        auto* layout = new QVBoxLayout{&window};
        layout->addWidget(line);
        layout->addWidget(next);
        QObject::connect(button, &QPushButton::clicked, button, [this] { ++clicks; });
        layout->addWidget(button);
        QObject::connect(line, &QLineEdit::textChanged, line,
                         [this] { QTimer::singleShot(0, line, [this] { ++putOff; }); });
        showAt(window, {300, 200});
        line->setFocus();
    }

    QWidget window;
    QLineEdit* line = new QLineEdit;
    QLineEdit* next = new QLineEdit;
    QPushButton* button = new QPushButton{"Press"};
    int clicks = 0;
    int putOff = 0; // what a key left to a timer and was done since
};

} // namespace

TEST_F(TypistAtAWindow, KeyByKeySeesEachKeyTaken)
{
    Typist typist{window};
    typist.type("Oren, 0,5 \u2212");
    EXPECT_EQ(line->text(), "Oren, 0,5 \u2212");
    typist.click(*button);
    EXPECT_EQ(clicks, 1);
}

TEST_F(TypistAtAWindow, KeyByKeyLetsTheProgramCatchUpAfterEachKey)
{
    Typist typist{window};
    typist.type("ab");
    EXPECT_EQ(putOff, 2);
}

TEST_F(TypistAtAWindow, AheadLetsTheProgramPutOffNothingBetweenTwoKeys)
{
    Typist typist{window, Pace::Ahead};
    typist.type("ab");
    typist.press(Qt::Key_Tab);
    typist.type("cd");
    typist.click(*button);
    typist.click(*button);
    EXPECT_EQ(putOff, 0) << "the event loop was turned";
    Typist::look();
    EXPECT_EQ(putOff, 2);
    EXPECT_EQ(line->text(), "ab");
    EXPECT_EQ(next->text(), "cd") << "keys go where the focus is when their turn comes";
    EXPECT_EQ(clicks, 2) << "two clicks are not a double one";
}
