#pragma once

#include "core/review/baseline_sheet.h"

#include <QFrame>

class QLabel;
class QPushButton;
class QWidget;

namespace rig {

class ChoiceBox;

// The freeze of a baseline with two names, or who froze it.
class BaselineFreeze : public QFrame
{
    Q_OBJECT

public:
    explicit BaselineFreeze(QWidget* parent = nullptr);

    void display(const BaselineSheet& sheet, const std::vector<Person>& persons);
    // As if the button was pressed; nothing happens while it is shut.
    void ask();

signals:
    void freezeAsked(rig::PersonId first, rig::PersonId second);

private:
    void buildNames();

    std::optional<FittingId> m_fitting;
    QLabel* m_sentence = nullptr;
    QWidget* m_names = nullptr;
    ChoiceBox* m_first = nullptr;
    ChoiceBox* m_second = nullptr;
    QPushButton* m_freeze = nullptr;
    QLabel* m_note = nullptr;
};

} // namespace rig
