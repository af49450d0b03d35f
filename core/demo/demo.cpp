#include "core/demo/demo.h"

#include "core/demo/photos.h"
#include "core/demo/story.h"

#include <algorithm>

namespace rig {

namespace {

demo::Story wholeStory()
{
    demo::Story story;
    demo::addWorkshop(story);
    demo::addBaselineDays(story);
    demo::addRiggings(story);
    demo::addOddDays(story);
    demo::addLearning(story);
    std::ranges::stable_sort(story, {}, [](const demo::Happening& one) {
        return std::pair{one.day, one.hour};
    });
    return story;
}

} // namespace

Outcome buildDemo(StoreFile& file, const PhotoDrawer& drawPhoto)
{
    demo::Teller teller{file};
    return teller.records().together([&]() -> Outcome {
        teller.clock().set(demo::dayOf(2024, 2, 17), 10, 0);
        teller.introduce();
        for (const demo::Happening& happening : wholeStory()) {
            teller.clock().set(happening.day, happening.hour, 0);
            happening.tell(teller);
            if (const Outcome so = teller.outcome(); !so)
                return so;
        }
        if (drawPhoto) // last of all, so that every other id is the same without them
            demo::addPhotos(teller, drawPhoto);
        return teller.outcome();
    });
}

} // namespace rig
