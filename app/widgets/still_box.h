#pragma once

#include <QComboBox>
#include <QSpinBox>
#include <QWheelEvent>

namespace rig {

// A box that the wheel leaves alone: the page scrolls, and nobody changes a value by passing over it. The
// list of one that is open is turned by the wheel as every list is.
template <typename Box> class Still : public Box
{
public:
    explicit Still(QWidget* parent = nullptr) : Box{parent} { this->setFocusPolicy(Qt::StrongFocus); }

protected:
    void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

using StillBox = Still<QComboBox>;
using StillSpinBox = Still<QSpinBox>;

} // namespace rig
