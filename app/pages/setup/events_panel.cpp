#include "app/pages/setup/events_panel.h"

#include "app/pages/setup/day_edit.h"
#include "app/pages/setup/form.h"
#include "app/pages/setup/panel_parts.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/row_list.h"
#include "app/wording/formats.h"
#include "app/wording/setup_words.h"
#include "core/day_entry.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace rig {

namespace {

RowText eventRowText(const EventRow& row)
{
    RowText text;
    text.title = SetUpWords::eventLine(Formats{}.day(row.event.day), SetUpWords::kind(row.event.kind),
                                       row.coupling.empty() ? SetUpWords::wholeAirframe()
                                                            : QString::fromStdString(row.coupling));
    text.detail = QString::fromStdString(row.event.note);
    return text;
}

} // namespace

EventsPanel::EventsPanel(SetUpPresenter& presenter, QWidget* parent)
    : SetUpPanel{presenter, SetUpWords::eventsPart(), SetUpWords::whyEvents(), parent}
{
    makeList();
    makeForm();
    body()->addWidget(m_list);
    body()->addWidget(m_form);
    body()->addStretch(1);
    show(false);
}

void EventsPanel::makeList()
{
    m_list = new QWidget;
    auto* layout = new QVBoxLayout{m_list};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    m_none = softLabel(SetUpWords::noEventsYet());
    m_add = panelButton("addEvent", SetUpWords::newEvent());
    m_rows = new RowList{"event", SetUpWords::eventsTitle()};
    layout->addWidget(new ButtonFlow{{m_add}});
    m_rows->leadTo({m_add});
    layout->addWidget(m_none);
    layout->addWidget(m_rows);
    layout->addWidget(softLabel(SetUpWords::eventStays()));
    connect(m_add, &QPushButton::clicked, this, [this] { open({}); });
}

void EventsPanel::makeForm()
{
    m_form = new Form{SetUpWords::saveWithKey(), true};
    m_form->setTitle(SetUpWords::newEventTitle());
    m_kind = m_form->addChoice({"eventKind", SetUpWords::eventKind(), {}, {}});
    m_day = m_form->addDay({"eventDay", SetUpWords::eventDay(), SetUpWords::dayHint(), Field::EventDay});
    m_where = new ChoiceBox{SetUpWords::eventWhere()};
    m_form->addField({"eventWhere", SetUpWords::eventWhere(), {}, {}}, m_where);
    m_note =
        m_form->addLine({"eventNote", SetUpWords::eventNote(), SetUpWords::eventNoteHint(), Field::EventNote},
                        Form::Width::Whole);
    m_fittingToo = new QLabel{SetUpWords::startFittingToo()};
    m_fittingToo->setProperty("kind", "caution");
    m_fittingToo->setWordWrap(true);
    m_fittingToo->setObjectName("startFittingToo");
    m_form->addWidget(m_fittingToo);
    for (int i = 0; i <= static_cast<int>(EventKind::Derigged); ++i)
        m_kind->addItem(SetUpWords::kind(static_cast<EventKind>(i)));
    connect(m_kind, &QComboBox::currentIndexChanged, this, &EventsPanel::remindOfFitting);
    connect(m_where, &QComboBox::activated, m_form, &Form::edited);
    connect(m_form, &Form::saveAsked, this, &EventsPanel::save);
    connect(m_form, &Form::closeAsked, this, [this] { show(false); });
    connect(m_form, &Form::edited, this, [this] { m_form->showStatus(SetUpWords::notSavedYet()); });
    remindOfFitting();
}

void EventsPanel::remindOfFitting()
{
    const auto kind = static_cast<EventKind>(m_kind->currentIndex());
    m_fittingToo->setVisible(kind == EventKind::Refitted || kind == EventKind::PartChanged);
}

void EventsPanel::display(const SetUpView& view)
{
    const std::optional<AirframeId> now = view.airframe ? std::optional{view.airframe->id} : std::nullopt;
    m_today = view.today;
    const bool same = now == m_airframe;
    const EventEntry typed = entry();
    if (!same && m_airframe && hasUnsaved())
        m_typed[*m_airframe] = typed;
    m_airframe = now;
    fillCouplings(view);
    if (same) {
        m_where->choose(typed.coupling);
    } else {
        show(false);
        if (const auto left = m_typed.extract(now.value_or(AirframeId{})))
            open(left.mapped());
    }
    std::vector<RowText> rows;
    for (const EventRow& row : view.events)
        rows.push_back(eventRowText(row));
    m_rows->display(rows);
    m_none->setVisible(rows.empty());
}

void EventsPanel::fillCouplings(const SetUpView& view)
{
    m_where->begin(SetUpWords::wholeAirframe());
    for (const CouplingRow& row : view.couplings)
        m_where->add(QString::fromStdString(row.coupling.name), row.coupling.id);
}

void EventsPanel::setLook(const Look& look)
{
    SetUpPanel::setLook(look);
    m_rows->setLook(look);
}

bool EventsPanel::hasUnsaved() const
{
    return m_isOpen && entry() != m_saved;
}

void EventsPanel::focusFirst()
{
    if (m_isOpen)
        m_form->focusFirst();
    else
        m_add->setFocus();
}

void EventsPanel::show(bool form)
{
    m_isOpen = form;
    m_list->setVisible(!form);
    m_form->setVisible(form);
    if (isVisible())
        focusFirst();
}

EventEntry EventsPanel::entry() const
{
    return {static_cast<EventKind>(m_kind->currentIndex()), m_day->text(), m_where->chosen<CouplingId>(),
            m_note->text()};
}

void EventsPanel::setEntry(const EventEntry& entry)
{
    m_kind->setCurrentIndex(static_cast<int>(entry.kind));
    m_day->setText(entry.day);
    m_where->choose(entry.coupling);
    m_note->setText(entry.note);
}

void EventsPanel::open(const std::optional<EventEntry>& typed)
{
    m_saved = {};
    m_saved.day = QString::fromStdString(dayText(m_today));
    setEntry(typed.value_or(m_saved));
    m_form->showProblems({});
    m_form->showStatus(typed ? SetUpWords::notSavedYet() : QString{});
    show(true);
}

void EventsPanel::save()
{
    const auto result = presenter().save(entry(), *m_airframe);
    if (result)
        m_form->showProblems(result.value().problems);
    if (result && result.value().isSaved())
        show(false);
    report(result);
}

} // namespace rig
