#pragma once

#include <QString>
#include <QStringList>

class QWidget;

// What the program says.
namespace rig::test {

// The string literals of C++ source, with those that stand one after the other put together as the compiler
// does; comments and what is included are left out.
QStringList literalsIn(const QString& source);

// Everything that a widget and those in it say: texts, placeholders, choices, rows, tool tips, names for
// those who hear them.
QStringList wordsOn(const QWidget& widget);

} // namespace rig::test
