#pragma once

#include <QWidget>

#include <vector>

namespace rig {

// What Tab goes to within `in`, as it is read: each layout from its first part to its last, whenever the
// parts were made. Qt's own order is that of making, in which rows that come later stand behind everything
// else.
std::vector<QWidget*> inReadingOrder(QWidget& in);

// The focus goes to the next or the previous of them and comes round at the end; false where there is none.
bool goOnAsRead(QWidget& in, bool next);

} // namespace rig
