#include "app/pages/setup/couplings_panel.h"

#include "app/pages/prompts.h"
#include "app/pages/setup/coupling_form.h"
#include "app/pages/setup/fitting_form.h"
#include "app/pages/setup/panel_parts.h"
#include "app/pages/setup/usual_couplings.h"
#include "app/widgets/row_list.h"
#include "app/wording/coupling_words.h"
#include "app/wording/formats.h"
#include "app/wording/setup_words.h"
#include "core/day_entry.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

RowText rowText(const CouplingRow& row, int number)
{
    const QString name = QString::fromStdString(row.coupling.name);
    RowText text;
    text.title = row.coupling.inUse ? CouplingWords::line(number, name) : CouplingWords::lineOutOfUse(name);
    text.detail = row.hasBand ? CouplingWords::bandThere() : CouplingWords::noBandYet();
    if (row.coupling.inUse) {
        text.shape = row.hasBand ? MarkShape::DiscTick : MarkShape::DashedRing;
        text.role = row.hasBand ? Role::Accent : Role::Unknown;
    }
    text.detail = CouplingWords::joined(text.detail, CouplingWords::layoutShort(row.coupling.layout));
    if (row.fitting)
        text.detail = CouplingWords::joined(
            text.detail, CouplingWords::fittingSince(Formats{}.day(row.fitting->begins),
                                                     QString::fromStdString(row.fitting->reason)));
    return text;
}

} // namespace

CouplingsPanel::CouplingsPanel(SetUpPresenter& presenter, Prompts& prompts, QWidget* parent)
    : SetUpPanel{presenter, SetUpWords::couplingsPart(), SetUpWords::whyCouplings(), parent}, m_prompts{
                                                                                                  prompts}
{
    m_list = makeList();
    m_form = new CouplingForm;
    m_fitting = new FittingForm;
    m_usualForm = new UsualCouplingsForm;
    for (QWidget* one : std::initializer_list<QWidget*>{m_list, m_form, m_fitting, m_usualForm})
        body()->addWidget(one);
    body()->addStretch(1);
    for (Form* form : std::initializer_list<Form*>{m_form, m_fitting, m_usualForm})
        connect(form, &Form::closeAsked, this, [this] { show(Shown::List); });
    connect(m_form, &Form::saveAsked, this, &CouplingsPanel::saveCoupling);
    connect(m_fitting, &Form::saveAsked, this, &CouplingsPanel::saveFitting);
    connect(m_usualForm, &Form::saveAsked, this, &CouplingsPanel::addUsual);
    connect(m_form, &Form::edited, this, [this] { m_form->showStatus(SetUpWords::notSavedYet()); });
    show(Shown::List);
}

QWidget* CouplingsPanel::makeList()
{
    auto* list = new QWidget;
    auto* layout = new QVBoxLayout{list};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    m_none = softLabel(CouplingWords::none());
    m_rows = new RowList{"coupling", CouplingWords::title()};
    layout->addWidget(m_none);
    layout->addWidget(m_rows);
    m_usual = panelButton("usualCouplings", CouplingWords::usual());
    m_add = panelButton("addCoupling", CouplingWords::add());
    auto* change = panelButton("changeCoupling", SetUpWords::edit());
    auto* up = panelButton("moveUp", CouplingWords::moveUp());
    auto* down = panelButton("moveDown", CouplingWords::moveDown());
    auto* fitting = panelButton("newFitting", CouplingWords::newFitting());
    m_use = panelButton("takeOutOfUse", CouplingWords::takeOut());
    m_forChosen = {change, up, down, fitting, m_use};
    layout->addWidget(new ButtonFlow{{change, up, down, fitting, m_use}});
    layout->addWidget(new ButtonFlow{{m_usual, m_add}});
    m_rows->leadTo({change, up, down, fitting, m_use, m_usual, m_add});
    connect(m_rows, &RowList::rowChosen, this, [this] { showRows(); });
    connect(m_rows, &RowList::rowOpened, this, &CouplingsPanel::openChosen);
    connect(change, &QPushButton::clicked, this, &CouplingsPanel::openChosen);
    connect(up, &QPushButton::clicked, this, [this] { move(-1); });
    connect(down, &QPushButton::clicked, this, [this] { move(1); });
    connect(fitting, &QPushButton::clicked, this, &CouplingsPanel::openFitting);
    connect(m_use, &QPushButton::clicked, this, &CouplingsPanel::changeUse);
    connect(m_usual, &QPushButton::clicked, this, &CouplingsPanel::openUsual);
    connect(m_add, &QPushButton::clicked, this, [this] { open({}, {}); });
    return list;
}

void CouplingsPanel::display(const SetUpView& view)
{
    const std::optional<AirframeId> now = view.airframe ? std::optional{view.airframe->id} : std::nullopt;
    m_couplings = view.couplings;
    m_today = view.today;
    if (now != m_airframe) {
        if (m_airframe && hasUnsaved())
            m_open[*m_airframe] = {m_edited, m_form->entry()};
        m_airframe = now;
        show(Shown::List);
        m_rows->choose(0);
        if (const auto left = m_open.extract(now.value_or(AirframeId{})))
            open(left.mapped().coupling, left.mapped().typed);
    }
    showRows();
}

