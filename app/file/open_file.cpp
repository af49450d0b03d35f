#include "app/file/open_file.h"

#include "app/file/verbs.h"
#include "app/wording/file_words.h"
#include "core/store/airframe_facts.h"
#include "core/store/names.h"

#include <algorithm>
#include <random>

namespace rig::file {

namespace {

std::uint64_t seedFromTheSystem()
{
    std::random_device entropy;
    return (std::uint64_t{entropy()} << 32) | entropy();
}

} // namespace

OpenFile::OpenFile() : ids{seedFromTheSystem()} {}

Outcome OpenFile::open(const QString& path, OpenAs as)
{
    auto opened = StoreFile::open(path.toStdString(), as, clock);
    if (!opened)
        return opened.problem();
    file = std::move(opened).value();
    if (file->isUpgraded() && as != OpenAs::ToLook)
        complain(FileWords::madeNewer(path));
    records = std::make_unique<Records>(*file, ids, clock);
    return Done{};
}

std::optional<AirframeFacts> factsNamed(const OpenFile& open, const QString& path,
                                        const QString& registration)
{
    const auto airframes = open.records->airframes();
    if (!airframes) {
        couldNot(airframes.problem(), path);
        return std::nullopt;
    }
    const std::string wanted = comparable(registration.toStdString());
    const auto found = std::ranges::find_if(
        airframes.value(), [&wanted](const Airframe& one) { return comparable(one.registration) == wanted; });
    if (found == airframes.value().end()) {
        couldNot(FileWords::noSuchAirframe(path, registration));
        return std::nullopt;
    }
    auto facts = factsOf(*open.records, found->id);
    if (!facts) {
        couldNot(facts.problem(), path);
        return std::nullopt;
    }
    return std::move(facts).value();
}

} // namespace rig::file
