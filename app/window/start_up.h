#pragma once

class QApplication;
class QSize;
class QWidget;

namespace rig {

// Style, bundled fonts, names: the same for the program, the pictures tool and the tests. Call
// setUpSurroundings() before the QApplication is made.
void setUpSurroundings();
void setUpApplication(QApplication& application);

// At its usual size where that fits into the room of the screen, title bar and all; else as large as the
// screen.
void showWithin(QWidget& window, const QSize& room);

} // namespace rig
