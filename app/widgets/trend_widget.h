#pragma once

#include "app/pictures/trend_index.h"
#include "app/widgets/chart_widget.h"

#include <optional>

namespace rig {

// A coupling's history that can be looked around in; Up and Down go from reading to reading. The same widget
// shows a small trend, which only shows.
class TrendWidget : public ChartWidget
{
    Q_OBJECT

public:
    explicit TrendWidget(QWidget* parent = nullptr);
    ~TrendWidget() override;

    // Shows the whole of it, and no reading is chosen. When it is the same coupling read anew, what is looked
    // at and the chosen reading stay, as long as that one is still there.
    void setSeries(const TrendSeries& series, TrendAxis axis);
    // No interaction, about 40 to 70 pixels high; mouse events go to the parent.
    void setSmall(const TrendSeries& series, std::size_t lastReadings);
    // Index into the series' readings; -1 when none is chosen.
    int chosenReading() const { return m_chosen; }
    // Chooses a reading from outside, as by its row in a table, brings it into sight and says it. -1 chooses
    // none.
    void chooseReading(int index);

    // From the first reading to the last of those days; everything where there is none.
    void lookAtDays(Day from, Day to);
    void lookAtAll();

    const TrendWindow& shown() const override { return m_picture.window; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    void readingChosen(int index);

protected:
    void layOut() override;
    void paintPicture(QPainter& painter) override;
    QRectF plot() const override { return m_picture.plot; }
    const AxisReach& reach() const override { return m_index.reach; }
    void axisChanged() override;
    TrendWindow carriedOver(TrendAxis axis) const override;
    bool isStill() const override { return m_small || m_series.readings.empty(); }
    void hoverAt(QPointF point) override;
    void hoverNothing() override { hover(std::nullopt, std::nullopt); }
    void clickAt(QPointF point) override;
    void step(int by) override;

private:
    template <typename IsIn> TrendWindow windowAround(TrendAxis axis, IsIn isIn) const;
    void describe();
    void hover(std::optional<std::size_t> reading, std::optional<std::size_t> event);
    QString sentence() const;
    void choose(int index);
    void paintAround(QPainter& painter, std::size_t reading, Role role) const;

    TrendSeries m_series;
    TrendIndex m_index; // of m_series on the axis of the window
    TrendPicture m_picture;
    std::optional<std::size_t> m_small; // readings of a small trend
    int m_chosen = -1;
    std::optional<std::size_t> m_hovered;
    std::optional<std::size_t> m_hoveredEvent;
};

} // namespace rig
