#pragma once

#include <QFrame>

class QLabel;
class QProgressBar;
class QTimer;

namespace rig {

class WorkBehind;

// What stands in the place of something that is made behind the page: what goes on, how far it is, and a
// press that stops it. What is soon there is not told.
class LayingOut : public QFrame
{
    Q_OBJECT

public:
    // `work` outlives it.
    LayingOut(const WorkBehind& work, const QString& said);

    void begin(); // told after a moment
    void end();

signals:
    void stopAsked();

private:
    void tell();

    const WorkBehind& m_work;
    QString m_what;
    QLabel* m_said = nullptr;
    QLabel* m_howFar = nullptr;
    QProgressBar* m_bar = nullptr;
    QTimer* m_moment = nullptr;
    QTimer* m_telling = nullptr;
};

} // namespace rig
