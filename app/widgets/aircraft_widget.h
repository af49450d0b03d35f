#pragma once

#include "app/pictures/aircraft.h"
#include "app/widgets/chart_widget.h"

#include <optional>

namespace rig {

// All couplings of an airframe over one another, to look around in; Up and Down go from coupling to coupling,
// a click on a curve or a name chooses its coupling.
class AircraftWidget : public ChartWidget
{
    Q_OBJECT

public:
    explicit AircraftWidget(QWidget* parent = nullptr);
    ~AircraftWidget() override;

    // Shows the whole of it; what is looked at stays when it is the same airframe read anew.
    void setSeries(const AircraftSeries& series, TrendAxis axis, std::optional<std::size_t> chosenCoupling);
    void chooseCoupling(std::optional<std::size_t> coupling);
    std::optional<std::size_t> chosenCoupling() const { return m_chosen; }
    const TrendWindow& shown() const override { return m_picture.window; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    void couplingChosen(int index); // into the series' couplings

protected:
    void layOut() override;
    void paintPicture(QPainter& painter) override;
    QRectF plot() const override { return m_picture.plot; }
    const AxisReach& reach() const override { return m_reach; }
    void axisChanged() override;
    TrendWindow carriedOver(TrendAxis axis) const override;
    void hoverAt(QPointF point) override;
    void hoverNothing() override;
    void clickAt(QPointF point) override;
    void step(int by) override;

private:
    void choose(std::size_t coupling);
    std::optional<std::size_t> couplingAt(QPointF point) const;
    QString sentenceAt(QPointF point) const;
    void say(const QString& sentence);

    AircraftSeries m_series;
    AxisReach m_reach; // of m_series on the axis of the window
    AircraftPicture m_picture;
    std::optional<std::size_t> m_chosen;
    QString m_said;
};

} // namespace rig
