#pragma once

#include <QDialog>

#include <functional>

class QLabel;
class QProgressBar;
class QPushButton;

namespace rig {

class Progress;
class HowFar;

// Work that may take long, on a thread of its own. The window goes on meanwhile: it is painted and answers
// the desktop, but takes no press; what is typed in the first moment waits. After that moment it is said over
// the window how far the work is, with a button that stops it.
class LongWork : public QDialog
{
    Q_OBJECT

public:
    // `work` touches no widget and nothing that the window reads meanwhile: paths and connections of its own.
    // Comes back when the work has ended. False: it was stopped, and left nothing.
    static bool run(QWidget& window, const QString& said, const std::function<void(Progress&)>& work);

    // Work goes on over it: what the window does by itself waits.
    static bool standsOn(const QWidget& window);

    void reject() override; // stops it

private:
    LongWork(QWidget& window, const QString& said, HowFar& told);
    void showHowFar();

    HowFar& m_told;
    QLabel* m_howFar = nullptr;
    QProgressBar* m_bar = nullptr;
    QPushButton* m_stop = nullptr;
};

} // namespace rig
