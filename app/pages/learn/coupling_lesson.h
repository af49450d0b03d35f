#pragma once

#include "app/theme/theme.h"
#include "core/airframe/coupling.h"
#include "core/lesson/cutaway.h"
#include "core/lesson/photo.h"
#include "core/views/readings_strip.h"

#include <QImage>
#include <QWidget>

#include <optional>
#include <vector>

class QCheckBox;
class QKeyEvent;
class QLabel;

namespace rig {

class CutawayWidget;
class PictureWidget;
class PhotoTile;
class WrapLayout;

// A photo and what it shows.
struct LessonPhoto
{
    PhotoOf of = PhotoOf::Locked;
    QImage image;
    QString caption;
};

// Everything the file knows of how one coupling looks.
struct CouplingLesson
{
    Coupling coupling;
    CutawayJoint joint;
    ReadingsStripView strip;
    bool gapTellsNothing = false;
    std::vector<LessonPhoto> photos;
};

// Locked as it stands here beside one that can be moved; what the access lets one see of it; every reading;
// photos.
class CouplingLessonPanel : public QWidget
{
    Q_OBJECT

public:
    explicit CouplingLessonPanel(QWidget* parent = nullptr);

    void display(const CouplingLesson& lesson);
    void setLook(const Look& look);
    // A key that belongs to the joint cut open, wherever it is typed.
    bool takeKey(QKeyEvent* event);

private:
    void showHatch();
    void showPhotos();
    void enlarge(std::size_t photo);

    bool m_isHandingOn = false;
    Look m_look;
    CouplingLesson m_lesson;
    QLabel* m_heading = nullptr;
    QLabel* m_schematic = nullptr;
    QLabel* m_where = nullptr;
    QWidget* m_ballJoint = nullptr; // what only a ball joint has
    QLabel* m_noBall = nullptr;
    CutawayWidget* m_locked = nullptr; // still
    CutawayWidget* m_cutaway = nullptr;
    QLabel* m_keys = nullptr;
    QLabel* m_unknown = nullptr;
    QLabel* m_sideSaid = nullptr;
    QCheckBox* m_torch = nullptr;
    QCheckBox* m_mirror = nullptr;
    PictureWidget* m_hatch = nullptr;
    QLabel* m_stripTitle = nullptr;
    PictureWidget* m_strip = nullptr;
    QLabel* m_noPhotos = nullptr;
    WrapLayout* m_photos = nullptr;
    std::vector<PhotoTile*> m_tiles;
};

} // namespace rig
