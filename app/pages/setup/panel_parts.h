#pragma once

#include <QString>
#include <QWidget>

#include <vector>

class QLabel;
class QPushButton;

namespace rig {

QLabel* softLabel(const QString& text);
QPushButton* panelButton(const char* name, const QString& text);
// The one button that a newcomer is meant to press.
void setPrimary(QPushButton* button, bool primary);

// Buttons side by side; those that find no room stand in the next line, so that large text clips none.
class ButtonFlow : public QWidget
{
public:
    explicit ButtonFlow(const std::vector<QPushButton*>& buttons, QWidget* parent = nullptr);

    void add(QPushButton* button);
};

} // namespace rig
