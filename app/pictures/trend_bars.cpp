#include "app/pictures/mark_field.h"
#include "app/pictures/trend_layout.h"
#include "app/wording/trend_words.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace rig::trend {

namespace {

constexpr double kLeastHollow = 4; // pixels; narrower, nobody sees that it is hollow

// What is drawn later lies on top: nothing ordinary ever covers what is not.
enum Layer { Hollow, Part, Ordinary, NoBand, CannotTell, NearEdge, Outside, LayerCount };

Layer layerOf(const Spot& spot)
{
    if (spot.hollow)
        return Hollow;
    if (spot.isPart)
        return Part;
    switch (spot.verdict) {
    case Verdict::NoBandYet:
        return spot.ofBaseline ? Ordinary : NoBand; // a baseline reading is where a band comes from
    case Verdict::Outside:
        return Outside;
    case Verdict::CannotTell:
        return CannotTell;
    case Verdict::NearEdge:
        return NearEdge;
    case Verdict::Inside:
        break;
    }
    return Ordinary;
}

Role roleOf(Layer layer)
{
    switch (layer) {
    case NoBand:
    case CannotTell:
        return Role::Unknown;
    case NearEdge:
        return Role::NearEdge;
    case Outside:
        return Role::Outside;
    case Hollow:
        return Role::InkSoft;
    case Part:
    case Ordinary:
    case LayerCount:
        break;
    }
    return Role::Ink;
}

DrawnBox boxOf(const QRectF& where, Layer layer)
{
    DrawnBox box;
    box.where = where;
    box.role = roleOf(layer);
    box.hollow = layer == Hollow;
    return box;
}

struct Stretch
{
    double top = 0;
    double bottom = 0;
};

// Readings of one column of pixels: what overlaps becomes one stretch, nothing gets longer than it is.
class Columns
{
public:
    explicit Columns(TrendPicture& picture) : m_picture{picture} {}

    void add(const QRectF& bar, Layer layer)
    {
        const double column = std::floor(bar.center().x());
        if (column != m_column)
            flush();
        m_column = column;
        merge(m_stretches[layer], {bar.top(), bar.bottom()});
    }

    void finish()
    {
        flush();
        for (const std::vector<DrawnBox>& layer : m_boxes)
            m_picture.bars.insert(m_picture.bars.end(), layer.begin(), layer.end());
    }

private:
    // Few stretches stay apart in one column, so that looking through them is quicker than sorting.
    static void merge(std::vector<Stretch>& stretches, Stretch added)
    {
        for (std::size_t i = stretches.size(); i-- > 0;) {
            const Stretch& other = stretches[i];
            if (other.top <= added.top && other.bottom >= added.bottom)
                return;
            if (other.top > added.bottom || other.bottom < added.top)
                continue;
            added = {std::min(added.top, other.top), std::max(added.bottom, other.bottom)};
            stretches[i] = stretches.back();
            stretches.pop_back();
            i = stretches.size(); // longer now, it may meet one it did not before
        }
        stretches.push_back(added);
    }

    void flush()
    {
        for (int layer = 0; layer < LayerCount; ++layer) {
            std::vector<Stretch>& stretches = m_stretches[static_cast<std::size_t>(layer)];
            for (const Stretch& stretch : stretches)
                push(stretch, static_cast<Layer>(layer));
            stretches.clear();
        }
    }

    void push(const Stretch& stretch, Layer layer)
    {
        // A lone column of one pixel is easily missed, so what is not ordinary gets two.
        const double width = layer > Ordinary ? 2 : 1;
        DrawnBox box = boxOf({m_column, stretch.top, width, stretch.bottom - stretch.top}, layer);
        box.opacity = box.hollow ? 0.35 : 1; // one pixel has no inside to leave hollow
        box.hollow = false;
        m_boxes[static_cast<std::size_t>(layer)].push_back(box);
    }

