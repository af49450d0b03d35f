#pragma once

#include "app/pages/setup/setup_panel.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace rig {

class Form;
class RowList;

// Everybody who measures, looks, signs or is called.
class PeoplePanel : public SetUpPanel
{
    Q_OBJECT

public:
    explicit PeoplePanel(SetUpPresenter& presenter, QWidget* parent = nullptr);

    void display(const SetUpView& view) override;
    void setLook(const Look& look) override;
    bool hasUnsaved() const override;
    void focusFirst() override;

private:
    void makeList();
    void makeForm();
    void show(bool form);
    void open(std::optional<PersonId> person, const PersonEntry& entry);
    void openChosen();
    void save();
    PersonEntry entry() const;

    std::vector<Person> m_persons;
    bool m_isOpen = false;
    std::optional<PersonId> m_edited; // empty: a new one
    PersonEntry m_saved;

    QWidget* m_list = nullptr;
    QLabel* m_none = nullptr;
    RowList* m_rows = nullptr;
    QPushButton* m_add = nullptr;
    QPushButton* m_change = nullptr;
    Form* m_form = nullptr;
    QLineEdit* m_name = nullptr;
    QLineEdit* m_role = nullptr;
    QLineEdit* m_phone = nullptr;
};

} // namespace rig
