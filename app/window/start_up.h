#pragma once

class QApplication;

namespace rig {

// Style, bundled fonts, names: the same for the program, the pictures tool and the tests. Call
// setUpSurroundings() before the QApplication is made.
void setUpSurroundings();
void setUpApplication(QApplication& application);

} // namespace rig
