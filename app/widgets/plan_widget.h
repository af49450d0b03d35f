#pragma once

#include "app/pictures/plan_view.h"
#include "app/theme/theme.h"

#include <QWidget>

namespace rig {

// The plan on the screen. It shows and chooses: a click, or Left, Right, Up and Down to the next coupling in
// that direction. In edit mode the same keys move the chosen one's place, with Shift by larger steps, and a
// drag moves the one under the hand.
class PlanWidget : public QWidget
{
    Q_OBJECT

public:
    explicit PlanWidget(QWidget* parent = nullptr);

    void setView(const PlanView& view);
    void setLook(const Look& look);
    void setEditing(bool editing);

    const PlanView& view() const { return m_view; }
    const PlanPicture& picture() const { return m_picture; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    void couplingChosen(int index);
    void placeMoved(int index, const rig::PlanPlace& place); // at each key; once at the end of a drag

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

private:
    void lay();
    void choose(std::size_t index);
    void go(PlanWay way);
    void nudge(PlanWay way, double step);
    PlanPlace placeOf(std::size_t index) const;
    void place(std::size_t index, const PlanPlace& place);

    Look m_look;
    PlanView m_view;
    PlanPicture m_picture;
    bool m_isEditing = false;
    std::optional<QPointF> m_pressed; // of a drag that may begin
    bool m_dragged = false;
};

} // namespace rig
