#pragma once

#include "app/widgets/pressable.h"

#include <QImage>

class QLabel;

namespace rig {

// A photo, small, with what it shows under it; pressed to see it large. Decoded by whoever hands it over.
class PhotoTile : public Pressable
{
    Q_OBJECT

public:
    explicit PhotoTile(const char* objectName, QWidget* parent = nullptr);

    // `small` is what stands under it, `whole` what is read aloud.
    void setPhoto(const QImage& picture, const QString& small, const QString& whole);
    void setWraps();            // the small text takes as many lines as it needs below the picture
    void setHeight(int pixels); // of the picture
    bool hasPhoto() const { return !m_picture.isNull(); }

private:
    void scale();

    QImage m_picture;
    int m_height = 90;
    QLabel* m_shown = nullptr;
    QLabel* m_small = nullptr;
};

} // namespace rig
