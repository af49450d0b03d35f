#pragma once

#include "app/theme/theme.h"
#include "core/review/record_review.h"

#include <QWidget>

#include <functional>
#include <vector>

class QPushButton;

namespace rig {

class WrapLayout;

// The surfaces of the control check side by side, each with how far it has come.
class SurfaceChips : public QWidget
{
    Q_OBJECT

public:
    explicit SurfaceChips(QWidget* parent = nullptr);

    void setLook(const Look& look) { m_look = look; }
    // `isStopped`: nothing is tried on it, whatever was found at another one or at a joint.
    void display(const std::vector<SurfaceProgress>& surfaces, SurfaceId current,
                 const std::function<bool(const SurfaceProgress&)>& isStopped);

signals:
    void chosen(rig::SurfaceId surface);

private:
    QPushButton* chip(std::size_t index);

    Look m_look;
    WrapLayout* m_layout = nullptr;
    std::vector<QPushButton*> m_chips;
    std::vector<SurfaceId> m_surfaces;
};

} // namespace rig
