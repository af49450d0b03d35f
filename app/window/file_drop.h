#pragma once

#include <QObject>

class QWidget;

namespace rig {

// A .rigband file dropped anywhere on a window. Looked at before the widget beneath it: a line to type in
// would take the file's name for words.
class FileDrop : public QObject
{
    Q_OBJECT

public:
    explicit FileDrop(QWidget& window);
    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    void dropped(const QString& path); // once the drop is over

private:
    QWidget& m_window;
};

} // namespace rig
