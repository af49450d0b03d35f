#include "app/pages/learn/coupling_lesson.h"

#include "app/pages/learn/lesson_pictures.h"
#include "app/pictures/hatch_view.h"
#include "app/pictures/readings_strip.h"
#include "app/widgets/cutaway_widget.h"
#include "app/widgets/parts.h"
#include "app/widgets/photo_cover.h"
#include "app/widgets/photo_tile.h"
#include "app/widgets/picture_widget.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/learn_words.h"
#include "app/wording/lesson_picture_words.h"

#include <QCheckBox>
#include <QCoreApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr int kPhotoHeight = 150;
constexpr double kMostOfPhoto = 1.5; // it is enlarged with a press

QWidget* titled(const QString& title, QWidget* picture)
{
    auto* column = new QWidget;
    auto* layout = new QVBoxLayout{column};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(labelOf(title, "label"));
    layout->addWidget(picture);
    return column;
}

} // namespace

CouplingLessonPanel::CouplingLessonPanel(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    m_heading = labelOf({}, "title", "lessonHeading");
    m_where = labelOf({}, "body", "lessonWhere");
    m_noBall = labelOf({}, "body", "lessonNoBall");
    layout->addWidget(m_heading);
    layout->addWidget(m_where);
    layout->addWidget(m_noBall);
    m_ballJoint = new QWidget;
    layout->addWidget(m_ballJoint);
    auto* joint = new QVBoxLayout{m_ballJoint};
    joint->setContentsMargins(0, 0, 0, 0);
    joint->setSpacing(8);
    m_schematic = labelOf(LearnWords::schematic(), "soft");
    joint->addWidget(m_schematic);
    auto* pair = new WrapLayout{18, true};
    m_locked = new CutawayWidget;
    m_locked->setObjectName("lessonLocked");
    m_locked->setStill(true);
    pair->addWidget(titled(LearnWords::lockedHere(), m_locked));
    m_cutaway = new CutawayWidget;
    m_cutaway->setObjectName("lessonCutaway");
    pair->addWidget(titled(LearnWords::tryIt(), m_cutaway));
    joint->addLayout(pair);
    m_keys = labelOf({}, "soft");
    joint->addWidget(m_keys);
    m_unknown = labelOf({}, "caution", "lessonUnknown");
    joint->addWidget(m_unknown);
    m_stripTitle = labelOf({}, "label", "lessonStripTitle");
    joint->addWidget(m_stripTitle);
    m_strip = new PictureWidget;
    m_strip->setObjectName("lessonStrip");
    joint->addWidget(m_strip);
    joint->addWidget(labelOf(LearnWords::whatIsSeen(), "label"));
    m_sideSaid = labelOf({}, "body", "lessonSide");
    joint->addWidget(m_sideSaid);
    auto* with = new QHBoxLayout;
    m_torch = new QCheckBox{LearnWords::withTorch()};
    m_torch->setObjectName("lessonTorch");
    m_torch->setChecked(true);
    m_mirror = new QCheckBox{LearnWords::withMirror()};
    m_mirror->setObjectName("lessonMirror");
    with->addWidget(m_torch);
    with->addWidget(m_mirror);
    with->addStretch(1);
    joint->addLayout(with);
    m_hatch = new PictureWidget;
    m_hatch->setObjectName("lessonHatch");
    joint->addWidget(m_hatch);
    layout->addWidget(labelOf(LearnWords::photos(), "label"));
    m_noPhotos = labelOf(LearnWords::noPhotos(), "soft", "lessonNoPhotos");
    layout->addWidget(m_noPhotos);
    m_photos = new WrapLayout{12, false};
    layout->addLayout(m_photos);
    layout->addStretch(1);
    connect(m_torch, &QCheckBox::toggled, this, &CouplingLessonPanel::showHatch);
    connect(m_mirror, &QCheckBox::toggled, this, &CouplingLessonPanel::showHatch);
    connect(m_cutaway, &CutawayWidget::poseChanged, this, &CouplingLessonPanel::showHatch);
}

void CouplingLessonPanel::setLook(const Look& look)
{
    m_look = look;
    for (PictureWidget* picture : {m_strip, m_hatch})
        picture->setLook(look);
    m_locked->setLook(look);
    m_cutaway->setLook(look);
    showPhotos();
}

bool CouplingLessonPanel::takeKey(QKeyEvent* event)
{
    if (m_isHandingOn || !m_cutaway->isVisibleTo(this) || event->modifiers() != Qt::NoModifier)
        return false;
    const bool isOfTheJoint = event->key() == Qt::Key_Left || event->key() == Qt::Key_Right ||
                              event->key() == Qt::Key_Home || event->key() == Qt::Key_End ||
                              event->text().size() == 1;
    if (!isOfTheJoint)
        return false;
    m_isHandingOn = true; // what the joint leaves alone comes back here
    QCoreApplication::sendEvent(m_cutaway, event);
    m_isHandingOn = false;
    return true;
}

