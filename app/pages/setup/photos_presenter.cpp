#include "app/pages/setup/entry_reader.h"
#include "app/pages/setup/part_presenters.h"
#include "app/wording/photo_words.h"
#include "core/airframe/name_in.h"
#include "core/store/facts_book.h"

#include <ranges>

namespace rig {

Result<std::vector<PhotoRow>> PhotosPresenter::view(AirframeId airframe, CouplingId coupling) const
{
    const auto learning = records().book().learning(airframe);
    if (!learning)
        return learning.problem();
    const auto persons = records().persons();
    if (!persons)
        return persons.problem();
    std::vector<PhotoRow> rows;
    for (const Photo& photo : learning.value()->photos | std::views::reverse)
        if (photo.coupling == coupling)
            rows.push_back({photo, nameIn(persons.value(), photo.person)});
    return rows;
}

Result<PhotoImage> PhotosPresenter::image(PhotoId photo) const
{
    return records().image(photo);
}

Result<Saved> PhotosPresenter::save(const PhotoEntry& entry, CouplingId coupling)
{
    EntryReader reader;
    if (entry.jpeg.isEmpty())
        reader.refuse(Field::PhotoPicture, PhotoWords::noPictureYet());
    else if (!desk().statedBy())
        reader.refuse(Field::PhotoPicture, PhotoWords::chooseWhoStates());
    if (!entry.of)
        reader.refuse(Field::PhotoKind, PhotoWords::noKindYet());
    const auto day = reader.pastDay(Field::PhotoDay, entry.day, desk().today());
    if (reader.hasProblem())
        return reader.refusal();
    const Photo photo{{},
                      coupling,
                      *entry.of,
                      *day,
                      *desk().statedBy(),
                      entry.size.width(),
                      entry.size.height(),
                      plain(entry.note),
                      desk().stamp()};
    return savedAs(records().add(photo, PhotoImage{{entry.jpeg.toStdString()}}));
}

Result<Saved> PhotosPresenter::withdraw(PhotoId photo, const QString& reason)
{
    if (!desk().statedBy())
        return Saved{{{Field::PhotoPicture, PhotoWords::chooseWhoStates()}}, {}};
    return savedAs(
        records().add(PhotoWithdrawn{{}, photo, *desk().statedBy(), plain(reason), desk().stamp()}));
}

} // namespace rig
