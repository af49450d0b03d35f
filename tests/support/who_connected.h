#pragma once

#include "tests/support/on_screen.h"
#include "tests/support/typing.h"

#include <QPushButton>

namespace rig::test {

// The question at the start of a record, passed over: nothing is said of any side.
inline void passWhoConnected(QWidget& window, Typist& typist)
{
    for (Typist::look(); part(window, "connectedNext").isVisible(); Typist::look())
        typist.press(Qt::Key_Return);
}

inline void passWhoConnected(QWidget& page)
{
    for (QApplication::processEvents(); part(page, "connectedNext").isVisible();
         QApplication::processEvents())
        part<QPushButton>(page, "connectedNext").click();
}

} // namespace rig::test
