#include "app/pictures/trend_layout.h"
#include "app/wording/trend_words.h"

#include <algorithm>

namespace rig::trend {

namespace {

bool hasPart(const std::vector<Spot>& spots, bool notSecured)
{
    return std::ranges::any_of(
        spots, [notSecured](const Spot& spot) { return spot.isPart && spot.isNotSecured == notSecured; });
}

// Empty where there is none.
QString rangeText(const std::vector<Spot>& spots, const TrendSeries& series, bool notSecured)
{
    if (!hasPart(spots, notSecured))
        return {};
    GapInterval whole = {kWidestGap, Gap{}};
    for (std::size_t i = 0; i < spots.size(); ++i) {
        if (!spots[i].isPart || spots[i].isNotSecured != notSecured)
            continue;
        const GapInterval& gap = series.readings[i].interval;
        whole.enters = std::min(whole.enters, gap.enters);
        if (!gap.refuses)
            whole.refuses.reset();
        else if (whole.refuses)
            whole.refuses = std::max(*whole.refuses, *gap.refuses);
    }
    return TrendWords::gap(whole);
}

void addPartCaption(const Sheet& sheet, TrendPicture& picture)
{
    const QString part = rangeText(sheet.spots, sheet.series, false);
    const QString notSecured = rangeText(sheet.spots, sheet.series, true);
    const QRectF row{picture.partLane.left(), picture.partLane.top() - sheet.line - 1,
                     picture.partLane.width(), sheet.line};
    for (const QString& text :
         {TrendWords::apart(part, notSecured), TrendWords::apartShort(part, notSecured)}) {
        const double width = widthOf(text, sheet.small);
        for (double left = row.left(); left + width <= row.right(); left += 10) {
            const QRectF where{left, row.top(), width, row.height()};
            if (!isFree(where, picture, 4))
                continue;
            picture.labels.push_back(smallLabel(sheet, where, text, Qt::AlignLeft));
            return;
        }
    }
}

void addPartScale(const Sheet& sheet, TrendPicture& picture)
{
    const Scale up = partUpOf(picture);
    const QRectF& lane = picture.partLane;
    const auto extent = [&sheet](const QString&) { return sheet.line; };
    for (const Tick& tick : up.ticks(extent, sheet.line * 0.4)) {
        const double y = up.at(tick.value);
        const QRectF where{2, y - sheet.line / 2, lane.left() - 9, sheet.line};
        if (where.top() < lane.top() - 2 || where.bottom() > lane.bottom() + 2 || !isFree(where, picture, 0))
            continue;
        picture.labels.push_back(smallLabel(sheet, where, tick.text, Qt::AlignRight));
        picture.lines.push_back({{lane.left() - 5, y}, {lane.left(), y}, Role::InkSoft, 1, false});
    }
}

} // namespace

void addPartLane(const Sheet& sheet, TrendPicture& picture)
{
    if (picture.partLane.isNull())
        return;
    DrawnBox ground;
    ground.where = picture.partLane;
    // Hatched is where part-seated was seen; of what was not secured the gap tells nothing.
    ground.hatched = hasPart(sheet.spots, false);
    ground.role = ground.hatched ? Role::Hatch : Role::StripGround;
    ground.opacity = ground.hatched ? 0.45 : 1;
    picture.boxes.push_back(ground);
    addPartCaption(sheet, picture);
    addPartScale(sheet, picture);
    const Spots spots = visibleSpots(sheet, picture, true);
    addBars(picture, spots, picture.partLane);
    // A value is about four lines wide; where few of them would fit, the lane's own words say the range.
    if (static_cast<double>(spots.size()) * 4 * sheet.line <= 2 * picture.partLane.width())
        for (const Spot* spot : spots)
            addValue(sheet, picture, *spot, picture.partLane);
}

} // namespace rig::trend
