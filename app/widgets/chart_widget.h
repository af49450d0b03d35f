#pragma once

#include "app/pictures/trend_window.h"
#include "app/theme/theme.h"

#include <QRectF>
#include <QWidget>

#include <optional>

namespace rig {

// A picture that can be looked around in along its level axis, by wheel and drag or by keys alone. Left and
// Right pan, plus and minus zoom, Home and End go to the ends, 0 shows everything; Up and Down go from one
// thing to the next. What the picture shows and says is the inheritor's.
class ChartWidget : public QWidget
{
    Q_OBJECT

public:
    explicit ChartWidget(QWidget* parent = nullptr);
    ~ChartWidget() override;

    void setLook(const Look& look);
    // Keeps, as far as the other axis can say, the part that is looked at.
    void setAxis(TrendAxis axis);
    virtual const TrendWindow& shown() const = 0; // as drawn, never whole

signals:
    // What is under the cursor or chosen by key, in a sentence; empty when nothing is.
    void hoverSentence(const QString& sentence);

protected:
    const Look& look() const { return m_look; }
    const TrendWindow& window() const { return m_window; } // as wanted; whole: everything
    void setWindow(const TrendWindow& window) { m_window = window; }
    void lookAt(const TrendWindow& window);
    // Keeps the width that was chosen; the place comes to the middle.
    void bringIntoSight(double place);
    void endDrag();

    virtual void layOut() = 0; // for window() and size(), and update()
    virtual void paintPicture(QPainter& painter) = 0;
    virtual QRectF plot() const = 0;
    virtual const AxisReach& reach() const = 0;
    virtual void axisChanged() {} // before it is laid out again
    virtual TrendWindow carriedOver(TrendAxis axis) const = 0;
    virtual bool isStill() const { return reach().isEmpty; } // nothing to look around in
    virtual void hoverAt(QPointF point) = 0;
    virtual void hoverNothing() = 0;
    virtual void clickAt(QPointF point) = 0;
    virtual void step(int by) = 0;

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
    bool navigate(int key);
    double shareAt(double x) const;

    Look m_look;
    TrendWindow m_window;
    std::optional<QPointF> m_pressed;
    TrendWindow m_pressedWindow;
    bool m_dragged = false;
};

} // namespace rig
