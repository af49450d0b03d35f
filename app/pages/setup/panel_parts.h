#pragma once

#include "core/airframe/person.h"

#include <QGridLayout>
#include <QString>
#include <QWidget>

#include <optional>
#include <vector>

class QLabel;
class QPushButton;

namespace rig {

class ChoiceBox;

QLabel* softLabel(const QString& text);
QPushButton* panelButton(const char* name, const QString& text);
// The one button that a newcomer is meant to press.
void setPrimary(QPushButton* button, bool primary);

// Buttons side by side; those that find no room stand in the next line, so that large text clips none.
class ButtonFlow : public QWidget
{
public:
    explicit ButtonFlow(const std::vector<QPushButton*>& buttons, QWidget* parent = nullptr);

    void add(QPushButton* button);
};

// Drop-down lists under their labels, two side by side.
class ChoiceGrid : public QGridLayout
{
public:
    ChoiceGrid();

    ChoiceBox* add(const QString& text, const QString& name);

private:
    int m_count = 0;
};

// Offers everybody but `without`.
void fillPeople(ChoiceBox* box, const QString& prompt, const std::vector<Person>& persons,
                std::optional<PersonId> chosen, std::optional<PersonId> without = {});

} // namespace rig
