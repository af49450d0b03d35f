#include "app/file/open_file.h"

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

Outcome OpenFile::open(const QString& path)
{
    auto opened = StoreFile::open(path.toStdString(), OpenAs::Existing, clock);
    if (!opened)
        return opened.problem();
    file = std::move(opened).value();
    records = std::make_unique<Records>(*file, ids, clock);
    return Done{};
}

} // namespace rig::file
