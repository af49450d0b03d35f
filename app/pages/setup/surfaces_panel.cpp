#include "app/pages/setup/surfaces_panel.h"

#include "app/pages/prompts.h"
#include "app/pages/setup/panel_parts.h"
#include "app/pages/setup/surface_form.h"
#include "app/widgets/parts.h"
#include "app/widgets/row_list.h"
#include "app/wording/coupling_words.h"
#include "app/wording/setup_words.h"
#include "app/wording/surface_words.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace rig {

namespace {

RowText surfaceRowText(const Surface& surface, int number)
{
    const QString name = QString::fromStdString(surface.name);
    const QString reference = QString::fromStdString(surface.manualReference);
    const bool hasFigures = surface.up || surface.down || surface.mostPlay;
    RowText text;
    text.title = surface.inUse ? CouplingWords::line(number, name) : CouplingWords::lineOutOfUse(name);
    text.detail =
        CouplingWords::joined(SurfaceWords::kindName(surface.kind),
                              hasFigures ? SurfaceWords::figuresFrom(reference) : SurfaceWords::noFigures());
    if (surface.inUse) {
        text.shape = hasFigures ? MarkShape::DiscTick : MarkShape::DashedRing;
        text.role = hasFigures ? Role::Accent : Role::Unknown;
    }
    return text;
}

} // namespace

SurfacesPanel::SurfacesPanel(SetUpPresenter& presenter, Prompts& prompts, QWidget* parent)
    : SetUpPanel{presenter, SurfaceWords::part(), SurfaceWords::why(), parent}, m_prompts{prompts}
{
    m_list = makeList();
    m_form = new SurfaceForm;
    body()->addWidget(m_list);
    body()->addWidget(m_form);
    body()->addStretch(1);
    connect(m_form, &Form::closeAsked, this, [this] { showForm(false); });
    connect(m_form, &Form::saveAsked, this, &SurfacesPanel::save);
    connect(m_form, &Form::edited, this, [this] { m_form->showStatus(SetUpWords::notSavedYet()); });
    showForm(false);
}

QWidget* SurfacesPanel::makeList()
{
    auto* list = new QWidget;
    auto* layout = new QVBoxLayout{list};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    m_none = softLabel(SurfaceWords::none());
    m_rows = new RowList{"surface", SurfaceWords::title()};
    layout->addWidget(m_none);
    layout->addWidget(m_rows);
    m_usual = panelButton("usualSurfaces", SurfaceWords::usual());
    auto* add = panelButton("addSurface", SurfaceWords::add());
    auto* change = panelButton("changeSurface", SetUpWords::edit());
    auto* up = panelButton("surfaceUp", CouplingWords::moveUp());
    auto* down = panelButton("surfaceDown", CouplingWords::moveDown());
    m_use = panelButton("surfaceUse", CouplingWords::takeOut());
    m_forChosen = {change, up, down, m_use};
    layout->addWidget(new ButtonFlow{m_forChosen});
    layout->addWidget(new ButtonFlow{{m_usual, add}});
    layout->addWidget(softLabel(SurfaceWords::usualMeaning()));
    m_status = softLabel({});
    m_status->setObjectName("surfacesStatus");
    m_status->hide();
    layout->addWidget(m_status);
    m_rows->leadTo({change, up, down, m_use, m_usual, add});
    connect(m_rows, &RowList::rowChosen, this, [this] { showRows(); });
    connect(m_rows, &RowList::rowOpened, this, &SurfacesPanel::openChosen);
    connect(change, &QPushButton::clicked, this, &SurfacesPanel::openChosen);
    connect(up, &QPushButton::clicked, this, [this] { move(-1); });
    connect(down, &QPushButton::clicked, this, [this] { move(1); });
    connect(m_use, &QPushButton::clicked, this, &SurfacesPanel::changeUse);
    connect(m_usual, &QPushButton::clicked, this, &SurfacesPanel::addUsual);
    connect(add, &QPushButton::clicked, this, [this] { open({}, {}); });
    return list;
}

void SurfacesPanel::display(const SetUpView& view)
{
    const std::optional<AirframeId> now = view.airframe ? std::optional{view.airframe->id} : std::nullopt;
    m_surfaces = view.surfaces;
    if (now != m_airframe) {
        if (m_airframe && hasUnsaved())
            m_open[*m_airframe] = {m_edited, m_form->entry()};
        m_airframe = now;
        sayIn(m_status, {});
        showForm(false);
        m_rows->choose(0);
        if (const auto left = m_open.extract(now.value_or(AirframeId{})))
            open(left.mapped().surface, left.mapped().typed);
    }
    showRows();
}

