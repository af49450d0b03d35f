#pragma once

#include "core/airframe/coupling.h"
#include "core/airframe/person.h"
#include "core/clock.h"
#include "core/result.h"

#include <QString>

#include <optional>
#include <vector>

namespace rig {

class Clock;
class Records;

enum class StatementKind { Finding, Question };

// What stands in the form, as it was typed, and what it is about.
struct StatementEntry
{
    StatementKind kind = StatementKind::Finding;
    AirframeId airframe;
    std::optional<CouplingId> coupling; // empty: the whole airframe
    std::optional<ReadingId> reading;   // that a question is about
    QString day;                        // of a finding
    std::optional<PersonId> person;     // who found or asks; nobody is filled in
    QString said;                       // what was found, or what is asked
    QString done;                       // of a finding
};

enum class StatementLack { Person, DayUnread, DayAhead, Said, Done };

// Either what is lacking, and nothing was kept, or what is said of it now that it is on the disk.
struct StatementKept
{
    std::vector<StatementLack> lacks;
    QString sentence;

    bool isKept() const { return lacks.empty(); }
};

// Who may be named, and where.
struct StatementChoices
{
    std::vector<Person> persons;
    std::vector<Coupling> couplings; // in use, in rigging order
};

// Findings and questions that somebody states where they read.
class StatementsPresenter
{
public:
    // Both must outlive this object.
    StatementsPresenter(Records& records, const Clock& clock) : m_records{records}, m_clock{clock} {}

    Result<StatementChoices> choices(AirframeId airframe) const;
    Result<StatementKept> keep(const StatementEntry& entry);

private:
    Outcome keepFinding(const StatementEntry& entry, Day day);
    Outcome keepQuestion(const StatementEntry& entry);
    QString sentenceOf(const StatementEntry& entry) const;

    Records& m_records;
    const Clock& m_clock;
};

} // namespace rig
