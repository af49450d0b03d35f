#pragma once

#include "app/pages/statements_presenter.h"
#include "app/widgets/form_field.h"

#include <QWidget>

class QLabel;
class QPlainTextEdit;
class QPushButton;
class QVBoxLayout;

namespace rig {

class ChoiceBox;
class DayEdit;

// Who found what where and did what, or who asks what. Nobody is filled in, and what is lacking is said
// beside its field. Ctrl+Enter keeps it, Esc puts it aside.
class StatementForm : public QWidget
{
    Q_OBJECT

public:
    explicit StatementForm(QWidget* parent = nullptr);

    // What is chosen stays chosen.
    void setChoices(const StatementChoices& choices);
    // `about` says in words which reading is asked about; empty: none.
    void setEntry(const StatementEntry& entry, const QString& about);
    void setTyped(const StatementEntry& entry); // that was put aside
    StatementEntry entry() const;
    void showLacks(const std::vector<StatementLack>& lacks);
    void focusFirst();

signals:
    void keepAsked();
    void putAsideAsked();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void addButtons(QVBoxLayout* layout);
    QString sentenceOf(StatementLack lack) const;
    const FormField& fieldOf(StatementLack lack) const;

    StatementEntry m_entry; // what it is about
    QLabel* m_title = nullptr;
    QLabel* m_about = nullptr;
    QLabel* m_reading = nullptr;
    ChoiceBox* m_where = nullptr;
    DayEdit* m_day = nullptr;
    ChoiceBox* m_person = nullptr;
    QPlainTextEdit* m_said = nullptr;
    QPlainTextEdit* m_done = nullptr;
    FormField m_whereField;
    FormField m_dayField;
    FormField m_personField;
    FormField m_saidField;
    FormField m_doneField;
    QLabel* m_status = nullptr;
    QPushButton* m_keep = nullptr;
};

} // namespace rig
