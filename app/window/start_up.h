#pragma once

#include "app/theme/theme.h"

#include <QIcon>

class QApplication;
class QPalette;
class QSize;
class QWidget;

namespace rig {

// Style, bundled fonts, names: the same for the program, the pictures tool and the tests. Call
// setUpSurroundings() before the QApplication is made.
void setUpSurroundings();
void setUpApplication(QApplication& application);

// As large and as dark as the desktop is; asked before setUpApplication() gives the application a style and
// fonts of its own.
Look desktopLook();
// Dark for a dark desktop; for sunlight where it is light with more contrast than ordinary ones have.
// `plain`: what Qt gives where no desktop says anything.
Scheme schemeFor(const QPalette& desktop, const QPalette& plain);
double withinSizes(double scale); // of text

// The program's own, at every size that a desktop asks for.
QIcon programIcon();

// At its usual size where that fits into the room of the screen, title bar and all; else as large as the
// screen.
void showWithin(QWidget& window, const QSize& room);

} // namespace rig
