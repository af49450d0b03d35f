#pragma once

#include "core/airframe/coupling.h"
#include "core/judgement/judgement.h"
#include "core/rigging/rigging_flow.h"

#include <functional>
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
    Step next = Step::Look;             // the first person's
    std::optional<GapInterval> reading; // the first person's latest that counts
    std::optional<Verdict> verdict;     // the gravest of the first person's readings that count
    bool interrupted = false;
    bool doubted = false; // a No or CannotSee was answered at any time in this record
    bool outside = false; // a reading lay outside at any time in this record, by either person
};

enum class OpenItemKind {
    NotLooked,
    NotMeasured,
    NotPulled,
    NoSecondPerson,
    Doubted,
    OutsideReading,
    NotJudged,  // no band yet: listed, does not block once a second person looked and pulled
    CannotTell, // likewise
};

// What stands between a record and its complete close.
struct OpenItem
{
    CouplingId coupling;
    std::string name;
    OpenItemKind kind = OpenItemKind::NotLooked;

    bool blocks() const { return kind != OpenItemKind::NotJudged && kind != OpenItemKind::CannotTell; }
};

struct RecordReview
{
    std::vector<CouplingProgress> couplings;
    std::vector<OpenItem> openItems;

    int firstDone() const; // also those with both
    int bothDone() const;
    // False without couplings: a record of nothing is never complete.
    bool mayCloseComplete() const;
};

using Judge = std::function<Judgement(const Reading&)>;

// Every reading of the record counts for an outside item, superseded or not: it stands until a named person
// has said what was found, and no later reading takes it away.
RecordReview reviewOf(const RecordContent& content, std::span<const Coupling> couplings, const Judge& judge);

// Outside over cannot tell over no band yet over near edge over inside.
Verdict graver(Verdict a, Verdict b);

} // namespace rig
