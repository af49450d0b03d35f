#pragma once

#include "app/pictures/gap_strip.h"
#include "app/theme/theme.h"

#include <QWidget>

namespace rig {

// The gap strip on the screen.
class GapStripWidget : public QWidget
{
    Q_OBJECT

public:
    explicit GapStripWidget(QWidget* parent = nullptr);

    void setView(const GapStripView& view);
    const GapStripView& view() const { return m_view; }
    void setLook(const Look& look);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void lay();

    Look m_look;
    GapStripView m_view;
    GapStripPicture m_picture;
};

} // namespace rig
