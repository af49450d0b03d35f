#pragma once

#include "core/airframe/coupling.h"

#include <QCoreApplication>
#include <QString>

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace rig {

struct AircraftCoupling;
struct AircraftPoint;
struct AircraftSeries;
struct ShiftDay;

// Words in and about the pictures of all couplings together.
class AircraftWords
{
    Q_DECLARE_TR_FUNCTIONS(AircraftWords)

public:
    static QString title() { return tr("All couplings in their own scatters"); }
    static QString nothingYet() { return tr("No coupling has a band with readings to lay beside it yet."); }
    static QString noShiftsYet() { return tr("No rigging day has enough couplings to tell a shift yet."); }
    static QString scores(bool means)
    {
        return means ? tr("each coupling in its own scatters; 0 is the middle of its band; lines are means")
                     : tr("each coupling in its own scatters; 0 is the middle of its band");
    }
    static QString scoresShort() { return tr("in own scatters"); }
    static QString shiftLane() { return tr("shared shift of each rigging day, in scatters"); }
    static QString shiftLaneShort() { return tr("shared shift"); }
    static QString score(double score);           // +2.1, 0.0, −0.4
    static QString scoreTick(long long scatters); // +2, 0, −2
    static QString name(const std::string& name, Side side);
    static QString more(int couplings) { return tr("and %n more", nullptr, couplings); }
    static QString day(const ShiftDay& shift);
    static QString cause(const ShiftDay& shift); // a few words over a called bar

    // For the cursor and for those who hear the picture.
    static QString point(const AircraftCoupling& coupling, const AircraftPoint& point);
    static QString shift(const ShiftDay& shift);
    static QString aircraft(const AircraftSeries& series, std::optional<std::size_t> chosen);
    static QString shifts(const std::vector<ShiftDay>& shifts);
    static QString keysHint();
};

} // namespace rig
