#pragma once

#include "app/blocks/cells.h"
#include "app/wording/formats.h"
#include "core/review/record_summary.h"

#include <functional>
#include <vector>

// The parts of a rigging record on paper, shared by its source files only.
namespace rig::record {

// The record, and the blocks it has become so far.
class Sheet
{
public:
    explicit Sheet(const RecordSummary& summary) : m_summary{summary} {}

    const RecordSummary& summary() const { return m_summary; }
    const Formats& formats() const { return m_formats; }
    std::vector<Block> take() { return std::move(m_blocks); }

    void add(Block block) { m_blocks.push_back(std::move(block)); }
    void addText(const QString& text, Role role = Role::Ink) { add(ParagraphBlock{text, role, false}); }
    // The hour alone on the day of the record, day and hour otherwise.
    QString whenOf(const Moment& when) const;
    QString whenRead(const Reading& reading) const; // the day alone where a table did not tell when
    QString whenAsked(const Question& question) const;
    // As a table, below its heading where one is given; nothing when no question is wanted.
    void addQuestions(const std::function<bool(const Question&)>& isWanted, const QString& heading = {});

private:
    Cell questionCell(const SummaryQuestion& one) const;
    Cell outcomeCell(const SummaryQuestion& one) const;

    const RecordSummary& m_summary;
    Formats m_formats;
    std::vector<Block> m_blocks;
};

void addCouplings(Sheet& sheet);    // at a glance, then each with all that was answered and read
void addControlCheck(Sheet& sheet); // each surface

} // namespace rig::record
