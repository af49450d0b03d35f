#include "app/pages/setup/entry_form.h"
#include "app/pages/setup/list_panel.h"
#include "app/pages/setup/panel_parts.h"
#include "app/pages/setup/part_panels.h"
#include "app/widgets/parts.h"
#include "app/wording/coupling_words.h"
#include "app/wording/surface_words.h"

namespace rig {

namespace {

// Everything that is asked of one surface. Figures are typed as the manual gives them.
class SurfaceForm : public EntryForm<SurfaceEntry>
{
public:
    SurfaceForm() : EntryForm{SetUpWords::saveWithKey(), true}
    {
        using Words = SurfaceWords;
        using Entry = SurfaceEntry;
        line({"surfaceName", Words::name(), Words::nameHint(), Field::SurfaceName}, &Entry::name);
        m_kind = choice({"surfaceKind", Words::kind(), Words::kindHint(), {}}, &Entry::kind,
                        SurfaceKind::Other, Words::kindName);
        choice({"surfaceSide", Words::side(), {}, {}}, &Entry::side, Side::Right, CouplingWords::sideName);
        choice({"surfaceUnit", Words::unit(), {}, {}}, &Entry::unit, DeflectionUnit::Millimetres,
               Words::unitName);
        m_senseCall = line({"senseCall", Words::senseCall(), {}, {}}, &Entry::senseCall, Width::Whole);
        line({"upNominal", Words::upNominal(), Words::figureHint(), Field::UpNominal}, &Entry::upNominal);
        line({"upTolerance", Words::upTolerance(), {}, Field::UpTolerance}, &Entry::upTolerance);
        line({"downNominal", Words::downNominal(), {}, Field::DownNominal}, &Entry::downNominal);
        line({"downTolerance", Words::downTolerance(), {}, Field::DownTolerance}, &Entry::downTolerance);
        line({"mostPlay", Words::mostPlay(), {}, Field::MostPlay}, &Entry::mostPlay);
        line({"manualReference", Words::reference(), Words::referenceHint(), Field::ManualReference},
             &Entry::reference);
        line({"measuredAt", Words::measuredAt(), Words::measuredAtHint(), Field::MeasuredAt},
             &Entry::measuredAt, Width::Whole);
        connect(m_kind, &QComboBox::currentIndexChanged, this, &SurfaceForm::showUsualCall);
        showUsualCall();
    }

private:
    void showUsualCall()
    {
        setHint(m_senseCall, SurfaceWords::senseCallHint(SurfaceWords::usualCall(entry().kind)));
    }

    QComboBox* m_kind = nullptr;
    QLineEdit* m_senseCall = nullptr;
};

class SurfacesPanel : public OrderPanel
{
public:
    SurfacesPanel(SetUpPresenter& presenter, Prompts& prompts)
        : OrderPanel{presenter,
                     prompts,
                     {SurfaceWords::part(), SurfaceWords::why()},
                     {"surface", SurfaceWords::title(), SurfaceWords::none()},
                     SurfaceWords::takeOutQuestion()}
    {
        const auto change = [this](const Row& row) { open(row.id); };
        const auto order = makeOrderButtons("surfaceUp", "surfaceDown", "surfaceUse");
        addButtons({buttonFor("changeSurface", SetUpWords::edit(), change), order.up, order.down, order.use});
        auto* usual = button("usualSurfaces", SurfaceWords::usual(), [this] { addUsual(); });
        addButtons({usual, button("addSurface", SurfaceWords::add(), [this] { open({}); })});
        addBelow(softLabel(SurfaceWords::usualMeaning()));
        m_status = labelOf({}, "soft", "surfacesStatus");
        addBelow(m_status);
        sayIn(m_status, {});
        onOpened(change);
        beginAt(usual, false);
        m_form = new SurfaceForm;
        addForm(m_form, [this] {
            finish(m_form,
                   this->presenter().surfaces.save(m_form->entry(), airframe(), m_form->of<SurfaceId>()));
        });
    }

    void display(const SetUpView& view) override
    {
        const bool isOther = leaveFor(view.airframe);
        m_surfaces = view.surfaces;
        std::vector<Row> rows;
        for (const Surface& one : m_surfaces)
            rows.push_back(
                {one.id.bytes, shown(one.name), one.inUse, rowText(one, static_cast<int>(rows.size()) + 1)});
        showRows(std::move(rows));
        if (!isOther)
            return;
        sayIn(m_status, {});
        arrive();
    }

private:
    static RowText rowText(const Surface& surface, int number)
    {
        const bool hasFigures = surface.up || surface.down || surface.mostPlay;
        RowText text = orderedText(shown(surface.name), number, surface.inUse, hasFigures);
        text.detail =
            CouplingWords::joined(SurfaceWords::kindName(surface.kind),
                                  hasFigures ? SurfaceWords::figuresFrom(shown(surface.manualReference))
                                             : SurfaceWords::noFigures());
        return text;
    }

    void open(std::optional<IdBytes> of)
    {
        SurfaceEntry entry;
        for (const Surface& one : m_surfaces)
            if (of == one.id.bytes)
                entry = entryOf(one);
        m_form->setTitle(of ? CouplingWords::changeTitle(entry.name) : SurfaceWords::newTitle());
        m_form->open(of, entry);
        sayIn(m_status, {});
        show(m_form);
    }

    void addUsual()
    {
        const auto added = presenter().surfaces.addUsual(airframe());
        if (added && added.value() == 0)
            return sayIn(m_status, SurfaceWords::usualThere());
        if (report(added ? Outcome{Done{}} : Outcome{added.problem()}))
            rows()->focusChosen();
    }

    Outcome moveThing(const IdBytes& surface, int by) override
    {
        return presenter().surfaces.move(airframe(), SurfaceId{surface}, by);
    }

    Outcome setThingInUse(const IdBytes& surface, bool inUse) override
    {
        return presenter().surfaces.setInUse(airframe(), SurfaceId{surface}, inUse);
    }

    std::vector<Surface> m_surfaces;
    QLabel* m_status = nullptr;
    SurfaceForm* m_form = nullptr;
};

} // namespace

SetUpPanel* makeSurfacesPanel(SetUpPresenter& presenter, Prompts& prompts)
{
    return new SurfacesPanel{presenter, prompts};
}

} // namespace rig
