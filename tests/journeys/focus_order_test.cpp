// Tab goes round everything that can be worked, as it is read, and nowhere is nobody at the keys.

#include "app/widgets/question_cover.h"
#include "tests/journeys/page_tour.h"
#include "tests/support/on_screen.h"

#include <QApplication>
#include <QComboBox>

#include <algorithm>
#include <set>

using namespace rig;
using namespace rig::test;

namespace {

constexpr int kMostPresses = 400;

using Round = std::vector<QWidget*>;

std::string nameOf(const QWidget* one)
{
    if (!one)
        return "nobody";
    std::string name = one->metaObject()->className();
    return name + " “" + one->objectName().toStdString() + "” (" + one->accessibleName().toStdString() + ")";
}

// A question stands before everything else.
const QWidget& reachable(const MainWindow& window)
{
    for (const auto* cover : window.findChildren<const QuestionCover*>(QString{}, Qt::FindDirectChildrenOnly))
        if (cover->isVisible())
            return *cover;
    return window;
}

bool isStop(const QWidget& one)
{
    return one.isVisible() && one.isEnabled() && (one.focusPolicy() & Qt::TabFocus) && !one.focusProxy() &&
           !one.isWindow();
}

std::set<QWidget*> stopsIn(const QWidget& in)
{
    std::set<QWidget*> stops;
    for (QWidget* one : in.findChildren<QWidget*>())
        if (isStop(*one))
            stops.insert(one);
    return stops;
}

// From where the focus is, until it is there again; each once, also where a key goes on within it.
Round round(MainWindow& window, Qt::Key key)
{
    Typist typist{window};
    Round round;
    const QWidget* first = nullptr;
    for (int i = 0; i < kMostPresses; ++i) {
        if (key == Qt::Key_Tab)
            typist.press(key);
        else
            typist.press(key, Qt::ShiftModifier);
        QWidget* now = QApplication::focusWidget();
        if (!now)
            return round;
        if (first && now == first)
            return round;
        if (!first)
            first = now;
        if (round.empty() || round.back() != now)
            round.push_back(now);
    }
    ADD_FAILURE() << "it does not come round";
    return round;
}

const QWidget* within(const QWidget* holder, const QWidget* one)
{
    while (one->parentWidget() != holder)
        one = one->parentWidget();
    return one;
}

const QWidget* holderOf(const QWidget* a, const QWidget* b)
{
    for (const QWidget* one = a->parentWidget(); one; one = one->parentWidget())
        if (one->isAncestorOf(b))
            return one;
    return nullptr;
}

// Whoever reads has `b` before `a`: left of it in the same line, or above it.
bool isBackwards(const QWidget* a, const QWidget* b)
{
    if (a->isAncestorOf(b))
        return false;
    if (b->isAncestorOf(a))
        return true;
    const QWidget* holder = holderOf(a, b);
    const QRect from = within(holder, a)->geometry();
    const QRect to = within(holder, b)->geometry();
    const int common = std::min(from.bottom(), to.bottom()) - std::max(from.top(), to.top());
    const bool isOneLine = 2 * common > std::min(from.height(), to.height());
    if (isOneLine)
        return to.left() < from.left();
    const bool isNextColumn = to.left() >= from.right();
    return to.top() < from.top() && !isNextColumn;
}

void expectInOrder(const Round& round, const std::string& where)
{
    std::vector<std::string> back;
    for (std::size_t i = 0; i < round.size(); ++i) {
        const QWidget* from = round[i];
        const QWidget* to = round[(i + 1) % round.size()];
        if (from != to && isBackwards(from, to))
            back.push_back("from " + nameOf(from) + " back to " + nameOf(to));
    }
    EXPECT_LE(back.size(), 1U) << where;
    if (back.size() > 1)
        for (const std::string& one : back)
            ADD_FAILURE() << where << ": " << one;
}

void expectSomebodyAtTheKeys(const std::string& where)
{
    const QWidget* focus = QApplication::focusWidget();
    EXPECT_TRUE(focus && focus->isVisible() && focus->isEnabled()) << where << ": " << nameOf(focus);
}

void expectRound(MainWindow& window, const std::string& where)
{
    expectSomebodyAtTheKeys(where);
    if (!QApplication::focusWidget())
        window.setFocus();
    QWidget* before = QApplication::focusWidget();
    const Round forwards = round(window, Qt::Key_Tab);
    for (QWidget* one : stopsIn(reachable(window)))
        EXPECT_TRUE(std::ranges::count(forwards, one)) << where << ": never at " << nameOf(one);
    for (const QWidget* one : forwards) {
        EXPECT_TRUE(one->isVisible() && one->isEnabled()) << where << ": " << nameOf(one);
        EXPECT_EQ(std::ranges::count(forwards, one), 1) << where << ": twice at " << nameOf(one);
    }
    expectInOrder(forwards, where);
    forwards.front()->setFocus();
    Round backwards = round(window, Qt::Key_Backtab);
    std::ranges::reverse(backwards);
    if (!backwards.empty())
        std::ranges::rotate(backwards, std::ranges::find(backwards, forwards.front()));
    EXPECT_EQ(backwards == forwards, true)
        << where << ": " << backwards.size() << " backwards, " << forwards.size() << " forwards";
    if (before)
        before->setFocus();
    Typist::look();
}

class FocusOrder : public testing::TestWithParam<TourPart>
{
};

INSTANTIATE_TEST_SUITE_P(On, FocusOrder, testing::ValuesIn(kTourParts),
                         [](const auto& part) { return std::string{part.param.name}; });

} // namespace

TEST_P(FocusOrder, TabGoesRoundAsItIsReadAndShiftTabGoesBack)
{
    PageTour tour{expectRound};
    (tour.*GetParam().go)();
}

TEST_P(FocusOrder, SomebodyIsAlwaysAtTheKeysAlsoWhenAListIsShutAgain)
{
    PageTour tour{[](MainWindow& window, const std::string& where) {
        expectSomebodyAtTheKeys(where);
        QWidget* before = QApplication::focusWidget();
        for (QComboBox* box : window.findChildren<QComboBox*>()) {
            if (!box->isVisible() || !box->isEnabled() || !reachable(window).isAncestorOf(box))
                continue;
            box->setFocus();
            box->showPopup();
            Typist::look();
            box->hidePopup();
            Typist::look();
            expectSomebodyAtTheKeys(where + ", " + box->objectName().toStdString());
        }
        if (before)
            before->setFocus();
    }};
    (tour.*GetParam().go)();
}
