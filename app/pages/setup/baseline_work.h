#pragma once

#include "app/pages/setup/baseline_day_presenter.h"

#include <QString>

#include <optional>

namespace rig {

// One cycle of baseline day: disconnect, clean, connect, confirm locked by other means, read.
struct BaselineCycle
{
    std::optional<bool> reconnected; // disconnected, cleaned, connected again
    std::optional<bool> locked;      // confirmed otherwise than by the gap

    enum class Ask { Reconnected, Locked, Nothing };

    // Not locked means: disconnect and start anew.
    Ask ask() const
    {
        if (reconnected != true || locked == false)
            return Ask::Reconnected;
        return locked ? Ask::Nothing : Ask::Locked;
    }
    bool mayRead() const { return reconnected == true && locked == true; }

    void answerReconnected(bool yes)
    {
        reconnected = yes;
        locked.reset();
    }
    void answerLocked(bool yes) { locked = yes; }
};

// What is going on at the coupling now, apart from the facts.
struct BaselineWork
{
    std::optional<PersonId> person;
    std::optional<GaugeId> gauge;
    BaselineCycle cycle;
    std::optional<Correction> correction; // the next figure takes the place of this reading
    QString kept;                         // what became of the last one
    bool personChanged = false;
};

} // namespace rig
