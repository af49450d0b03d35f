#include "core/demo/demo.h"

#include "core/airframe/id_source.h"
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

Outcome buildDemo(StoreFile& file, demo::Language language, const PhotoDrawer& drawPhoto)
{
    demo::Teller teller{file, language};
    return teller.records().together([&]() -> Outcome {
        teller.clock().set(demo::dayOf(2024, 2, 17), 10, 0);
        teller.introduce();
        for (const demo::Happening& happening : wholeStory()) {
            teller.clock().set(happening.day, happening.hour, 0);
            happening.tell(teller);
            if (const Outcome so = teller.outcome(); !so)
                return so;
        }
        if (!drawPhoto)
            return teller.outcome();
        // Last of all, so that every other id is the same without them.
        return demo::addPhotos(teller.records(), language, teller.clock().now().localDay(), drawPhoto);
    });
}

Outcome addDemoPhotos(StoreFile& file, demo::Language language, const PhotoDrawer& drawPhoto)
{
    constexpr std::uint64_t kSeed = 5;
    const demo::Story story = wholeStory();
    demo::StoryClock clock;
    clock.set(story.back().day, story.back().hour, 0);
    IdSource ids{kSeed};
    Records records{file, ids, clock};
    return records.together([&] { return demo::addPhotos(records, language, story.back().day, drawPhoto); });
}

} // namespace rig
