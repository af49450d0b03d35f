#include "app/pages/setup/entry_form.h"
#include "app/pages/setup/list_panel.h"
#include "app/pages/setup/panel_parts.h"
#include "app/pages/setup/part_panels.h"

namespace rig {

namespace {

class PeoplePanel : public ListPanel
{
public:
    explicit PeoplePanel(SetUpPresenter& presenter)
        : ListPanel{presenter,
                    {SetUpWords::peoplePart(), SetUpWords::whyPeople()},
                    {"person", SetUpWords::peopleTitle(), SetUpWords::noPeople()}}
    {
        const auto change = [this](const Row& row) { open(row.id); };
        m_add = button("addPerson", SetUpWords::newPerson(), [this] { open({}); });
        addButtons({m_add, buttonFor("changePerson", SetUpWords::edit(), change)});
        onOpened(change);
        beginAt(m_add, true);
        m_form = new EntryForm<PersonEntry>{SetUpWords::saveWithKey(), true};
        m_form->line({"personName", SetUpWords::personName(), {}, Field::PersonName}, &PersonEntry::name);
        m_form->line({"personRole", SetUpWords::role(), SetUpWords::roleHint(), {}}, &PersonEntry::role);
        m_form->line({"personPhone", SetUpWords::phone(), {}, {}}, &PersonEntry::phone);
        addForm(m_form, [this] {
            finish(m_form, this->presenter().people.save(m_form->entry(), m_form->of<PersonId>()));
        });
    }

    void display(const SetUpView& view) override
    {
        m_persons = view.persons;
        std::vector<Row> rows;
        for (const Person& person : m_persons)
            rows.push_back({person.id.bytes,
                            shown(person.name),
                            true,
                            {MarkShape::Waiting, Role::InkSoft, shown(person.name),
                             SetUpWords::personDetail(shown(person.role), shown(person.phone))}});
        showRows(std::move(rows));
        setPrimary(m_add, !view.isDone(SetUpPart::People));
    }

private:
    void open(std::optional<IdBytes> of)
    {
        PersonEntry entry;
        for (const Person& person : m_persons)
            if (of == person.id.bytes)
                entry = entryOf(person);
        m_form->setTitle(of ? SetUpWords::changePersonTitle(entry.name) : SetUpWords::newPersonTitle());
        m_form->open(of, entry);
        show(m_form);
    }

    std::vector<Person> m_persons;
    QPushButton* m_add = nullptr;
    EntryForm<PersonEntry>* m_form = nullptr;
};

} // namespace

SetUpPanel* makePeoplePanel(SetUpPresenter& presenter)
{
    return new PeoplePanel{presenter};
}

} // namespace rig
