#include "app/pictures/drawn_photo.h"

#include "app/pictures/hatch_view.h"
#include "app/pictures/plan_view.h"
#include "app/wording/lesson_picture_words.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>

namespace rig {

namespace {

constexpr int kWidth = 640; // pixels
constexpr int kHeight = 480;
constexpr int kQuality = 80; // of 100
constexpr double kEdge = 16;
constexpr double kWordsHigh = 30;

JointState stateOn(PhotoOf of)
{
    switch (of) {
    case PhotoOf::PartSeated:
        return JointState::PartSeated;
    case PhotoOf::Empty:
        return JointState::NotConnected;
    case PhotoOf::Locked:
    case PhotoOf::Access:
        break;
    }
    return JointState::Locked;
}

HatchPicture hatchOf(const Coupling& coupling, PhotoOf of, QSizeF size)
{
    HatchPictureView view;
    view.joint.layout = coupling.layout;
    view.joint.kind = coupling.kind;
    view.pose = poseOf(stateOn(of));
    view.sight.torch = true;
    if (coupling.seenFrom != AccessSide::Unknown)
        view.sight.side = coupling.seenFrom;
    if (coupling.mirrorFrom != AccessSide::Unknown)
        view.sight.mirror = coupling.mirrorFrom;
    view.withList = false;
    return layoutHatch(view, size, FontSizes{});
}

PlanPicture placeOf(const Coupling& coupling, QSizeF size)
{
    PlanView view;
    view.items.push_back(planItemOf(coupling, {}));
    view.items.front().inUse = true; // when it was taken
    view.chosen = 0;
    return layoutPlan(view, size, FontSizes{});
}

} // namespace

DrawnPhoto drawnPhoto(const Coupling& coupling, PhotoOf of)
{
    const Theme theme = Theme::light();
    const QSizeF size{kWidth - 2 * kEdge, kHeight - 2 * kEdge - kWordsHigh};
    QImage image{kWidth, kHeight, QImage::Format_RGB32};
    image.fill(theme.color(Role::Card));
    QPainter painter{&image};
    painter.translate(kEdge, kEdge);
    if (of == PhotoOf::Access)
        paint(painter, placeOf(coupling, size), theme);
    else
        paint(painter, hatchOf(coupling, of, size), theme);
    painter.setFont(fontOf(FontSizes{}.body()));
    painter.setPen(theme.color(Role::InkSoft));
    painter.drawText(QRectF{0, size.height(), size.width(), kWordsHigh}, Qt::AlignCenter,
                     LessonPictureWords::drawnNotAPhoto());
    painter.end();
    QByteArray bytes;
    QBuffer buffer{&bytes};
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "jpg", kQuality);
    return {{{bytes.toStdString()}}, kWidth, kHeight};
}

} // namespace rig
