#include "app/pictures/aircraft_layout.h"
#include "app/wording/aircraft_words.h"

#include <algorithm>
#include <cmath>

namespace rig::aircraft {

namespace {

constexpr double kMostShare = 0.26; // of the width is given to names

// With its side where another coupling has the same name.
QString nameOf(const Frame& frame, std::size_t coupling)
{
    const AircraftCoupling& one = frame.series.couplings[coupling];
    const auto alike =
        std::count_if(frame.series.couplings.begin(), frame.series.couplings.end(),
                      [&one](const AircraftCoupling& other) { return other.name == one.name; });
    return AircraftWords::name(one.name, alike > 1 ? one.side : Side::None);
}

struct PlacedName
{
    Frame::End end;
    double y = 0; // of its middle
};

// The chosen one and those furthest from the middle, when there is not room for all.
std::vector<PlacedName> namesThatFit(const Frame& frame, std::size_t most)
{
    std::vector<PlacedName> names;
    for (const Frame::End& end : frame.ends)
        names.push_back({end, end.place.y()});
    const auto weight = [&frame](const PlacedName& name) {
        return frame.chosen == name.end.coupling ? 1e9 : std::abs(name.end.score);
    };
    std::stable_sort(names.begin(), names.end(),
                     [&weight](const PlacedName& a, const PlacedName& b) { return weight(a) > weight(b); });
    names.resize(std::min(names.size(), most));
    std::stable_sort(names.begin(), names.end(),
                     [](const PlacedName& a, const PlacedName& b) { return a.y < b.y; });
    return names;
}

// Down from the top until none lies over another, then up again from the foot as far as they stick out.
void spread(std::vector<PlacedName>& names, double top, double bottom, double apart)
{
    double least = top + apart / 2;
    for (PlacedName& name : names) {
        name.y = std::max(name.y, least);
        least = name.y + apart;
    }
    double most = bottom - apart / 2;
    for (auto name = names.rbegin(); name != names.rend(); ++name) {
        name->y = std::min(name->y, most);
        most = name->y - apart;
    }
}

} // namespace

double namesWidth(const Frame& frame)
{
    double widest = 0;
    for (std::size_t i = 0; i < frame.series.couplings.size(); ++i)
        widest = std::max(widest, frame.letters.widthOf(nameOf(frame, i), true));
    return std::min(widest, frame.size.width() * kMostShare);
}

void addNames(Frame& frame)
{
    AircraftPicture& picture = frame.picture;
    const double line = frame.letters.line();
    const QRectF& plot = picture.plot;
    const double left = plot.right() + kLeader * frame.letters.scale();
    // Beside the couplings; where that is too low, beside the shifts as well.
    const bool fitsPlot = static_cast<double>(frame.ends.size()) * line <= plot.height();
    const double bottom = fitsPlot || picture.shiftLane.isNull() ? plot.bottom() : picture.shiftLane.bottom();
    const auto rows = static_cast<std::size_t>(std::max(1.0, std::floor((bottom - plot.top()) / line)));
    const bool isCrowded = frame.ends.size() > rows;
    std::vector<PlacedName> names = namesThatFit(frame, isCrowded ? rows - 1 : rows);
    spread(names, plot.top(), bottom - (isCrowded ? line : 0), line);
    for (const PlacedName& name : names) {
        const bool isChosen = frame.chosen == name.end.coupling;
        const QString text = frame.letters.fitted(nameOf(frame, name.end.coupling), frame.names, isChosen);
        const QRectF where{left, name.y - line / 2, frame.letters.widthOf(text, isChosen), line};
        picture.names.push_back({name.end.coupling, where});
        picture.labels.push_back(frame.letters.label(where, text, Qt::AlignLeft,
                                                     isChosen ? Role::Accent : Role::InkSoft, isChosen));
        picture.linesOver.push_back({name.end.place,
                                     {left - 4, name.y},
                                     isChosen ? Role::Accent : Role::InkSoft,
                                     isChosen ? 1.4 : 0.7});
    }
    if (!isCrowded)
        return;
    const QString more = AircraftWords::more(static_cast<int>(frame.ends.size() - names.size()));
    picture.labels.push_back(frame.letters.label({left, bottom - line, frame.names, line},
                                                 frame.letters.fitted(more, frame.names), Qt::AlignLeft));
}

} // namespace rig::aircraft
