#include "app/blocks/cells.h"
#include "app/pictures/aircraft.h"
#include "app/pictures/offsets.h"
#include "app/report/review_parts.h"
#include "app/wording/review_report_words.h"
#include "core/views/movement_maker.h"

#include <algorithm>

namespace rig::engineer {

namespace {

constexpr double kShiftsHigh = 150;

void addOffsets(Writing& out, const std::vector<OffsetRow>& rows)
{
    if (std::ranges::none_of(rows, [](const OffsetRow& row) { return row.offset.has_value(); }))
        return;
    PictureBlock block;
    block.height = heightOfOffsets(rows, FontSizes{});
    block.lay = [rows](QSizeF size, const FontSizes& fonts) {
        return laidPicture(layoutOffsets(rows, size, fonts));
    };
    out.blocks.emplace_back(std::move(block));
}

} // namespace

void addShared(const Source& source, Writing& out)
{
    const std::vector<ShiftDay> days = shiftDaysOf(source.review.shifts, source.words.shiftCauses());
    if (days.empty() && source.review.sharedShifts.empty()) {
        out.nothing << ReviewReportWords::shared();
        return;
    }
    addPart(out, ReviewReportWords::shared(), Part::Shared);
    if (!days.empty()) {
        addIntro(out, ReviewReportWords::sharedIntro());
        PictureBlock block;
        block.height = kShiftsHigh;
        block.lay = [days](QSizeF size, const FontSizes& fonts) {
            return laidPicture(layoutShifts(days, size, fonts));
        };
        out.blocks.emplace_back(std::move(block));
    }
    for (const SharedShiftStory& story : source.review.sharedShifts)
        addText(out, source.words.shift(story));
    if (source.review.sharedShifts.empty())
        addText(out, ReviewWords::noShift(source.review));
}

void addMeasurers(const Source& source, Writing& out)
{
    const MeasurerOffsets& all = source.review.measurers;
    if (all.persons.empty() && all.gauges.empty()) {
        out.nothing << ReviewReportWords::measurers();
        return;
    }
    addPart(out, ReviewReportWords::measurers(), Part::Measurers, true);
    addIntro(out, ReviewReportWords::measurersIntro());
    std::vector<OffsetRow> persons;
    for (const MeasuredBy<PersonId>& one : all.persons)
        persons.push_back(
            offsetRowOf(one, source.facts.nameOf(one.who), ReviewWords::noOffset(one, all.personsState)));
    addOffsets(out, persons);
    addText(out, source.words.personOffsets(all).join(QLatin1Char(' ')));
    std::vector<OffsetRow> gauges;
    for (const MeasuredBy<GaugeId>& one : all.gauges)
        if (const Gauge* gauge = source.facts.gauge(one.who))
            gauges.push_back(offsetRowOf(one, source.words.gauge(*gauge).toStdString(),
                                         ReviewWords::noOffset(one, all.gaugesState)));
    addOffsets(out, gauges);
    addText(out, source.words.gaugeOffsets(all).join(QLatin1Char(' ')));
}

} // namespace rig::engineer
