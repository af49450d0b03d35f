#pragma once

#include <QPushButton>
#include <QShortcut>

namespace rig {

// Ctrl and this key press the button while it is seen. A shortcut of the button itself would press it a tenth
// of a second later, and what was typed ahead would come before.
inline void pressOnControl(Qt::Key key, QPushButton* button)
{
    auto* shortcut = new QShortcut{QKeySequence{QKeyCombination{Qt::CTRL, key}}, button};
    QObject::connect(shortcut, &QShortcut::activated, button, &QPushButton::click);
}

} // namespace rig