void CouplingsPanel::showRows()
{
    std::vector<RowText> rows;
    int number = 0;
    for (const CouplingRow& row : m_couplings)
        rows.push_back(rowText(row, ++number));
    m_rows->display(rows);
    m_none->setVisible(rows.empty());
    for (QPushButton* button : m_forChosen)
        button->setVisible(!rows.empty());
    setPrimary(m_usual, rows.empty());
    if (const CouplingRow* row = chosen())
        m_use->setText(row->coupling.inUse ? CouplingWords::takeOut() : CouplingWords::putBack());
}

const CouplingRow* CouplingsPanel::chosen() const
{
    const int at = m_rows->chosen();
    return at < 0 ? nullptr : &m_couplings[static_cast<std::size_t>(at)];
}

void CouplingsPanel::setLook(const Look& look)
{
    SetUpPanel::setLook(look);
    m_rows->setLook(look);
}

bool CouplingsPanel::hasUnsaved() const
{
    return m_shown == Shown::Coupling && m_form->entry() != m_saved;
}

void CouplingsPanel::focusFirst()
{
    switch (m_shown) {
    case Shown::Coupling:
        return m_form->focusFirst();
    case Shown::Fitting:
        return m_fitting->focusFirst();
    case Shown::Usual:
        return m_usualForm->focusFirst();
    case Shown::List:
        break;
    }
    if (m_couplings.empty())
        m_usual->setFocus();
    else
        m_rows->focusChosen();
}

void CouplingsPanel::show(Shown what)
{
    m_shown = what;
    m_list->setVisible(what == Shown::List);
    m_form->setVisible(what == Shown::Coupling);
    m_fitting->setVisible(what == Shown::Fitting);
    m_usualForm->setVisible(what == Shown::Usual);
    if (isVisible())
        focusFirst();
}

void CouplingsPanel::open(std::optional<CouplingId> coupling, const std::optional<CouplingEntry>& typed)
{
    m_edited = coupling;
    m_saved = {};
    m_form->setTitle(CouplingWords::newTitle());
    for (const CouplingRow& row : m_couplings)
        if (coupling == row.coupling.id) {
            m_saved = entryOf(row.coupling);
            m_form->setTitle(CouplingWords::changeTitle(m_saved.name));
        }
    m_form->setEntry(typed.value_or(m_saved));
    m_form->showProblems({});
    m_form->showStatus(typed ? SetUpWords::notSavedYet() : QString{});
    show(Shown::Coupling);
}

void CouplingsPanel::openChosen()
{
    if (const CouplingRow* row = chosen())
        open(row->coupling.id, {});
}

void CouplingsPanel::openFitting()
{
    const CouplingRow* row = chosen();
    if (!row)
        return;
    m_refitted = row->coupling.id;
    m_fitting->setTitle(CouplingWords::fittingTitle(QString::fromStdString(row->coupling.name)));
    m_fitting->setEntry({QString::fromStdString(dayText(m_today)), {}});
    m_fitting->showProblems({});
    m_fitting->showStatus({});
    show(Shown::Fitting);
}

void CouplingsPanel::openUsual()
{
    show(Shown::Usual);
    m_usualForm->begin(m_couplings);
}

void CouplingsPanel::saveCoupling()
{
    const auto result = presenter().save(m_form->entry(), *m_airframe, m_edited);
    if (result)
        m_form->showProblems(result.value().problems);
    if (!result || !result.value().isSaved()) {
        report(result);
        return;
    }
    show(Shown::List);
    report(result);
    const CouplingId id{result.value().id};
    for (std::size_t i = 0; i < m_couplings.size(); ++i)
        if (m_couplings[i].coupling.id == id)
            m_rows->choose(static_cast<int>(i));
}

void CouplingsPanel::saveFitting()
{
    const auto result = presenter().save(m_fitting->entry(), *m_airframe, m_refitted);
    if (result)
        m_fitting->showProblems(result.value().problems);
    if (result && result.value().isSaved())
        show(Shown::List);
    report(result);
}

void CouplingsPanel::addUsual()
{
    const auto ticked = m_usualForm->ticked();
    if (ticked.empty())
        return m_usualForm->showStatus(CouplingWords::tickOne());
    const Outcome added = presenter().addUsual(*m_airframe, ticked);
    if (added)
        show(Shown::List);
    report(added);
}

void CouplingsPanel::move(int by)
{
    const CouplingRow* row = chosen();
    if (!row || !row->coupling.inUse)
        return;
    const CouplingId id = row->coupling.id;
    if (!report(presenter().move(*m_airframe, id, by)))
        return;
    for (std::size_t i = 0; i < m_couplings.size(); ++i)
        if (m_couplings[i].coupling.id == id)
            m_rows->choose(static_cast<int>(i));
    m_rows->focusChosen();
}

void CouplingsPanel::changeUse()
{
    const CouplingRow* row = chosen();
    if (!row)
        return;
    const CouplingId id = row->coupling.id; // the rows may be others once it is answered
    const QString name = QString::fromStdString(row->coupling.name);
    const bool inUse = row->coupling.inUse;
    if (inUse && !m_prompts.confirm(this, CouplingWords::takeOutTitle(name), CouplingWords::takeOutQuestion(),
                                    CouplingWords::takeOutYes()))
        return;
    report(presenter().setInUse(*m_airframe, id, !inUse));
}

void CouplingsPanel::keyPressEvent(QKeyEvent* event)
{
    const bool arrow = event->key() == Qt::Key_Up || event->key() == Qt::Key_Down;
    if (m_shown == Shown::List && arrow && event->modifiers().testFlag(Qt::AltModifier))
        return move(event->key() == Qt::Key_Up ? -1 : 1);
    SetUpPanel::keyPressEvent(event);
}

} // namespace rig