    TrendPicture& m_picture;
    double m_column = -1;
    std::array<std::vector<Stretch>, LayerCount> m_stretches;
    std::array<std::vector<DrawnBox>, LayerCount> m_boxes;
};

const TrendFitting* fittingAt(const Sheet& sheet, double x)
{
    for (std::size_t i = sheet.fittings.size(); i-- > 0;)
        if (x >= sheet.fittings[i].from)
            return &sheet.series.fittings[i];
    return nullptr;
}

bool liesBelow(const Sheet& sheet, const Spot& spot)
{
    const TrendFitting* fitting = fittingAt(sheet, spot.x);
    return fitting && fitting->band && !spot.isOpen && (spot.low + spot.high) / 2 < fitting->band->median;
}

void addArrow(TrendPicture& picture, const QRectF& bar, bool up, Role role)
{
    picture.arrows.push_back({{bar.center().x(), up ? bar.top() - 4 : bar.bottom() + 4},
                              up,
                              std::max(6.0, picture.barWidth + 3),
                              role});
}

void addEnds(TrendPicture& picture, const Spot& spot, const QRectF& bar, const Range& shown)
{
    const Role role = roleOf(layerOf(spot));
    if (spot.isOpen || spot.high > shown.to)
        addArrow(picture, bar.translated(0, spot.isOpen && spot.low <= shown.to ? 0 : 4), true, role);
    if (spot.low < shown.from)
        addArrow(picture, bar.translated(0, -4), false, role);
}

using Layers = std::array<Spots, LayerCount>;

Layers inLayers(const Spots& spots)
{
    Layers layers;
    for (const Spot* spot : spots)
        layers[layerOf(*spot)].push_back(spot);
    return layers;
}

void addSparseBars(TrendPicture& picture, const Spots& spots)
{
    const BarPlaces places{picture};
    const Layers layers = inLayers(spots);
    for (int layer = 0; layer < LayerCount; ++layer)
        for (const Spot* spot : layers[static_cast<std::size_t>(layer)]) {
            const QRectF bar = places.of(*spot);
            picture.bars.push_back(boxOf(bar, static_cast<Layer>(layer)));
            addEnds(picture, *spot, bar,
                    spot->isPart ? Range{picture.partMmAtBottom, picture.partMmAtTop}
                                 : Range{picture.mmAtBottom, picture.mmAtTop});
        }
}

void addDenseBars(TrendPicture& picture, const Spots& spots)
{
    const BarPlaces places{picture};
    Columns columns{picture};
    for (const Spot* spot : spots)
        columns.add(places.of(*spot), layerOf(*spot));
    columns.finish();
}

// A foot under the readings that the band is made of.
void addFeet(TrendPicture& picture, const Spots& spots)
{
    const BarPlaces places{picture};
    for (const Spot* spot : spots) {
        if (!spot->ofBaseline || spot->hollow)
            continue;
        const QRectF bar = places.of(*spot);
        picture.linesOver.push_back(
            {{bar.left() - 2, bar.bottom() + 2}, {bar.right() + 2, bar.bottom() + 2}, Role::Ink, 1, false});
    }
}

void addMarks(const Sheet& sheet, TrendPicture& picture, const Spots& spots)
{
    const double side = 10 * sheet.fonts.scale;
    MarkField marks{picture, picture.plot, side};
    const BarPlaces places{picture};
    Layers layers;
    for (const Spot* spot : spots)
        if (const Layer layer = layerOf(*spot); layer > Ordinary)
            layers[layer].push_back(spot);
    for (const Layer layer : {Outside, CannotTell, NearEdge, NoBand})
        for (const Spot* spot : layers[layer]) {
            const QRectF bar = places.of(*spot);
            const double off = side / 2 + (spot->isOpen ? 7 : 3);
            const bool below = liesBelow(sheet, *spot);
            marks.add({bar.center().x(), below ? bar.bottom() + off : bar.top() - off}, spot->verdict);
        }
}

// Readings that lie beyond the scale have their value written beside the arrow.
void addFarValues(const Sheet& sheet, TrendPicture& picture, const Spots& spots)
{
    for (const Spot* spot : spots)
        if (spot->low > picture.mmAtTop || (spot->high < picture.mmAtBottom && !spot->isOpen))
            addValue(sheet, picture, *spot, picture.plot);
}

} // namespace

BarPlaces::BarPlaces(const TrendPicture& picture)
    : m_across{acrossOf(picture)}, m_up{upOf(picture)}, m_partUp{partUpOf(picture)}, m_plot{picture.plot},
      m_partLane{picture.partLane}, m_width{picture.barWidth}
{
}

QRectF BarPlaces::of(const Spot& spot) const
{
    const QRectF& lane = spot.isPart ? m_partLane : m_plot;
    const Scale& up = spot.isPart ? m_partUp : m_up;
    const double foot = up.at(spot.low);
    // How far an open interval goes on is not known: a short bar, then an arrow.
    const double openLength =
        std::min(std::max(12.0, 0.03 * std::abs(up.pixelsPerUnit())), lane.height() / 3);
    const double head = spot.isOpen ? foot - openLength : up.at(spot.high);
    const double top = std::clamp(head, lane.top(), lane.bottom() - 2);
    const double bottom = std::min(std::max(foot, top + 2), lane.bottom());
    const double width = spot.hollow ? std::max(m_width, kLeastHollow) : m_width;
    return {m_across.at(spot.x) - width / 2, top, width, bottom - top};
}

Spots visibleSpots(const Sheet& sheet, const TrendPicture& picture, bool part)
{
    Spots spots;
    for (const std::uint32_t i : spotsBetween(sheet.index, picture.window.from, picture.window.to))
        if (sheet.spots[i].isPart == part)
            spots.push_back(&sheet.spots[i]);
    return spots;
}

bool isDense(const Spots& spots, const QRectF& lane)
{
    return static_cast<double>(spots.size()) > lane.width() / 3;
}

void addBars(TrendPicture& picture, const Spots& spots, const QRectF& lane)
{
    if (isDense(spots, lane))
        addDenseBars(picture, spots);
    else
        addSparseBars(picture, spots);
}

void addReadings(const Sheet& sheet, TrendPicture& picture)
{
    const Spots spots = visibleSpots(sheet, picture, false);
    const bool dense = isDense(spots, picture.plot);
    const double each = picture.plot.width() / static_cast<double>(std::max<std::size_t>(1, spots.size()));
    picture.barWidth = dense ? 1 : std::clamp(each * 0.36, 2.0, 5.0);
    addBars(picture, spots, picture.plot);
    if (!dense && each >= 7)
        addFeet(picture, spots);
    addMarks(sheet, picture, spots);
    if (!dense)
        addFarValues(sheet, picture, spots);
}

} // namespace rig::trend
