#pragma once

#include "core/airframe/coupling.h"
#include "core/airframe/surface.h"
#include "core/judgement/judgement.h"
#include "core/rigging/joint_stop.h"
#include "core/rigging/rigging_flow.h"

#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace rig {

// How far one coupling has come in a rigging record.
enum class CouplingStage { Waiting, Begun, FirstDone, BothDone };

struct CouplingProgress
{
    CouplingId id;
    std::string name;
    CouplingStage stage = CouplingStage::Waiting;
    CouplingParts parts;                // what there is to measure, to pull, to secure
    Step next = Step::Look;             // the first person's
    std::optional<GapInterval> reading; // the first person's latest that counts
    std::optional<Verdict> verdict;     // the gravest of the first person's readings that count
    bool interrupted = false;
    std::optional<JointStop> stop; // nothing else is asked here
    std::vector<CheckKind>
        notSeen; // “cannot see” was answered, by either person, and nobody has seen it since
    // The second person's own readings, likewise the gravest; none where nobody read a second time.
    std::optional<Verdict> secondVerdict;
    bool doubted = false;  // “no” was answered, and nobody has said yet what it was
    bool outside = false;  // a reading lay outside, by either person, and nobody has said yet what it was
    bool isSlip = false;   // and all that lay outside was taken back since, with a reason
    bool resolved = false; // a question about it was closed in this record; the mark stays
};

// One surface of the control check. Only the last answer to each thing counts, and none from before a
// question about it was closed or a hand was on a joint of its circuit.
struct SurfaceProgress
{
    SurfaceId id;
    std::string name;
    std::map<SurfaceCheckKind, Answer> answers;
    std::map<SurfaceCheckKind, Movement> seen; // of the calls among them
    std::optional<SurfaceCheckKind> next;      // empty: everything was tried
    std::optional<Question> doubt;             // asked here and not yet found out; the gravest
    // Answered with no, and nobody has said yet what it was; the sense before all else.
    std::optional<SurfaceCheckKind> stop;
    // The coupling that somebody was at after this had been tried: it is to be tried again.
    std::optional<std::string> setBackBy;
    // The question about what was answered here is closed: that is to be tried again.
    bool isFoundOut = false;

    bool isToBeTriedAgain() const { return setBackBy || isFoundOut; }

    bool isCalledBothWays() const;
    // Answered with a plain yes or no, as versions did that did not ask what it does.
    bool isSenseAnsweredPlainly() const;
};

enum class OpenItemKind {
    NotLooked,
    NotMeasured,
    NotPulled,
    NotSecured,
    NoSecondPerson,
    SecondInParts, // several persons did it as second, and none of them all of it
    NotSeen,       // a part that could not be seen, and has not been since
    Doubted,       // “no” was answered
    OutsideReading,
    ReadingsDisagree,
    SidesSwapped,
    NotJudged,  // no band yet: listed, does not block once a second person looked and pulled
    CannotTell, // likewise
    SurfaceNotChecked,
    SurfaceSetBack, // tried, and somebody was at a joint of its circuit since
    SurfaceDoubted, // wrong or not seen, and nobody has said what was found
    NoSurfaces,     // nobody has set up what the control check goes through
    SeasonList,     // the list for the first rigging of the season is not finished
};

// What stands between a record and its complete close.
struct OpenItem
{
    std::string name; // of the coupling or surface; empty for the whole record
    OpenItemKind kind = OpenItemKind::NotLooked;
    std::string by = {};                   // for SurfaceSetBack: the coupling that somebody was at
    std::optional<CheckKind> check = {};   // for NotSeen: what was not
    bool pulls = true;                     // for NoSecondPerson: that person pulls too
    bool isSlip = false;                   // for OutsideReading: it was taken back, and the stop stays
    std::optional<Question> question = {}; // for SurfaceDoubted

    // Of a joint or a surface that is left as it is until a named person has said what was found.
    bool stops() const;
    // The same is said of another thing: the two stand in one line.
    bool isLike(const OpenItem& other) const;
    bool blocks() const { return kind != OpenItemKind::NotJudged && kind != OpenItemKind::CannotTell; }
    // What one person found, and no stop: the other is to find it for themselves.
    bool isAFinding() const { return !blocks() || kind == OpenItemKind::NotSeen; }
};

struct RecordReview
{
    std::vector<CouplingProgress> couplings;
    std::vector<SurfaceProgress> surfaces;
    std::vector<TickKind>
        seasonList; // still to be ticked; empty too when it is not the season's first rigging
    std::vector<OpenItem> openItems; // what stops first, then what is in question, then what is to be done

    int surfacesDone() const;
    // False without couplings: a record of nothing is never complete.
    bool mayCloseComplete() const;
};

// What a record is held against.
struct RecordScope
{
    std::span<const Coupling> couplings; // those no longer in use are passed over
    std::span<const Surface> surfaces;   // likewise
    bool isFirstOfSeason = false;
};

using Judge = std::function<Judgement(const Reading&)>;

// Every reading of the record counts for an outside item, superseded or not: it stands until a named person
// has said what was found, and no later reading takes it away.
RecordReview reviewOf(const RecordContent& content, const RecordScope& scope, const Judge& judge);

// Outside over cannot tell over no band yet over near edge over inside.
Verdict graver(Verdict a, Verdict b);

// The list of the first rigging of a calendar year.
std::span<const TickKind> seasonTicks();

} // namespace rig
