#pragma once

#include "app/pictures/trend.h"

#include <QWidget>

class QPushButton;

namespace rig {

// By date or by rigging.
class AxisButtons : public QWidget
{
    Q_OBJECT

public:
    // The names tell the buttons of several panels apart.
    AxisButtons(const char* byDateName, const char* byRiggingName, QWidget* parent = nullptr);

    void setAxis(TrendAxis axis);

signals:
    void axisChosen(rig::TrendAxis axis);

private:
    QPushButton* m_byDate = nullptr;
    QPushButton* m_byRigging = nullptr;
};

} // namespace rig
