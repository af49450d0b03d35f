#pragma once

#include "app/pictures/aircraft.h"
#include "app/pictures/lettering.h"
#include "app/pictures/scale.h"

// The steps of laying out the aircraft picture, shared by its source files only.
namespace rig::aircraft {

constexpr double kLeader = 22; // pixels between the plot and the names

struct Frame
{
    const AircraftSeries& series;
    std::optional<std::size_t> chosen;
    QSizeF size;
    const Lettering& letters;
    AircraftPicture& picture;
    QRectF caption{};
    QRectF shiftCaption{};
    QRectF causes{};
    QRectF axis{};
    QRectF name{};    // of the axis; null when there is no room
    double names = 0; // width of the couplings' names
    struct End        // of one coupling's visible curve
    {
        std::size_t coupling = 0;
        QPointF place;
        double score = 0;
    };
    std::vector<End> ends{};
    bool showsMeans = false; // too many readings for a dot each
};

Scale acrossOf(const AircraftPicture& picture);
double yOf(const AircraftPicture& picture, double score); // not held inside the plot
QPointF placeOf(const AircraftPicture& picture, const Scale& across, const AircraftPoint& point);

// Indexes of the points whose place lies between two of the axis.
struct Stretch
{
    std::size_t begin = 0;
    std::size_t end = 0;
};
Stretch between(const std::vector<AircraftPoint>& points, TrendAxis axis, double from, double to);

double namesWidth(const Frame& frame);
void addCurves(Frame& frame); // also finds the ends
void addNames(Frame& frame);

} // namespace rig::aircraft
