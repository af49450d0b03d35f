// Whoever listens to the screen: everything that can be worked or looked at says what it is.

#include "app/widgets/heard.h"
#include "app/widgets/leaf_row.h"
#include "app/widgets/mark_row.h"
#include "tests/journeys/page_tour.h"
#include "tests/support/on_screen.h"

#include <QAccessible>
#include <QAccessibleInterface>
#include <QTableView>

using namespace rig;
using namespace rig::test;

namespace {

bool isPicture(QAccessible::Role role)
{
    return role == QAccessible::Graphic || role == QAccessible::Chart;
}

// Something to work with, to read from as a whole or to look at.
bool needsName(const QAccessibleInterface& one)
{
    switch (one.role()) {
    case QAccessible::PushButton:
    case QAccessible::RadioButton:
    case QAccessible::CheckBox:
    case QAccessible::ComboBox:
    case QAccessible::EditableText:
    case QAccessible::SpinBox:
    case QAccessible::Slider:
    case QAccessible::Cell:
    case QAccessible::ListItem:
    case QAccessible::TreeItem:
    case QAccessible::List:
    case QAccessible::Table:
    case QAccessible::Tree:
    case QAccessible::ProgressBar:
    case QAccessible::AlertMessage:
    case QAccessible::Graphic:
    case QAccessible::Chart:
    case QAccessible::MenuItem:
    case QAccessible::ButtonMenu:
        return true;
    default:
        return one.state().focusable;
    }
}

QString spokenName(QAccessibleInterface& one)
{
    return one.text(QAccessible::Name);
}

std::string placeOf(QAccessibleInterface& one)
{
    const QObject* object = one.object();
    return object ? std::string{object->metaObject()->className()} + " \"" +
                        object->objectName().toStdString() + "\""
                  : "role " + std::to_string(one.role());
}

class Listener
{
public:
    void listenTo(QWidget& window)
    {
        m_heard = 0;
        walk(*QAccessible::queryAccessibleInterface(&window));
    }
    int heard() const { return m_heard; }
    const std::vector<std::string>& missing() const { return m_missing; }

private:
    void walk(QAccessibleInterface& one)
    {
        if (!one.isValid() || one.state().invisible)
            return;
        listen(one);
        for (int i = 0; i < one.childCount(); ++i)
            if (QAccessibleInterface* child = one.child(i))
                walk(*child);
    }

    void listen(QAccessibleInterface& one)
    {
        if (!needsName(one))
            return;
        ++m_heard;
        if (spokenName(one).trimmed().isEmpty())
            m_missing.push_back(placeOf(one) + " has no name");
        if (isPicture(one.role()) && one.text(QAccessible::Description).trimmed().isEmpty())
            m_missing.push_back(placeOf(one) + " does not say what it shows");
        // On this desktop the name of a box is what is chosen in it; what it is for is its label.
        if (one.role() == QAccessible::ComboBox && one.relations(QAccessible::Label).isEmpty() &&
            one.text(QAccessible::Description).trimmed().isEmpty())
            m_missing.push_back(placeOf(one) + " does not say what is chosen in it");
        const auto* row = qobject_cast<const MarkRow*>(one.object());
        if (row && row->accessibleDescription().trimmed().isEmpty())
            m_missing.push_back(placeOf(one) + " does not say its state");
    }

    int m_heard = 0;
    std::vector<std::string> m_missing;
};

class Heard : public testing::TestWithParam<TourPart>
{
protected:
    Heard() { hearWhatIsPainted(); }
};

INSTANTIATE_TEST_SUITE_P(On, Heard, testing::ValuesIn(kTourParts),
                         [](const auto& part) { return std::string{part.param.name}; });

} // namespace

TEST_P(Heard, EverythingToWorkWithOrToLookAtSaysWhatItIs)
{
    PageTour tour{[](MainWindow& window, const std::string& where) {
        Listener listener;
        listener.listenTo(window);
        EXPECT_GE(listener.heard(), 6) << where;
        for (const std::string& one : listener.missing())
            ADD_FAILURE() << where << ": " << one;
    }};
    (tour.*GetParam().go)();
}

TEST(HeardFigure, HasANameAndWhatIsTypedAsItsValueAndTellsEachChange)
{
    hearWhatIsPainted();
    LeafRow row;
    row.setGauge({GaugeKind::Leaves, {Gap::micrometres(400), Gap::micrometres(450)}}, {});
    row.show();
    typeOn(row, "0.45");
    auto& label = part<QLabel>(row, "typedFigure");
    QAccessibleInterface& figure = *QAccessible::queryAccessibleInterface(&label);
    EXPECT_EQ(figure.role(), QAccessible::EditableText);
    EXPECT_TRUE(figure.state().readOnly) << "the page takes the keys";
    EXPECT_EQ(figure.text(QAccessible::Value), "0.45");
    ASSERT_TRUE(figure.textInterface());
    EXPECT_EQ(figure.textInterface()->text(0, 4), "0.45");
    EXPECT_EQ(figure.textInterface()->cursorPosition(), 4);
    EXPECT_FALSE(spokenName(figure).isEmpty());
    EXPECT_FALSE(spokenName(figure).contains("0.45"));
    EXPECT_TRUE(figure.text(QAccessible::Description).contains("0.45")) << "what Enter takes";
}

TEST(HeardTable, IsReadCellByCellWithTheNameOfItsColumn)
{
    hearWhatIsPainted();
    int cells = 0;
    PageTour tour{[&cells](MainWindow& window, const std::string&) {
        for (const auto* table : window.findChildren<const QTableView*>())
            for (int row = 0; table->isVisible() && row < table->model()->rowCount(); ++row)
                for (int column = 0; column < table->model()->columnCount(); ++column) {
                    QAccessibleInterface* cell =
                        QAccessible::queryAccessibleInterface(const_cast<QTableView*>(table))
                            ->tableInterface()
                            ->cellAt(row, column);
                    ASSERT_TRUE(cell && cell->tableCellInterface());
                    const QString heading =
                        table->model()->headerData(column, Qt::Horizontal).toString().replace('\n', ' ');
                    EXPECT_TRUE(spokenName(*cell).startsWith(heading) && spokenName(*cell) != heading)
                        << table->objectName().toStdString() << ": " << spokenName(*cell).toStdString();
                    ++cells;
                }
    }};
    tour.trends();
    tour.annual();
    tour.setUp();
    EXPECT_GE(cells, 60);
}
