#pragma once

#include "app/pages/learn/sign_off_presenter.h"

#include <QWidget>

class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;
class QVBoxLayout;

namespace rig {

class ChoiceBox;
class DayEdit;

// How a learner stands, riggings under supervision, and who signs. Nobody and no day is filled in.
class SignOffPanel : public QWidget
{
    Q_OBJECT

public:
    explicit SignOffPanel(QWidget* parent = nullptr);

    // What is typed stays, unless it is another person's.
    void display(const SignOffView& view);
    void showKept(const QString& sentence); // and what was typed goes
    void showTakenBack(const QString& sentence);

signals:
    void said(QWidget* where); // a sentence that has to be seen, wherever the page was scrolled to
    void supervisedAsked(rig::PersonId learner, const rig::SupervisedEntry& entry);
    void takeBackAsked(rig::SupervisedId rigging, rig::PersonId who, const QString& what);
    void signAsked(rig::PersonId person, const rig::SignOffEntry& entry);

private:
    void buildSupervised(QVBoxLayout* layout);
    void buildTakeBack(QVBoxLayout* layout);
    void buildSign(QVBoxLayout* layout);
    void clearTyped();
    void tellKept(const QString& sentence);
    void fillBoxes();
    QString nameOf(PersonId person) const;
    QStringList namesOf(const std::vector<CouplingId>& couplings) const;
    QString toldOf(const SupervisedRow& row) const;
    QString rowOf(const SupervisedRow& row) const; // and who is not named in its record
    QStringList notNamedIn() const;                // of the learner and the mentor, in the record chosen
    void showRows();
    void showNotNamed();
    void showNotMet();
    void keepSupervised();
    void takeBack();
    void sign(SignOffKind kind);

    SignOffView m_view;
    QLabel* m_title = nullptr;
    QLabel* m_standing = nullptr;
    QLabel* m_by = nullptr;
    QLabel* m_last = nullptr;
    QLabel* m_asked = nullptr;
    QLabel* m_rows = nullptr;
    QWidget* m_add = nullptr;
    QLabel* m_noRiggings = nullptr;
    ChoiceBox* m_rigging = nullptr;
    ChoiceBox* m_mentor = nullptr;
    QLineEdit* m_supervisedNote = nullptr;
    QLabel* m_notNamed = nullptr;
    QCheckBox* m_wereThere = nullptr;
    QLabel* m_supervisedProblem = nullptr;
    QWidget* m_take = nullptr;
    ChoiceBox* m_takeWhich = nullptr;
    ChoiceBox* m_takeWho = nullptr;
    QLabel* m_takeProblem = nullptr;
    QLabel* m_signTitle = nullptr;
    ChoiceBox* m_signer = nullptr;
    DayEdit* m_day = nullptr;
    QSpinBox* m_months = nullptr;
    QSpinBox* m_rest = nullptr;
    QLineEdit* m_note = nullptr;
    QLabel* m_notMet = nullptr;
    QCheckBox* m_allTheSame = nullptr;
    QLabel* m_signProblem = nullptr;
    QPushButton* m_withdraw = nullptr;
    QLabel* m_kept = nullptr;
    QLabel* m_historyTitle = nullptr;
    QLabel* m_history = nullptr;
};

} // namespace rig
