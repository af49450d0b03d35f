#pragma once

#include "app/widgets/asked_frame.h"

#include <QString>

#include <vector>

class QLabel;
class QPushButton;

namespace rig {

class WrapLayout;

// One question with as many answers as there are, one press each. Whoever presses says so; the tile only
// shows it.
class ChoiceTile : public AskedFrame
{
    Q_OBJECT

public:
    struct Option
    {
        QString text; // with its key
        QString spoken;
        bool isChosen = false;
        bool isDoubt = false; // shown as one while it is chosen
    };

    // The buttons are called `name` and their number.
    explicit ChoiceTile(const QString& name, QWidget* parent = nullptr);

    void display(const QString& title, const QString& hint, const std::vector<Option>& options);
    void setOpen(bool open); // it may be answered at all

signals:
    void pressed(int option);

private:
    QPushButton* button(std::size_t index);

    QString m_name;
    bool m_isOpen = true;
    QLabel* m_title = nullptr;
    QLabel* m_hint = nullptr;
    WrapLayout* m_layout = nullptr;
    std::vector<QPushButton*> m_buttons;
};

} // namespace rig
