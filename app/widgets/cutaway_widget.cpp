#include "app/widgets/cutaway_widget.h"

#include "app/widgets/focus_ring.h"
#include "app/widgets/plain_tip.h"
#include "app/wording/lesson_picture_words.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr int kSliderSteps = 1000;
constexpr double kFineSeating = 0.02;
constexpr double kCoarseSeating = 0.2;
constexpr double kBallCaught = 0.01; // nearer to home than that is home

} // namespace

CutawayWidget::CutawayWidget(QWidget* parent) : QAbstractSlider{parent}
{
    setOrientation(Qt::Vertical);
    setRange(0, kSliderSteps);
    setSingleStep(static_cast<int>(kSliderSteps * kFineSeating));
    setPageStep(static_cast<int>(kSliderSteps * kCoarseSeating));
    setValue(kSliderSteps);
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(LessonPictureWords::cutawayName());
}

void CutawayWidget::setJoint(const CutawayJoint& joint)
{
    m_view.joint = joint;
    lay();
}

void CutawayWidget::setPose(const CutawayPose& pose)
{
    m_view.pose = pose;
    if (pose.seating)
        m_lastSeating = *pose.seating;
    lay();
}

void CutawayWidget::setLook(const Look& look)
{
    m_look = look;
    updateGeometry();
    lay();
}

void CutawayWidget::setStill(bool still)
{
    m_isStill = still;
    setFocusPolicy(still ? Qt::NoFocus : Qt::StrongFocus);
    lay();
}

void CutawayWidget::setParts(bool labels, bool caption)
{
    m_view.withLabels = labels;
    m_view.withCaption = caption;
    lay();
}

QSize CutawayWidget::sizeHint() const
{
    return (QSizeF{400, 300} * m_look.fonts.scale).toSize();
}

QSize CutawayWidget::minimumSizeHint() const
{
    return (QSizeF{240, 230} * m_look.fonts.scale).toSize();
}

void CutawayWidget::lay()
{
    m_picture = layoutCutaway(m_view, size(), m_look.fonts);
    const QString keys = m_isStill ? QString{} : QLatin1Char(' ') + LessonPictureWords::cutawayKeys();
    setAccessibleDescription(m_picture.inWords + keys);
    setToolTip(plainTip(m_picture.inWords));
    m_isLaying = true;
    setValue(static_cast<int>(std::lround(m_view.pose.seating.value_or(0) * kSliderSteps)));
    m_isLaying = false;
    update();
    emit saidInWords(m_picture.inWords);
}

void CutawayWidget::take(const CutawayPose& pose)
{
    if (pose == m_view.pose)
        return;
    setPose(pose);
    emit poseChanged(pose);
}

// A ball that leaves its place pushes the pin's hole out of the way: the pin was pulled before.
void CutawayWidget::seat(double seating)
{
    CutawayPose pose = m_view.pose;
    const double kept = seating > 1 - kBallCaught ? 1 : std::clamp(seating, 0.0, 1.0);
    if (kept < 1)
        pose.pinIn = false;
    pose.seating = kept;
    take(pose);
}

void CutawayWidget::moveSleeve()
{
    if (m_view.joint.kind == CouplingKind::Pin)
        return;
    CutawayPose pose = m_view.pose;
    pose.sleeveForward = !pose.sleeveForward;
    take(pose);
}

void CutawayWidget::movePin()
{
    const Cutaway shown = cutawayOf(m_view.joint, m_view.pose);
    CutawayPose pose = m_view.pose;
    pose.pinIn = !shown.pinIn && shown.hasPin && shown.plungerBack <= 0;
    take(pose);
}

void CutawayWidget::moveBall()
{
    CutawayPose pose = m_view.pose;
    if (pose.seating)
        pose.seating.reset();
    else
        pose.seating = m_lastSeating;
    pose.pinIn = false;
    take(pose);
}

bool CutawayWidget::answers(int key) const
{
    switch (key) {
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_PageUp:
    case Qt::Key_PageDown:
    case Qt::Key_Home:
    case Qt::Key_End:
    case Qt::Key_S:
    case Qt::Key_P:
    case Qt::Key_B:
        return !m_isStill;
    default:
        return false;
    }
}

void CutawayWidget::press(int key)
{
    const double now = m_view.pose.seating.value_or(0);
    switch (key) {
    case Qt::Key_Left:
    case Qt::Key_Up:
        return seat(now - kFineSeating);
    case Qt::Key_Right:
    case Qt::Key_Down:
        return seat(now + kFineSeating);
    case Qt::Key_PageUp:
        return seat(now - kCoarseSeating);
    case Qt::Key_PageDown:
        return seat(now + kCoarseSeating);
    case Qt::Key_Home:
        return seat(0);
    case Qt::Key_End:
        return seat(1);
    case Qt::Key_S:
        return moveSleeve();
    case Qt::Key_P:
        return movePin();
    case Qt::Key_B:
        return moveBall();
    default:
        return;
    }
}

namespace {

bool hasNoModifier(const QKeyEvent& event)
{
    return !(event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
}

} // namespace

// While the joint has the keys, its letters are its own and no page's.
bool CutawayWidget::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (hasNoModifier(*key) && answers(key->key())) {
            event->accept();
            return true;
        }
    }
    return QAbstractSlider::event(event);
}

void CutawayWidget::keyPressEvent(QKeyEvent* event)
{
    if (hasNoModifier(*event) && answers(event->key()))
        press(event->key());
    else
        QWidget::keyPressEvent(event);
}

void CutawayWidget::mousePressEvent(QMouseEvent* event)
{
    if (m_isStill || event->button() != Qt::LeftButton)
        return QWidget::mousePressEvent(event);
    if (m_view.pose.seating && m_picture.ball.contains(event->position()))
        m_grabbed = event->position().y() - m_picture.ball.center().y();
    else if (m_picture.sleeve.contains(event->position()))
        moveSleeve();
}

void CutawayWidget::mouseMoveEvent(QMouseEvent* event)
{
    if (m_isStill)
        return QWidget::mouseMoveEvent(event);
    if (m_grabbed) {
        constexpr double kDropsHome = 0.96; // so near the bottom no eye tells it from home
        const double seating = m_picture.seatingAt(event->position().y() - *m_grabbed);
        seat(seating > kDropsHome ? 1 : seating);
        return;
    }
    const bool isOnBall = m_view.pose.seating && m_picture.ball.contains(event->position());
    if (isOnBall)
        setCursor(Qt::SizeVerCursor);
    else if (m_picture.sleeve.contains(event->position()))
        setCursor(Qt::PointingHandCursor);
    else
        unsetCursor();
}

void CutawayWidget::mouseReleaseEvent(QMouseEvent*)
{
    m_grabbed.reset();
}

void CutawayWidget::wheelEvent(QWheelEvent* event)
{
    event->ignore(); // the page scrolls
}

// Somebody moves the slider without seeing it.
void CutawayWidget::sliderChange(SliderChange change)
{
    if (change == SliderValueChange && !m_isLaying && !m_isStill)
        seat(static_cast<double>(value()) / kSliderSteps);
}

void CutawayWidget::resizeEvent(QResizeEvent*)
{
    lay();
}

void CutawayWidget::paintEvent(QPaintEvent*)
{
    QPainter painter{this};
    paint(painter, m_picture, m_look.theme);
    if (hasFocus())
        paintFocusRing(painter, rect(), m_look.theme);
}

} // namespace rig
