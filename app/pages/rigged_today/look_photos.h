#pragma once

#include "app/pages/rigged_today/rigged_today_presenter.h"
#include "app/widgets/photo_cover.h"

#include <QImage>

#include <map>
#include <vector>

namespace rig {

// The photos beside the look of a coupling, each decoded once and held while the page lives.
class LookPhotos
{
public:
    // `presenter` outlives it.
    explicit LookPhotos(const RiggedTodayPresenter& presenter) : m_presenter{presenter} {}

    // The locked one of this joint; left and right where it is asked whether they were swapped.
    std::vector<PhotoCover::Shown> of(const CouplingSheet& sheet);

private:
    struct Held
    {
        PhotoId photo;
        QImage picture;
    };

    QImage pictureOf(const SheetPhoto& photo);

    const RiggedTodayPresenter& m_presenter;
    std::map<CouplingId, Held> m_held;
};

} // namespace rig
