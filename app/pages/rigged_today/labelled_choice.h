#pragma once

#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"

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
    label->setWordWrap(true);
    auto* box = new ChoiceBox{text};
    box->setObjectName(QLatin1String(objectName));
    box->setNarrows();
    label->setBuddy(box);
    column->addWidget(label);
    column->addWidget(box);
    column->addStretch(1);
    row->addLayout(column);
    return {label, box};
}

inline QHBoxLayout* besideEachOther(QWidget* one, QWidget* other)
{
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    row->addWidget(one);
    row->addWidget(other, 1);
    row->addStretch(0);
    return row;
}

// Opens its list for the keys; false where it is not shown.
inline bool openChoice(ChoiceBox* box)
{
    if (!box->isVisible() || !box->isEnabled())
        return false;
    box->setFocus(Qt::ShortcutFocusReason);
    box->showPopup();
    return true;
}

// Enter on a chooser opens it and does nothing elsewhere.
inline bool opensByEnter(const QKeyEvent& event, ChoiceBox* box)
{
    return isEnter(event) && box->hasFocus() && openChoice(box);
}

} // namespace rig
