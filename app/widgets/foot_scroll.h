#pragma once

#include "app/widgets/flow_scroll.h"

namespace rig {

// What stands below a page and always in sight: as high as it needs, up to the room it is given, beyond which
// it scrolls. Its end, where the most important button stands, is what is seen of it then.
class FootScroll : public FlowScroll
{
    Q_OBJECT

public:
    explicit FootScroll(QWidget* inside, QWidget* parent = nullptr);

    // Pixels, of height.
    void setRoom(int room);

    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    int m_room = QWIDGETSIZE_MAX;
};

} // namespace rig
