#pragma once

#include "app/pictures/trend.h"

#include <QWidget>

#include <optional>

namespace rig {

// A coupling's history that can be looked around in, by wheel and drag or by keys alone. Left and Right pan,
// plus and minus zoom, Home and End go to the ends, 0 shows everything, Up and Down go from reading to
// reading. The same widget shows a small trend, which only shows.
class TrendWidget : public QWidget
{
    Q_OBJECT

public:
    explicit TrendWidget(QWidget* parent = nullptr);
    ~TrendWidget() override;

    void setLook(const Look& look);
    // Shows the whole of it; no reading is chosen.
    void setSeries(const TrendSeries& series, TrendAxis axis);
    // No interaction, about 40 to 70 pixels high; mouse events go to the parent.
    void setSmall(const TrendSeries& series, std::size_t lastReadings);
    // Keeps the chosen reading and, as far as the other axis can say, the part that is looked at.
    void setAxis(TrendAxis axis);
    // Index into the series' readings; -1 when none is chosen.
    int chosenReading() const { return m_chosen; }
    // Chooses a reading from outside, as by its row in a table, brings it into sight and says it. -1 chooses
    // none.
    void chooseReading(int index);

    const TrendWindow& shown() const { return m_picture.window; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    // What is under the cursor or chosen by key, in a sentence; empty when nothing is.
    void hoverSentence(const QString& sentence);
    void readingChosen(int index);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void layOut();
    void lookAt(const TrendWindow& window);
    void hoverAt(QPointF point);
    void hover(std::optional<std::size_t> reading, std::optional<std::size_t> event);
    QString sentence() const;
    void choose(int index);
    void step(int by);
    bool navigate(int key);
    double shareAt(double x) const;
    void bringIntoSight(int index);
    TrendWindow carriedOver(TrendAxis axis) const;
    void paintAround(QPainter& painter, std::size_t reading, Role role) const;

    Look m_look;
    TrendSeries m_series;
    TrendWindow m_window;
    TrendPicture m_picture;
    std::optional<std::size_t> m_small; // readings of a small trend
    int m_chosen = -1;
    std::optional<std::size_t> m_hovered;
    std::optional<std::size_t> m_hoveredEvent;
    std::optional<QPointF> m_pressed;
    TrendWindow m_pressedWindow;
    bool m_dragged = false;
};

} // namespace rig
