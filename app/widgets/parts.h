#pragma once

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

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

// One letter by itself, whatever Caps Lock says.
inline bool isKey(const QKeyEvent& event, const QString& key)
{
    return event.modifiers() == Qt::NoModifier && event.text().compare(key, Qt::CaseInsensitive) == 0;
}

// Shows a sentence, or takes no room at all.
inline void sayIn(QLabel* label, const QString& sentence)
{
    label->setText(sentence);
    label->setVisible(!sentence.isEmpty());
}

} // namespace rig
