#pragma once

#include "app/theme/theme.h"

#include <QImage>
#include <QPointer>
#include <QWidget>

#include <vector>

namespace rig {

// One photo large over a part of the window, or two side by side. Esc, Enter, Space, `key` or a click closes
// it; no other key reaches what lies beneath, and whatever had the focus has it back.
class PhotoCover : public QWidget
{
    Q_OBJECT

public:
    struct Shown
    {
        QImage picture;
        QString caption;
    };

    // `below`, a part of `over`, stays in sight above it; null: nothing has to.
    PhotoCover(QWidget& over, const std::vector<Shown>& photos, const QString& key, const Look& look,
               const QWidget* below = nullptr);

    // Takes away the one that lies there, if one does.
    static void endOn(const QWidget& over);

protected:
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void place();
    void end();

    QPointer<QWidget> m_over;
    QPointer<const QWidget> m_below;
    QPointer<QWidget> m_before; // had the focus
    QString m_key;
    bool m_isOver = false;
};

} // namespace rig
