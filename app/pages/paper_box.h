#pragma once

#include "app/report/page_flow.h"
#include "app/widgets/still_box.h"

#include <initializer_list>

namespace rig {

// The paper that something is printed on; at first the one that is usual where this computer stands.
class PaperBox : public StillBox
{
public:
    PaperBox(const char* objectName, const QString& accessibleName,
             std::initializer_list<Paper> papers = {Paper::A4, Paper::Letter});

    Paper paper() const;
};

} // namespace rig
