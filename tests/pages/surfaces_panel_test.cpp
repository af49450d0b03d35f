// The surfaces in Set up: the presenter's refusals, and the panel as it is used by keys.

#include "app/pages/setup/setup_page.h"
#include "app/wording/setup_words.h"
#include "app/wording/surface_words.h"
#include "tests/support/clipped.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"

#include <QLineEdit>
#include <QPushButton>

using namespace rig;
using namespace rig::test;

namespace {

SurfaceEntry anElevator()
{
    SurfaceEntry entry;
    entry.name = "Elevator";
    entry.kind = SurfaceKind::Elevator;
    entry.unit = DeflectionUnit::Millimetres;
    entry.measuredAt = "120";
    entry.upNominal = "54,5";
    entry.upTolerance = "3";
    entry.downNominal = "40";
    entry.downTolerance = "3";
    entry.mostPlay = "2";
    entry.reference = "page 4-12, revision 3";
    return entry;
}

class Surfaces : public testing::Test
{
protected:
    Saved save(const SurfaceEntry& entry, std::optional<SurfaceId> of = {})
    {
        return must(presenter.surfaces.save(entry, hangar.airframe, of));
    }

    std::vector<Surface> surfaces() { return must(presenter.view(hangar.airframe)).surfaces; }

    QString refusal(const SurfaceEntry& entry, Field field)
    {
        for (const FieldProblem& problem : save(entry).problems)
            if (problem.field == field)
                return problem.sentence;
        return {};
    }

    TempStore store;
    Hangar hangar{store.records()};
    SetUpPresenter presenter{store.records(), store.clock()};
};

class SurfacesPanelTest : public Surfaces
{
protected:
    SurfacesPanelTest()
    {
        showAt(page, {1280, 744});
        page.showAirframe(hangar.airframe);
        page.setFocus();
        press(Qt::Key_3, Qt::AltModifier);
    }

    QWidget* target() { return page.focusWidget() ? page.focusWidget() : &page; }
    std::string focused() { return target()->objectName().toStdString(); }

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QTest::keyClick(target(), key, modifiers);
        QCoreApplication::processEvents();
    }

    void enter(const char* field, const char* typed)
    {
        for (int i = 0; i < 60 && focused() != field; ++i)
            press(Qt::Key_Tab);
        ASSERT_EQ(focused(), field);
        QTest::keyClick(target(), Qt::Key_A, Qt::ControlModifier);
        typeOn(*target(), typed);
    }

    ScriptedPrompts prompts;
    SetUpPage page{store.records(), store.clock(), prompts};
};

} // namespace

