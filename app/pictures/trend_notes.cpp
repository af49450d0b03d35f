#include "app/pictures/trend_layout.h"
#include "app/wording/trend_words.h"

#include <algorithm>

namespace rig::trend {

namespace {

struct Note
{
    double place = 0;
    QString words;
    bool isFlag = false;
};

// Words right of an upright, or left of it where there is no room, in a row of the notes.
void addNote(const Sheet& sheet, TrendPicture& picture, double x, std::size_t row, const QString& text)
{
    const QRectF& lane = sheet.notes;
    const QString fitted = sheet.strong.elidedText(text, Qt::ElideRight, lane.width());
    const double width = widthOf(fitted, sheet.strong);
    const double beside = x + 5 + width <= lane.right() ? x + 5 : x - 5 - width;
    DrawnLabel label = smallLabel(sheet,
                                  {std::max(beside, lane.left()),
                                   lane.top() + 1 + static_cast<double>(row) * sheet.line, width, sheet.line},
                                  fitted, Qt::AlignLeft);
    label.role = Role::Accent;
    label.strong = true;
    picture.labels.push_back(label);
}

} // namespace

// Where the drift begins: a flag that stands into the plot. Where the mean made a step: a dashed line. The
// right one of the two is told in the upper row, so that the other's line passes beside its words.
void addNotes(const Sheet& sheet, TrendPicture& picture)
{
    const Scale across = acrossOf(picture);
    const TrendAxis axis = picture.window.axis;
    std::vector<Note> notes;
    if (const auto& onset = sheet.series.onset)
        notes.push_back({along(axis, onset->when, onset->rigging), TrendWords::onset(*onset, axis), true});
    if (const auto& change = sheet.series.change)
        notes.push_back(
            {along(axis, change->when, change->rigging), TrendWords::change(*change, axis), false});
    if (const auto& either = sheet.series.either)
        notes.push_back(
            {along(axis, either->when, either->rigging), TrendWords::either(*either, axis), false});
    std::stable_sort(notes.begin(), notes.end(),
                     [](const Note& a, const Note& b) { return a.place > b.place; });
    const double foot = picture.plot.bottom();
    for (std::size_t row = 0; row < notes.size(); ++row) {
        const Note& note = notes[row];
        if (!across.contains(note.place))
            continue;
        const double x = across.at(note.place);
        const double down = foot + static_cast<double>(row + 1) * sheet.line;
        const bool isFreeBelow = isFree({QPointF{x - 1, foot}, QPointF{x + 1, down}}, picture, 0);
        const double end = isFreeBelow ? down : foot;
        addNote(sheet, picture, x, row, note.words);
        if (note.isFlag)
            picture.linesOver.push_back({{x, foot - sheet.line}, {x, end}, Role::Accent, 2, false});
        else
            picture.lines.push_back({{x, picture.plot.top()}, {x, end}, Role::Accent, 1, true});
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
