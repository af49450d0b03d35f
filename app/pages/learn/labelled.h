#pragma once

#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"

#include <QGridLayout>
#include <QLabel>

namespace rig {

// A field with its label above it: two rows of the grid. `focus` is where the label's key leads, and is read
// aloud by it. A list to choose from narrows before what stands beside it is pushed out of the window.
inline void addLabelled(QGridLayout* grid, int row, int column, const QString& text, QWidget* field,
                        QWidget* focus = nullptr)
{
    QLabel* label = labelOf(text, "label");
    QWidget* named = focus ? focus : field;
    label->setBuddy(named);
    if (auto* box = dynamic_cast<ChoiceBox*>(field))
        box->setNarrows();
    named->setAccessibleName(withoutMnemonic(text));
    grid->addWidget(label, 2 * row, column);
    grid->addWidget(field, 2 * row + 1, column);
    grid->setColumnStretch(column, 1);
}

} // namespace rig
