#pragma once

#include <QString>

#include <initializer_list>

class QLabel;
class QPlainTextEdit;
class QWidget;

namespace rig {

// What is filled in, under its label and above its hint; what is lacking is said below.
struct FormField
{
    QWidget* around = nullptr;
    QLabel* label = nullptr;
    QLabel* problem = nullptr;
    QWidget* focus = nullptr;

    void name(const QString& label) const;
    bool lacksSomething() const;
};

// `focus` is what takes the keys of `editor`, often the same.
FormField formField(QWidget* editor, QWidget* focus, const char* name, const QString& hint);
// Two lines that Tab leaves.
QPlainTextEdit* shortText();
// The first of them that lacks something gets the keys and is brought into view with what is said below it.
void focusFirstLack(std::initializer_list<const FormField*> fields);

} // namespace rig
