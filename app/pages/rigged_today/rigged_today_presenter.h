#pragma once

#include "app/pages/rigged_today/rigged_today_view.h"
#include "app/pictures/trend.h"
#include "core/review/comparisons.h"
#include "core/review/coupling_history.h"
#include "core/review/known_airframe.h"
#include "core/store/records.h"

#include <optional>
#include <set>
#include <vector>

namespace rig {

// One coupling as one person works on it: everything the panel shows, worked out from facts.
struct CouplingSheet
{
    Coupling coupling;
    Turn turn = Turn::First;
    CouplingFlow flow;
    std::optional<PersonId> person; // chosen, never filled in for the second person
    std::optional<Gauge> gauge;
    std::optional<Day> gaugeChecked;
    bool isGaugeOverdue = false;         // a month and more since then
    std::set<PersonId> firstPersons;     // who answered or measured here first
    std::optional<Coupling> otherSide;   // left for right, right for left
    std::set<PersonId> otherSidePersons; // who did that one first in this record
    std::vector<SheetReading> readings;  // of this person since the last interruption
    TrendSeries lastTwelve;              // without this record's own readings
    CouplingHistory history;
    std::optional<Band> band; // of the fitting that holds today
    ReadingWanted wanted = ReadingWanted::None;
};

// What a reading that was just kept says together with others.
struct ReadingNews
{
    std::optional<numbers::ReadingPair> pair; // against the first person's
    PersonsSpread spread;                     // what the pair was held against
    bool looksSwapped = false;                // with the other side's
};

// Facts of the rigging record -> views; what the user did -> facts. Knows no widget.
class RiggedTodayPresenter
{
public:
    // Both outlive it.
    RiggedTodayPresenter(Records& records, const Clock& clock);

    Result<RiggedTodayView> view(AirframeId airframe) const;
    // `view` has a record.
    Result<CouplingSheet> sheet(const RiggedTodayView& view, CouplingId coupling, Turn turn) const;
    // Hands the sheet the gauge in use: the one chosen, or the only one there is.
    void useGauge(CouplingSheet& sheet, const RiggedTodayView& view, std::optional<GaugeId> chosen) const;
    // The judgement a reading would get; pure, for the frame in which the leaf is pressed.
    Judgement preview(const CouplingSheet& sheet, const GaugeReading& reading) const;

    // Starts a record; one left from another day is closed as abandoned with it. `origin` is Rigging, or
    // Recheck when the airframe was not taken apart since the last one.
    Result<RecordId> begin(const RiggedTodayView& view, PersonId leader,
                           RecordOrigin origin = RecordOrigin::Rigging);
    // Notes that the airframe was taken apart today.
    Outcome noteTakenApart(const RiggedTodayView& view);
    Outcome tick(RecordId record, TickKind kind, PersonId person);
    Outcome answer(RecordId record, const CouplingSheet& sheet, CheckKind kind, Answer answer);
    // `reason` is given when the reading corrects the last one of the sheet.
    // An outside reading, a disagreement with the first person and a suspected swap each open a question.
    Result<ReadingNews> keep(RecordId record, const CouplingSheet& sheet, const GaugeReading& reading,
                             const Judgement& shown, const std::string& correctionReason);
    Outcome interrupt(RecordId record, CouplingId coupling, Turn turn, InterruptionReason reason);
    // `counted` are the ticks of the close.
    Outcome close(const RiggedTodayView& view, PersonId first, PersonId second, const std::string& note,
                  std::span<const TickKind> counted);
    // Couplings left half-way when the program went down start again from the look.
    Outcome resume(AirframeId airframe);

private:
    Result<ReadingNews> compare(const CouplingSheet& sheet, const Reading& reading);
    Result<bool> isSwapSuspected(const CouplingSheet& sheet, const Reading& reading,
                                 const KnownAirframe& known, const RecordContent& content) const;
    Reading readingFrom(const CouplingSheet& sheet, const GaugeReading& taken) const;

    Records& m_records;
    const Clock& m_clock;
};

} // namespace rig
