#pragma once

#include "app/blocks/blocks.h"
#include "app/blocks/laid_picture.h"
#include "app/wording/formats.h"
#include "app/wording/review_words.h"
#include "core/progress.h"
#include "core/review/airframe_review.h"
#include "core/review/file_evidence.h"
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
    bool withAppendix = true;
    bool withPlan = false;                   // before the couplings
    const std::optional<FileEvidence>& file; // from which it is printed

    // Where there are records that nobody has read, nothing is known of what was answered in them.
    bool isAnsweredKnown() const { return !facts.contents.empty() || facts.riggingRecords.empty(); }
};

// What can be turned to by the number of its page.
enum class Part {
    First = 1,
    OpenQuestions,
    Conflicts,
    Outside,
    Couplings,
    Shared,
    Measurers,
    Gauges,
    Fittings,
    Events,
    ClosedQuestions,
    Rest,
    Listed,
    Decided,
    Looks,
    ControlChecks,
    HowWorkedOut,
    File,
    ByHand,
};

constexpr int placeOf(Part part)
{
    return static_cast<int>(part);
}

// Of a coupling's own section; counted in the order of the review.
constexpr int placeOfCoupling(std::size_t index)
{
    constexpr int kAfterParts = 100;
    return kAfterParts + static_cast<int>(index);
}

// The report as it is written: its blocks, and the parts that have nothing to tell.
struct Writing
{
    std::vector<Block> blocks;
    QStringList nothing;
};

QString nameOf(const Source& source, const std::optional<PersonId>& person); // empty when not known
QString nameOf(const Source& source, const std::optional<GaugeId>& gauge);
QString nameOf(const Source& source, const std::optional<CouplingId>& coupling);
// What was noted with the reading, if anything; why it corrects another one is told of that one.
QStringList noteOf(const Reading& reading);
QString noteOf(const Gauge& gauge);
// With it what is noted of the gauge.
QStringList notesOf(const Source& source, const Reading& reading);

void addPart(Writing& out, const QString& text, Part part, bool keepsTogether = false);
void addText(Writing& out, const QString& text, Role role = Role::Ink);
// Said of what follows: stays with it.
void addIntro(Writing& out, const QString& text);
void addSentences(Writing& out, const QStringList& sentences);
// The part with its table, or its name among those that have nothing to tell.
void addPartOf(Writing& out, const QString& text, Part part, TableBlock table, const QString& intro = {});
// Takes away the columns in which no row says anything, a count of none included, but the first ones; their
// heads.
QStringList dropEmptyColumns(TableBlock& table, std::size_t kept = 0);
bool isOpenAtEnd(const Source& source, const QuestionStory& story);
// Open conflicts that concern this airframe; none where it is printed from no file.
std::vector<ToldConflict> conflictsOf(const Source& source);

// The first page: whose report it is, what to look at first, and where everything stands.
void addTop(const Source& source, Writing& out);
void addFirst(const Source& source, Writing& out);
void addOpenQuestions(const Source& source, Writing& out);
// What two laptops say differently and nobody has decided.
void addConflicts(const Source& source, Writing& out);
void addOutside(const Source& source, Writing& out);
void addCouplings(const Source& source, Writing& out);
void addShared(const Source& source, Writing& out);
void addMeasurers(const Source& source, Writing& out);
void addGauges(const Source& source, Writing& out);
void addFittings(const Source& source, Writing& out);
void addEvents(const Source& source, Writing& out);
void addClosedQuestions(const Source& source, Writing& out);
void addRest(const Source& source, Writing& out);
// The appendix: readings listed one by one; looks, pulls, the control check and what was measured there.
void addListed(const Source& source, Writing& out);
void addAnswers(const Source& source, Writing& out);
void addDecided(const Source& source, Writing& out);
void addHowWorkedOut(const Source& source, Writing& out);
// How far the file had come, what in it does not stand as it was saved, and where earlier prints stand.
void addFile(const Source& source, Writing& out);
void addByHand(Writing& out);

} // namespace rig::engineer
