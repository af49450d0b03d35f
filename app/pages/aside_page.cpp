#include "app/pages/aside_page.h"

#include <QKeyEvent>

namespace rig {

void AsidePage::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        emit leaveAsked();
    else
        Page::keyPressEvent(event);
}

} // namespace rig
