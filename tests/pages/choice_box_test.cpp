// The list of a box that is open: what is in hand there can be read.

#include "app/theme/theme.h"
#include "app/widgets/choice_box.h"
#include "core/airframe/ids.h"
#include "tests/support/on_screen.h"

#include <QApplication>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

// Of the words: what stands apart most from the middle of the row's end, where there are none.
double contrastIn(const QImage& row)
{
    const QColor ground = row.pixelColor(row.width() - 4, row.height() / 2);
    double most = 1;
    for (int y = 0; y < row.height(); ++y)
        for (int x = 0; x < row.width(); ++x)
            most = std::max(most, contrastOf(row.pixelColor(x, y), ground));
    return most;
}

class ChoiceBoxList : public testing::TestWithParam<Scheme>
{
protected:
    ~ChoiceBoxList() override { QApplication::setPalette(m_before); }

    Theme theme = Theme::of(GetParam());

private:
    QPalette m_before = QApplication::palette();
};

} // namespace

INSTANTIATE_TEST_SUITE_P(EveryScheme, ChoiceBoxList,
                         testing::Values(Scheme::Light, Scheme::Dark, Scheme::Sunlight));

TEST_P(ChoiceBoxList, WritesTheRowInHandSoThatItCanBeRead)
{
    QApplication::setPalette(paletteFor(theme));
    QWidget page;
    page.setStyleSheet(styleSheetFor(theme, {}));
    ChoiceBox box{"Measured by", &page};
    box.begin("Choose a person");
    box.add("MMMMMM", PersonId{});
    showAt(page, {400, 300});
    box.showPopup();
    QAbstractItemView& list = *box.view();
    list.setCurrentIndex(list.model()->index(1, 0));
    QApplication::processEvents();
    const QImage row = list.viewport()->grab(list.visualRect(list.currentIndex())).toImage();
    EXPECT_NE(row.pixelColor(row.width() - 4, row.height() / 2), theme.color(Role::Card)) << "it is marked";
    EXPECT_GE(contrastIn(row), 4.5);
    box.hidePopup();
}
