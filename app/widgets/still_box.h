#pragma once

#include <QComboBox>
#include <QWheelEvent>

namespace rig {

// A drop-down list that the wheel leaves alone: the page scrolls, and nobody chooses by passing over it.
class StillBox : public QComboBox
{
public:
    using QComboBox::QComboBox;

protected:
    void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

} // namespace rig
