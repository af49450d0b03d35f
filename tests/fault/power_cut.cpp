#include "tests/fault/power_cut.h"

#include <algorithm>
#include <cstdlib>

namespace rig::test {

namespace {

void put(std::string& content, std::size_t at, std::string_view bytes)
{
    if (content.size() < at + bytes.size())
        content.resize(at + bytes.size());
    content.replace(at, bytes.size(), bytes);
}

} // namespace

class UncertainDisk::Luck
{
public:
    explicit Luck(unsigned draw) : m_draw{draw}, m_random{draw}, m_chances{1 + m_random() % 9} {}

    std::size_t sector() const { return m_draw % 2 == 0 ? 512 : 4096; }
    bool reachesTheDisk() { return m_draw == 1 || (m_draw > 1 && m_random() % 10 < m_chances); }
    // What stands where a file grew and its bytes were lost: nothing, or what was on the disk before.
    char left() { return m_draw % 4 < 2 ? '\0' : static_cast<char>(m_random()); }
    int oneOf(const std::vector<int>& choices)
    {
        if (m_draw == 0)
            return choices.front();
        return m_draw == 1 ? choices.back() : choices[m_random() % choices.size()];
    }

private:
    unsigned m_draw;
    std::mt19937 m_random;
    unsigned long m_chances; // of ten
};

UncertainDisk::UncertainDisk(const std::string& path, std::string bytes)
    : m_files{{std::move(bytes), {}}}, m_names{{path, {0}}}
{
}

UncertainDisk::File& UncertainDisk::fileAt(const std::string& path)
{
    const auto found = m_names.find(path);
    if (found == m_names.end() || found->second.back() < 0)
        std::abort(); // written to without having been made
    return m_files[static_cast<std::size_t>(found->second.back())];
}

void UncertainDisk::take(const DiskCall& call)
{
    switch (call.kind) {
    case DiskCall::Kind::Create: {
        auto& name = m_names[call.path];
        if (name.empty())
            name.push_back(-1);
        name.push_back(static_cast<int>(m_files.size()));
        m_files.emplace_back();
        break;
    }
    case DiskCall::Kind::Delete:
        m_names.at(call.path).push_back(-1);
        break;
    case DiskCall::Kind::SyncFolder:
        for (auto& [path, standsFor] : m_names)
            standsFor.assign(1, standsFor.back());
        break;
    case DiskCall::Kind::Write:
        fileAt(call.path).pending.push_back({call.at, std::string{call.bytes}});
        break;
    case DiskCall::Kind::Truncate:
        fileAt(call.path).pending.push_back({call.at, std::nullopt});
        break;
    case DiskCall::Kind::Sync: {
        File& file = fileAt(call.path);
        Luck all{1};
        file.synced = contentOf(file, all);
        file.pending.clear();
        break;
    }
    case DiskCall::Kind::Lock:
        break;
    }
}

std::string UncertainDisk::contentOf(const File& file, Luck& luck)
{
    std::string content = file.synced;
    for (const auto& [at, bytes] : file.pending) {
        const auto begin = static_cast<std::size_t>(at);
        if (!bytes) {
            if (luck.reachesTheDisk())
                content.resize(begin);
            continue;
        }
        for (std::size_t done = 0; done < bytes->size();) {
            const std::size_t size =
                std::min(luck.sector() - (begin + done) % luck.sector(), bytes->size() - done);
            const std::size_t before = content.size();
            if (luck.reachesTheDisk()) {
                put(content, begin + done, std::string_view{*bytes}.substr(done, size));
                for (std::size_t hole = before; hole < begin + done; ++hole)
                    content[hole] = luck.left();
            }
            done += size;
        }
    }
    return content;
}

std::map<std::string, std::string> UncertainDisk::afterTheCut(unsigned draw) const
{
    Luck luck{draw};
    std::map<std::string, std::string> files;
    for (const auto& [path, mayStandFor] : m_names)
        if (const int file = luck.oneOf(mayStandFor); file >= 0)
            files[path] = contentOf(m_files[static_cast<std::size_t>(file)], luck);
    return files;
}

} // namespace rig::test
