#pragma once

#include "core/store/records.h"
#include "tests/support/hangar.h"

#include <functional>
#include <string>
#include <vector>

namespace rig::test {

// The ids of the facts of one save, once it was said to be kept.
using Acknowledge = std::function<void(const std::vector<IdBytes>&)>;

// A file with a hangar in it that is put back as it was before each of many runs.
class FileToSaveIn
{
public:
    // Whether the copy of the day, which an opening makes, lies there already.
    enum class Copying { Done, ToDo };

    FileToSaveIn();

    void beginAgain(Copying copying = Copying::Done) const;
    std::string path() const { return m_store.path(); }
    const Hangar& hangar() const { return m_hangar; }
    const std::string& bytes() const { return m_bytes; }

private:
    TempStore m_store;
    Hangar m_hangar{m_store.records()};
    std::string m_bytes;
};

// RIGBAND_THOROUGH=1: many times what is tried at each change.
bool isThorough();

// Who saves into which file.
struct Saving
{
    std::string path;
    const Hangar& hangar; // which is in the file
    Acknowledge acknowledge;
    std::uint64_t idSeed = 7;
    const char* setting = nullptr; // SQL for its connection, to save less carefully than the program does
};

// Opens the file and saves one rigging as a page does: the record, answers, readings with what was shown, a
// photo, several facts at once, the close. What fails is pressed once more. Returns all that went wrong.
std::vector<Problem> saveRigging(const Saving& saving);
// Opens the file and saves so many pairs of readings, each pair at once.
std::vector<Problem> savePairs(const Saving& saving, int pairs);

// What a file holds of what was said to be kept.
struct Kept
{
    int lost = 0;    // facts that were acknowledged and are not there
    int half = 0;    // facts, or files, that are not whole
    std::string why; // of the first half one
};
// Opens it anew, as the next start of the program does.
Kept keptIn(const std::string& path, const std::vector<IdBytes>& acknowledged);

} // namespace rig::test