void CouplingLessonPanel::display(const CouplingLesson& lesson)
{
    const bool isAnother = m_lesson.coupling.id != lesson.coupling.id;
    m_lesson = lesson;
    const Coupling& coupling = lesson.coupling;
    const bool isBall = isBallJoint(coupling.kind);
    const QString name = QString::fromStdString(coupling.name);
    m_heading->setText(isBall ? LearnWords::heading(name) : name);
    QStringList where;
    if (!coupling.access.empty())
        where << LearnWords::access(QString::fromStdString(coupling.access));
    if (!coupling.leafPlace.empty())
        where << LearnWords::leafGoes(QString::fromStdString(coupling.leafPlace));
    if (isBall)
        where << LessonPictureWords::leafGoes(cutawayOf(lesson.joint, {}));
    sayIn(m_where, where.join(QLatin1Char('\n')));
    m_ballJoint->setVisible(isBall);
    sayIn(m_noBall, isBall                                    ? QString{}
                    : coupling.kind == CouplingKind::ByItself ? LearnWords::byItself()
                                                              : LearnWords::otherKind());
    showPhotos();
    if (!isBall)
        return;
    m_locked->setJoint(lesson.joint);
    m_locked->setPose(poseOf(JointState::Locked));
    m_cutaway->setJoint(lesson.joint);
    m_keys->setText(LearnWords::sliderKeys(coupling.kind));
    if (isAnother)
        m_cutaway->setPose(poseOf(JointState::PartSeated));
    QStringList unknown;
    if (lesson.gapTellsNothing)
        unknown << LearnWords::gapTellsNothing();
    unknown << LessonPictureWords::layoutDoubt(drawnLayout(lesson.joint));
    if (!lesson.joint.lockedMm)
        unknown << LearnWords::noReadings();
    if (!lesson.joint.partSeatedMm)
        unknown << LearnWords::neverShown();
    unknown.removeAll(QString{});
    sayIn(m_unknown, unknown.join(QLatin1Char('\n')));
    m_stripTitle->setText(LearnWords::allReadings(static_cast<int>(lesson.strip.locked.size()),
                                                  static_cast<int>(lesson.strip.partSeated.size())));
    PictureBlock strip;
    strip.height = readingsStripHeight(FontSizes{});
    strip.lay = [view = lesson.strip](QSizeF size, const FontSizes& fonts) {
        const ReadingsStripPicture picture = layoutReadingsStrip(view, size, fonts);
        return LaidPicture{
            [picture](QPainter& painter, const Theme& theme) { paint(painter, picture, theme); },
            picture.inWords};
    };
    m_strip->setPicture(strip, m_stripTitle->text());
    m_sideSaid->setText(LearnWords::seenFrom(coupling.seenFrom, coupling.mirrorFrom).join(QLatin1Char(' ')));
    showHatch();
}

void CouplingLessonPanel::showHatch()
{
    HatchPictureView view;
    view.joint = m_lesson.joint;
    view.pose = m_cutaway->pose();
    view.sight = sightOf(m_lesson.coupling, {m_mirror->isChecked(), m_torch->isChecked()});
    view.namesState = true;
    PictureBlock block;
    block.height = 250;
    block.lay = [view](QSizeF size, const FontSizes& fonts) {
        const HatchPicture picture = layoutHatch(view, size, fonts);
        return LaidPicture{
            [picture](QPainter& painter, const Theme& theme) { paint(painter, picture, theme); },
            picture.inWords};
    };
    m_hatch->setPicture(block, LearnWords::whatIsSeen());
}

void CouplingLessonPanel::showPhotos()
{
    m_noPhotos->setVisible(m_lesson.photos.empty());
    while (m_tiles.size() < m_lesson.photos.size()) {
        const std::size_t number = m_tiles.size();
        auto* tile = new PhotoTile{"lessonPhoto"};
        tile->setWraps();
        connect(tile, &PhotoTile::clicked, this, [this, number] { enlarge(number); });
        m_photos->addWidget(tile);
        m_tiles.push_back(tile);
    }
    for (std::size_t i = 0; i < m_tiles.size(); ++i) {
        m_tiles[i]->setVisible(i < m_lesson.photos.size());
        if (i >= m_lesson.photos.size())
            continue;
        const LessonPhoto& photo = m_lesson.photos[i];
        m_tiles[i]->setLook(m_look);
        const double scale = std::min(m_look.fonts.scale, kMostOfPhoto);
        m_tiles[i]->setHeight(static_cast<int>(std::lround(kPhotoHeight * scale)));
        m_tiles[i]->setPhoto(photo.image, photo.caption, photo.caption);
    }
}

void CouplingLessonPanel::enlarge(std::size_t photo)
{
    const LessonPhoto& shown = m_lesson.photos[photo];
    new PhotoCover{*window(), {{shown.image, shown.caption}}, {}, m_look};
}

} // namespace rig
