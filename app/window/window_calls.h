#pragma once

#include <QObject>

#include <string>

class QSocketNotifier;
class QWidget;

namespace rig {

// A second start with a file that this user has open in a window calls that window to the front and ends.
// Heard by a socket in the user's runtime folder, named after the file's device and inode; where there is no
// such folder nobody hears and nobody calls.
class WindowCalls : public QObject
{
    Q_OBJECT

public:
    explicit WindowCalls(QWidget& window);
    ~WindowCalls() override;

    // Calls for this file are heard from now on, and for none before. Where another window hears them
    // already, that one goes on doing so.
    void hearFor(const QString& path);
    void hearNone();

private:
    void answer();

    QWidget& m_window;
    int m_socket = -1;
    std::string m_place; // of the socket
    QSocketNotifier* m_heard = nullptr;
};

// What came of a call: one is in front of the user and there is nothing left to do; none has the file open;
// or one has it and did not answer within half a second, because it hangs or is busy.
enum class Called { Raised, Nobody, NoAnswer };

// Calls the window that has the file open. `token` is what the desktop gave to the start that calls, so that
// the window may come to the front; may be empty.
Called callWindowOf(const QString& path, const QByteArray& token);

} // namespace rig
