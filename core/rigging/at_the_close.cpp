#include "core/rigging/at_the_close.h"

#include "core/airframe/saved_before.h"

#include <algorithm>

namespace rig {

RecordContent asAtTheClose(RecordContent content)
{
    if (!content.close)
        return content;
    const RecordClose& end = *content.close;
    std::erase_if(content.readings, [&end](const Reading& one) { return savedBefore(end, one); });
    std::erase_if(content.exclusions, [&end](const Exclusion& one) { return savedBefore(end, one); });
    std::erase_if(content.questions,
                  [&end](const QuestionStory& one) { return savedBefore(end, one.question); });
    for (QuestionStory& story : content.questions)
        if (story.resolution && savedBefore(end, *story.resolution))
            story.resolution.reset();
    return content;
}

} // namespace rig
