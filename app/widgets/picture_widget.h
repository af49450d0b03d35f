#pragma once

#include "app/blocks/blocks.h"
#include "app/theme/theme.h"

#include <QWidget>

namespace rig {

// A picture on the screen that only shows: as high as its block says at the reader's text size, as wide as
// there is room. What it says in words is its accessible description, and its name where it has no other.
class PictureWidget : public QWidget
{
    Q_OBJECT

public:
    explicit PictureWidget(QWidget* parent = nullptr);

    void setPicture(const PictureBlock& block, const QString& name = {});
    void setLook(const Look& look);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void lay();

    Look m_look;
    PictureBlock m_block;
    QString m_name;
    LaidPicture m_picture;
};

} // namespace rig
