#pragma once

#include "app/blocks/blocks.h"
#include "app/blocks/laid_picture.h"
#include "app/wording/formats.h"
#include "app/wording/review_words.h"
#include "core/review/airframe_review.h"
#include "core/review/judged_readings.h"

#include <vector>

// The parts of the engineer's report, shared by its source files only.
namespace rig::engineer {

struct Source
{
    const AirframeFacts& facts;
    const AirframeReview& review;
    ReviewWords words;
    RiggingNumbers numbers;
    std::vector<JudgedReading> judged; // up to the end of the period
    Formats formats;
};

using Blocks = std::vector<Block>;

QString nameOf(const Source& source, const std::optional<PersonId>& person); // empty when not known
QString nameOf(const Source& source, const std::optional<GaugeId>& gauge);
QString nameOf(const Source& source, const std::optional<CouplingId>& coupling);

void addHeading(Blocks& blocks, const QString& text, int rank = 2);
void addText(Blocks& blocks, const QString& text, Role role = Role::Ink);
// Said of what follows: stays with it.
void addIntro(Blocks& blocks, const QString& text);
void addSentences(Blocks& blocks, const QStringList& sentences);
// The table, or a sentence when it has no rows.
void addTable(Blocks& blocks, TableBlock table, const QString& otherwise);

void addTop(const Source& source, Blocks& blocks);
void addRanking(const Source& source, Blocks& blocks);
void addOpenQuestions(const Source& source, Blocks& blocks);
void addOutside(const Source& source, Blocks& blocks);
void addCouplings(const Source& source, Blocks& blocks);
void addShared(const Source& source, Blocks& blocks);
void addMeasurers(const Source& source, Blocks& blocks);
void addAnswers(const Source& source,
                Blocks& blocks); // looks, pulls, the control check and what was measured there
void addGauges(const Source& source, Blocks& blocks);
void addFittings(const Source& source, Blocks& blocks);
void addEvents(const Source& source, Blocks& blocks);
void addClosedQuestions(const Source& source, Blocks& blocks);
void addRest(const Source& source, Blocks& blocks);
void addByHand(Blocks& blocks);

} // namespace rig::engineer