void SurfacesPanel::showRows()
{
    std::vector<RowText> rows;
    int number = 0;
    for (const Surface& surface : m_surfaces)
        rows.push_back(surfaceRowText(surface, ++number));
    m_rows->display(rows);
    m_none->setVisible(rows.empty());
    for (QPushButton* button : m_forChosen)
        button->setVisible(!rows.empty());
    setPrimary(m_usual, rows.empty());
    if (const Surface* surface = chosen())
        m_use->setText(surface->inUse ? CouplingWords::takeOut() : CouplingWords::putBack());
}

const Surface* SurfacesPanel::chosen() const
{
    const int at = m_rows->chosen();
    return at < 0 ? nullptr : &m_surfaces[static_cast<std::size_t>(at)];
}

void SurfacesPanel::choose(SurfaceId surface)
{
    for (std::size_t i = 0; i < m_surfaces.size(); ++i)
        if (m_surfaces[i].id == surface)
            m_rows->choose(static_cast<int>(i));
}

void SurfacesPanel::setLook(const Look& look)
{
    SetUpPanel::setLook(look);
    m_rows->setLook(look);
}

bool SurfacesPanel::hasUnsaved() const
{
    return m_formOpen && m_form->entry() != m_saved;
}

void SurfacesPanel::focusFirst()
{
    if (m_formOpen)
        m_form->focusFirst();
    else if (m_surfaces.empty())
        m_usual->setFocus();
    else
        m_rows->focusChosen();
}

void SurfacesPanel::showForm(bool open)
{
    m_formOpen = open;
    m_list->setVisible(!open);
    m_form->setVisible(open);
    if (isVisible())
        focusFirst();
}

void SurfacesPanel::open(std::optional<SurfaceId> surface, const std::optional<SurfaceEntry>& typed)
{
    m_edited = surface;
    m_saved = {};
    m_form->setTitle(SurfaceWords::newTitle());
    for (const Surface& one : m_surfaces)
        if (surface == one.id) {
            m_saved = entryOf(one);
            m_form->setTitle(CouplingWords::changeTitle(m_saved.name));
        }
    m_form->setEntry(typed.value_or(m_saved));
    m_form->showProblems({});
    m_form->showStatus(typed ? SetUpWords::notSavedYet() : QString{});
    sayIn(m_status, {});
    showForm(true);
}

void SurfacesPanel::openChosen()
{
    if (const Surface* surface = chosen())
        open(surface->id, {});
}

void SurfacesPanel::save()
{
    const auto result = presenter().save(m_form->entry(), *m_airframe, m_edited);
    if (result)
        m_form->showProblems(result.value().problems);
    if (!result || !result.value().isSaved()) {
        report(result);
        return;
    }
    showForm(false);
    report(result);
    choose(SurfaceId{result.value().id});
}

void SurfacesPanel::addUsual()
{
    const auto added = presenter().addUsualSurfaces(*m_airframe);
    if (!added) {
        report(Outcome{added.problem()});
        return;
    }
    if (added.value() == 0)
        return sayIn(m_status, SurfaceWords::usualThere());
    report(Outcome{Done{}});
    m_rows->focusChosen();
}

void SurfacesPanel::move(int by)
{
    const Surface* surface = chosen();
    if (!surface || !surface->inUse)
        return;
    const SurfaceId id = surface->id;
    if (!report(presenter().move(*m_airframe, id, by)))
        return;
    choose(id);
    m_rows->focusChosen();
}

void SurfacesPanel::changeUse()
{
    const Surface* surface = chosen();
    if (!surface)
        return;
    const SurfaceId id = surface->id; // the rows may be others once it is answered
    const QString name = QString::fromStdString(surface->name);
    const bool inUse = surface->inUse;
    if (inUse && !m_prompts.confirm(this, CouplingWords::takeOutTitle(name), SurfaceWords::takeOutQuestion(),
                                    CouplingWords::takeOutYes()))
        return;
    report(presenter().setInUse(*m_airframe, id, !inUse));
}

void SurfacesPanel::keyPressEvent(QKeyEvent* event)
{
    const bool arrow = event->key() == Qt::Key_Up || event->key() == Qt::Key_Down;
    if (!m_formOpen && arrow && event->modifiers().testFlag(Qt::AltModifier))
        return move(event->key() == Qt::Key_Up ? -1 : 1);
    SetUpPanel::keyPressEvent(event);
}

} // namespace rig
