#pragma once

#include <QAbstractButton>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

#include <initializer_list>

namespace rig {

// The small parts that every panel is made of. `kind` is a rank of the style sheet (app/theme/theme.h).
inline QLabel* labelOf(const QString& text, const char* kind, const char* objectName = "")
{
    auto* label = new QLabel{text};
    label->setProperty("kind", kind);
    label->setObjectName(QLatin1String(objectName));
    label->setTextFormat(Qt::PlainText); // names and reasons in it come from the user
    label->setWordWrap(true);
    return label;
}

inline QPushButton* buttonOf(const QString& text, const char* objectName, const char* kind = "plain")
{
    auto* button = new QPushButton{text};
    button->setProperty("kind", kind);
    button->setObjectName(QLatin1String(objectName));
    button->setAutoDefault(false);
    return button;
}

// One letter or figure by itself, whatever Caps Lock says and whichever 0 it is.
inline bool isKey(const QKeyEvent& event, const QString& key)
{
    return !(event.modifiers() & ~Qt::KeypadModifier) && event.text().compare(key, Qt::CaseInsensitive) == 0;
}

// Either of the two keys.
inline bool isEnter(const QKeyEvent& event)
{
    return event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
}

// As it is read aloud.
inline QString withoutMnemonic(QString label)
{
    return label.remove(QLatin1Char('&'));
}

// The focus is on `around` or within it.
inline bool holdsFocus(const QWidget& around)
{
    const QWidget* focus = around.window()->focusWidget();
    return focus && (focus == &around || around.isAncestorOf(focus));
}

// Of buttons that shut each other out: none is chosen.
inline void chooseNeither(std::initializer_list<QAbstractButton*> buttons)
{
    for (QAbstractButton* one : buttons) {
        one->setAutoExclusive(false);
        one->setChecked(false);
        one->setAutoExclusive(true);
    }
}

// Shows a sentence, or takes no room at all. What is wrong and what is to be minded is told as well.
void sayIn(QLabel* label, const QString& sentence);

} // namespace rig
