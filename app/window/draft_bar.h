#pragma once

#include "app/window/drafts.h"
#include "app/window/marked_bar.h"

namespace rig {

// What stood typed and not saved when a signal ended the program the last time: to be read, to be copied, and
// put away.
class DraftBar : public MarkedBar
{
    Q_OBJECT

public:
    explicit DraftBar(QWidget* parent = nullptr);

    void showFor(const QString& path);

private:
    void forget();

    QString m_path;
    QStringList m_lines;
};

} // namespace rig
