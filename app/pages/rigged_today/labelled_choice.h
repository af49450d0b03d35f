#pragma once

#include "app/widgets/choice_box.h"

#include <QBoxLayout>
#include <QLabel>

namespace rig {

struct LabelledChoice
{
    QLabel* label;
    ChoiceBox* box;
};

// A chooser under its label, at the end of the row.
inline LabelledChoice addLabelledChoice(QBoxLayout* row, const QString& text, const char* objectName)
{
    auto* column = new QVBoxLayout;
    column->setSpacing(2);
    auto* label = new QLabel{text};
    label->setProperty("kind", "label");
    auto* box = new ChoiceBox{text};
    box->setObjectName(QLatin1String(objectName));
    label->setBuddy(box);
    column->addWidget(label);
    column->addWidget(box);
    column->addStretch(1);
    row->addLayout(column);
    return {label, box};
}

} // namespace rig
