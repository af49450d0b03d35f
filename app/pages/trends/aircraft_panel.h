#pragma once

#include "app/pages/trends/trends_view.h"
#include "app/theme/theme.h"

#include <QWidget>

class QLabel;
class QStackedWidget;

namespace rig {

class AircraftWidget;
class AxisButtons;

// All couplings over one another in their own scatters, with what they share on each rigging day.
class AircraftPanel : public QWidget
{
    Q_OBJECT

public:
    explicit AircraftPanel(QWidget* parent = nullptr);

    void display(const TrendsView& view, TrendAxis axis, std::optional<std::size_t> chosen);
    void setAxis(TrendAxis axis);
    void setLook(const Look& look);
    void focusChart();

signals:
    void axisChosen(rig::TrendAxis axis);
    void couplingChosen(int index); // into the view's couplings

private:
    QLabel* m_title = nullptr;
    AxisButtons* m_axis = nullptr;
    QStackedWidget* m_stack = nullptr;
    AircraftWidget* m_chart = nullptr;
    QLabel* m_empty = nullptr;
    QLabel* m_hover = nullptr;
    QLabel* m_shifts = nullptr;
};

} // namespace rig
