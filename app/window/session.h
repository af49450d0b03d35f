#pragma once

#include "core/airframe/id_source.h"
#include "core/store/join.h"
#include "core/store/records.h"
#include "core/store/store_file.h"

#include <memory>
#include <string>

namespace rig {

class DemoCopy;

// One open file with all that works on it. `clock` outlives it.
class Session
{
public:
    static Result<std::unique_ptr<Session>> open(const std::string& path, OpenAs as, const Clock& clock);
    // A fresh copy of the demonstration, which goes away with this.
    static Result<std::unique_ptr<Session>> openDemo(const Clock& clock);

    ~Session();

    Records& records() { return m_records; }
    const StoreFile& file() const { return *m_file; }
    // See StoreFile::placeOfPrint().
    Result<std::optional<PrintPlace>> placeOfPrint(const std::string& shortForm)
    {
        return m_file->placeOfPrint(shortForm);
    }
    // See core/store/join.h. The file as it is stays in a copy that nothing removes.
    // From any thread, as long as this is busy with nothing else. Stopped: Unexpected, and all is as it was.
    Result<Joined> takeIn(OtherFile& theirs, Progress* progress = nullptr);
    bool isDemo() const { return m_demo != nullptr; }

private:
    Session(std::unique_ptr<StoreFile> file, const Clock& clock, std::unique_ptr<DemoCopy> demo);

    std::unique_ptr<DemoCopy> m_demo; // goes away after the file
    std::unique_ptr<StoreFile> m_file;
    const Clock& m_clock;
    IdSource m_ids;
    Records m_records;
};

} // namespace rig
