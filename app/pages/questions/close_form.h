#pragma once

#include "app/pages/questions/questions_view.h"
#include "app/widgets/form_field.h"

#include <QWidget>

class QLabel;
class QPlainTextEdit;
class QVBoxLayout;

namespace rig {

class ChoiceBox;

// Who decided, what was found, what was done. Nobody is filled in, and what is lacking is said beside its
// field. Ctrl+Enter closes the question, Esc puts the form aside.
class CloseForm : public QWidget
{
    Q_OBJECT

public:
    explicit CloseForm(QWidget* parent = nullptr);

    // What is chosen stays chosen.
    void setPersons(const std::vector<Person>& persons);
    // Whose own finding it is: said beside the name, and kept from nobody.
    void setFoundBy(std::optional<PersonId> person);
    void setEntry(const CloseEntry& entry);
    CloseEntry entry() const;
    void showLacks(const std::vector<CloseLack>& lacks);
    void focusFirst();

signals:
    void saveAsked();
    void putAsideAsked();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void addButtons(QVBoxLayout* layout);
    void sayWhetherOwn();

    std::optional<PersonId> m_foundBy;
    QLabel* m_own = nullptr;

    ChoiceBox* m_decidedBy = nullptr;
    QPlainTextEdit* m_found = nullptr;
    QPlainTextEdit* m_done = nullptr;
    ChoiceBox* m_enteredBy = nullptr;
    FormField m_decidedField;
    FormField m_foundField;
    FormField m_doneField;
    QLabel* m_status = nullptr;
};

} // namespace rig
