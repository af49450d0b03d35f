#include "app/pictures/trend_layout.h"
#include "app/wording/trend_words.h"

#include <algorithm>

namespace rig::trend {

namespace {

// Words beside an upright, as low in the plot as nothing lies there. Their top, or nothing when there is no
// room anywhere.
std::optional<double> addBeside(const Sheet& sheet, TrendPicture& picture, double x, const QString& text)
{
    const QRectF& plot = picture.plot;
    const double width = widthOf(text, sheet.strong);
    for (double y = plot.bottom() - sheet.line - 2; y >= plot.top(); y -= sheet.line / 2)
        for (const double left : {x + 5, x - 5 - width}) {
            const QRectF where{left, y, width, sheet.line};
            if (!plot.contains(where) || !isClear(where, picture))
                continue;
            DrawnLabel label = smallLabel(sheet, where, text, Qt::AlignLeft);
            label.role = Role::Accent;
            label.strong = true;
            picture.labels.push_back(label);
            return y;
        }
    return std::nullopt;
}

} // namespace

// Where the drift begins: a flag on the plot's foot. Where the mean made a step: a dashed line.
void addNotes(const Sheet& sheet, TrendPicture& picture)
{
    const Scale across = acrossOf(picture);
    const TrendAxis axis = picture.window.axis;
    if (const auto& onset = sheet.series.onset) {
        const double place = along(axis, onset->when, onset->rigging);
        if (across.contains(place)) {
            const double x = across.at(place);
            const double foot = picture.plot.bottom();
            const double top =
                addBeside(sheet, picture, x, TrendWords::onset(*onset, axis)).value_or(foot - sheet.line);
            picture.linesOver.push_back({{x, top}, {x, foot}, Role::Accent, 2, false});
        }
    }
    if (const auto& change = sheet.series.change) {
        const double place = along(axis, change->when, change->rigging);
        if (across.contains(place))
            addBeside(sheet, picture, across.at(place), TrendWords::change(*change, axis));
    }
}

void addFirstBandName(const Sheet& sheet, TrendPicture& picture)
{
    if (sheet.fittings.size() < 2 || !sheet.series.fittings.front().band)
        return;
    const BandEdges& inner = sheet.series.fittings.front().band->inner;
    const double from = std::max(picture.plot.left(), acrossOf(picture).at(sheet.fittings.front().to));
    const double width = widthOf(TrendWords::firstBand(), sheet.small);
    const Scale up = upOf(picture);
    for (double left = picture.plot.right() - width - 4; left >= from + 4; left -= width / 2)
        for (const double top : {up.at(inner.lower) + 1, up.at(inner.upper) - sheet.line - 1,
                                 up.at(inner.upper) + 1, up.at(inner.lower) - sheet.line - 1}) {
            const QRectF where{left, top, width, sheet.line};
            const auto hits = [&where](const DrawnBox& box) { return box.where.intersects(where); };
            if (!picture.plot.contains(where) || !isClear(where, picture) ||
                std::any_of(picture.boxes.begin(), picture.boxes.end(), hits))
                continue;
            picture.labels.push_back(smallLabel(sheet, where, TrendWords::firstBand(), Qt::AlignLeft));
            return;
        }
}

} // namespace rig::trend
