#pragma once

#include "app/window/marked_bar.h"

class QLabel;
class QPushButton;

namespace rig {

// The line below the top bar that is shown on every page for as long as a copy is looked at. It cannot be put
// away.
class CopyBar : public MarkedBar
{
    Q_OBJECT

public:
    explicit CopyBar(QWidget* parent = nullptr);

signals:
    void backAsked();
    void bringBackAsked();
};

} // namespace rig
