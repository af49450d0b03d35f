#pragma once

#include "app/theme/theme.h"

#include <QAbstractButton>

namespace rig {

// Words that lead somewhere, wrapped as they have to be: whatever stands in its layout is one button, pressed
// by a click, Enter or Space. Letters belong to the page.
class Pressable : public QAbstractButton
{
    Q_OBJECT

public:
    explicit Pressable(QWidget* parent = nullptr);

    void setLook(const Look& look);
    QSize sizeHint() const override { return QWidget::sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void childEvent(QChildEvent* event) override;

private:
    Look m_look;
};

// The one after that which has the focus, or the first; null without any.
Pressable* nextOf(const QList<Pressable*>& links);

} // namespace rig
