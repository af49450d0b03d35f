#pragma once

#include <QComboBox>
#include <QSpinBox>
#include <QStyledItemDelegate>
#include <QWheelEvent>

#include <type_traits>

namespace rig {

// A box that the wheel leaves alone: the page scrolls, and nobody changes a value by passing over it. The
// list of one that is open is turned by the wheel as every list is.
template <typename Box> class Still : public Box
{
public:
    explicit Still(QWidget* parent = nullptr) : Box{parent}
    {
        this->setFocusPolicy(Qt::StrongFocus);
        // Qt's own draws the row in hand in the colours of a menu, where its words cannot be read.
        if constexpr (std::is_same_v<Box, QComboBox>)
            this->setItemDelegate(new QStyledItemDelegate{this});
    }

protected:
    void wheelEvent(QWheelEvent* event) override { event->ignore(); }
};

using StillBox = Still<QComboBox>;
using StillSpinBox = Still<QSpinBox>;

} // namespace rig
