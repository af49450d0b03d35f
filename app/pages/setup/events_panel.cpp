#include "app/pages/setup/entry_form.h"
#include "app/pages/setup/list_panel.h"
#include "app/pages/setup/panel_parts.h"
#include "app/pages/setup/part_panels.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"
#include "app/wording/day_words.h"
#include "app/wording/formats.h"
#include "app/wording/joint_play_words.h"
#include "app/wording/trends_page_words.h"
#include "core/day_entry.h"

#include <algorithm>
#include <utility>

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
        day({"eventDay", Words::eventDay(), DayWords::hint(), Field::EventDay}, &EventEntry::day);
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

class PlayForm : public EntryForm<PlayEntry>
{
public:
    PlayForm() : EntryForm{SetUpWords::saveWithKey(), true}
    {
        using Words = JointPlayWords;
        setTitle(Words::heading());
        setExplanation(Words::how());
        day({"playDay", Words::day(), DayWords::hint(), Field::PlayDay}, &PlayEntry::day);
        m_where = box("playWhere", Words::where(), Field::PlayCoupling, &PlayEntry::coupling);
        choice({"playAlong", Words::along(), {}, Field::PlayAlong}, &PlayEntry::along, PlayFelt::Felt,
               Words::felt);
        line({"playAlongMm", Words::measuredAlong(), Words::measured(), Field::PlayAlongMm},
             &PlayEntry::alongMm);
        choice({"playAcross", Words::across(), {}, {}}, &PlayEntry::across, PlayFelt::Felt, Words::felt);
        line({"playAcrossMm", Words::measuredAcross(), Words::measured(), Field::PlayAcrossMm},
             &PlayEntry::acrossMm);
        m_person = box("playPerson", Words::person(), Field::PlayPerson, &PlayEntry::person);
        line({"playNote", Words::note(), Words::noteHint(), {}}, &PlayEntry::note, Width::Whole);
    }

    void fill(const SetUpView& view)
    {
        const auto where = m_where->chosen<CouplingId>();
        std::vector<Coupling> couplings;
        for (const CouplingRow& row : view.couplings)
            couplings.push_back(row.coupling);
        m_where->fill(JointPlayWords::chooseCoupling(), couplings);
        m_where->choose(where);
        const auto person = m_person->chosen<PersonId>();
        m_person->fill(JointPlayWords::choosePerson(), view.persons);
        m_person->choose(person);
    }

private:
    template <typename ThingId>
    ChoiceBox* box(const char* name, const QString& text, Field field,
                   std::optional<ThingId> PlayEntry::*member)
    {
        auto* made = new ChoiceBox{text};
        made->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        made->setMinimumContentsLength(12);
        addField({name, text, {}, field}, made);
        bind([=](PlayEntry& entry) { entry.*member = made->template chosen<ThingId>(); },
             [=](const PlayEntry& entry) { made->choose(entry.*member); });
        connect(made, &QComboBox::activated, this, &Form::edited);
        return made;
    }

    ChoiceBox* m_where = nullptr;
    ChoiceBox* m_person = nullptr;
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
        auto* play = button("addPlay", JointPlayWords::open(), [this] {
            PlayEntry entry;
            entry.day = shown(dayText(m_today));
            m_play->open({}, entry);
            show(m_play);
        });
        addButtons({add, play}, true);
        addBelow(softLabel(SetUpWords::eventStays()));
        beginAt(add, true);
        m_form = new EventForm;
        addForm(m_form,
                [this] { finish(m_form, this->presenter().events.save(m_form->entry(), airframe())); });
        m_play = new PlayForm;
        addForm(m_play, [this] { finish(m_play, this->presenter().events.save(m_play->entry())); });
    }

    void display(const SetUpView& view) override
    {
        const bool isOther = leaveFor(view.airframe);
        m_today = view.today;
        m_form->fillCouplings(view.couplings);
        m_play->fill(view);
        std::vector<std::pair<Day, Row>> dated;
        for (const EventRow& row : view.events)
            dated.emplace_back(row.event.day, Row{row.event.id.bytes, {}, true, rowText(row)});
        for (const PlayRow& row : view.plays)
            dated.emplace_back(row.play.day, Row{row.play.id.bytes, {}, true, rowText(row)});
        std::ranges::stable_sort(dated, std::ranges::greater{}, &std::pair<Day, Row>::first);
        std::vector<Row> rows;
        for (auto& [day, row] : dated)
            rows.push_back(std::move(row));
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
        const bool isFinding = row.event.kind == EventKind::Finding;
        text.detail =
            isFinding ? TrendsPageWords::event(row.event.kind, shown(row.event.note), shown(row.event.done))
                      : shown(row.event.note);
        return text;
    }

    static RowText rowText(const PlayRow& row)
    {
        RowText text;
        text.title = SetUpWords::eventLine(Formats{}.day(row.play.day), JointPlayWords::heading(),
                                           shown(row.coupling));
        text.detail = JointPlayWords::sentence(row.play, shown(row.person)) + QLatin1Char(' ') +
                      JointPlayWords::manualHasTheLimit();
        return text;
    }

    Day m_today;
    PlayForm* m_play = nullptr;
    EventForm* m_form = nullptr;
};

} // namespace

SetUpPanel* makeEventsPanel(SetUpPresenter& presenter)
{
    return new EventsPanel{presenter};
}

} // namespace rig
