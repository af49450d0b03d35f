#include "app/pages/setup/people_panel.h"

#include "app/pages/setup/form.h"
#include "app/pages/setup/panel_parts.h"
#include "app/widgets/row_list.h"
#include "app/wording/setup_words.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace rig {

PeoplePanel::PeoplePanel(SetUpPresenter& presenter, QWidget* parent)
    : SetUpPanel{presenter, SetUpWords::peoplePart(), SetUpWords::whyPeople(), parent}
{
    makeList();
    makeForm();
    body()->addWidget(m_list);
    body()->addWidget(m_form);
    body()->addStretch(1);
    show(false);
}

void PeoplePanel::makeList()
{
    m_list = new QWidget;
    auto* layout = new QVBoxLayout{m_list};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    m_none = softLabel(SetUpWords::noPeople());
    m_rows = new RowList{"person", SetUpWords::peopleTitle()};
    layout->addWidget(m_none);
    layout->addWidget(m_rows);
    m_change = panelButton("changePerson", SetUpWords::edit());
    m_add = panelButton("addPerson", SetUpWords::newPerson());
    layout->addWidget(new ButtonFlow{{m_add, m_change}});
    m_rows->leadTo({m_add, m_change});
    connect(m_rows, &RowList::rowOpened, this, &PeoplePanel::openChosen);
    connect(m_change, &QPushButton::clicked, this, &PeoplePanel::openChosen);
    connect(m_add, &QPushButton::clicked, this, [this] { open({}, {}); });
}

void PeoplePanel::makeForm()
{
    m_form = new Form{SetUpWords::saveWithKey(), true};
    m_name = m_form->addLine({"personName", SetUpWords::personName(), {}, Field::PersonName});
    m_role = m_form->addLine({"personRole", SetUpWords::role(), SetUpWords::roleHint(), {}});
    m_phone = m_form->addLine({"personPhone", SetUpWords::phone(), {}, {}});
    connect(m_form, &Form::saveAsked, this, &PeoplePanel::save);
    connect(m_form, &Form::closeAsked, this, [this] { show(false); });
    connect(m_form, &Form::edited, this, [this] { m_form->showStatus(SetUpWords::notSavedYet()); });
}

void PeoplePanel::display(const SetUpView& view)
{
    m_persons = view.persons;
    std::vector<RowText> rows;
    for (const Person& person : m_persons)
        rows.push_back({MarkShape::Waiting, Role::InkSoft, QString::fromStdString(person.name),
                        SetUpWords::personDetail(QString::fromStdString(person.role),
                                                 QString::fromStdString(person.phone))});
    m_rows->display(rows);
    m_none->setVisible(rows.empty());
    m_change->setVisible(!rows.empty());
    setPrimary(m_add, !view.isDone(SetUpPart::People));
}

void PeoplePanel::setLook(const Look& look)
{
    SetUpPanel::setLook(look);
    m_rows->setLook(look);
}

bool PeoplePanel::hasUnsaved() const
{
    return m_isOpen && entry() != m_saved;
}

void PeoplePanel::focusFirst()
{
    if (m_isOpen)
        m_form->focusFirst();
    else
        m_add->setFocus();
}

void PeoplePanel::show(bool form)
{
    m_isOpen = form;
    m_list->setVisible(!form);
    m_form->setVisible(form);
    if (isVisible())
        focusFirst();
}

PersonEntry PeoplePanel::entry() const
{
    return {m_name->text(), m_role->text(), m_phone->text()};
}

void PeoplePanel::open(std::optional<PersonId> person, const PersonEntry& entry)
{
    m_edited = person;
    m_saved = entry;
    m_form->setTitle(person ? SetUpWords::changePersonTitle(entry.name) : SetUpWords::newPersonTitle());
    m_name->setText(entry.name);
    m_role->setText(entry.role);
    m_phone->setText(entry.phone);
    m_form->showProblems({});
    m_form->showStatus({});
    show(true);
}

void PeoplePanel::openChosen()
{
    if (m_rows->chosen() < 0)
        return;
    const Person& person = m_persons[static_cast<std::size_t>(m_rows->chosen())];
    open(person.id, entryOf(person));
}

void PeoplePanel::save()
{
    const auto result = presenter().save(entry(), m_edited);
    if (result)
        m_form->showProblems(result.value().problems);
    if (result && result.value().isSaved())
        show(false);
    report(result);
}

} // namespace rig
