#pragma once

#include <QAccessible>
#include <QString>

namespace rig::test {

// Somebody who listens to the screen while this lives.
class Ears
{
public:
    Ears();
    ~Ears();

    // What was told since it was last asked for, once everything is.
    static QString said();

private:
    QAccessible::UpdateHandler m_before = nullptr;
};

} // namespace rig::test
