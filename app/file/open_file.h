#pragma once

#include "core/airframe/id_source.h"
#include "core/progress.h"
#include "core/review/airframe_facts.h"
#include "core/store/other_file.h"
#include "core/store/records.h"
#include "core/store/store_file.h"

#include <QString>

#include <cstdint>
#include <memory>
#include <optional>

namespace rig::file {

class TerminalProgress;

// An open file with all that it takes to read and add facts. Made in place: its parts refer to one another.
struct OpenFile
{
    SystemClock clock;
    IdSource ids;
    std::unique_ptr<StoreFile> file;
    std::unique_ptr<Records> records;
    std::optional<ChainState> chain; // as it was when the file was held against it, see factsNamed()

    OpenFile();
    Outcome open(const QString& path, OpenAs as = OpenAs::Existing, const Progress* progress = nullptr);
};

// The airframe that is registered so, however it is typed; null where there is none.
const Airframe* airframeNamed(const std::vector<Airframe>& airframes, const QString& registration);

// Opens the file and holds it against its chain; what it knows of the airframe with this registration. Where
// that cannot be told, why is complained of. `told`: how far that is, where it is a part of longer work.
std::optional<AirframeFacts> factsNamed(OpenFile& open, const QString& path, const QString& registration,
                                        TerminalProgress& progress, Progress* told = nullptr);

// Complains of it, or says that the work was stopped where that is why; the exit status for it.
int couldNot(TerminalProgress& progress, const Problem& problem, const QString& path);
int couldNot(TerminalProgress& progress, const QString& sentence);
// Whether it was stopped before anything was written, which is complained of.
bool isGivenUp(TerminalProgress& progress);

// How the program ends that has printed something of it: where something was found, that and where it stands
// is complained of.
int endAfterPrint(const OpenFile& open, const QString& whereItStands);

// Looks whether all of a file stands as it was saved, and says what does not. Where that cannot be looked at,
// or is stopped, that is complained of and nothing comes back.
std::optional<ChainState> chainToldOf(OtherFile& file, const Progress* progress = nullptr);

// Whether nothing stands there yet and its folder does, which is complained of otherwise: nothing is ever
// written over.
bool isFree(const QString& out);

// Whether what stands there, if anything does, is a file, which is complained of otherwise. A pipe or a
// device could go on for ever, and is not even opened.
bool isAFile(const QString& path);

} // namespace rig::file
