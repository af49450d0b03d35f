#pragma once

#include <QObject>

namespace rig {

// The signals by which a session, a terminal or somebody ends the program: SIGTERM, SIGHUP and SIGINT. While
// it lives they no longer kill the process but are told as an event. One at a time.
class EndSignals : public QObject
{
    Q_OBJECT

public:
    explicit EndSignals(QObject* parent = nullptr);
    ~EndSignals() override;

signals:
    void ended();

private:
    void hear();
    int m_heard = -1; // the end of a pair of sockets at which the event loop listens
};

} // namespace rig
