#pragma once

#include "app/pictures/cutaway.h"
#include "app/theme/theme.h"

#include <QAbstractSlider>

namespace rig {

// A joint cut open whose ball can be moved: by dragging it, with a finger, or by keys. Left and Right (Up and
// Down) move it a little, Page Up and Page Down more, Home to where it is just caught, End home. S moves the
// sleeve, P the pin, B takes the ball away and puts it back. A slider to who does not see it. Still: shows
// only.
class CutawayWidget : public QAbstractSlider
{
    Q_OBJECT

public:
    explicit CutawayWidget(QWidget* parent = nullptr);

    void setJoint(const CutawayJoint& joint); // keeps the pose
    void setPose(const CutawayPose& pose);    // silent: nobody pressed anything
    void setLook(const Look& look);
    void setStill(bool still);
    void setParts(bool labels, bool caption); // both, unless said

    const CutawayPose& pose() const { return m_view.pose; }
    const CutawayPicture& picture() const { return m_picture; }
    QString inWords() const { return m_picture.inWords; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

signals:
    void poseChanged(const rig::CutawayPose& pose); // by the person at it
    void saidInWords(const QString& sentence);      // whenever the picture changes

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void sliderChange(SliderChange change) override;

private:
    void lay();
    void take(const CutawayPose& pose);
    bool answers(int key) const;
    void press(int key);
    void seat(double seating);
    void moveSleeve();
    void movePin();
    void moveBall();

    Look m_look;
    CutawayView m_view;
    CutawayPicture m_picture;
    double m_lastSeating = 1;
    std::optional<double> m_grabbed; // y of the hand below the ball's middle
    bool m_isStill = false;
    bool m_isLaying = false;
};

} // namespace rig