TEST_F(Surfaces, KeepWhatTheManualSaysInThousandths)
{
    ASSERT_TRUE(save(anElevator()).isSaved());
    const Surface kept = surfaces().front();
    EXPECT_EQ(kept.measuredAt, Gap::micrometres(120'000));
    EXPECT_EQ(kept.up->nominal, Deflection{54'500});
    EXPECT_EQ(kept.up->tolerance, Deflection{3'000});
    EXPECT_EQ(kept.mostPlay, Deflection{2'000});
    EXPECT_EQ(kept.manualReference, "page 4-12, revision 3");
    EXPECT_EQ(entryOf(kept).upNominal, "54.5") << "as it would be typed again";
    EXPECT_EQ(entryOf(kept).measuredAt, "120");
}

TEST_F(Surfaces, AskForThePageAndRevisionOfEveryFigure)
{
    SurfaceEntry entry = anElevator();
    entry.reference = "";
    EXPECT_EQ(refusal(entry, Field::ManualReference), SurfaceWords::referenceMissing());
    entry.reference = "the manual";
    EXPECT_EQ(refusal(entry, Field::ManualReference), SurfaceWords::referenceLacksPage());
    entry.upNominal = entry.upTolerance = entry.downNominal = entry.downTolerance = "";
    entry.reference = "";
    EXPECT_EQ(refusal(entry, Field::ManualReference), SurfaceWords::referenceMissing())
        << "for the free play";
    entry.mostPlay = "";
    EXPECT_TRUE(save(entry).isSaved()) << "without a figure no page is needed";
}

TEST_F(Surfaces, RefuseWhatCannotBeReadForSure)
{
    SurfaceEntry entry = anElevator();
    entry.upNominal = "1.234,5";
    EXPECT_EQ(refusal(entry, Field::UpNominal),
              SurfaceWords::refusal(EntryProblem::TwoSeparators, "1.234,5", DeflectionUnit::Millimetres));
    entry = anElevator();
    entry.downTolerance = "";
    EXPECT_EQ(refusal(entry, Field::DownTolerance), SurfaceWords::toleranceMissing());
    entry = anElevator();
    entry.downNominal = "";
    EXPECT_EQ(refusal(entry, Field::DownNominal), SurfaceWords::nominalMissing());
    entry = anElevator();
    entry.measuredAt = "0";
    EXPECT_EQ(refusal(entry, Field::MeasuredAt), SurfaceWords::distanceZero());
    entry = anElevator();
    entry.unit = DeflectionUnit::Degrees;
    entry.upNominal = "181";
    EXPECT_EQ(refusal(entry, Field::UpNominal),
              SurfaceWords::refusal(EntryProblem::TooLarge, "181", DeflectionUnit::Degrees));
    entry = anElevator();
    entry.name = " ";
    EXPECT_EQ(refusal(entry, Field::SurfaceName), SurfaceWords::nameMissing());
    EXPECT_TRUE(surfaces().empty()) << "nothing of it was kept";
}

TEST_F(Surfaces, HaveOneNameEach)
{
    save(anElevator());
    SurfaceEntry same = anElevator();
    same.name = "elevator ";
    EXPECT_EQ(refusal(same, Field::SurfaceName), SurfaceWords::nameTaken("elevator"));
}

TEST_F(Surfaces, AreAddedAsUsualOnceAndWithFlapsOnlyWhereAFlapIsCoupled)
{
    EXPECT_EQ(must(presenter.surfaces.addUsual(hangar.airframe)), 7);
    EXPECT_EQ(must(presenter.surfaces.addUsual(hangar.airframe)), 0) << "they are there";
    Coupling flap = aCoupling(hangar.airframe, "Left flap, wing root");
    flap.circuit = Circuit::Flap;
    must(store.records().add(flap));
    EXPECT_EQ(must(presenter.surfaces.addUsual(hangar.airframe)), 2);
    EXPECT_EQ(surfaces().back().name, "Right flap");
    EXPECT_EQ(surfaces().back().side, Side::Right);
    EXPECT_EQ(surfaces().front().kind, SurfaceKind::Aileron);
}

TEST_F(SurfacesPanelTest, AddsTheUsualOnesByOnePressAndTakesOneOutOfUse)
{
    ASSERT_EQ(focused(), "usualSurfaces");
    press(Qt::Key_Return);
    ASSERT_EQ(surfaces().size(), 7U);
    for (int i = 0; i < 6; ++i)
        press(Qt::Key_Down); // to the trim
    EXPECT_EQ(focused(), "surface6");
    part<QPushButton>(page, "surfaceUse").click();
    EXPECT_TRUE(surfaces().back().inUse) << "nobody confirmed";
    prompts.confirmations.push_back(true);
    part<QPushButton>(page, "surfaceUse").click();
    EXPECT_FALSE(surfaces().back().inUse);
    EXPECT_EQ(surfaces().back().name, "Trim");
}

TEST_F(SurfacesPanelTest, TakesTheManualsFiguresByKeysAndSaysWhatLacks)
{
    press(Qt::Key_Return);
    press(Qt::Key_Return); // opens the left aileron
    ASSERT_EQ(focused(), "surfaceName");
    enter("upNominal", "25");
    press(Qt::Key_Return);
    EXPECT_EQ(textOf(page, "upToleranceProblem"), SurfaceWords::toleranceMissing().toStdString());
    enter("upTolerance", "2");
    enter("manualReference", "page 4-12, revision 3");
    press(Qt::Key_Return);
    ASSERT_TRUE(surfaces().front().up);
    EXPECT_EQ(surfaces().front().up->nominal, Deflection{25'000});
    EXPECT_EQ(focused(), "surface0");
}

TEST_F(SurfacesPanelTest, MovesASurfaceInTheOrderOfTheCheck)
{
    press(Qt::Key_Return);
    press(Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(surfaces().front().name, "Right aileron");
    EXPECT_EQ(focused(), "surface1");
}

TEST_F(SurfacesPanelTest, HoldsItsWordsAtLargeText)
{
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    const Look look = lookAt(1.5);
    page.setLook(look);
    showAt(page, {1280, 744}, look);
    for (int i = 0; i < 3; ++i)
        QCoreApplication::processEvents();
    auto* form = page.findChild<QLineEdit*>("senseCall")->parentWidget()->parentWidget();
    expectNothingClipped(*form, 18);
}
