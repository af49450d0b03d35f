#pragma once

#include "app/photos/photo_picture.h"
#include "core/airframe/ids.h"

#include <functional>
#include <map>
#include <optional>

namespace rig {

// Photos that were decoded, so that going from one coupling to the next and back decodes none again.
class HeldPictures
{
public:
    // `read` is asked only for one that is not held; null where it cannot be decoded.
    QImage of(PhotoId photo, const std::function<std::optional<PhotoImage>()>& read)
    {
        constexpr std::size_t kMostHeld = 16; // some 8 MB each
        if (const auto held = m_held.find(photo); held != m_held.end())
            return held->second;
        if (m_held.size() >= kMostHeld)
            m_held.clear();
        const auto image = read();
        return m_held.emplace(photo, image ? pictureOf(*image) : QImage{}).first->second;
    }

private:
    std::map<PhotoId, QImage> m_held;
};

} // namespace rig
