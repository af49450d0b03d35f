#pragma once

#include "tests/support/on_screen.h"
#include "tests/support/typing.h"

namespace rig::test {

// The question at the start of a record, passed over: nothing is said of any side.
inline void passWhoConnected(QWidget& window, Typist& typist)
{
    for (Typist::look(); part(window, "connectedNext").isVisible(); Typist::look())
        typist.press(Qt::Key_Return);
}

} // namespace rig::test
