#include "core/review/conflicts.h"
#include "core/store/connection.h"
#include "core/store/facts_book.h"
#include "core/store/inspection.h"
#include "core/store/join.h"
#include "tests/fuzz/always.h"
#include "tests/fuzz/targets.h"
#include "tests/fuzz/temp_file.h"

namespace rig::fuzz {

namespace {

// All that the window, a report and `rigband-file check` ask of a file, whatever comes of it.
void readAll(OpenFile& open)
{
    (void)findingsIn(open.file->connection(), StillClock{}.now());
    (void)open.file->lookAtChain();
    (void)open.file->evidence({"0abc:1"});
    (void)open.file->danglingReferences();
    (void)eachPhoto(open.file->connection(), [](const Photo&, const PhotoImage&) {});
    (void)open.records.persons();
    (void)open.records.gauges();
    (void)open.records.gaugeChecks();
    (void)open.records.openConflicts();
    const auto airframes = open.records.airframes();
    if (!airframes)
        return;
    for (const Airframe& airframe : airframes.value()) {
        (void)open.records.book().airframe(airframe.id);
        (void)open.records.learning(airframe.id);
        (void)open.records.namedInRiggings(airframe.id);
        (void)open.records.openRecord(airframe.id);
        if (const auto riggings = open.records.riggingRecords(airframe.id))
            for (const RiggingRecord& record : riggings.value())
                (void)open.records.content(record.id);
    }
}

bool opensAndReads(const std::string& path, OpenAs as)
{
    const StillClock clock;
    auto opened = StoreFile::open(path, as, clock);
    if (!opened)
        return false;
    OpenFile open{std::move(opened).value(), clock};
    readAll(open);
    return true;
}

} // namespace

void opener(std::string_view bytes)
{
    static const MemoryFolder folder;
    folder.empty();
    const std::string path = folder.file("given.rigband");
    writeFile(path, bytes);
    opensAndReads(path, OpenAs::ToLook);
    always(readFile(path) == bytes, "a file was changed by looking at it");
    if (const auto other = OtherFile::read(path, folder.file("beside.rigband")))
        (void)other.value()->lookAtChain();
    always(readFile(path) == bytes, "a file was changed by reading it to join it");
    if (opensAndReads(path, OpenAs::Existing))
        return;
    always(readFile(path) == bytes, "a file that is refused was changed");
    const std::string salvaged = folder.file("salvaged.rigband");
    if (StoreFile::salvage(path, salvaged, StillClock{}))
        always(opensAndReads(salvaged, OpenAs::Existing), "what was salvaged does not open");
}

} // namespace rig::fuzz
