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
    static QString title();
    static QString nothingYet();
    static QString noShiftsYet();
    static QString scores(bool means);
    static QString scoresShort();
    static QString shiftLane();
    static QString shiftLaneShort();
    static QString score(double score);           // +2.1, 0.0, −0.4
    static QString scoreTick(long long scatters); // +2, 0, −2
    static QString name(const std::string& name, Side side);
    static QString more(int couplings);
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
