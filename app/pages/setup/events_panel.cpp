#include "app/pages/setup/entry_form.h"
#include "app/pages/setup/list_panel.h"
#include "app/pages/setup/panel_parts.h"
#include "app/pages/setup/part_panels.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"
#include "app/wording/formats.h"
#include "core/day_entry.h"

namespace rig {

namespace {

class EventForm : public EntryForm<EventEntry>
{
public:
    EventForm() : EntryForm{SetUpWords::saveWithKey(), true}
    {
        using Words = SetUpWords;
        setTitle(Words::newEventTitle());
        m_kind = choice({"eventKind", Words::eventKind(), {}, Field::EventKind}, &EventEntry::kind,
                        EventKind::Derigged, Words::kind);
        day({"eventDay", Words::eventDay(), Words::dayHint(), Field::EventDay}, &EventEntry::day);
        m_where = new ChoiceBox{Words::eventWhere()};
        addField({"eventWhere", Words::eventWhere(), {}, {}}, m_where);
        bind([this](EventEntry& entry) { entry.coupling = m_where->chosen<CouplingId>(); },
             [this](const EventEntry& entry) { m_where->choose(entry.coupling); });
        line({"eventNote", Words::eventNote(), Words::eventNoteHint(), Field::EventNote}, &EventEntry::note,
             Width::Whole);
        m_fittingToo = labelOf(Words::startFittingToo(), "caution", "startFittingToo");
        addWidget(m_fittingToo);
        connect(m_kind, &QComboBox::currentIndexChanged, this, &EventForm::remindOfFitting);
        connect(m_where, &QComboBox::activated, this, &Form::edited);
        remindOfFitting();
    }

    void fillCouplings(const std::vector<CouplingRow>& couplings)
    {
        const auto chosen = m_where->chosen<CouplingId>();
        m_where->begin(SetUpWords::wholeAirframe());
        for (const CouplingRow& row : couplings)
            m_where->add(shown(row.coupling.name), row.coupling.id);
        m_where->choose(chosen);
    }

private:
    void remindOfFitting()
    {
        const EventKind kind = entry().kind;
        m_fittingToo->setVisible(kind == EventKind::Refitted || kind == EventKind::PartChanged);
    }

    QComboBox* m_kind = nullptr;
    ChoiceBox* m_where = nullptr;
    QLabel* m_fittingToo = nullptr;
};

class EventsPanel : public ListPanel
{
public:
    explicit EventsPanel(SetUpPresenter& presenter)
        : ListPanel{presenter,
                    {SetUpWords::eventsPart(), SetUpWords::whyEvents()},
                    {"event", SetUpWords::eventsTitle(), SetUpWords::noEventsYet()}}
    {
        auto* add = button("addEvent", SetUpWords::newEvent(), [this] {
            m_form->open({}, {EventKind::Cleaned, shown(dayText(m_today)), {}, {}});
            show(m_form);
        });
        addButtons({add}, true);
        addBelow(softLabel(SetUpWords::eventStays()));
        beginAt(add, true);
        m_form = new EventForm;
        addForm(m_form,
                [this] { finish(m_form, this->presenter().events.save(m_form->entry(), airframe())); });
    }

    void display(const SetUpView& view) override
    {
        const bool isOther = leaveFor(view.airframe);
        m_today = view.today;
        m_form->fillCouplings(view.couplings);
        std::vector<Row> rows;
        for (const EventRow& row : view.events)
            rows.push_back({row.event.id.bytes, {}, true, rowText(row)});
        showRows(std::move(rows));
        if (isOther)
            arrive();
    }

private:
    static RowText rowText(const EventRow& row)
    {
        RowText text;
        text.title =
            SetUpWords::eventLine(Formats{}.day(row.event.day), SetUpWords::kind(row.event.kind),
                                  row.coupling.empty() ? SetUpWords::wholeAirframe() : shown(row.coupling));
        text.detail = shown(row.event.note);
        return text;
    }

    Day m_today;
    EventForm* m_form = nullptr;
};

} // namespace

SetUpPanel* makeEventsPanel(SetUpPresenter& presenter)
{
    return new EventsPanel{presenter};
}

} // namespace rig
