// What has the focus is seen to have it: between having it and not, a ring's worth of pixels differs by a
// contrast of 3 to 1 at least (the Web Content Accessibility Guidelines 2.2, 1.4.11 and 2.4.13), in light and
// in dark.

#include "app/pages/trends/coupling_list.h"
#include "app/widgets/cutaway_widget.h"
#include "app/widgets/indicator_style.h"
#include "app/widgets/mark_row.h"
#include "app/widgets/pages_view.h"
#include "app/widgets/photo_tile.h"
#include "app/widgets/plan_widget.h"
#include "app/widgets/still_box.h"
#include "app/widgets/trend_widget.h"
#include "tests/support/on_screen.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QStyleFactory>
#include <QStyleOptionButton>
#include <QTextBrowser>
#include <QVBoxLayout>

#include <cmath>
#include <functional>
#include <memory>

using namespace rig;
using namespace rig::test;

namespace {

constexpr double kLeastContrast = 3;

// Of sRGB, 0 to 1.
double luminanceOf(const QColor& colour)
{
    const auto linear = [](double part) {
        return part <= 0.04045 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrastOf(const QColor& one, const QColor& other)
{
    const double a = luminanceOf(one);
    const double b = luminanceOf(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

int pixelsThatStandOut(const QImage& without, const QImage& with)
{
    int count = 0;
    for (int y = 0; y < with.height(); ++y)
        for (int x = 0; x < with.width(); ++x)
            count += contrastOf(without.pixelColor(x, y), with.pixelColor(x, y)) >= kLeastContrast;
    return count;
}

struct Kind
{
    const char* name;
    std::function<QWidget*(const Look&)> make;
};

QPushButton* buttonOfKind(const char* kind, bool isChecked)
{
    auto* button = new QPushButton{QStringLiteral("Yes (Y)")};
    button->setProperty("kind", kind);
    button->setCheckable(isChecked);
    button->setChecked(isChecked);
    return button;
}

template <typename T> T* looked(const Look& look)
{
    auto* widget = new T;
    widget->setLook(look);
    return widget;
}

std::vector<Kind> kinds()
{
    std::vector<Kind> all;
    for (const char* kind :
         {"plain", "primary", "choice", "leaf", "answer", "chip", "link", "row", "bar", "registration"})
        all.push_back({kind, [kind](const Look&) { return buttonOfKind(kind, false); }});
    for (const char* kind : {"choice", "leaf", "answer", "chip", "row", "bar"})
        all.push_back({kind, [kind](const Look&) { return buttonOfKind(kind, true); }});
    all.push_back({"answer in doubt", [](const Look&) {
                       auto* button = buttonOfKind("answer", true);
                       button->setProperty("doubt", true);
                       return button;
                   }});
    all.push_back({"line", [](const Look&) { return new QLineEdit; }});
    all.push_back({"text", [](const Look&) { return new QPlainTextEdit; }});
    all.push_back({"read text", [](const Look&) { return new QTextBrowser; }});
    all.push_back({"list", [](const Look&) { return new QListWidget; }});
    all.push_back({"box", [](const Look&) { return new StillBox; }});
    all.push_back({"figure box", [](const Look&) { return new StillSpinBox; }});
    all.push_back({"tick", [](const Look&) { return new QCheckBox{QStringLiteral("With a torch")}; }});
    all.push_back({"choice of one", [](const Look&) { return new QRadioButton{QStringLiteral("Seen")}; }});
    for (const bool isChosen : {false, true}) {
        all.push_back({isChosen ? "chosen row" : "row", [isChosen](const Look& look) {
                           auto* row = looked<MarkRow>(look);
                           row->show(MarkShape::Waiting, Role::InkSoft, "Left aileron", "not read");
                           row->setChecked(isChosen);
                           return row;
                       }});
        all.push_back({isChosen ? "chosen trend row" : "trend row", [isChosen](const Look& look) {
                           auto* row = looked<TrendRow>(look);
                           row->setChecked(isChosen);
                           return row;
                       }});
    }
    all.push_back({"photo", [](const Look& look) {
                       auto* tile = new PhotoTile{"photo"};
                       tile->setLook(look);
                       return tile;
                   }});
    all.push_back({"trend", looked<TrendWidget>});
    all.push_back({"plan", looked<PlanWidget>});
    all.push_back({"cutaway", looked<CutawayWidget>});
    all.push_back({"pages", looked<PagesView>});
    return all;
}

class FocusRing : public testing::TestWithParam<std::string>
{
protected:
    FocusRing()
    {
        before = QApplication::palette();
        QApplication::setStyle(new IndicatorStyle);
        QApplication::setPalette(paletteFor(look.theme));
    }
    ~FocusRing() override
    {
        QApplication::setStyle(QStyleFactory::create("Fusion"));
        QApplication::setPalette(before);
    }

    QPalette before;
    Look look{GetParam() == "dark colours" ? Theme::dark() : Theme::light(), {}};
};

INSTANTIATE_TEST_SUITE_P(In, FocusRing, testing::Values("light colours", "dark colours"));

} // namespace

TEST_P(FocusRing, LeavesTheWordsOfAButtonAsTheyAre)
{
    for (const char* kind : {"plain", "primary", "choice", "answer", "chip", "link", "row"})
        for (const bool isChecked : {false, true}) {
            QWidget holder;
            auto* layout = new QHBoxLayout{&holder};
            auto* other = new QLineEdit;
            auto* button = buttonOfKind(kind, isChecked);
            button->setText(QStringLiteral("&Taken apart, gjpqy"));
            layout->addWidget(other);
            layout->addWidget(button);
            showAt(holder, {480, 90}, look);
            holder.activateWindow();
            QStyleOptionButton option;
            option.initFrom(button);
            QRect words = button->style()->subElementRect(QStyle::SE_PushButtonContents, &option, button);
            words.setWidth(std::min(words.width(), button->fontMetrics().horizontalAdvance(button->text())));
            other->setFocus(Qt::TabFocusReason);
            QApplication::processEvents();
            const QImage without = button->grab(words).toImage();
            button->setFocus(Qt::TabFocusReason);
            QApplication::processEvents();
            EXPECT_EQ(pixelsThatStandOut(without, button->grab(words).toImage()), 0)
                << kind << (isChecked ? ", chosen" : "");
        }
}

TEST_P(FocusRing, StandsOutAroundEachKindOfControl)
{
    for (const Kind& kind : kinds()) {
        QWidget holder;
        auto* layout = new QVBoxLayout{&holder};
        auto* other = new QLineEdit;
        layout->addWidget(other);
        auto* bar = new QFrame;
        const std::string name = kind.name;
        bar->setProperty(name == "bar" || name == "registration" ? "bar" : "card", true);
        layout->addWidget(bar);
        QWidget* shown = kind.make(look);
        (new QVBoxLayout{bar})->addWidget(shown);
        showAt(holder, {360, 260}, look);
        holder.activateWindow();
        other->setFocus(Qt::TabFocusReason);
        QApplication::processEvents();
        const QImage without = bar->grab().toImage();
        shown->setFocus(Qt::TabFocusReason);
        QApplication::processEvents();
        ASSERT_TRUE(shown->hasFocus()) << name;
        const QImage with = bar->grab().toImage();
        const auto* button = qobject_cast<QAbstractButton*>(shown);
        const QSize ring = name == "tick" || name == "choice of one" ? shown->sizeHint() : shown->size();
        const bool isWithin = button && (button->isChecked() || name == "primary"); // around its words
        const int least = (ring.width() + ring.height()) * (isWithin ? 1 : 2) * 8 / 10;
        EXPECT_GE(pixelsThatStandOut(without, with), isWithin ? least / 2 : least)
            << name << (button && button->isChecked() ? ", chosen" : "");
        if (qEnvironmentVariableIsSet("RIG_SEE"))
            with.save(QStringLiteral("/tmp/ring-%1-%2-%3.png")
                          .arg(name.c_str())
                          .arg(GetParam().c_str())
                          .arg(button && button->isChecked()));
    }
}
