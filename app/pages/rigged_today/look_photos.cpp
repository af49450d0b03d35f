#include "app/pages/rigged_today/look_photos.h"

#include "app/photos/photo_picture.h"
#include "app/wording/photo_words.h"

namespace rig {

std::vector<PhotoCover::Shown> LookPhotos::of(const CouplingSheet& sheet)
{
    std::vector<PhotoCover::Shown> shown;
    for (const SheetPhoto& photo : sheet.photos)
        shown.push_back({pictureOf(photo), PhotoWords::of(QString::fromStdString(photo.coupling),
                                                          PhotoWords::captionOf(photo.photo, photo.person))});
    return shown;
}

QImage LookPhotos::pictureOf(const SheetPhoto& photo)
{
    constexpr std::size_t kMostHeld = 12; // some 8 MB each
    const auto held = m_held.find(photo.photo.coupling);
    if (held != m_held.end() && held->second.photo == photo.photo.id)
        return held->second.picture;
    if (held == m_held.end() && m_held.size() >= kMostHeld)
        m_held.clear();
    const auto image = m_presenter.image(photo.photo.id);
    const QImage picture = image ? rig::pictureOf(image.value()) : QImage{};
    m_held.insert_or_assign(photo.photo.coupling, Held{photo.photo.id, picture});
    return picture;
}

} // namespace rig
