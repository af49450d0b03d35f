#include "tests/fault/saver.h"

#include "core/airframe/id_source.h"
#include "core/store/connection.h"
#include "core/store/records.h"

#include <iostream>

namespace rig::test {

namespace {

struct Session
{
    explicit Session(const std::string& path)
        : file{StoreFile::open(path, OpenAs::Existing, clock).value()}, records{*file, ids, clock}
    {
        const Airframe airframe = records.airframes().value().front();
        const Fitting fitting = records.fittings(airframe.id).value().front();
        reading.coupling = fitting.coupling;
        reading.fitting = fitting.id;
        reading.interval = GapInterval{Gap::micrometres(450), Gap::micrometres(500)};
        reading.person = records.persons().value().front().id;
        reading.when = clock.now();
        reading.note = std::string(400, 'n');
    }

    Outcome save()
    {
        if (const auto saved = records.add(reading, std::nullopt); !saved)
            return saved.problem();
        return Done{};
    }

    SystemClock clock;
    IdSource ids{99};
    std::unique_ptr<StoreFile> file;
    Records records;
    Reading reading;
};

} // namespace

int saveForEver(const std::string& path)
{
    Session session{path};
    const auto pair = [&session]() -> Outcome {
        if (const Outcome first = session.save(); !first)
            return first;
        return session.save();
    };
    while (session.records.together(pair))
        std::cout << "saved" << std::endl;
    return 1;
}

int stopHalfWay(const std::string& path)
{
    Session session{path};
    // Next to no cache: changed pages go to the disk before the save is complete.
    if (!session.file->connection().run("PRAGMA cache_size = 5"))
        return 1;
    const Outcome done = session.records.together([&session]() -> Outcome {
        for (int i = 0; i < 500; ++i)
            if (const Outcome saved = session.save(); !saved)
                return saved;
        std::cout << "half way" << std::endl;
        std::cin.get();
        return Done{};
    });
    return done ? 0 : 1;
}

} // namespace rig::test
